package conditioning

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/gym"
)

func read(t *testing.T, line string) gym.Workout {
	t.Helper()
	w, err := Parse(line, nil)
	require.NoError(t, err)
	return w
}

func TestCheckScore(t *testing.T) {
	for _, row := range []struct{ line, score, why string }{
		{"for time 21-15-9 cap 15:00: a, b", "14:59", ""},
		{"for time 21-15-9 cap 15:00: a, b", "15:00", ""},
		{"for time 21-15-9 cap 15:00: a, b", "28:15", "past the cap of 15:00; write the reps done by then"},
		{"for time 21-15-9 cap 15:00: a, b", "cap 85", ""},
		{"for time 21-15-9 cap 15:00: a, b", "cap 90", "all of it is 90"},
		{"for time 3 rounds: 10 a", "cap 20", "has no cap; write the time"},
		{"for time 3 rounds: 10 a", "2:01:00", "check the minutes"},
		{"amrap 12:00: 20 a, 10 b, 10 c", "5+39", ""},
		{"amrap 12:00: 20 a, 10 b, 10 c", "5+40", "write 6+0"},
		{"amrap 12:00: 20 a, 10 b, 10 c", "5+95", "write 7+15"},
		{"emom 10:00: 12 a", "120", ""},
		{"emom 10:00: 12 a", "10001", "not believable"},
	} {
		w := read(t, row.line)
		s, err := ParseScore(row.score, KindOf(w.Format))
		require.NoError(t, err)
		err = CheckScore(w, s)
		if row.why == "" {
			assert.NoError(t, err, "%s: %s", row.line, row.score)
			continue
		}
		assert.ErrorIs(t, err, ErrFit)
		assert.ErrorContains(t, err, row.why, "%s: %s", row.line, row.score)
	}
	assert.ErrorIs(t, CheckScore(gym.Workout{Format: gym.AMRAP}, Score{Kind: ByTime, Seconds: 60}), ErrKind)
	assert.ErrorIs(t, CheckScore(gym.Workout{Format: gym.ForTime, Cap: 600}, Score{Kind: ByTime, Seconds: 601}), ErrFit, "a title may tell the cap")
	assert.NoError(t, CheckScore(gym.Workout{Format: gym.ForTime}, Score{Kind: ByTime, Capped: true, Reps: 85}), "a title need not tell it")
}

func TestDoubtScore(t *testing.T) {
	_, find := catalogue(t)
	w, err := Parse("for time 5 rounds: 20 kettlebell-swing, 15 burpee", find)
	require.NoError(t, err)
	p := DefaultPace()
	d, err := Estimate(w, find, p)
	require.NoError(t, err)
	assert.Empty(t, DoubtScore(w, Score{Kind: ByTime, Seconds: d.Fast.Seconds / 2}, find, p))
	assert.Contains(t, DoubtScore(w, Score{Kind: ByTime, Seconds: d.Fast.Seconds / 4}, find, p), "A fast athlete takes about "+clock(d.Fast.Seconds))
	w = gym.Workout{Format: gym.AMRAP, Seconds: 600, Items: []gym.Item{{Movement: "kettlebell-swing", Amount: 15}, {Movement: "burpee", Amount: 10}}}
	assert.Empty(t, DoubtScore(w, Score{Kind: ByRounds, Rounds: 10}, find, p))
	assert.NotEmpty(t, DoubtScore(w, Score{Kind: ByRounds, Rounds: 70}, find, p), "7+0 without its plus")
	w = gym.Workout{Format: gym.EMOM, Seconds: 600, Items: []gym.Item{{Movement: "burpee", Amount: 10}}}
	assert.Empty(t, DoubtScore(w, Score{Kind: ByReps, Reps: 100}, find, p))
	assert.Equal(t, "It asks for 100 in all.", DoubtScore(w, Score{Kind: ByReps, Reps: 1000}, find, p))
}

func TestDone(t *testing.T) {
	for _, row := range []struct {
		line, score string
		want        []int
	}{
		{"amrap 12:00: 20 a, 10 b, 10 c", "5+12", []int{112, 50, 50}}, // 12 of the 20 that come first
		{"amrap 12:00: 20 a, 10 b, 10 c", "5+35", []int{120, 60, 55}},
		{"amrap 12:00: 20 a, 10 b, 10 c", "0+0", []int{0, 0, 0}},
		{"for time 21-15-9 cap 10:00: a, b", "8:45", []int{45, 45}},
		{"for time 21-15-9 cap 10:00: a, b", "cap 50", []int{29, 21}}, // 21 + 21, then 8
		{"chipper cap 20:00: 50 a, 40 b, 30 c", "cap 95", []int{50, 40, 5}},
		{"emom 10:00: 12 a", "110", []int{110}},
	} {
		w := read(t, row.line)
		s, err := ParseScore(row.score, KindOf(w.Format))
		require.NoError(t, err)
		got, ok := Done(w, s)
		assert.True(t, ok)
		assert.Equal(t, row.want, got, "%s: %s", row.line, row.score)
	}
	_, ok := Done(read(t, "emom 10:00: 12 a, 10 b"), Score{Kind: ByReps, Reps: 110})
	assert.False(t, ok, "who did what of 110 cannot be known")
	_, ok = Done(read(t, "sets 3: 10 a"), Score{Kind: ByLoad, Load: kg(60)})
	assert.False(t, ok)
	_, ok = Done(read(t, "emom 10:00: 12 a"), Score{Kind: ByRounds, Rounds: 3})
	assert.False(t, ok)
}

// Going through a workout rep by rep gives the same.
func TestDoneRepByRep(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		amounts := rapid.SliceOfN(rapid.IntRange(1, 9), 1, 4).Draw(t, "amounts")
		w := gym.Workout{Format: gym.AMRAP, Seconds: 600}
		for range amounts {
			w.Items = append(w.Items, gym.Item{Movement: "a"})
		}
		var course []int
		for round := 0; round < 8; round++ {
			for i, n := range amounts {
				w.Items[i].Amount = n
				for range n {
					course = append(course, i)
				}
			}
		}
		reps := rapid.IntRange(0, len(course)-1).Draw(t, "reps")
		want := make([]int, len(amounts))
		for _, i := range course[:reps] {
			want[i]++
		}
		s := Score{Kind: ByRounds, Rounds: reps / Pass(w, 0), Reps: reps % Pass(w, 0)}
		require.NoError(t, CheckScore(w, s))
		got, ok := Done(w, s)
		assert.True(t, ok)
		assert.Equal(t, want, got)
	})
}
