package wall

import (
	"fmt"

	"time"

	"fyne.io/fyne/v2"

	"windlass/ui/look"
)

// workFit is how conditioning is laid out: the size of its letters, and which
// panels stand on which page.
type workFit struct {
	arc     float64
	text    float32
	small   float32
	margin  float32
	size    fyne.Size
	band    band
	item    float32 // width of a movement, in shares of the text size
	load    float32 // of a tier's load
	two     bool    // the loads stand under their movement
	columns int
	pages   [][]int // of panels
	stands  []time.Duration
	high    []float32
}

// itemShare is the height of a movement's line in shares of the text size.
const itemShare = 1.32

// loadGap is between the loads of two tiers, in shares of the text size.
const loadGap = 0.8

// fitWork finds the fewest pages for the panels and then the largest letters.
func fitWork(w Work, s Screen, size fyne.Size) workFit {
	s = s.believed()
	var best workFit
	for arc := MostArc; arc >= 3; arc-- {
		for _, two := range []bool{false, true} {
			f := w.at(s, size, arc, two)
			f.stands = standing(w.lines(f.pages), longestWait)
			if f.pages != nil && (best.pages == nil || arc >= LeastArc && len(f.pages) < len(best.pages)) {
				best = f
			}
		}
		if best.pages != nil && arc <= LeastArc {
			break
		}
	}
	return best
}

func (w Work) at(s Screen, size fyne.Size, arc float64, two bool) workFit {
	f := workFit{arc: arc, two: two, text: s.textSize(arc, size.Height), size: size}
	f.margin = max(0.25*f.text, 0.014*size.Height)
	f.small = max(smallShare*f.text, 0.016*size.Height)
	words := float32(0)
	for _, p := range w.Panels {
		words = max(words, share(p.Head, true), share(longestRound, false))
		for _, i := range p.Items {
			f.item = max(f.item, share("› "+i.Text, true)+hair)
			for _, l := range i.Loads {
				f.load = max(f.load, share(l, true))
			}
		}
	}
	ok, wide := false, size.Width-2*f.margin
	f.band, ok = newBand(f.text, words, words, size, f.margin, false)
	row := f.rowWidth()
	rows := size.Height - f.band.height - footShare*f.small - 2*f.margin
	f.columns = int((wide + columnsGap*f.text) / (row + columnsGap*f.text))
	if !ok || f.columns == 0 {
		return f
	}
	f.columns = min(f.columns, max(1, len(w.Panels)))
	return f.paged(w, rows)
}

// lines is how many lines the panels of each page have.
func (w Work) lines(pages [][]int) []int {
	lines := make([]int, len(pages))
	for i, page := range pages {
		for _, panel := range page {
			lines[i] += len(w.Panels[panel].Items) + 2
		}
	}
	return lines
}

// rowWidth is the least width of a panel.
func (f workFit) rowWidth() float32 {
	loads := 3 * (f.load + loadGap)
	if f.two {
		return (1.2 + max(f.item, loads)) * f.text
	}
	return (1.2 + f.item + loads) * f.text
}

const longestRound = "round 88 of 88"

// paged puts as many panels on a page as there are columns; without pages a panel
// is too high.
func (f workFit) paged(w Work, rows float32) workFit {
	for i, p := range w.Panels {
		high := f.panelHeight(p, len(w.Panels) > 1)
		if high > rows {
			f.pages = nil
			return f
		}
		if i%f.columns == 0 {
			f.pages = append(f.pages, nil)
		}
		f.pages[len(f.pages)-1] = append(f.pages[len(f.pages)-1], i)
		f.high = append(f.high, high)
	}
	if len(w.Panels) == 0 {
		f.pages = [][]int{nil}
	}
	return f
}

func (f workFit) panelHeight(p Panel, titled bool) float32 {
	lines := 0
	for _, i := range p.Items {
		lines += f.lines(i)
	}
	if p.Loads {
		lines++
	}
	if titled {
		lines++
		if f.columns > 1 {
			lines++
		}
	}
	return (float32(lines)*itemShare + 0.4) * f.text
}

