package desk_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

func TestSchemesAreReadAsTheyAreWritten(t *testing.T) {
	for _, c := range []struct {
		text string
		want []gym.Sets // nil: refused
	}{
		{"4 x 2 at 80", []gym.Sets{{Percent: 80, Sets: 4, Reps: 2}}},
		{"3×3@72.5 %", []gym.Sets{{Percent: 72.5, Sets: 3, Reps: 3}}},
		{"3 X 3 at 70, 4*2 @ 85%", []gym.Sets{{Percent: 70, Sets: 3, Reps: 3}, {Percent: 85, Sets: 4, Reps: 2}}},
		{"", nil},
		{"4 x 2", nil},
		{"4 at 80", nil},
		{"0 x 2 at 80", nil},
		{"4 x 21 at 80", nil},
		{"4 x 2 at 111", nil},
		{"4 x 2 at -5", nil},
		{"4 x 2 at 80,", nil},
		{"4 x 2 at NaN", nil},
	} {
		got, err := desk.ParseScheme(c.text)
		assert.Equal(t, c.want, got, c.text)
		assert.Equal(t, c.want == nil, err != nil, c.text)
	}
}

func FuzzParseScheme(f *testing.F) {
	for _, s := range []string{"4 x 2 at 80", "3×3@72.5 %, 1x1@100", "4 x 2", "x@"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		scheme, err := desk.ParseScheme(text)
		if err != nil {
			return
		}
		again, err := desk.ParseScheme(desk.SchemeText(scheme))
		require.NoError(t, err, "what was read is written so that it can be read")
		assert.Equal(t, scheme, again)
	})
}

func TestTimesAreReadAsTheyAreWritten(t *testing.T) {
	for text, want := range map[string]int{
		"12": 720, "12 min": 720, "1:30": 90, "0:45": 45, "45 s": 45, "45s": 45, "120": 7200, " 7 ": 420,
		"": 0, "0": 0, "0:00": 0, "1:5": 0, "1:60": 0, "-3": 0, "121": 0, "12:30:00": 0, "soon": 0, "0 s": 0, "1.5": 0,
	} {
		got, err := desk.ParseMinutes(text)
		assert.Equal(t, want, got, "%q", text)
		assert.Equal(t, want == 0, err != nil, "%q", text)
	}
}

// What a field shows of a workout is what it reads back, for every format.
func TestWorkoutFieldsReadWhatTheyShow(t *testing.T) {
	b := newBench(t)
	for _, f := range []gym.Format{gym.AMRAP, gym.ForTime, gym.Chipper, gym.EMOM, gym.Intervals, gym.PlainSets} {
		w := b.WithFormat(gym.Workout{}, f)
		w = b.WithMovement(w, 0, "burpee")
		w = b.WithMovement(w, 1, "wall-ball")
		require.NoError(t, b.WorkoutFault(w), f)
		for _, k := range desk.WorkoutFields(f) {
			again, err := k.Read(w, k.Text(w))
			require.NoError(t, err, "%s %s", f, k)
			assert.Equal(t, w, again, "%s %s", f, k)
			_, err = k.Read(w, "soon")
			assert.Error(t, err, "%s %s", f, k)
		}
	}
}

// A rep list takes the place of rounds and of every movement's own amount, and
// gives them back.
func TestARepListTakesThePlaceOfRounds(t *testing.T) {
	b := newBench(t)
	w := b.WithMovement(gym.Workout{}, 0, "burpee")
	require.Equal(t, gym.ForTime, w.Format, "a first movement begins a workout for time")
	list, err := desk.PassesField.Read(w, "21-15-9")
	require.NoError(t, err)
	assert.Equal(t, []int{21, 15, 9}, list.Reps)
	assert.Zero(t, list.Rounds)
	assert.Zero(t, list.Items[0].Amount)
	require.NoError(t, b.WorkoutFault(list))
	back, err := desk.PassesField.Read(list, "4")
	require.NoError(t, err)
	assert.Equal(t, 4, back.Rounds)
	require.NoError(t, b.WorkoutFault(back))
	assert.NotZero(t, w.Items[0].Amount, "the workout that was handed in stays as it was")
}

