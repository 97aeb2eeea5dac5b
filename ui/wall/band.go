package wall

import "fyne.io/fyne/v2"

// band is the head of the wall: the clock, what runs and what comes next, and a
// strip of the whole climb under them.
type band struct {
	clock  float32 // size of its figures
	wide   float32 // width of the clock
	now    float32 // size of the line that tells what runs
	next   float32 // of what comes next
	slim   bool    // the two stand in one line
	words  float32 // width of the widest line that runs
	strip  float32 // height
	height float32 // of it all, with the gap under it
}

// Widths and heights of the clock, in shares of the size of its figures; the
// figures have fixed cells.
const (
	clockWidth  = 4*0.66 + 0.34
	clockHeight = 1.22
)

// newBand sizes the band for its widest lines, in shares of their sizes: a clock of
// more than twice the lines to be read, or a little less where the screen is narrow.
// A slim one leaves more height for rows. It is not ok where the screen is too narrow.
func newBand(text, now, next float32, size fyne.Size, margin float32, slim bool) (b band, ok bool) {
	wide := size.Width - 2*margin
	b = band{slim: slim, clock: max(2.25*text, 0.17*size.Height), now: 1.3 * text, next: text}
	if slim {
		b.clock, b.now = 2*text, 1.1*text
	}
	if b.need(now, next) > wide {
		b.clock, b.now = 1.9*text, text
	}
	b.wide, b.words = clockWidth*b.clock, now*b.now
	b.strip = max(0.3*text, 0.014*size.Height)
	b.height = clockHeight*b.clock + b.strip + 0.5*text
	if slim {
		b.height -= 0.15 * text
	}
	return b, b.need(now, next) <= wide
}

// need is the width that the clock and the widest lines beside it take.
func (b band) need(now, next float32) float32 {
	beside := max(now*b.now, next*b.next)
	if b.slim {
		beside = now*b.now + lineGap*b.now + next*b.next
	}
	return clockWidth*b.clock + 1.6*b.now + beside
}

// lineGap is between what runs and what comes next in one line.
const lineGap = 0.6
