package exchange

import (
	"context"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strconv"
	"strings"

	"github.com/xuri/excelize/v2"
)

// WriteCSVs writes each table as a file of the folder, which it makes when it is
// not there, and returns their names. The files are RFC 4180 in UTF-8, and no
// cell in them is a formula to a spreadsheet. A file that is there already is
// refused (fs.ErrExist); after an error nothing has been written.
func WriteCSVs(ctx context.Context, folder string, tables []Table) (names []string, err error) {
	for _, t := range tables {
		name := filepath.Join(folder, fileName(t))
		if _, err := os.Lstat(name); err == nil {
			return nil, fmt.Errorf("write %q: %w; choose an empty folder", name, fs.ErrExist)
		}
		names = append(names, name)
	}
	if err := os.MkdirAll(folder, 0o755); err != nil {
		return nil, fmt.Errorf("write into %q: %w; choose another folder", folder, err)
	}
	var made []string
	defer func() {
		if err != nil {
			for _, name := range made {
				err = errors.Join(err, os.Remove(name))
			}
		}
	}()
	for i, t := range tables {
		if err := writeFile(ctx, names[i], t); err != nil {
			return nil, fmt.Errorf("write into %q: %w; choose another folder", folder, err)
		}
		made = append(made, names[i])
	}
	return names, nil
}

func fileName(t Table) string { return strings.ReplaceAll(t.Name, " ", "-") + ".csv" }

// writeFile leaves nothing behind that it could not finish, and what is not its
// own as it is.
func writeFile(ctx context.Context, name string, t Table) error {
	file, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
	if err != nil {
		return err
	}
	if err := errors.Join(WriteCSV(ctx, file, t), file.Close()); err != nil {
		return errors.Join(err, os.Remove(name))
	}
	return nil
}

// WriteCSV writes one table under the rules of [WriteCSVs].
func WriteCSV(ctx context.Context, to io.Writer, t Table) error {
	w := csv.NewWriter(to)
	w.UseCRLF = true
	if err := w.Write(t.Header); err != nil {
		return err
	}
	cells := make([]string, len(t.Header))
	for _, row := range t.Rows {
		if err := ctx.Err(); err != nil {
			return err
		}
		for i, v := range row {
			cells[i] = csvCell(v)
		}
		if err := w.Write(cells); err != nil {
			return err
		}
	}
	w.Flush()
	return w.Error()
}

func csvCell(v any) string {
	switch v := v.(type) {
	case nil:
		return ""
	case string:
		return guard(v)
	case float64:
		return strconv.FormatFloat(v, 'f', -1, 64)
	}
	return fmt.Sprint(v)
}

// WriteXLSX writes the tables as sheets of one workbook. Texts are texts there,
// whatever they begin with, and numbers are numbers.
func WriteXLSX(ctx context.Context, to io.Writer, tables []Table) error {
	book := excelize.NewFile()
	defer book.Close()
	bold, err := book.NewStyle(&excelize.Style{Font: &excelize.Font{Bold: true}})
	if err != nil {
		return fmt.Errorf("write workbook: %w", err)
	}
	for i, t := range tables {
		if err := addSheet(ctx, book, i, t, bold); err != nil {
			return fmt.Errorf("write sheet %q: %w", t.Name, err)
		}
	}
	if err := book.Write(to); err != nil {
		return fmt.Errorf("write workbook: %w", err)
	}
	return nil
}

func addSheet(ctx context.Context, book *excelize.File, index int, t Table, bold int) error {
	if index == 0 { // a new workbook has one sheet
		if err := book.SetSheetName(book.GetSheetName(0), t.Name); err != nil {
			return err
		}
	} else if _, err := book.NewSheet(t.Name); err != nil {
		return err
	}
	w, err := book.NewStreamWriter(t.Name)
	if err != nil {
		return err
	}
	const width = 18 // characters: a date, a name
	err = errors.Join(
		w.SetColWidth(1, max(1, len(t.Header)), width),
		w.SetPanes(&excelize.Panes{Freeze: true, YSplit: 1, TopLeftCell: "A2", ActivePane: "bottomLeft"}),
		w.SetRow("A1", headings(t.Header, bold)))
	for i := 0; err == nil && i < len(t.Rows); i++ {
		err = errors.Join(ctx.Err(), w.SetRow("A"+strconv.Itoa(i+2), t.Rows[i]))
	}
	return errors.Join(err, w.Flush())
}

func headings(texts []string, style int) []any {
	cells := make([]any, len(texts))
	for i, text := range texts {
		cells[i] = excelize.Cell{Value: text, StyleID: style}
	}
	return cells
}
