package conditioning

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/gym"
	"windlass/internal/mass"
)

func brief(t require.TestingT) (Brief, gym.Catalogue) {
	c, _ := catalogue(t)
	return Brief{
		Main: lift(t, c, "bench-press"), Reps: 5, Next: lift(t, c, "deadlift"), Apart: 3, Crowd: crowd(16, gym.Equipment{Implements: c.Implements}, c),
		Near:     map[gym.MovementKey]int{"burpee": 1, "sit-up": 2, "pull-up": 3},
		Shortest: 8 * 60, Longest: 15 * 60, Movements: c.Movements, Table: gym.UsualComposing().Formats, Pace: DefaultPace(),
	}, c
}

// Every proposal keeps every promise, checked here from the brief alone.
func TestComposeKeepsItsPromises(t *testing.T) {
	base, c := brief(t)
	find := finder(c.Movements)
	rapid.Check(t, func(t *rapid.T) {
		b := base
		b.Reps = rapid.SampledFrom([]int{5, 3, 1, 8}).Draw(t, "reps")
		pairs := [][2]gym.LiftKey{{"bench-press", "deadlift"}, {"back-squat", "shoulder-press"}, {"shoulder-press", "back-squat"}, {"snatch", "bench-press"}}
		pair := rapid.SampledFrom(pairs).Draw(t, "lifts")
		b.Main, b.Next = lift(t, c, pair[0]), lift(t, c, pair[1])
		seed := rapid.Uint64().Draw(t, "seed")
		p, err := Compose(b, seed)
		require.NoError(t, err)
		require.NoError(t, Check(p.Workout, find))
		if formats, ok := b.Table[b.Reps]; ok {
			assert.Contains(t, formats, p.Workout.Format)
		}
		assert.GreaterOrEqual(t, p.Duration.Usual.Seconds, b.Shortest)
		assert.LessOrEqual(t, p.Duration.Usual.Seconds, b.Longest)
		supported := false
		for _, item := range p.Workout.Items {
			m, _ := find(string(item.Movement))
			assert.NotEqual(t, b.Next.Region, m.Region, m.Key)
			if m.Region == gym.WholeBody {
				assert.Contains(t, []gym.Pattern{gym.Engine, gym.Carry}, m.Pattern, m.Key)
			}
			assert.NotEqual(t, b.Next.Pattern, m.Pattern, m.Key)
			assert.NotContains(t, []gym.MovementKey{"burpee", "sit-up"}, m.Key)
			supported = supported || m.Region == b.Main.Region
		}
		assert.Equal(t, supported, !strings.Contains(p.Why[1], "Nothing in it supports"))
		if pair[0] != "snatch" {
			assert.True(t, supported)
		}
		turns := 0
		if TurnsNote(p.Workout) != "" {
			turns = 1
		}
		assert.Len(t, p.Why, 6+turns, "nothing is scarce where nobody has counted")
		again, err := Compose(b, seed)
		require.NoError(t, err)
		assert.Equal(t, p, again)
	})
}

// The reasons write formats and regions as coaches do.
func TestComposeSaysWhy(t *testing.T) {
	b, _ := brief(t)
	p, err := Compose(b, 1)
	require.NoError(t, err)
	assert.Equal(t, "A day of sets of 5: your table gives it for time, chipper or AMRAP.", p.Why[0])
	assert.Contains(t, p.Why[1], " supports Bench press (upper body).")
	assert.Equal(t, "No lift of the lower body is in it, and nothing moves as Deadlift does, which comes next.", p.Why[2])
	b.Reps = 2
	p, err = Compose(b, 1)
	require.NoError(t, err)
	assert.Equal(t, "A day of sets of 2: your table has no row for it, so any of its formats may come.", p.Why[0])
}

// Seeds give different workouts, and all the table's formats come up.
func TestComposeVaries(t *testing.T) {
	b, _ := brief(t)
	seen, formats := map[string]bool{}, map[gym.Format]bool{}
	for seed := range uint64(40) {
		p, err := Compose(b, seed)
		require.NoError(t, err)
		seen[Format(p.Workout, nil)], formats[p.Workout.Format] = true, true
	}
	assert.Greater(t, len(seen), 30)
	assert.Len(t, formats, 3)
}

// What the gym has too little of for the class is left out, and said.
func TestComposeHeedsTheImplements(t *testing.T) {
	b, c := brief(t)
	b.Crowd = crowd(16, gym.Equipment{Implements: []gym.Implement{
		{Kind: "kettlebell", Unit: mass.KG, Masses: []mass.Mass{kg(8), kg(16), kg(24)}},
		{Kind: "dumbbell", Unit: mass.KG, Masses: []mass.Mass{kg(10)}, Total: 1},
	}}, c)
	find := finder(c.Movements)
	for seed := range uint64(30) {
		p, err := Compose(b, seed)
		require.NoError(t, err)
		assert.True(t, p.Sharing.Enough())
		for _, item := range p.Workout.Items {
			m, _ := find(string(item.Movement))
			assert.Contains(t, []string{"", "kettlebell"}, m.Implement)
		}
		assert.Contains(t, p.Why[len(p.Why)-2], "Left out, as there are too few implements for a class of 16: ")
	}
}

