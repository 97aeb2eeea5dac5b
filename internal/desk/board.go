package desk

import (
	"cmp"
	"slices"
	"time"

	"windlass/internal/climb"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
)

// Board is what the floor and the wall show of a class: who lifts what where, in
// every window of the climb. It changes only with the class and the equipment;
// [Board.At] tells which window runs. It needs no more of the book than the wall
// has: the settings, the equipment, the lifts, tracks and movements, and the
// athletes of the class.
type Board struct {
	Class    gym.Class
	Stations []BoardStation
	Bench    []BoardLifter // those without a station
	Faults   []error       // why a lifter has no loads
}

// BoardStation is one station with its lifters in the order in which they lift.
type BoardStation struct {
	Name    string
	Bar     string // as the coach reads it
	Index   int    // in the equipment
	Lifters []BoardLifter
}

// BoardLifter is one lifter with a set for every window.
type BoardLifter struct {
	gym.Lifter
	Name  string // the whole name, for the desk
	Wall  string // what the wall may show of it; may be empty
	Lift  string
	Track string
	Unit  mass.Unit
	Path  climb.Path
	Sets  []BoardSet // one a window; empty when the lifter has no loads
}

// BoardSet is what a lifter does in one window.
type BoardSet struct {
	climb.Step
	Discs   []plates.Disc // a side, heaviest inside; of the option that climbs while a call is open
	On, Off []plates.Disc // a side: what to change since the set before at the station
	Blocks  bool          // raise the bar on blocks
	Either  []EitherLoad  // both numbers, while the call is open
}

// EitherLoad is one of the loads that an open window may bring.
type EitherLoad struct {
	climb.Option
	Discs []plates.Disc
}

// Moment is where a climb's clock stands.
type Moment struct {
	Elapsed time.Duration
	Rung    int           // the present window; -1 before the first, the number of rungs after the last
	Left    time.Duration // of the present window; before the first, until it begins
	Running bool
}

// Over reports whether the last window has passed.
func (m Moment) Over(plan gym.ClimbPlan) bool { return m.Rung >= len(plan.Rungs) }

// At tells where the clock of the board's climb stands at an instant.
func (b Board) At(now time.Time) Moment {
	m := Moment{Elapsed: b.Class.Clock.Elapsed(now), Running: b.Class.Clock.Running}
	m.Rung = rungAt(b.Class.Climb, m.Elapsed)
	rungs := b.Class.Climb.Rungs
	switch {
	case !b.Class.Clock.Started():
		m.Rung = -1
		if len(rungs) > 0 {
			m.Left = time.Duration(rungs[0].At) * time.Second
		}
	case m.Rung < len(rungs):
		m.Left = time.Duration(rungs[m.Rung].Until)*time.Second - m.Elapsed
	}
	return m
}

// Boards draws up boards and remembers the loads of each bar between them. It
// holds for one state of the equipment.
type Boards struct {
	book  *gym.Book
	loads map[string]*plates.Loads
}

// NewBoards returns what draws up boards from a book, which may be the partial
// one of the wall.
func NewBoards(book *gym.Book) *Boards {
	return &Boards{book: book, loads: map[string]*plates.Loads{}}
}

// Board draws up the board of a class.
func (bs *Boards) Board(c gym.Class) Board {
	b := Board{Class: c}
	for i, s := range bs.book.Equipment.Stations {
		bar, _ := bs.book.Equipment.Bar(s.Bar)
		b.Stations = append(b.Stations, BoardStation{Name: s.Name, Bar: bar.Name, Index: i})
	}
	for _, l := range c.Lifters {
		row, err := bs.lifter(c, l)
		if err != nil {
			b.Faults = append(b.Faults, err)
		}
		if l.Station < 0 || l.Station >= len(b.Stations) {
			b.Bench = append(b.Bench, row)
			continue
		}
		at := &b.Stations[l.Station]
		at.Lifters = append(at.Lifters, row)
	}
	for i := range b.Stations {
		slices.SortStableFunc(b.Stations[i].Lifters, func(x, y BoardLifter) int { return cmp.Compare(x.Place, y.Place) })
		bs.stack(b.Stations[i].Lifters)
	}
	for i := range b.Bench {
		bs.stack(b.Bench[i : i+1])
	}
	return b
}

func (bs *Boards) lifter(c gym.Class, l gym.Lifter) (BoardLifter, error) {
	row := BoardLifter{Lifter: l, Unit: bs.book.Settings.Unit}
	for _, a := range bs.book.Athletes {
		if a.ID == l.Athlete {
			row.Name, row.Wall, row.Unit = a.Name, a.OnWall(), a.Unit
		}
	}
	for _, lift := range bs.book.Lifts {
		if lift.Key == l.Lift {
			row.Lift = lift.Name
		}
	}
	for _, t := range bs.book.Tracks {
		if t.ID == l.Track {
			row.Track = t.Name
		}
	}
	if l.Lift == "" {
		return row, nil
	}
	rig, err := rigOf(bs.book, l, bs.loadsOf)
	if err != nil {
		return row, err
	}
	if row.Path, err = climb.Build(c.Climb, l, rig); err != nil {
		return row, err
	}
	for _, step := range row.Path.Steps {
		row.Sets = append(row.Sets, BoardSet{Step: step})
	}
	return row, nil
}

func (bs *Boards) loadsOf(bar string) (*plates.Loads, error) {
	if l, ok := bs.loads[bar]; ok {
		return l, nil
	}
	l, err := loadsOfBar(bs.book.Equipment, bar)
	if err == nil {
		bs.loads[bar] = l
	}
	return l, err
}

// planned is the load that a window most likely brings.
func (s BoardSet) planned() mass.Mass {
	if s.State == climb.Off || s.State == climb.Skipped {
		return 0
	}
	if s.Load == 0 && len(s.Options) > 0 {
		return s.Options[0].Load
	}
	return s.Load
}

// stack chooses the discs of every set at one station, in lifting order, so that
// the fewest plates are moved.
func (bs *Boards) stack(lifters []BoardLifter) {
	if len(lifters) == 0 || lifters[0].Bar == "" {
		return
	}
	loads, err := bs.loadsOf(lifters[0].Bar)
	if err != nil {
		return
	}
	var sets []*BoardSet
	var targets []mass.Mass
	for rung := range windows(lifters) {
		for i := range lifters {
			if rung < len(lifters[i].Sets) && lifters[i].Sets[rung].planned() > 0 {
				sets = append(sets, &lifters[i].Sets[rung])
				targets = append(targets, lifters[i].Sets[rung].planned())
			}
		}
	}
	var on []plates.Disc
	for i, step := range plates.NewPlanner(loads, planWays).Sequence(nil, targets).Steps {
		sets[i].Discs, sets[i].Blocks = step.PerSide, step.Blocks
		sets[i].Off, sets[i].On = change(on, step.PerSide)
		on = step.PerSide
		for _, o := range sets[i].Options {
			loading, _ := loads.AtMost(o.Load)
			sets[i].Either = append(sets[i].Either, EitherLoad{Option: o, Discs: loading.PerSide})
		}
	}
}

// planWays is how many ways to make a load are weighed for the board.
const planWays = 64

func windows(lifters []BoardLifter) int {
	n := 0
	for _, l := range lifters {
		n = max(n, len(l.Sets))
	}
	return n
}

// change is what comes off one side and goes on it between two stacks: all
// outside of the first disc that differs.
func change(from, to []plates.Disc) (off, on []plates.Disc) {
	same := 0
	for same < len(from) && same < len(to) && from[same] == to[same] {
		same++
	}
	return from[same:], to[same:]
}
