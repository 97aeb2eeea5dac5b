package station

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/mass"
	"windlass/internal/plates"
)

// barOnly lifts the empty bar, so that a set of five takes 5 × 3 + 8 = 23 s.
func barOnly(name string, seat int, reps ...int) Lifter {
	l := Lifter{Name: name, Bar: "20", Lift: "squat", Seat: seat}
	for _, n := range reps {
		l.Sets = append(l.Sets, Set{Load: kg(20), Reps: n})
	}
	return l
}

func room(t require.TestingT, stations, places int, windows ...int) *Solver {
	loads := smallLoads(t)
	var all []Station
	for range stations {
		all = append(all, Station{Name: "rack", Loads: loads, Places: places})
	}
	s, err := New(all, windows, UsualPace())
	require.NoError(t, err)
	return s
}

func TestMends(t *testing.T) {
	three := []Lifter{barOnly("a", 0, 5, 1), barOnly("b", 0, 5, 1), barOnly("c", 0, 5, 1)}
	for _, c := range []struct {
		name     string
		stations int
		windows  []int
		lifters  []Lifter
		want     []Mend
	}{
		{"the clock is kept", 1, []int{69, 60}, three, nil},
		{"one goes to the free rack", 2, []int{60, 60}, three, []Mend{
			{Do: Move, Lifters: []int{0}, To: 1},
			{Do: Longer, Window: 0, Seconds: 9},
			{Do: Wave, Lifters: []int{0}},
		}},
		{"nowhere to go, two windows short", 1, []int{50, 30}, three, []Mend{
			{Do: Longer, Window: 0, Seconds: 19, Over: 3},
			{Do: Longer, Window: 1, Seconds: 3, Over: 19},
			{Do: Wave, Lifters: []int{0}},
		}},
		{"too many reps for anybody", 1, []int{20, 20}, three[:1], []Mend{
			{Do: Longer, Window: 0, Seconds: 3},
		}},
		{"who stands can sit", 2, []int{69, 60}, []Lifter{barOnly("a", 0, 5, 1), barOnly("b", None, 5, 1)}, []Mend{
			{Do: Move, Lifters: []int{1}, To: 0},
			{Do: Wave, Lifters: []int{1}},
		}},
	} {
		t.Run(c.name, func(t *testing.T) {
			got, err := room(t, c.stations, 3, c.windows...).Mends(c.lifters)
			require.NoError(t, err)
			assert.Equal(t, c.want, got)
		})
	}
}

func TestMendsAreAboutTheClock(t *testing.T) {
	loads := smallLoads(t)
	laden := Station{Name: "laden", Loads: loads, Places: 1, On: []plates.Disc{{Mass: kg(20), Unit: mass.KG}}}
	solver, err := New([]Station{{Name: "bare", Loads: loads, Places: 1}, laden}, []int{20}, Pace{Rep: 3, ChangeOver: 8})
	require.NoError(t, err)
	got, err := solver.Mends([]Lifter{{Bar: "20", Seat: 0, Sets: []Set{{kg(60), 5}}}})
	require.NoError(t, err)
	assert.Equal(t, []Mend{{Do: Longer, Window: 0, Seconds: 3}}, got, "the other bar saves plates, not a second")
}

// What a mend promises is what Judge says once it is done.
func TestMendsKeepTheirWord(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := randomClass(t, rapid.Uint64().Draw(t, "seed"), 7, 3, 3)
		b.pace = UsualPace()
		solver := b.solver(t)
		for i := range b.lifters {
			b.lifters[i].Seat, b.lifters[i].Fixed = i%len(b.stations), false
		}
		plan, err := solver.Judge(b.lifters)
		require.NoError(t, err)
		for i := range b.lifters {
			b.lifters[i].Seat = plan.Seats[i]
		}
		mends, err := solver.Mends(b.lifters)
		require.NoError(t, err)
		require.Equal(t, plan.Keeps(), len(mends) == 0)
		for _, m := range mends {
			checkMend(t, b, plan, m)
		}
	})
}

func checkMend(t require.TestingT, b *brute, before Plan, m Mend) {
	after := append([]Lifter{}, b.lifters...)
	room := *b
	switch m.Do {
	case Move:
		after[m.Lifters[0]].Seat = m.To
	case Longer:
		room.windows = append([]int{}, b.windows...)
		room.windows[m.Window] += m.Seconds
	case Wave:
		for _, i := range m.Lifters {
			after[i].Seat = None
		}
	}
	plan, err := room.solver(t).Judge(after)
	require.NoError(t, err)
	require.Equal(t, m.Over, plan.Over)
	if m.Do == Move {
		require.True(t, plan.Over < before.Over || len(plan.Standing) < len(before.Standing), "it is about the clock, not about plates")
	}
}
