package kit

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"windlass/ui/look"
)

// manner is how much a button asks to be pressed.
type manner uint8

const (
	quiet manner = iota
	primary
	danger
	plain
)

// Button does one thing. It may show the key that does the same.
type Button struct {
	pressable
	label  string
	key    string
	manner manner
	shape  Shape
	glyph  *glyph
	ground *canvas.Rectangle
	ring   *canvas.Rectangle
	text   *canvas.Text
	cap    *keycap
}

// NewButton returns a quiet button that calls do.
func NewButton(label string, do func()) *Button {
	b := &Button{label: label}
	b.is(b, do)
	return b
}

// Quiet takes back that it matters more than its neighbours.
func (b *Button) Quiet() *Button { return b.as(quiet) }

// Primary makes it the one button of its place that matters most.
func (b *Button) Primary() *Button { return b.as(primary) }

// Danger marks it as one that takes something away.
func (b *Button) Danger() *Button { return b.as(danger) }

// Plain takes its ground away, for bars of many small buttons.
func (b *Button) Plain() *Button { return b.as(plain) }

func (b *Button) as(m manner) *Button {
	b.manner = m
	b.Refresh()
	return b
}

// Key shows the key that does the same, such as "N" or "Ctrl+Z". The window
// listens for it; the button only tells.
func (b *Button) Key(name string) *Button {
	b.key = name
	b.Refresh()
	return b
}

// Tip sets what the button tells a pointer that rests on it.
func (b *Button) Tip(text string) *Button {
	b.tip = text
	return b
}

// Mark sets a shape before the label.
func (b *Button) Mark(s Shape) *Button {
	b.shape = s
	b.Refresh()
	return b
}

// SetLabel changes what the button says.
func (b *Button) SetLabel(label string) {
	if b.label == label {
		return
	}
	b.label = label
	b.Refresh()
}

// Able switches the button on or off.
func (b *Button) Able(yes bool) {
	if yes {
		b.Enable()
	} else {
		b.Disable()
	}
}

// Press does what a tap does; nothing while the button is off.
func (b *Button) Press() { b.do() }

// Label implements [Labelled]. A button without words reads as its tip.
func (b *Button) Label() string {
	if b.label == "" {
		return b.tip
	}
	return b.label
}

// CreateRenderer implements fyne.Widget.
func (b *Button) CreateRenderer() fyne.WidgetRenderer {
	b.ground, b.ring, b.text = box(look.Radius), ring(), words(look.BodySize, true)
	b.glyph, b.cap = newGlyph(), newKeycap()
	objects := []fyne.CanvasObject{b.ground, b.text, b.cap.ground, b.cap.text, b.ring}
	return (&drawing{
		of: b, objects: append(objects, b.glyph.objects...),
		place: b.place, measure: b.measure, paint: b.paint,
	}).start()
}

// parts are the widths of the mark, the label and the key, and of all three with
// the gaps between those that are there.
func (b *Button) parts() (mark, label, key, all float32) {
	if b.shape != NoShape {
		mark = look.Gap3
	}
	label = widthOf(b.label, look.BodySize, true)
	key = b.cap.width(b.key)
	n := float32(-1)
	for _, w := range []float32{mark, label, key} {
		if w > 0 {
			all, n = all+w, n+1
		}
	}
	return mark, label, key, all + max(n, 0)*look.Gap2
}

func (b *Button) measure() fyne.Size {
	_, _, _, all := b.parts()
	return fyne.NewSize(all+2*b.margin(), look.ControlHeight)
}

func (b *Button) margin() float32 {
	if b.manner == plain || b.label == "" {
		return look.Gap3
	}
	return look.Gap4
}

func (b *Button) place(size fyne.Size) {
	b.ground.Resize(size)
	placeRing(b.ring, size)
	mark, label, key, all := b.parts()
	x := (size.Width - all) / 2
	if mark > 0 {
		b.glyph.put(x, (size.Height-mark)/2, mark)
		x += mark + look.Gap2
	}
	if label > 0 {
		put(b.text, x, 0, label, size.Height)
		x += label + look.Gap2
	}
	b.cap.put(x, size.Height/2, key)
}

func (b *Button) paint() {
	ground, edge, ink := b.colours()
	outline(b.ground, ground, edge, look.Hairline)
	say(b.text, b.label, ink)
	b.glyph.set(b.shape, ink)
	b.cap.set(b.key, ink)
	paintRing(b.ring, b.focused && !b.Disabled())
}

// colours are those of the button's manner and present state.
func (b *Button) colours() (ground, edge color.Color, ink color.NRGBA) {
	p := look.Current()
	if b.Disabled() {
		return p[look.Surface], p[look.Line], p[look.Muted]
	}
	switch b.manner {
	case primary:
		return b.lit(p[look.Accent], p), color.Transparent, p[look.OnAccent]
	case danger:
		if b.hovered {
			return b.lit(p[look.Bad], p), color.Transparent, p[look.OnBad]
		}
		return color.Transparent, p[look.Bad], p[look.Bad]
	case plain:
		if b.hovered {
			return p[look.Hover], color.Transparent, p[look.Text]
		}
		return color.Transparent, color.Transparent, p[toneIf(b.label == "", look.Muted, look.Text)]
	}
	if b.hovered {
		return b.lit(p[look.Raised], p), p[look.Edge], p[look.Text]
	}
	return p[look.Raised], p[look.Line], p[look.Text]
}

func toneIf(yes bool, then, otherwise look.Meaning) look.Meaning {
	if yes {
		return then
	}
	return otherwise
}

// lit moves a ground towards the text's colour: a little under the pointer, more
// while pressed, never so far that the label would be hard to read.
func (b *Button) lit(c color.NRGBA, p look.Palette) color.NRGBA {
	switch {
	case b.held:
		return mix(c, p[look.Text], 0.25)
	case b.hovered:
		return mix(c, p[look.Text], 0.10)
	}
	return c
}

// mix is a share of b in a.
func mix(a, b color.NRGBA, share float32) color.NRGBA {
	part := func(x, y uint8) uint8 { return uint8(float32(x)*(1-share) + float32(y)*share + 0.5) }
	return color.NRGBA{R: part(a.R, b.R), G: part(a.G, b.G), B: part(a.B, b.B), A: 0xFF}
}
