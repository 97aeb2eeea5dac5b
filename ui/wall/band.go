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

// fit sizes the band: a clock of more than twice the lines to be read, or less
// where the screen is narrow. It returns the width for rows.
func (b *band) fit(text, words float32, size fyne.Size, margin float32) (wide float32, ok bool) {
	wide = size.Width - 2*margin
	b.clock, b.now, b.next = max(2.25*text, 0.17*size.Height), 1.3*text, text
	if b.need(words) > wide {
		b.clock, b.now = 1.9*text, text
	}
	b.wide = clockWidth * b.clock
	b.strip = max(0.3*text, 0.014*size.Height)
	b.height = clockHeight*b.clock + b.strip + 0.5*text
	return wide, b.need(words) <= wide
}

// need is the width that the clock and the widest line beside it take.
func (b *band) need(words float32) float32 {
	return clockWidth*b.clock + 1.6*b.now + words*b.now
}
