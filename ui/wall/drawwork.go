package wall

import (
	"fmt"
	"image/color"
	"strings"

	"fyne.io/fyne/v2"

	"windlass/ui/kit"
	"windlass/ui/look"
)

// work draws a page of the conditioning.
func (p painter) work(w Work, at workPage, turn, pages int, notice string) {
	f := at.fit
	p.workHead(at.panel, f)
	for i, column := range f.pages[at.page] {
		where := f.column(i)
		for _, part := range column {
			where.h = f.high(part) * f.text
			p.panel(where, at.panel, part, f)
		}
	}
	p.foot(w.foot(at, turn, pages, notice), f.frame)
}

// hint says how the loads are to be read.
func (w Work) hint() string {
	hint := "Take the load with which you move as intended; of two, standard M / W"
	if w.Unit != "" {
		hint = "Loads in " + w.Unit + ".   " + hint
	}
	return hint
}

// foot is the one line of small text.
func (w Work) foot(at workPage, turn, pages int, notice string) string {
	switch {
	case notice != "":
		return notice
	case len(w.Panels) == 0:
		return "No conditioning is planned for this class"
	}
	var parts []string
	if pages > 1 {
		parts = append(parts, fmt.Sprintf("Page %d of %d", turn+1, pages))
	}
	if at.page+1 < len(at.fit.pages) {
		parts = append(parts, "more of this workout on the next page")
	}
	if at.loads() {
		parts = append(parts, w.hint())
	}
	return strings.Join(parts, "   ·   ")
}

// workHead names the workout beside its clock.
func (p painter) workHead(panel Panel, f workFit) {
	head, ink, quiet := panel.Head, p.pal[look.Text], p.pal[look.Muted]
	now, next := f.band.lines(f.margin, f.size.Width)
	if panel.Rest {
		head, ink, quiet = restWord, p.pal[look.Ground], p.pal[look.Ground]
		p.box(f.restArea(), p.pal[look.Text], none, 0, 0.25*f.text)
		side := 0.75 * f.band.now
		p.pause(area{now.x, now.y + (now.h-side)/2, side, side}, ink)
		now.x, now.w = now.x+1.1*f.band.now, now.w-1.1*f.band.now
	}
	if panel.Held {
		p.held(next, f.band, quiet)
		next.x, next.w = next.x+f.band.now, next.w-f.band.now
	}
	p.line(now, elide(head, f.band.now, true, now.w), style{size: f.band.now, bold: true, ink: ink})
	p.line(next, elide(panel.Round, f.band.next, false, next.w), style{size: f.band.next, ink: quiet})
}

const restWord = "REST"

// restArea is what is turned bright behind the clock of a rest: seen
// from afar by its shape, without reading and without colours.
func (f frame) restArea() area {
	return area{f.margin * 0.5, f.margin * 0.5, f.size.Width - f.margin, clockHeight*f.band.clock + f.margin*0.5}
}

// pause draws two upright bars.
func (p painter) pause(a area, ink color.NRGBA) {
	bar := 0.36 * a.w
	p.box(area{a.x, a.y, bar, a.h}, ink, none, 0, 0.1*bar)
	p.box(area{a.x + a.w - bar, a.y, bar, a.h}, ink, none, 0, 0.1*bar)
}

// panel draws movements of a workout with the loads of the three tiers.
func (p painter) panel(a area, panel Panel, at part, f workFit) {
	t, high := f.text, itemShare*f.text
	p.box(a, p.pal[look.Surface], none, 0, 0.25*t)
	x, y, w := a.x+panelPads/2*t, a.y+panelPad/2*t, a.w-panelPads*t
	for i, title := range panel.titles() {
		if i > 0 && !f.abreast {
			y += high
		}
		p.title(area{x, y, w, high}, title, f)
	}
	y = a.y + f.head*t - panelPad/2*t
	for n := at.from; n < at.to; n++ {
		item := area{x, y, w, f.rowHigh(n) * t}
		p.item(item, panel.Items[n], f.two[n], f)
		y += item.h
	}
}

// title is a line over the movements: the tracks, or the names of the tiers.
type title string

const tierNames title = ""

// titles are the lines over the movements: whose they are where that is not
// everybody, and the names of the tiers.
func (p Panel) titles() []title {
	var all []title
	if p.Tracks != "" {
		all = append(all, title(p.Tracks))
	}
	if p.Loads {
		all = append(all, tierNames)
	}
	return all
}

func (p painter) title(a area, t title, f workFit) {
	if t == tierNames {
		p.loads(a, tiers, look.Muted, false, f)
		return
	}
	p.line(a, elide(string(t), f.text, true, a.w), style{size: f.text, bold: true, ink: p.pal[look.Accent]})
}

// item draws one movement; the one whose turn it is lies on a ground of its own, the
// one that comes next has an edge.
func (p painter) item(a area, i Item, two bool, f workFit) {
	t := f.text
	around := area{a.x - 0.4*t, a.y + 0.04*t, a.w + 0.8*t, a.h - 0.08*t}
	switch {
	case i.Present:
		p.box(around, p.pal[look.Selection], p.pal[look.Accent], max(1, 0.05*t), 0.2*t)
	case i.Next:
		p.box(around, none, p.pal[look.Edge], max(1, 0.05*t), 0.2*t)
	}
	name, loads := a, a
	switch {
	case two:
		name.h, loads.h, loads.y = a.h/2, a.h/2, a.y+a.h/2
	case i.Loads[0] != "":
		name.w -= 3 * (f.load + loadGap) * t
	}
	text := i.Text
	switch {
	case i.Next:
		text = soon + text
	case i.Usual:
		side := 0.6 * t
		p.mark(area{name.x, name.y + (name.h-side)/2, side, side}, kit.Diamond, look.Muted)
		name.x, name.w = name.x+markShare*t, name.w-markShare*t
	}
	p.line(name, elide(text, t, true, name.w), style{size: t, bold: true, ink: p.pal[look.Text]})
	p.loads(loads, i.Loads, look.Text, true, f)
}

// loads sets the loads of the three tiers at the end of a line.
func (p painter) loads(a area, loads [3]string, tone look.Meaning, bold bool, f workFit) {
	wide := (f.load + loadGap) * f.text
	for i, l := range loads {
		if l == "" {
			continue
		}
		x := a.x + a.w - float32(3-i)*wide
		p.line(area{x, a.y, wide, a.h}, l, style{size: f.text, bold: bold, ink: p.pal[tone], align: fyne.TextAlignTrailing})
	}
}
