package cycle_test

import (
	"fmt"

	"windlass/data"
	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/gym"
)

// exampleBook is a gym that has chosen nothing but the built-in catalogue.
func exampleBook() *gym.Book {
	c, err := gym.ReadCatalogue(data.Files())
	if err != nil {
		panic(err)
	}
	return &gym.Book{
		Settings: gym.DefaultSettings(), Lifts: c.Lifts, Movements: c.Movements, Finishers: c.Finishers, Drills: c.Drills,
	}
}

// A coach makes a twelve-week cycle and asks what is wrong with it; then a day is
// dragged next to one for the same region.
func Example() {
	book := exampleBook()
	c, err := cycle.Make(cycle.Spec{
		ID: "spring", Name: "Spring", Start: day.Of(2026, 3, 2), Weeks: 12,
		Tracks: []cycle.TrackSpec{{Track: "barbell", Template: "powerlifting", Wave: gym.RollingWave}},
	}, book)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("breaches:", len(cycle.Check(c, book)))

	from := cycle.At{Track: "barbell", Week: 3, Weekday: day.Friday}
	to := cycle.At{Track: "barbell", Week: 3, Weekday: day.Wednesday}
	dragged, err := cycle.Move(c, from, to, nil)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, b := range cycle.Check(dragged, book) {
		if b.Rule == cycle.RuleNeighbours {
			fmt.Printf("week %d, %s: %s\n%s\n", b.Week, b.Weekday, b.Why, b.Mend)
		}
	}
	// Output:
	// breaches: 0
	// week 3, Wednesday: Tuesday's Bench press and Wednesday's Shoulder press both load the upper body with no day between.
	// Move one of them, or put a rest day, a recovery day or another region between.
}

// An athlete can come on Monday, Tuesday and Wednesday.
func ExampleArrange() {
	lower, upper := gym.Lower, gym.Upper
	week := cycle.Arrange(cycle.Ask{
		Sessions: []cycle.Session{
			{Plan: day.Monday, Title: "Squat", Kind: gym.MainDay, Region: lower},
			{Plan: day.Tuesday, Title: "Bench press", Kind: gym.MainDay, Region: upper},
			{Plan: day.Thursday, Title: "Deadlift", Kind: gym.MainDay, Region: lower},
			{Plan: day.Friday, Title: "Shoulder press", Kind: gym.MainDay, Region: upper},
		},
		Free: day.WeekdaysOf(day.Monday, day.Tuesday, day.Wednesday),
	})
	for _, d := range week.Days {
		fmt.Println(d.On, d.Title)
	}
	fmt.Println(week.Why)
	// Output:
	// Monday Squat
	// Tuesday Bench press
	// Wednesday Deadlift
	// Left out, because no other weekday is free: Shoulder press. Moved: Deadlift from Thursday to Wednesday.
}

// Four lifts over eight weeks, each one step after the lift before it.
func ExampleWave() {
	weeks, err := cycle.Weeks(gym.StepWave, 8)
	if err != nil {
		fmt.Println(err)
		return
	}
	reps, err := cycle.Wave(gym.StepWave, weeks, 4, []int{5, 3, 1})
	if err != nil {
		fmt.Println(err)
		return
	}
	for w, kind := range weeks {
		fmt.Println(w+1, kind, reps[w])
	}
	// Output:
	// 1 training [5 3 1 5]
	// 2 training [3 1 5 3]
	// 3 training [1 5 3 1]
	// 4 light [0 0 0 0]
	// 5 training [5 3 1 5]
	// 6 training [3 1 5 3]
	// 7 training [1 5 3 1]
	// 8 test [1 1 1 1]
}

// A day with results stays as it is.
func ExampleErrTrained() {
	c, err := cycle.Make(cycle.Spec{
		ID: "spring", Name: "Spring", Start: day.Of(2026, 3, 2), Weeks: 12,
		Tracks: []cycle.TrackSpec{{Track: "barbell", Template: "powerlifting", Wave: gym.RollingWave}},
	}, exampleBook())
	if err != nil {
		fmt.Println(err)
		return
	}
	trained := func(_ gym.ID, week int, _ day.Weekday) bool { return week <= 5 }
	_, err = cycle.Clear(c, cycle.At{Track: "barbell", Week: 2, Weekday: day.Monday}, trained)
	fmt.Println(err)
	// Output:
	// change the day: Monday of week 2 stays as it is: results exist for it; change week 6 or later
}

// Monday of the second week is a holiday.
func ExampleCalendar_Moved() {
	book := exampleBook()
	monday := day.Of(2026, 3, 2)
	c, err := cycle.Make(cycle.Spec{
		ID: "spring", Name: "Spring", Start: monday, Weeks: 12,
		Tracks: []cycle.TrackSpec{{Track: "barbell", Template: "powerlifting", Wave: gym.RollingWave}},
	}, book)
	if err != nil {
		fmt.Println(err)
		return
	}
	book.Cycles = []gym.Cycle{c}
	holiday := gym.Closure{From: monday.Add(7), Until: monday.Add(7), Name: "Holiday"}
	fmt.Println(cycle.NewCalendar(book).Moved("barbell", monday.Add(7), []gym.Closure{holiday}).Why)
	// Output:
	// Closed: Mon. All 6 days of the track fit. Moved: Squat from Monday to Saturday, Long and easy from Saturday to Sunday.
}
