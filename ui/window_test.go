package ui_test

import (
	"context"
	"flag"
	"fmt"
	"math/rand/v2"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
	"windlass/ui/uitest"
)

var pictures = flag.String("pictures", "", "keep pictures of the window in a folder")

func open(t *testing.T, p look.Palette) (*ui.Window, *uitest.Window) {
	t.Helper()
	uitest.App(t, p)
	d, _ := uitest.DemoDesk(t)
	in := uitest.OpenAs(t, p, ui.Size, kit.NewBody(""))
	w := ui.NewWindow(in, d, ui.Options{})
	in.Resize(ui.Size.AddWidthHeight(1, 1))
	in.Resize(ui.Size)
	return w, in
}

func picture(t *testing.T, w *uitest.Window, name string) {
	t.Helper()
	if *pictures != "" {
		uitest.Snapshot(t, w, filepath.Join(*pictures, name+".png"))
	}
}

func TestWindowOpensOnToday(t *testing.T) {
	for name, p := range map[string]look.Palette{"dark": look.Dark(), "light": look.Light()} {
		w, in := open(t, p)
		assert.Equal(t, room.Today, w.Front())
		uitest.See(t, in, "Monday 18 May 2026", "Needs you", "Find", "The Ropewalk")
		picture(t, in, "window-"+name)
	}
}

func TestKeysSheetAndFinderOpenAndClose(t *testing.T) {
	w, in := open(t, look.Dark())
	uitest.Key(t, in, fyne.KeyF1)
	uitest.See(t, in, "What the keys do", "In Today", "Everywhere", "Take the last change back")
	picture(t, in, "keys")
	uitest.Key(t, in, fyne.KeyEscape)
	uitest.NotSee(t, in, "What the keys do")
	w.Press("Ctrl+K")
	uitest.See(t, in, "Athlete, day or action")
	uitest.Type(t, in, "kiv")
	uitest.See(t, in, "Ansa Kivelo")
	uitest.Key(t, in, fyne.KeyEscape)
	uitest.NotSee(t, in, "Athlete, day or action", "Ansa Kivelo")
}

func TestFinderGoesToAnAthleteAndToADay(t *testing.T) {
	for _, row := range []struct{ typed, room, sees string }{
		{"Wen Liangshu", room.Roster, "For Wen Liangshu."},
		{"Wednesday 20 May", room.Cycle, "Wednesday 20 May, week "},
	} {
		w, in := open(t, look.Dark())
		w.Press("Ctrl+K")
		uitest.Type(t, in, row.typed)
		uitest.Key(t, in, fyne.KeyReturn)
		assert.Equal(t, row.room, w.Front())
		uitest.See(t, in, row.sees)
	}
}

// longStep begins to bring a sheet of 600 results in.
func longStep(t *testing.T, d *desk.Desk) *desk.LongStep {
	t.Helper()
	sheet := "Athlete,Lift,Reps,Load,Date\n"
	for i := range 600 {
		sheet += fmt.Sprintf("%s,Back squat,5,60 kg,%s\n", d.Book().Athletes[0].Name, day.Of(2020, 1, 1).Add(i))
	}
	i := d.NewImport("long.csv", desk.ImportAs{Kind: desk.ResultSheet})
	require.NoError(t, i.Read(t.Context(), strings.NewReader(sheet), nil))
	step, err := d.BeginImport(i, false)
	require.NoError(t, err)
	require.NotNil(t, step)
	return step
}

func TestALongStepIsCarriedToItsEnd(t *testing.T) {
	w, in := open(t, look.Dark())
	d := w.Desk()
	before := len(d.Book().Results)
	ended := make(chan error)
	w.Carry(longStep(t, d), func(err error) { ended <- err })
	require.NoError(t, <-ended)
	assert.Len(t, d.Book().Results, before+600)
	uitest.NotSee(t, in, "On its way", "Stop")
}

// door is a window that tells when it is closed.
type door struct {
	*uitest.Window
	ask    func()
	closed int
}

func (d *door) SetCloseIntercept(ask func()) { d.ask = ask }
func (d *door) Close()                       { d.closed++ }

// stuck is a file into which a long step goes on and on until it is called off.
type stuck struct {
	book        gym.Book
	began, gone chan struct{}
}

func (s stuck) Load(context.Context) (gym.Book, error)     { return s.book, nil }
func (s stuck) Write(context.Context, ...gym.Change) error { return nil }
func (s stuck) WriteMany(ctx context.Context, _ []gym.Change, _ func(int)) error {
	close(s.began)
	<-ctx.Done()
	close(s.gone)
	return ctx.Err()
}

