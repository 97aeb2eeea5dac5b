package station

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestNewRefuses(t *testing.T) {
	rack := Station{Name: "rack", Loads: smallLoads(t), Places: 2}
	noBar, noPlace := rack, rack
	noBar.Loads, noPlace.Places = nil, 0
	for name, c := range map[string]struct {
		stations []Station
		windows  []int
		pace     Pace
		says     string
	}{
		"no station":    {nil, []int{60}, UsualPace(), "no station"},
		"no bar":        {[]Station{noBar}, []int{60}, UsualPace(), `"rack"`},
		"no place":      {[]Station{noPlace}, []int{60}, UsualPace(), "0 places"},
		"no window":     {[]Station{rack}, nil, UsualPace(), "no windows"},
		"empty window":  {[]Station{rack}, []int{60, 0}, UsualPace(), "window 2 lasts 0 s"},
		"negative pace": {[]Station{rack}, []int{60}, Pace{Rep: -1}, "negative"},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := New(c.stations, c.windows, c.pace)
			require.ErrorIs(t, err, ErrClass)
			assert.ErrorContains(t, err, c.says)
		})
	}
}

func TestSolverRefusesLifters(t *testing.T) {
	solver := room(t, 1, 2, 60)
	good := barOnly("good", None, 5)
	edit := func(change func(*Lifter)) []Lifter {
		l := barOnly("bad", None, 5)
		change(&l)
		return []Lifter{good, l}
	}
	for name, c := range map[string]struct {
		lifters []Lifter
		says    string
	}{
		"nobody":          {nil, "nobody has checked in"},
		"too many":        {make([]Lifter, 65), "two waves"},
		"sets missing":    {edit(func(l *Lifter) { l.Sets = nil }), `"bad"`},
		"no such station": {edit(func(l *Lifter) { l.Seat = 1 }), "no station 1"},
		"a negative load": {edit(func(l *Lifter) { l.Sets[0].Load = -1 }), "set 1"},
		"negative reps":   {edit(func(l *Lifter) { l.Sets[0].Reps = -1 }), "set 1"},
	} {
		t.Run(name, func(t *testing.T) {
			for _, ask := range []func([]Lifter) error{
				func(l []Lifter) error { _, err := solver.Solve(l); return err },
				func(l []Lifter) error { _, err := solver.Judge(l); return err },
				func(l []Lifter) error { _, err := solver.Improve(l); return err },
				func(l []Lifter) error { _, err := solver.Join(l, 0); return err },
				func(l []Lifter) error { _, err := solver.Mends(l); return err },
			} {
				err := ask(c.lifters)
				require.ErrorIs(t, err, ErrClass)
				assert.ErrorContains(t, err, c.says)
			}
		})
	}
	_, err := solver.Join([]Lifter{good}, 1)
	assert.ErrorIs(t, err, ErrClass)
	plan, err := solver.Join([]Lifter{good}, 0)
	require.NoError(t, err)
	assert.Equal(t, []int{0}, plan.Seats)
}
