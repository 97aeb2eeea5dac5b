package desk

import (
	"context"
	"errors"
	"fmt"
	"slices"
	"time"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// ErrRunning is returned when a class is to start while another one runs.
var ErrRunning = errors.New("another class is running")

var errFinished = errors.New("the class is finished; open it again first")

// Class returns the class with an ID.
func (d *Desk) Class(id gym.ID) (gym.Class, bool) {
	for i := len(d.book.Classes) - 1; i >= 0; i-- {
		if d.book.Classes[i].ID == id {
			return d.book.Classes[i], true
		}
	}
	return gym.Class{}, false
}

// LiveClass returns the class that was opened and is not finished, the latest
// one where an old file has several.
func (d *Desk) LiveClass() (gym.Class, bool) {
	for i := len(d.book.Classes) - 1; i >= 0; i-- {
		if d.book.Classes[i].Stage != gym.Finished {
			return d.book.Classes[i], true
		}
	}
	return gym.Class{}, false
}

// OpenClass opens a class of today's timetable on the floor, or goes on with the
// one that was opened before. Each track's lift and reps come from its day plan.
func (d *Desk) OpenClass(slot gym.Slot) (gym.Class, error) {
	for _, c := range d.book.Classes {
		if c.Slot == slot.ID && c.On == d.Today() {
			return c, nil
		}
	}
	if live, ok := d.LiveClass(); ok {
		return gym.Class{}, fmt.Errorf("open %s: %w: finish %s of %s first", slot.Name, ErrRunning, live.Name, live.On)
	}
	c := gym.Class{
		ID: d.NewID(), Slot: slot.ID, On: d.Today(), At: slot.At, Name: slot.Name, Stage: gym.SetUp,
		Pieces: d.pieces(slot.Tracks),
	}
	c.Climb = d.climbFor(c.Pieces)
	return c, d.do("open "+c.Name, gym.PutClass{Class: c})
}

// OpenFreeClass opens a class outside the timetable, for all tracks, now.
func (d *Desk) OpenFreeClass() (gym.Class, error) {
	now := d.now()
	return d.OpenClass(gym.Slot{
		ID: "", Weekday: d.Today().Weekday(), At: day.ClockOf(now.Hour(), now.Minute()), Name: "Open class",
	})
}

func (d *Desk) pieces(tracks []gym.ID) []gym.Piece {
	var pieces []gym.Piece
	for _, t := range d.Tracks() {
		if len(tracks) > 0 && !slices.Contains(tracks, t.ID) {
			continue
		}
		p := d.PlanOn(t.ID, d.Today())
		pieces = append(pieces, gym.Piece{
			Track: t.ID, Lift: p.Main.Lift, Reps: p.Main.Reps, Scheme: p.Main.Scheme, Second: p.Second, Workout: p.Workout,
		})
	}
	return pieces
}

// usualClimb is the built-in climb of a class whose plan names none.
const usualClimb = "20 minutes"

// climbFor takes the climb that the first track with a main lift asks for.
func (d *Desk) climbFor(pieces []gym.Piece) gym.ClimbPlan {
	for _, p := range pieces {
		if c, ok := d.ClimbNamed(d.PlanOn(p.Track, d.Today()).Main.Climb); ok && p.Lift != "" {
			return c
		}
	}
	if c, ok := d.ClimbNamed(usualClimb); ok {
		return c
	}
	if len(d.book.Climbs) > 0 {
		return d.book.Climbs[0]
	}
	return gym.ClimbPlan{}
}

// change makes one undoable step of a change to a class.
func (d *Desk) change(label string, id gym.ID, edit func(*gym.Class) error) error {
	c, err := d.edited(label, id, edit)
	if err != nil {
		return err
	}
	return d.do(label, gym.PutClass{Class: c})
}

// tick changes a class's clock, which undo leaves alone: time that has
// passed on the wall cannot be taken back.
func (d *Desk) tick(label string, id gym.ID, edit func(*gym.Class) error) error {
	c, err := d.edited(label, id, edit)
	if err != nil {
		return err
	}
	if _, err := d.make(context.Background(), []gym.Change{gym.PutClass{Class: c}}); err != nil {
		return fmt.Errorf("%s: %w", label, err)
	}
	return nil
}

// turn makes one undoable step of a change to a class's stage. Taking it back
// leaves the clocks where they are.
func (d *Desk) turn(label string, id gym.ID, edit func(*gym.Class) error) error {
	c, err := d.edited(label, id, edit)
	if err != nil {
		return err
	}
	label += " " + c.Name
	back, err := d.make(context.Background(), []gym.Change{gym.PutClass{Class: c}})
	if err != nil {
		return fmt.Errorf("%s: %w", label, err)
	}
	back.turns = true
	d.keepStep(label, back)
	return nil
}

func (d *Desk) edited(label string, id gym.ID, edit func(*gym.Class) error) (gym.Class, error) {
	c, ok := d.Class(id)
	if !ok {
		return c, fmt.Errorf("%s: there is no such class", label)
	}
	c.Lifters = slices.Clone(c.Lifters)
	c.Pieces = slices.Clone(c.Pieces)
	before := c
	before.Lifters = slices.Clone(c.Lifters)
	if err := edit(&c); err != nil {
		return c, fmt.Errorf("%s: %w", label, err)
	}
	d.layDown(before, &c)
	return c, nil
}

// lifter returns the place of an athlete in a class.
func lifter(c *gym.Class, athlete gym.ID) (*gym.Lifter, error) {
	for i := range c.Lifters {
		if c.Lifters[i].Athlete == athlete {
			return &c.Lifters[i], nil
		}
	}
	return nil, fmt.Errorf("that athlete is not checked in; check them in first")
}

// StartClock starts or goes on with the clock of the class's stage.
func (d *Desk) StartClock(id gym.ID) error {
	return d.tick("start the clock", id, func(c *gym.Class) error {
		if other, ok := d.LiveClass(); ok && other.ID != c.ID && running(other) {
			return fmt.Errorf("%w: hold %s first", ErrRunning, other.Name)
		}
		if c.Stage == gym.Finished {
			return errFinished
		}
		if c.Stage == gym.SetUp {
			if err := d.ready(*c); err != nil {
				return err
			}
			c.Stage = gym.Climbing
		}
		clock := stageClock(c)
		*clock = clock.Start(d.now())
		return nil
	})
}

// HoldClock stops the clock of the class's stage where it is.
func (d *Desk) HoldClock(id gym.ID) error {
	return d.tick("hold the clock", id, func(c *gym.Class) error {
		clock := stageClock(c)
		*clock = clock.Hold(d.now())
		return nil
	})
}

// SetClock makes the clock of the class's stage show a time.
func (d *Desk) SetClock(id gym.ID, shown time.Duration) error {
	return d.tick("set the clock", id, func(c *gym.Class) error {
		clock := stageClock(c)
		*clock = clock.Set(shown, d.now())
		if c.Stage == gym.Conditioning {
			c.Ahead = nil // seen of another run of the clock
		}
		return nil
	})
}

func stageClock(c *gym.Class) *gym.Run {
	if c.Stage == gym.Conditioning {
		return &c.Workout
	}
	return &c.Clock
}

func running(c gym.Class) bool { return c.Clock.Running || c.Workout.Running }

// ready says what keeps a class from starting its climb.
func (d *Desk) ready(c gym.Class) error {
	if len(c.Lifters) == 0 {
		return fmt.Errorf("nobody is checked in; check at least one athlete in")
	}
	if len(c.Climb.Rungs) == 0 {
		return fmt.Errorf("no climb is chosen; choose one")
	}
	climbs := false
	for _, l := range c.Lifters {
		climbs = climbs || l.Lift != ""
		if l.Lift != "" && l.Base == 0 && l.Start == 0 {
			a, _ := d.Athlete(l.Athlete)
			return fmt.Errorf("%s has no record, no estimate and no first load for the lift; type a first load", a.Name)
		}
	}
	if !climbs {
		return fmt.Errorf("nobody climbs to a rep max today; the loads by percentages stand under Results, and the conditioning has a clock of its own")
	}
	return nil
}

// StartConditioning closes the climb and turns to the conditioning's clock.
func (d *Desk) StartConditioning(id gym.ID) error {
	return d.tick("turn to the conditioning", id, func(c *gym.Class) error {
		if c.Stage == gym.Finished {
			return errFinished
		}
		c.Clock = c.Clock.Hold(d.now())
		c.Stage, c.Pace = gym.Conditioning, d.Pace().Factor
		return nil
	})
}

// FinishClass ends a class; its results and bouts stay as they were logged.
func (d *Desk) FinishClass(id gym.ID) error {
	return d.turn("finish", id, func(c *gym.Class) error {
		c.Clock, c.Workout = c.Clock.Hold(d.now()), c.Workout.Hold(d.now())
		c.Stage, c.Finished = gym.Finished, d.now()
		return nil
	})
}

// ReopenClass takes a finished class up again where its clocks stood.
func (d *Desk) ReopenClass(id gym.ID) error {
	return d.turn("open again", id, func(c *gym.Class) error {
		if live, ok := d.LiveClass(); ok {
			return fmt.Errorf("%w: finish %s first", ErrRunning, live.Name)
		}
		c.Stage, c.Finished = gym.Climbing, time.Time{}
		if c.Workout.Started() {
			c.Stage = gym.Conditioning
		}
		return nil
	})
}
