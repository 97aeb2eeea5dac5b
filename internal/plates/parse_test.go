package plates

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/mass"
)

func TestParsePairs(t *testing.T) {
	got, err := ParsePairs("25kg*4, 45 lb * 2,2.5*1", mass.KG)
	require.NoError(t, err)
	assert.Equal(t, []Plate{kgPlate(25, 4), lbPlate(45, 2), kgPlate(2.5, 1)}, got)

	for text, c := range map[string]struct {
		is   error
		says string
	}{
		"":           {ErrStock, `"": not a usable stock: write the plate`},
		"25kg":       {ErrStock, `"25kg"`},
		"25kg*4,":    {ErrStock, `""`},
		"2,5kg*1":    {ErrStock, `"2"`},
		"25kg*four":  {ErrStock, `"four"`},
		"25kg*-1":    {ErrStock, "-1 pairs"},
		"25kg*201":   {ErrStock, "201 pairs"},
		"0kg*1":      {ErrStock, "plate 0 kg"},
		"200kg*1":    {ErrStock, "at most 100 kg"},
		"25stone*1":  {mass.ErrNotMass, "stone"},
		"25.0001*1":  {ErrStock, "finer than"},
		"25kg*1*1":   {ErrStock, `"1*1"`},
		"25kg*99e9":  {ErrStock, `"99e9"`},
		"heavy*9999": {mass.ErrNotMass, "heavy"},
	} {
		_, err := ParsePairs(text, mass.KG)
		require.ErrorIs(t, err, c.is, text)
		assert.ErrorContains(t, err, c.says)
		assert.ErrorContains(t, err, fmt.Sprintf("read pairs %q", text))
	}
}

// What was read is a usable stock, and what is written of it is read the same.
func FuzzParsePairs(f *testing.F) {
	for _, seed := range []string{"25kg*4,20kg*1", "45lb*2", "2.5*1", "1.25 kg * 0", "25kg*4,,", "*", "9#*1", "0.125lb*3"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		plates, err := ParsePairs(text, mass.LB)
		if err != nil {
			require.Empty(t, plates)
			return
		}
		var again []string
		for _, p := range plates {
			require.NoError(t, p.Valid())
			// In grains, since a printed mass has two decimals at most.
			n := p.Mass / p.grain()
			again = append(again, fmt.Sprintf("%d.%03d%s*%d", n/1000, n%1000, p.Unit, p.Pairs))
		}
		back, err := ParsePairs(strings.Join(again, ","), mass.KG)
		require.NoError(t, err)
		require.Equal(t, plates, back)
	})
}
