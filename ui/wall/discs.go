package wall

import (
	"fmt"

	"fyne.io/fyne/v2"

	"windlass/internal/mass"
	"windlass/internal/plates"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// Sizes of the picture of plates, in shares of the text size.
const (
	discHeight = 1.34 // of a full disc
	discGap    = 0.06
	flange     = 0.16 // the end of the shaft, against which the first disc stands
	sleeveEnd  = 0.18 // of the sleeve, outside the last disc
	labelShare = 0.8  // of the masses on the discs; never under the least angle
	labelPad   = 0.14
)

// discsOf are the discs of a side as they are drawn: a unit that is not the gym's is
// named.
func discsOf(discs []plates.Disc, unit mass.Unit, sport bool) []kit.PlateDisc {
	var drawn []kit.PlateDisc
	for _, d := range discs {
		disc := kit.DiscOf(d.Mass, d.Unit, d.Full, sport)
		if d.Unit != unit {
			disc.Label = d.String()
		}
		drawn = append(drawn, disc)
	}
	return drawn
}

// discsWidth is the width of a row's plates with labels of a size, both in shares of
// the text size.
func discsWidth(r Row, label float32) float32 {
	w := flange + sleeveEnd + r.barWidth()
	if r.Bare {
		return w + 0.3 + share(r.bare(), false)
	}
	for _, run := range runsOf(r.Discs) {
		w += run.width(label)
	}
	return w
}

// run is discs of one kind side by side. Two are drawn apart; of more, the inner
// ones show their edges and the outer one says how many there are.
type run struct {
	kit.PlateDisc
	count int
}

func runsOf(discs []kit.PlateDisc) []run {
	var runs []run
	for i := 0; i < len(discs); {
		n := 1
		for i+n < len(discs) && discs[i+n].Label == discs[i].Label && discs[i+n].Diameter == discs[i].Diameter {
			n++
		}
		d := discs[i]
		i += n
		if n < 3 {
			for range n {
				runs = append(runs, run{d, 1})
			}
			continue
		}
		d.Label = fmt.Sprintf("%d×%s", n, d.Label)
		runs = append(runs, run{d, n})
	}
	return runs
}

// edge is the width of a disc of which only the edge is seen, and mostEdges how
// many are drawn at most: the number says the rest.
const (
	edge      = 0.16
	mostEdges = 3
)

func (r run) edges() int { return min(mostEdges, r.count-1) }

// width is that of the run, with its label at a share of the text size.
func (r run) width(label float32) float32 {
	return discWidth(r.PlateDisc, label) + float32(r.edges())*edge + discGap
}

// discWidth is the width of one disc with its mass at a share of the text size.
func discWidth(d kit.PlateDisc, label float32) float32 {
	return max(d.Width*discHeight, share(d.Label, true)*label+labelPad)
}

// discs draws one end of the bar as it stands: every disc as high as it is in the
// gym, with its mass on it.
func (p painter) discs(a area, r Row, f fit) {
	if !r.Bare && len(r.Discs) == 0 {
		return
	}
	t := f.text
	label := f.label
	middle := a.y + a.h/2
	if named := r.barWidth() * t; named > 0 {
		p.line(area{a.x, a.y, named, a.h}, r.Bar, style{size: t, bold: true, ink: p.pal[look.Accent]})
		a.x, a.w = a.x+named, a.w-named
	}
	whole := (discsWidth(r, label) - r.barWidth()) * t
	p.box(area{a.x, middle - 0.08*t, whole, 0.16 * t}, p.pal[look.Edge], none, 0, 0)
	p.box(area{a.x, middle - 0.3*t, flange * t * 0.8, 0.6 * t}, p.pal[look.Edge], none, 0, 0.03*t)
	x := a.x + flange*t
	if r.Bare {
		p.line(area{x + (sleeveEnd+0.3)*t, a.y, a.w, a.h}, r.bare(), style{size: t, ink: p.pal[look.Muted]})
		return
	}
	for _, run := range runsOf(r.Discs) {
		w, high := discWidth(run.PlateDisc, label)*t, max(run.Diameter*discHeight, 1.0*label)*t
		for range run.edges() {
			p.disc(area{x, middle - high/2, 2 * edge * t, high}, kit.PlateDisc{Colour: run.Colour}, label*t)
			x += edge * t
		}
		p.disc(area{x, middle - high/2, w, high}, run.PlateDisc, label*t)
		x += w + discGap*t
	}
}

func (p painter) disc(a area, d kit.PlateDisc, label float32) {
	ground := d.Colour
	if ground.A == 0 {
		ground = p.pal[look.Hover]
	}
	p.box(a, ground, p.pal[look.Text], max(1, label*0.04), label*0.12)
	p.line(a, d.Label, style{size: label, bold: true, ink: look.InkOn(ground), align: fyne.TextAlignCenter})
}
