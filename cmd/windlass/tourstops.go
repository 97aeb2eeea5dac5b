package main

import (
	"fmt"

	"windlass/ui/room"
)

// tourStops are the stops in the order in which a coach's day goes: the class first,
// since the hour of the last one passes at 60 times the speed; then the planning.
func tourStops() []stop {
	return []stop{
		{"the morning", shows(room.Today, "today")},
		{"a roster comes in", bringRoster},
		{"a record", lookAtRecord},
		{"set-up", setUpClass},
		{"the climb", climbOn},
		{"results", logResults},
		{"conditioning", condition},
		{"a clock of each format", clockOfEachFormat},
		{"the end of the class", finish},
		{"the cycle", lookAtCycle},
		{"a day's conditioning", composeDay},
		{"a new cycle", makeCycle},
		{"a load decided", decideLoad},
		{"an own week", arrangeWeek},
		{"another track", moveAthlete},
		{"handouts", shows(room.Handouts, "handouts")},
		{"the gym", lookAtGym},
		{"what the keys do", keysAndFinder},
	}
}

// shows goes to a room with its key and keeps a picture.
func shows(name, picture string) func(*tour) error {
	return func(t *tour) error {
		if err := t.goTo(name); err != nil {
			return err
		}
		return t.desk(picture)
	}
}

// goTo presses the key of a room.
func (t *tour) goTo(name string) error {
	at := onThread(func() int { return t.main.Place(name) })
	if at < 0 {
		return fmt.Errorf("the window has no room %q", name)
	}
	t.press(fmt.Sprintf("Ctrl+%d", at+1))
	return t.until("the room "+name+" is in front", func() bool { return t.main.Front() == name })
}

// desk keeps a picture of the desk window.
func (t *tour) desk(name string) error { return t.picture("Windlass", name) }

// both keeps the desk and the wall.
func (t *tour) both(name string) error {
	if err := t.desk(name); err != nil {
		return err
	}
	return t.picture(wallTitle, "wall-"+name)
}

// lookAtGym goes through the sections that a coach sets up first.
func lookAtGym(t *tour) error {
	if err := shows(room.Gym, "gym")(t); err != nil {
		return err
	}
	for _, section := range []struct{ key, picture string }{{"F3", "gym-timetable"}, {"F4", "gym-plates"}, {"F6", "gym-climbs"}} {
		t.press(section.key)
		if err := t.desk(section.picture); err != nil {
			return err
		}
	}
	return nil
}

func keysAndFinder(t *tour) error {
	t.press("F1")
	if err := t.desk("keys"); err != nil {
		return err
	}
	t.press("Escape", "Ctrl+K")
	t.write("ma")
	if err := t.desk("finder"); err != nil {
		return err
	}
	t.press("Escape", "Escape")
	return nil
}
