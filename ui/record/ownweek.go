package record

import (
	"strings"

	"fyne.io/fyne/v2"

	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// ownWeek is the section of an athlete's week: when they can come, how many days
// they want, and the arrangement that the spacing rule allows.
type ownWeek struct {
	of      *Record
	whole   *fyne.Container
	athlete gym.Athlete
	view    desk.OwnWeek
	title   *kit.Text
	days    [7]*weekday
	want    *kit.Segmented
	why     *kit.Prose
	breach  *kit.Prose
	list    *kit.DataList
	rows    []sessionRow
	clear   *kit.Button
}

// weekday is one column of the week.
type weekday struct {
	free *kit.Toggle
	text *kit.Prose
}

// sessionRow is a day of the track and where it came to stand.
type sessionRow struct {
	cycle.Session
	on   day.Weekday
	kept bool
	hand bool
}

func newOwnWeek(r *Record) *ownWeek {
	w := &ownWeek{of: r, title: kit.NewHeading("").Shrinks(120), why: kit.NewProse("", 200)}
	w.breach = kit.NewProse("", 200).Tone(look.Warn)
	w.want = kit.NewSegmented([]string{"all that fit", "1", "2", "3", "4", "5", "6", "7"}, 0, func(int) { w.keep() })
	w.list = kit.NewDataList([]kit.ListColumn{
		{Title: "Day of the track", Width: 176, Grow: 1}, {Title: "Stands on", Width: 104}, {Title: "Own week", Width: 152},
	}, kit.Rows{Len: func() int { return len(w.rows) }, Cell: w.cell})
	w.list.OnRune = r.typed
	w.list.Empty = "No cycle runs for the athlete's track this week. Move them to a track, or make a cycle in the Cycle room."
	w.clear = kit.NewButton("Arrange anew", w.anew).Key("Ctrl+U").Tip("Forget the days set by hand")
	w.whole = w.layOut()
	return w
}

func (w *ownWeek) layOut() *fyne.Container {
	var columns []fyne.CanvasObject
	for i := range w.days {
		d := &weekday{text: kit.NewProse("", 40).Small()}
		d.free = kit.NewToggle(day.Weekday(i).Short(), false, func(bool) { w.keep() })
		w.days[i] = d
		columns = append(columns, kit.Column(look.Gap1, d.free, kit.NewPanel(kit.Pad(look.Gap1, kit.Tall(76, kit.Fill(d.text))))))
	}
	return kit.Column(look.Gap3,
		kit.Row(look.Gap2, kit.Fill(w.title), kit.NewButton("Follow the track", w.follow).Key("Ctrl+L")),
		kit.NewCaption("Tick the weekdays on which the athlete can come."),
		kit.Equal(look.Gap1, columns...),
		kit.Row(look.Gap3, kit.NewCaption("Training days wanted"), w.want, kit.Fill()),
		kit.NewRule(), w.why, w.breach,
		kit.Fill(kit.NewPanel(kit.Fill(w.list))),
		kit.Row(look.Gap2, kit.NewButton("A day earlier", func() { w.shift(-1) }).Key("Left"), kit.NewButton("A day later", func() { w.shift(1) }).Key("Right"), w.clear, kit.Fill()),
		kit.NewProse("A day set by hand stays, and the rest is arranged around it. Days that load the same region keep a day between them.", 200).Small().Tone(look.Muted))
}

func (w *ownWeek) content() fyne.CanvasObject { return w.whole }

func (w *ownWeek) show(a gym.Athlete) {
	w.athlete, w.view = a, w.of.host.Desk().OwnWeek(a.ID)
	w.title.SetText(orText(w.view.Track.Name, "On no track") + ", this week")
	w.want.Set(a.Want)
	w.why.SetText(w.view.Week.Why)
	var broken []string
	for _, b := range w.view.Breaches {
		broken = append(broken, b.Why+" "+b.Mend)
	}
	w.breach.SetText(strings.Join(broken, " "))
	w.breach.Hidden = len(broken) == 0
	w.clear.Able(len(a.Hand) > 0)
	w.readRows()
	free := w.view.Ask.Free
	for i, d := range w.days {
		on := day.Weekday(i)
		d.free.Set(free.Has(on))
		placed, trains := w.view.Week.On(on)
		d.text.SetText(placed.Title)
		d.text.Tone(look.Text)
		if !trains {
			d.text.SetText("rest")
			d.text.Tone(look.Muted)
		}
	}
	w.list.Refresh()
	w.whole.Refresh()
}

func (w *ownWeek) readRows() {
	w.rows = nil
	for _, s := range w.view.Ask.Sessions {
		row := sessionRow{Session: s}
		for _, p := range w.view.Week.Days {
			if p.Plan == s.Plan {
				row.on, row.kept = p.On, true
			}
		}
		for _, h := range w.athlete.Hand {
			row.hand = row.hand || h.Plan == s.Plan
		}
		w.rows = append(w.rows, row)
	}
}

func (w *ownWeek) cell(row, column int) kit.Cell {
	r := w.rows[row]
	switch column {
	case 0:
		c := kit.Cell{Text: r.Title}
		if !r.kept {
			c.Tone = look.Muted
		}
		return c
	case 1:
		return kit.Cell{Text: r.Plan.String(), Tone: look.Muted}
	}
	switch {
	case !r.kept:
		return kit.Cell{Text: "left out", Shape: kit.Dash, Tone: look.Muted}
	case r.hand:
		return kit.Cell{Text: r.on.String() + ", by hand", Shape: kit.Square, Mark: look.Accent}
	case r.on != r.Plan:
		return kit.Cell{Text: r.on.String() + ", moved", Shape: kit.Half, Mark: look.Warn}
	}
	return kit.Cell{Text: r.on.String(), Shape: kit.Tick, Mark: look.Good}
}

// keep keeps the wishes as they stand.
func (w *ownWeek) keep() {
	var free day.Weekdays
	for i, d := range w.days {
		if d.free.On() {
			free |= day.WeekdaysOf(day.Weekday(i))
		}
	}
	if w.athlete.Free == 0 && free == w.view.Ask.Free {
		free = 0 // nothing was said of weekdays
	}
	w.of.done(w.of.host.Desk().SetWishes(w.athlete.ID, free, w.want.Chosen()), "The week of "+w.athlete.Name+" was arranged.")
}

// follow forgets every wish.
func (w *ownWeek) follow() {
	w.of.done(w.of.host.Desk().SetWishes(w.athlete.ID, 0, 0), w.athlete.Name+" follows the track.")
}

// anew forgets the days set by hand.
func (w *ownWeek) anew() {
	w.of.done(w.of.host.Desk().ClearHand(w.athlete.ID), "Arranged without days set by hand.")
}

// shift sets the chosen day by hand, a weekday earlier or later.
func (w *ownWeek) shift(by int) {
	i := w.list.Cursor()
	if i < 0 {
		w.of.host.Say("There is no day to move.", false)
		return
	}
	r := w.rows[i]
	from := r.Plan
	if r.kept {
		from = r.on
	}
	on := day.Weekday((int(from) + by + 7) % 7)
	w.of.done(w.of.host.Desk().SetHand(w.athlete.ID, r.Plan, on), r.Title+" stands on "+on.String()+" by hand.")
}

func (w *ownWeek) keys() []room.Key {
	return []room.Key{
		{Press: "F3", Does: "Choose among the days of the track", Do: w.list.Focus},
		{Press: "Left", Does: "Set the chosen day a weekday earlier, by hand", Do: func() { w.shift(-1) }},
		{Press: "Right", Does: "Set it a weekday later", Do: func() { w.shift(1) }},
		{Press: "Ctrl+U", Does: "Arrange anew without days set by hand", Do: w.anew},
		{Press: "Ctrl+L", Does: "Follow the track", Do: w.follow},
	}
}
