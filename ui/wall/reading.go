package wall

import (
	"fmt"
	"time"

	"windlass/internal/desk"
)

// Reading says for the coach how much of the class the wall shows at once, how long
// somebody waits for their page, and what would shorten that. The athletes are told
// nothing of it.
func (v *View) Reading() string { return v.reading }

// nearer is how much closer readers would stand, as an example; a screen larger in
// the same measure has the same effect.
const nearer = 0.75

// readingOf says it of a climb. The screen is as it was told.
func readingOf(m measured, f fit, told Screen, wait time.Duration) string {
	s, lifters := told.believed(), 0
	for _, rows := range m.stations {
		lifters += len(rows)
	}
	if lifters == 0 {
		return "Nobody is checked in yet."
	}
	text := fmt.Sprintf("%s at %.3g m on this screen: %s.", desk.Count(lifters, "lifter"), s.Viewer, pagesOf(f))
	if s.Height != told.Height {
		text += " The screen does not say how large it is, so 27 inches are taken."
	}
	if f.arc < LeastArc {
		text += " That is too far for it: its letters are smaller than they should be."
	}
	near := Screen{Height: s.Height, Viewer: s.Viewer * nearer}
	if better := fitClimb(m, near, f.size, wait); len(better.pages) < len(f.pages) {
		text += fmt.Sprintf(" With the farthest reader at %.3g m, or a screen a third larger: %s.", near.Viewer, pagesOf(better))
	}
	return text
}

func pagesOf(f fit) string {
	if len(f.pages) < 2 {
		return "one page, nobody waits"
	}
	return fmt.Sprintf("%d pages, %.0f s a round", len(f.pages), f.round().Seconds())
}
