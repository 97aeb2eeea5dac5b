package floor

import (
	"fmt"
	"slices"
	"strings"

	"fyne.io/fyne/v2"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// hereList is everybody who may come, with a mark for those who did. Typing
// finds; Enter checks the first in.
type hereList struct {
	setUp  *setUp
	class  gym.ID // whose list it is
	whole  []desk.Arrival
	due    map[gym.ID]bool
	moves  bool // rows may leave their places at the next reading
	rows   []desk.Arrival
	search *kit.Field
	list   *kit.DataList
	count  *kit.Text
	all    fyne.CanvasObject
}

func newHereList(s *setUp) *hereList {
	h := &hereList{setUp: s, count: kit.NewCaption("")}
	h.search = kit.NewSearch("Type a name, then Enter").OnChange(func(string) { h.find() }).
		OnEnter(func(string) { h.enter() }).OnKey(h.arrows)
	h.list = kit.NewDataList([]kit.ListColumn{
		{Title: "Name", Width: 140, Grow: 2}, {Title: "Track", Width: 104, Grow: 1},
	}, kit.Rows{Len: h.len, Cell: h.cell})
	h.list.Marked = func(row int) bool { return row < len(h.rows) && h.rows[row].Here }
	h.list.OnMark = h.mark
	h.list.OnCursor = h.follow
	h.list.OnOpen = h.flip
	h.list.Empty = "Nobody is on the roster yet. Type a name above and press Enter: whoever walks in is added."
	h.all = kit.NewCard("Who is here", kit.Column(look.Gap2, h.search, kit.Fill(kit.NewPanel(h.list))), h.count)
	return h
}

// walkIn reports whether the last row offers to add a name that nobody has.
func (h *hereList) walkIn() bool {
	name := strings.TrimSpace(h.search.Text())
	if name == "" {
		return false
	}
	for _, r := range h.rows {
		if strings.EqualFold(r.Athlete.Name, name) {
			return false
		}
	}
	return true
}

func (h *hereList) len() int {
	if h.walkIn() {
		return len(h.rows) + 1
	}
	return len(h.rows)
}

func (h *hereList) cell(row, column int) kit.Cell {
	if row >= len(h.rows) {
		if column == 0 {
			return kit.Cell{Text: "Add “" + strings.TrimSpace(h.search.Text()) + "”", Shape: kit.Plus, Mark: look.Accent}
		}
		return kit.Cell{Text: "walks in", Tone: look.Muted}
	}
	r := h.rows[row]
	if column == 1 {
		return kit.Cell{Text: r.Track, Tone: look.Muted}
	}
	c := kit.Cell{Text: r.Athlete.Name, Bold: r.Expected}
	if !r.Expected && !r.Here {
		c.Tone = look.Muted
	}
	if r.Note != "" {
		c.Shape, c.Mark = kit.Warning, look.Warn
	}
	return c
}

// begin reads the list from its top for a class that has come to the floor: nobody
// of the class before is chosen in it.
func (h *hereList) begin() {
	h.due, h.moves = nil, true
	h.search.SetText("")
	h.refresh()
	if h.class != h.setUp.floor.id {
		h.class = h.setUp.floor.id
		h.list.Select(0)
	}
}

func (h *hereList) refresh() {
	if h.due == nil {
		h.due = h.setUp.floor.desk().ExpectedIn(h.setUp.floor.class)
	}
	fresh := h.setUp.floor.desk().Arrivals(h.setUp.floor.class, h.due)
	if !h.moves {
		fresh = h.settled(fresh)
	}
	h.whole, h.moves = fresh, false
	expected := 0
	for _, r := range h.whole {
		if r.Expected {
			expected++
		}
	}
	h.count.SetText(fmt.Sprintf("%d here, %d expected", len(h.setUp.floor.class.Lifters), expected))
	h.rows = desk.Matching(h.whole, h.search.Text())
	h.list.Refresh()
}

// settled keeps rows where they stood, so that a second click hits whom the first
// one did. Who is new stands where the desk puts them.
func (h *hereList) settled(fresh []desk.Arrival) []desk.Arrival {
	now := map[gym.ID]desk.Arrival{}
	for _, r := range fresh {
		now[r.Athlete.ID] = r
	}
	var rows []desk.Arrival
	stood := map[gym.ID]bool{}
	for _, old := range h.whole {
		if r, ok := now[old.Athlete.ID]; ok {
			rows, stood[old.Athlete.ID] = append(rows, r), true
		}
	}
	for i, r := range fresh {
		if !stood[r.Athlete.ID] {
			rows = slices.Insert(rows, min(i, len(rows)), r)
		}
	}
	return rows
}

// find shows who fits what is typed; the first has the cursor.
func (h *hereList) find() {
	h.rows = desk.Matching(h.whole, h.search.Text())
	h.list.Select(0)
	h.follow(h.list.Cursor())
}

// enter checks the row with the cursor in and makes room for the next name. Who was
// just found and is here stays so at a second Enter.
func (h *hereList) enter() {
	row := h.list.Cursor()
	if row < 0 || strings.TrimSpace(h.search.Text()) == "" && h.rows[row].Here {
		return
	}
	h.flip(row)
}

func (h *hereList) flip(row int) {
	if row >= len(h.rows) {
		name := strings.TrimSpace(h.search.Text())
		h.search.SetText("")
		h.moves = true
		h.setUp.walkIn(name)
		return
	}
	r := h.rows[row]
	if h.search.Text() != "" {
		h.search.SetText("")
		h.moves = !r.Here // nobody points at a row: who was found comes up to those who are here
	}
	h.setUp.flip(r.Athlete.ID, r.Here)
	h.keep(r.Athlete.ID)
}

// keep leaves the cursor on an athlete whose row has moved.
func (h *hereList) keep(athlete gym.ID) {
	for i, row := range h.rows {
		if row.Athlete.ID == athlete {
			h.list.Select(i)
		}
	}
}

func (h *hereList) mark(rows []int, on bool) {
	marked := make([]desk.Arrival, 0, len(rows))
	for _, row := range rows {
		if row < len(h.rows) && h.rows[row].Here != on {
			marked = append(marked, h.rows[row])
		}
	}
	for _, r := range marked {
		h.setUp.flip(r.Athlete.ID, r.Here)
	}
}

func (h *hereList) follow(row int) {
	if row >= 0 && row < len(h.rows) {
		h.setUp.choose(h.rows[row].Athlete.ID)
	}
}

// arrows move the cursor of the list while a name is typed.
func (h *hereList) arrows(key *fyne.KeyEvent) bool {
	by := map[fyne.KeyName]int{fyne.KeyDown: 1, fyne.KeyUp: -1}[key.Name]
	if by == 0 {
		return false
	}
	h.list.Select(h.list.Cursor() + by)
	h.follow(h.list.Cursor())
	return true
}
