package tier

import (
	"context"
	"fmt"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
	"windlass/internal/mass"
)

// bigGym is 500 athletes at 60 movements with 200 000 bouts over two years.
func bigGym() (*gym.Book, Strength) {
	r := rand.New(rand.NewPCG(1, 1))
	s := &simulation{
		book: &gym.Book{Settings: gym.DefaultSettings()}, owned: map[gym.MovementKey][]mass.Mass{},
		of: with("big", func(g *simGym) { g.movements = 60 }),
	}
	s.equip()
	for i := range 500 {
		s.book.Athletes = append(s.book.Athletes, gym.Athlete{ID: gym.ID(fmt.Sprint("athlete-", i)), Standard: gym.StandardM})
	}
	for i := range 200_000 {
		m := s.book.Movements[r.IntN(60)]
		s.book.Bouts = append(s.book.Bouts, gym.Bout{
			ID: gym.ID(fmt.Sprint("bout-", i)), Athlete: s.book.Athletes[r.IntN(500)].ID, Movement: m.Key,
			Load: s.owned[m.Key][2+r.IntN(5)], Reps: 20 + r.IntN(40), On: simStart.Add(i * 730 / 200_000),
			Outcome: []gym.Outcome{gym.Held, gym.Held, gym.Slowed, gym.Stopped}[r.IntN(4)],
		})
	}
	return s.book, func(gym.ID, gym.LiftKey) (float64, bool) { return 0.1, true }
}

// The whole gym: learn from the log, then a suggestion for every pair.
func BenchmarkGym(b *testing.B) {
	book, strength := bigGym()
	end := simStart.Add(731)
	for b.Loop() {
		s, err := Learn(context.Background(), book, strength)
		require.NoError(b, err)
		for _, a := range book.Athletes {
			for _, m := range book.Movements {
				model, err := s.Model(a.ID, m.Key, end)
				require.NoError(b, err)
				_, err = model.Suggest(Ask{On: end, Unit: mass.KG})
				require.NoError(b, err)
			}
		}
	}
}

// The learning alone.
func BenchmarkLearn(b *testing.B) {
	book, strength := bigGym()
	for b.Loop() {
		_, err := Learn(context.Background(), book, strength)
		require.NoError(b, err)
	}
}

// One new bout: file it, and make the pair's suggestion anew.
func BenchmarkBout(b *testing.B) {
	book, strength := bigGym()
	s, err := Learn(context.Background(), book, strength)
	require.NoError(b, err)
	next := book.Bouts[0]
	next.ID, next.On = "next", simStart.Add(731)
	for b.Loop() {
		s.Observe(next)
		model, err := s.Model(next.Athlete, next.Movement, next.On)
		require.NoError(b, err)
		_, err = model.Suggest(Ask{On: next.On, Unit: mass.KG})
		require.NoError(b, err)
		s.Void(next.ID)
	}
}

// One step of the posterior.
func BenchmarkStep(b *testing.B) {
	g, h := newGrid(), DefaultHabits()
	g.normal(3, 0.2, 0.1)
	step := trial{load: 3, outcome: gym.Held, since: span{weeks: 1, trained: 1}}
	for b.Loop() {
		g.live(&h, &step)
	}
}
