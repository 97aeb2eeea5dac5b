package uitest

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
)

// settle does what the desktop driver does before it draws: where an object's
// least size changed, its parent is laid out anew, from the leaves to the root.
// Nothing else is laid out, so a room that forgets to refresh is still found out.
func (w *Window) settle() {
	for _, root := range append([]fyne.CanvasObject{w.Content()}, w.Canvas().Overlays().List()...) {
		w.settleTree(root)
	}
}

// settleTree reports whether the object's least size changed.
func (w *Window) settleTree(o fyne.CanvasObject) (changed bool) {
	if !o.Visible() {
		return false
	}
	stale := false
	for _, child := range children(o) {
		stale = w.settleTree(child) || stale
	}
	if stale {
		layOut(o)
	}
	least := o.MinSize()
	if w.least[o] == least {
		return false
	}
	w.least[o] = least
	return true
}

func layOut(o fyne.CanvasObject) {
	switch o := o.(type) {
	case *fyne.Container:
		if o.Layout != nil {
			o.Layout.Layout(o.Objects, o.Size())
		}
	case fyne.Widget:
		test.WidgetRenderer(o).Layout(o.Size())
	}
}
