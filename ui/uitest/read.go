package uitest

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"github.com/stretchr/testify/assert"
)

// Read returns everything that can be read on a window, back to front: the
// question in front alone, if there is one. What is scrolled out of sight is not
// read.
func Read(w *Window) []string {
	var all []string
	for _, s := range texts(w) {
		if inSight(s) {
			all = append(all, words(s.object))
		}
	}
	return all
}

// inSight reports whether any of the object is in its clip.
func inSight(s spot) bool {
	to := s.at.Add(s.object.Size())
	return to.X > s.from.X && to.Y > s.from.Y && s.at.X < s.to.X && s.at.Y < s.to.Y
}

// See asserts that the window says each of the texts somewhere, alone or within
// a longer text.
func See(t testing.TB, w *Window, texts ...string) {
	t.Helper()
	all := strings.Join(Read(w), "\n")
	for _, text := range texts {
		assert.Contains(t, all, text)
	}
}

// NotSee asserts that the window says none of the texts.
func NotSee(t testing.TB, w *Window, texts ...string) {
	t.Helper()
	all := strings.Join(Read(w), "\n")
	for _, text := range texts {
		assert.NotContains(t, all, text)
	}
}

// Where returns the middle of the place that says label, and whether there is
// one.
func Where(w *Window, label string) (fyne.Position, bool) {
	for _, s := range texts(w) {
		if words(s.object) == label {
			return s.centre(), true
		}
	}
	return fyne.Position{}, false
}

// Overflows returns the drawn texts that do not fit: wider than the room they
// have, or reaching out of the window. A well laid out room has none; a text that
// may be cut is cut with an ellipsis and fits.
func Overflows(w *Window) []string {
	var all []string
	size := w.Canvas().Size()
	walk(front(w), func(s spot) bool {
		t, ok := s.object.(*canvas.Text)
		if !ok || t.Text == "" || !inSight(s) {
			return true
		}
		// A unit of tolerance: widths are rounded when they are drawn.
		to := s.at.Add(t.Size())
		if t.MinSize().Width > t.Size().Width+1 || s.at.X < -1 || to.X > size.Width+1 {
			all = append(all, t.Text)
		}
		return true
	})
	return all
}
