package kit_test

import (
	"errors"
	"image/color"
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"

	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

func TestNoticeTakesAStepBackOnce(t *testing.T) {
	uitest.App(t, look.Dark())
	back := 0
	n := kit.NewNotice()
	w := uitest.Open(t, kit.Column(0, n))
	uitest.NotSee(t, w, "Undo")
	n.Say("Result saved.", func() { back++ })
	uitest.See(t, w, "Result saved.")
	uitest.Tap(t, w, "Undo")
	assert.Equal(t, 1, back)
	uitest.NotSee(t, w, "Undo", "Result saved.")
}

func TestNoticeOfAFaultOffersNoStepBack(t *testing.T) {
	uitest.App(t, look.Dark())
	n := kit.NewNotice()
	w := uitest.Open(t, kit.Column(0, n))
	n.Say("Result saved.", func() {})
	n.Fail(nil)
	uitest.See(t, w, "Result saved.", "Undo")
	n.Fail(errors.New("save result: the file is locked; close the other program"))
	uitest.See(t, w, "Could not save result: the file is locked. Close the other program.")
	uitest.NotSee(t, w, "Undo")
	n.Warn("The last backup is a week old.")
	uitest.See(t, w, "The last backup is a week old.")
	uitest.Tap(t, w, "Clear this line")
	uitest.NotSee(t, w, "backup")
}

// The green tick is for what was done, and not for what the coach is only told.
func TestNoticeTicksWhatWasDone(t *testing.T) {
	uitest.App(t, look.Dark())
	n := kit.NewNotice()
	w := uitest.Open(t, kit.Column(0, n))
	green := func() bool {
		picture := w.Canvas().Capture()
		want, bounds := look.Dark()[look.Good], picture.Bounds()
		for y := bounds.Min.Y; y < bounds.Max.Y; y++ {
			for x := bounds.Min.X; x < bounds.Max.X; x++ {
				if color.NRGBAModel.Convert(picture.At(x, y)) == color.NRGBAModel.Convert(want) {
					return true
				}
			}
		}
		return false
	}
	n.Say("Result saved.", func() {})
	assert.True(t, green())
	n.Say("No class is left today.", nil)
	assert.False(t, green())
	n.Warn("No sound.")
	assert.False(t, green())
}

func TestProgress(t *testing.T) {
	uitest.App(t, look.Dark())
	p := kit.NewProgress()
	w := uitest.Open(t, kit.Column(0, p))
	for _, c := range []struct {
		done, of int
		want     string
	}{{0, 0, "Working…"}, {7, 0, "7 so far"}, {3, 10, "3 of 10"}, {12, 10, "12 of 10"}} {
		p.Set(c.done, c.of)
		uitest.See(t, w, c.want)
	}
}

func TestRailLeadsToARoom(t *testing.T) {
	uitest.App(t, look.Dark())
	went := ""
	roster := kit.NewRailItem("Roster", "Ctrl+2", func() { went = "roster" })
	w := uitest.Open(t, kit.Column(0, kit.NewRailItem("Today", "Ctrl+1", func() { went = "today" }), roster))
	uitest.Tap(t, w, "Roster")
	assert.Equal(t, "roster", went)
	w.Canvas().FocusNext()
	uitest.Key(t, w, fyne.KeyReturn)
	assert.Equal(t, "today", went)
}

func TestEmptySaysWhatToDoFirst(t *testing.T) {
	uitest.App(t, look.Dark())
	first := false
	w := uitest.Open(t, kit.NewEmpty("No athletes yet", "Bring a roster file.", kit.NewButton("Import", func() { first = true })))
	uitest.See(t, w, "No athletes yet", "Bring a roster file.")
	uitest.Tap(t, w, "Import")
	assert.True(t, first)
}

// A field of several lines must not keep the keyboard (WCAG 2.2, 2.1.2).
func TestTabLeadsOutOfNotes(t *testing.T) {
	uitest.App(t, look.Dark())
	notes, next := kit.NewField("Notes").Lines(3), kit.NewField("Next")
	w := uitest.Open(t, kit.Column(8, notes, next))
	notes.Focus()
	uitest.Type(t, w, "one")
	uitest.Key(t, w, fyne.KeyReturn)
	uitest.Type(t, w, "two")
	uitest.Key(t, w, fyne.KeyTab)
	uitest.Type(t, w, "three")
	assert.Equal(t, "one\ntwo", notes.Text())
	assert.Equal(t, "three", next.Text())
}

func TestAFieldThatIsOffCanBeReadButNotReached(t *testing.T) {
	uitest.App(t, look.Dark())
	off, on := kit.NewField("Off"), kit.NewField("On")
	off.SetText("fixed")
	off.Able(false)
	w := uitest.Open(t, kit.Column(8, off, on))
	uitest.See(t, w, "fixed")
	w.Canvas().FocusNext()
	uitest.Type(t, w, "x")
	assert.Equal(t, "fixed", off.Text())
	assert.Equal(t, "x", on.Text())
	off.Able(true)
	uitest.Fill(t, w, "Off", "changed")
	assert.Equal(t, "changed", off.Text())
}

// Only the complaint that was meant is forgotten.
func TestNoticeForgetsOneComplaint(t *testing.T) {
	uitest.App(t, look.Dark())
	n := kit.NewNotice()
	assert.Zero(t, n.Complaint())
	n.Fail(errors.New("keep: broken"))
	first := n.Complaint()
	n.Fail(errors.New("keep: broken still"))
	n.Forget(first)
	assert.NotZero(t, n.Complaint(), "it was made again")
	n.Forget(n.Complaint())
	assert.Zero(t, n.Complaint())
	n.Fail(errors.New("keep: broken"))
	n.Say("Done.", func() {})
	assert.Zero(t, n.Complaint())
}
