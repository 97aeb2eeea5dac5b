package record

import (
	"errors"
	"fmt"

	"fyne.io/fyne/v2"

	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/tier"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// bouts is the section of conditioning: every movement with its last bout, what is
// suggested and what the coach decided.
type bouts struct {
	of      *Record
	whole   *fyne.Container
	athlete gym.Athlete
	rows    []gym.MovementKey
	chosen  gym.MovementKey
	list    *kit.DataList
	title   *kit.Text
	why     *kit.Prose
	decided *kit.Prose
	today   *kit.Prose
	chart   *kit.Chart
}

// Columns of the section's list.
const (
	colMovement = iota
	colLast
	colSuggested
	colDecided
	colChance
)

func newBouts(r *Record) *bouts {
	b := &bouts{of: r, title: kit.NewHeading("").Shrinks(120), chart: kit.NewChart(200, 168)}
	b.why, b.today, b.decided = kit.NewProse("", 200), kit.NewProse("", 200), kit.NewProse("", 200).Tone(look.Accent)
	b.list = kit.NewDataList([]kit.ListColumn{
		{Title: "Movement", Width: 132, Grow: 1},
		{Title: "Last", Width: 88},
		{Title: "Suggested", Width: 92},
		{Title: "Decided", Width: 92},
		{Title: "Chance", Width: 62, End: true},
	}, kit.Rows{Len: func() int { return len(b.rows) }, Cell: b.cell})
	b.list.Empty = "The catalogue has no movement with loads. Add some in the Gym room."
	b.list.OnRune = r.typed
	b.list.OnCursor = func(int) { b.choose() }
	b.list.OnOpen = func(int) { b.openLog() }
	b.whole = b.layOut()
	return b
}

func (b *bouts) layOut() *fyne.Container {
	legend := kit.Column(look.Gap1, newLegend([]legendMark{
		{kit.Tick, look.Good, "held"}, {kit.Down, look.Warn, "slowed"}, {kit.Cross, look.Bad, "stopped"}, {kit.Square, look.Accent, "decided by you"},
	}), newLegend([]legendMark{
		{kit.Disc, look.Muted, "full tier"}, {kit.Half, look.Muted, "mid tier"}, {kit.Ring, look.Muted, "light tier"}, {kit.Dash, look.Muted, "under light"},
	}))
	log := kit.NewButton("Bouts", b.openLog).Key("F9").Tip("Read every bout of this movement, and void one")
	buttons := kit.Row(look.Gap2,
		kit.NewButton("Decide", b.decide).Key("Ctrl+E"),
		kit.NewButton("Decisions", b.showDecisions).Key("Ctrl+U").Tip("Read what was decided, and take it back"),
		kit.NewButton("After a break", b.comeback).Key("Ctrl+G"), kit.Fill())
	return kit.Column(look.Gap3, kit.Fill(kit.NewPanel(kit.Fill(b.list))), legend, kit.Row(look.Gap2, kit.Fill(b.title), log),
		kit.Tall(44, kit.Fill(b.why)), b.today, b.decided, buttons, b.chart)
}

func (b *bouts) content() fyne.CanvasObject { return b.whole }

func (b *bouts) turned() { b.chosen = "" }

func (b *bouts) show(a gym.Athlete) {
	b.athlete, b.rows = a, b.of.host.Desk().Loaded(a.ID)
	at := 0
	for i, key := range b.rows {
		if key == b.chosen {
			at = i
		}
	}
	b.list.Select(at)
	b.choose()
}

// choose draws what belongs to the movement under the cursor.
func (b *bouts) choose() {
	at := b.list.Cursor()
	if at < 0 {
		return
	}
	b.chosen = b.rows[at]
	a, err := b.advice()
	b.title.SetText(a.Movement.Name)
	b.why.SetText(sentence(a.Decision.Suggestion.Why))
	if err != nil {
		b.why.SetText(kit.Sentence(err))
	}
	b.today.SetText(b.todays())
	b.today.Hidden = b.today.Label() == ""
	b.decided.SetText(b.deciding(a))
	b.decided.Hidden = !a.Decided()
	b.chart.Set(b.plot())
	b.whole.Refresh()
}

func (b *bouts) advice() (desk.Advice, error) {
	return b.of.host.Desk().Advise(b.athlete.ID, b.chosen, 0)
}

// sentence makes a sentence of a reason.
func sentence(reason string) string {
	if reason == "" {
		return ""
	}
	return kit.Sentence(errors.New(reason))
}

// todays says what is suggested for as much of the chosen movement as today's
// conditioning asks; empty when it does not have the movement.
func (b *bouts) todays() string {
	d := b.of.host.Desk()
	amount, ok := d.WorkToday(b.athlete.ID, b.chosen)
	if !ok {
		return ""
	}
	a, err := d.Advise(b.athlete.ID, b.chosen, amount)
	if err != nil {
		return "" // the line above says why
	}
	return fmt.Sprintf("Today asks for %s: %s, with a chance of %s.", desk.WorkText(a.Movement, amount), a.Decision.Load.In(a.Unit), tier.Percent(a.Hold))
}

func (b *bouts) deciding(a desk.Advice) string {
	text := ""
	for _, o := range a.Decision.By {
		text += "You decided " + b.of.host.Desk().OverrideText(o) + ". "
	}
	return text
}

func (b *bouts) cell(row, column int) kit.Cell {
	a, err := b.of.host.Desk().Advise(b.athlete.ID, b.rows[row], 0)
	if err != nil {
		return b.faultCell(row, column)
	}
	s := a.Decision.Suggestion
	quiet := look.Text
	if a.Last.ID == "" {
		quiet = look.Muted
	}
	switch column {
	case colMovement:
		return kit.Cell{Text: a.Movement.Name, Tone: quiet}
	case colLast:
		if a.Last.ID == "" {
			return kit.Cell{Text: "never", Tone: look.Muted}
		}
		shape, mark := outcomeMark(a.Last.Outcome)
		return kit.Cell{Text: a.Last.Load.In(a.Last.Unit), Shape: shape, Mark: mark}
	case colSuggested:
		return kit.Cell{Text: s.Load.In(a.Unit), Tone: quiet, Bold: !a.Decided() && a.Last.ID != "", Shape: TierMark(s.Tier)}
	case colDecided:
		if !a.Decided() {
			return kit.Cell{}
		}
		return kit.Cell{Text: a.Decision.Load.In(a.Unit), Bold: true, Shape: kit.Square, Mark: look.Accent}
	}
	return kit.Cell{Text: tier.Percent(a.Hold), Tone: quiet}
}

func (b *bouts) faultCell(row, column int) kit.Cell {
	if column != colMovement {
		return kit.Cell{Text: "–", Tone: look.Muted}
	}
	m, _ := b.of.host.Desk().Movement(b.rows[row])
	return kit.Cell{Text: m.Name, Tone: look.Muted}
}

// plot is load against time, with outcomes as shapes.
func (b *bouts) plot() kit.Plot {
	a, _ := b.advice() // without advice the athlete's unit does
	unit := orUnit(a.Unit, b.athlete.Unit)
	in := func(m mass.Mass) float64 { return m.Ratio(unit.One()) }
	p := kit.Plot{
		Unit: string(unit), Empty: "No bout yet. Loads stand here once they are logged on the floor.",
		FormatX: func(x float64) string { return day.Date(x).Time().Format("2 January 2006") },
		FormatY: func(y float64) string { return fmt.Sprintf("%.4g", y) },
	}
	done := b.of.host.Desk().BoutsOf(b.athlete.ID, b.chosen)
	for _, d := range done {
		shape, mark := outcomeMark(d.Outcome)
		p.Points = append(p.Points, kit.PlotPoint{
			X: float64(d.On), Y: in(d.Load), Shape: shape, Mark: mark,
			Label: fmt.Sprintf("%d × %s %s, %s", d.Reps, d.Load.In(d.Unit), d.Outcome, d.On.Time().Format("2 January")),
		})
	}
	if n := len(done); n > 0 {
		p.Ticks = kit.DateTicks(done[0].On, done[n-1].On)
	}
	return p
}

func orUnit(u, other mass.Unit) mass.Unit {
	if u.Valid() {
		return u
	}
	return other
}

func (b *bouts) keys() []room.Key {
	return []room.Key{
		{Press: "F3", Does: "Choose among the movements", Do: b.list.Focus},
		{Press: "Ctrl+E", Does: "Decide a load for the chosen movement", Do: b.decide},
		{Press: "Ctrl+U", Does: "Read what was decided, or take it back", Do: b.showDecisions},
		{Press: "Ctrl+G", Does: "Go lighter after a break", Do: b.comeback},
		{Press: "F9", Does: "Read the log of the chosen movement", Do: b.openLog},
		{Press: "Del", Does: "Void a bout of the chosen movement", Do: b.voidOne},
	}
}
