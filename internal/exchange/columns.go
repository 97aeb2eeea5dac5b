package exchange

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"windlass/internal/gym"
	"windlass/internal/mass"
)

// ErrColumns marks a table whose columns do not say enough.
var ErrColumns = errors.New("the table lacks a column")

// column is what a column of a sheet means to us.
type column string

// The columns of all three kinds of sheet.
const (
	colID       column = "ID"
	colName     column = "name"
	colFirst    column = "first name"
	colLast     column = "last name"
	colStandard column = "load standard"
	colStatus   column = "status"
	colUnit     column = "unit"
	colTrack    column = "track"
	colJoined   column = "joined"
	colDays     column = "days"
	colWant     column = "days a week"
	colDisplay  column = "display name"
	colShow     column = "on the wall"
	colBackOn   column = "back on"
	colNotes    column = "notes"
	colDate     column = "date"
	colLift     column = "lift"
	colMovement column = "movement"
	colReps     column = "reps"
	colLoad     column = "load"
	colAmount   column = "amount"
	colSource   column = "source"
	colOutcome  column = "outcome"
	colWorkout  column = "workout"
	colScore    column = "score"
	colVoid     column = "void"
	colVoidAt   column = "void at"
)

// spellings are the ways to head a column, run together, the plainest first.
type spellings map[column][]string

// find returns the column that a key heads, and how plainly it does: 0 is best.
func (s spellings) find(key string) (c column, rank int, ok bool) {
	for c, names := range s {
		if rank := slices.Index(names, key); rank >= 0 {
			return c, rank, true
		}
	}
	return "", 0, false
}

var (
	nameSpellings  = []string{"name", "names", "fullname", "athlete", "athletes", "athletename", "lifter", "lifters", "liftername", "member", "membername", "who"}
	firstSpellings = []string{"firstname", "first", "forename", "givenname"}
	lastSpellings  = []string{"lastname", "last", "surname", "familyname"}
	dateSpellings  = []string{"date", "day", "on", "when", "testdate", "tested", "testedon", "datetested", "performed"}
	loadSpellings  = []string{"load", "weight", "mass", "lifted", ""} // a column headed "kg" alone
	repsSpellings  = []string{"reps", "rep", "repetitions", "repcount", "totalreps", "rm", "repmax"}

	rosterSpellings = spellings{
		colID: {"id", "athleteid"}, colName: nameSpellings, colFirst: firstSpellings, colLast: lastSpellings,
		colStandard: {"standard", "loadstandard", "standardloads", "mw", "morw", "sex", "gender"},
		colStatus:   {"status"},
		colUnit:     {"unit", "units", "reads"},
		colTrack:    {"track", "programme", "program"},
		colJoined:   {"joined", "joinedon", "joindate", "since", "membersince", "start", "startdate", "started"},
		colDays:     {"days", "trainingdays", "free", "freedays", "weekdays", "cancome"},
		colWant:     {"daysaweek", "daysperweek", "daysweek", "dayswanted", "wanteddays", "want", "sessionsaweek", "sessionsperweek"},
		colDisplay:  {"displayname", "display", "wallname", "nickname", "nick"},
		colShow:     {"onthewall", "onwall", "wall", "wallshows", "show"},
		colBackOn:   {"backon", "cameback"},
		colNotes:    {"notes", "note", "remarks", "comments"},
		colDate:     {"date", "on", "when", "testdate", "tested", "testedon", "datetested"},
	}
	resultSpellings = spellings{
		colID: {"id", "resultid"}, colName: nameSpellings, colFirst: firstSpellings, colLast: lastSpellings,
		colDate: dateSpellings, colLift: {"lift", "lifts", "exercise"}, colReps: repsSpellings,
		colLoad: append([]string{"result", "set", "effort"}, loadSpellings...), colUnit: {"unit", "units"},
		colAmount: {"amount", "value", "measure"}, colSource: {"source", "how", "from"},
		colVoid: {"void", "voided", "voidreason"}, colVoidAt: {"voidat", "voidedat"},
	}
	boutSpellings = spellings{
		colID: {"id", "boutid"}, colName: nameSpellings, colFirst: firstSpellings, colLast: lastSpellings,
		colDate: dateSpellings, colMovement: {"movement", "movements", "exercise"}, colReps: repsSpellings,
		colLoad: loadSpellings, colUnit: {"unit", "units"},
		colOutcome: {"outcome", "result", "how", "went", "howitwent"},
		colWorkout: {"workout", "session", "conditioning"}, colScore: {"score", "time", "rounds"},
		colVoid: {"void", "voided", "voidreason"}, colVoidAt: {"voidat", "voidedat"},
	}
)

// columns says what stands where in a table.
type columns struct {
	at       map[column]int
	ranks    map[column]int    // how plainly the heading says so
	units    map[int]mass.Unit // of columns whose heading has one
	headings []string          // as they are written
	line     int               // of the headings
	reps     int               // of a load column headed "5RM"
	maxes    []maxColumn
	ignored  []string
	unknown  []Rejection // columns of rep maxes of lifts that nobody knows
	twice    error       // two columns that mean the same
}

// maxColumn is a roster's column of one lift's rep maxes.
type maxColumn struct {
	index int
	lift  gym.Lift
	reps  int  // of every cell
	given bool // the heading said so; else a cell may, as in 5x100
}

func (c columns) has(col column) bool { _, ok := c.at[col]; return ok }

