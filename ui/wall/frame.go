package wall

import (
	"time"

	"fyne.io/fyne/v2"
)

// frame is what a layout has whatever is shown: how large its letters are, what
// stands over the columns, and which rows stand on which page for how long.
type frame struct {
	size    fyne.Size
	arc     float64 // that the lines to be read span at the farthest reader
	text    float32 // their size in units
	small   float32 // of the one line of small text
	margin  float32
	band    band
	perPage int // columns
	pages   []page
	stands  []time.Duration // of the pages
}

// mostColumns is how many columns stand side by side at most.
const mostColumns = 3

// frames are the ways to divide a screen for letters of an angle beside a clock whose
// widest line is given in shares of its size; none where it has no room.
func (s Screen) frames(arc float64, size fyne.Size, words float32) []frame {
	f := frame{size: size, arc: arc, text: s.textSize(arc, size.Height)}
	f.margin = max(0.25*f.text, 0.014*size.Height)
	f.small = max(smallShare*f.text, 0.016*size.Height)
	var all []frame
	for _, low := range []bool{false, true} {
		b, ok := newBand(f.text, words, size, f.margin, low)
		if !ok {
			continue
		}
		f.band = b
		for f.perPage = 1; f.perPage <= mostColumns; f.perPage++ {
			all = append(all, f)
		}
	}
	return all
}

// packed puts rows on pages, whole stations and as they come.
func (f frame) packed(s stack, round time.Duration) []frame {
	var all []frame
	for _, whole := range []bool{true, false} {
		columns := s.fill(f.height()/f.text, f.perPage, whole)
		if columns == nil {
			continue
		}
		f.pages = paged(columns, f.perPage)
		f.stands = standing(lengths(f.pages), round)
		all = append(all, f)
	}
	return all
}

// wide is the width of a column.
func (f frame) wide() float32 {
	return (f.size.Width - 2*f.margin - float32(f.perPage-1)*columnsGap*f.text) / float32(f.perPage)
}

// height is that of the columns.
func (f frame) height() float32 {
	return f.size.Height - f.band.height - footShare*f.small - 2*f.margin
}

// column is where a column of a page stands.
func (f frame) column(i int) area {
	return area{f.margin + float32(i)*(f.wide()+columnsGap*f.text), f.margin + f.band.height, f.wide(), f.height()}
}

// round is how long all pages stand, one after the other: the longest that a lifter
// waits for theirs. A single page is always there.
func (f frame) round() time.Duration { return roundTime(f.stands) }

func (f frame) merit(wait time.Duration) merit {
	return merit{f.round(), wait, len(f.pages), torn(f.pages), f.arc}
}
