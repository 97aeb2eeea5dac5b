package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"windlass/ui/look"
)

// DayKind is how a day of a [WeekGrid] is drawn.
type DayKind uint8

// The kinds of day.
const (
	RestDay DayKind = iota
	RecoveryDay
	MainDay
)

// WeekCell is what stands in one day of one week.
type WeekCell struct {
	Title  string       // "Back squat"
	Count  string       // "5RM"
	Sub    string       // "EMOM 12 min"
	Kind   DayKind      // how much it weighs
	Shape  Shape        // the region, before the title
	Tone   look.Meaning // of the shape; the zero value is look.Muted
	Breach string       // which rule is broken, for the tip; "" is none
	Done   bool         // trained already: it stays as it is
}

// WeekTitle names a week beside its row.
type WeekTitle struct {
	Title string // "Week 1"
	Sub   string // "2 March"
	Now   bool   // the present week
}

// Spot is a day of a week, both counted from 0.
type Spot struct{ Week, Day int }

// WeekGrid is a grid of weeks downwards by days across, worked by keyboard and
// pointer. It keeps no plan: it shows what Cell says and tells what the coach
// asks for; call Refresh when the plan changed.
type WeekGrid struct {
	widget.BaseWidget

	// OnCursor hears that the coach moved the cursor.
	OnCursor func(Spot)
	// OnOpen hears Return and a double click.
	OnOpen func(Spot)
	// OnMove hears that a day was dragged to another, or moved with Ctrl and an
	// arrow; copied is a drag with Ctrl held.
	OnMove func(from, to Spot, copied bool)
	// OnCopy, OnCut, OnPaste and OnDelete hear the usual keys; what they mean is
	// the Selection.
	OnCopy, OnCut, OnPaste, OnDelete func()
	// OnKey is offered every key before the grid is.
	OnKey func(key *fyne.KeyEvent) (used bool)

	days    []string
	weeks   []WeekTitle
	cell    func(Spot) WeekCell
	cursor  Spot
	anchor  Spot // the other corner of the selection
	top     int
	over    Spot
	drag    Spot // where a dragged day would land
	pulled  bool // a day is being dragged
	rest    float32
	focused bool
	least   float32   // the least height of a week
	shares  []float32 // how wide each day is against the others; nil is all alike
	face    *weekFace
}

// nowhere is no day.
var nowhere = Spot{-1, -1}

// Sizes of the grid, in units.
const (
	weekTitleWidth = 92
	weekHeadHeight = 28
	weekLeast      = 48 // the usual least height of a week
	weekMost       = 76
)

// NewWeekGrid returns a grid of the given days across; cell says what stands in a
// day, and is asked only for the weeks in sight.
func NewWeekGrid(days []string, cell func(Spot) WeekCell) *WeekGrid {
	g := &WeekGrid{days: days, cell: cell, over: nowhere, drag: nowhere, least: weekLeast}
	g.ExtendBaseWidget(g)
	return g
}

// SetWeeks says which weeks there are.
func (g *WeekGrid) SetWeeks(weeks []WeekTitle) {
	g.weeks = weeks
	g.cursor, g.anchor = g.within(g.cursor), g.within(g.anchor)
	g.Refresh()
}

// Least sets the least height of a week, in units; a grid that is too long for it
// scrolls.
func (g *WeekGrid) Least(height float32) *WeekGrid {
	g.least = height
	return g
}

// SetDays renames the days across, as many as there are.
func (g *WeekGrid) SetDays(days []string) {
	if len(days) == len(g.days) {
		g.days = days
		g.Refresh()
	}
}

// SetShares says how wide the days across are against each other, so that days
// without anything in them can stand back. Without it all are alike.
func (g *WeekGrid) SetShares(shares []float32) {
	g.shares = shares
	g.Refresh()
}

// Cursor returns the day that has the cursor.
func (g *WeekGrid) Cursor() Spot { return g.cursor }

// Select moves the cursor without telling anybody, and shows the day.
func (g *WeekGrid) Select(s Spot) {
	g.cursor = g.within(s)
	g.anchor = g.cursor
	g.reveal()
	g.Refresh()
}

// Selection returns the corners of the selected days, the first week and day
// first; both are the cursor when only one day is selected.
func (g *WeekGrid) Selection() (from, to Spot) {
	a, b := g.anchor, g.cursor
	return Spot{min(a.Week, b.Week), min(a.Day, b.Day)}, Spot{max(a.Week, b.Week), max(a.Day, b.Day)}
}

// Focus gives the grid the keyboard.
func (g *WeekGrid) Focus() { Focus(g) }

// within is the nearest day that there is.
func (g *WeekGrid) within(s Spot) Spot {
	return Spot{max(0, min(s.Week, len(g.weeks)-1)), max(0, min(s.Day, len(g.days)-1))}
}

func (g *WeekGrid) selected(s Spot) bool {
	from, to := g.Selection()
	return s.Week >= from.Week && s.Week <= to.Week && s.Day >= from.Day && s.Day <= to.Day
}

// move gives the cursor to a day, as a coach does; extend keeps the other corner.
func (g *WeekGrid) move(to Spot, extend bool) {
	if len(g.weeks) == 0 {
		return
	}
	before := g.cursor
	g.cursor = g.within(to)
	if !extend {
		g.anchor = g.cursor
	}
	g.reveal()
	g.Refresh()
	if g.cursor != before && g.OnCursor != nil {
		g.OnCursor(g.cursor)
	}
}

// shift asks to move the day under the cursor, which goes along.
func (g *WeekGrid) shift(by Spot) {
	from, to := g.cursor, g.within(Spot{g.cursor.Week + by.Week, g.cursor.Day + by.Day})
	if g.OnMove == nil || from == to || len(g.weeks) == 0 {
		return
	}
	g.OnMove(from, to, false)
	g.move(to, false)
}

// inSight is how many whole weeks there is room for.
func (g *WeekGrid) inSight() int {
	return max(1, int((g.Size().Height-weekHeadHeight)/g.rowHeight()))
}

// rowHeight shares the height among the weeks, within reason.
func (g *WeekGrid) rowHeight() float32 {
	room := g.Size().Height - weekHeadHeight
	return min(weekMost, max(g.least, room/float32(max(1, len(g.weeks)))))
}

// column is where a day across begins and how wide it is.
func (g *WeekGrid) column(day int) (x, width float32) {
	bar := float32(0)
	if len(g.weeks) > g.inSight() {
		bar = gripWidth
	}
	before, total := float32(0), float32(0)
	for i := range g.days {
		if i < day {
			before += g.share(i)
		}
		total += g.share(i)
	}
	room := max(0, g.Size().Width-weekTitleWidth-bar)
	return weekTitleWidth + room*before/total, room * g.share(day) / total
}

func (g *WeekGrid) share(day int) float32 {
	if day < len(g.shares) {
		return g.shares[day]
	}
	return 1
}

// reveal scrolls as little as brings the cursor into sight.
func (g *WeekGrid) reveal() {
	g.top = max(min(g.top, g.cursor.Week), g.cursor.Week-g.inSight()+1, 0)
}

// at is the day at a place, or nowhere.
func (g *WeekGrid) at(p fyne.Position) Spot {
	row := int((p.Y - weekHeadHeight) / g.rowHeight())
	if p.Y < weekHeadHeight || row >= g.inSight() || g.top+row >= len(g.weeks) {
		return nowhere
	}
	for day := range g.days {
		if x, w := g.column(day); p.X >= x && p.X < x+w {
			return Spot{g.top + row, day}
		}
	}
	return nowhere
}