// heading is how the sheet itself calls a column.
func (c columns) heading(col column) string {
	if i, ok := c.at[col]; ok {
		return strings.TrimSpace(c.headings[i])
	}
	return string(col)
}

// nameColumn is where a fault of the name is shown.
func (c columns) nameColumn() column {
	for _, col := range []column{colName, colFirst, colLast} {
		if c.has(col) {
			return col
		}
	}
	return colName
}

func (c columns) named() bool { return c.has(colName) || c.has(colFirst) || c.has(colLast) }

// headingRows is how far down the headings may stand, under a title and a date.
const headingRows = 12

// place finds the headings of a sheet: of the rows at its beginning for which
// enough is true, the one that says most, since a title may look like a heading.
// It returns the rows under them.
func place(s sheet, all spellings, enough func(columns) bool, lifts *liftFinder) (best columns, rows []row, found bool, twice error) {
	for i, r := range s.rows[:min(len(s.rows), headingRows)] {
		c := columns{at: map[column]int{}, ranks: map[column]int{}, units: map[int]mass.Unit{}, headings: r.cells, line: r.line}
		for index := range r.cells {
			c.add(index, all, lifts)
		}
		if enough(c) && (!found || c.said() > best.said()) {
			best, rows, found = c, s.rows[i+1:], true
		}
	}
	return best, rows, found, best.twice
}

// said is how many columns mean something.
func (c columns) said() int { return len(c.at) + len(c.maxes) }

// add says what one column means.
func (c *columns) add(index int, all spellings, lifts *liftFinder) {
	text := strings.TrimSpace(c.headings[index])
	if text == "" {
		return
	}
	h := readHeading(text)
	if h.unit != "" {
		c.units[index] = h.unit
	}
	col, rank, ok := all.find(h.key())
	switch {
	case ok && (h.reps == 0 || col == colLoad):
		c.claim(col, index, rank, h.reps)
	case lifts != nil:
		c.addMax(index, h, lifts)
	default:
		c.ignored = append(c.ignored, text)
	}
}

// claim gives a meaning to a column. Of two that want the same, the plainer
// heading has it, as "Name" before "Member".
func (c *columns) claim(col column, index, rank, reps int) {
	other, taken := c.at[col]
	switch {
	case taken && rank == c.ranks[col]:
		c.same(index, other)
		return
	case taken && rank > c.ranks[col]:
		c.ignored = append(c.ignored, strings.TrimSpace(c.headings[index]))
		return
	case taken:
		c.ignored = append(c.ignored, strings.TrimSpace(c.headings[other]))
	}
	c.at[col], c.ranks[col] = index, rank
	if col == colLoad {
		c.reps = reps
	}
}

func (c *columns) addMax(index int, h heading, lifts *liftFinder) {
	text := strings.TrimSpace(c.headings[index])
	lift, err := lifts.heading(h)
	switch {
	case err != nil && h.reps == 0:
		c.ignored = append(c.ignored, text)
		return
	case err != nil:
		c.unknown = append(c.unknown, Rejection{c.line, text, err.Error()})
		return
	}
	reps := max(1, h.reps)
	for _, m := range c.maxes {
		if m.lift.Key == lift.Key && m.reps == reps {
			c.same(index, m.index)
			return
		}
	}
	c.maxes = append(c.maxes, maxColumn{index, lift, reps, h.reps > 0})
}

func (c *columns) same(index, other int) {
	c.twice = errors.Join(c.twice, fmt.Errorf("columns %q and %q say the same; take one out", c.headings[other], c.headings[index]))
}

// needs are the columns without which a list says nothing.
type needs []column

func (n needs) met(c columns) bool { return len(n.lackedBy(c)) == 0 }

// lackedBy returns those that are not there. A name may stand in two columns, and
// an amount instead of a load.
func (n needs) lackedBy(c columns) []string {
	var lacked []string
	for _, col := range n {
		switch {
		case c.has(col), col == colName && c.named(), col == colLoad && c.has(colAmount):
		case col == colName:
			lacked = append(lacked, "athlete")
		default:
			lacked = append(lacked, string(col))
		}
	}
	return lacked
}

// lacking is what the best row of headings in a file lacks.
func (n needs) lacking(f *File, all spellings) string {
	var best columns
	for _, s := range f.sheets {
		c, _, found, _ := place(s, all, func(c columns) bool { return c.said() > 0 }, nil)
		if found && c.said() > best.said() {
			best = c
		}
	}
	lacked := n.lackedBy(best)
	last := len(lacked) - 1
	if last < 1 {
		return strings.Join(lacked, "")
	}
	return strings.Join(lacked[:last], ", ") + " and " + lacked[last]
}

// missing says which column a table lacks and which it has.
func (f *File) missing(what, mend string) error {
	var found []string
	for _, s := range f.sheets {
		for _, r := range s.rows {
			if !r.blank() {
				found = append(found, slices.DeleteFunc(slices.Clone(r.cells), blank)...)
				break
			}
		}
	}
	const most = 20
	if len(found) > most {
		found = append(found[:most], "…")
	}
	if len(found) == 0 {
		return fmt.Errorf("read %q: %w for %s; it has no rows at all", f.name, ErrColumns, what)
	}
	return fmt.Errorf("read %q: %w for %s; columns found: %s; %s", f.name, ErrColumns, what, strings.Join(found, ", "), mend)
}
