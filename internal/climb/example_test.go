package climb_test

import (
	"fmt"

	"windlass/internal/climb"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// A lifter with a 5RM of 100 kg goes up the twelve-minute climb, finds the first
// single good and settles there.
func ExampleBuild() {
	plan := climb.BuiltIns()[0]
	lifter := gym.Lifter{Reps: 5, Base: 100 * mass.Kilogram, Source: gym.Tested}
	calls, err := climb.ParseCalls("settle")
	if err != nil {
		fmt.Println(err)
		return
	}
	if lifter.Calls, err = climb.Place(plan, lifter, calls); err != nil {
		fmt.Println(err)
		return
	}
	path, err := climb.Build(plan, lifter, climb.Rig{Rack: steps(2.5), Unit: mass.KG})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, s := range path.Steps {
		fmt.Printf("%s %5s x %d %s\n", climb.Time(s.Rung.At), s.Load.Digits(mass.KG), s.Reps, s.State)
	}
	fmt.Println("to log:", path.Outcome.Reps, "x", path.Outcome.Load)
	fmt.Println(climb.Judge(path.Outcome.Load, lifter.Base, lifter.Source, plan.HeavyLine, mass.KG).Why)
	// Output:
	// 00:00    35 x 5 lifted
	// 01:00    55 x 5 lifted
	// 02:00    70 x 3 lifted
	// 04:00    85 x 2 lifted
	// 06:00  92.5 x 1 lifted
	// 09:00  92.5 x 5 settle
	// to log: 5 x 92.5 kg
	// 92.5 kg is 92.5 % of the record of 100 kg: a heavy day; the record stays.
}
