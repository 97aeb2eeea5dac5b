package gym

import (
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"windlass/internal/mass"
)

// The grammar of a table, over the comma-separated values of RFC 4180 in UTF-8:
//
//	table  = header { line }
//	header = every column's name once, in any order and case
//	line   = a cell for every column
//	list   = [ item { ";" item } ]
//	load   = number unit, as in "24 kg" or "53 lb"
//	piece  = load [ "×" count ], as in "24 kg × 4"
//	yes    = "yes" | "no"
//
// Spaces around a cell or an item do not count; an empty cell means "none".

// table is the entries of a file with the lines they stand on.
type table[T entry] struct {
	file    string
	entries []T
	lines   []int
}

func readTable[T entry](files fs.FS, name string, columns []string, read func(*row) T) (table[T], error) {
	t := table[T]{file: name}
	lines, err := openTable(files, name, columns)
	if err != nil {
		return t, err
	}
	seen := map[string]int{}
	for {
		r, err := lines.next()
		if errors.Is(err, io.EOF) {
			return t, nil
		}
		if err != nil {
			return t, err
		}
		e := read(r)
		t.entries, t.lines = append(t.entries, e), append(t.lines, r.line)
		err = t.errorAt(len(t.lines)-1, firstFault(r.fault, e.fault(), twiceFault(seen, e, columns[0], r.line)))
		if err != nil {
			return t, err
		}
	}
}

// twiceFault adds the key and the name of e to those seen on earlier lines.
func twiceFault(seen map[string]int, e entry, keyColumn string, line int) *fault {
	if before, ok := seen[e.slug()]; ok {
		return faultf(keyColumn, "%q stands on line %d already; write another", e.slug(), before)
	}
	if e.title() == e.slug() {
		seen[e.slug()] = line
		return nil
	}
	// A name is told from a key by its first sign, which no key has.
	name := "=" + spelling(e.title())
	if before, ok := seen[name]; ok {
		return faultf(colName, "%q stands on line %d already; write another", e.title(), before)
	}
	seen[e.slug()], seen[name] = line, line
	return nil
}

func (t table[T]) errorAt(i int, f *fault) error {
	if f == nil {
		return nil
	}
	return fmt.Errorf("read %s, line %d, column %q: %s", t.file, t.lines[i], f.field, f.why)
}

// lines goes through a file after its header.
type lines struct {
	file string
	csv  *csv.Reader
	at   map[string]int // column to its place in a line
}

func openTable(files fs.FS, name string, columns []string) (*lines, error) {
	text, err := fs.ReadFile(files, name)
	if err != nil {
		return nil, fmt.Errorf("read %s: %w", name, err)
	}
	if !utf8.Valid(text) {
		return nil, fmt.Errorf("read %s: its letters are not in UTF-8; save it as CSV in UTF-8", name)
	}
	l := &lines{file: name, csv: csv.NewReader(bytes.NewReader(bytes.TrimPrefix(text, []byte("\ufeff"))))}
	l.csv.FieldsPerRecord = -1 // next says it with the mend
	header, err := l.csv.Read()
	if errors.Is(err, io.EOF) {
		return nil, fmt.Errorf("read %s: it is empty; its first line names the columns: %s", name, strings.Join(columns, ","))
	}
	if err != nil {
		return nil, l.broken(err)
	}
	l.at, err = l.places(header, columns)
	return l, err
}

func (l *lines) places(header, columns []string) (map[string]int, error) {
	at := map[string]int{}
	for i, cell := range header {
		want := slices.IndexFunc(columns, func(c string) bool { return strings.EqualFold(c, strings.TrimSpace(cell)) })
		if want < 0 {
			return nil, fmt.Errorf("read %s, line 1, column %q: it is none of %s", l.file, cell, strings.Join(columns, ", "))
		}
		if _, twice := at[columns[want]]; twice {
			return nil, fmt.Errorf("read %s, line 1, column %q: it stands there twice; take one out", l.file, cell)
		}
		at[columns[want]] = i
	}
	for _, c := range columns {
		if _, ok := at[c]; !ok {
			return nil, fmt.Errorf("read %s, line 1, column %q: it is missing; add it", l.file, c)
		}
	}
	return at, nil
}

