package main

import (
	"errors"
	"slices"

	"windlass/internal/cycle"
	"windlass/internal/gym"
	"windlass/ui/room"
)

// lookAtRecord logs a result by typing it.
func lookAtRecord(t *tour) error {
	onThread(func() bool {
		a, _ := t.named(newcomers[0])
		t.main.Open(room.Roster, a.ID)
		return true
	})
	t.press("F2")
	t.write("5x55")
	t.press("Return")
	err := t.until("the result is logged", func() bool {
		a, _ := t.named(newcomers[0])
		for _, r := range t.main.Desk().Results(a.ID) {
			if r.Reps == 5 && r.Load.Digits("kg") == "55" && r.Void == nil {
				return true
			}
		}
		return false
	})
	if err != nil {
		return err
	}
	return t.desk("record")
}

// decideLoad shows the suggestions for an athlete with many bouts, and decides
// another load for the movement done last, with a reason.
func decideLoad(t *tour) error {
	a, err := t.openAthlete("has logged bouts", func(a gym.Athlete) bool { return len(t.main.Desk().Bouts(a.ID)) > 5 })
	if err != nil {
		return err
	}
	t.press("F6", "F3")
	if err := t.desk("record-conditioning"); err != nil {
		return err
	}
	lighter, err := tryOnThread(func() (string, error) { return t.lighter(a.ID) })
	if err != nil {
		return err
	}
	t.press("Ctrl+E")
	t.write(lighter)
	t.press("Return", "Tab")
	t.write("Sore wrist, lighter for a week")
	if err := t.desk("record-decide"); err != nil {
		return err
	}
	t.press("Return")
	if err := t.until("the load is decided", func() bool { return len(t.main.Desk().Overrides(a.ID)) > 0 }); err != nil {
		return err
	}
	return t.desk("record-decided")
}

// lighter is the heaviest load the gym owns under the one that is suggested for the
// movement which an athlete did last.
func (t *tour) lighter(athlete gym.ID) (string, error) {
	d := t.main.Desk()
	advice, err := d.Advise(athlete, d.Loaded(athlete)[0], 0)
	if err != nil {
		return "", err
	}
	for _, load := range slices.Backward(advice.Rack.Owned) {
		if load < advice.Decision.Suggestion.Load {
			return load.In(advice.Unit), nil
		}
	}
	return "", errors.New("the gym owns nothing lighter than what is suggested")
}

// arrangeWeek shows the own week of an athlete whose days had to be moved.
func arrangeWeek(t *tour) error {
	if _, err := t.openAthlete("has a day moved", func(a gym.Athlete) bool { return moved(t.main.Desk().OwnWeek(a.ID).Week) }); err != nil {
		return err
	}
	t.press("F7")
	return t.desk("record-week")
}

func moved(w cycle.Week) bool {
	for _, d := range w.Days {
		if d.Plan != d.On {
			return true
		}
	}
	return false
}

// moveAthlete moves an athlete to another track, seeing first what that does.
func moveAthlete(t *tour) error {
	tracks := onThread(func() []gym.Track { return t.main.Desk().Tracks() })
	to := tracks[len(tracks)-1]
	on := func(a gym.Athlete) gym.Track { return t.main.Desk().TrackOn(a.ID, t.main.Desk().Today()) }
	a, err := t.openAthlete("is on another track", func(a gym.Athlete) bool { return on(a).ID == tracks[0].ID })
	if err != nil {
		return err
	}
	t.press("F7", "Ctrl+M")
	t.write(to.Name)
	t.press("Return")
	if err := t.desk("move-track"); err != nil {
		return err
	}
	t.press("Return")
	if err := t.until(a.Name+" is moved", func() bool { return on(a).ID == to.ID }); err != nil {
		return err
	}
	return t.desk("moved")
}

// openAthlete opens the record of the first active athlete of whom something is
// so; it is asked on Fyne's thread.
func (t *tour) openAthlete(what string, is func(gym.Athlete) bool) (gym.Athlete, error) {
	a := onThread(func() gym.Athlete {
		for _, a := range t.main.Desk().Book().Athletes {
			if a.Status == gym.Active && is(a) {
				t.main.Open(room.Roster, a.ID)
				return a
			}
		}
		return gym.Athlete{}
	})
	if a.ID == "" {
		return a, errors.New("nobody on the roster " + what)
	}
	return a, t.until("the roster is in front", func() bool { return t.main.Front() == room.Roster })
}
