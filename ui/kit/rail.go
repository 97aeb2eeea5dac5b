package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"windlass/ui/look"
)

// RailItem is one room on the rail at a window's side.
type RailItem struct {
	pressable
	label  string
	key    string
	here   bool
	ground *canvas.Rectangle
	stroke *canvas.Rectangle
	ring   *canvas.Rectangle
	text   *canvas.Text
	hint   *canvas.Text
}

// railHeight is the height of an item on the rail.
const railHeight = 40

// NewRailItem returns an item that leads to a room; key names the key that does
// the same.
func NewRailItem(label, key string, do func()) *RailItem {
	r := &RailItem{label: label, key: key}
	r.is(r, do)
	return r
}

// Here marks the item whose room is in front.
func (r *RailItem) Here(yes bool) {
	if r.here == yes {
		return
	}
	r.here = yes
	r.Refresh()
}

// Label implements [Labelled].
func (r *RailItem) Label() string { return r.label }

// CreateRenderer implements fyne.Widget.
func (r *RailItem) CreateRenderer() fyne.WidgetRenderer {
	r.ground, r.stroke, r.ring = box(look.Radius), box(1.5), box(look.Radius)
	r.text, r.hint = words(look.BodySize, false), words(look.CaptionSize, false)
	r.hint.Alignment = fyne.TextAlignTrailing
	return (&drawing{
		of: r, objects: []fyne.CanvasObject{r.ground, r.stroke, r.text, r.hint, r.ring},
		place: r.place,
		measure: func() fyne.Size {
			wide := widthOf(r.label, look.BodySize, true) + widthOf(r.key, look.CaptionSize, false)
			return fyne.NewSize(wide+3*look.Gap4+2*look.Gap2, railHeight)
		},
		paint: r.paint,
	}).start()
}

func (r *RailItem) place(size fyne.Size) {
	put(r.ground, look.Gap2, 2, size.Width-2*look.Gap2, size.Height-4)
	put(r.ring, look.Gap2, 2, size.Width-2*look.Gap2, size.Height-4)
	put(r.stroke, look.Gap2, 10, 3, size.Height-20)
	put(r.text, look.Gap5, 0, size.Width-2*look.Gap5, size.Height)
	put(r.hint, look.Gap5, 0, size.Width-2*look.Gap5, size.Height)
}

func (r *RailItem) paint() {
	p := look.Current()
	ink := p[look.Muted]
	switch {
	case r.here:
		fill(r.ground, p[look.Selection])
		ink = p[look.Text]
	case r.hovered:
		fill(r.ground, p[look.Hover])
		ink = p[look.Text]
	default:
		fill(r.ground, p[look.Surface])
	}
	fill(r.stroke, p[look.Accent])
	r.stroke.Hidden = !r.here
	r.text.TextStyle.Bold = r.here
	say(r.text, r.label, ink)
	say(r.hint, r.key, p[look.Muted])
	paintRing(r.ring, r.focused)
}
