package repmax_test

import (
	"fmt"

	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/repmax"
)

func ExampleConvert() {
	epley, _ := repmax.Named("Epley")
	for _, c := range []repmax.Curve{repmax.Handbook(), epley} {
		oneRM, err := repmax.Convert(5, 140*mass.Kilogram, 1, c)
		fmt.Println(c.Name, oneRM, err)
	}
	_, err := repmax.Convert(12, 100*mass.Kilogram, 1, epley)
	fmt.Println(err)
	// Output:
	// Handbook table 160.92 kg <nil>
	// Epley 163.33 kg <nil>
	// read curve "epley" at 12 reps: outside the curve's range, which is 1 to 10; take another curve or a result nearer to it
}

func ExampleNewCard() {
	log := []gym.Result{
		{Athlete: "ada", Lift: "back-squat", Reps: 5, Load: 100 * mass.Kilogram, Unit: mass.KG, Source: gym.Tested, On: 20},
		{Athlete: "ada", Lift: "back-squat", Reps: 5, Load: 95 * mass.Kilogram, Unit: mass.KG, Source: gym.Tested, On: 90},
	}
	known := repmax.NewRecords(log, nil).Known("ada", "back-squat")
	toFive := func(limit mass.Mass) (mass.Mass, bool) {
		return limit / (5 * mass.Kilogram) * (5 * mass.Kilogram), true
	}
	for _, e := range repmax.NewCard(known, []int{5, 3, 1}, repmax.Handbook(), toFive).Entries {
		fmt.Println(e.Reps, e.Load, e.Source)
	}
	// Output:
	// 5 100 kg tested
	// 3 105 kg estimate
	// 1 110 kg estimate
}
