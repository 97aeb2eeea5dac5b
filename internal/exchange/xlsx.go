package exchange

import (
	"bytes"
	"context"
	"fmt"
	"strconv"
	"strings"

	"github.com/xuri/excelize/v2"

	"windlass/internal/day"
)

// unpackLimit bounds what a workbook may unpack to: a million rows of a gym's
// log are a fifth of it.
const unpackLimit = 1 << 29

// The days before day 1 of the two ways in which workbooks count days (ISO/IEC
// 29500-1, 18.17.4.1). The first is a day early on purpose: that count has a
// 29 February 1900, so it is right from 1 March 1900 on.
var (
	epoch1900 = day.Of(1899, 12, 30)
	epoch1904 = day.Of(1904, 1, 1)
)

// parseXLSX reads every sheet of a workbook.
func parseXLSX(ctx context.Context, name string, content []byte) (sheets []sheet, err error) {
	// The file comes from anywhere, and the library that unpacks it is not ours.
	defer func() {
		if fault := recover(); fault != nil {
			sheets, err = nil, fmt.Errorf("read %q: %w: its workbook is damaged; save it again", name, ErrKind)
		}
	}()
	book, err := excelize.OpenReader(bytes.NewReader(content), excelize.Options{UnzipSizeLimit: unpackLimit})
	if err != nil {
		return nil, fmt.Errorf("read %q: %w: its workbook is damaged (%w); save it again", name, ErrKind, err)
	}
	defer book.Close()
	epoch := epoch1900
	if props, err := book.GetWorkbookProps(); err == nil && props.Date1904 != nil && *props.Date1904 {
		epoch = epoch1904
	}
	for _, title := range book.GetSheetList() {
		s := sheet{title: title, epoch: epoch}
		if s.rows, err = readSheet(ctx, book, title); err != nil {
			return nil, fmt.Errorf("read %q, sheet %q: %w", name, title, err)
		}
		sheets = append(sheets, s)
	}
	return sheets, nil
}

// readSheet takes values as they are stored, since a date or a load as it is
// shown has lost its year or its digits.
func readSheet(ctx context.Context, book *excelize.File, title string) ([]row, error) {
	stored, err := book.Rows(title)
	if err != nil {
		return nil, err
	}
	defer stored.Close()
	var shown *excelize.Rows
	if showsUnits(book) {
		if shown, err = book.Rows(title); err != nil {
			return nil, err
		}
		defer shown.Close()
	}
	var rows []row
	for line := 1; stored.Next(); line++ {
		if err := ctx.Err(); err != nil {
			return nil, err
		}
		cells, err := readCells(stored, shown)
		if err != nil {
			return nil, err
		}
		// A stray cell far down a sheet has a million blank rows above it.
		if r := (row{line: line, cells: cells}); !r.blank() {
			rows = append(rows, r)
		}
	}
	return rows, stored.Error()
}

func readCells(stored, shown *excelize.Rows) ([]string, error) {
	cells, err := stored.Columns(excelize.Options{RawCellValue: true})
	if err != nil {
		return nil, err
	}
	var looks []string
	if shown != nil && shown.Next() {
		if looks, err = shown.Columns(); err != nil {
			return nil, err
		}
	}
	for i, c := range cells {
		cells[i] = tidyNumber(c)
		if i < len(looks) && looks[i] != c {
			cells[i] += shownUnit(looks[i])
		}
	}
	return cells, nil
}

// tidyNumber takes away what binary floats add to decimal digits, as in
// 102.49999999999999, and leaves any other text alone.
func tidyNumber(text string) string {
	if len(text) < 12 && !strings.ContainsAny(text, "eE") {
		return text
	}
	x, err := strconv.ParseFloat(text, 64)
	if err != nil || !strings.ContainsAny(text, ".eE") {
		return text
	}
	fixed := strconv.FormatFloat(x, 'f', 6, 64)
	return strings.TrimSuffix(strings.TrimRight(fixed, "0"), ".")
}

// showsUnits reports whether some cell's format writes a unit behind a number
// that is stored without one, as in 0" lb".
func showsUnits(book *excelize.File) bool {
	if book.Styles == nil || book.Styles.NumFmts == nil {
		return false
	}
	for _, format := range book.Styles.NumFmts.NumFmt {
		if format != nil && shownUnit(format.FormatCode) != "" {
			return true
		}
	}
	return false
}

// shownUnit returns the unit that a number is shown with, or nothing.
func shownUnit(text string) string {
	for word := range strings.FieldsFuncSeq(strings.ToLower(text), func(r rune) bool { return r < 'a' || r > 'z' }) {
		switch word {
		case "kg", "kgs":
			return " kg"
		case "lb", "lbs":
			return " lb"
		}
	}
	return ""
}
