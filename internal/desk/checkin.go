package desk

import (
	"fmt"
	"slices"

	"windlass/internal/climb"
	"windlass/internal/clock"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
	"windlass/internal/repmax"
)

// Base is what an athlete's climb is counted from.
type Base struct {
	Load   mass.Mass // 0 when nothing is known
	Unit   mass.Unit
	Source gym.Source
	Stale  *climb.Stale  // not nil when a lower base is offered
	Guide  *repmax.Guide // not nil when nothing is known but a related lift is
}

// BaseFor returns what an athlete's climb for a lift and a rep count is counted
// from today: the record for exactly so many reps, else the estimate, else
// nothing, with a guide from a related lift where there is one.
func (d *Desk) BaseFor(athlete gym.Athlete, lift gym.Lift, reps int) Base {
	card := repmax.NewCard(d.records().Known(athlete.ID, lift.Key), []int{reps}, repmax.Handbook(), d.down(lift, athlete.Standard))
	e := card.Entry(reps)
	b := Base{Load: e.Load, Unit: e.Unit, Source: e.Source}
	if !e.Known() {
		b.Unit = athlete.Unit
		b.Guide = d.guide(athlete, lift)
		return b
	}
	if s, ok := climb.StaleBase(e.Load, e.On, athlete.BackOn, d.Today()); ok {
		b.Stale = &s
	}
	return b
}

// guide is a first guess from the 1RM of the lift's related lift.
func (d *Desk) guide(athlete gym.Athlete, lift gym.Lift) *repmax.Guide {
	related, ok := d.Lift(lift.Related)
	if !ok {
		return nil
	}
	card := repmax.NewCard(d.records().Known(athlete.ID, related.Key), []int{1}, repmax.Handbook(), d.down(related, athlete.Standard))
	if g, ok := repmax.NewGuide(lift, card.Entry(1).Load); ok {
		return &g
	}
	return nil
}

// records reads the log into records once for every change of it.
func (d *Desk) records() repmax.Records {
	if d.best == nil {
		r := repmax.NewRecords(d.book.Results, d.book.Lifts)
		d.best = &r
	}
	return *d.best
}

// down rounds to what the gym can load for a lift; without a bar for it nothing
// is rounded.
func (d *Desk) down(lift gym.Lift, standard gym.Standard) repmax.Down {
	rack, err := d.rackFor(lift, standard)
	if err != nil {
		return func(limit mass.Mass) (mass.Mass, bool) { return limit, true }
	}
	return func(limit mass.Mass) (mass.Mass, bool) {
		l, ok := rack.AtMost(limit)
		return l.Total, ok
	}
}

// rackFor is what can be lifted in a lift: loads of a bar, or things lifted whole.
func (d *Desk) rackFor(lift gym.Lift, standard gym.Standard) (climb.Rack, error) {
	if whole := wholeFor(d.book.Equipment, lift); len(whole) > 0 {
		return climb.Whole(whole), nil
	}
	return d.LoadsFor(lift, standard)
}

// wholeFor returns the masses of what a lift lifts whole, and nothing for a lift
// that has a bar of its kind.
func wholeFor(e gym.Equipment, lift gym.Lift) []mass.Mass {
	if slices.ContainsFunc(e.Bars, func(b plates.Bar) bool { return b.Kind == lift.Bar }) {
		return nil
	}
	return e.Implement(lift.Bar)
}

// CheckIn puts an athlete into a class, with the lift and reps of their track's
// day. Who comes late joins at the present window.
func (d *Desk) CheckIn(class, athlete gym.ID) error {
	a, ok := d.Athlete(athlete)
	if !ok {
		return fmt.Errorf("check in: there is no such athlete")
	}
	return d.change("check "+a.Name+" in", class, func(c *gym.Class) error {
		return d.checkIn(c, a, d.TrackOn(a.ID, c.On).ID)
	})
}

// checkIn is [Desk.CheckIn] for an athlete of a track, who need not be in the book
// yet. Whose track is not in the class does what its first track does.
func (d *Desk) checkIn(c *gym.Class, a gym.Athlete, track gym.ID) error {
	if _, err := lifter(c, a.ID); err == nil {
		return fmt.Errorf("%s is checked in already", a.Name)
	}
	if c.Stage == gym.Finished {
		return errFinished
	}
	l := gym.Lifter{Athlete: a.ID, Track: track, Station: -1, Joined: d.presentRung(*c)}
	piece, ok := c.Piece(l.Track)
	if !ok && len(c.Pieces) > 0 {
		piece = c.Pieces[0]
		l.Track = piece.Track
	}
	d.dress(&l, a, piece)
	c.Lifters = append(c.Lifters, l)
	d.joinIfItCan(c, a.ID)
	return nil
}

// joinIfItCan seats a lifter; where nobody can be seated yet, for want of a climb
// or a station, the lifter stands, which [Desk.Sharing] explains.
func (d *Desk) joinIfItCan(c *gym.Class, athlete gym.ID) {
	if err := d.join(c, athlete); err != nil {
		if l, err := lifter(c, athlete); err == nil {
			l.Station = -1
		}
	}
}

