package climb_test

import (
	"fmt"
	"strings"

	"github.com/stretchr/testify/require"

	"windlass/internal/climb"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
)

func kg(x float64) mass.Mass { return mass.Of(x, mass.KG) }

// steps is a 20 kg bar without collars, and plates that make every step of so
// many kilograms up to 300.
func steps(step float64) climb.Whole {
	var w climb.Whole
	for m := kg(20); m <= kg(300); m += kg(step) {
		w = append(w, m)
	}
	return w
}

func rig(rack climb.Rack) climb.Rig {
	return climb.Rig{Rack: rack, Rounding: plates.Nearest, Unit: mass.KG}
}

// nine is the nine-rung, twenty-minute climb of many gyms: common practice, no
// source.
func nine() gym.ClimbPlan {
	return gym.ClimbPlan{Name: "nine rungs", HeavyLine: 90, Ceiling: 102, Rungs: []gym.Rung{
		{At: 0, Until: 60, Percent: 30, Reps: 5, Zone: gym.LightZone},
		{At: 60, Until: 120, Percent: 50, Reps: 3, Zone: gym.LightZone},
		{At: 120, Until: 240, Percent: 60, Zone: gym.WorkingZone},
		{At: 240, Until: 360, Percent: 70, Zone: gym.WorkingZone},
		{At: 360, Until: 480, Percent: 80, Reps: 2, Zone: gym.WorkingZone},
		{At: 480, Until: 660, Percent: 90, Reps: 1, Zone: gym.TopZone},
		{At: 660, Until: 840, Percent: 95, Reps: 1, Zone: gym.TopZone},
		{At: 840, Until: 1020, Percent: 98, Reps: 1, Zone: gym.TopZone},
		{At: 1020, Until: 1200, Percent: 102, Zone: gym.TopZone},
	}}
}

func lifter(t require.TestingT, reps int, base mass.Mass, calls string) gym.Lifter {
	l := gym.Lifter{Reps: reps, Base: base, Source: gym.Tested}
	kinds, err := climb.ParseCalls(calls)
	require.NoError(t, err)
	l.Calls, err = climb.Place(nine(), l, kinds)
	require.NoError(t, err)
	return l
}

// line writes a path in short: a step is load×reps, with the second number
// where the call is open, and a mark behind it where it is more than planned.
func line(p climb.Path) string {
	marks := map[climb.State]string{
		climb.Lifted: "+", climb.Missed: "-", climb.Settle: "!", climb.Banked: "=", climb.Skipped: "skipped", climb.Off: "off",
	}
	var words []string
	for _, s := range p.Steps {
		word := ""
		switch {
		case s.State == climb.Open:
			for _, o := range s.Options {
				word += fmt.Sprintf("/%sx%d", o.Load.Digits(mass.KG), o.Reps)
			}
			word = word[1:]
		case s.Load > 0:
			word = fmt.Sprintf("%sx%d", s.Load.Digits(mass.KG), s.Reps)
		}
		words = append(words, word+marks[s.State])
	}
	return strings.Join(words, " ")
}

func outcome(o climb.Outcome) string {
	if o.Kind != climb.Counts {
		return string(o.Kind)
	}
	return fmt.Sprintf("%sx%d in rung %d", o.Load.Digits(mass.KG), o.Reps, o.Rung+1)
}

func build(t require.TestingT, plan gym.ClimbPlan, l gym.Lifter, r climb.Rig) climb.Path {
	p, err := climb.Build(plan, l, r)
	require.NoError(t, err)
	return p
}
