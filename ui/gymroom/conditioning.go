package gymroom

import (
	"fmt"
	"slices"
	"strconv"

	"fyne.io/fyne/v2"

	"windlass/internal/conditioning"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// composing is the section about what the composer of conditioning goes by.
type composing struct {
	*Gym
	body     fyne.CanvasObject
	from, to *kept
	apart    *kept
	table    *fyne.Container
	rows     []*formatRow
}

func newComposing(g *Gym) section {
	c := &composing{Gym: g, table: kit.Column(look.Gap3)}
	by := func() gym.Composing { return c.host.Desk().Settings().ComposeBy() }
	c.from = c.line("Minutes, at least", func() string { return desk.WindowText(by().Shortest) }, func(text string) error {
		return c.host.Desk().KeepWindow(text, desk.WindowText(by().Longest))
	})
	c.to = c.line("Minutes, at most", func() string { return desk.WindowText(by().Longest) }, func(text string) error {
		return c.host.Desk().KeepWindow(desk.WindowText(by().Shortest), text)
	})
	c.apart = c.line("Days from a movement to the next time", func() string { return strconv.Itoa(by().Apart) }, func(text string) error {
		return c.host.Desk().KeepApart(text)
	})
	window := kit.NewCard("Length and days apart", kit.Column(look.Gap2, kit.Equal(look.Gap3, c.from, c.to), c.apart,
		prose("For a usual athlete, at the pace of your gym's own scores. Each heat counts alone. For one proposal you can ask for something else in the Cycle room.")))
	formats := kit.NewCard("Formats by the day's rep count", kit.Column(look.Gap3,
		prose("A composed workout has one of the formats that are ticked for the reps of the day's main lift. Which rep counts there are is written under The gym."), c.table))
	c.body = page("Conditioning", scroll(kit.Row(look.Gap4, kit.Full(kit.Wide(360, kit.Column(0, window))), kit.Fill(kit.Column(0, formats)))),
		kit.NewButton("Back to the usual", c.usual).Key("U").Tip("Puts back the length, the days apart and the formats that a new gym has."))
	return c
}

func prose(text string) *kit.Prose { return kit.NewProse(text, 300).Small().Tone(look.Muted) }

func (c *composing) line(label string, read func() string, write func(text string) error) *kept {
	return keep(kit.NewField(label), read, func(text string) error {
		return c.saved("Workouts are composed by that from now on.", write(text))
	})
}

func (c *composing) content() fyne.CanvasObject { return c.body }

func (c *composing) keys() []room.Key {
	return []room.Key{{Press: "U", Does: "Compose conditioning as a new gym does", Do: c.usual}}
}

func (c *composing) usual() {
	if !c.done("Workouts are composed by what is usual.", c.host.Desk().KeepUsualComposing()) {
		return
	}
	for _, k := range []*kept{c.from, c.to, c.apart} {
		k.show() // also over what was refused
	}
	c.refresh()
}

func (c *composing) refresh() {
	for _, k := range []*kept{c.from, c.to, c.apart} {
		k.refresh()
	}
	table := c.host.Desk().FormatTable()
	for len(c.rows) < len(table) {
		c.rows = append(c.rows, newFormatRow(c))
	}
	if len(c.table.Objects) != len(table) {
		c.table.Objects = nil
		for _, r := range c.rows[:len(table)] {
			c.table.Add(r.all)
		}
	}
	for i, of := range table {
		c.rows[i].show(of)
	}
	c.table.Refresh()
}

// formatRow is the formats of the days of one rep count.
type formatRow struct {
	of      *composing
	now     desk.FormatsOf
	heading *kit.Text
	toggles []*kit.Toggle
	all     fyne.CanvasObject
}

func newFormatRow(c *composing) *formatRow {
	r := &formatRow{of: c, heading: kit.NewStrong("")}
	cells := []fyne.CanvasObject{}
	for i, f := range gym.Formats() {
		t := kit.NewToggle(conditioning.NameOf(f), false, func(on bool) { r.take(i, on) })
		r.toggles = append(r.toggles, t)
		cells = append(cells, t)
	}
	r.all = kit.Column(look.Gap1, r.heading, kit.Equal(look.Gap2, cells...))
	return r
}

func (r *formatRow) show(of desk.FormatsOf) {
	r.now = of
	what := fmt.Sprintf("Days of %d", of.Reps)
	if of.Any {
		what += ": none chosen, so any of the others' will do"
	}
	r.heading.SetText(what)
	for i, f := range gym.Formats() {
		r.toggles[i].Set(slices.Contains(of.Formats, f))
	}
}

// take keeps the formats with one more or one less, in the order of choice lists.
func (r *formatRow) take(at int, on bool) {
	var formats []gym.Format
	for i, f := range gym.Formats() {
		if i == at && on || i != at && slices.Contains(r.now.Formats, f) {
			formats = append(formats, f)
		}
	}
	r.of.done(fmt.Sprintf("The formats of the days of %d are saved.", r.now.Reps), r.of.host.Desk().KeepFormats(r.now.Reps, formats))
	r.of.refresh()
}
