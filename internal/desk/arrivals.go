package desk

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"windlass/internal/gym"
	"windlass/internal/mass"
)

// Arrival is one row of the list of who may come to a class.
type Arrival struct {
	Athlete  gym.Athlete
	Track    string
	Expected bool
	Here     bool
	Note     string // what of the athlete touches today; it never leaves the desk
}

// ExpectedIn returns who is expected in a class. It reads months of classes and
// everybody's week, and does not change while a class is set up: ask once.
func (d *Desk) ExpectedIn(c gym.Class) map[gym.ID]bool {
	expected := map[gym.ID]bool{}
	for _, due := range d.Expected(slotOf(c), c.On) {
		expected[due.Athlete] = true
	}
	return expected
}

// Arrivals lists who may come to a class: those expected, then those who came
// unexpected, then everybody else who trains, each by name.
func (d *Desk) Arrivals(c gym.Class, expected map[gym.ID]bool) []Arrival {
	var rows []Arrival
	for _, a := range d.book.Athletes {
		_, err := lifter(&c, a.ID)
		row := Arrival{Athlete: a, Here: err == nil, Expected: expected[a.ID]}
		if !row.Here && a.Status != gym.Active {
			continue
		}
		if row.Track = d.TrackOn(a.ID, c.On).Name; row.Track == "" {
			row.Track = "No track"
		}
		row.Note = d.warning(c, a.ID)
		rows = append(rows, row)
	}
	slices.SortStableFunc(rows, func(x, y Arrival) int {
		return cmp.Or(cmp.Compare(y.rank(), x.rank()), strings.Compare(strings.ToLower(x.Athlete.Name), strings.ToLower(y.Athlete.Name)))
	})
	return rows
}

// slotOf is a class as the timetable has it, for asking who is expected.
func slotOf(c gym.Class) gym.Slot {
	s := gym.Slot{ID: c.Slot, Weekday: c.On.Weekday(), At: c.At, Name: c.Name}
	for _, p := range c.Pieces {
		s.Tracks = append(s.Tracks, p.Track)
	}
	return s
}

func (a Arrival) rank() int {
	switch {
	case a.Expected:
		return 2
	case a.Here:
		return 1
	}
	return 0
}

// Matching keeps the arrivals whose name holds every word of a search.
func Matching(rows []Arrival, search string) []Arrival {
	var kept []Arrival
	for _, r := range rows {
		if matches(r.Athlete.Name, search) {
			kept = append(kept, r)
		}
	}
	return kept
}

func matches(name, search string) bool {
	name = strings.ToLower(name)
	for word := range strings.FieldsSeq(strings.ToLower(search)) {
		if !strings.Contains(name, word) {
			return false
		}
	}
	return true
}

// warning is what holds for an athlete that touches the lift of a class.
func (d *Desk) warning(c gym.Class, athlete gym.ID) string {
	var texts []string
	region := gym.WholeBody
	if l, err := lifter(&c, athlete); err == nil {
		if lift, ok := d.Lift(l.Lift); ok {
			region = lift.Region
		}
	}
	for _, r := range d.Restrictions(athlete, c.On) {
		if r.Touches(c.On, region) {
			texts = append(texts, r.Text)
		}
	}
	return strings.Join(texts, "; ")
}

// WalkIn adds somebody who is not on the roster yet, on the class's first track,
// and checks them in: one step, so that taking it back leaves nobody behind.
func (d *Desk) WalkIn(class gym.ID, name string) (gym.ID, error) {
	a := d.NewAthlete(name)
	if err := d.checkAthlete(a); err != nil {
		return "", err
	}
	label := "check " + a.Name + " in as new"
	changes := []gym.Change{gym.PutAthlete{Athlete: a}}
	c, err := d.edited(label, class, func(c *gym.Class) error {
		var track gym.ID
		if len(c.Pieces) > 0 {
			track = c.Pieces[0].Track
			changes = append(changes, d.move(a.ID, track, d.Today()))
		}
		return d.checkIn(c, a, track)
	})
	if err != nil {
		return "", err
	}
	return a.ID, d.do(label, append(changes, gym.PutClass{Class: c})...)
}

// Standing is what the desk shows of a lifter beside their name.
type Standing struct {
	Lifter  gym.Lifter
	Name    string
	Lift    string
	Reps    int
	Number  string // what the climb is counted from
	Offer   string // a lower base that is offered, with the reason
	Warning string // a restriction that touches the lift
	Attempt string // what is wrong with the attempt at the record, and what would mend it
	Needs   bool   // nothing can be counted until a first load is typed
}

