package roster

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/record"
)

// table is the list of athletes, with those the coach marked.
type table struct {
	of     *Roster
	list   *kit.DataList
	rows   []gym.ID
	marked map[gym.ID]bool
	said   map[gym.ID]desk.RosterRow
	sort   desk.RosterSort
	down   bool
}

// Columns of the table.
const (
	colName = iota
	colTrack
	colDays
	colCame
	colKnown
	colTier
)

var sorts = map[int]desk.RosterSort{colName: desk.ByName, colTrack: desk.ByTrack, colCame: desk.ByLastCame, colKnown: desk.ByKnown}

func newTable(r *Roster) *table {
	t := &table{of: r, marked: map[gym.ID]bool{}}
	t.list = kit.NewDataList([]kit.ListColumn{
		{Title: "Name", Width: 132, Grow: 3, Sorts: true},
		{Title: "Track", Width: 104, Grow: 1, Sorts: true},
		{Title: "Days", Width: 92, Grow: 1},
		{Title: "Last came", Width: 74, Sorts: true},
		{Title: "Records", Width: 78, Sorts: true},
		{Title: "Tier", Width: 66},
	}, kit.Rows{Len: func() int { return len(t.rows) }, Cell: t.cell})
	t.list.Sorted(colName, false)
	t.list.Marked = func(row int) bool { return t.marked[t.rows[row]] }
	t.list.OnMark = t.mark
	t.list.OnCursor = func(int) { r.showCursor() }
	t.list.OnRune = r.typed
	t.list.OnOpen = func(int) { r.record.Log() }
	t.list.OnSort = func(column int, down bool) {
		t.sort, t.down = sorts[column], down
		r.list()
	}
	return t
}

// read asks the desk who is asked for.
func (t *table) read(f desk.RosterFilter) {
	t.rows, t.said = t.of.host.Desk().RosterList(f), map[gym.ID]desk.RosterRow{}
	t.list.Empty = "Nobody fits. Change the search or the filter, or add an athlete with Ctrl+N."
	if len(t.of.host.Desk().Book().Athletes) == 0 {
		t.list.Empty = "Nobody trains here yet. Add an athlete with Ctrl+N, or bring your roster in with Ctrl+O."
	}
	t.list.Refresh()
}

// current is the athlete under the cursor; nobody in an empty table.
func (t *table) current() gym.ID {
	if at := t.list.Cursor(); at >= 0 {
		return t.rows[at]
	}
	return ""
}

func (t *table) has(athlete gym.ID) bool { return t.at(athlete) >= 0 }

func (t *table) at(athlete gym.ID) int { return slices.Index(t.rows, athlete) }

func (t *table) turnTo(athlete gym.ID) {
	if at := t.at(athlete); at >= 0 {
		t.list.Select(at)
	}
}

func (t *table) mark(rows []int, on bool) {
	for _, row := range rows {
		if on {
			t.marked[t.rows[row]] = true
		} else {
			delete(t.marked, t.rows[row])
		}
	}
	t.of.chosen.SetText(t.says())
}

// chosen are the marked athletes in sight of the filter, or else the one under
// the cursor.
func (t *table) chosen() []gym.ID {
	var ids []gym.ID
	for _, id := range t.rows {
		if t.marked[id] {
			ids = append(ids, id)
		}
	}
	if current := t.current(); len(ids) == 0 && current != "" {
		ids = append(ids, current)
	}
	return ids
}

// says tells whom the actions under the table are about.
func (t *table) says() string {
	switch ids := t.chosen(); {
	case len(ids) == 0:
		return "Nobody is chosen."
	case len(ids) == 1:
		a, _ := t.of.host.Desk().Athlete(ids[0])
		return "For " + a.Name + ". Mark several with Space, Shift or Ctrl."
	default:
		return fmt.Sprintf("For the %d marked.", len(ids))
	}
}

// row is what the desk says of an athlete, asked once for all cells until the rows
// are read again.
func (t *table) row(id gym.ID) desk.RosterRow {
	r, asked := t.said[id]
	if !asked {
		r = t.of.host.Desk().RosterRow(id)
		t.said[id] = r
	}
	return r
}

// unmark forgets every mark.
func (t *table) unmark() {
	clear(t.marked)
	t.list.Refresh()
	t.of.chosen.SetText(t.says())
}

func (t *table) cell(row, column int) kit.Cell {
	r := t.row(t.rows[row])
	away := r.Athlete.Status != gym.Active
	c := kit.Cell{}
	if away {
		c.Tone = look.Muted
	}
	switch column {
	case colName:
		c.Text = r.Athlete.Name
		c.Shape, c.Mark = awayMark(r.Athlete.Status)
	case colTrack:
		c.Text = r.Track.Name
		if c.Text == "" && !away {
			c.Text, c.Tone = "none", look.Warn
		}
	case colDays:
		c.Text = shortDays(r.Days)
	case colCame:
		c.Text = came(r)
	case colKnown:
		c.Text, c.Tone = known(r.Known, c.Tone)
	case colTier:
		return t.tierCell(r)
	}
	return c
}

// awayMark marks who does not train just now.
func awayMark(s gym.Status) (kit.Shape, look.Meaning) {
	if s == gym.Active {
		return kit.NoShape, look.Muted
	}
	return record.StatusMark(s)
}

// shortDays writes a week with the initials of its days and dots for days off, as
// in "MT·TF··".
func shortDays(days day.Weekdays) string {
	if days == 0 {
		return ""
	}
	var parts []string
	for w := day.Monday; w <= day.Sunday; w++ {
		if days.Has(w) {
			parts = append(parts, w.String()[:1])
		} else {
			parts = append(parts, "·")
		}
	}
	return strings.Join(parts, "")
}

// came says when an athlete came last, or that they are away.
func came(r desk.RosterRow) string {
	switch {
	case r.Athlete.Status != gym.Active:
		return string(r.Athlete.Status)
	case r.Came == day.None:
		return "never"
	}
	return r.Came.Short()
}

func known(k desk.Known, tone look.Meaning) (string, look.Meaning) {
	switch {
	case k.Want == 0:
		return "", tone
	case k.Have == 0 && tone == look.Text:
		tone = look.Warn
	}
	return fmt.Sprintf("%d of %d", k.Have, k.Want), tone
}

func (t *table) tierCell(r desk.RosterRow) kit.Cell {
	s, err := t.of.host.Desk().TierStanding(r.Athlete.ID)
	switch {
	case errors.Is(err, desk.ErrLearning):
		return kit.Cell{Text: "…", Tone: look.Muted}
	case err != nil || s.Usual == "":
		return kit.Cell{}
	}
	c := kit.Cell{Text: string(s.Usual), Shape: record.TierMark(s.Usual)}
	if s.Decided > 0 {
		c.Mark, c.Bold = look.Accent, true // as decided; the record has the suggestion beside it
	}
	if r.Athlete.Status != gym.Active {
		c.Tone = look.Muted
	}
	return c
}
