package wall

import (
	"fmt"
	"strconv"
	"time"

	"windlass/internal/climb"
	"windlass/internal/clock"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/ui/kit"
)

// Climb is the wall of a class on its way up to the day's rep max.
type Climb struct {
	Now, Next Line // the rung that runs and the one after it
	Rungs     []Rung
	Present   int // of Rungs, clock.None when the climb is over
	Held      bool
	Lasts     time.Duration // of the present rung; 0 outside of a climb that has begun
	Unit      mass.Unit
	Stations  []Station
	Badges    []string // of the stations
}

// Line says what a rung asks for: "80 % × 3".
type Line struct {
	Text string // empty where there is none
	Zone kit.Zone
}

// Rung is one window of the climb, in shares of the whole.
type Rung struct {
	From, To float64
	Zone     kit.Zone
}

// Station is a station and who lifts there, in their order.
type Station struct {
	Name   string
	Number int // in the gym's list, from 1; 0 for those without a station
	Rows   []Row
}

// Row is one lifter.
type Row struct {
	Name   string // as the athlete chose; may be empty
	Now    Load
	Discs  []kit.PlateDisc // on one side, the first inside
	Bare   bool            // the bar alone is lifted
	Bar    string          // "bar 15", where it is of another mass than the station's own
	Next   Load
	Record bool // the day's set was a record
}

// Load is a load as a lifter reads it; both numbers while a call is open.
type Load struct {
	Text string // "142.5", "done", "–"
	Or   string // the other number, of a lifter who settles: the lighter one
	Reps string // "× 3", where not everybody does the same
	Last bool   // it is lifted when all stations have lifted
}

// String writes the load in one line, the lighter number first.
func (l Load) String() string {
	if l.Or == "" {
		return l.Text
	}
	return l.Or + " / " + l.Text
}

func (s State) climb(now time.Time) (Climb, Face) {
	b := s.Board
	m := b.At(now)
	c := Climb{Present: m.Rung, Unit: s.Book.Settings.Unit, Rungs: rungsOf(b.Class.Climb)}
	if m.Started && m.Rung != clock.None {
		c.Lasts = m.InRung + m.LeftIn
	}
	if n := len(b.Class.Climb.Rungs); n > 0 {
		c.Now, c.Next = lineOf(b.Class, m.Rung), lineOf(b.Class, m.Next)
	}
	names := namesOf(b.Lifters())
	for _, st := range b.Stations {
		c.Stations = append(c.Stations, s.station(st.Name, st.Index+1, st.Lifters, m, names)...)
	}
	c.Stations = append(c.Stations, s.station("–", 0, b.Bench, m, names)...)
	c.Badges = badges(c.Stations, !m.Started)
	c.sayReps(b.Class)
	face := climbFace(m, b.Class.Climb)
	c.Held = face.Tone == Held
	return c, face
}

// station is a station with its lifters, or nothing without any.
func (s State) station(name string, number int, lifters []desk.BoardLifter, m clock.Moment, names map[gym.ID]string) []Station {
	if len(lifters) == 0 {
		return nil
	}
	st := Station{Name: name, Number: number}
	bar := s.otherBar(number-1, lifters[0].Bar)
	for _, l := range lifters {
		r := s.row(l, m)
		r.Name = names[l.Athlete]
		if r.Bare || len(r.Discs) > 0 {
			r.Bar = bar
		}
		st.Rows = append(st.Rows, r)
	}
	return []Station{st}
}

// sayReps leaves the reps to the head of the wall where it says them for all.
func (c *Climb) sayReps(class gym.Class) {
	if c.Present != clock.None && repsOf(class, class.Climb.Rungs[c.Present]) == anyReps {
		return
	}
	for _, s := range c.Stations {
		for i := range s.Rows {
			s.Rows[i].Now.Reps = ""
		}
	}
}

func climbFace(m clock.Moment, plan gym.ClimbPlan) Face {
	total := m.Elapsed + m.Left
	switch {
	case !m.Started:
		return Face{Text: clock.Up(total), Tone: Waiting}
	case m.Finished:
		return Face{Text: "00:00", Tone: Waiting, Done: 1}
	}
	f := Face{Text: clock.Down(m.LeftIn), Tone: Going, Done: wholeSeconds(m.Elapsed, total)}
	switch {
	case !m.Running:
		f.Tone = Held
	case m.Warning > 0:
		f.Tone = Soon
	}
	return f
}

