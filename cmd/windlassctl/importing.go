package main

import (
	"context"
	"flag"
	"fmt"
	"io"
	"os"

	"windlass/internal/desk"
	"windlass/internal/exchange"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/store"
)

// imported is what the import commands answer.
type imported struct {
	Read     int        `json:"read"`
	Added    int        `json:"added"`
	Updated  int        `json:"updated"`
	Same     int        `json:"same"`
	Rejected []rejected `json:"rejected"`
}

type rejected struct {
	Line   int    `json:"line"`
	Column string `json:"column"`
	Reason string `json:"reason"`
}

// reader reads one kind of sheet into a proposal.
type reader func(context.Context, *exchange.File, *gym.Book, exchange.Options) (exchange.Proposal, error)

func importRoster(f *flag.FlagSet) run  { return importing(f, exchange.Roster) }
func importResults(f *flag.FlagSet) run { return importing(f, exchange.Results) }
func importBouts(f *flag.FlagSet) run   { return importing(f, exchange.Bouts) }

// importOptions are the flags that all imports share.
type importOptions struct {
	dry, skip   bool
	unit, dates string
}

func importing(f *flag.FlagSet, read reader) run {
	var o importOptions
	f.BoolVar(&o.dry, "dry-run", false, "say what would be done and write nothing")
	f.BoolVar(&o.skip, "skip-bad", false, "leave out the rows that cannot be kept")
	f.StringVar(&o.unit, "unit", "", "`kg|lb` of loads that have none in the sheet; without it, the gym's")
	f.StringVar(&o.dates, "date-order", "", "`day-first|month-first` for dates of three numbers")
	return func(ctx context.Context, a *App, names []string) error {
		s, err := a.sheet(ctx, names[0])
		if err != nil {
			return err
		}
		if o.dry {
			return a.reading(ctx, func(d *desk.Desk) error {
				p, err := o.propose(ctx, d, s, read)
				if err != nil {
					return err
				}
				return a.printImport(p)
			})
		}
		return a.writing(ctx, func(d *desk.Desk, file *store.File) error { return o.carryOut(ctx, a, d, file, s, read) })
	}
}

// sheet is a coach's file that was read and not yet understood.
type sheet struct {
	name string
	file *exchange.File
}

// sheet reads a coach's file, or the standard input.
func (a *App) sheet(ctx context.Context, name string) (sheet, error) {
	from, name, err := a.input(name)
	if err != nil {
		return sheet{}, err
	}
	defer from.Close() //nolint:errcheck // it was only read
	file, err := exchange.Open(ctx, name, from)
	return sheet{name, file}, err
}

// input opens a file by name, and the standard input for "-".
func (a *App) input(name string) (io.ReadCloser, string, error) {
	if name == "-" {
		return io.NopCloser(a.In), "standard input", nil
	}
	f, err := os.Open(name)
	if err != nil {
		return nil, name, fmt.Errorf("read %q: %w; check the name", name, plain(err))
	}
	return f, name, nil
}

func (o importOptions) propose(ctx context.Context, d *desk.Desk, s sheet, read reader) (exchange.Proposal, error) {
	order, err := exchange.ParseDateOrder(o.dates)
	if o.dates != "" && err != nil {
		return exchange.Proposal{}, err
	}
	unit := mass.Unit("")
	if o.unit != "" {
		if unit, err = mass.ParseUnit(o.unit); err != nil {
			return exchange.Proposal{}, err
		}
	}
	p, err := read(ctx, s.file, d.Book(), exchange.Options{Unit: unit, Dates: order, Today: d.Today(), Now: d.Now(), NewID: d.NewID})
	if err == nil && p.Read == 0 {
		return p, fmt.Errorf("read %q: it has headings and no rows; choose the file that holds the list", s.name)
	}
	return p, err
}

// carryOut writes all of a proposal or, when a row is refused, nothing.
func (o importOptions) carryOut(ctx context.Context, a *App, d *desk.Desk, file *store.File, s sheet, read reader) error {
	p, err := o.propose(ctx, d, s, read)
	if err != nil {
		return err
	}
	if len(p.Rejected) > 0 && !o.skip {
		if err := a.printImport(p); err != nil {
			return err
		}
		first := p.Rejected[0]
		return fmt.Errorf("import: %d of %d rows cannot be kept and nothing was written; line %d: %s; mend them, or leave them out with -skip-bad",
			len(p.Rejected), p.Read, first.Line, first.Reason)
	}
	if err := file.Write(ctx, p.Changes...); err != nil {
		return err
	}
	return a.printImport(p)
}

func (a *App) printImport(p exchange.Proposal) error {
	answer := imported{Read: p.Read, Added: p.Added, Updated: p.Updated, Same: p.Same, Rejected: []rejected{}}
	for _, r := range p.Rejected {
		answer.Rejected = append(answer.Rejected, rejected(r))
	}
	return a.print(answer, func() {
		a.say("%d rows read: %d added, %d updated, %d the same, %d rejected\n", p.Read, p.Added, p.Updated, p.Same, len(p.Rejected))
		for _, r := range p.Rejected {
			a.say("line %d, %s: %s\n", r.Line, columnOr(r.Column), r.Reason)
		}
		for _, heading := range p.Ignored {
			a.say("column %q was not read\n", heading)
		}
		for _, note := range p.Notes {
			a.say("%s\n", note)
		}
	})
}

func columnOr(column string) string {
	if column == "" {
		return "the row"
	}
	return column
}
