package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"windlass/ui/look"
)

// railHeight is the height of one place on a rail, and railWidth its least width.
const (
	railHeight float32 = 44
	railWidth  float32 = 176
)

// RailItem is one place on the rail at the side of a window: its name, the key
// that leads there, and a mark on the one where the reader is.
type RailItem struct {
	pressable
	name, key string
	here      bool
	ground    *canvas.Rectangle
	bar       *canvas.Rectangle
	ring      *canvas.Rectangle
	text      *canvas.Text
	hint      *canvas.Text
}

// NewRailItem returns a place that calls do when it is chosen.
func NewRailItem(name, key string, do func()) *RailItem {
	r := &RailItem{name: name, key: key}
	r.is(r, do)
	return r
}

// Here marks the place as the one where the reader is, or not.
func (r *RailItem) Here(yes bool) {
	if r.here == yes {
		return
	}
	r.here = yes
	r.Refresh()
}

// Label implements [Labelled].
func (r *RailItem) Label() string { return r.name }

// CreateRenderer implements fyne.Widget.
func (r *RailItem) CreateRenderer() fyne.WidgetRenderer {
	r.ground, r.bar, r.ring = box(look.Radius), box(look.Hairline), ring()
	r.text, r.hint = words(look.BodySize, true), words(look.CaptionSize, false)
	r.hint.Alignment = fyne.TextAlignTrailing
	return (&drawing{
		of: r, objects: []fyne.CanvasObject{r.ground, r.bar, r.text, r.hint, r.ring},
		place: r.place, measure: func() fyne.Size { return fyne.NewSize(railWidth, railHeight) }, paint: r.paint,
	}).start()
}

func (r *RailItem) place(size fyne.Size) {
	r.ground.Resize(size)
	placeRing(r.ring, size)
	put(r.bar, 0, look.Gap2, look.Gap1, size.Height-2*look.Gap2)
	put(r.text, look.Gap4, 0, size.Width-2*look.Gap4, size.Height)
	put(r.hint, look.Gap4, 0, size.Width-2*look.Gap4, size.Height)
}

func (r *RailItem) paint() {
	p := look.Current()
	ground, ink := p[look.Surface], p[look.Muted]
	switch {
	case r.here:
		ground, ink = p[look.Raised], p[look.Text]
	case r.hovered:
		ground, ink = p[look.Hover], p[look.Text]
	}
	fill(r.ground, ground)
	fill(r.bar, p[look.Accent])
	r.bar.Hidden = !r.here
	say(r.text, r.name, ink)
	say(r.hint, r.key, p[look.Muted])
	paintRing(r.ring, r.focused)
}
