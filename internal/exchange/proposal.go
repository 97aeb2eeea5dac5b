package exchange

import (
	"context"
	"fmt"
	"slices"
	"strings"
	"time"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// Options are what a reading needs besides the sheet and the gym.
type Options struct {
	Unit     mass.Unit             // of loads that no cell and no heading gives one; empty means the gym's
	Dates    DateOrder             // of dates that are three numbers
	Today    day.Date              // the date of rep maxes that have none; a bout after it is noted
	Now      time.Time             // when the rows were made
	NewID    func() gym.ID         // names new rows
	Progress func(rows, total int) // told now and then how far it has come; may be nil

	gymUnit mass.Unit
}

// Proposal is what a sheet would change in a gym. Nothing is written: the caller
// writes Changes, or none of them when there are rejections and the coach has not
// chosen to skip bad rows.
type Proposal struct {
	Read     int         // rows that are not blank
	Added    int         // rows that make something new
	Updated  int         // rows that change an athlete or add to their rep maxes
	Same     int         // rows that say what the gym knows already
	Rejected []Rejection // at most one for a row, in the order of lines
	Ignored  []string    // headings of columns that mean nothing to us
	Notes    []string    // what is kept and worth a look, a sentence each
	Changes  []gym.Change
}

// Rejection is a row that cannot be kept, and why.
type Rejection struct {
	Line   int    // of the file, from 1
	Column string // as the sheet calls it; of the first fault
	Reason string // all the faults, and what would mend them
}

// over fills in what the gym says about an option that is not set.
func (o Options) over(book *gym.Book) Options {
	if o.gymUnit = book.Settings.Unit; !o.gymUnit.Valid() {
		o.gymUnit = mass.KG
	}
	if !o.Unit.Valid() {
		o.Unit = o.gymUnit
	}
	return o
}

// verdict is what a row comes to.
type verdict int

const (
	added verdict = iota
	updated
	same
)

// notesLimit keeps a long sheet of one mistake from burying the rest.
const notesLimit = 50

// keep files the notes of a row that is kept.
func (p *Proposal) keep(l *line) {
	for _, n := range l.notes {
		switch {
		case len(p.Notes) < notesLimit:
			p.Notes = append(p.Notes, fmt.Sprintf("line %d: %s", l.line, n))
		case len(p.Notes) == notesLimit:
			p.Notes = append(p.Notes, "and more of the kind")
		}
	}
}

// of hands the rows that are not blank to read, and files what comes of them.
func (p *Proposal) of(ctx context.Context, rows []row, o Options, read func(row) (verdict, []gym.Change, *faults)) (Proposal, error) {
	const stride = 256
	for i, r := range rows {
		if i%stride == 0 {
			if err := ctx.Err(); err != nil {
				return Proposal{}, err
			}
			o.tell(i, len(rows))
		}
		if r.blank() {
			continue
		}
		p.Read++
		v, changes, found := read(r)
		if found.any() {
			p.Rejected = append(p.Rejected, found.rejection(r.line))
			continue
		}
		p.count(v)
		p.Changes = append(p.Changes, changes...)
	}
	o.tell(len(rows), len(rows))
	return *p, nil
}

// withdraw takes rows back that a later one put in doubt: each is known by the place
// of its one change.
func (p *Proposal) withdraw(rows map[int]Rejection) {
	if len(rows) == 0 {
		return
	}
	kept := p.Changes[:0]
	for i, c := range p.Changes {
		if _, gone := rows[i]; !gone {
			kept = append(kept, c)
		}
	}
	p.Changes, p.Added = kept, p.Added-len(rows)
	for _, r := range rows {
		p.Rejected = append(p.Rejected, r)
		p.Notes = slices.DeleteFunc(p.Notes, func(n string) bool { return strings.HasPrefix(n, fmt.Sprintf("line %d: ", r.Line)) })
	}
	slices.SortFunc(p.Rejected, func(a, b Rejection) int { return a.Line - b.Line })
}

func (o Options) tell(rows, total int) {
	if o.Progress != nil {
		o.Progress(rows, total)
	}
}

func (p *Proposal) count(v verdict) {
	switch v {
	case added:
		p.Added++
	case updated:
		p.Updated++
	default:
		p.Same++
	}
}

// faults are what is wrong with one row.
type faults struct{ all []cellFault }

type cellFault struct{ column, why string }

func (f *faults) add(column string, err error) {
	if err != nil {
		f.all = append(f.all, cellFault{column, err.Error()})
	}
}

// once is add for a cell that is read more than once.
func (f *faults) once(column string, err error) {
	for _, known := range f.all {
		if known.column == column {
			return
		}
	}
	f.add(column, err)
}

func (f *faults) any() bool { return f != nil && len(f.all) > 0 }

func (f *faults) rejection(line int) Rejection {
	r := Rejection{line, f.all[0].column, f.all[0].why}
	for _, more := range f.all[1:] {
		r.Reason += fmt.Sprintf("; and column %q: %s", more.column, more.why)
	}
	return r
}
