package main

import (
	"time"

	"windlass/internal/gym"
)

// The climb's wall for 6, 18 and 36 lifters, at 1920×1080 and 3840×2160 of 65
// inches, is drawn without a display, which has no room for the larger:
//
//	go test ./ui/wall -run TestEveryLineCanBeRead -pictures DIR

// showcase is a workout of each format, and how long its clock has run in its
// picture, the count-in in it: far enough from every end that a slow machine, at
// 60 times the speed, still shows it on the way.
var showcase = []struct {
	workout gym.Workout
	at      time.Duration
}{
	{gym.Workout{Format: gym.AMRAP, Seconds: 1200, Items: swingSquatRow}, 2 * time.Minute},
	{gym.Workout{Format: gym.ForTime, Reps: []int{21, 15, 9}, Cap: 1200, Items: []gym.Item{{Movement: "kettlebell-swing"}, {Movement: "kettlebell-goblet-squat"}}}, 2 * time.Minute},
	{gym.Workout{Format: gym.Chipper, Cap: 1800, Items: []gym.Item{
		{Movement: "row-metres", Amount: 500}, {Movement: "kettlebell-swing", Amount: 50}, {Movement: "kettlebell-goblet-squat", Amount: 40}, {Movement: "dumbbell-snatch", Amount: 30},
	}}, 3 * time.Minute},
	{gym.Workout{Format: gym.EMOM, Seconds: 1200, Items: []gym.Item{{Movement: "kettlebell-swing", Amount: 12}, {Movement: "kettlebell-goblet-squat", Amount: 10}, {}}}, 3 * time.Minute},
	{gym.Workout{Format: gym.Intervals, Rounds: 12, Work: 60, Rest: 60, Items: []gym.Item{{Movement: "row-metres"}, {Movement: "kettlebell-swing"}}}, 4 * time.Minute},
	{gym.Workout{Format: gym.PlainSets, Rounds: 5, Rest: 90, Items: []gym.Item{{Movement: "kettlebell-goblet-squat", Amount: 12}, {Movement: "dumbbell-snatch", Amount: 8}}}, 2 * time.Minute},
}

var swingSquatRow = []gym.Item{
	{Movement: "kettlebell-swing", Amount: 15}, {Movement: "kettlebell-goblet-squat", Amount: 10}, {Movement: "row-metres", Amount: 250},
}

// wallReads is how long the wall is given to read what every track does now.
const wallReads = 2 * time.Second

// clockOfEachFormat gives every track of the class one format after the other and
// keeps the wall of each; then the class has its own workouts again.
func clockOfEachFormat(t *tour) error {
	class := t.live()
	for _, s := range showcase {
		err := onThread(func() error { return t.giveAll(class, s.workout, s.at) })
		if err != nil {
			return err
		}
		time.Sleep(wallReads)
		if err := t.picture(wallTitle, "wall-"+string(s.workout.Format)); err != nil {
			return err
		}
	}
	return onThread(func() error {
		for _, p := range class.Pieces {
			if err := t.main.Desk().KeepPiece(class.ID, p); err != nil {
				return err
			}
		}
		return nil
	})
}

// giveAll gives every track a workout and sets its clock.
func (t *tour) giveAll(class gym.Class, w gym.Workout, at time.Duration) error {
	d := t.main.Desk()
	for _, p := range class.Pieces {
		p.Workout = w
		if err := d.KeepPiece(class.ID, p); err != nil {
			return err
		}
	}
	return d.SetClock(class.ID, at)
}