// lines is how many lines a movement takes.
func (f workFit) lines(i Item) int {
	if f.two && i.Loads[0] != "" {
		return 2
	}
	return 1
}

// work draws a page of the conditioning.
func (p painter) work(w Work, f workFit, turn int, notice string) {
	shown := f.pages[turn]
	p.workHead(w, shown, f)
	gap := columnsGap * f.text
	wide := (f.size.Width - 2*f.margin - float32(f.columns-1)*gap) / float32(f.columns)
	y := f.margin + f.band.height
	for i, n := range shown {
		p.panel(area{f.margin + float32(i)*(wide+gap), y, wide, f.high[n]}, w.Panels[n], len(w.Panels) > 1, f)
	}
	p.foot(workFoot(w, f, turn, notice), f.size, f.small, f.margin)
}

// hint says how the loads are to be read.
func (w Work) hint() string {
	hint := "Take the load with which you move as intended; of two, standard M / W"
	if w.Unit != "" {
		hint = "Loads in " + w.Unit + ".   " + hint
	}
	return hint
}

func workFoot(w Work, f workFit, turn int, notice string) string {
	text := w.hint()
	switch {
	case notice != "":
		return notice
	case len(w.Panels) == 0:
		return "No conditioning is planned for this class"
	case len(f.pages) > 1:
		return fmt.Sprintf("Page %d of %d   ·   %s", turn+1, len(f.pages), text)
	}
	return text
}

// workHead names the workout beside the clock; several side by side have their
// names on their panels.
func (p painter) workHead(w Work, shown []int, f workFit) {
	b := f.band
	x, y := f.margin+b.wide+0.6*b.now, f.margin+(clockHeight*b.clock-lead*(b.now+b.next))/2
	room := f.size.Width - f.margin - x
	head, round := "Conditioning", ""
	if len(shown) == 1 {
		head, round = w.Panels[shown[0]].Head, w.Panels[shown[0]].Round
	}
	p.line(area{x, y, room, lead * b.now}, elide(head, b.now, true, room), style{size: b.now, bold: true, ink: p.pal[look.Text]})
	p.line(area{x, y + lead*b.now, room, lead * b.next}, round, style{size: b.next, ink: p.pal[look.Muted]})
}

// panel draws the movements of a workout with the loads of the three tiers.
func (p painter) panel(a area, panel Panel, titled bool, f workFit) {
	t, high := f.text, itemShare*f.text
	p.box(a, p.pal[look.Surface], none, 0, 0.25*t)
	x, y, w := a.x+0.6*t, a.y+0.3*t, a.w-1.2*t
	if titled {
		p.line(area{x, y, w, high}, elide(panel.Tracks, t, true, w), style{size: t, bold: true, ink: p.pal[look.Accent]})
		y += high
		if f.columns > 1 {
			p.line(area{x, y, w, high}, elide(joinedWords(panel.Head, panel.Round), t, false, w), style{size: t, ink: p.pal[look.Text]})
			y += high
		}
	}
	if panel.Loads {
		p.loads(area{x, y, w, high}, [3]string{"Full", "Mid", "Light"}, look.Muted, false, f)
		y += high
	}
	for _, item := range panel.Items {
		at := area{x, y, w, high * float32(f.lines(item))}
		p.item(at, item, f)
		y += at.h
	}
}

func joinedWords(head, round string) string {
	if round == "" {
		return head
	}
	return head + ", " + round
}

// item draws one movement; the one whose turn it is lies on a ground of its own.
func (p painter) item(a area, i Item, f workFit) {
	t := f.text
	if i.Present {
		p.box(area{a.x - 0.4*t, a.y + 0.05*t, a.w + 0.8*t, a.h - 0.1*t}, p.pal[look.Selection], p.pal[look.Accent], max(1, 0.05*t), 0.2*t)
	}
	name, loads := a, a
	switch {
	case f.lines(i) == 2:
		name.h, loads.h, loads.y = a.h/2, a.h/2, a.y+a.h/2
	case i.Loads[0] != "":
		name.w -= 3 * (f.load + loadGap) * t
	}
	text := i.Text
	if i.Next {
		text = "› " + text
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
