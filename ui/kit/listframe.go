package kit

import (
	"fyne.io/fyne/v2"

	"windlass/ui/look"
)

// placeHead draws the titles, with an arrow at the one that the rows are sorted by.
func (f *listFace) placeHead(size fyne.Size) {
	p, l := look.Current(), f.of
	put(f.head, 0, 0, size.Width, headHeight)
	fill(f.head, p[look.Raised])
	put(f.under, 0, headHeight-look.Hairline, size.Width, look.Hairline)
	fill(f.under, p[look.Line])
	f.arrow.set(NoShape, p[look.Accent])
	x := l.lead()
	for i, t := range f.titles {
		ink := p[look.Muted]
		if i == l.title || i == l.sorted {
			ink = p[look.Text]
		}
		inner := l.widths[i] - 2*look.Gap2
		if i == l.sorted {
			inner -= look.Gap4
			f.placeArrow(x, l.widths[i])
		}
		left := x + look.Gap2
		if l.columns[i].End && i == l.sorted {
			left += look.Gap4
		}
		say(t, elide(l.columns[i].Title, look.CaptionSize, false, inner), ink)
		put(t, left, 0, inner, headHeight)
		x += l.widths[i]
	}
}

// placeArrow sets the arrow behind a title, or before it at the far end.
func (f *listFace) placeArrow(x, width float32) {
	l := f.of
	shape := Up
	if l.down {
		shape = Down
	}
	title := min(widthOf(l.columns[l.sorted].Title, look.CaptionSize, false), width-2*look.Gap2-look.Gap4)
	left := x + look.Gap2 + title + 6
	if l.columns[l.sorted].End {
		left = x + width - look.Gap2 - title - look.Gap4
	}
	f.arrow.set(shape, look.Color(look.Accent))
	f.arrow.put(left, (headHeight-9)/2, 9)
}

// placeRest draws what lies over the rows: the scroll bar, the mark of the
// keyboard, and what is said while there are no rows.
func (f *listFace) placeRest(size fyne.Size) {
	p, l := look.Current(), f.of
	thumb := l.thumb()
	shown(f.bar, thumb > 0)
	if thumb > 0 {
		track := size.Height - headHeight - thumb
		share := float32(l.top) / float32(l.rows.Len()-l.inSight())
		put(f.bar, size.Width-look.Gap2, headHeight+track*share+2, 4, thumb-4)
	}
	fill(f.bar, p[look.Edge])
	f.placeFrame(size)
	f.empty.SetText(l.Empty)
	shown(f.empty, l.rows.Len() == 0 && l.Empty != "")
	width := min(400, size.Width-2*look.Gap4)
	put(f.empty, (size.Width-width)/2, headHeight+look.RowHeight, width, 3*look.RowHeight)
}

// placeFrame shows where the keyboard is: around the row of the cursor, or around
// the titles while that row is out of sight.
func (f *listFace) placeFrame(size fyne.Size) {
	l, y := f.of, float32(0)
	if i := l.cursor - l.top; i >= 0 && i < min(l.inSight(), l.rows.Len()) {
		y = headHeight + float32(i)*look.RowHeight
	}
	f.frame.put(0, y, fyne.NewSize(size.Width, look.RowHeight), look.RingWidth)
	f.frame.paint(look.Color(look.Focus), l.focused)
}
