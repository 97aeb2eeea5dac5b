package main

import (
	"context"
	"errors"
	"flag"
	"fmt"
	"io"
	"io/fs"
	"os"

	"windlass/internal/desk"
	"windlass/internal/exchange"
	"windlass/internal/mass"
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

func importRoster(f *flag.FlagSet) run  { return importing(f, desk.RosterSheet) }
func importResults(f *flag.FlagSet) run { return importing(f, desk.ResultSheet) }
func importBouts(f *flag.FlagSet) run   { return importing(f, desk.BoutSheet) }

// importOptions are the flags that all imports share.
type importOptions struct {
	dry, skip   bool
	unit, dates string
}

func importing(f *flag.FlagSet, kind desk.ImportKind) run {
	var o importOptions
	f.BoolVar(&o.dry, "dry-run", false, "say what would be done and write nothing")
	f.BoolVar(&o.skip, "skip-bad", false, "leave out the rows that cannot be kept")
	f.StringVar(&o.unit, "unit", "", "`kg|lb` of loads that have none in the sheet; without it, the gym's")
	f.StringVar(&o.dates, "date-order", "", "`day-first|month-first` for dates of three numbers")
	return func(ctx context.Context, a *App, names []string) error {
		as, err := o.as(kind)
		if err != nil {
			return err
		}
		from, name, err := a.input(names[0])
		if err != nil {
			return err
		}
		defer from.Close() //nolint:errcheck // it was only read
		open := a.writing
		if o.dry {
			open = a.reading
		}
		return open(ctx, func(d *desk.Desk) error {
			i := d.NewImport(name, as)
			if err := i.Read(ctx, from, nil); err != nil {
				return err
			}
			return o.carryOut(a, d, i)
		})
	}
}

// as is what the flags say of the sheet.
func (o importOptions) as(kind desk.ImportKind) (desk.ImportAs, error) {
	as := desk.ImportAs{Kind: kind}
	var err error
	if o.unit != "" {
		if as.Unit, err = mass.ParseUnit(o.unit); err != nil {
			return as, err
		}
	}
	if o.dates != "" {
		as.Dates, err = exchange.ParseDateOrder(o.dates)
	}
	return as, err
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
	if info, err := f.Stat(); err == nil && info.IsDir() {
		return nil, name, errors.Join(fmt.Errorf("read %q: it is a folder; name a file in it", name), f.Close())
	}
	return f, name, nil
}

// plain leaves out of a file's error the name, which we have said already.
func plain(err error) error {
	var of *fs.PathError
	if errors.As(err, &of) {
		return of.Err
	}
	return err
}

// carryOut writes all that a sheet proposes or, when a row is refused, nothing.
func (o importOptions) carryOut(a *App, d *desk.Desk, i *desk.Import) error {
	p := i.Proposal
	switch {
	case p.Read == 0:
		return fmt.Errorf("read %q: it has headings and no rows; choose the file that holds the list", i.Name)
	case o.dry:
		return a.printImport(p)
	case len(p.Rejected) > 0 && !o.skip:
		if err := a.printRefused(p); err != nil {
			return err
		}
		first := p.Rejected[0]
		return fmt.Errorf("import: %d of %d rows cannot be kept and nothing was written; line %d: %s; mend them, or leave them out with -skip-bad",
			len(p.Rejected), p.Read, first.Line, first.Reason)
	}
	if err := d.AcceptImport(i, o.skip); err != nil {
		return err
	}
	return a.printImport(p)
}

// printImport answers with what became of the rows. What is worth a look has no field
// in the contract's document; beside it, it goes where all but data goes.
func (a *App) printImport(p exchange.Proposal) error {
	if a.json {
		for _, note := range p.Notes {
			_, _ = fmt.Fprintln(a.Err, note)
		}
	}
	return a.printRows(p, fmt.Sprintf("%d rows read: %d added, %d updated, %d the same, %d rejected", p.Read, p.Added, p.Updated, p.Same, len(p.Rejected)))
}

// printRefused answers for a sheet of which nothing was written: nothing was added,
// however many rows are sound. Beside the document stands the one line that refuses.
func (a *App) printRefused(p exchange.Proposal) error {
	head := fmt.Sprintf("%d rows read, nothing written: %d sound, %d rejected", p.Read, p.Added+p.Updated+p.Same, len(p.Rejected))
	p.Added, p.Updated = 0, 0
	return a.printRows(p, head)
}

func (a *App) printRows(p exchange.Proposal, head string) error {
	answer := imported{Read: p.Read, Added: p.Added, Updated: p.Updated, Same: p.Same, Rejected: []rejected{}}
	for _, r := range p.Rejected {
		answer.Rejected = append(answer.Rejected, rejected(r))
	}
	return a.print(answer, func() {
		a.say("%s\n", head)
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
