package gymroom

import (
	"fmt"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// climbEditor shows one draft: its lines, its strip, what is wrong with it, and
// its rungs as a table to write in.
type climbEditor struct {
	of      *climbs
	draft   desk.ClimbDraft
	card    *kit.Card
	name    *kit.Field
	heavy   *kit.Field
	ceiling *kit.Field
	strict  *kit.Toggle
	strip   *kit.RungStrip
	faults  *kit.Prose
	rows    []*rungRow
	table   *fyne.Container
	scroll  *container.Scroll
	save    *kit.Button
	discard *kit.Button
	filling bool // the editor writes, not the coach
}

// faultLines is how many faults are told at once.
const faultLines = 2

func newClimbEditor(c *climbs) *climbEditor {
	e := &climbEditor{of: c, strip: kit.NewRungStrip(), faults: kit.NewProse("", 300).Small(), table: kit.Column(look.Gap1)}
	e.name = kit.NewField("Name").OnChange(func(text string) { e.write(func() { e.draft.Name = text }) })
	e.heavy = kit.NewField("Heavy line, % of the record").OnChange(func(text string) { e.write(func() { e.draft.HeavyLine = text }) })
	e.ceiling = kit.NewField("Ceiling, % of the record").OnChange(func(text string) { e.write(func() { e.draft.Ceiling = text }) })
	e.heavy.SetNote("Heavy days begin here.")
	e.ceiling.SetNote("No attempt goes over it.")
	e.strict = kit.NewToggle("Strict", false, func(on bool) { e.write(func() { e.draft.Strict = on }) }).
		Tip("A strict climb asks before its clock is held.")
	e.save = kit.NewButton("Save", c.save).Key("Ctrl+S").Primary()
	e.discard = kit.NewButton("Discard", c.discard).Tip("Forgets what is not saved.")
	e.strip.OnChosen = e.focus
	e.scroll = kit.Scroll(kit.Pad(look.Gap1, e.table))
	head := kit.Row(look.Gap3, kit.Fill(kit.Equal(look.Gap3, e.name, e.heavy, e.ceiling)), e.strict)
	rungs := kit.Row(look.Gap2, kit.Fill(kit.NewCaption("Times as 02:30. Reps, or day for the day's own.").Shrinks(100)),
		kit.NewButton("Add a rung", e.insert).Key("Ctrl+R").Plain(), kit.NewButton("Take out", e.remove).Key("Ctrl+T").Plain())
	e.card = kit.NewCard("Climb", kit.Fill(kit.Column(look.Gap2,
		head, kit.Tall(112, e.strip), kit.Tall(2*look.Gap5, e.faults), rungs, rungHeads(), kit.Fill(e.scroll))),
		e.discard, e.save)
	return e
}

// show fills the editor with a draft.
func (e *climbEditor) show(draft desk.ClimbDraft, changed bool) {
	e.draft = draft
	e.filling = true
	e.card.SetTitle(orElse(draft.Name, "No climb"))
	e.name.SetText(draft.Name)
	e.heavy.SetText(draft.HeavyLine)
	e.ceiling.SetText(draft.Ceiling)
	e.strict.Set(draft.Strict)
	e.fillRows()
	e.filling = false
	e.judge(changed)
}

func orElse(text, other string) string {
	if text == "" {
		return other
	}
	return text
}

// write takes over what the coach wrote.
func (e *climbEditor) write(change func()) {
	if e.filling || e.draft.ID == "" {
		return
	}
	change()
	e.judge(e.of.changed(e.draft))
}

// judge says what is wrong with the draft, and draws it where nothing is.
func (e *climbEditor) judge(changed bool) {
	plan, faults := e.draft.Plan()
	e.save.Able(changed && len(faults) == 0)
	e.discard.Able(changed)
	if len(faults) == 0 {
		e.strip.Set(stripOf(plan))
	}
	wrong := map[int]string{}
	for _, f := range faults {
		if wrong[f.Rung] == "" {
			wrong[f.Rung] = kit.Sentence(f.Err)
		}
	}
	for i, row := range e.rows {
		row.mark(wrong[i])
	}
	e.tell(faults, changed)
}

// tell writes the faults, or what the state of the draft is.
func (e *climbEditor) tell(faults []desk.DraftFault, changed bool) {
	switch {
	case e.draft.ID == "":
		e.faults.SetText("")
	case len(faults) > 0:
		text := ""
		for i, f := range faults {
			if i == faultLines {
				text += fmt.Sprintf("And %d more.", len(faults)-faultLines)
				break
			}
			text += kit.Sentence(f.Err) + " "
		}
		e.faults.Tone(look.Bad).SetText(text)
	case changed:
		e.faults.Tone(look.Warn).SetText("This climb can be run. It is not saved yet: press Ctrl+S.")
	default:
		e.faults.Tone(look.Muted).SetText("This climb can be run. Classes that are open keep the copy that they began with.")
	}
}

// fillRows shows a line for every rung.
func (e *climbEditor) fillRows() {
	for len(e.rows) < len(e.draft.Rungs) {
		row := newRungRow(e, len(e.rows))
		e.rows = append(e.rows, row)
		e.table.Add(row.line)
	}
	for i, row := range e.rows {
		row.line.Hidden = i >= len(e.draft.Rungs)
		if !row.line.Hidden {
			row.fill(e.draft.Rungs[i])
		}
	}
	e.table.Refresh()
}

// insert adds a rung after the one that has the keyboard.
func (e *climbEditor) insert() { e.reshape(func(at int) int { e.draft.Insert(at); return at + 1 }) }

// remove takes the rung out that has the keyboard.
func (e *climbEditor) remove() { e.reshape(func(at int) int { e.draft.Remove(at); return at }) }

// reshape changes the number of rungs; change returns the rung to go on with.
func (e *climbEditor) reshape(change func(at int) int) {
	if e.draft.ID == "" {
		return
	}
	next := change(e.present())
	differs := e.of.changed(e.draft)
	e.show(e.draft, differs)
	if len(e.draft.Rungs) > 0 {
		e.focus(max(0, min(next, len(e.draft.Rungs)-1)))
	}
}

// present is the rung whose line has the keyboard, or else the last.
func (e *climbEditor) present() int {
	focused := e.of.host.Window().Canvas().Focused()
	for i, row := range e.rows {
		if focused != nil && !row.line.Hidden && row.has(focused) {
			return i
		}
	}
	return len(e.draft.Rungs) - 1
}

// focus gives the keyboard to a rung's line.
func (e *climbEditor) focus(rung int) {
	e.rows[rung].until.Focus()
	e.reveal(rung)
}

// reveal scrolls as little as brings a rung's line into sight.
func (e *climbEditor) reveal(rung int) {
	line := e.rows[rung].line
	top, sight := line.Position().Y, e.scroll.Size().Height
	bottom := top + line.MinSize().Height + 2*look.Gap1 // with the margin around the table
	e.scroll.ScrollToOffset(fyne.NewPos(0, max(0, min(max(e.scroll.Offset.Y, bottom-sight), top))))
}

// stripOf is a climb as the strip draws it.
func stripOf(plan gym.ClimbPlan) []kit.Rung {
	zones := map[gym.Zone]kit.Zone{gym.LightZone: kit.Light, gym.WorkingZone: kit.Working, gym.TopZone: kit.Top}
	var rungs []kit.Rung
	for _, r := range plan.Rungs {
		reps := fmt.Sprintf("× %d", r.Reps)
		if r.Reps == 0 {
			reps = "× day"
		}
		rungs = append(rungs, kit.Rung{
			Start: time.Duration(r.At) * time.Second, End: time.Duration(r.Until) * time.Second,
			Percent: fmt.Sprintf("%g %%", r.Percent), Reps: reps, Zone: zones[r.Zone],
		})
	}
	return rungs
}