// Where nothing fits in one heat, two are proposed, and how long they take.
func TestComposeProposesHeatsLast(t *testing.T) {
	b, c := brief(t)
	row := gym.Movement{Key: "row", Name: "Row", Region: gym.Upper, Pattern: gym.Pull, Measure: gym.ByReps, Implement: "ring", Seconds: 2}
	push := gym.Movement{Key: "push", Name: "Push", Region: gym.Upper, Pattern: gym.Push, Measure: gym.ByReps, Implement: "mat", Seconds: 2}
	b.Movements = []gym.Movement{row, push}
	b.Crowd = crowd(16, gym.Equipment{Implements: []gym.Implement{
		{Kind: "ring", Unit: mass.KG, Total: 4}, {Kind: "mat", Unit: mass.KG},
	}}, c)
	p, err := Compose(b, 1)
	require.NoError(t, err)
	assert.Equal(t, Way{Starts: 2, Turns: 1, Heats: 2}, p.Sharing.Way)
	assert.Contains(t, p.Why[len(p.Why)-2],
		"Too few for all 16 at once: ring (16 wanted, 4 there). Begin at different movements, in 2 groups and go in two heats, about ")
	b.Crowd.Owned.Implements[0].Total = 3
	_, err = Compose(b, 1)
	assert.ErrorIs(t, err, ErrNoProposal)
	assert.ErrorContains(t, err, "takes more implements than there are for a class of 16, even in two heats")
	b.Crowd.Owned.Implements[0].Total = 1
	_, err = Compose(b, 1)
	assert.ErrorContains(t, err, "lacks implements for the class")
}

// Where sparing the next day's lift leaves nothing that supports the day's own,
// sparing comes first, and the reasons say what was in the way.
func TestComposeSparesFirst(t *testing.T) {
	for _, pair := range [][2]gym.LiftKey{{"bench-press", "shoulder-press"}, {"snatch", "back-squat"}} {
		b, c := brief(t)
		b.Main, b.Next = lift(t, c, pair[0]), lift(t, c, pair[1])
		p, err := Compose(b, 1)
		require.NoError(t, err)
		assert.Contains(t, p.Why[1], "Nothing in it supports "+b.Main.Name+": ")
		assert.Contains(t, p.Why[1], "× would tire the next day's lift")
	}
}

// A slow athlete has done the amount of every minute before it is over. A usual one
// works through most of an interval, and no longer: round amounts are at most twice
// the one before.
func TestComposedSlotsCanBeDone(t *testing.T) {
	b, c := brief(t)
	find := finder(c.Movements)
	for _, factor := range []float64{1, 1.25, 2} {
		b.Pace.Factor = factor
		for _, f := range []gym.Format{gym.EMOM, gym.Intervals} {
			b.Table = Table{b.Reps: {f}}
			for seed := range uint64(40) {
				p, err := Compose(b, seed)
				require.NoError(t, err)
				for _, item := range p.Workout.Items {
					once := gym.Workout{Format: gym.ForTime, Rounds: 1, Items: []gym.Item{item}}
					d, err := Estimate(once, find, b.Pace)
					require.NoError(t, err)
					what := fmt.Sprintf("%d %s at %g", item.Amount, item.Movement, factor)
					if f == gym.EMOM {
						assert.LessOrEqual(t, d.Slow.Seconds, 60, what)
						continue
					}
					m, _ := find(string(item.Movement))
					fresh := factor * m.Seconds * float64(item.Amount)
					assert.LessOrEqual(t, fresh, float64(p.Workout.Work), what)
					assert.Greater(t, fresh, float64(p.Workout.Work)/2-1e-9, what)
				}
			}
		}
	}
}

func TestComposeWithoutLifts(t *testing.T) {
	b, _ := brief(t)
	b.Main, b.Next = gym.Lift{}, gym.Lift{}
	p, err := Compose(b, 1)
	require.NoError(t, err)
	assert.Len(t, p.Why, 4)
}

func TestComposeRefuses(t *testing.T) {
	for _, row := range []struct {
		change func(*Brief)
		want   string
	}{
		{func(b *Brief) { b.Longest = 60; b.Shortest = 120 }, "window"},
		{func(b *Brief) { b.Table = nil }, "table of formats"},
		{func(b *Brief) { b.Movements = nil }, "of 0 movements there are too few"},
		{func(b *Brief) { b.Movements = b.Movements[:3] }, "3 × would tire"},
		{func(b *Brief) { b.Shortest, b.Longest = 1, 2 }, "nothing of 0:01 to 0:02"},
	} {
		b, _ := brief(t)
		row.change(&b)
		_, err := Compose(b, 1)
		assert.ErrorIs(t, err, ErrNoProposal)
		assert.ErrorContains(t, err, row.want)
	}
}
