package exchange

import (
	"fmt"
	"strings"
	"time"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// line reads the cells of one row and gathers their faults.
type line struct {
	row
	columns columns
	epoch   day.Date
	o       Options
	known   func(name string) bool // whether the gym has an athlete of that name
	faults  faults
	notes   []string // told only if the row is kept
}

// newLine begins a row. One of a text table that is longer than the headings is
// refused: a comma that stood for a decimal point has parted a number in two.
func newLine(raw row, c columns, epoch day.Date, o Options, known func(string) bool) *line {
	l := &line{row: raw, columns: c, epoch: epoch, o: o, known: known}
	beyond := len(raw.cells)
	for beyond > 0 && blank(raw.cells[beyond-1]) {
		beyond--
	}
	if text := epoch == day.None; text && beyond > len(c.headings) {
		l.faults.add("", fmt.Errorf("it has %d cells under %d headings; put quotes round a cell with the parting mark in it, or head every column", beyond, len(c.headings)))
	}
	return l
}

// cell returns what stands in a column, and nothing for a blank cell.
func (l *line) cell(c column) string {
	i, ok := l.columns.at[c]
	if !ok {
		return ""
	}
	return l.at(i)
}

func (l *line) at(index int) string {
	if index >= len(l.cells) || blank(l.cells[index]) {
		return ""
	}
	return strings.TrimSpace(l.cells[index])
}

func (l *line) refuse(c column, format string, args ...any) {
	l.faults.add(l.columns.heading(c), fmt.Errorf(format, args...))
}

// name returns the athlete's name in one piece: first and last name apart are
// put together, and "Ash, Ann" is turned round unless somebody is called that.
func (l *line) name() string {
	name := l.written(colName)
	if name == "" {
		name = strings.TrimSpace(l.written(colFirst) + " " + l.written(colLast))
	}
	last, first, ok := strings.Cut(name, ",")
	if ok && !strings.Contains(first, ",") && !l.known(name) {
		return oneLine(first + " " + last)
	}
	return name
}

// written returns a cell of a name, in which "Na" is no blank but somebody.
func (l *line) written(c column) string {
	i, ok := l.columns.at[c]
	if !ok || i >= len(l.cells) {
		return ""
	}
	return oneLine(l.cells[i])
}

func oneLine(text string) string { return strings.Join(strings.Fields(text), " ") }

// needName is name for a row that must have one.
func (l *line) needName() string {
	name := l.name()
	if name == "" {
		l.refuse(l.columns.nameColumn(), "there is no name; write one")
	}
	return name
}

func (l *line) note(format string, args ...any) {
	l.notes = append(l.notes, fmt.Sprintf(format, args...))
}

// need returns a cell that must say something, and refuses a blank one.
func (l *line) need(c column, what string) string {
	text := l.cell(c)
	if text == "" {
		l.refuse(c, "there is no %s; write it", what)
	}
	return text
}

// date refuses a day that is years ahead: the year is a slip.
func (l *line) date(c column) day.Date {
	text := l.cell(c)
	if text == "" {
		return day.None
	}
	d, err := parseDate(text, l.o.Dates, l.epoch)
	if err == nil && d > l.o.Today.Add(366) {
		err = fmt.Errorf("%s is more than a year from now; check the year", d)
	}
	l.faults.add(l.columns.heading(c), err)
	return d
}

func (l *line) needDate() day.Date {
	l.need(colDate, "date")
	return l.date(colDate)
}

// unit is that of loads in a column that have none of their own: the heading's,
// else the row's, else the sheet's.
func (l *line) unit(index int) mass.Unit {
	if unit, ok := l.columns.units[index]; ok {
		return unit
	}
	if unit := l.ownUnit(); unit != "" {
		return unit
	}
	return l.o.Unit
}

// ownUnit is what the row's column of units says.
func (l *line) ownUnit() mass.Unit {
	text := l.cell(colUnit)
	if text == "" {
		return ""
	}
	unit, err := mass.ParseUnit(text)
	l.faults.once(l.columns.heading(colUnit), err)
	return unit
}

// load reads a mass that must be over nothing.
func (l *line) load(index int, text string, unit mass.Unit) (mass.Mass, mass.Unit) {
	m, unit, err := mass.Parse(text, unit)
	if err == nil && m == 0 {
		err = fmt.Errorf("%q is no load; leave the cell blank where nothing is known", text)
	}
	l.faults.add(strings.TrimSpace(l.columns.headings[index]), err)
	return m, unit
}

func (l *line) whole(c column, low, high int) int {
	text := l.cell(c)
	if text == "" {
		return 0
	}
	n := number(strings.TrimSuffix(text, ".0"))
	if n < low || n > high {
		l.refuse(c, "%q is not a number from %d to %d", text, low, high)
		return 0
	}
	return n
}

// void reads the void of an exported row.
func (l *line) void() *gym.Void {
	reason := l.cell(colVoid)
	if reason == "" {
		return nil
	}
	v := &gym.Void{At: l.o.Now, Reason: reason}
	if text := l.cell(colVoidAt); text != "" {
		at, err := time.Parse(time.RFC3339Nano, text)
		l.faults.add(l.columns.heading(colVoidAt), err)
		v.At = at
	}
	return v
}

// id is the row's own name if the gym knows it or it looks like one of ours; a
// sheet's "ID" may be anything.
func (l *line) id(ours func(gym.ID) bool) gym.ID {
	text := l.cell(colID)
	if ours(gym.ID(text)) {
		return gym.ID(text)
	}
	if text = strings.ToLower(text); isUUID(text) {
		return gym.ID(text)
	}
	return ""
}

// isUUID knows the textual form of RFC 9562, section 4.
func isUUID(text string) bool {
	if len(text) != 36 {
		return false
	}
	for i, r := range text {
		dash := i == 8 || i == 13 || i == 18 || i == 23
		if dash != (r == '-') || !dash && !strings.ContainsRune("0123456789abcdef", r) {
			return false
		}
	}
	return true
}

// has makes a question of a map.
func has[K comparable, V any](m map[K]V) func(K) bool {
	return func(k K) bool { _, ok := m[k]; return ok }
}
