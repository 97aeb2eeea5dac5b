package uitest_test

import (
	"runtime"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"github.com/stretchr/testify/assert"

	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

// refused runs an action that must fail its test, and reports whether it did.
func refused(t *testing.T, act func(testing.TB)) bool {
	t.Helper()
	probe := &probe{TB: t}
	done := make(chan struct{})
	go func() {
		defer close(done)
		act(probe)
	}()
	<-done
	return probe.failed
}

// probe is a test that may fail without failing this one.
type probe struct {
	testing.TB
	failed bool
}

func (p *probe) Errorf(string, ...any) { p.failed = true }
func (p *probe) FailNow()              { p.failed = true; runtime.Goexit() }

func TestTapPressesWhatSaysSo(t *testing.T) {
	pressed := ""
	uitest.App(t, look.Dark())
	w := uitest.Open(t, kit.Column(8,
		kit.NewButton("Start", func() { pressed = "start" }),
		kit.NewButton("Hold", func() { pressed = "hold" }),
	))
	uitest.Tap(t, w, "Hold")
	assert.Equal(t, "hold", pressed)
	uitest.Tap(t, w, "Start")
	assert.Equal(t, "start", pressed)
}

func TestTapRefuses(t *testing.T) {
	uitest.App(t, look.Dark())
	w := uitest.Open(t, kit.Column(8,
		kit.NewButton("Twice", nil), kit.NewButton("Twice", nil), kit.NewBody("Plain text")))
	assert.True(t, refused(t, func(p testing.TB) { uitest.Tap(p, w, "Nowhere") }), "nothing says so")
	assert.True(t, refused(t, func(p testing.TB) { uitest.Tap(p, w, "Twice") }), "two places say so")
	assert.True(t, refused(t, func(p testing.TB) { uitest.Tap(p, w, "Plain text") }), "it cannot be pressed")
}

func TestWhatIsBehindAQuestionCannotBeReached(t *testing.T) {
	pressed := false
	uitest.App(t, look.Dark())
	w := uitest.Open(t, kit.NewButton("Behind", func() { pressed = true }))
	kit.Ask(w.Canvas(), kit.Question{Title: "In front"})
	uitest.See(t, w, "In front")
	uitest.NotSee(t, w, "Behind")
	assert.True(t, refused(t, func(p testing.TB) { uitest.Tap(p, w, "Behind") }))
	uitest.Key(t, w, fyne.KeyEscape)
	uitest.Tap(t, w, "Behind")
	assert.True(t, pressed)
}

func TestWhatIsScrolledAwayIsNeitherReadNorTapped(t *testing.T) {
	uitest.App(t, look.Dark())
	rows := kit.Column(0)
	for _, name := range []string{"First", "Middle", "Last"} {
		rows.Add(kit.Tall(400, kit.NewButton(name, func() {})))
	}
	w := uitest.OpenAs(t, look.Dark(), fyne.NewSize(300, 300), container.NewVScroll(rows))
	uitest.See(t, w, "First")
	uitest.NotSee(t, w, "Last")
	assert.True(t, refused(t, func(p testing.TB) { uitest.Tap(p, w, "Last") }))
	uitest.Scroll(t, w, "First", -2000)
	uitest.See(t, w, "Last")
}

func TestTypingGoesToTheWindowWithoutAFocus(t *testing.T) {
	uitest.App(t, look.Dark())
	w := uitest.Open(t, kit.NewBody("nothing here takes keys"))
	var runes []rune
	var keys []fyne.KeyName
	w.Canvas().SetOnTypedRune(func(r rune) { runes = append(runes, r) })
	w.Canvas().SetOnTypedKey(func(k *fyne.KeyEvent) { keys = append(keys, k.Name) })
	uitest.Type(t, w, "5x")
	uitest.Key(t, w, fyne.KeyF1)
	assert.Equal(t, "5x", string(runes))
	assert.Equal(t, []fyne.KeyName{fyne.Key5, fyne.KeyX, fyne.KeyF1}, keys)
}

// The window is laid out as the desktop driver would, so what grows or appears
// can be reached at once.
func TestWhatGrowsIsLaidOut(t *testing.T) {
	uitest.App(t, look.Dark())
	pressed := false
	text, late := kit.NewBody("short"), kit.NewButton("Late", func() { pressed = true })
	late.Hide()
	w := uitest.Open(t, kit.Row(8, text, late))
	text.SetText("a good deal longer than before")
	late.Show()
	uitest.Tap(t, w, "Late")
	assert.True(t, pressed)
	assert.GreaterOrEqual(t, text.Size().Width, text.MinSize().Width)
}

func TestFillAndClear(t *testing.T) {
	uitest.App(t, look.Dark())
	f := kit.NewField("Name")
	f.SetText("before")
	w := uitest.Open(t, kit.Column(8, f))
	uitest.Fill(t, w, "Name", "after")
	assert.Equal(t, "after", f.Text())
	uitest.Fill(t, w, "Name", "")
	assert.Empty(t, f.Text())
	assert.True(t, refused(t, func(p testing.TB) { uitest.Fill(p, w, "Nobody", "x") }))
}

func TestOverflowsFindsWhatDoesNotFit(t *testing.T) {
	uitest.App(t, look.Dark())
	wide := canvas.NewText("too wide for its place", look.Color(look.Text))
	fits := canvas.NewText("fits", look.Color(look.Text))
	beside := canvas.NewText("beside the window", look.Color(look.Text))
	free := container.NewWithoutLayout(wide, fits, beside)
	w := uitest.OpenAs(t, look.Dark(), fyne.NewSize(300, 100), free)
	wide.Resize(fyne.NewSize(50, 20))
	fits.Resize(fyne.NewSize(50, 20))
	beside.Resize(beside.MinSize())
	beside.Move(fyne.NewPos(250, 0))
	assert.Equal(t, []string{"too wide for its place", "beside the window"}, uitest.Overflows(w))
}
