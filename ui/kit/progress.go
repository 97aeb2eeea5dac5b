package kit

import (
	"fmt"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"windlass/ui/look"
)

// Progress shows how far long work has come.
type Progress struct {
	widget.BaseWidget
	done, of int
	track    *canvas.Rectangle
	bar      *canvas.Rectangle
	text     *canvas.Text
}

// barHeight is the height of every bar that fills up.
const barHeight = look.Gap2

// NewProgress returns an empty bar.
func NewProgress() *Progress {
	p := &Progress{}
	p.ExtendBaseWidget(p)
	return p
}

// Set shows how much is done, of how much. Where nobody knows how much there is,
// of is 0 and only the count is shown.
func (p *Progress) Set(done, of int) {
	if p.done == done && p.of == of {
		return
	}
	p.done, p.of = done, of
	p.Refresh()
}

// Label implements [Labelled].
func (p *Progress) Label() string {
	switch {
	case p.of > 0:
		return fmt.Sprintf("%d of %d", p.done, p.of)
	case p.done > 0:
		return fmt.Sprintf("%d so far", p.done)
	}
	return "Working…"
}

// CreateRenderer implements fyne.Widget.
func (p *Progress) CreateRenderer() fyne.WidgetRenderer {
	p.track, p.bar, p.text = box(barHeight/2), box(barHeight/2), words(look.CaptionSize, false)
	return (&drawing{
		of: p, objects: []fyne.CanvasObject{p.track, p.bar, p.text},
		place: p.place,
		measure: func() fyne.Size {
			return fyne.NewSize(160, barHeight+look.Gap2+lineOf(look.CaptionSize))
		},
		paint: func() {
			fill(p.track, look.Color(look.Raised))
			fill(p.bar, look.Color(look.Accent))
			say(p.text, p.Label(), look.Color(look.Muted))
		},
	}).start()
}

func (p *Progress) place(size fyne.Size) {
	put(p.track, 0, 0, size.Width, barHeight)
	share := float32(0)
	if p.of > 0 {
		share = min(1, max(0, float32(p.done)/float32(p.of)))
	}
	put(p.bar, 0, 0, size.Width*share, barHeight)
	shown(p.bar, share > 0)
	put(p.text, 0, barHeight+look.Gap2, size.Width, lineOf(look.CaptionSize))
}
