package station

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"

	"windlass/internal/mass"
	"windlass/internal/plates"
)

// bigClass is forty lifters on eight stations with nine rungs in twenty minutes,
// kilograms and pounds on one heap, records from 50 to 200 kg.
func bigClass(t require.TestingT) ([]Station, []int, []Lifter) {
	loads := newLoads(t, bar("20", kg(20), mass.KG),
		plate(kg(25), mass.KG, 8), plate(kg(20), mass.KG, 8), plate(kg(15), mass.KG, 4), plate(kg(10), mass.KG, 8),
		plate(kg(5), mass.KG, 8), plate(kg(2.5), mass.KG, 8), plate(kg(1.25), mass.KG, 4),
		plate(lb(45), mass.LB, 8), plate(lb(25), mass.LB, 8), plate(lb(10), mass.LB, 8), plate(lb(5), mass.LB, 8), plate(lb(2.5), mass.LB, 4))
	var stations []Station
	for i := range 8 {
		stations = append(stations, Station{Name: fmt.Sprint(i), Loads: loads, Places: 6})
	}
	r := rand.New(rand.NewPCG(5, 40))
	var lifters []Lifter
	for i := range 40 {
		lifters = append(lifters, climber(i, 50+150*r.Float64(), "squat"))
	}
	return stations, []int{60, 60, 120, 120, 120, 180, 180, 180, 180}, lifters
}

func climber(i int, record float64, lift string) Lifter {
	reps := []int{5, 3, 3, 3, 2, 1, 1, 1, 3}
	l := Lifter{Name: fmt.Sprint(i), Bar: "20", Lift: lift, Seat: None}
	for w, share := range []float64{0.3, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 0.98, 1.02} {
		l.Sets = append(l.Sets, Set{Load: mass.Of(record*share, mass.KG), Reps: reps[w]})
	}
	return l
}

// A cold solver knows nothing: the class has just been checked in.
func BenchmarkSolveCold(b *testing.B) {
	stations, windows, lifters := bigClass(b)
	for b.Loop() {
		solver, err := New(stations, windows, UsualPace())
		require.NoError(b, err)
		plan, err := solver.Solve(lifters)
		require.NoError(b, err)
		b.ReportMetric(float64(plan.Moves), "moves")
		b.ReportMetric(float64(plan.Over), "over")
	}
}

func warm(b *testing.B) (*Solver, []Lifter) {
	stations, windows, lifters := bigClass(b)
	solver, err := New(stations, windows, UsualPace())
	require.NoError(b, err)
	plan, err := solver.Solve(lifters)
	require.NoError(b, err)
	for i, seat := range plan.Seats {
		lifters[i].Seat = seat
	}
	return solver, lifters
}

func BenchmarkSolveWarm(b *testing.B) {
	solver, lifters := warm(b)
	for b.Loop() {
		_, err := solver.Solve(lifters)
		require.NoError(b, err)
	}
}

// One lifter is dragged to another station.
func BenchmarkJudgeMoved(b *testing.B) {
	solver, lifters := warm(b)
	for i := 0; b.Loop(); i++ {
		lifters[i%40].Seat = i % 8
		_, err := solver.Judge(lifters)
		require.NoError(b, err)
	}
}

// One lifter's load changes to one not seen before, and the others trade.
func BenchmarkImproveChanged(b *testing.B) {
	solver, lifters := warm(b)
	for i := 0; b.Loop(); i++ {
		lifters[i%40].Sets[8].Load += plates.Disc{Mass: kg(0.5)}.Mass
		_, err := solver.Improve(lifters)
		require.NoError(b, err)
	}
}
