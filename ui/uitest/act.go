package uitest

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"github.com/stretchr/testify/require"
)

// Tap clicks where the window says label. It fails when nothing says so, when
// several things that can be clicked say so, or when something covers it.
func Tap(t testing.TB, w *Window, label string) {
	t.Helper()
	all := reachable(t, w, label)
	require.Len(t, all, 1, "%q stands in %d places that can be clicked; use TapNth", label, len(all))
	click(w, all[0].centre())
}

// TapNth clicks the nth place, from 0, that says label, in reading order of the
// widgets.
func TapNth(t testing.TB, w *Window, label string, n int) {
	t.Helper()
	all := reachable(t, w, label)
	require.Greater(t, len(all), n, "%q stands in %d places", label, len(all))
	click(w, all[n].centre())
}

// TapAt clicks at a place, in units from the window's corner.
func TapAt(w *Window, at fyne.Position) { click(w, at) }

// DoubleTap clicks twice where the window says label.
func DoubleTap(t testing.TB, w *Window, label string) {
	t.Helper()
	all := reachable(t, w, label)
	require.Len(t, all, 1, "%q stands in %d places", label, len(all))
	at := all[0].centre()
	click(w, at)
	s, _ := under(w, at, clickable)
	if d, ok := s.object.(fyne.DoubleTappable); ok {
		d.DoubleTapped(&fyne.PointEvent{AbsolutePosition: at, Position: at.Subtract(s.at)})
		return
	}
	click(w, at)
}

// Hover rests the pointer where the window says label.
func Hover(t testing.TB, w *Window, label string) {
	t.Helper()
	for _, s := range texts(w) {
		if words(s.object) == label {
			HoverAt(w, s.centre())
			return
		}
	}
	require.Fail(t, "nothing to point at", "%q is not among: %s", label, strings.Join(Read(w), " | "))
}

// HoverAt rests the pointer at a place, in units from the window's corner; a
// place beside the window takes it away.
func HoverAt(w *Window, at fyne.Position) {
	s, _ := under(w, at, hoverable)
	h, _ := s.object.(desktop.Hoverable)
	if w.over != nil && w.over != h {
		w.over.MouseOut()
	}
	e := &desktop.MouseEvent{PointEvent: fyne.PointEvent{AbsolutePosition: at, Position: at.Subtract(s.at)}}
	if h != nil && w.over != h {
		h.MouseIn(e)
	}
	if h != nil {
		h.MouseMoved(e)
	}
	w.over = h
}

// Leave takes the pointer off the window.
func Leave(w *Window) { HoverAt(w, fyne.NewPos(-1, -1)) }

// Drag presses at one place, moves to another and lets go.
func Drag(t testing.TB, w *Window, from, to fyne.Position) {
	t.Helper()
	s, ok := under(w, from, func(o fyne.CanvasObject) bool { _, ok := o.(fyne.Draggable); return ok })
	require.True(t, ok, "nothing to drag at %v", from)
	mouse(s, from, true)
	const steps = 4
	step := fyne.NewDelta((to.X-from.X)/steps, (to.Y-from.Y)/steps)
	d := s.object.(fyne.Draggable)
	for i := range steps {
		p := from.AddXY(step.DX*float32(i+1), step.DY*float32(i+1))
		d.Dragged(&fyne.DragEvent{PointEvent: fyne.PointEvent{AbsolutePosition: p, Position: p.Subtract(s.at)}, Dragged: step})
	}
	d.DragEnd()
	mouse(s, to, false)
}

// Scroll turns the wheel where the window says label: down is negative.
func Scroll(t testing.TB, w *Window, label string, units float32) {
	t.Helper()
	for _, s := range texts(w) {
		if words(s.object) != label {
			continue
		}
		if v, ok := under(w, s.centre(), scrollable); ok {
			v.object.(fyne.Scrollable).Scrolled(&fyne.ScrollEvent{Scrolled: fyne.NewDelta(0, units)})
			return
		}
	}
	require.Fail(t, "nothing to scroll", "at %q", label)
}

// reachable are the places that say label and would get a click in their middle.
func reachable(t testing.TB, w *Window, label string) (all []spot) {
	t.Helper()
	read := 0
	for _, s := range texts(w) {
		if words(s.object) != label {
			continue
		}
		read++
		if top, ok := under(w, s.centre(), clickable); ok && (top.object == s.object || inside(s, top.object)) {
			all = append(all, s)
		}
	}
	require.NotZero(t, read, "nothing says %q; the window says: %s", label, strings.Join(Read(w), " | "))
	require.NotEmpty(t, all, "%q cannot be clicked: it is covered, out of sight or plain text", label)
	return all
}

func inside(s spot, o fyne.CanvasObject) bool {
	for _, parent := range s.within {
		if parent == o {
			return true
		}
	}
	return false
}

// click does what the desktop driver does for a press and a release.
func click(w *Window, at fyne.Position) {
	HoverAt(w, at)
	s, ok := under(w, at, clickable)
	if !ok {
		w.Canvas().Unfocus()
		return
	}
	mouse(s, at, true)
	_, onFocusable := under(w, at, func(o fyne.CanvasObject) bool { _, ok := o.(fyne.Focusable); return ok })
	if !onFocusable {
		w.Canvas().Unfocus()
	}
	mouse(s, at, false)
	if tap, ok := s.object.(fyne.Tappable); ok {
		tap.Tapped(&fyne.PointEvent{AbsolutePosition: at, Position: at.Subtract(s.at)})
	}
}

func mouse(s spot, at fyne.Position, down bool) {
	m, ok := s.object.(desktop.Mouseable)
	if !ok {
		return
	}
	e := &desktop.MouseEvent{
		PointEvent: fyne.PointEvent{AbsolutePosition: at, Position: at.Subtract(s.at)},
		Button:     desktop.MouseButtonPrimary,
	}
	if down {
		m.MouseDown(e)
	} else {
		m.MouseUp(e)
	}
}
