package gym_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
	"windlass/internal/mass"
)

func TestMassesWithCounts(t *testing.T) {
	kg := func(x float64) mass.Mass { return mass.Of(x, mass.KG) }
	for _, row := range []struct {
		text   string
		masses []mass.Mass
		each   map[mass.Mass]int
		back   string
	}{
		{"", nil, nil, ""},
		{"8×2, 12×4, 16×6", []mass.Mass{kg(8), kg(12), kg(16)}, map[mass.Mass]int{kg(8): 2, kg(12): 4, kg(16): 6}, "8×2, 12×4, 16×6"},
		{"16x6; 8 X 2\n12", []mass.Mass{kg(8), kg(12), kg(16)}, map[mass.Mass]int{kg(8): 2, kg(16): 6}, "8×2, 12, 16×6"},
		{"4 × 16 kg, 2*53lb", []mass.Mass{kg(16), 53 * mass.Pound}, map[mass.Mass]int{kg(16): 4, 53 * mass.Pound: 2}, "16×4, 53 lb×2"}, // as it is said
		{"16 kg × 4", []mass.Mass{kg(16)}, map[mass.Mass]int{kg(16): 4}, "16×4"},                                                       // as it is exported
		{"16, 8, 16", []mass.Mass{kg(8), kg(16)}, nil, "8, 16"},                                                                        // without counts, once is enough
		{"2.5×2,", []mass.Mass{kg(2.5)}, map[mass.Mass]int{kg(2.5): 2}, "2.5×2"},
	} {
		i, err := gym.Implement{Kind: "k", Unit: mass.KG}.WithMasses(row.text)
		require.NoError(t, err, row.text)
		assert.Equal(t, row.masses, i.Masses, row.text)
		assert.Equal(t, row.each, i.Each, row.text)
		assert.Equal(t, row.back, i.MassesText(), row.text)
	}
}

func TestMassesThatCannotBeAreNamed(t *testing.T) {
	for text, want := range map[string]string{
		"8×2, heavy": `read load " heavy": not a mass`,
		"16×0":       `"0" is no count of 16 kg; write 1 to 999 behind the ×`,
		"16×-2":      `"-2" is no count of 16 kg`,
		"16×1000":    `"1000" is no count of 16 kg`,
		"16×some":    `"some" is no count of 16 kg`,
		"16×2.5":     `"2.5" is no count of 16 kg`,
		"8×2 12×4":   `"8×2 12×4" is not a mass and a count; write 16×4 for four of 16, and commas between`,
		"×4":         `"×4" is not a mass and a count`,
		"16×":        `"16×" is not a mass and a count`,
		"16×2, 16×3": "16 kg stands there twice; write it once, with how many there are",
		"16, 16×3":   "16 kg stands there twice",
		"-8×2":       "it is less than nothing",
		"16 st×2":    "the unit is not kg or lb",
	} {
		_, err := gym.Implement{Unit: mass.KG}.WithMasses(text)
		assert.ErrorContains(t, err, want, text)
	}
}

func TestCountsThatCannotBeAreRefused(t *testing.T) {
	kg := mass.Kilogram
	valid := gym.Implement{Kind: "kettlebell", Unit: mass.KG, Masses: []mass.Mass{8 * kg, 16 * kg}}
	checkRefusals(t, valid, []refusal[gym.Implement]{
		{"", func(i *gym.Implement) { i.Each = map[mass.Mass]int{8 * kg: 999} }},
		{"", func(i *gym.Implement) { i.Total = 3 }},
		{"-1 is not between 0, for not counted, and 999", func(i *gym.Implement) { i.Total = -1 }},
		{"1000 is not between", func(i *gym.Implement) { i.Total = 1000 }},
		{"3 in all stands beside a count of each mass", func(i *gym.Implement) { i.Total = 3; i.Each = map[mass.Mass]int{8 * kg: 1} }},
		{"there is a count of 9 kg and no such mass", func(i *gym.Implement) { i.Each = map[mass.Mass]int{9 * kg: 1} }},
		{"0 of 8 kg is not between 1 and 999", func(i *gym.Implement) { i.Each = map[mass.Mass]int{8 * kg: 0} }},
	})
}

// Whatever is read can be kept, and what is written of it reads as the same
// counts of as many masses, and is then written the same.
func FuzzMassesWithCounts(f *testing.F) {
	for _, seed := range []string{"8×2, 12x4; 16*6", "4 × 16 kg", "45 lb,20", "", ",;\n", "8,5,3", "1e9", "0.001", "53lb × 3\n24.04 kg", "-1", "1×1×1", "1×1 lb"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		for _, unit := range []mass.Unit{mass.KG, mass.LB} {
			i, err := gym.Implement{Kind: "k", Unit: unit}.WithMasses(text)
			if err != nil {
				continue
			}
			if len(i.Masses) > 0 && i.Masses[0] > 0 {
				require.NoError(t, i.Valid())
			}
			written := i.MassesText()
			again, err := gym.Implement{Kind: "k", Unit: unit}.WithMasses(written)
			if err != nil { // two masses of one figure
				require.ErrorContains(t, err, "stands there twice")
				continue
			}
			require.Len(t, again.Each, len(i.Each), written)
			require.Equal(t, written, again.MassesText())
		}
	})
}
