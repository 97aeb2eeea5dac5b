package desk_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/desk"
	"windlass/internal/tier"
)

func TestReadCuts(t *testing.T) {
	for _, row := range []struct {
		text  string
		weeks int
		want  []float64
		fault string
	}{
		{"30", 3, []float64{0.7, 0.7, 0.7}, ""},
		{"50, 30", 2, []float64{0.5, 0.7}, ""},
		{"50 %/30 %; 20 %", 3, []float64{0.5, 0.7, 0.8}, ""},
		{"99", 1, []float64{0.01}, ""},
		{"", 2, nil, "write one number"},
		{"50, 30, 20", 2, nil, "or 2 for 2 weeks"},
		{"50, 0", 2, nil, `"0" is no whole number`},
		{"100", 1, nil, "from 1 to 99"},
		{"-5", 1, nil, "from 1 to 99"},
		{"12.5", 1, nil, "from 1 to 99"},
	} {
		got, err := desk.ReadCuts(row.text, row.weeks)
		if row.fault != "" {
			assert.ErrorContains(t, err, row.fault, row.text)
			continue
		}
		require.NoError(t, err, row.text)
		assert.InDeltaSlice(t, row.want, got, 1e-12, row.text)
	}
	for _, text := range []string{"0", "27", "two", "", "-1"} {
		_, err := desk.ReadComebackWeeks(text)
		assert.ErrorContains(t, err, "from 1 to 26", text)
	}
}

// What is read as cuts can be written and read again, and is a comeback.
func FuzzReadCuts(f *testing.F) {
	for _, text := range []string{"30", "50, 30", "50 %/30 %", "", "1e2", "9,9,9", "٣"} {
		f.Add(text, 2)
	}
	f.Fuzz(func(t *testing.T, text string, weeks int) {
		weeks = 1 + (weeks&0xff)%tier.MostComeback
		shares, err := desk.ReadCuts(text, weeks)
		if err != nil {
			return
		}
		again, err := desk.ReadCuts(desk.CutsText(shares), weeks)
		require.NoError(t, err)
		require.InDeltaSlice(t, shares, again, 1e-12)
		overrides, err := tier.Comeback("ann", 1, shares)
		require.NoError(t, err)
		for _, o := range overrides {
			require.NoError(t, o.Valid())
		}
	})
}

// The guidance is what is proposed, and going heavier than it is said.
func TestAHeavierComebackThanProposedIsSaid(t *testing.T) {
	assert.Empty(t, desk.ComebackCaution([]float64{0.5, 0.7, 0.8, 0.9, 0.95}))
	assert.Empty(t, desk.ComebackCaution([]float64{0.4, 0.4}))
	assert.Equal(t, "That is heavier than proposed in week 1 (proposed: 50 % lighter).", desk.ComebackCaution([]float64{0.8, 0.7}))
	assert.Contains(t, desk.ComebackText(), "50, 30, 20, 10 %")
	assert.Contains(t, desk.ComebackText(), tier.ComebackSource)
}
