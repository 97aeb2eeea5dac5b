package uitest

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"

	"windlass/ui/kit"
)

// spot is one visible object and where it is on the window.
type spot struct {
	object   fyne.CanvasObject
	at       fyne.Position
	from, to fyne.Position // the part of the window that it is not cut off from
	within   []fyne.CanvasObject
}

func (s spot) centre() fyne.Position {
	size := s.object.Size()
	return s.at.AddXY(size.Width/2, size.Height/2)
}

// holds reports whether a pointer at p is on the object.
func (s spot) holds(p fyne.Position) bool {
	to := s.at.Add(s.object.Size())
	return p.X >= max(s.at.X, s.from.X) && p.Y >= max(s.at.Y, s.from.Y) &&
		p.X < min(to.X, s.to.X) && p.Y < min(to.Y, s.to.Y)
}

// walk visits every visible object, back to front; visit says whether to go on
// into the object.
func walk(s spot, visit func(spot) bool) {
	if !s.object.Visible() {
		return
	}
	s.at = s.at.Add(s.object.Position())
	if _, clips := s.object.(fyne.Scrollable); clips {
		to := s.at.Add(s.object.Size())
		s.from = fyne.NewPos(max(s.from.X, s.at.X), max(s.from.Y, s.at.Y))
		s.to = fyne.NewPos(min(s.to.X, to.X), min(s.to.Y, to.Y))
	}
	if !visit(s) {
		return
	}
	for _, child := range children(s.object) {
		next := s
		next.object = child
		next.within = append(s.within[:len(s.within):len(s.within)], s.object)
		walk(next, visit)
	}
}

func children(o fyne.CanvasObject) []fyne.CanvasObject {
	switch o := o.(type) {
	case *fyne.Container:
		return o.Objects
	case fyne.Widget:
		return test.WidgetRenderer(o).Objects()
	}
	return nil
}

// front is what the coach can reach: the question in front, or else the content.
func front(w *Window) spot {
	w.settle()
	root := w.Canvas().Overlays().Top()
	if root == nil {
		root = w.Content()
	}
	return spot{object: root, to: fyne.NewPos(0, 0).Add(w.Canvas().Size())}
}

// texts are the readable objects of a window, back to front: drawn texts and
// widgets with a label. What a labelled widget is drawn with is not read again.
func texts(w *Window) []spot {
	var found []spot
	walk(front(w), func(s spot) bool {
		if words(s.object) != "" {
			found = append(found, s)
		}
		_, labelled := s.object.(kit.Labelled)
		return !labelled
	})
	return found
}

// words are what an object says.
func words(o fyne.CanvasObject) string {
	switch o := o.(type) {
	case kit.Labelled:
		return o.Label()
	case *canvas.Text:
		return o.Text
	}
	return ""
}

// under finds the topmost object at a place that a pointer can work.
func under(w *Window, p fyne.Position, works func(fyne.CanvasObject) bool) (spot, bool) {
	var top spot
	walk(front(w), func(s spot) bool {
		if works(s.object) && s.holds(p) {
			top = s
		}
		return true
	})
	return top, top.object != nil
}

// clickable is what the desktop driver gives a press of the button to.
func clickable(o fyne.CanvasObject) bool {
	switch o.(type) {
	case fyne.Tappable, fyne.SecondaryTappable, fyne.DoubleTappable, fyne.Focusable, desktop.Mouseable:
		return true
	}
	return false
}

func hoverable(o fyne.CanvasObject) bool {
	_, ok := o.(desktop.Hoverable)
	return ok
}

func scrollable(o fyne.CanvasObject) bool {
	_, ok := o.(fyne.Scrollable)
	return ok
}