// next returns the next line, and io.EOF after the last.
func (l *lines) next() (*row, error) {
	cells, err := l.csv.Read()
	if errors.Is(err, io.EOF) {
		return nil, io.EOF
	}
	if err != nil {
		return nil, l.broken(err)
	}
	line, _ := l.csv.FieldPos(0)
	if len(cells) != len(l.at) {
		return nil, fmt.Errorf("read %s, line %d: it has %d cells and the first line has %d; a cell with a comma wants quotes around it",
			l.file, line, len(cells), len(l.at))
	}
	return &row{line: line, at: l.at, cells: cells}, nil
}

func (l *lines) broken(err error) error {
	var p *csv.ParseError
	if errors.As(err, &p) {
		return fmt.Errorf("read %s, line %d, character %d: %w; a quote inside a cell is written twice", l.file, p.Line, p.Column, p.Err)
	}
	return fmt.Errorf("read %s: %w", l.file, err)
}

// row reads the cells of one line and keeps the first fault it meets.
type row struct {
	line  int
	at    map[string]int
	cells []string
	fault *fault
}

func (r *row) text(column string) string {
	text := strings.TrimSpace(r.cells[r.at[column]])
	if strings.ContainsFunc(text, unicode.IsControl) {
		r.refuse(column, "%q has a line break or another sign that nobody sees; take it out", text)
	}
	return text
}

func (r *row) refuse(column, format string, args ...any) {
	r.fault = firstFault(r.fault, faultf(column, format, args...))
}

func (r *row) list(column string) []string {
	var items []string
	for item := range strings.SplitSeq(r.text(column), ";") {
		if item = strings.TrimSpace(item); item != "" {
			items = append(items, item)
		}
	}
	return items
}

func (r *row) yes(column string) bool {
	switch r.text(column) {
	case "yes":
		return true
	case "no":
		return false
	}
	r.refuse(column, "%q is not yes or no", r.text(column))
	return false
}

func (r *row) number(column string) float64 {
	text := r.text(column)
	if text == "" {
		return 0
	}
	x, err := strconv.ParseFloat(text, 64)
	if err != nil {
		r.refuse(column, "%q is not a number; write one like 0.85", text)
	}
	return x
}

func (r *row) count(column string) int {
	if r.text(column) == "" {
		return 0
	}
	return r.whole(column, r.text(column))
}

func (r *row) counts(column string) []int {
	var counts []int
	for _, item := range r.list(column) {
		counts = append(counts, r.whole(column, item))
	}
	return counts
}

func (r *row) whole(column, text string) int {
	n, err := strconv.Atoi(text)
	if err != nil {
		r.refuse(column, "%q is not a whole number; write one like 5", text)
	}
	return n
}

// load insists on a unit: a table is read in gyms that count in kg and in lb.
func (r *row) load(column, text string) (mass.Mass, mass.Unit) {
	if text == "" {
		return 0, mass.KG
	}
	m, unit, err := mass.Parse(text, mass.KG)
	if err != nil {
		r.refuse(column, "%v", err)
		return 0, mass.KG
	}
	if !hasUnit(text) {
		r.refuse(column, "%q has no unit; write one like 24 kg", text)
	}
	return m, unit
}

// piece is [row.load] with how many there are.
func (r *row) piece(column, text string) piece {
	p, err := readPiece(text, mass.KG)
	if err != nil {
		r.refuse(column, "%v", err)
		return piece{unit: mass.KG}
	}
	if p.bare {
		r.refuse(column, "%q has no unit; write one like 24 kg", text)
	}
	return p
}
