package kit_test

import (
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"

	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

func TestButtonIsWorkedByPointerAndKeyboard(t *testing.T) {
	uitest.App(t, look.Dark())
	n := 0
	b := kit.NewButton("Start", func() { n++ }).Key("S").Tip("Start the clock")
	w := uitest.Open(t, kit.Row(8, b))
	uitest.Tap(t, w, "Start")
	w.Canvas().Focus(b)
	uitest.Key(t, w, fyne.KeyReturn, fyne.KeySpace)
	assert.Equal(t, 3, n)

	b.Able(false)
	uitest.Tap(t, w, "Start")
	uitest.Key(t, w, fyne.KeyReturn)
	assert.Equal(t, 3, n, "switched off")
}

func TestTipShowsUnderThePointer(t *testing.T) {
	uitest.App(t, look.Dark())
	w := uitest.Open(t, kit.Row(8, kit.NewButton("Start", nil).Tip("Start the clock (S)")))
	uitest.NotSee(t, w, "Start the clock (S)")
	uitest.Hover(t, w, "Start")
	uitest.See(t, w, "Start the clock (S)")
	uitest.Leave(w)
	uitest.NotSee(t, w, "Start the clock (S)")
}

// A window's single keys work wherever the keyboard is.
func TestUnusedKeysReachTheWindow(t *testing.T) {
	uitest.App(t, look.Dark())
	b := kit.NewButton("Start", nil)
	w := uitest.Open(t, kit.Row(8, b))
	var keys []fyne.KeyName
	var runes []rune
	w.Canvas().SetOnTypedKey(func(k *fyne.KeyEvent) { keys = append(keys, k.Name) })
	w.Canvas().SetOnTypedRune(func(r rune) { runes = append(runes, r) })
	w.Canvas().Focus(b)
	uitest.Key(t, w, fyne.KeyN, fyne.KeyF1, fyne.KeySpace)
	assert.Equal(t, []fyne.KeyName{fyne.KeyN, fyne.KeyF1}, keys, "the space bar pressed the button")
	assert.Equal(t, "n", string(runes))
}

func TestSegmentedChoosesByPointerAndArrows(t *testing.T) {
	uitest.App(t, look.Dark())
	var heard []int
	s := kit.NewSegmented([]string{"Powerlifting", "Strongman", "Weightlifting"}, 0, func(i int) { heard = append(heard, i) })
	w := uitest.Open(t, kit.Row(8, s))
	uitest.Tap(t, w, "Weightlifting")
	uitest.Key(t, w, fyne.KeyLeft, fyne.KeyHome, fyne.KeyLeft)
	assert.Equal(t, []int{2, 1, 0}, heard)
	s.Set(7)
	assert.Equal(t, 0, s.Chosen(), "there is no eighth")
	s.Set(2)
	assert.Len(t, heard, 3, "Set tells nobody")
}

func TestToggleTellsOfEachChange(t *testing.T) {
	uitest.App(t, look.Dark())
	var heard []bool
	tg := kit.NewToggle("Show names", false, func(on bool) { heard = append(heard, on) })
	w := uitest.Open(t, kit.Row(8, tg))
	uitest.Tap(t, w, "Show names")
	uitest.Tap(t, w, "Show names")
	assert.Equal(t, []bool{true, false}, heard)
	tg.Set(true)
	assert.True(t, tg.On())
	assert.Len(t, heard, 2, "Set tells nobody")
}

func TestQuestion(t *testing.T) {
	for _, c := range []struct {
		name string
		key  fyne.KeyName
		tap  string
		want string
	}{
		{name: "Return gives the usual answer", key: fyne.KeyReturn, want: "void"},
		{name: "Escape leaves it", key: fyne.KeyEscape, want: "left"},
		{name: "a tap answers", tap: "Keep it", want: "keep"},
	} {
		t.Run(c.name, func(t *testing.T) {
			uitest.App(t, look.Dark())
			before := kit.NewButton("Behind", nil)
			w := uitest.Open(t, kit.Row(8, before))
			w.Canvas().Focus(before)
			got := ""
			kit.Ask(w.Canvas(), kit.Question{
				Title: "Void this result?", Text: "It stays in the history, marked void.",
				Actions: []kit.Action{
					{Label: "Void it", Danger: true, Do: func() bool { got = "void"; return true }},
					{Label: "Keep it", Do: func() bool { got = "keep"; return true }},
				},
				OnCancel: func() { got = "left" },
			})
			uitest.See(t, w, "Void this result?", "It stays in the history, marked void.")
			if c.tap != "" {
				uitest.Tap(t, w, c.tap)
			} else {
				uitest.Key(t, w, c.key)
			}
			assert.Equal(t, c.want, got)
			assert.Nil(t, w.Canvas().Overlays().Top(), "the question is gone")
			assert.Equal(t, before, w.Canvas().Focused(), "the keyboard is back")
		})
	}
}

func TestQuestionGivesTheKeyboardToWhatIsToBeFilledIn(t *testing.T) {
	uitest.App(t, look.Dark())
	w := uitest.Open(t, kit.NewBody("room"))
	reason, got := kit.NewField("Reason"), ""
	kit.Ask(w.Canvas(), kit.Question{
		Title: "Void this result?", Body: kit.Column(8, kit.NewBody("It stays in the history."), reason),
		Actions: []kit.Action{{Label: "Void it", Do: func() bool { got = reason.Text(); return true }}},
	})
	uitest.Type(t, w, "typed twice")
	uitest.Key(t, w, fyne.KeyReturn)
	assert.Equal(t, "typed twice", got, "Return in a field answers")

	kit.Ask(w.Canvas(), kit.Question{Title: "No field", Body: kit.NewBody("text"), Actions: []kit.Action{{Label: "Go on", Do: func() bool { got = "went"; return true }}}})
	uitest.Key(t, w, fyne.KeySpace)
	assert.Equal(t, "went", got, "the usual answer has the keyboard")
}

func TestAPressBesideTheQuestionLeavesTheKeyboard(t *testing.T) {
	uitest.App(t, look.Dark())
	w := uitest.Open(t, kit.NewBody("room"))
	first, second := kit.NewField("First"), kit.NewField("Second")
	kit.Ask(w.Canvas(), kit.Question{Title: "Two fields", Text: "Some words.", Body: kit.Column(8, first, second)})
	uitest.Fill(t, w, "Second", "a")
	uitest.TapAt(w, fyne.NewPos(5, 5))
	at, _ := uitest.Where(w, "Some words.")
	uitest.TapAt(w, at)
	uitest.Type(t, w, "b")
	assert.Equal(t, "ab", second.Text())
	uitest.Key(t, w, fyne.KeyTab)
	uitest.Key(t, w, fyne.KeyReturn)
	uitest.See(t, w, "room")
}

func TestAnAnswerMayKeepTheQuestionOpen(t *testing.T) {
	uitest.App(t, look.Dark())
	w := uitest.Open(t, kit.NewBody("room"))
	tries := 0
	kit.Ask(w.Canvas(), kit.Question{Title: "Name", Actions: []kit.Action{{Label: "Save", Do: func() bool {
		tries++
		return tries == 2
	}}}})
	uitest.Key(t, w, fyne.KeyReturn)
	uitest.See(t, w, "Name")
	uitest.Key(t, w, fyne.KeyReturn)
	uitest.See(t, w, "room")
}
