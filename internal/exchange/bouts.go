package exchange

import (
	"context"

	"windlass/internal/conditioning"
	"windlass/internal/day"
	"windlass/internal/gym"
)

// Bouts reads a conditioning log, one bout a row, under the rules of [Results].
// A load that no implement of the gym has is kept and noted; one that cannot have
// been is refused, and so are a workout that sets out to be a
// format and is none, and a score that the format does not have. Of two rows that
// tell of one bout with two outcomes neither is kept.
func Bouts(ctx context.Context, f *File, book *gym.Book, o Options) (Proposal, error) {
	l, err := openLog(f, book, o, boutSpellings, needs{colName, colMovement, colLoad, colReps, colOutcome, colDate})
	if err != nil {
		return Proposal{}, err
	}
	r := boutReader{
		logReader: l, movements: newFinder(gym.MovementNames(book.Movements)), byKey: map[gym.MovementKey]gym.Movement{},
		owned: book.Equipment, ledger: newLedger[boutKey](), titles: map[string]titled{}, outcomes: newOutcomes(),
	}
	for _, m := range book.Movements {
		r.byKey[m.Key] = m
	}
	for _, old := range book.Bouts {
		r.ledger.enter(old.ID, keyOfBout(old), old.Void)
		r.outcomes.enter(old)
	}
	if _, err := r.p.of(ctx, l.rows, o, r.row); err != nil {
		return Proposal{}, err
	}
	r.p.withdraw(r.outcomes.contradicted)
	return r.p, nil
}

type boutReader struct {
	*logReader
	movements finder[gym.MovementKey]
	byKey     map[gym.MovementKey]gym.Movement
	owned     gym.Equipment
	ledger    ledger[boutKey]
	titles    map[string]titled
	outcomes  outcomeBook
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
	if v == added && !l.faults.any() {
		r.judge(l, b)
	}
	if l.faults.any() || v == same {
		return same, nil, &l.faults
	}
	if b.ID == "" {
		b.ID = r.o.NewID()
	}
	r.noteLoad(l, b)
	if b.On > l.o.Today {
		l.note("%s is still to come; the bout is kept, and counts from that day on", b.On)
	}
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

// judge holds what a new bout says against what can have been.
func (r *boutReader) judge(l *line, b gym.Bout) {
	m := r.byKey[b.Movement]
	l.faults.add(l.columns.heading(colLoad), conditioning.CheckLoad(m, r.owned.Implement(m.Implement), b.Load))
	r.judgeScore(l, b)
	if b.Void == nil && !l.faults.any() {
		l.faults.add(l.columns.heading(colOutcome), r.outcomes.judge(l.line, len(r.p.Changes), b, l.columns.heading(colOutcome)))
	}
}

// noteLoad marks a load that no implement has, and one of a movement without loads.
func (r *boutReader) noteLoad(l *line, b gym.Bout) {
	m := r.byKey[b.Movement]
	switch {
	case m.Implement == "" && len(m.Loads) == 0:
		l.note("%s has no loads in the catalogue; the bout is kept with %s, and no load is suggested from it", m.Name, b.Load.In(b.Unit))
	case conditioning.Missing(r.owned.Implement(m.Implement), b.Load):
		l.note("the gym owns no %s of %s; the bout is kept with that load", m.Implement, b.Load.In(b.Unit))
	}
}
