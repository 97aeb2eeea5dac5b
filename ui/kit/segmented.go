package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"

	"windlass/ui/look"
)

// Segmented is a choice of one from a few, all in sight.
type Segmented struct {
	pressable
	labels  []string
	chosen  int
	under   int // the segment under the pointer, or −1
	changed func(int)
	track   *canvas.Rectangle
	light   *canvas.Rectangle
	stroke  *canvas.Rectangle
	ring    *canvas.Rectangle
	texts   []*canvas.Text
	made    *drawing
}

// NewSegmented returns a choice of one label; changed, if not nil, hears of every
// change that a coach makes.
func NewSegmented(labels []string, chosen int, changed func(int)) *Segmented {
	s := &Segmented{labels: labels, chosen: chosen, under: -1, changed: changed}
	s.is(s, nil)
	return s
}

// Chosen returns the number of the chosen segment.
func (s *Segmented) Chosen() int { return s.chosen }

// Set chooses a segment without telling anybody; a number that is none is
// ignored.
func (s *Segmented) Set(i int) {
	if i < 0 || i >= len(s.labels) || i == s.chosen {
		return
	}
	s.chosen = i
	s.Refresh()
}

// SetLabels changes what there is to choose from.
func (s *Segmented) SetLabels(labels []string, chosen int) {
	s.labels, s.chosen = labels, chosen
	s.Refresh()
}

func (s *Segmented) choose(i int) {
	if s.Disabled() || i < 0 || i >= len(s.labels) || i == s.chosen {
		return
	}
	s.chosen = i
	s.Refresh()
	if s.changed != nil {
		s.changed(i)
	}
}

// Tapped implements fyne.Tappable.
func (s *Segmented) Tapped(e *fyne.PointEvent) {
	Focus(s)
	s.choose(s.at(e.Position.X))
}

// MouseMoved implements desktop.Hoverable.
func (s *Segmented) MouseMoved(e *desktop.MouseEvent) {
	if i := s.at(e.Position.X); i != s.under {
		s.under = i
		s.Refresh()
	}
}

// MouseOut implements desktop.Hoverable.
func (s *Segmented) MouseOut() {
	s.under = -1
	s.pressable.MouseOut()
}

// TypedKey implements fyne.Focusable: the arrows choose.
func (s *Segmented) TypedKey(key *fyne.KeyEvent) {
	switch key.Name {
	case fyne.KeyLeft:
		s.choose(s.chosen - 1)
	case fyne.KeyRight:
		s.choose(s.chosen + 1)
	case fyne.KeyHome:
		s.choose(0)
	case fyne.KeyEnd:
		s.choose(len(s.labels) - 1)
	default:
		PassKey(s, key)
	}
}

// CreateRenderer implements fyne.Widget.
func (s *Segmented) CreateRenderer() fyne.WidgetRenderer {
	s.track, s.light, s.stroke, s.ring = box(look.Radius), box(look.Radius-2), box(1), ring()
	s.made = &drawing{of: s, place: s.place, measure: s.measure, paint: s.paint}
	return s.made.start()
}

func (s *Segmented) measure() fyne.Size {
	all := float32(0)
	for _, label := range s.labels {
		all += s.width(label)
	}
	return fyne.NewSize(all+4, look.ControlHeight)
}

// width is that of a segment: its label in bold, so that choosing moves nothing.
func (s *Segmented) width(label string) float32 {
	return widthOf(label, look.BodySize, true) + 2*look.Gap3
}

// at is the segment at a place.
func (s *Segmented) at(x float32) int {
	x -= 2
	for i, label := range s.labels {
		if x -= s.width(label) * s.stretch(); x < 0 {
			return i
		}
	}
	return len(s.labels) - 1
}

// stretch is how much wider than they need the segments stand.
func (s *Segmented) stretch() float32 {
	return max(1, (s.Size().Width-4)/max(1, s.measure().Width-4))
}

func (s *Segmented) place(size fyne.Size) {
	s.track.Resize(size)
	placeRing(s.ring, size)
	x := float32(2)
	for i, label := range s.labels {
		w := s.width(label) * s.stretch()
		put(s.texts[i], x, 0, w, size.Height)
		if i == s.chosen {
			put(s.light, x, 2, w, size.Height-4)
			put(s.stroke, x+look.Gap3, size.Height-5, w-2*look.Gap3, 2)
		}
		x += w
	}
}

func (s *Segmented) paint() {
	p := look.Current()
	outline(s.track, p[look.Ground], p[look.Edge], look.Hairline)
	fill(s.light, p[look.Selection])
	fill(s.stroke, p[look.Accent])
	paintRing(s.ring, s.focused)
	s.made.objects = append(s.made.objects[:0], s.track, s.light, s.stroke, s.ring)
	for i, label := range s.labels {
		if i == len(s.texts) {
			t := words(look.BodySize, false)
			t.Alignment = fyne.TextAlignCenter
			s.texts = append(s.texts, t)
		}
		t := s.texts[i]
		ink := p[look.Muted]
		if i == s.chosen || i == s.under {
			ink = p[look.Text]
		}
		t.TextStyle.Bold = i == s.chosen
		say(t, label, ink)
		s.made.objects = append(s.made.objects, t)
	}
}
