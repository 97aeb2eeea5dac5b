package exchange

import (
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"strings"
)

// The grammar of a text table: RFC 4180 with any of three marks between cells.
//
//	table = [ "sep=" mark end ] row { end row } [ end ]
//	row   = cell { mark cell }
//	mark  = "," | ";" | tab            the same in the whole file
//	cell  = { sign } | quote { sign | mark | end | quote quote } quote
//	end   = "\n" | "\r\n" | "\r"
//
// Without "sep=", the mark is the one that stands most often outside quotes in
// the first line that has any.

// marks in the order in which one wins over another that stands as often.
const marks = "\t;,"

// parseCSV reads a text table into rows that know their line.
func parseCSV(name, text string) ([]row, error) {
	mark, rest, skipped := markOf(text)
	reader := csv.NewReader(strings.NewReader(rest))
	reader.Comma = mark
	reader.FieldsPerRecord = -1 // a row may be short; missing cells are blank
	var rows []row
	for {
		cells, err := reader.Read()
		if errors.Is(err, io.EOF) {
			return rows, nil
		}
		if err != nil {
			return nil, csvFault(name, err, skipped)
		}
		line, _ := reader.FieldPos(0)
		rows = append(rows, row{line: line + skipped, cells: unguard(cells)})
	}
}

func csvFault(name string, err error, skipped int) error {
	var p *csv.ParseError
	if errors.As(err, &p) {
		return fmt.Errorf("read %q, line %d: %w; a quote inside a quoted cell is written twice, and a cell that begins with one ends with one", name, p.Line+skipped, p.Err)
	}
	return fmt.Errorf("read %q: %w", name, err)
}

// markOf returns the mark between cells and the text without a "sep=" line, and
// how many lines that took away.
func markOf(text string) (mark rune, rest string, skipped int) {
	first, after, _ := strings.Cut(text, "\n")
	if given, ok := strings.CutPrefix(strings.ToLower(first), "sep="); ok && len(given) == 1 && strings.Contains(marks, given) {
		return rune(given[0]), after, 1
	}
	for line := range strings.SplitSeq(text, "\n") {
		if mark, ok := commonest(line); ok {
			return mark, text, 0
		}
	}
	return ',', text, 0
}

func commonest(line string) (mark rune, found bool) {
	counts := map[rune]int{}
	quoted := false
	for _, r := range line {
		if r == '"' {
			quoted = !quoted
		} else if !quoted {
			counts[r]++
		}
	}
	best := 0
	for _, m := range marks {
		if counts[m] > best {
			mark, best = m, counts[m]
		}
	}
	return mark, best > 0
}
