package gym_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
	"windlass/internal/mass"
)

func TestParseEffort(t *testing.T) {
	tests := []struct {
		text string
		want string // as it is written again; empty for a refusal
	}{
		{"5x142.5", "5x142.5 kg"},
		{"3 × 225 lb", "3x225 lb"},
		{"1@100kg", "1x100 kg"},
		{" 20 X 60 ", "20x60 kg"},
		{"5*102,5", "5x102.5 kg"},
		{"", ""},
		{"142.5", ""},     // no rep count
		{"x100", ""},      // the same
		{"0x100", ""},     // none
		{"21x100", ""},    // no rep max
		{"5x", ""},        // no load
		{"5x0", ""},       // nothing lifted
		{"5xx100", ""},    // a slip
		{"5x100x3", ""},   // sets are no rep max
		{"100kg x 5", ""}, // the wrong way round
		{"ȺȺȺx", ""},      // letters whose small form is longer
	}
	for _, tt := range tests {
		e, err := gym.ParseEffort(tt.text, mass.KG)
		if tt.want == "" {
			assert.ErrorContains(t, err, "read ", "%q", tt.text)
			continue
		}
		require.NoError(t, err)
		assert.Equal(t, tt.want, e.String(), "%q", tt.text)
	}
	e, err := gym.ParseEffort("5x185", mass.LB)
	require.NoError(t, err)
	assert.Equal(t, gym.Effort{Reps: 5, Load: 185 * mass.Pound, Unit: mass.LB}, e, "the reader's unit")
}

func FuzzParseEffort(f *testing.F) {
	for _, seed := range []string{"5x142.5", "3 × 225 lb", "1@100kg", "5xx100", "ȺȺȺx100", "x", "20X0.01"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		e, err := gym.ParseEffort(text, mass.KG)
		if err != nil {
			require.Zero(t, e)
			return
		}
		require.True(t, e.Reps >= 1 && e.Reps <= gym.MaxReps && e.Load > 0 && e.Load <= mass.Max, "%q gave %v", text, e)
		if e.Load.Digits(e.Unit) == "0" {
			return // under what is written
		}
		back, err := gym.ParseEffort(e.String(), mass.KG)
		require.NoError(t, err)
		require.Equal(t, e.String(), back.String())
	})
}