// wholeSeconds is how much of a time has passed. It moves once a second: every
// change draws the whole screen.
func wholeSeconds(passed, of time.Duration) float64 {
	return float64(passed.Truncate(time.Second)) / float64(of)
}

func rungsOf(plan gym.ClimbPlan) []Rung {
	var rungs []Rung
	if len(plan.Rungs) == 0 {
		return nil
	}
	total := float64(plan.Rungs[len(plan.Rungs)-1].Until)
	for _, r := range plan.Rungs {
		rungs = append(rungs, Rung{From: float64(r.At) / total, To: float64(r.Until) / total, Zone: zones[r.Zone]})
	}
	return rungs
}

func lineOf(c gym.Class, rung int) Line {
	if rung == clock.None {
		return Line{}
	}
	r := c.Climb.Rungs[rung]
	return Line{Text: fmt.Sprintf("%g %% %s", r.Percent, repsOf(c, r)), Zone: zones[r.Zone]}
}

// repsOf writes the reps of a rung; where tracks differ in the day's rep count it
// says only that it is the rep max.
func repsOf(c gym.Class, r gym.Rung) string {
	if r.Reps > 0 {
		return times(r.Reps)
	}
	reps := 0
	for _, p := range c.Pieces {
		if p.Lift == "" {
			continue
		}
		if reps != 0 && reps != p.Reps {
			return anyReps
		}
		reps = p.Reps
	}
	return times(reps)
}

// anyReps stands for the day's rep count where tracks differ in it.
const anyReps = "× RM"

func times(reps int) string {
	if reps == 0 {
		return ""
	}
	return "× " + strconv.Itoa(reps)
}

func (s State) row(l desk.BoardLifter, m clock.Moment) Row {
	r, unit := Row{Record: s.record(l)}, s.Book.Settings.Unit
	now, next := m.Rung, m.Next
	if result, ok := s.logged(l); ok {
		r.Now = Load{Text: digits(result.Load, result.Unit, unit), Reps: times(result.Reps)}
		return r
	}
	if now == clock.None {
		r.Now = outcomeOf(l, unit)
		return r
	}
	if now >= len(l.Sets) {
		r.Now = Load{Text: "?"}
		return r
	}
	set := l.Sets[now]
	r.Now = loadOf(l, set, unit)
	if lifts := set.Likely() > 0; lifts {
		r.Now.Last = set.Last
		r.Discs, r.Bare = discsOf(set.Discs, unit, s.Book.Settings.SportDiscs), len(set.Discs) == 0
	}
	if next != clock.None && next < len(l.Sets) {
		r.Next = loadOf(l, l.Sets[next], unit)
	}
	switch {
	case set.State == climb.Open && l.Path.Finding:
		r.Next = Load{Text: "–"}
	case r.Now.Or != "":
		r.Next.Or = "" // what comes next hangs on the call that is still open
	}
	return r
}

// loadOf writes what a lifter lifts in a window.
func loadOf(l desk.BoardLifter, s desk.BoardSet, unit mass.Unit) Load {
	if s.State == climb.Off {
		return outcomeOf(l, unit)
	}
	load := Load{Text: "–", Reps: times(s.Reps)}
	switch {
	case s.State == climb.Skipped:
		load.Reps = ""
	case s.State == climb.Open && len(s.Options) > 0:
		load.Text, load.Reps = digits(s.Options[0].Load, l.Unit, unit), ""
		if last := s.Options[len(s.Options)-1]; last.Load != s.Options[0].Load {
			load.Or = digits(last.Load, l.Unit, unit)
		}
	case s.Load > 0:
		load.Text = digits(s.Load, l.Unit, unit)
	}
	return load
}

// outcomeOf is the wall of a lifter who is done.
func outcomeOf(l desk.BoardLifter, unit mass.Unit) Load {
	if o := l.Path.Outcome; o.Kind == climb.Counts && !l.Missed {
		return Load{Text: digits(o.Load, l.Unit, unit), Reps: times(o.Reps)}
	}
	return Load{Text: "done"}
}

// digits writes a load in the lifter's unit, which is named where it is not the
// gym's.
func digits(m mass.Mass, own, gyms mass.Unit) string {
	if own == "" || own == gyms {
		return m.Digits(gyms)
	}
	return m.In(own)
}
