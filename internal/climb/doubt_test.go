package climb_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"windlass/internal/climb"
	"windlass/internal/mass"
)

// A bar of 20 kg; 125 % is common practice, no source.
func TestDoubt(t *testing.T) {
	for _, row := range []struct {
		name                  string
		load, lightest, known float64
		want                  string
	}{
		{"a usual day", 97.5, 20, 100, ""},
		{"the bar alone", 20, 20, 100, ""},
		{"a digit lost", 8, 20, 90, "8 kg is less than the lightest that can be lifted here, 20 kg."},
		{"a digit too many", 900, 20, 105, "900 kg is 857 % of 105 kg, what is known so far."},
		{"as much as is not asked about", 125, 20, 100, ""},
		{"a plate more", 126, 20, 100, "126 kg is 126 % of 100 kg, what is known so far."},
		{"nothing is known", 300, 20, 0, ""},
		{"nothing is known of the bar either", 3, 0, 0, ""},
	} {
		assert.Equal(t, row.want, climb.Doubt(kg(row.load), kg(row.lightest), kg(row.known), mass.KG), row.name)
	}
}
