package kit

import (
	"fmt"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"
)

// Rung is one timed set of a climb, as a strip shows it.
type Rung struct {
	Start, End time.Duration // from the start of the clock
	Percent    string        // "70 %"
	Reps       string        // "× 3"
	Zone       Zone
}

// RungStrip draws a climb in time: every rung as wide as it is long, but no narrower
// than what it says, with its zone as a colour and a shape, the present rung marked,
// and a bar that runs.
// Everything grows with the height it is given, so a wall can use it, too.
type RungStrip struct {
	widget.BaseWidget
	// OnChosen, if not nil, hears which rung was tapped.
	OnChosen func(rung int)

	rungs   []Rung
	now     time.Duration
	present int
	over    int
	edged   []float32 // see [RungStrip.edges]
	edgesOf fyne.Size
	drawn   []*rungFace
	track   *canvas.Rectangle
	bar     *canvas.Rectangle
	hand    *canvas.Rectangle
	made    *drawing
}

// stripHeight is the least height of a strip; its sizes are set for it.
const stripHeight = 104

// NewRungStrip returns an empty strip.
func NewRungStrip() *RungStrip {
	s := &RungStrip{now: -1, present: -1, over: -1}
	s.ExtendBaseWidget(s)
	return s
}

// Set shows a climb. The rungs must follow each other in time.
func (s *RungStrip) Set(rungs []Rung) {
	s.rungs, s.edged = rungs, nil
	s.present = s.at(s.now)
	s.Refresh()
}

// SetNow moves the bar to a time on the climb's clock; before 0 nothing is
// marked. It may be called at every tick.
func (s *RungStrip) SetNow(now time.Duration) {
	if s.now == now {
		return
	}
	s.now = now
	if present := s.at(now); present != s.present {
		s.present = present
		s.Refresh()
		return
	}
	if s.made != nil {
		s.placeBar(s.Size())
		canvas.Refresh(s)
	}
}

// Present returns the number of the rung that is on, or −1.
func (s *RungStrip) Present() int { return s.present }

// at is the rung at a time on the clock, or −1.
func (s *RungStrip) at(now time.Duration) int {
	for i, r := range s.rungs {
		if now >= r.Start && now < r.End {
			return i
		}
	}
	return -1
}

func (s *RungStrip) length() time.Duration {
	if len(s.rungs) == 0 {
		return 0
	}
	return s.rungs[len(s.rungs)-1].End
}

// x is the place of a time on a strip of a size.
func (s *RungStrip) x(at time.Duration, size fyne.Size) float32 {
	edges := s.edges(size)
	for i, r := range s.rungs {
		if at < r.End || i == len(s.rungs)-1 {
			share := float32(at-r.Start) / float32(r.End-r.Start)
			return edges[i] + (edges[i+1]-edges[i])*min(max(share, 0), 1)
		}
	}
	return 0
}

// edges are the places where the rungs begin, and the end of the last.
func (s *RungStrip) edges(size fyne.Size) []float32 {
	if s.edgesOf == size && len(s.edged) == len(s.rungs)+1 {
		return s.edged
	}
	s.edgesOf = size
	s.edged = append(s.edged[:0], 0)
	at := float32(0)
	for _, w := range s.widths(size) {
		at += w
		s.edged = append(s.edged, at)
	}
	return s.edged
}

// widths shares the width among the rungs by their length. Who would get less than
// it needs gets that, and the others share the rest.
func (s *RungStrip) widths(size fyne.Size) []float32 {
	widths := make([]float32, len(s.rungs))
	for s.widen(widths, size) {
	}
	left, long := s.unshared(widths, size)
	for i, r := range s.rungs {
		if widths[i] == 0 {
			widths[i] = left * float32(r.End-r.Start) / float32(long)
		}
	}
	return widths
}

// widen gives the rungs that would come off short what they need; false where none
// would.
func (s *RungStrip) widen(widths []float32, size fyne.Size) (short bool) {
	left, long := s.unshared(widths, size)
	for i, r := range s.rungs {
		least := min(leastRung(r, size.Height/stripHeight), size.Width/float32(len(s.rungs)))
		if widths[i] == 0 && left*float32(r.End-r.Start)/float32(long) < least {
			widths[i], short = least, true
		}
	}
	return short
}

// unshared is the width that is left for the rungs without one, and how long they
// are together.
func (s *RungStrip) unshared(widths []float32, size fyne.Size) (left float32, long time.Duration) {
	left = size.Width
	for i, r := range s.rungs {
		left -= widths[i]
		if widths[i] == 0 {
			long += r.End - r.Start
		}
	}
	return left, long
}

// Tapped implements fyne.Tappable.
func (s *RungStrip) Tapped(e *fyne.PointEvent) {
	if i := s.under(e.Position.X); i >= 0 && s.OnChosen != nil {
		s.OnChosen(i)
	}
}

// MouseIn implements desktop.Hoverable.
func (s *RungStrip) MouseIn(e *desktop.MouseEvent) { s.MouseMoved(e) }

// MouseMoved implements desktop.Hoverable: a rung tells what it is in full, for
// those that are too narrow to say it.
func (s *RungStrip) MouseMoved(e *desktop.MouseEvent) {
	i := s.under(e.Position.X)
	if i == s.over {
		return
	}
	s.over = i
	HideTip(s)
	if i >= 0 {
		r := s.rungs[i]
		showTip(s.drawn[i].ground, fmt.Sprintf("%s–%s  %s %s, %s", clock(r.Start), clock(r.End), r.Percent, r.Reps, r.Zone.Shape()))
	}
}

// MouseOut implements desktop.Hoverable.
func (s *RungStrip) MouseOut() {
	s.over = -1
	HideTip(s)
}

func (s *RungStrip) under(x float32) int {
	edges := s.edges(s.Size())
	for i := range s.rungs {
		if x >= edges[i] && x < edges[i+1] {
			return i
		}
	}
	return -1
}

// clock writes a time as minutes and seconds.
func clock(d time.Duration) string {
	return fmt.Sprintf("%d:%02d", int(d.Minutes()), int(d.Seconds())%60)
}
