package today

import (
	"windlass/internal/desk"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

var needMarks = map[desk.NeedKind]struct {
	word  string
	shape kit.Shape
	tone  look.Meaning
}{
	desk.NeedRestriction: {"Restriction", kit.Warning, look.Bad},
	desk.NeedNumber:      {"No number", kit.Dash, look.Warn},
	desk.NeedStale:       {"Old number", kit.Diamond, look.Warn},
	desk.NeedTrack:       {"No track", kit.Cross, look.Warn},
}

// needsList is the table of what wants the coach; Return settles a row by going
// to the athlete's record.
func (t *Today) needsList() *kit.DataList {
	list := kit.NewDataList([]kit.ListColumn{
		{Title: "What", Width: 116},
		{Title: "Athlete", Width: 120, Grow: 1},
		{Title: "Why", Width: 200, Grow: 3},
	}, kit.Rows{Len: func() int { return len(t.rows) }, Cell: t.needCell})
	list.Empty = "Nothing needs you. Have a good day."
	list.OnOpen = func(row int) { t.host.Open(room.Roster, t.rows[row].Athlete) }
	return list
}

func (t *Today) needCell(row, column int) kit.Cell {
	n := t.rows[row]
	mark := needMarks[n.Kind]
	switch column {
	case 0:
		return kit.Cell{Text: mark.word, Shape: mark.shape, Mark: mark.tone}
	case 1:
		return kit.Cell{Text: n.Name, Bold: true}
	}
	return kit.Cell{Text: n.Text}
}
