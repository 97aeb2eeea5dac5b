package desk

import (
	"cmp"
	"slices"
	"time"

	"windlass/internal/climb"
	"windlass/internal/clock"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
	"windlass/internal/station"
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
	Workouts []BoardWorkout
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
	Short string // of it what tells the lifters of the class apart
	Wall  string // what the wall may show of it; may be empty
	Lift  string
	Track string
	Unit  mass.Unit // the gym's: a bar is loaded in what its plates are marked in
	Path  climb.Path
	Sets  []BoardSet // one a window; empty when the lifter has no loads
	Fault error      // why there are none
	floor bool       // the lift starts on the floor
}

// BoardSet is what a lifter does in one window.
type BoardSet struct {
	climb.Step
	Discs   []plates.Disc // a side, heaviest inside; of the option that climbs while a call is open
	On, Off []plates.Disc // a side: what to change since the set before at the station
	Blocks  bool          // raise the bar on blocks
	Last    bool          // lifts when all stations have lifted in this window
	Either  []EitherLoad  // both numbers, while the call is open
}

// EitherLoad is one of the loads that an open window may bring.
type EitherLoad struct {
	climb.Option
	Discs []plates.Disc
}

// At tells where the clock of the board's climb stands at an instant.
func (b Board) At(now time.Time) clock.Moment { return clock.Climb(b.Class.Climb, b.Class.Clock, now) }

// Boards draws up boards and remembers between them what is dear to work out: the
// loads of each bar, everybody's way up, the plates of each station and who fits with
// whom. It holds for one state of the equipment.
type Boards struct {
	book    *gym.Book
	loads   loadCache
	paths   map[gym.ID]knownPath       // of athletes, see [Boards.path]
	stacks  map[string][]plates.Step   // see [Boards.sequence]
	solvers map[string]*station.Solver // see [Boards.solver]
	waysOut waysOut
	said    plateMemory
}

// NewBoards returns what draws up boards from a book, which may be the partial
// one of the wall.
func NewBoards(book *gym.Book) *Boards {
	return &Boards{book: book, loads: loadCache{}, paths: map[gym.ID]knownPath{}, stacks: map[string][]plates.Step{}, solvers: map[string]*station.Solver{}, waysOut: newWaysOut()}
}

// Board draws up the board of a class.
func (bs *Boards) Board(c gym.Class) Board {
	b := Board{Class: c, Workouts: bs.workouts(c)}
	for i, s := range bs.book.Equipment.Stations {
		b.Stations = append(b.Stations, BoardStation{Name: s.Name, Bar: bs.barName(s.Bar), Index: i})
	}
	for _, row := range bs.rows(c) {
		l := row.Lifter
		if l.Station < 0 || l.Station >= len(b.Stations) {
			b.Bench = append(b.Bench, row)
			continue
		}
		at := &b.Stations[l.Station]
		at.Lifters = append(at.Lifters, row)
	}
	for i := range b.Stations {
		bs.settle(&b.Stations[i])
	}
	heaps := bs.heaps(b.Stations)
	for i, s := range b.Stations {
		bs.stack(s.Lifters, heaps[i])
	}
	for i := range b.Bench {
		bs.stack(b.Bench[i:i+1], heap{})
	}
	bs.restack(b)
	return b
}

// rows are the lifters who have a place in the climb: not who lifts by percentages,
// or not at all.
func (bs *Boards) rows(c gym.Class) (rows []BoardLifter) {
	var names []string
	for _, l := range c.Lifters {
		if l.Lift != "" {
			row := bs.lifter(c, l)
			rows, names = append(rows, row), append(names, row.Name)
		}
	}
	for i, short := range shortNames(names) {
		rows[i].Short = short
	}
	return rows
}

// settle puts the lifters of a station in order, at the bar that they share.
func (bs *Boards) settle(s *BoardStation) {
	if len(s.Lifters) == 0 {
		return
	}
	slices.SortStableFunc(s.Lifters, func(x, y BoardLifter) int { return cmp.Compare(x.Place, y.Place) })
	if name := bs.barName(s.Lifters[0].Bar); name != "" {
		s.Bar = name
	}
}

func (bs *Boards) barName(key string) string {
	bar, _ := bs.book.Equipment.Bar(key)
	return bar.Name
}

// Lifters returns everybody on the board, station by station and then those
// without one.
func (b Board) Lifters() []BoardLifter {
	var all []BoardLifter
	for _, s := range b.Stations {
		all = append(all, s.Lifters...)
	}
	return append(all, b.Bench...)
}

// Lifter returns an athlete's row.
func (b Board) Lifter(athlete gym.ID) (BoardLifter, bool) {
	for _, l := range b.Lifters() {
		if l.Athlete == athlete {
			return l, true
		}
	}
	return BoardLifter{}, false
}

func (bs *Boards) lifter(c gym.Class, l gym.Lifter) BoardLifter {
	row := bs.named(l)
	if l.Lift == "" {
		return row
	}
	if row.Path, row.Fault = bs.path(c.Climb, l); row.Fault != nil {
		return row
	}
	for i, step := range row.Path.Steps {
		row.Sets = append(row.Sets, BoardSet{Step: step, Last: l.Exception(i).Last})
	}
	return row
}

// named is a lifter with the names of what they are and do.
func (bs *Boards) named(l gym.Lifter) BoardLifter {
	row := BoardLifter{Lifter: l, Unit: bs.book.Settings.Unit}
	for _, a := range bs.book.Athletes {
		if a.ID == l.Athlete {
			row.Name, row.Wall = a.Name, a.OnWall()
		}
	}
	for _, lift := range bs.book.Lifts {
		if lift.Key == l.Lift {
			row.Lift, row.floor = lift.Name, lift.Floor
		}
	}
	row.Track = bs.trackName(l.Track)
	return row
}
