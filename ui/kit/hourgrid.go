package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

// HourBlock is one thing of a week that lasts: a class.
type HourBlock struct {
	Day     int // the column, from 0
	Start   int // minutes from midnight
	Minutes int
	Title   string
	Sub     string
}

// HourGrid draws a week as columns of days by hours, with blocks in it, worked by
// keyboard and pointer. It keeps no plan: it shows the blocks it is given and
// tells what the coach asks for.
type HourGrid struct {
	widget.BaseWidget

	// OnFocus hears that the grid got the keyboard.
	OnFocus func()
	// OnCursor hears that the coach moved the cursor to a block.
	OnCursor func(block int)
	// OnOpen hears Return and a double click on a block.
	OnOpen func(block int)
	// OnShift hears Ctrl and an arrow: move the block by days or by minutes.
	OnShift func(block, days, minutes int)
	// Empty is said in the middle while there are no blocks.
	Empty string

	days    []string
	blocks  []HourBlock
	lanes   []lane
	cursor  int
	over    int // the block under the pointer, or −1
	focused bool
	face    *hourFace
}

// Sizes of the grid, in units.
const (
	hourTitleWidth = 52
	hourHeadHeight = 28
	hourStep       = 15 // minutes of one shift
)

// NewHourGrid returns an empty week of the given days.
func NewHourGrid(days []string) *HourGrid {
	g := &HourGrid{days: days, over: -1}
	g.ExtendBaseWidget(g)
	return g
}

// Set shows blocks, in the order in which the cursor walks through a day.
func (g *HourGrid) Set(blocks []HourBlock) {
	g.blocks = blocks
	g.lanes = lanesOf(blocks)
	g.cursor = max(0, min(g.cursor, len(blocks)-1))
	g.Refresh()
}

// SetDays changes the titles of the columns.
func (g *HourGrid) SetDays(days []string) {
	g.days = days
	g.Refresh()
}

// Cursor returns the block that has the cursor, and −1 where there are none.
func (g *HourGrid) Cursor() int { return min(g.cursor, len(g.blocks)-1) }

// Select moves the cursor without telling anybody.
func (g *HourGrid) Select(block int) {
	g.cursor = max(0, min(block, len(g.blocks)-1))
	g.Refresh()
}

// Focus gives the grid the keyboard.
func (g *HourGrid) Focus() { Focus(g) }

// lane is the share of a column that a block has: those that overlap stand side
// by side.
type lane struct{ at, of int }

// lanesOf gives every block the first lane of its day that is free, and as many
// lanes as the run of overlapping blocks around it needs.
func lanesOf(blocks []HourBlock) []lane {
	lanes := make([]lane, len(blocks))
	for i, b := range blocks {
		taken := map[int]bool{}
		for j := range i {
			if overlap(b, blocks[j]) {
				taken[lanes[j].at] = true
			}
		}
		for taken[lanes[i].at] {
			lanes[i].at++
		}
	}
	for i := range blocks {
		lanes[i].of = lanes[i].at + 1
	}
	for changed := true; changed; { // a run needs as many as its widest place
		changed = false
		for i := range blocks {
			for j := range blocks {
				if overlap(blocks[i], blocks[j]) && lanes[i].of < lanes[j].of {
					lanes[i].of, changed = lanes[j].of, true
				}
			}
		}
	}
	return lanes
}

func overlap(a, b HourBlock) bool {
	return a.Day == b.Day && a.Start < b.Start+b.Minutes && b.Start < a.Start+a.Minutes
}

// hours are the first hour in sight and the one at which the day ends.
func (g *HourGrid) hours() (from, to int) {
	from, to = 8, 18
	for _, b := range g.blocks {
		from, to = min(from, b.Start/60), max(to, (b.Start+b.Minutes+59)/60)
	}
	return from, to
}

// y is the height of a minute of the day.
func (g *HourGrid) y(minute int) float32 {
	from, to := g.hours()
	return hourHeadHeight + (g.Size().Height-hourHeadHeight)*float32(minute-60*from)/float32(60*(to-from))
}

func (g *HourGrid) columnWidth() float32 {
	return max(0, g.Size().Width-hourTitleWidth) / float32(max(1, len(g.days)))
}

// frameOf is where a block stands.
func (g *HourGrid) frameOf(i int) area {
	b, l := g.blocks[i], g.lanes[i]
	share := (g.columnWidth() - 4) / float32(l.of)
	x := hourTitleWidth + g.columnWidth()*float32(b.Day) + 2 + share*float32(l.at)
	top, bottom := g.y(b.Start), g.y(b.Start+b.Minutes)
	return area{x, top + 1, share - 2, bottom - top - 2}
}

// at is the block at a place, or −1.
func (g *HourGrid) at(p fyne.Position) int {
	for i := range g.blocks {
		if a := g.frameOf(i); p.X >= a.x && p.X < a.x+a.w && p.Y >= a.y && p.Y < a.y+a.h {
			return i
		}
	}
	return -1
}
