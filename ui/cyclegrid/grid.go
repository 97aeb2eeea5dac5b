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

func newGrid(r *Cycle) *kit.WeekGrid {
	names := make([]string, 7)
	for i := range names {
		names[i] = (r.desk().Settings().FirstDay + day.Weekday(i)).Short()
	}
	g := kit.NewWeekGrid(names, r.cell)
	g.OnCursor = func(kit.Spot) { r.side.refresh() }
	g.OnOpen = func(kit.Spot) { r.side.focus() }
	g.OnMove = r.move
	g.OnCopy, g.OnCut, g.OnPaste, g.OnDelete = r.copy, r.cut, r.paste, r.clear
	return g
}

func (r *Cycle) drawGrid() {
	labels := make([]string, len(r.view.Tracks))
	for i, t := range r.view.Tracks {
		labels[i] = t.Name
		if t.Breaches > 0 {
			labels[i] = fmt.Sprintf("%s (%d)", t.Name, t.Breaches)
		}
	}
	if len(labels) == 0 {
		labels = []string{"No track"}
	}
	r.tabs.SetLabels(labels, r.track)
	weeks := make([]kit.WeekTitle, len(r.view.Weeks))
	for i, w := range r.view.Weeks {
		weeks[i] = kit.WeekTitle{Title: w.Title, Sub: w.Sub, Now: w.Now}
	}
	if r.track < len(r.view.Tracks) {
		r.grid.SetShares(sharesOf(r.view.Tracks[r.track].Used))
	}
	r.grid.SetWeeks(weeks)
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

// cell is what the grid shows of a day.
func (r *Cycle) cell(s kit.Spot) kit.WeekCell {
	if r.track >= len(r.view.Tracks) {
		return kit.WeekCell{}
	}
	d := r.view.Tracks[r.track].Day(s.Week+1, s.Day)
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
