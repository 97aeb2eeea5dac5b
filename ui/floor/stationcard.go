package floor

import (
	"strconv"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"windlass/internal/clock"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// stationCard is one station with the lifters who share its bar.
type stationCard struct {
	name *kit.Text
	bar  *kit.Text
	rows []*lifterRow
	list *fyne.Container
	all  fyne.CanvasObject
	pick func(gym.ID)
}

func newStationCard(pick func(gym.ID)) *stationCard {
	c := &stationCard{pick: pick, name: kit.NewStrong(""), bar: kit.NewCaption("").Shrinks(40)}
	c.list = container.New(rowsLayout{})
	head := kit.Row(look.Gap2, c.name, kit.Fill(kit.Column(0, kit.Fill(), c.bar.Align(fyne.TextAlignTrailing), kit.Fill())))
	c.all = kit.NewPanel(kit.Column(0, kit.Pad(look.Gap2, head), kit.NewRule(), kit.Fill(c.list)))
	return c
}

// set shows the lifters of a station at a moment.
func (c *stationCard) set(l *live, name, bar string, lifters []desk.BoardLifter, m clock.Moment) {
	c.name.SetText(name)
	c.bar.SetText(bar)
	for len(c.rows) < len(lifters) {
		c.rows = append(c.rows, newLifterRow(c.pick))
	}
	if len(c.list.Objects) != len(lifters) {
		c.list.Objects = nil
		for i := range lifters {
			c.list.Objects = append(c.list.Objects, c.rows[i])
		}
		c.list.Refresh()
	}
	for i, lifter := range lifters {
		owed, owes := l.floor.board.Owes(lifter, m)
		c.rows[i].set(lifter, m, signs{
			warning: l.warnings[lifter.Athlete], unit: l.unit, sport: l.sport,
			chosen: lifter.Athlete == l.chosen, late: owes && owed.Late,
		})
	}
}

func itoa(n int) string { return strconv.Itoa(n) }
