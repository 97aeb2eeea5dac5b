package tier

import (
	"context"
	"fmt"
	"math"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// smallBook is two athletes and a swing, with an unloaded movement beside it.
func smallBook() *gym.Book {
	return &gym.Book{
		Settings:  gym.DefaultSettings(),
		Equipment: gym.Equipment{Implements: []gym.Implement{{Kind: "kettlebell", Masses: bells}}},
		Movements: []gym.Movement{
			{
				Key: "swing", Implement: "kettlebell", Linked: "deadlift", ReferenceReps: 40,
				Loads: map[gym.Standard]gym.TierLoads{gym.StandardM: threes, gym.StandardW: {Full: kg(16), Mid: kg(12), Light: kg(8)}},
			},
			{Key: "burpee", ReferenceReps: 40},
		},
		Athletes: []gym.Athlete{{ID: "ann", Standard: gym.StandardW}, {ID: "bo", Standard: gym.StandardM}},
	}
}

func learn(t *testing.T, b *gym.Book, s Strength) *Standing {
	standing, err := Learn(context.Background(), b, s)
	require.NoError(t, err)
	return standing
}

func holdOf(t *testing.T, s *Standing, athlete gym.ID, load mass.Mass) float64 {
	m, err := s.Model(athlete, "swing", march.Add(20))
	require.NoError(t, err)
	return m.Hold(load, 40)
}

// The prior's centre is the standard load and 0.9 of the relative strength; its
// spread is 0.20 with a linked lift and wider without, the project's own choice.
func TestPriorOfAnAthleteWithoutBouts(t *testing.T) {
	s := learn(t, smallBook(), func(a gym.ID, l gym.LiftKey) (float64, bool) { return 0.2, a == "ann" && l == "deadlift" })
	ann, err := s.Model("ann", "swing", march)
	require.NoError(t, err)
	mean, sd := ann.Capacity()
	assert.InDelta(t, math.Log(16)+0.9*0.2, mean, 1e-6)
	assert.InDelta(t, 0.205, sd, 0.005)
	bo, err := s.Model("bo", "swing", march)
	require.NoError(t, err)
	mean, sd = bo.Capacity()
	assert.InDelta(t, math.Log(24), mean, 1e-6)
	assert.InDelta(t, 0.37, sd, 0.01)
}

func TestModelRefuses(t *testing.T) {
	s := learn(t, smallBook(), nil)
	for _, row := range [][2]string{{"bo", "burpee"}, {"bo", "unknown"}, {"nobody", "swing"}} {
		_, err := s.Model(gym.ID(row[0]), gym.MovementKey(row[1]), march)
		assert.ErrorIs(t, err, ErrUnloaded)
		assert.ErrorContains(t, err, row[1])
	}
}

func TestLearnStops(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	_, err := Learn(ctx, smallBook(), nil)
	assert.ErrorIs(t, err, context.Canceled)
}

// A bout counts at once, on its own day and later ones only, and a void takes all
// of it back.
func TestObserveAndVoid(t *testing.T) {
	s := learn(t, smallBook(), nil)
	before := holdOf(t, s, "bo", kg(24))
	s.Observe(gym.Bout{ID: "1", Athlete: "bo", Movement: "swing", Load: kg(24), Reps: 40, Outcome: gym.Held, On: march.Add(7)})
	s.Observe(gym.Bout{ID: "2", Athlete: "bo", Movement: "swing", Load: kg(24), Reps: 40, Outcome: gym.Held, On: march.Add(3)})
	assert.Greater(t, holdOf(t, s, "bo", kg(24)), before)
	early, err := s.Model("bo", "swing", march.Add(4))
	require.NoError(t, err)
	assert.Len(t, early.Bouts(), 1)
	late, err := s.Model("bo", "swing", march.Add(8))
	require.NoError(t, err)
	require.Len(t, late.Bouts(), 2)
	assert.Equal(t, gym.ID("2"), late.Bouts()[0].ID)
	s.Void("1")
	s.Void("2")
	s.Void("never")
	assert.InDelta(t, before, holdOf(t, s, "bo", kg(24)), 1e-12)
}

// Void rows, unknown athletes and bouts without a load change nothing.
func TestLearnLeavesOut(t *testing.T) {
	b := smallBook()
	clean := holdOf(t, learn(t, b, nil), "bo", kg(24))
	row := gym.Bout{Athlete: "bo", Movement: "swing", Load: kg(24), Reps: 40, Outcome: gym.Stopped, On: march}
	void, stranger, weightless := row, row, row
	void.Void, stranger.Athlete, weightless.Load = &gym.Void{Reason: "wrong bell"}, "nobody", 0
	b.Bouts = []gym.Bout{void, stranger, weightless}
	assert.Equal(t, clean, holdOf(t, learn(t, b, nil), "bo", kg(24)))
}

// What one athlete holds speaks for another movement of the athlete and for the
// movement with another athlete, but not as loudly as for the pair itself.
func TestOthersSpeak(t *testing.T) {
	b := smallBook()
	b.Movements = append(b.Movements, b.Movements[0])
	b.Movements[2].Key = "clean"
	b.Athletes = append(b.Athletes, gym.Athlete{ID: "cy", Standard: gym.StandardM})
	hold := func(s *Standing, a gym.ID, m gym.MovementKey) float64 {
		model, err := s.Model(a, m, march.Add(30))
		require.NoError(t, err)
		return model.Hold(kg(28), 40)
	}
	before := learn(t, b, nil)
	for i := range 6 {
		b.Bouts = append(b.Bouts, gym.Bout{
			ID: gym.ID(fmt.Sprint(i)), Athlete: "bo", Movement: "swing", Load: kg(32), Reps: 40, Outcome: gym.Held, On: march.Add(3 * i),
		})
	}
	after := learn(t, b, nil)
	own := hold(after, "bo", "swing") - hold(before, "bo", "swing")
	movement := hold(after, "bo", "clean") - hold(before, "bo", "clean")
	athlete := hold(after, "cy", "swing") - hold(before, "cy", "swing")
	assert.Greater(t, own, movement)
	assert.Greater(t, movement, 0.05)
	assert.Greater(t, athlete, 0.005)
}

// The same log gives the same answers.
func TestLearnTwice(t *testing.T) {
	s := simulate(with("twice", func(g *simGym) { g.athletes, g.weeks = 10, 12 }), 1)
	a, b := learn(t, s.book, s.strength), learn(t, s.book, s.strength)
	assert.Equal(t, a.Habits(), b.Habits())
	for _, m := range s.book.Movements {
		x, err := a.Model("athlete-003", m.Key, s.end)
		require.NoError(t, err)
		y, err := b.Model("athlete-003", m.Key, s.end)
		require.NoError(t, err)
		assert.Equal(t, x.Hold(kg(20), 30), y.Hold(kg(20), 30))
	}
}

// A gym that owns nothing of a kind is offered the loads of the tiers.
func TestRackOf(t *testing.T) {
	b := smallBook()
	r := RackOf(b.Equipment, b.Movements[0], gym.StandardW, 0.8)
	assert.Equal(t, Rack{Usual: 40, Owned: bells, Tiers: gym.TierLoads{Full: kg(16), Mid: kg(12), Light: kg(8)}, Confidence: 0.8}, r)
	r = RackOf(gym.Equipment{}, b.Movements[0], gym.StandardM, 0.8)
	assert.Equal(t, []mass.Mass{kg(8), kg(12), kg(16), kg(20), kg(24)}, r.Owned)
}

func ExampleLearn() {
	book := smallBook()
	on := day.Of(2026, time.March, 2)
	for i, load := range []float64{16, 16, 20, 24} {
		outcome := gym.Held
		if load == 24 {
			outcome = gym.Slowed
		}
		book.Bouts = append(book.Bouts, gym.Bout{
			Athlete: "bo", Movement: "swing", Load: kg(load), Reps: 40, Outcome: outcome, On: on.Add(7 * i),
		})
	}
	unknown := func(gym.ID, gym.LiftKey) (float64, bool) { return 0, false }
	standing, err := Learn(context.Background(), book, unknown)
	if err != nil {
		fmt.Println(err)
		return
	}
	model, err := standing.Model("bo", "swing", on.Add(28))
	if err != nil {
		fmt.Println(err)
		return
	}
	s, err := model.Suggest(Ask{Reps: 40, On: on.Add(28), Unit: mass.KG})
	fmt.Printf("%s, %s: %s\n%v\n", s.Load, s.Tier, s.Why, err)
	// Output:
	// 20 kg, mid: 16 kg held twice, 20 kg held on 16 March, 24 kg slowed on 23 March; 24 kg has a chance of 48 % of being held, less than the 75 % wanted: take 20 kg
	// <nil>
}