// dress gives a lifter the lift, bar and base of a piece. On a day by percentages
// there is no climb: the loads stand with those of the second lift.
func (d *Desk) dress(l *gym.Lifter, a gym.Athlete, p gym.Piece) {
	l.Lift, l.Reps, l.Bar, l.Base, l.Source, l.Start, l.Exceptions = p.Lift, p.Reps, "", 0, "", 0, nil
	lift, ok := d.Lift(p.Lift)
	if !ok || p.Reps < 1 || len(p.Scheme) > 0 {
		l.Lift = ""
		return
	}
	if bar, ok := d.BarFor(lift, a.Standard); ok && len(wholeFor(d.book.Equipment, lift)) == 0 {
		l.Bar = bar.Key
	}
	base := d.BaseFor(a, lift, p.Reps)
	l.Base, l.Source = base.Load, base.Source
	if base.Guide != nil {
		lightest := mass.Mass(0)
		if rack, err := d.rackFor(lift, a.Standard); err == nil {
			least, _ := rack.AtLeast(0)
			lightest = least.Total
		}
		l.Start = base.Guide.Start(d.down(lift, a.Standard), lightest)
	}
}

// presentRung is the window that runs now: the first before the start, the last
// after the end, since late calls are honoured.
func (d *Desk) presentRung(c gym.Class) int {
	m := clock.Climb(c.Climb, c.Clock, d.now())
	if m.Rung == clock.None {
		return max(0, len(c.Climb.Rungs)-1)
	}
	return m.Rung
}

// CheckOut takes an athlete out of a class again, unless a result was logged.
func (d *Desk) CheckOut(class, athlete gym.ID) error {
	return d.change(d.whose("check out", athlete), class, func(c *gym.Class) error {
		l, err := lifter(c, athlete)
		if err != nil {
			return err
		}
		if l.Result != "" {
			return fmt.Errorf("a result of this class is logged; void it first")
		}
		c.Lifters = slices.DeleteFunc(c.Lifters, func(l gym.Lifter) bool { return l.Athlete == athlete })
		return nil
	})
}

// KeepPiece changes what a track lifts in a class. Its lifters take the new lift,
// unless they have made a call already.
func (d *Desk) KeepPiece(class gym.ID, piece gym.Piece) error {
	return d.change("change what "+orElse(d.Track(piece.Track).Name, "a track")+" lifts", class, func(c *gym.Class) error {
		at := slices.IndexFunc(c.Pieces, func(p gym.Piece) bool { return p.Track == piece.Track })
		if at < 0 {
			c.Pieces = append(c.Pieces, piece)
		} else {
			c.Pieces[at] = piece
		}
		d.redress(c, piece)
		return nil
	})
}

// redress gives a track's lifters what the track lifts now, and stations for it.
func (d *Desk) redress(c *gym.Class, piece gym.Piece) {
	var moved []gym.ID
	for i := range c.Lifters {
		l := &c.Lifters[i]
		if a, ok := d.Athlete(l.Athlete); ok && l.Track == piece.Track && len(l.Calls) == 0 {
			before := *l
			d.dress(l, a, piece)
			if before.Lift != l.Lift || before.Bar != l.Bar {
				l.Station = -1
				moved = append(moved, l.Athlete)
			}
		}
	}
	for _, athlete := range moved {
		d.joinIfItCan(c, athlete)
	}
}

// KeepClimb changes the climb of a class before its clock has started.
func (d *Desk) KeepClimb(class gym.ID, plan gym.ClimbPlan) error {
	return d.change("change the climb", class, func(c *gym.Class) error {
		if c.Clock.Started() {
			return fmt.Errorf("the clock has started; finish this class and open another for another climb")
		}
		if faults := climb.Check(plan); len(faults) > 0 {
			return fmt.Errorf("%s", faults[0])
		}
		c.Climb = plan
		return nil
	})
}

// Rig is what a lifter lifts with.
func (d *Desk) Rig(l gym.Lifter) (climb.Rig, error) { return rigOf(&d.book, l, d.loadsOf) }

// rigOf needs no more of the book than the wall has: the equipment, the lifts and
// the settings.
func rigOf(b *gym.Book, l gym.Lifter, loads func(loadKey) (*plates.Loads, error)) (climb.Rig, error) {
	r := climb.Rig{Rounding: b.Settings.Rounding, Unit: b.Settings.Unit}
	at := slices.IndexFunc(b.Lifts, func(x gym.Lift) bool { return x.Key == l.Lift })
	if at < 0 {
		return r, fmt.Errorf("load a lifter: there is no lift; choose one")
	}
	lift := b.Lifts[at]
	if whole := wholeFor(b.Equipment, lift); len(whole) > 0 {
		r.Rack = climb.Whole(whole)
		return r, nil
	}
	all, err := loads(loadKey{bar: l.Bar})
	if err != nil {
		return r, err
	}
	coarse := all
	if !b.Settings.SmallAll {
		if coarse, err = loads(loadKey{bar: l.Bar, coarse: true}); err != nil {
			return r, err
		}
	}
	if lift.Floor {
		all, coarse = all.FromFloor(), coarse.FromFloor()
	}
	r.Rack, r.Coarse = all, coarse
	return r, nil
}
