package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"windlass/ui/look"
)

// Toggle is a yes or no with a label.
type Toggle struct {
	pressable
	label   string
	on      bool
	changed func(bool)
	square  *canvas.Rectangle
	ring    *canvas.Rectangle
	text    *canvas.Text
	glyph   *glyph
}

// toggleSide is the side of a toggle's square.
const toggleSide = look.Gap5

// NewToggle returns a toggle; changed, if not nil, hears of every change that a
// coach makes.
func NewToggle(label string, on bool, changed func(bool)) *Toggle {
	t := &Toggle{label: label, on: on, changed: changed}
	t.is(t, t.flip)
	return t
}

// On reports whether the toggle is on.
func (t *Toggle) On() bool { return t.on }

// Set changes the toggle without telling anybody.
func (t *Toggle) Set(on bool) {
	if t.on == on {
		return
	}
	t.on = on
	t.Refresh()
}

// SetLabel changes what the toggle says.
func (t *Toggle) SetLabel(label string) {
	if t.label == label {
		return
	}
	t.label = label
	t.Refresh()
}

// Tip sets what the toggle tells a pointer that rests on it.
func (t *Toggle) Tip(text string) *Toggle {
	t.tip = text
	return t
}

func (t *Toggle) flip() {
	t.on = !t.on
	t.Refresh()
	if t.changed != nil {
		t.changed(t.on)
	}
}

// Label implements [Labelled].
func (t *Toggle) Label() string { return t.label }

// CreateRenderer implements fyne.Widget.
func (t *Toggle) CreateRenderer() fyne.WidgetRenderer {
	t.square, t.ring = box(4), ring()
	t.text, t.glyph = words(look.BodySize, false), newGlyph()
	return (&drawing{
		of: t, objects: append([]fyne.CanvasObject{t.square, t.text, t.ring}, t.glyph.objects...),
		place: t.place,
		measure: func() fyne.Size {
			return fyne.NewSize(toggleSide+look.Gap2+widthOf(t.label, look.BodySize, false), look.ControlHeight)
		},
		paint: t.paint,
	}).start()
}

func (t *Toggle) place(size fyne.Size) {
	y := (size.Height - toggleSide) / 2
	put(t.square, 0, y, toggleSide, toggleSide)
	put(t.ring, -3, y-3, toggleSide+6, toggleSide+6)
	t.glyph.put(4, y+4, toggleSide-8)
	put(t.text, toggleSide+look.Gap2, 0, max(0, size.Width-toggleSide-look.Gap2), size.Height)
}

func (t *Toggle) paint() {
	p := look.Current()
	ink := p[look.Text]
	if t.Disabled() {
		ink = p[look.Muted]
	}
	say(t.text, t.label, ink)
	if t.on {
		outline(t.square, p[look.Accent], p[look.Accent], look.Hairline)
		t.glyph.set(Tick, p[look.OnAccent])
	} else {
		ground := p[look.Ground]
		if t.hovered {
			ground = p[look.Hover]
		}
		outline(t.square, ground, p[look.Edge], look.Hairline)
		t.glyph.set(NoShape, ink)
	}
	paintRing(t.ring, t.focused && !t.Disabled())
}

// TypedKey implements fyne.Focusable. Space turns the toggle; Return is left to
// the question or the window, so that it always means the usual answer.
func (t *Toggle) TypedKey(key *fyne.KeyEvent) {
	if key.Name == fyne.KeyReturn || key.Name == fyne.KeyEnter {
		PassKey(t, key)
		return
	}
	t.pressable.TypedKey(key)
}
