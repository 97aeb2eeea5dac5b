package exchange

import (
	"context"
	"fmt"
	"math"
	"strings"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// Results reads a list of lift results, one a row. A row that the gym has already
// is the same; a row that stands twice in the sheet is refused. The error is
// about the sheet as a whole.
func Results(ctx context.Context, f *File, book *gym.Book, o Options) (Proposal, error) {
	l, err := openLog(f, book, o, resultSpellings, needs{colName, colLift, colLoad, colDate})
	if err != nil {
		return Proposal{}, err
	}
	r := resultReader{l, newLiftFinder(book.Lifts), newLedger[resultKey]()}
	for _, old := range book.Results {
		r.ledger.enter(old.ID, keyOfResult(old), old.Void)
	}
	return r.p.of(ctx, l.rows, o, r.row)
}

// logReader is what lists of results and of bouts have in common.
type logReader struct {
	p       Proposal
	o       Options
	columns columns
	rows    []row
	epoch   day.Date
	names   finder[gym.ID]
}

func openLog(f *File, book *gym.Book, o Options, all spellings, needed needs) (*logReader, error) {
	for _, s := range f.sheets {
		c, rows, found, err := place(s, all, needed.met, nil)
		if err != nil {
			return nil, fmt.Errorf("read %q: %w", f.name, err)
		}
		if !found {
			continue
		}
		l := &logReader{o: o.over(book), columns: c, rows: rows, epoch: s.epoch, names: newFinder(gym.AthleteNames(book.Athletes))}
		l.p.Ignored = c.ignored
		return l, nil
	}
	return nil, f.missing(needed.lacking(f, all), "name it so, in any order")
}

func (r *logReader) line(raw row) *line {
	return newLine(raw, r.columns, r.epoch, r.o, r.names.knows)
}

// athlete finds who a row is about.
func (r *logReader) athlete(l *line) gym.ID {
	name := l.needName()
	if name == "" {
		return ""
	}
	id, err := r.names.find(name)
	l.faults.add(l.columns.heading(l.columns.nameColumn()), err)
	return id
}

type resultReader struct {
	*logReader
	lifts  *liftFinder
	ledger ledger[resultKey]
}

// resultKey is what two results must differ in to be two.
type resultKey struct {
	athlete gym.ID
	lift    gym.LiftKey
	reps    int
	load    sheetLoad
	amount  float64
	on      day.Date
}

// keyOfResult rounds loads to what a sheet can say.
func keyOfResult(r gym.Result) resultKey {
	return resultKey{r.Athlete, r.Lift, r.Reps, newSheetLoad(r.Load, r.Unit), math.Round(r.Amount * 1e6), r.On}
}

func (r *resultReader) row(raw row) (verdict, []gym.Change, *faults) {
	l := r.line(raw)
	result := r.result(l)
	v := same
	if !l.faults.any() {
		v = r.ledger.judge(l, colLift, result.ID, keyOfResult(result), result.Void)
	}
	if l.faults.any() || v == same {
		return same, nil, &l.faults
	}
	if result.ID == "" {
		result.ID = r.o.NewID()
	}
	return added, []gym.Change{gym.AddResult{Result: result}}, nil
}

// result reads the cells of a row and checks what they make.
func (r *resultReader) result(l *line) gym.Result {
	result := gym.Result{ID: l.id(r.ledger.has), Athlete: r.athlete(l), On: l.needDate(), Source: l.source(), Made: r.o.Now, Void: l.void()}
	if name := l.need(colLift, "lift"); name != "" {
		lift, err := r.lifts.lift(name)
		l.faults.add(l.columns.heading(colLift), err)
		result.Lift = lift.Key
		l.performance(lift, &result)
	}
	if !l.faults.any() {
		l.faults.add(l.columns.heading(colLoad), result.Valid())
	}
	return result
}

var sources = map[string]gym.Source{
	"tested": gym.Tested, "test": gym.Tested, "coach": gym.Tested,
	"reported": gym.Reported, "athlete": gym.Reported, "told": gym.Reported, "": gym.Reported,
}

// source takes a row that says nothing as reported, which claims less.
func (l *line) source() gym.Source {
	s, err := word(l.cell(colSource), sources, "tested or reported; an estimate is no result")
	l.faults.add(l.columns.heading(colSource), err)
	return s
}

// performance reads reps and load, or the amount of a lift that is measured
// otherwise. A load cell may hold both, as in 5x142.5.
func (l *line) performance(lift gym.Lift, r *gym.Result) {
	r.Reps, r.Unit = l.repCount(), l.o.Unit
	index, text := l.columns.at[colLoad], l.cell(colLoad)
	measured := lift.Measure != gym.ByLoad && lift.Measure != ""
	switch {
	case measured || text == "" && l.cell(colAmount) != "":
		l.amount(r, lift.Measure)
	case text == "":
		l.need(colLoad, "load")
	case strings.ContainsAny(strings.ToLower(text), "x×*@"):
		e, err := gym.ParseEffort(text, l.unit(index))
		l.faults.add(l.columns.heading(colLoad), err)
		r.Reps, r.Load, r.Unit = e.Reps, e.Load, e.Unit
		return
	default:
		r.Load, r.Unit = l.load(index, text, l.unit(index))
	}
	if r.Reps == 0 && measured {
		r.Reps = 1
	}
	if r.Reps == 0 && !l.faults.any() {
		l.need(colReps, "rep count")
	}
}

// repCount is the row's, or that of the load's heading, as in "5RM".
func (l *line) repCount() int {
	if l.cell(colReps) == "" {
		return l.columns.reps
	}
	text := strings.ToLower(l.cell(colReps))
	n := number(strings.TrimSpace(strings.TrimSuffix(strings.TrimSuffix(text, "rm"), ".0")))
	if n < 1 || n > gym.MaxReps {
		l.refuse(colReps, "%q is not a rep count from 1 to %d", text, gym.MaxReps)
	}
	return max(n, 0)
}

// amount stands in a column of its own, or in that of loads.
func (l *line) amount(r *gym.Result, by gym.Measure) {
	c := colAmount
	if l.cell(colAmount) == "" {
		c = colLoad
	}
	text := l.need(c, "amount")
	if text == "" {
		return
	}
	amount, err := parseAmount(text, by)
	l.faults.add(l.columns.heading(c), err)
	r.Amount = amount
}
