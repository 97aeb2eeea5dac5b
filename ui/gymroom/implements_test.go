package gymroom_test

import (
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"

	"windlass/internal/mass"
	"windlass/ui/uitest"
)

func TestImplementsAreKeptWithTheirMasses(t *testing.T) {
	h := open(t, "Implements")
	picture(t, h, "implements")
	h.Press(t, "Ctrl+N")
	uitest.Fill(t, h.On, "Name", "Kettlebell")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "the gym has that kind already")
	uitest.Fill(t, h.On, "Name", "Anchor chain")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.Fill(t, h.On, "Masses", "30, heavy")
	h.Press(t, "I") // the keyboard goes on
	uitest.See(t, h.On, `Could not read load " heavy"`)
	uitest.Fill(t, h.On, "Masses", "30, 20, 45 lb")
	h.Press(t, "I")
	assert.Equal(t, []mass.Mass{20 * mass.Kilogram, 45 * mass.Pound, 30 * mass.Kilogram}, h.Desk().Book().Equipment.Implement("anchor-chain"))
	uitest.See(t, h.On, "3 from 20 to 30 kg", "No movement in sight is done with it")
	uitest.Key(t, h.On, fyne.KeyDelete)
	assert.False(t, h.Desk().Book().Equipment.Owns("anchor-chain"))
	for range h.Desk().Implements() {
		uitest.Key(t, h.On, fyne.KeyDelete, fyne.KeyDown)
	}
	assert.True(t, h.Desk().Book().Equipment.Owns("kettlebell"), "movements are done with it")
}

func TestImplementsAreCountedInTheirLine(t *testing.T) {
	h := open(t, "Implements")
	h.Press(t, "Ctrl+N")
	uitest.Fill(t, h.On, "Name", "Anchor chain")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.Fill(t, h.On, "Masses", "30x2, 20×4")
	h.Press(t, "I")
	uitest.See(t, h.On, "6 in all")
	uitest.Fill(t, h.On, "Masses", "20×0")
	h.Press(t, "I")
	uitest.See(t, h.On, `"0" is no count of 20 kg`)
	uitest.Fill(t, h.On, "Masses", "20×4, 30")
	h.Press(t, "I")
	uitest.See(t, h.On, "4 or more")
	uitest.Fill(t, h.On, "How many in all", "9")
	h.Press(t, "I")
	uitest.See(t, h.On, "counted one by one")
	i := h.Desk().Book().Equipment.Implements
	assert.Equal(t, map[mass.Mass]int{20 * mass.Kilogram: 4}, i[len(i)-1].Each)
}
