package wall

import (
	"math"
	"time"
)

// merit is what makes one layout better than another. What matters, from first to
// last:
//
//   - nobody waits for their page longer than wait, or as little longer as can be;
//   - everything stands on one page, which nobody waits for at all;
//   - a station stands on one page, so that those who share a bar see each other;
//   - letters span the 20 minutes of arc that ISO 9241 prefers, or as little under
//     that as can be, and never under its 16;
//   - few pages; large letters.
type merit struct {
	round time.Duration
	wait  time.Duration // wanted
	pages int
	torn  int
	arc   float64
}

// lateStep is how many seconds of waiting count as one: less is not worth smaller
// letters or a station torn apart.
const lateStep = 2

func (m merit) late() float64 { return math.Ceil(max(0, (m.round-m.wait).Seconds()) / lateStep) }

func (m merit) better(than merit) bool {
	for _, by := range [][2]float64{
		{m.late(), than.late()},
		{float64(min(2, m.pages)), float64(min(2, than.pages))},
		{float64(m.torn), float64(than.torn)},
		{max(0, ReadArc-m.arc), max(0, ReadArc-than.arc)},
		{float64(m.pages), float64(than.pages)},
		{-m.arc, -than.arc},
	} {
		if by[0] != by[1] {
			return by[0] < by[1]
		}
	}
	return false
}

// bestOf tries letters from the largest down and returns the best layout with
// letters of at least the least angle. On a screen that has no room for a single
// row in them they get as much smaller as they must, and one minute of arc more where
// that is better: nobody sees it, and a workout torn over two pages everybody does.
func bestOf[T interface {
	merit(wait time.Duration) merit
}](wait time.Duration, at func(arc float64) []T) (best T, ok bool) {
	last := float64(smallestArc)
	for arc := MostArc; arc >= last; arc-- {
		for _, f := range at(arc) {
			if !ok {
				last = lastTried(arc)
			}
			if !ok || f.merit(wait).better(best.merit(wait)) {
				best, ok = f, true
			}
		}
	}
	return best, ok
}

// smallestArc is the angle under which nothing is shown at all: nobody would tell it
// from dust.
const smallestArc = 3

// lastTried is the smallest angle to try when one is the largest that has room.
func lastTried(arc float64) float64 {
	if arc >= LeastArc {
		return LeastArc
	}
	return max(smallestArc, arc-1)
}
