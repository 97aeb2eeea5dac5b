package kit

import (
	"fyne.io/fyne/v2"

	"windlass/ui/look"
)

// NewEmpty returns what stands where nothing is yet: what is missing, why it
// matters, and what to do first.
func NewEmpty(title, text string, actions ...*Button) *fyne.Container {
	rows := []fyne.CanvasObject{
		NewHeading(title).Align(fyne.TextAlignCenter),
		NewProse(text, 360).Centred().Tone(look.Muted),
	}
	if len(actions) > 0 {
		buttons := []fyne.CanvasObject{Fill()}
		for _, b := range actions {
			buttons = append(buttons, b)
		}
		rows = append(rows, Row(look.Gap2, append(buttons, Fill())...))
	}
	return Column(look.Gap3, Fill(), Centre(480, Column(look.Gap3, rows...)), Fill())
}