// Standing says how a checked-in athlete stands with today's lift.
func (d *Desk) Standing(c gym.Class, athlete gym.ID) (Standing, bool) {
	l, err := lifter(&c, athlete)
	if err != nil {
		return Standing{}, false
	}
	a, _ := d.Athlete(athlete)
	lift, _ := d.Lift(l.Lift)
	s := Standing{Lifter: *l, Name: a.Name, Lift: lift.Name, Reps: l.Reps, Warning: d.warning(c, athlete)}
	if path, err := d.Path(c, *l); err == nil && path.Attempt != nil {
		s.Attempt = path.Attempt.Note(d.book.Settings.Unit)
	}
	base := d.BaseFor(a, lift, l.Reps)
	switch {
	case l.Lift == "":
		s.Number = d.unclimbed(c, *l)
	case l.Base > 0:
		s.Number = fmt.Sprintf("From %s, %s", l.Base.In(d.book.Settings.Unit), spoken(l.Source))
		if base.Stale != nil && l.Base == base.Load {
			s.Offer = base.Stale.Why(d.book.Settings.Unit)
		}
	case l.Start > 0:
		s.Number = fmt.Sprintf("No record: begins with %s and finds the rep max", l.Start.In(d.book.Settings.Unit))
	default:
		s.Number, s.Needs = "No record and no estimate: type a first load", true
	}
	return s, true
}

// unclimbed says what a lifter does on a day without a climb: sets by percentages,
// with their loads, or nothing.
func (d *Desk) unclimbed(c gym.Class, l gym.Lifter) string {
	piece, _ := c.Piece(l.Track)
	if len(piece.Scheme) == 0 {
		return "No main lift today"
	}
	var sets []string
	for _, s := range piece.Scheme {
		row := d.bySets(l, piece.Lift, s)
		sets = append(sets, fmt.Sprintf("%s at %g %%, %s", row.Work, s.Percent, orElse(row.Load, row.Why)))
	}
	lift, _ := d.Lift(piece.Lift)
	return lift.Name + " by percentages: " + strings.Join(sets, "; ")
}

func orElse(text, other string) string {
	if text == "" {
		return other
	}
	return text
}

func spoken(s gym.Source) string {
	switch s {
	case gym.Tested:
		return "the record"
	case gym.Reported:
		return "as reported"
	}
	return "an estimate"
}

// StartWith lets a lifter find the rep max from a first load.
func (d *Desk) StartWith(class, athlete gym.ID, load gym.Effort) error {
	return d.change(d.whose("set the first load of", athlete), class, func(c *gym.Class) error {
		return d.countFrom(c, athlete, 0, "", load.Load)
	})
}

// CountFrom lets a lifter's climb be counted from another number today.
func (d *Desk) CountFrom(class, athlete gym.ID, load gym.Effort) error {
	return d.change(d.whose("set the number of", athlete), class, func(c *gym.Class) error {
		return d.countFrom(c, athlete, load.Load, gym.Reported, 0)
	})
}

// countFrom changes a lifter's number, and seats who had none before.
func (d *Desk) countFrom(c *gym.Class, athlete gym.ID, base mass.Mass, source gym.Source, start mass.Mass) error {
	l, err := lifter(c, athlete)
	if err != nil {
		return err
	}
	l.Base, l.Source, l.Start = base, source, start
	if l.Station < 0 {
		d.joinIfItCan(c, athlete)
	}
	return nil
}

// LowerBase takes the lower base that is offered for a stale one.
func (d *Desk) LowerBase(class, athlete gym.ID) error {
	return d.change(d.whose("lower the number of", athlete), class, func(c *gym.Class) error {
		l, err := lifter(c, athlete)
		if err != nil {
			return err
		}
		a, _ := d.Athlete(athlete)
		lift, _ := d.Lift(l.Lift)
		base := d.BaseFor(a, lift, l.Reps)
		if base.Stale == nil {
			return fmt.Errorf("the number is fresh; type another one if you know better")
		}
		l.Base = base.Stale.Lowered
		return nil
	})
}

// ChangeTrack lets a lifter do what another track of the class does today.
func (d *Desk) ChangeTrack(class, athlete, track gym.ID) error {
	return d.change(d.whose("change the lift of", athlete), class, func(c *gym.Class) error {
		l, err := lifter(c, athlete)
		if err != nil {
			return err
		}
		piece, ok := c.Piece(track)
		if !ok {
			return fmt.Errorf("the class has no such track")
		}
		a, _ := d.Athlete(athlete)
		d.dress(l, a, piece)
		l.Track, l.Station, l.Calls = track, -1, nil
		d.joinIfItCan(c, athlete)
		return nil
	})
}
