package cyclegrid

import (
	"fmt"

	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// restShare is how wide a weekday without training is against the others.
const restShare float32 = 0.42

// leastWeek is the height of a week in which a day has room for three lines; twelve
// of them fit the desk window.
const leastWeek float32 = 52

func newGrid(r *Cycle) *kit.WeekGrid {
	g := kit.NewWeekGrid(dayNames(r.desk().Settings().FirstDay), func(s kit.Spot) kit.WeekCell { return cellOf(r.view, r.track, s) }).Least(leastWeek)
	g.OnCursor = func(kit.Spot) { r.side.refresh() }
	g.OnOpen = func(kit.Spot) { r.side.focus() }
	g.OnMove = r.move
	g.OnCopy, g.OnCut, g.OnPaste, g.OnDelete = r.copy, r.cut, r.paste, r.clear
	return g
}

// dayNames are the days across from the first day of a week.
func dayNames(first day.Weekday) []string {
	names := make([]string, 7)
	for i := range names {
		names[i] = ((first + day.Weekday(i)) % 7).Short()
	}
	return names
}

func (r *Cycle) drawGrid() { drawTracks(r.view, r.track, r.tabs, r.grid) }

// drawTracks shows one track of a cycle, with a tab for each.
func drawTracks(v desk.CycleView, track int, tabs *kit.Segmented, grid *kit.WeekGrid) {
	labels := make([]string, len(v.Tracks))
	for i, t := range v.Tracks {
		labels[i] = t.Name
		if t.Breaches > 0 {
			labels[i] = fmt.Sprintf("%s (%d)", t.Name, t.Breaches)
		}
	}
	if len(labels) == 0 {
		labels = []string{"No track"}
	}
	tabs.SetLabels(labels, track)
	weeks := make([]kit.WeekTitle, len(v.Weeks))
	for i, w := range v.Weeks {
		weeks[i] = kit.WeekTitle{Title: w.Title, Sub: w.Sub, Now: w.Now}
	}
	if track < len(v.Tracks) {
		grid.SetShares(sharesOf(v.Tracks[track].Used))
	}
	if len(v.Tracks) > 0 {
		grid.SetDays(dayNames(v.Cycle.Start.Weekday()))
	}
	grid.SetWeeks(weeks)
}

func sharesOf(used [7]bool) []float32 {
	shares := make([]float32, len(used))
	for i, yes := range used {
		shares[i] = restShare
		if yes {
			shares[i] = 1
		}
	}
	return shares
}

var dayKinds = map[gym.DayKind]kit.DayKind{
	gym.MainDay: kit.MainDay, gym.RecoveryDay: kit.RecoveryDay, gym.RestDay: kit.RestDay,
}

// regionShapes are the marks of the regions; the foot of the grid names them.
var regionShapes = map[gym.Region]kit.Shape{
	gym.Lower: kit.Down, gym.Upper: kit.Up, gym.WholeBody: kit.Disc, gym.Trunk: kit.Square,
}

// cellOf is what the grid shows of a day.
func cellOf(v desk.CycleView, track int, s kit.Spot) kit.WeekCell {
	if track >= len(v.Tracks) {
		return kit.WeekCell{}
	}
	d := v.Tracks[track].Day(s.Week+1, s.Day)
	return kit.WeekCell{
		Title: d.Title, Count: d.Count, Sub: d.Sub, Kind: dayKinds[d.Kind], Breach: d.Breach, Done: d.Done && d.Kind != gym.RestDay,
		Shape: regionShapes[d.Region], Tone: look.Accent,
	}
}

// block is the marked days.
func (r *Cycle) block() desk.Block {
	from, to := r.grid.Selection()
	return desk.Block{
		Track: r.trackID(), FromWeek: from.Week + 1, ToWeek: to.Week + 1, FromColumn: from.Day, ToColumn: to.Day,
	}
}
