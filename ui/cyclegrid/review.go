package cyclegrid

import (
	"fmt"

	"fyne.io/fyne/v2"

	"windlass/internal/desk"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// review is the last step: the cycle as it would be, and what breaks a rule.
type review struct {
	maker    *maker
	track    int
	tabs     *kit.Segmented
	grid     *kit.WeekGrid
	verdict  *kit.Text
	breaches *breachList
	all      fyne.CanvasObject
}

func newReview(m *maker) *review {
	r := &review{maker: m, verdict: kit.NewHeading("").Shrinks(160)}
	r.tabs = kit.NewSegmented([]string{"–"}, 0, func(i int) { r.track = i; r.draw() })
	r.grid = kit.NewWeekGrid(dayNames(m.room.desk().Settings().FirstDay), func(s kit.Spot) kit.WeekCell { return cellOf(r.view(), r.track, s) }).Least(leastWeek)
	r.grid.OnKey = r.heard
	r.breaches = newBreachList(r.view, r.lead)
	grid := kit.Column(look.Gap2, kit.Row(0, r.tabs, kit.Fill()), kit.Fill(kit.NewPanel(kit.Pad(look.Gap1, r.grid))))
	side := kit.Column(look.Gap2, kit.Tall(look.ControlHeight, kit.Fill(r.verdict)), kit.Fill(r.breaches.all))
	r.all = kit.Row(look.Gap4, kit.Fill(grid), kit.Full(kit.Wide(sideWidth, side)))
	return r
}

func (r *review) view() desk.CycleView { return r.maker.draft.View }

func (r *review) show() {
	r.track = 0
	r.draw()
	r.breaches.refresh()
	r.verdict.SetText("No rule is broken")
	if n := len(r.view().Breaches); n > 0 {
		r.verdict.SetText(fmt.Sprintf("Rules broken: %d. You can mend them later.", n))
	}
	r.grid.Focus()
}

// heard lets Return make the cycle, as the button says.
func (r *review) heard(key *fyne.KeyEvent) bool {
	enter := key.Name == fyne.KeyReturn || key.Name == fyne.KeyEnter
	if enter {
		r.maker.goOn()
	}
	return enter
}

func (r *review) draw() { drawTracks(r.view(), r.track, r.tabs, r.grid) }

// lead shows the day of a breach.
func (r *review) lead(x desk.ViewBreach) {
	r.track = x.Track
	r.draw()
	r.grid.Select(kit.Spot{Week: x.Week - 1, Day: x.Column})
}
