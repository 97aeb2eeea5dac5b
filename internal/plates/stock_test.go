package plates

import (
	"encoding/json"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/mass"
)

func TestStockKeepsItsNumbersInJSON(t *testing.T) {
	stock := Stock{Plates: []Plate{{Mass: lb(45), Unit: mass.LB, Pairs: 3, Full: true}}, Collar: kg(2.5)}
	text, err := json.Marshal(stock)
	require.NoError(t, err)
	assert.JSONEq(t, `{"plates":[{"mass":20411656650000,"unit":"lb","pairs":3,"full":true}],"collar":2500000000000}`, string(text))
	var back Stock
	require.NoError(t, json.Unmarshal(text, &back))
	assert.Equal(t, stock, back)
}

func TestStockCountsTheSamePlateOnce(t *testing.T) {
	stock := Stock{Plates: []Plate{kgPlate(5, 1), lbPlate(45, 1), kgPlate(20, 1), kgPlate(5, 2), kgPlate(10, 0)}}
	assert.Equal(t, []Plate{lbPlate(45, 1), kgPlate(20, 1), kgPlate(5, 3)}, stock.tidy())
	assert.Equal(t, kgPlate(5, 1), stock.Plates[0], "the stock itself stays as it was")
}

func TestParseRounding(t *testing.T) {
	got, err := ParseRounding("up")
	require.NoError(t, err)
	assert.Equal(t, Up, got)
	_, err = ParseRounding("sideways")
	assert.ErrorContains(t, err, `"sideways"`)
}

// A disc reads as what is printed on it, to its last digit.
func TestDiscReadsAsPrinted(t *testing.T) {
	pairs, err := ParsePairs("0.125lb*1,1.25kg*1,45lb*1", mass.KG)
	require.NoError(t, err)
	var faces []string
	for _, p := range pairs {
		faces = append(faces, p.Disc().String())
	}
	assert.Equal(t, []string{"0.125 lb", "1.25 kg", "45 lb"}, faces)
}
