package desk

import (
	"context"
	"encoding/binary"
	"fmt"
	"io"
	"math/rand/v2"
	"path/filepath"
	"strconv"
	"strings"

	"windlass/internal/exchange"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// ImportKind says what a sheet is about.
type ImportKind int

// The kinds of sheet.
const (
	RosterSheet ImportKind = iota
	ResultSheet
	BoutSheet
)

// String names the kind.
func (k ImportKind) String() string {
	return [...]string{"roster", "lift results", "conditioning bouts"}[k]
}

// ImportKinds are all of them, in the order of their numbers.
func ImportKinds() []ImportKind { return []ImportKind{RosterSheet, ResultSheet, BoutSheet} }

// Import is a sheet on its way in: read beside the desk, looked at, then accepted
// or not.
type Import struct {
	Kind     ImportKind
	Name     string // of the file
	Proposal exchange.Proposal

	book   gym.Book
	landed int // long steps that the book has; no other change comes in while a coach looks at a sheet
	o      exchange.Options
	lines  []ImportLine // what the proposal comes to
}

// ImportAs is what the coach says of a sheet that the sheet may not say itself.
type ImportAs struct {
	Kind  ImportKind
	Unit  mass.Unit // of loads without one; empty is the gym's
	Dates exchange.DateOrder
}

// NewImport prepares the reading of a sheet against what the gym's file says now.
// [Import.Read] touches nothing of the desk, so it may run beside it.
func (d *Desk) NewImport(name string, as ImportAs) *Import {
	logs := [...]Topic{AboutResults, AboutResults, AboutBouts}[as.Kind]
	return &Import{
		Kind: as.Kind, Name: name, book: snapshot(d.book, logs), landed: d.landed,
		o: exchange.Options{Unit: as.Unit, Dates: as.Dates, Today: d.Today(), Now: d.now(), NewID: d.namer()},
	}
}

// namer names rows on another goroutine: its randomness is its own, sown from the
// desk's.
func (d *Desk) namer() func() gym.ID {
	var sown [32]byte
	_, _ = io.ReadFull(d.random, sown[:]) // as in NewID, zero bytes would do
	source, at := rand.NewChaCha8(sown), d.now()
	return func() gym.ID {
		var random [10]byte
		binary.LittleEndian.PutUint64(random[:8], source.Uint64())
		binary.LittleEndian.PutUint16(random[8:], uint16(source.Uint64()))
		return gym.NewID(at, random)
	}
}

// Read reads the sheet and fills in the proposal. It ends early when ctx does, and
// tells now and then how many rows it has read, of how many.
func (i *Import) Read(ctx context.Context, from io.Reader, progress func(rows, total int)) error {
	file, err := exchange.Open(ctx, i.Name, from)
	if err != nil {
		return err
	}
	i.o.Progress = progress
	read := [...]func(context.Context, *exchange.File, *gym.Book, exchange.Options) (exchange.Proposal, error){
		exchange.Roster, exchange.Results, exchange.Bouts,
	}[i.Kind]
	i.Proposal, err = read(ctx, file, &i.book, i.o)
	i.lines = i.lists()
	return err
}

// Says tells in one sentence what the sheet would do.
func (i *Import) Says() string {
	p := i.Proposal
	return fmt.Sprintf("%s read: %d new, %d changed, %d known already, %d refused.", count(p.Read, "row"), p.Added, p.Updated, p.Same, len(p.Rejected))
}

// AcceptImport makes what a sheet proposes in one step that undo takes back. With
// rows refused it changes nothing, unless they are to be skipped.
func (d *Desk) AcceptImport(i *Import, skipBad bool) error {
	long, err := d.BeginImport(i, skipBad)
	_, err = d.atOnce("", long, err)
	return err
}

// BeginImport is [Desk.AcceptImport] that only begins a long step, which it
// returns; a short one is made.
func (d *Desk) BeginImport(i *Import, skipBad bool) (*LongStep, error) {
	if n := len(i.Proposal.Rejected); n > 0 && !skipBad {
		return nil, fmt.Errorf("bring %q in: %s refused; mend the sheet, or choose to skip the bad rows", i.Name, wereRows(n))
	}
	if i.landed != d.landed {
		return nil, fmt.Errorf("bring %q in: what was on its way has come in since the sheet was read, and may hold the same rows; look at the sheet again", i.Name)
	}
	label, changes := "bring "+i.Name+" in", i.Proposal.Changes
	switch n := len(changes); {
	case n == 0:
		return nil, nil
	case n < d.longFrom:
		return nil, d.do(label, changes...)
	}
	return d.begin(label, changes, nil, &d.undo)
}

func wereRows(n int) string {
	if n == 1 {
		return "1 row was"
	}
	return strconv.Itoa(n) + " rows were"
}

// ImportLine says what a sheet would do for one athlete.
type ImportLine struct {
	New  bool   // the gym does not know them yet
	Name string // of the athlete
	What string // what would be known, "Back squat 1RM 200 kg, Deadlift 3RM 180 kg", the first of many; may be empty
}

// Lines tells whom the sheet is about, in its order, and what it would make known
// of each.
func (i *Import) Lines() []ImportLine { return i.lines }

// toldOf is how many things a line tells of one athlete.
const toldOf = 4

func (i *Import) lists() (lines []ImportLine) {
	names, at, more := i.naming(), map[gym.ID]int{}, map[int]int{}
	told := map[int][]string{}
	for _, change := range i.Proposal.Changes {
		athlete := names.about(change)
		if athlete == "" {
			continue
		}
		row, seen := at[athlete]
		if !seen {
			row = len(lines)
			at[athlete] = row
			lines = append(lines, ImportLine{New: !names.known[athlete], Name: names.people[athlete]})
		}
		if len(told[row]) == toldOf {
			more[row]++
		} else if what := names.learned(change); what != "" {
			told[row] = append(told[row], what)
		}
	}
	for row, what := range told {
		if n := more[row]; n > 0 {
			what = append(what, fmt.Sprintf("and %d more", n))
		}
		lines[row].What = strings.Join(what, ", ")
	}
	return lines
}

// about is the athlete of a change, nobody for one that is not about any. It notes
// the name of one that is new.
func (n importNames) about(change gym.Change) gym.ID {
	switch c := change.(type) {
	case gym.PutAthlete:
		n.people[c.Athlete.ID] = c.Athlete.Name
		return c.Athlete.ID
	case gym.AddResult:
		return c.Result.Athlete
	case gym.AddBout:
		return c.Bout.Athlete
	}
	return ""
}

// learned is what a change makes known of its athlete, in few words.
func (n importNames) learned(change gym.Change) string {
	switch c := change.(type) {
	case gym.AddResult:
		lift := n.lifts[c.Result.Lift]
		if !byLoad(lift) {
			return lift.Name + " " + ResultText(c.Result, lift.Measure)
		}
		return fmt.Sprintf("%s %dRM %s", lift.Name, c.Result.Reps, c.Result.Load.In(c.Result.Unit))
	case gym.AddBout:
		return fmt.Sprintf("%s %d × %s", n.movements[c.Bout.Movement], c.Bout.Reps, c.Bout.Load.In(c.Bout.Unit))
	}
	return ""
}

// Outcome is the table of what a sheet came to, for the coach to keep: a row for
// everything new or changed and for every row that was refused.
func (i *Import) Outcome() exchange.Table {
	t := exchange.Table{Name: "came in from " + strings.TrimSuffix(i.Name, filepath.Ext(i.Name)) + " on " + i.o.Today.String(), Header: []string{"Outcome", "Line", "Column", "What"}}
	names := i.naming()
	for _, change := range i.Proposal.Changes {
		if outcome, what := names.tell(change); what != "" {
			t.Rows = append(t.Rows, []any{outcome, nil, nil, what})
		}
	}
	for _, r := range i.Proposal.Rejected {
		t.Rows = append(t.Rows, []any{"refused", r.Line, r.Column, r.Reason})
	}
	return t
}

// importNames are the names of what an import speaks of.
type importNames struct {
	people    map[gym.ID]string
	known     map[gym.ID]bool
	lifts     map[gym.LiftKey]gym.Lift
	movements map[gym.MovementKey]string
}

func (i *Import) naming() importNames {
	n := importNames{map[gym.ID]string{}, map[gym.ID]bool{}, map[gym.LiftKey]gym.Lift{}, map[gym.MovementKey]string{}}
	for _, a := range i.book.Athletes {
		n.people[a.ID], n.known[a.ID] = a.Name, true
	}
	for _, l := range i.book.Lifts {
		n.lifts[l.Key] = l
	}
	for _, m := range i.book.Movements {
		n.movements[m.Key] = m.Name
	}
	return n
}

// tell says what a change is about; nothing for one that goes with another.
func (n importNames) tell(change gym.Change) (outcome, what string) {
	switch c := change.(type) {
	case gym.PutAthlete:
		outcome = "new"
		if n.known[c.Athlete.ID] {
			outcome = "changed"
		}
		n.people[c.Athlete.ID] = c.Athlete.Name
		return outcome, c.Athlete.Name
	case gym.AddResult:
		r := c.Result
		return "new", fmt.Sprintf("%s, %s, %s, %s", n.people[r.Athlete], n.lifts[r.Lift].Name, ResultText(r, n.lifts[r.Lift].Measure), r.On)
	case gym.AddBout:
		b := c.Bout
		return "new", fmt.Sprintf("%s, %s, %d × %s, %s, %s", n.people[b.Athlete], n.movements[b.Movement], b.Reps, b.Load.In(b.Unit), b.Outcome, b.On)
	}
	return "", ""
}

// KeepOutcome writes the outcome of an import as a CSV file into a folder and
// returns the file's name.
func (i *Import) KeepOutcome(ctx context.Context, folder string) (string, error) {
	names, err := exchange.WriteCSVs(ctx, folder, []exchange.Table{i.Outcome()})
	if err != nil {
		return "", err
	}
	return names[0], nil
}
