package wall

import "fyne.io/fyne/v2"

// band is the head of the wall: the clock, what runs and what comes next, and a
// strip of the whole climb under them.
type band struct {
	clock  float32 // size of its figures
	wide   float32 // width of the clock
	now    float32 // size of the line that tells what runs
	next   float32 // of what comes next
	strip  float32 // height
	height float32 // of it all, with the gap under it
}

// Widths and heights of the clock, in shares of the size of its figures; the
// figures have fixed cells.
const (
	clockWidth  = 4*0.66 + 0.34
	clockHeight = 1.22
)

// newBand sizes the band for its widest line, in shares of its size: a clock of more
// than twice the lines to be read, or a little less where the screen is narrow. A low
// one leaves more height for rows. It is not ok where the screen is too narrow.
func newBand(text, words float32, size fyne.Size, margin float32, low bool) (b band, ok bool) {
	wide := size.Width - 2*margin
	b = band{clock: max(2.25*text, 0.17*size.Height), now: 1.3 * text, next: text}
	gap := 0.5 * text
	if low {
		b.clock, b.now, gap = 2*text, 1.1*text, 0.35*text
	}
	if b.need(words) > wide {
		b.clock, b.now = 1.9*text, text
	}
	b.wide = clockWidth * b.clock
	b.strip = max(0.3*text, 0.014*size.Height)
	b.height = clockHeight*b.clock + b.strip + gap
	return b, b.need(words) <= wide
}

// need is the width that the clock and the widest line beside it take.
func (b band) need(words float32) float32 {
	return clockWidth*b.clock + 1.6*b.now + words*b.now
}

// lead is the height of a line beside the clock, in shares of its size.
const lead = 1.16

// lines are the places of the two lines beside the clock.
func (b band) lines(margin, width float32) (now, next area) {
	x, y := margin+b.wide+0.6*b.now, margin+(clockHeight*b.clock-lead*(b.now+b.next))/2
	w := width - margin - x
	return area{x, y, w, lead * b.now}, area{x, y + lead*b.now, w, lead * b.next}
}
