package exchange

import (
	"context"
	"fmt"
	"maps"
	"slices"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// Roster reads athletes and their rep maxes. A blank cell leaves what the gym
// knows; a rep max that does not beat the record adds nothing. The error is about
// the sheet as a whole; the faults of rows are in the proposal.
func Roster(ctx context.Context, f *File, book *gym.Book, o Options) (Proposal, error) {
	lifts := newLiftFinder(book.Lifts)
	for _, s := range f.sheets {
		c, rows, found, err := place(s, rosterSpellings, columns.named, lifts)
		if err == nil && found {
			err = c.notALog()
		}
		if err != nil {
			return Proposal{}, fmt.Errorf("read %q: %w", f.name, err)
		}
		if found {
			r := newRosterReader(book, o, c, s.epoch, lifts)
			return r.p.of(ctx, rows, o, r.row)
		}
	}
	return Proposal{}, f.missing("names", "rename one to Name, or two to First name and Last name")
}

// notALog refuses a list of results or bouts, in which every row would look like
// an athlete.
func (c columns) notALog() error {
	logs := 0
	for _, heading := range c.ignored {
		key := readHeading(heading).key()
		for _, col := range []column{colLift, colMovement, colReps, colLoad, colOutcome} {
			if slices.Contains(resultSpellings[col], key) || slices.Contains(boutSpellings[col], key) {
				logs++
				break
			}
		}
	}
	if logs < 2 || len(c.maxes) > 0 {
		return nil
	}
	return fmt.Errorf("%w of its own for each rep max; it looks like a list of results or bouts: read it as one", ErrColumns)
}

// rosterReader holds what the rows of a roster are compared with.
type rosterReader struct {
	p       Proposal
	o       Options
	columns columns
	epoch   day.Date
	names   finder[gym.ID]
	tracks  finder[gym.ID]
	all     []string // names, to find near ones among
	byID    map[gym.ID]gym.Athlete
	on      map[gym.ID]gym.ID // the track of today
	best    records
	seen    map[gym.ID]int // the line on which an athlete stood
	guesses int
}

func newRosterReader(book *gym.Book, o Options, c columns, epoch day.Date, lifts *liftFinder) *rosterReader {
	r := &rosterReader{
		o: o.over(book), columns: c, epoch: epoch,
		names: newFinder(gym.AthleteNames(book.Athletes)), tracks: newFinder(gym.TrackNames(book.Tracks)),
		byID: map[gym.ID]gym.Athlete{}, on: tracksOn(book.Moves, o.Today),
		best: newRecords(book, lifts), seen: map[gym.ID]int{},
	}
	r.p.Ignored, r.p.Rejected = c.ignored, c.unknown
	for _, a := range book.Athletes {
		r.byID[a.ID] = a
		r.all = append(r.all, a.Name)
	}
	return r
}

// tracksOn returns the track of every athlete on a day.
func tracksOn(moves []gym.TrackMove, on day.Date) map[gym.ID]gym.ID {
	of := map[gym.ID][]gym.TrackMove{}
	for _, m := range moves {
		of[m.Athlete] = append(of[m.Athlete], m)
	}
	tracks := make(map[gym.ID]gym.ID, len(of))
	for athlete, moves := range of {
		tracks[athlete] = gym.TrackOn(moves, on)
	}
	return tracks
}

// row reads one athlete and says what the gym would learn.
func (r *rosterReader) row(raw row) (verdict, []gym.Change, *faults) {
	l := newLine(raw, r.columns, r.epoch, r.o, r.names.knows)
	before, known := r.who(l)
	after := r.fields(l, before)
	var changes []gym.Change
	if !known || differs(before, after) {
		changes = append(changes, gym.PutAthlete{Athlete: after})
	}
	changes = append(changes, r.track(l, after.ID)...)
	maxes := r.maxes(l, after)
	changes = append(changes, maxes.changes...)
	if l.faults.any() {
		return same, nil, &l.faults
	}
	r.accept(l, after, known, maxes)
	switch {
	case !known:
		return added, changes, nil
	case len(changes) > 0:
		return updated, changes, nil
	}
	return same, nil, nil
}

// who finds the athlete of a row, or makes a new one.
func (r *rosterReader) who(l *line) (a gym.Athlete, known bool) {
	name, id := l.needName(), l.id(has(r.byID))
	if a, known = r.byID[id]; !known {
		keys := r.names.Keys(name)
		if len(keys) > 1 {
			l.refuse(l.columns.nameColumn(), "%d athletes are called %q; add a column ID with the one that is meant", len(keys), name)
		}
		if len(keys) > 0 {
			a, known = r.byID[keys[0]], true
		}
	}
	if !known {
		return r.newAthlete(name, id), false
	}
	if line, twice := r.seen[a.ID]; twice {
		l.refuse(l.columns.nameColumn(), "line %d is about the same athlete; keep one of the two", line)
	}
	return a, true
}

// newAthlete has the gym's usual choices and as yet no load standard.
func (r *rosterReader) newAthlete(name string, id gym.ID) gym.Athlete {
	if id == "" {
		id = r.o.NewID()
	}
	return gym.Athlete{ID: id, Name: name, Status: gym.Active, Unit: r.o.gymUnit, Show: gym.WallName}
}

// accept remembers a sound row for those after it.
func (r *rosterReader) accept(l *line, a gym.Athlete, known bool, m maxes) {
	maps.Copy(r.best, m.raised)
	if !known {
		r.guess(l, a.Name)
		r.names.Add(a.Name, a.ID)
		r.byID[a.ID] = a
	}
	r.seen[a.ID] = l.line
	r.p.keep(l)
}

// guess tells of a new name that is nearly a known one.
func (r *rosterReader) guess(l *line, name string) {
	if r.guesses++; r.guesses > guessLimit {
		return
	}
	if near := gym.Nearest(name, r.all, 1); len(near) > 0 {
		l.note("%s is new to the gym; %s is there already: the same person?", name, near[0])
	}
}
