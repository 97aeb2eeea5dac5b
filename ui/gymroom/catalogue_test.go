package gymroom_test

import (
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/ui/uitest"
)

func TestTheCatalogueIsSearchedHiddenAndAddedTo(t *testing.T) {
	h := open(t, "Catalogue")
	picture(t, h, "catalogue-lifts")
	h.Press(t, "Ctrl+F")
	uitest.Type(t, h.On, "back squat")
	uitest.See(t, h.On, "Back squat")
	uitest.NotSee(t, h.On, "Bench press")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.Key(t, h.On, fyne.KeyDelete)
	assert.Contains(t, h.Said[len(h.Said)-1], "built-in catalogue. Hide it instead.")
	h.Press(t, "H")
	lift, _ := h.Desk().Lift("back-squat")
	assert.True(t, lift.Hidden)

	h.Press(t, "Ctrl+N")
	uitest.Fill(t, h.On, "Name", "back SQUAT")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, `that name means "back-squat" already`)
	uitest.Fill(t, h.On, "Name", "Capstan pull")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.Fill(t, h.On, "Rep counts that are recorded", "1, 30")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "30 reps are not a rep max")
	uitest.Fill(t, h.On, "Rep counts that are recorded", "3 1")
	uitest.Fill(t, h.On, "Pattern", "pull")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.Tap(t, h.On, "Starts from the floor")
	lift, ok := h.Desk().Lift("capstan-pull")
	require.True(t, ok)
	assert.Equal(t, gym.Lift{
		Key: "capstan-pull", Name: "Capstan pull", Region: gym.Lower, Pattern: gym.Pull, Bar: "barbell", Floor: true,
		Measure: gym.ByLoad, Reps: []int{1, 3}, Own: true, Aliases: lift.Aliases, Reference: lift.Reference,
	}, lift)
	picture(t, h, "catalogue-own")
	h.Press(t, "E")
	uitest.Key(t, h.On, fyne.KeyDelete)
	_, there := h.Desk().Lift("capstan-pull")
	assert.False(t, there)
}

func TestTierLoadsAreEdited(t *testing.T) {
	h := open(t, "Catalogue")
	h.Press(t, "2")
	h.Press(t, "Ctrl+F")
	uitest.Type(t, h.On, "kettlebell swing")
	picture(t, h, "catalogue-movements")
	uitest.Fill(t, h.On, "Loads, standard M", "24, 20")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "2 loads where three are wanted")
	uitest.Fill(t, h.On, "Loads, standard M", "26, 22, 18")
	uitest.Key(t, h.On, fyne.KeyReturn)
	key := h.Desk().CatalogueRows(desk.MovementEntries, "kettlebell swing", false)[0].Key
	m, _ := h.Desk().Movement(gym.MovementKey(key))
	assert.Equal(t, gym.TierLoads{Full: 26 * mass.Kilogram, Mid: 22 * mass.Kilogram, Light: 18 * mass.Kilogram}, m.Loads[gym.StandardM])
}

func TestFinishersAndDrillsHaveFormsOfTheirOwn(t *testing.T) {
	h := open(t, "Catalogue")
	for key, kind := range map[string]desk.CatalogueKind{"3": desk.FinisherEntries, "4": desk.DrillEntries} {
		h.Press(t, key)
		h.Press(t, "Ctrl+N")
		uitest.Fill(t, h.On, "Name", "Chain walk")
		uitest.Key(t, h.On, fyne.KeyReturn)
		require.Len(t, h.Desk().CatalogueRows(kind, "chain walk", false), 1)
	}
	h.Press(t, "4")
	h.Press(t, "Ctrl+F")
	uitest.Type(t, h.On, "chain walk")
	uitest.Fill(t, h.On, "Dose, as in 2 × 10 or 30 s a side", "2 × 20 m")
	uitest.Key(t, h.On, fyne.KeyReturn)
	picture(t, h, "catalogue-drills")
	assert.Equal(t, "2 × 20 m", h.Desk().CatalogueRows(desk.DrillEntries, "chain walk", false)[0].With)
}
