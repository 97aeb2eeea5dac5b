package kit_test

import (
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"

	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

// A text that is wider than its field has no scroll bar across it: the strip under
// the letters is bare.
func TestNoBarLiesAcrossALine(t *testing.T) {
	field := kit.NewField("").Called("Movement").Least(120)
	field.SetText("Dumbbell walking lunge with a pair of dumbbells")
	w := uitest.OpenAs(t, look.Dark(), fyne.NewSize(160, look.ControlHeight), field)
	picture := w.Canvas().Capture()
	seen := map[[3]uint32]bool{}
	bounds := picture.Bounds()
	for x := bounds.Min.X + 10; x < bounds.Max.X-10; x++ {
		for y := bounds.Max.Y - 8; y < bounds.Max.Y-3; y++ {
			r, g, b, _ := picture.At(x, y).RGBA()
			seen[[3]uint32{r, g, b}] = true
		}
	}
	assert.Len(t, seen, 1, "one ground and nothing on it")
}
