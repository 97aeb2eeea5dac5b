package conditioning

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/gym"
	"windlass/internal/mass"
)

func TestParse(t *testing.T) {
	_, find := catalogue(t)
	loads := map[gym.Standard]gym.TierLoads{
		gym.StandardM: {Full: kg(24), Mid: kg(20), Light: kg(16)},
		gym.StandardW: {Full: 35 * mass.Pound, Mid: 26 * mass.Pound, Light: kg(8)},
	}
	for text, want := range map[string]gym.Workout{
		"amrap 12:00: 10 kettlebell-swing, 200m row-metres":          wholes["amrap"],
		"AMRAP 12:00 : 10 Kettlebell swing ,200 row-metres":          wholes["amrap"],
		"for time 5 rounds rest 1:00 cap 15:00: 400m run, 15 burpee": wholes["rounds"],
		"for time 5 rounds cap 15:00 rest 1:00: 400m run, 15 burpee": wholes["rounds"],
		"for time 21-15-9: barbell-thruster, pull-up":                wholes["rep list"],
		"chipper cap 20:00: 50 wall-ball, 40 sit-up, 30 burpee":      wholes["chipper"],
		"emom 12:00: 15 kettlebell-swing, 12cal row-calories, rest":  wholes["emom"],
		"intervals 8 x 0:20 rest 1:00: bike-calories":                wholes["intervals"],
		"sets 4 rest 1:30: 12 dumbbell-row":                          wholes["sets"],
		"sets 1: 5 kettlebell-swing @ M 24kg/20kg/16kg W 35lb/26lb/8kg": {
			Format: gym.PlainSets, Rounds: 1, Items: []gym.Item{{Movement: "kettlebell-swing", Amount: 5, Loads: loads}},
		},
	} {
		got, err := Parse(text, find)
		require.NoError(t, err, text)
		assert.Equal(t, want, got, text)
	}
}

func TestParseRefuses(t *testing.T) {
	_, find := catalogue(t)
	for text, want := range map[string]string{
		"":                                             `no ":"`,
		"amrap 12:00 10 burpee":                        `no ":"`,
		"amrap: 10 burpee":                             "no length",
		"amrap 12:60: 10 burpee":                       `"12:60" is not understood`,
		"swim 12:00: 10 burpee":                        "none of amrap",
		"for 5 rounds: 10 burpee":                      `"time" is missing`,
		"for time 5: 10 burpee":                        `"rounds" is missing`,
		"for time: 10 burpee":                          "neither rounds",
		"for time 21-0-9: burpee":                      `"21-0-9" is not understood`,
		"for time 5 rounds rest: 10 burpee":            "rest has no time",
		"chipper cap 5 minutes: 10 burpee":             "cap has no time",
		"sets 3 rest 1:00 rest 2:00: 5 run":            "rest is said twice",
		"intervals 8 0:20: row-calories":               `"x"`,
		"amrap 5:00: 10 burpee,":                       "no movement",
		"amrap 5:00: 10":                               "no movement",
		"amrap 5:00: 10 moon-walk":                     `"moon-walk" is not in the catalogue`,
		"amrap 5:00: 10m burpee":                       "not counted by distance",
		"amrap 5:00: burpee":                           "how many",
		"amrap 5:00: rest":                             "no name",
		"amrap 5:00: 5 kettlebell-swing @":             "three loads",
		"amrap 5:00: 5 kettlebell-swing @ M":           "three loads",
		"sets 3: 5 kettlebell-swing @ M 8/4":           "full, mid and light",
		"sets 3: 5 kettlebell-swing @ M a/b/c":         `load "a"`,
		"sets 3: 5 kettlebell-swing @ X 8/6/4":         `"X" is not M or W`,
		"sets 3: 5 kettlebell-swing @ M 8/6/4 m 8/6/4": "not one standard",
	} {
		_, err := Parse(text, find)
		assert.ErrorContains(t, err, want, text)
	}
}

