package kit_test

import (
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"

	"windlass/ui/kit"
	"windlass/ui/uitest"
)

// A fault for which a narrow field has no room is told whole in a tip while the
// coach writes there, with what would mend it; one that fits stands in the field
// alone, and the tip goes with the fault and with the keyboard.
func TestFaultThatIsCutIsToldWhole(t *testing.T) {
	const long = `Could not read load "abc": it is no number; write 100, 102.5 kg or 225 lb.`
	f := kit.NewField("Load")
	w := uitest.Open(t, kit.Row(0, kit.Full(kit.Wide(120, kit.Column(0, f))), kit.Fill()))
	told := func(fault string) (n int) {
		for _, text := range uitest.Read(w) {
			if text == fault {
				n++
			}
		}
		return n
	}
	f.Focus()
	f.SetFault(long)
	assert.Equal(t, 2, told(long), "in the field, cut, and whole in the tip")
	f.SetFault("Too heavy.")
	assert.Equal(t, 0, told(long))
	assert.Equal(t, 1, told("Too heavy."))
	f.SetFault(long)
	w.Canvas().Unfocus()
	assert.Equal(t, 1, told(long))
	assert.Equal(t, fyne.NewSize(120, f.MinSize().Height), f.Size(), "nothing jumps")
}
