package record

import (
	"fyne.io/fyne/v2"

	"windlass/ui/kit"
	"windlass/ui/look"
)

// legendMark is one shape and its word.
type legendMark struct {
	shape kit.Shape
	tone  look.Meaning
	word  string
}

// newLegend explains shapes in words, in one line.
func newLegend(marks []legendMark) fyne.CanvasObject {
	var row []fyne.CanvasObject
	for _, m := range marks {
		row = append(row, kit.Row(look.Gap1, kit.NewMark(m.shape, m.tone, 10), kit.NewCaption(m.word)))
	}
	return kit.Row(look.Gap4, row...)
}
