package kit

import (
	"fmt"
	"image/color"
	"strings"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"windlass/ui/look"
)

// rungFace is the drawing of one rung.
type rungFace struct {
	ground, band        *canvas.Rectangle
	glyph               *glyph
	percent, reps, time *canvas.Text
}

// CreateRenderer implements fyne.Widget.
func (s *RungStrip) CreateRenderer() fyne.WidgetRenderer {
	s.track, s.bar, s.hand = box(3), box(3), box(1.5)
	s.drawn = nil
	s.made = &drawing{
		of: s, place: s.place,
		measure: func() fyne.Size { return fyne.NewSize(float32(len(s.rungs))*look.Gap6, stripHeight) },
	}
	s.place(s.Size())
	return s.made
}

// place lays the rungs out and paints them: what fits depends on the width.
func (s *RungStrip) place(size fyne.Size) {
	for len(s.drawn) < len(s.rungs) {
		s.drawn = append(s.drawn, &rungFace{
			ground: box(look.Radius), band: box(2), glyph: newGlyph(),
			percent: words(look.LeadSize, true), reps: words(look.BodySize, false), time: words(look.CaptionSize, false),
		})
	}
	s.made.objects = s.made.objects[:0]
	how := s.writing(size)
	for i, r := range s.rungs {
		f := s.drawn[i]
		f.show(r, s.stage(i), s.frameOf(i, size), size.Height/stripHeight, how)
		s.made.objects = append(s.made.objects, f.ground, f.band)
		s.made.objects = append(s.made.objects, f.glyph.objects...)
		s.made.objects = append(s.made.objects, f.percent, f.reps, f.time)
	}
	s.placeBar(size)
	s.made.objects = append(s.made.objects, s.track, s.bar, s.hand)
}

// writing is how every rung of a strip is written, as the narrowest of them allows.
type writing struct {
	bare    bool    // percentages have no sign
	stacked bool    // the reps stand under the zone's shape
	percent float32 // the size of percentages
}

func (s *RungStrip) writing(size fyne.Size) writing {
	unit := size.Height / stripHeight
	how := writing{percent: look.LeadSize * unit}
	for i, r := range s.rungs {
		_, inner := inside(s.frameOf(i, size), unit)
		how.percent = min(how.percent, fitting(r.Percent, look.LeadSize*unit, true, inner))
		how.stacked = how.stacked || widthOf(r.Reps, look.BodySize*unit, false) > inner-17*unit
	}
	if how.bare = how.percent == 0; how.bare {
		how.percent = look.LeadSize * unit
	}
	return how
}

// rungGap is between two rungs.
const rungGap = 3

// leastRung is the width that a rung needs to say what it is, at a scale.
func leastRung(r Rung, unit float32) float32 {
	const pad = 4
	unit = min(unit, 1)
	percent := widthOf(r.Percent, look.BodySize*unit, true)
	foot := 17*unit + widthOf(r.Reps, look.BodySize*unit, false)
	return max(percent, foot) + 2*pad + rungGap + 1
}

// inside is a rung's margin, and the width between its margins.
func inside(a area, unit float32) (pad, inner float32) {
	pad = min(8*unit, a.w/13)
	return pad, a.w - 2*pad
}

// stage is whether a rung is over, on or to come.
type stage uint8

const (
	toCome stage = iota
	isOn
	isOver
)

func (s *RungStrip) stage(i int) stage {
	switch {
	case i == s.present:
		return isOn
	case s.now >= s.rungs[i].End:
		return isOver
	}
	return toCome
}

// area is a place and a size.
type area struct{ x, y, w, h float32 }

// frameOf is where a rung stands: above the bar and the line of times.
func (s *RungStrip) frameOf(i int, size fyne.Size) area {
	unit := size.Height / stripHeight
	edges := s.edges(size)
	return area{edges[i], 0, max(0, edges[i+1]-edges[i]-rungGap), size.Height - 30*unit}
}