// Who closes the window while a sheet comes in is asked first; the file is let go
// before the window's end returns.
func TestTheWindowIsNotClosedOverALongStep(t *testing.T) {
	uitest.App(t, look.Dark())
	demo, now := uitest.DemoDesk(t)
	file := stuck{*demo.Book(), make(chan struct{}), make(chan struct{})}
	d, err := desk.Open(t.Context(), file, func() time.Time { return *now }, rand.NewChaCha8([32]byte{}))
	require.NoError(t, err)
	in := &door{Window: uitest.OpenAs(t, look.Dark(), ui.Size, kit.NewBody(""))}
	w := ui.NewWindow(in, d, ui.Options{})
	in.Resize(ui.Size.AddWidthHeight(1, 1))
	in.ask()
	assert.Equal(t, 1, in.closed, "nothing is on its way")

	ended := make(chan error)
	w.Carry(longStep(t, d), func(err error) { ended <- err })
	<-file.began
	in.ask()
	uitest.See(t, in.Window, "Close now?", "bring long.csv in", "Nothing of it is kept")
	uitest.Key(t, in.Window, fyne.KeyEscape)
	assert.Equal(t, 1, in.closed)
	in.ask()
	uitest.Tap(t, in.Window, "Close all the same")
	assert.Equal(t, 2, in.closed)
	w.End()
	select {
	case <-file.gone:
	default:
		assert.Fail(t, "the step still has hold of the file")
	}
	require.ErrorIs(t, <-ended, context.Canceled)
}

func TestFirstRunOffersThreeWaysAndTheCaution(t *testing.T) {
	uitest.App(t, look.Dark())
	in := uitest.OpenAs(t, look.Dark(), ui.Size, kit.NewBody(""))
	var chosen []ui.First
	in.SetContent(ui.FirstRun(in, func(f ui.First) error { chosen = append(chosen, f); return nil }))
	in.Resize(ui.Size.AddWidthHeight(1, 1))
	in.Resize(ui.Size)
	uitest.See(t, in, "Open the demo gym", "Bring a roster file", "Start an empty gym", "Defer to a doctor")
	picture(t, in, "first-run")
}

// Who starts the program by its icon a second time sees why no second one opens.
func TestARefusedFileIsToldInAWindow(t *testing.T) {
	uitest.App(t, look.Dark())
	in := uitest.OpenAs(t, look.Dark(), ui.RefusedSize, kit.NewBody(""))
	left := 0
	err := fmt.Errorf("open %q: another program is using the file; close the other program, then try again", "gym.windlass")
	in.SetContent(ui.Refused(in, "This gym is open in another window", err, func() { left++ }))
	in.Resize(ui.RefusedSize.AddWidthHeight(1, 1))
	uitest.See(t, in, "This gym is open in another window", "another program is using the file. Close the other program")
	picture(t, in, "refused")
	uitest.Key(t, in, fyne.KeyReturn, fyne.KeyEscape)
	uitest.Tap(t, in, "Close")
	assert.Equal(t, 3, left)
}

func TestTheClockIsMutedFromEverywhere(t *testing.T) {
	w, in := open(t, look.Dark())
	w.Open(room.Floor, "")
	was := w.Desk().Settings().Sound
	uitest.Key(t, in, fyne.KeyF12)
	assert.NotEqual(t, was, w.Desk().Settings().Sound)
	uitest.See(t, in, "The clock is silent from now on. F12 lets it sound again.")
	uitest.Key(t, in, fyne.KeyF12)
	assert.Equal(t, was, w.Desk().Settings().Sound)
	uitest.Key(t, in, fyne.KeyF1)
	uitest.See(t, in, "Switch the sound of the clock off or on")
}

func TestEveryRoomIsDrawnInTheLookThatWasChosen(t *testing.T) {
	w, in := open(t, look.Dark())
	for _, name := range []string{room.Roster, room.Handouts, room.Gym} {
		w.Open(name, "")
	}
	s := w.Desk().Settings()
	s.Dark = false
	require.NoError(t, w.Desk().KeepSettings(s))
	in.Wear(look.Light())
	for _, name := range []string{room.Roster, room.Handouts, room.Gym} {
		w.Open(name, "")
		assert.Less(t, inky(in), 0.02, "%s: parts are still as dark as in the dark look", name)
		picture(t, in, "relook-"+name)
	}
}

// inky is the share of a window's pixels that are as dark as the dark ground.
func inky(w *uitest.Window) float64 {
	img := w.Canvas().Capture()
	dark, all := 0, 0
	for y := img.Bounds().Min.Y; y < img.Bounds().Max.Y; y += 3 {
		for x := img.Bounds().Min.X; x < img.Bounds().Max.X; x += 3 {
			r, g, b, _ := img.At(x, y).RGBA()
			all++
			if r>>8 < 0x28 && g>>8 < 0x38 && b>>8 < 0x44 {
				dark++
			}
		}
	}
	return float64(dark) / float64(all)
}
