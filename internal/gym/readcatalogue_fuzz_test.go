package gym_test

import (
	"encoding/csv"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
	"windlass/internal/mass"
)

// FuzzReadCatalogue puts a text in the place of each table in turn, or of what
// stands below its header. Whatever is read is written again by a writer that
// knows only the columns' names, and must be read the same.
func FuzzReadCatalogue(f *testing.F) {
	for _, text := range small {
		f.Add(text, true)
		_, body, _ := strings.Cut(text, "\n")
		f.Add(body, false)
	}
	f.Add("key,name,pattern,dose\na,\"b\nc\",hinge,\"d \"\"e\"\"\"\n", true)
	f.Fuzz(func(t *testing.T, text string, whole bool) {
		for name := range small {
			old := small[name]
			if !whole {
				_, old, _ = strings.Cut(old, "\n")
			}
			c, err := gym.ReadCatalogue(folder(with(t, name, old, text)))
			if err != nil {
				require.ErrorContains(t, err, "read ")
				require.ErrorContains(t, err, ".csv")
				continue
			}
			requireValid(t, c)
			again, err := gym.ReadCatalogue(folder(tables(t, c)))
			require.NoError(t, err)
			require.Equal(t, c, again)
		}
	})
}

func requireValid(t *testing.T, c gym.Catalogue) {
	t.Helper()
	var all []interface{ Valid() error }
	for _, l := range c.Lifts {
		all = append(all, l)
	}
	for _, m := range c.Movements {
		all = append(all, m)
	}
	for _, f := range c.Finishers {
		all = append(all, f)
	}
	for _, d := range c.Drills {
		all = append(all, d)
	}
	for _, i := range c.Implements {
		all = append(all, i)
	}
	for _, v := range all {
		require.NoError(t, v.Valid())
	}
}

// tables writes a catalogue as ReadCatalogue reads it.
func tables(t *testing.T, c gym.Catalogue) map[string]string {
	t.Helper()
	out := map[string][][]string{}
	for name := range small {
		header, err := csv.NewReader(strings.NewReader(small[name])).Read()
		require.NoError(t, err)
		out[name] = [][]string{header}
	}
	add := func(name string, cells ...string) { out[name] = append(out[name], cells) }
	for _, l := range c.Lifts {
		add("lifts.csv", string(l.Key), l.Name, strings.Join(l.Aliases, ";"), string(l.Region), string(l.Pattern), l.Bar,
			map[bool]string{true: "yes", false: "no"}[l.Floor], string(l.Measure), join(l.Reps, strconv.Itoa), string(l.Related),
			number(l.RatioLow), number(l.RatioHigh), l.Source, nanograms(l.Reference[gym.StandardM]), nanograms(l.Reference[gym.StandardW]))
	}
	for _, m := range c.Movements {
		cells := []string{
			string(m.Key), m.Name, string(m.Region), string(m.Pattern), string(m.Measure), m.Implement, map[bool]string{true: "yes", false: "no"}[m.Pair], string(m.Linked),
			strconv.Itoa(m.ReferenceReps), number(m.Seconds),
		}
		for _, s := range gym.Standards() {
			cells = append(cells, nanograms(m.Loads[s].Full), nanograms(m.Loads[s].Mid), nanograms(m.Loads[s].Light))
		}
		add("movements.csv", cells...)
	}
	for _, v := range c.Finishers {
		add("finishers.csv", v.Key, v.Name, v.Muscle, string(v.Region), v.Spares)
	}
	for _, d := range c.Drills {
		add("warmups.csv", d.Key, d.Name, string(d.Pattern), d.Dose)
	}
	for _, i := range c.Implements {
		var pieces []string
		for n, m := range i.Masses {
			text := nanograms(m)
			if n == 0 && i.Unit == mass.LB { // only the first mass tells the unit
				text = pounds(t, text)
			}
			if i.Each[m] > 0 {
				text += " × " + strconv.Itoa(i.Each[m])
			}
			pieces = append(pieces, text)
		}
		add("implements.csv", i.Kind, strings.Join(pieces, ";"), strconv.Itoa(i.Total))
	}
	texts := map[string]string{}
	for name, lines := range out {
		var b strings.Builder
		require.NoError(t, csv.NewWriter(&b).WriteAll(lines))
		texts[name] = b.String()
	}
	return texts
}

func join[T any](values []T, text func(T) string) string {
	var texts []string
	for _, v := range values {
		texts = append(texts, text(v))
	}
	return strings.Join(texts, ";")
}

func number(x float64) string { return strconv.FormatFloat(x, 'g', -1, 64) }

// nanograms writes a mass in kg with all its twelve decimals.
func nanograms(m mass.Mass) string {
	if m == 0 {
		return ""
	}
	whole, part := m/mass.Kilogram, m%mass.Kilogram
	return strconv.Itoa(int(whole)) + "." + strconv.Itoa(int(mass.Kilogram + part))[1:] + " kg"
}

// pounds writes a mass in lb, with decimals enough to come back to the nanogram.
func pounds(t *testing.T, kg string) string {
	t.Helper()
	m, _, err := mass.Parse(kg, mass.KG)
	require.NoError(t, err)
	whole, rest := m/mass.Pound, m%mass.Pound
	text := strconv.Itoa(int(whole)) + "."
	for range 12 {
		rest *= 10
		text += strconv.Itoa(int(rest / mass.Pound))
		rest %= mass.Pound
	}
	back, _, err := mass.Parse(text+" lb", mass.KG)
	require.NoError(t, err)
	require.Equal(t, m, back)
	return text + " lb"
}