// placeBar moves the bar and its hand.
func (s *RungStrip) placeBar(size fyne.Size) {
	p, unit := look.Current(), size.Height/stripHeight
	y := size.Height - 26*unit
	put(s.track, 0, y, size.Width, 6*unit)
	fill(s.track, p[look.Raised])
	at := s.x(min(max(s.now, 0), s.length()), size)
	put(s.bar, 0, y, at, 6*unit)
	fill(s.bar, p[look.Accent])
	put(s.hand, at-1.5*unit, y-3*unit, 3*unit, 12*unit)
	fill(s.hand, p[look.Text])
	running := s.now >= 0 && len(s.rungs) > 0
	shown(s.bar, running)
	shown(s.hand, running)
}

// show fills in one rung, at a scale.
func (f *rungFace) show(r Rung, st stage, a area, unit float32, how writing) {
	ink, quiet := f.paint(r, st)
	pad, inner := inside(a, unit)
	put(f.ground, a.x, a.y, a.w, a.h)
	put(f.band, a.x+pad, a.y+5*unit, inner, 4*unit)
	percent := r.Percent
	if how.bare {
		percent = strings.TrimRight(percent, " %")
	}
	drawLine(f.percent, percent, ink, fitting(percent, how.percent, true, inner), area{a.x + pad, a.y + 12*unit, inner, 22 * unit})
	f.showFoot(r, st, ink, area{a.x + pad, a.y + a.h - 24*unit, inner, 20 * unit}, unit, how.stacked)
	drawLine(f.time, minute(r.Start), quiet, look.CaptionSize*unit, area{a.x, a.y + a.h + 14*unit, a.w, 16 * unit})
}

// showFoot sets the zone's shape and the reps side by side, or one above the
// other where a rung is narrow.
func (f *rungFace) showFoot(r Rung, st stage, ink color.NRGBA, a area, unit float32, stacked bool) {
	shape := ink
	if st == toCome {
		shape = look.Color(r.Zone.Meaning())
	}
	f.glyph.set(r.Zone.Shape(), shape)
	mark, size := 12*unit, look.BodySize*unit
	beside := area{a.x + mark + 5*unit, a.y, a.w - mark - 5*unit, a.h}
	if !stacked {
		f.glyph.put(a.x, a.y+(a.h-mark)/2, mark)
		drawLine(f.reps, r.Reps, ink, size, beside)
		return
	}
	mark = min(mark*0.8, a.w)
	f.glyph.put(a.x, a.y-mark*0.9, mark)
	drawLine(f.reps, r.Reps, ink, fitting(r.Reps, size, false, a.w), area{a.x, a.y + 3*unit, a.w, a.h})
}

// paint colours the rung and returns the colours of its words.
func (f *rungFace) paint(r Rung, st stage) (ink, quiet color.NRGBA) {
	p := look.Current()
	zone := p[r.Zone.Meaning()]
	fill(f.band, zone)
	switch st {
	case isOn:
		outline(f.ground, zone, p[look.Text], look.RingWidth)
		return p[look.OnZone], p[look.Text]
	case isOver:
		outline(f.ground, p[look.Surface], p[look.Line], look.Hairline)
		zone.A = 0x60
		fill(f.band, zone)
		return p[look.Muted], p[look.Muted]
	}
	outline(f.ground, p[look.Raised], p[look.Line], look.Hairline)
	return p[look.Text], p[look.Muted]
}

// fitting is the largest text size, up to one, at which a text fits a width; 0
// where even a small one does not.
func fitting(text string, size float32, bold bool, width float32) float32 {
	least := min(size, look.CaptionSize-1)
	for ; size >= least; size-- {
		if widthOf(text, size, bold) <= width {
			return size
		}
	}
	return 0
}

// drawLine draws a text of a size in an area, or not at all at size 0.
func drawLine(t *canvas.Text, text string, c color.NRGBA, size float32, a area) {
	if size == 0 {
		text = ""
	} else if t.TextSize != size {
		t.TextSize = size
		t.Refresh()
	}
	say(t, text, c)
	put(t, a.x, a.y, a.w, a.h)
}

// minute writes the start of a rung for the line of times.
func minute(d time.Duration) string {
	if d%time.Minute == 0 {
		return fmt.Sprintf("%d′", int(d.Minutes()))
	}
	return clock(d)
}