func TestEveryFormatLeadsToEveryOther(t *testing.T) {
	b := newBench(t)
	formats := []gym.Format{gym.AMRAP, gym.ForTime, gym.Chipper, gym.EMOM, gym.Intervals, gym.PlainSets}
	for _, from := range formats {
		w := b.WithMovement(b.WithMovement(b.WithFormat(gym.Workout{}, from), 0, "burpee"), 1, "row-calories")
		for _, to := range formats {
			assert.NoError(t, b.WorkoutFault(b.WithFormat(w, to)), "%s to %s", from, to)
		}
	}
	assert.Equal(t, gym.Workout{}, b.WithFormat(gym.Workout{}, "unheard of"))
}

func TestTierLoadsOfADay(t *testing.T) {
	b := newBench(t)
	item := gym.Item{Movement: "kettlebell-swing", Amount: 15}
	m, ok := b.Movement(item.Movement)
	require.True(t, ok)
	usual := b.TiersText(item, gym.StandardM)
	require.NotEmpty(t, usual)
	same, err := b.WithTiers(item, gym.StandardM, usual)
	require.NoError(t, err)
	assert.Nil(t, same.Loads, "the catalogue's loads are no exception")
	other, err := b.WithTiers(item, gym.StandardM, "28 / 20/53 lb")
	assert.Error(t, err, "53 lb is more than 20 kg")
	assert.Equal(t, item, other)
	other, err = b.WithTiers(item, gym.StandardM, "28/20/16")
	require.NoError(t, err)
	assert.Equal(t, gym.TierLoads{Full: 28 * mass.Kilogram, Mid: 20 * mass.Kilogram, Light: 16 * mass.Kilogram}, other.Loads[gym.StandardM])
	assert.Equal(t, "28/20/16", b.TiersText(other, gym.StandardM))
	assert.Equal(t, m.Loads[gym.StandardW].Full.Digits(mass.KG), b.TiersText(other, gym.StandardW)[:len(m.Loads[gym.StandardW].Full.Digits(mass.KG))])
	back, err := b.WithTiers(other, gym.StandardM, " ")
	require.NoError(t, err)
	assert.Nil(t, back.Loads)
	for _, bad := range []string{"28", "28/20", "28/20/16/12", "a/b/c", "0/0/0", "28//16"} {
		_, err := b.WithTiers(item, gym.StandardM, bad)
		assert.Error(t, err, bad)
	}
}

func TestPercentagesBeginInsidePrilepinsRanges(t *testing.T) {
	m := desk.ByPercent(gym.MainLift{Lift: "snatch", Reps: 3})
	require.Len(t, m.Scheme, 1)
	assert.Zero(t, m.Reps)
	// The row of 70 to under 80 per cent: 3 to 6 reps a set, 12 to 24 in all
	// (Prilepin's table, from second-hand copies).
	total := m.Scheme[0].Sets * m.Scheme[0].Reps
	assert.GreaterOrEqual(t, total, 12)
	assert.LessOrEqual(t, total, 24)
	assert.GreaterOrEqual(t, m.Scheme[0].Reps, 3)
}

func FuzzParseMinutes(f *testing.F) {
	for _, s := range []string{"12", "1:30", "45 s", "0:05", "120:59", "12 min"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		n, err := desk.ParseMinutes(text)
		if err != nil {
			assert.Zero(t, n)
			return
		}
		require.Positive(t, n)
		again, err := desk.ParseMinutes(desk.CapField.Text(gym.Workout{Cap: n}))
		require.NoError(t, err, "what was read is written so that it can be read")
		assert.Equal(t, n, again)
	})
}
