package mass_test

import (
	"math/big"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/mass"
)

func TestParse(t *testing.T) {
	tests := []struct {
		text string
		want string // exact, as "number unit"
	}{
		{"100", "100 kg"},                         // without a unit: the one handed in
		{"100kg", "100 kg"},                       // no space
		{"100 kg", "100 kg"},                      // one space
		{"  100   KG ", "100 kg"},                 // spaces and capitals
		{"100\u00a0kg", "100 kg"},                 // the space of a spreadsheet
		{"102,5 kg", "102.5 kg"},                  // decimal comma
		{"102.5", "102.5 kg"},                     //
		{".5", "0.5 kg"},                          // nothing before the point
		{"5.", "5 kg"},                            // nothing behind it
		{"225 lb", "225 lb"},                      //
		{"225lbs", "225 lb"},                      //
		{"225 lbs.", "225 lb"},                    // the point is the unit's
		{"45#", "45 lb"},                          //
		{"2 pounds", "2 lb"},                      //
		{"60 kilos", "60 kg"},                     //
		{"0", "0 kg"},                             // nothing is a mass
		{"0,125 kg", "0.125 kg"},                  // cannot be thousands
		{"102,500 kg", "102.5 kg"},                // thousands would be beyond belief
		{"1,250 kg", "1.25 kg"},                   // the same: a plate
		{"1,134 lb", ""},                          // could be thousands
		{"1000 kg", "1000 kg"},                    // as much as the program believes
		{"2204 lb", "2204 lb"},                    //
		{"00100 kg", "100 kg"},                    //
		{"83.914588450000", "83.91458845 kg"},     // a spreadsheet's 185 lb
		{"1,000 lb", ""},                          // could be thousands
		{"1000.01 kg", ""},                        // over the most
		{"2205 lb", ""},                           // over the most
		{"99999999999999999999", ""},              // over anything
		{"0.0000000000001 kg", ""},                // finer than a nanogram
		{"NaN", ""},                               //
		{"Inf", ""},                               //
		{"-5", ""},                                // less than nothing
		{"\u22125 kg", ""},                        // with the printed minus
		{"+5", ""},                                //
		{"1e3", ""},                               // nobody writes loads so
		{"0x10", ""},                              //
		{"", ""},                                  //
		{"kg", ""},                                // no number
		{".", ""},                                 // no digit
		{"12.5.5", ""},                            //
		{"12,5,5", ""},                            //
		{"1.234,5", ""},                           //
		{"1 000 kg", ""},                          //
		{"100 kg kg", ""},                         //
		{"100 stone", ""},                         //
		{"kg 100", ""},                            //
		{"\u0661\u0660\u0660", ""},                // digits of another script
		{"100 kg\x00", ""},                        //
		{strings.Repeat("9", 10_000) + " kg", ""}, //
	}
	for _, tt := range tests {
		m, unit, err := mass.Parse(tt.text, mass.KG)
		if tt.want == "" {
			assert.ErrorIs(t, err, mass.ErrNotMass, "%.40q", tt.text)
			assert.Zero(t, m)
			continue
		}
		require.NoError(t, err, "%q", tt.text)
		number, name, _ := strings.Cut(tt.want, " ")
		assert.Equal(t, mass.Unit(name), unit, "%q", tt.text)
		assert.Equal(t, exactly(t, number, unit), m, "%q", tt.text)
	}
}

func TestParseCountsInTheReadersUnit(t *testing.T) {
	m, unit, err := mass.Parse("185", mass.LB)
	require.NoError(t, err)
	assert.Equal(t, 185*mass.Pound, m)
	assert.Equal(t, "185 lb", m.In(unit))
	m, unit, err = mass.Parse("185", "")
	require.NoError(t, err)
	assert.Equal(t, "185 kg", m.In(unit))
}

func TestRefusalSaysWhatWouldMendIt(t *testing.T) {
	for text, why := range map[string]string{
		"NaN":       "it has no number",
		"-5":        "it is less than nothing",
		"1e3":       "the unit is not kg or lb",
		"12.5.5":    "it is not a plain number",
		"1200 kg":   "it is over 1000 kg",
		"2300 lb":   "it is over 2204.62 lb",
		"12345 lb":  "it is over 2204.62 lb",
		"1,200 lb":  "the comma could part thousands; write 1200 or 1.200",
		"100 stone": "the unit is not kg or lb",
	} {
		_, _, err := mass.Parse(text, mass.KG)
		assert.EqualError(t, err, `read load "`+text+`": not a mass: `+why+`; write one like 102.5 kg or 225 lb`)
	}
}

// exactly converts with rational numbers, to the nearest nanogram.
func exactly(t testing.TB, number string, unit mass.Unit) mass.Mass {
	t.Helper()
	r, ok := new(big.Rat).SetString(strings.TrimSuffix(strings.Replace("0"+number, ",", ".", 1), "."))
	require.True(t, ok, "%q", number)
	one := map[mass.Unit]*big.Rat{mass.KG: big.NewRat(1_000_000_000_000, 1), mass.LB: big.NewRat(453_592_370_000, 1)}[unit]
	r.Mul(r, one)
	r.Add(r, big.NewRat(1, 2))
	ng := new(big.Int).Div(r.Num(), r.Denom())
	require.True(t, ng.IsInt64())
	return mass.Mass(ng.Int64())
}

// The grammar once more, as expressions that share nothing with the parser;
// zeros in front are the one thing that they do not count.
var (
	space   = `[\s\v\x{85}\p{Z}]*`
	grammar = regexp.MustCompile(`^` + space + `([0-9]{0,4}(?:[.,][0-9]{0,12})?)` + space +
		`(kg|kgs|kilo|kilos|lb\.?|lbs\.?|pounds?|#)?` + space + `$`)
	zeros = regexp.MustCompile(`^(` + space + `)0+([0-9])`)
)

func FuzzParse(f *testing.F) {
	for _, seed := range []string{
		"100", "100kg", "102,5 kg", "225 lb", "225lbs", "NaN", "-5", "1e3", "", "kg", "12.5.5", "1,000 lb",
		"0.453592370000 lb", "2204.622621848776 lb", "#", "lbs.", "5 .5", "0,125", "9999,999",
	} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		m, unit, err := mass.Parse(text, mass.KG)
		if err != nil {
			require.ErrorIs(t, err, mass.ErrNotMass)
			require.Zero(t, m)
			return
		}
		parts := grammar.FindStringSubmatch(zeros.ReplaceAllString(strings.ToLower(text), "$1$2"))
		require.NotNil(t, parts, "%q was read as %s", text, m)
		require.Equal(t, strings.HasPrefix(parts[2], "l") || strings.HasPrefix(parts[2], "p") || parts[2] == "#", unit == mass.LB)
		require.Equal(t, exactly(t, parts[1], unit), m, "%q", text)
		require.LessOrEqual(t, m, mass.Max)

		back, _, err := mass.Parse(m.In(unit), unit)
		require.NoError(t, err)
		require.Equal(t, m.In(unit), back.In(unit))
	})
}
