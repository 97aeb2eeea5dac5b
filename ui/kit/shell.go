package kit

import (
	"slices"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"windlass/ui/look"
)

// tipDelay is how long a pointer rests before it is told more.
const tipDelay = 600 * time.Millisecond

// Shell is the outermost widget of a window: the content, and above it a layer
// on which tips and drop lists are drawn. Without it they are not shown.
type Shell struct {
	widget.BaseWidget
	// TipDelay is how long a pointer rests on a widget before its tip shows; at
	// zero it shows at once.
	TipDelay time.Duration
	content  fyne.CanvasObject
	layer    *floating
}

// NewShell returns the outermost widget around a window's content.
func NewShell(content fyne.CanvasObject) *Shell {
	s := &Shell{content: content, layer: newFloating(), TipDelay: tipDelay}
	s.ExtendBaseWidget(s)
	return s
}

// CreateRenderer implements fyne.Widget.
func (s *Shell) CreateRenderer() fyne.WidgetRenderer {
	return (&drawing{
		of: s, objects: []fyne.CanvasObject{s.content, s.layer.box},
		place: func(size fyne.Size) {
			s.content.Resize(size)
			s.layer.box.Resize(size)
		},
		measure: func() fyne.Size { return s.content.MinSize() },
	}).start()
}

func (s *Shell) floats() *floating      { return s.layer }
func (s *Shell) tipWait() time.Duration { return s.TipDelay }
func (m *Modal) floats() *floating      { return m.layer }

// tipWait is that of the window which the question stands in front of.
func (m *Modal) tipWait() time.Duration {
	if s, ok := m.window.Content().(*Shell); ok {
		return s.TipDelay
	}
	return tipDelay
}

// floater is an outermost widget with a layer to draw on.
type floater interface {
	floats() *floating
	tipWait() time.Duration
}

// floaterOf finds the layer above an object: that of the question in front, or
// that of the window.
func floaterOf(o fyne.CanvasObject) floater {
	c := canvasOf(o)
	if c == nil {
		return nil
	}
	if f, ok := c.Overlays().Top().(floater); ok {
		return f
	}
	f, _ := c.Content().(floater)
	return f
}

// floating is a layer whose objects stand where they were put.
type floating struct {
	box  *fyne.Container
	tips int // counts the tips asked for, so that a late one can tell it is stale
	tip  *tip
}

func newFloating() *floating { return &floating{box: container.NewWithoutLayout()} }

// under is the place for a sheet of a height below an object, or above it where
// the window ends.
func (f *floating) under(o fyne.CanvasObject, height float32) fyne.Position {
	d := fyne.CurrentApp().Driver()
	at := d.AbsolutePositionForObject(o).Subtract(d.AbsolutePositionForObject(f.box))
	below := at.Y + o.Size().Height + look.Gap1
	if below+height > f.box.Size().Height {
		below = max(0, at.Y-height-look.Gap1)
	}
	return fyne.NewPos(at.X, below)
}

// has reports whether an object is on the layer.
func (f *floating) has(o fyne.CanvasObject) bool { return slices.Contains(f.box.Objects, o) }

// show puts an object on the layer, once.
func (f *floating) show(o fyne.CanvasObject, at fyne.Position, size fyne.Size) {
	o.Move(at)
	o.Resize(size)
	if f.has(o) {
		f.box.Refresh()
		return
	}
	f.box.Add(o)
}

// drop takes an object off the layer.
func (f *floating) drop(o fyne.CanvasObject) { f.box.Remove(o) }
