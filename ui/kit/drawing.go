package kit

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"windlass/ui/look"
)

// drawing is the renderer of every widget here: some objects, a function that
// places them, one that measures them and one that paints them. Paint runs again
// at each refresh, so a change of theme recolours everything.
type drawing struct {
	of      fyne.CanvasObject
	objects []fyne.CanvasObject
	place   func(fyne.Size)
	measure func() fyne.Size
	paint   func()
}

// start paints and places what is there already. Fyne forgets the drawing of a
// widget that was hidden for a minute and asks for a new one without laying it
// out, so the first must be complete.
func (d *drawing) start() *drawing {
	if d.paint != nil {
		d.paint()
	}
	if size := d.of.Size(); !size.IsZero() {
		d.Layout(size)
	}
	return d
}

func (d *drawing) Layout(size fyne.Size) {
	if d.place != nil {
		d.place(size)
	}
}

func (d *drawing) MinSize() fyne.Size { return d.measure() }

func (d *drawing) Objects() []fyne.CanvasObject { return d.objects }

func (d *drawing) Refresh() {
	if d.paint != nil {
		d.paint()
	}
	d.Layout(d.of.Size())
	canvas.Refresh(d.of)
}

func (d *drawing) Destroy() {}

// put moves and sizes an object in one step.
func put(o fyne.CanvasObject, x, y, w, h float32) {
	o.Move(fyne.NewPos(x, y))
	o.Resize(fyne.NewSize(w, h))
}

// box returns a rounded rectangle; paint gives it its colours.
func box(radius float32) *canvas.Rectangle {
	r := canvas.NewRectangle(color.Transparent)
	r.CornerRadius = radius
	return r
}

// fill paints a rectangle without an outline.
func fill(r *canvas.Rectangle, c color.Color) {
	r.FillColor, r.StrokeColor, r.StrokeWidth = c, nil, 0
}

// outline paints a rectangle's edge and inside.
func outline(r *canvas.Rectangle, inside, edge color.Color, width float32) {
	r.FillColor, r.StrokeColor, r.StrokeWidth = inside, edge, width
}

// words returns a drawn text of one line.
func words(size float32, bold bool) *canvas.Text {
	t := canvas.NewText("", color.Transparent)
	t.TextSize = size
	t.TextStyle.Bold = bold
	return t
}

// say changes a drawn text; nothing is drawn anew when nothing changed.
func say(t *canvas.Text, text string, c color.Color) {
	if t.Text == text && t.Color == c {
		return
	}
	t.Text, t.Color = text, c
	t.Refresh()
}

// widthOf is the width of one line of text.
func widthOf(text string, size float32, bold bool) float32 {
	return fyne.MeasureText(text, size, fyne.TextStyle{Bold: bold}).Width
}

// lineOf is the height of a line of text.
func lineOf(size float32) float32 {
	return fyne.MeasureText("0", size, fyne.TextStyle{}).Height
}

// ring is the mark of what the keyboard speaks to. It stands a little outside.
func ring() *canvas.Rectangle {
	r := box(look.Radius + 3)
	r.Hide()
	return r
}

func placeRing(r *canvas.Rectangle, size fyne.Size) {
	put(r, -3, -3, size.Width+6, size.Height+6)
}

func paintRing(r *canvas.Rectangle, focused bool) {
	outline(r, color.Transparent, look.Color(look.Focus), look.RingWidth)
	r.Hidden = !focused
}

// shown hides or shows without a repaint of its own.
func shown(o fyne.CanvasObject, yes bool) {
	if o.Visible() == yes {
		return
	}
	if yes {
		o.Show()
	} else {
		o.Hide()
	}
}
