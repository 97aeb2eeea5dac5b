package desk

import (
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"

	"windlass/internal/exchange"
)

// Export is work that writes what the gym's file said when it was asked for, and
// returns the names of the files it made. It does not touch the desk, so it can
// run beside it.
type Export func(context.Context) ([]string, error)

// ExportTables writes everything as one CSV a table into a folder. It refuses a
// folder in which one of the files is there already.
func (d *Desk) ExportTables(folder string) Export {
	tables := exchange.Tables(&d.book, d.Today())
	return func(ctx context.Context) ([]string, error) { return exchange.WriteCSVs(ctx, folder, tables) }
}

// ExportWorkbook writes everything as one XLSX file, which must not be there yet.
func (d *Desk) ExportWorkbook(path string) Export {
	tables := exchange.Tables(&d.book, d.Today())
	return func(ctx context.Context) ([]string, error) {
		if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
			return nil, fmt.Errorf("write workbook %q: %w", path, err)
		}
		file, err := os.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
		if err != nil {
			return nil, fmt.Errorf("write workbook %q: %w; choose another name", path, err)
		}
		if err := errors.Join(exchange.WriteXLSX(ctx, file, tables), file.Close()); err != nil {
			return nil, errors.Join(err, os.Remove(path))
		}
		return []string{path}, nil
	}
}
