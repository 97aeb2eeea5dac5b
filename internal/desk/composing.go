package desk

import (
	"fmt"
	"strings"

	"windlass/internal/conditioning"
	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/gym"
)

// Wish is what a coach wants of a composed workout this once.
type Wish struct {
	Shortest int // seconds that it takes a usual athlete, at least
	Longest  int // and at most
	Apart    int // days from a movement to the next time
	Class    int // athletes at work in it
}

// mostClass is how many athletes a class may have: more is a slip of the hand.
const mostClass = 200

// UsualWish is what the gym's settings and the day's class ask for.
func (d *Desk) UsualWish(at cycle.At, on day.Date) Wish {
	by := d.book.Settings.ComposeBy()
	return Wish{by.Shortest, by.Longest, by.Apart, len(d.dueOn(at.Track, on))}
}

// valid says what keeps a workout from being composed by a wish.
func (w Wish) valid(by gym.Composing) error {
	if w.Class < 0 || w.Class > mostClass {
		return fmt.Errorf("compose workout: a class of %d is outside 0 to %d", w.Class, mostClass)
	}
	by.Shortest, by.Longest, by.Apart = w.Shortest, w.Longest, w.Apart
	if err := by.Valid(); err != nil {
		return fmt.Errorf("compose workout: %w", err)
	}
	return nil
}

// Compose proposes the conditioning of a day, with its reasons; another seed gives
// another one.
func (d *Desk) Compose(c gym.Cycle, at cycle.At, wish Wish, seed uint64) (conditioning.Proposal, error) {
	by, on := d.book.Settings.ComposeBy(), at.Date(c)
	if err := wish.valid(by); err != nil {
		return conditioning.Proposal{}, err
	}
	plan, next := cycle.Copy(c, at), d.planned(c, at.Track, on.Add(1))
	if plan.Kind == gym.RecoveryDay {
		return conditioning.Proposal{}, fmt.Errorf("compose workout: %w: this is a recovery day, and what is composed is hard work; write something long and easy", conditioning.ErrNoProposal)
	}
	b := conditioning.Brief{
		Reps: plan.Main.Reps, Near: d.near(c, at, wish.Apart), Apart: wish.Apart, Crowd: d.crowd(at.Track, on, wish.Class),
		Shortest: wish.Shortest, Longest: wish.Longest, Movements: d.book.Movements, Table: by.Formats, Pace: d.Pace(),
	}
	b.Main, _ = d.Lift(plan.Main.Lift)
	b.Next, _ = d.Lift(next.Main.Lift)
	return conditioning.Compose(b, seed)
}

// planned returns what a cycle plans for a track on a date; a rest day outside it.
func (d *Desk) planned(c gym.Cycle, track gym.ID, on day.Date) gym.DayPlan {
	p, _ := c.Plan(track)
	return p.Day(c.WeekOf(on), on.Weekday())
}

// near tells at how many days from a day each other movement of the track is
// planned nearest, before or after, within so many days.
func (d *Desk) near(c gym.Cycle, at cycle.At, apart int) map[gym.MovementKey]int {
	near := map[gym.MovementKey]int{}
	for days := apart - 1; days >= 1; days-- {
		for _, on := range []day.Date{at.Date(c).Add(-days), at.Date(c).Add(days)} {
			for _, item := range d.planned(c, at.Track, on).Workout.Items {
				near[item.Movement] = days
			}
		}
	}
	return near
}

// WorkoutLoads writes the three loads of every movement of a workout that has some,
// a line each: "Wall ball: M 9/7/5, W 6/5/4 kg".
func (d *Desk) WorkoutLoads(w gym.Workout) []string {
	var lines []string
	for _, item := range w.Items {
		m, _ := d.Movement(item.Movement)
		var loads []string
		for _, s := range gym.Standards() {
			if text := d.TiersText(item, s); text != "" {
				loads = append(loads, string(s)+" "+text)
			}
		}
		if len(loads) > 0 {
			lines = append(lines, fmt.Sprintf("%s: %s %s", m.Name, strings.Join(loads, ", "), d.book.Settings.Unit))
		}
	}
	return lines
}
