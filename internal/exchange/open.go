package exchange

import (
	"context"
	"fmt"
	"io"

	"windlass/internal/day"
)

// sizeLimit bounds a file; a hundred thousand rows are a tenth of it.
const sizeLimit = 128 << 20

// File is a coach's file that has been read and not yet understood.
type File struct {
	name   string
	sheets []sheet
}

// sheet is one table: all of a CSV, or one sheet of a workbook.
type sheet struct {
	title string
	rows  []row
	epoch day.Date // day 0 of dates that are stored as numbers; none in a CSV
}

// row is one row as it stands in the file.
type row struct {
	line  int // from 1
	cells []string
}

func (r row) blank() bool {
	for _, c := range r.cells {
		if !blank(c) {
			return false
		}
	}
	return true
}

// Open reads a table of any of the kinds that the package knows. The name is for
// messages. The error wraps ErrKind for a file that is no table and says what it
// is instead.
func Open(ctx context.Context, name string, from io.Reader) (*File, error) {
	content, err := io.ReadAll(io.LimitReader(from, sizeLimit+1))
	if err != nil {
		return nil, fmt.Errorf("read %q: %w", name, err)
	}
	if len(content) > sizeLimit {
		return nil, fmt.Errorf("read %q: it has over %d MB; split it", name, sizeLimit>>20)
	}
	if err := ctx.Err(); err != nil {
		return nil, err
	}
	kind, err := sniff(name, content)
	if err != nil {
		return nil, err
	}
	if kind == workbook {
		sheets, err := parseXLSX(ctx, name, content)
		if err != nil {
			return nil, err
		}
		return &File{name, sheets}, nil
	}
	text, err := decode(name, content)
	if err != nil {
		return nil, err
	}
	rows, err := parseCSV(name, text)
	if err != nil {
		return nil, err
	}
	return &File{name, []sheet{{rows: rows}}}, nil
}
