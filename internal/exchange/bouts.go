package exchange

import (
	"context"
	"slices"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// Bouts reads a conditioning log, one bout a row, under the rules of [Results].
// A load that no implement of the gym has is kept and noted.
func Bouts(ctx context.Context, f *File, book *gym.Book, o Options) (Proposal, error) {
	l, err := openLog(f, book, o, boutSpellings, needs{colName, colMovement, colLoad, colReps, colOutcome, colDate})
	if err != nil {
		return Proposal{}, err
	}
	r := boutReader{
		logReader: l, movements: newFinder(gym.MovementNames(book.Movements)), byKey: map[gym.MovementKey]gym.Movement{},
		owned: book.Equipment, ledger: newLedger[boutKey](),
	}
	for _, m := range book.Movements {
		r.byKey[m.Key] = m
	}
	for _, old := range book.Bouts {
		r.ledger.enter(old.ID, keyOfBout(old), old.Void)
	}
	return r.p.of(ctx, l.rows, o, r.row)
}

type boutReader struct {
	*logReader
	movements finder[gym.MovementKey]
	byKey     map[gym.MovementKey]gym.Movement
	owned     gym.Equipment
	ledger    ledger[boutKey]
}

// boutKey is what two bouts must differ in to be two.
type boutKey struct {
	athlete  gym.ID
	movement gym.MovementKey
	load     sheetLoad
	reps     int
	outcome  gym.Outcome
	on       day.Date
	workout  string
	score    string
}

func keyOfBout(b gym.Bout) boutKey {
	return boutKey{b.Athlete, b.Movement, newSheetLoad(b.Load, b.Unit), b.Reps, b.Outcome, b.On, plain(b.Workout), plain(b.Score)}
}

// plain is a text as far as a sheet can say it.
func plain(text string) string {
	if blank(text) {
		return ""
	}
	return gym.FoldName(text)
}

var outcomes = map[string]gym.Outcome{
	"held": gym.Held, "h": gym.Held, "hold": gym.Held,
	"slowed": gym.Slowed, "s": gym.Slowed, "slow": gym.Slowed,
	"stopped": gym.Stopped, "x": gym.Stopped, "stop": gym.Stopped,
}

func (r *boutReader) row(raw row) (verdict, []gym.Change, *faults) {
	l := r.line(raw)
	b := r.bout(l)
	v := same
	if !l.faults.any() {
		v = r.ledger.judge(l, colMovement, b.ID, keyOfBout(b), b.Void)
	}
	if l.faults.any() || v == same {
		return same, nil, &l.faults
	}
	if b.ID == "" {
		b.ID = r.o.NewID()
	}
	r.noteUnowned(l, b)
	r.p.keep(l)
	return added, []gym.Change{gym.AddBout{Bout: b}}, nil
}

// bout reads the cells of a row and checks what they make.
func (r *boutReader) bout(l *line) gym.Bout {
	b := gym.Bout{
		ID: l.id(r.ledger.has), Athlete: r.athlete(l), On: l.needDate(), Workout: l.cell(colWorkout), Score: l.cell(colScore),
		Reps: l.boutReps(), Made: r.o.Now, Void: l.void(),
	}
	if name := l.need(colMovement, "movement"); name != "" {
		key, err := r.movements.find(name)
		l.faults.add(l.columns.heading(colMovement), err)
		b.Movement = key
	}
	if l.need(colOutcome, "outcome") != "" {
		set(l, colOutcome, &b.Outcome, outcomes, "held, slowed or stopped")
	}
	if text := l.need(colLoad, "load"); text != "" {
		index := l.columns.at[colLoad]
		b.Load, b.Unit = l.load(index, text, l.unit(index))
	}
	if !l.faults.any() {
		l.faults.add(l.columns.heading(colLoad), b.Valid())
	}
	return b
}

func (l *line) boutReps() int {
	const most = 10_000 // the most that gym.Bout.Valid believes
	l.need(colReps, "number of reps")
	return l.whole(colReps, 1, most)
}

func (r *boutReader) noteUnowned(l *line, b gym.Bout) {
	m := r.byKey[b.Movement]
	owned := r.owned.Implement(m.Implement)
	if len(owned) > 0 && !slices.Contains(owned, b.Load) {
		l.note("the gym owns no %s of %s; the bout is kept with that load", m.Implement, b.Load.In(b.Unit))
	}
}