func TestFormat(t *testing.T) {
	_, find := catalogue(t)
	assert.Empty(t, Format(gym.Workout{}, find))
	assert.Equal(t, "for time 5 rounds rest 1:00 cap 15:00: 400m run, 15 burpee", Format(wholes["rounds"], find))
	assert.Equal(t, "for time 5 rounds rest 1:00 cap 15:00: 400 run, 15 burpee", Format(wholes["rounds"], nil))
	assert.Equal(t, "emom 12:00: 15 kettlebell-swing, 12cal row-calories, rest", Format(wholes["emom"], find))
	long := wholes["amrap"]
	long.Seconds = 3600
	assert.Equal(t, "amrap 1:00:00", Head(long))
}

// Any workout that passes Check comes back from its line as it was.
func TestRoundTrip(t *testing.T) {
	c, find := catalogue(t)
	rapid.Check(t, func(t *rapid.T) {
		w := drawWorkout(t, c.Movements)
		require.NoError(t, Check(w, find))
		back, err := Parse(Format(w, find), find)
		require.NoError(t, err)
		assert.Equal(t, w, back)
	})
}

func drawWorkout(t *rapid.T, movements []gym.Movement) gym.Workout {
	n := func(from, to int, label string) int { return rapid.IntRange(from, to).Draw(t, label) }
	w := gym.Workout{Format: rapid.SampledFrom([]gym.Format{gym.AMRAP, gym.ForTime, gym.Chipper, gym.EMOM, gym.Intervals, gym.PlainSets}).Draw(t, "format")}
	switch w.Format {
	case gym.AMRAP:
		w.Seconds = n(1, longest, "seconds")
	case gym.EMOM:
		w.Seconds = 60 * n(1, 120, "minutes")
	case gym.Chipper:
		w.Cap = n(0, longest, "cap")
	case gym.Intervals:
		w.Rounds = n(1, 100, "rounds")
		w.Work = n(1, min(600, longest/w.Rounds), "work")
		w.Rest = n(0, min(600, longest/w.Rounds-w.Work), "rest")
	case gym.PlainSets:
		w.Rounds, w.Rest = n(1, 100, "rounds"), n(0, 600, "rest")
	case gym.ForTime:
		w.Cap, w.Rest = n(0, longest, "cap"), n(0, 600, "rest")
		if w.Rounds = n(0, 3, "rounds"); w.Rounds == 0 {
			w.Reps = rapid.SliceOfN(rapid.IntRange(1, 999), 2, 10).Draw(t, "reps")
			w.Reps[0] = max(w.Reps[0], shortestWay) // the movement may be counted in metres
		}
	}
	for range n(2, 6, "items") {
		item := gym.Item{Movement: rapid.SampledFrom(movements).Draw(t, "movement").Key}
		if len(w.Reps) == 0 {
			item.Amount = n(1, 999, "amount")
		}
		if rapid.Bool().Draw(t, "loaded") {
			one := rapid.SampledFrom([]mass.Mass{mass.Kilogram, mass.Pound, mass.Kilogram / 4}).Draw(t, "unit")
			light := one * mass.Mass(n(1, 40, "light"))
			item.Loads = map[gym.Standard]gym.TierLoads{gym.StandardW: {Full: light + 2*one, Mid: light + one, Light: light}}
		}
		w.Items = append(w.Items, item)
	}
	return w
}

// What Parse accepts passes Check, and is the same after writing and reading it.
func FuzzParse(f *testing.F) {
	for _, w := range wholes {
		f.Add(Format(w, nil))
	}
	f.Add("sets 1: 5 swing @ M 24kg/20kg/16kg W 35lb/26.5 lb/8")
	f.Add("emom 1:00: rest, REST, 5 rest, 0 rest, rest @ M 3/2/1")
	f.Add("for time 2-1 rest 0:01 cap 1:00:00: a:b, c")
	f.Fuzz(func(t *testing.T, text string) {
		w, err := Parse(text, nil)
		if err != nil {
			return
		}
		require.NoError(t, Check(w, nil))
		back, err := Parse(Format(w, nil), nil)
		require.NoError(t, err, Format(w, nil))
		require.Equal(t, w, back)
	})
}

func ExampleParse() {
	w, err := Parse("for time 21-15-9 cap 10:00: dumbbell-thruster @ M 20kg/15kg/10kg, burpee", nil)
	fmt.Println(Head(w), err)
	fmt.Println(len(w.Items), w.Items[0].Loads[gym.StandardM].Full, w.Reps)
	// Output:
	// for time 21-15-9 cap 10:00 <nil>
	// 2 20 kg [21 15 9]
}
