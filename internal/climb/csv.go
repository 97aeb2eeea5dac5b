package climb

import (
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"strconv"
	"strings"
	"unicode/utf8"

	"windlass/internal/gym"
)

// The text of a climb, one rung a line, under a header that says which column
// is which. Columns are separated by commas, semicolons or tabs, the same in
// every line; a byte order mark, spaces round a field and empty lines do no
// harm. With semicolons or tabs a percentage may have a decimal comma.
//
//	file    = header { rung }
//	header  = "at" "until" "percent" "reps" "zone", in any order and case
//	rung    = time time percent reps zone
//	time    = minutes ":" seconds | seconds      seconds after a colon: 00 to 59
//	percent = digits [ "." digits ] [ "%" ]
//	reps    = digits | "day" | ""                 the latter two: the day's rep count
//	zone    = "light" | "working" | "top"         in any case
const header = "at,until,percent,reps,zone"

var columns = strings.Split(header, ",")

// maxFile is more than any climb takes.
const maxFile = 1 << 20

// ReadCSV reads a climb and gives it a name. The heavy line is [HeavyLine] and
// the ceiling [Ceiling], or the last percentage where that is higher. Times and
// percentages are kept exactly as they are written. The error wraps [ErrPlan]
// and names the line or the rung, the fault and the mend.
func ReadCSV(name string, from io.Reader) (gym.ClimbPlan, error) {
	rows, comma, err := table(from)
	if err != nil {
		return gym.ClimbPlan{}, fmt.Errorf("read climb %q: %w", name, err)
	}
	plan := gym.ClimbPlan{Name: name, HeavyLine: HeavyLine, Ceiling: Ceiling}
	for _, row := range rows {
		rung, err := row.rung(comma)
		if err != nil {
			return gym.ClimbPlan{}, fmt.Errorf("read climb %q: line %d: %w", name, row.line, err)
		}
		plan.Rungs = append(plan.Rungs, rung)
		plan.Ceiling = min(MaxCeiling, max(plan.Ceiling, rung.Percent))
	}
	return plan, asError(name, Check(plan))
}

// row is the fields of one line under their columns.
type row struct {
	line   int
	fields map[string]string
}

// table splits a text into rows and says what separated them.
func table(from io.Reader) ([]row, rune, error) {
	text, err := io.ReadAll(io.LimitReader(from, maxFile+1))
	if err != nil {
		return nil, 0, err
	}
	if len(text) > maxFile {
		return nil, 0, fmt.Errorf("%w: the file is over %d bytes; is it the right one?", ErrPlan, maxFile)
	}
	if !utf8.Valid(text) || bytes.ContainsRune(text, 0) {
		return nil, 0, fmt.Errorf("%w: the file is no UTF-8 text; save it as CSV in UTF-8, and begin with %s", ErrPlan, header)
	}
	text = bytes.TrimPrefix(text, []byte("\ufeff"))
	comma := separator(text)
	reader := csv.NewReader(bytes.NewReader(text))
	reader.Comma, reader.FieldsPerRecord, reader.TrimLeadingSpace = comma, -1, comma != '\t'
	head, err := reader.Read()
	if err != nil {
		return nil, 0, fmt.Errorf("%w: the header cannot be read (%s); begin with %s", ErrPlan, err.Error(), header)
	}
	order, err := readHeader(head)
	if err != nil {
		return nil, 0, err
	}
	rows, err := rowsOf(reader, order)
	return rows, comma, err
}

// separator guesses from the first line.
func separator(text []byte) rune {
	first, _, _ := bytes.Cut(text, []byte("\n"))
	switch {
	case bytes.ContainsRune(first, ';'):
		return ';'
	case bytes.ContainsRune(first, '\t'):
		return '\t'
	}
	return ','
}

// readHeader returns the names of the columns: every one once and no other.
func readHeader(head []string) ([]string, error) {
	seen := map[string]bool{}
	var order []string
	for _, field := range head {
		name := strings.ToLower(strings.TrimSpace(field))
		seen[name] = true
		order = append(order, name)
	}
	for _, name := range columns {
		if !seen[name] {
			return nil, fmt.Errorf("%w: the header has no column %q; columns found: %s", ErrPlan, name, strings.Join(order, ", "))
		}
	}
	if len(order) != len(columns) {
		return nil, fmt.Errorf("%w: the header has %d columns, %s; write %s", ErrPlan, len(order), strings.Join(order, ", "), header)
	}
	return order, nil
}

func rowsOf(reader *csv.Reader, order []string) ([]row, error) {
	var rows []row
	for {
		fields, err := reader.Read()
		if errors.Is(err, io.EOF) {
			return rows, nil
		}
		if err != nil {
			return nil, fmt.Errorf("%w: %s", ErrPlan, err.Error())
		}
		line, _ := reader.FieldPos(0)
		if strings.TrimSpace(strings.Join(fields, "")) == "" {
			continue
		}
		if len(fields) != len(order) {
			return nil, fmt.Errorf("%w: line %d has %d fields; write %d: %s", ErrPlan, line, len(fields), len(order), strings.Join(order, ", "))
		}
		r := row{line: line, fields: map[string]string{}}
		for i, field := range fields {
			r.fields[order[i]] = strings.TrimSpace(field)
		}
		rows = append(rows, r)
	}
}

// WriteCSV writes the rungs of a climb as [ReadCSV] reads them.
func WriteCSV(to io.Writer, plan gym.ClimbPlan) error {
	var b strings.Builder
	b.WriteString(header + "\n")
	for _, r := range plan.Rungs {
		reps := "day"
		if r.Reps != 0 {
			reps = strconv.Itoa(r.Reps)
		}
		percent := strconv.FormatFloat(r.Percent, 'f', -1, 64)
		fmt.Fprintf(&b, "%s,%s,%s,%s,%s\n", Time(r.At), Time(r.Until), percent, reps, r.Zone)
	}
	if _, err := io.WriteString(to, b.String()); err != nil {
		return fmt.Errorf("write climb %q: %w", plan.Name, err)
	}
	return nil
}
