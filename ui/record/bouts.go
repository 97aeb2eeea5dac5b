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
	back    *kit.Button
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
	b.why, b.decided = kit.NewProse("", 200), kit.NewProse("", 200).Tone(look.Accent)
	b.list = kit.NewDataList([]kit.ListColumn{
		{Title: "Movement", Width: 150, Grow: 1},
		{Title: "Last", Width: 92},
		{Title: "Suggested", Width: 96},
		{Title: "Decided", Width: 84},
		{Title: "Chance", Width: 64, End: true},
	}, kit.Rows{Len: func() int { return len(b.rows) }, Cell: b.cell})
	b.list.Empty = "The catalogue has no movement with loads. Add some in the Gym room."
	b.list.OnRune = r.typed
	b.list.OnCursor = func(int) { b.choose() }
	b.list.OnOpen = func(int) { b.decide() }
	b.back = kit.NewButton("Let it stand", b.takeBack).Key("Ctrl+U").Tip("Take back what was decided; the suggestion stands again")
	legend := kit.Column(look.Gap1, newLegend([]legendMark{
		{kit.Tick, look.Good, "held"},
		{kit.Down, look.Warn, "slowed"},
		{kit.Cross, look.Bad, "stopped"},
		{kit.Square, look.Accent, "decided by you"},
	}), newLegend([]legendMark{
		{kit.Disc, look.Muted, "full tier"}, {kit.Half, look.Muted, "mid tier"}, {kit.Ring, look.Muted, "light tier"}, {kit.Dash, look.Muted, "under light"},
	}))
	buttons := kit.Row(look.Gap2, kit.NewButton("Decide", b.decide).Key("Ctrl+E"), b.back,
		kit.NewButton("After a break", b.comeback).Key("Ctrl+G"), kit.Fill())
	b.whole = kit.Column(look.Gap3, kit.Fill(kit.NewPanel(kit.Fill(b.list))), legend, kit.Row(look.Gap2, kit.Fill(b.title), kit.NewButton("Void the latest", b.void).Key("Del").Tip("Take the latest bout of this movement out of every computation")),
		kit.Tall(44, kit.Fill(b.why)), b.decided, buttons, b.chart)
	return b
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
	b.decided.SetText(decisions(a))
	b.decided.Hidden = !a.Decided()
	b.back.Able(a.Decided())
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

func decisions(a desk.Advice) string {
	text := ""
	for _, o := range a.Decision.By {
		text += "You decided " + desk.OverrideText(o) + ". "
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
	return kit.Cell{Text: fmt.Sprintf("%.0f %%", 100*a.Hold), Tone: quiet}
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
		p.Ticks = months(done[0].On, done[n-1].On)
	}
	return p
}

func orUnit(u, other mass.Unit) mass.Unit {
	if u.Valid() {
		return u
	}
	return other
}

// takeBack lets the suggestion stand again where the coach decided otherwise.
func (b *bouts) takeBack() {
	a, err := b.advice()
	if !b.of.host.Fail(err) {
		return
	}
	if !a.Decided() {
		b.of.host.Say("Nothing is decided for "+a.Movement.Name+"; the suggestion stands.", false)
		return
	}
	last := a.Decision.By[len(a.Decision.By)-1]
	b.of.done(b.of.host.Desk().VoidOverride(last.ID), "Taken back: "+desk.OverrideText(last)+".")
}

// void takes the latest bout of the movement out of every computation.
func (b *bouts) void() {
	a, err := b.advice()
	if err != nil || a.Last.ID == "" {
		b.of.host.Say("There is no bout of that movement to void.", false)
		return
	}
	what := fmt.Sprintf("%s with %s on %s", a.Movement.Name, a.Last.Load.In(a.Last.Unit), a.Last.On.Short())
	askReason(b.of, "Void the latest bout?", what+" counts for nothing any more and stays readable.", func(reason string) error {
		return b.of.host.Desk().VoidBout(a.Last.ID, reason)
	}, what+" is void.")
}

func (b *bouts) keys() []room.Key {
	return []room.Key{
		{Press: "F3", Does: "Choose among the movements", Do: b.list.Focus},
		{Press: "Ctrl+E", Does: "Decide a load for the chosen movement", Do: b.decide},
		{Press: "Ctrl+U", Does: "Take back what was decided", Do: b.takeBack},
		{Press: "Ctrl+G", Does: "Go lighter after a break", Do: b.comeback},
		{Press: "Del", Does: "Void the latest bout of the movement", Do: b.void},
	}
}

// tierOptions are the loads of a rack, as the coach reads them.
func tierOptions(r tier.Rack, u mass.Unit) []kit.Option {
	var options []kit.Option
	for i, load := range r.Owned {
		options = append(options, kit.Option{Key: fmt.Sprint(i + 1), Text: load.In(u), Note: string(tier.TierOf(load, r.Tiers))})
	}
	return options
}
