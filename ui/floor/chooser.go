package floor

import (
	"fmt"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// chooser is what stands on the floor while no class does: today's classes.
type chooser struct {
	floor    *Floor
	meetings []desk.Meeting
	list     *kit.DataList
	free     *kit.Button
	all      *fyne.Container
}

func newChooser(f *Floor) *chooser {
	c := &chooser{floor: f}
	c.list = kit.NewDataList([]kit.ListColumn{
		{Title: "Hour", Width: 80},
		{Title: "Class", Width: 160, Grow: 1},
		{Title: "Lifts", Width: 260, Grow: 3},
		{Title: "Expected", Width: 90, End: true},
		{Title: "", Width: 140},
	}, kit.Rows{Len: func() int { return len(c.meetings) }, Cell: c.cell})
	c.list.Empty = "No class stands in the timetable for today. Open one for everybody with O."
	c.list.OnOpen = c.open
	c.free = kit.NewButton("Open a class for everybody", c.openFree).Key("O")
	text := kit.NewProse("Choose the class that begins and press Enter. Its tracks bring their lifts from today's plan, and whoever is expected stands on the list.", 400).Tone(look.Muted)
	c.all = container.NewStack(kit.Room("Floor", kit.Column(look.Gap4, text, kit.Fill(kit.NewPanel(c.list))), c.free))
	return c
}

func (c *chooser) content() fyne.CanvasObject { return c.all }

func (c *chooser) refresh() {
	c.meetings = c.floor.desk().MeetingsNow()
	c.list.Refresh()
	for i, m := range c.meetings {
		if m.State == desk.OnFloor || m.State == desk.ToCome {
			c.list.Select(i)
			break
		}
	}
}

func (c *chooser) cell(row, column int) kit.Cell {
	m := c.meetings[row]
	switch column {
	case 0:
		return kit.Cell{Text: m.Slot.At.String(), Bold: true}
	case 1:
		return kit.Cell{Text: m.Slot.Name}
	case 2:
		return kit.Cell{Text: liftsOf(m), Tone: look.Muted}
	case 3:
		if m.Class.ID != "" {
			return kit.Cell{Text: fmt.Sprint(len(m.Class.Lifters), " came")}
		}
		return kit.Cell{Text: fmt.Sprint(len(m.Expected))}
	}
	if m.State == desk.Done {
		return kit.Cell{Text: "Done", Shape: kit.Tick, Mark: look.Good, Tone: look.Muted}
	}
	return kit.Cell{Text: "Enter opens it", Tone: look.Muted}
}

func liftsOf(m desk.Meeting) string {
	text := ""
	for _, t := range m.Tracks {
		if t.Lift == "" {
			continue
		}
		if text != "" {
			text += ", "
		}
		text += fmt.Sprintf("%s (%s)", t.Work(), t.Track.Name)
	}
	return text
}

// repMax writes a lift with its rep count: "Back squat 3RM".
func repMax(lift string, reps int) string { return fmt.Sprintf("%s %dRM", lift, reps) }

func (c *chooser) open(row int) {
	m := c.meetings[row]
	if m.Class.ID != "" {
		c.floor.take(m.Class.ID)
		return
	}
	class, err := c.floor.desk().OpenClass(m.Slot)
	c.opened(class, err)
}

func (c *chooser) openFree() {
	class, err := c.floor.desk().OpenFreeClass()
	c.opened(class, err)
}

func (c *chooser) opened(class gym.Class, err error) {
	if c.floor.host.Fail(err) {
		c.floor.take(class.ID)
	}
}

func (c *chooser) keys() []room.Key {
	return []room.Key{
		{Press: "O", Does: "Open a class for everybody", Do: c.openFree},
		{Press: "Enter", Does: "Open the chosen class", Do: func() {
			if row := c.list.Cursor(); row >= 0 {
				c.open(row)
			}
		}},
	}
}
