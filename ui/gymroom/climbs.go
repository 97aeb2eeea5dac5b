package gymroom

import (
	"strconv"

	"fyne.io/fyne/v2"

	"windlass/internal/climb"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// climbs is the section about the gym's climbs: their list, and the one under the
// cursor as a draft.
type climbs struct {
	*Gym
	body   fyne.CanvasObject
	list   *kit.DataList
	plans  []gym.ClimbPlan
	drafts map[gym.ID]desk.ClimbDraft // those that differ from what is saved
	editor *climbEditor
	shown  gym.ID
}

func newClimbs(g *Gym) section {
	c := &climbs{Gym: g, drafts: map[gym.ID]desk.ClimbDraft{}}
	c.list = kit.NewDataList([]kit.ListColumn{
		{Title: "Climb", Width: 96, Grow: 1}, {Title: "Length", Width: 64, End: true}, {Title: "Rungs", Width: 52, End: true},
	}, kit.Rows{Len: func() int { return len(c.plans) }, Cell: c.cell})
	c.list.Empty = "No climb yet. Make one with Ctrl+N."
	c.list.OnCursor = func(int) { c.edit() }
	c.list.OnOpen = func(int) { c.editor.name.Focus() }
	c.editor = newClimbEditor(c)
	c.body = page("Climbs", kit.Row(look.Gap4, kit.Full(kit.Wide(272, kit.NewPanel(c.list))), kit.Fill(c.editor.card)), c.buttons()...)
	return c
}

func (c *climbs) buttons() []fyne.CanvasObject {
	return []fyne.CanvasObject{
		kit.NewButton("Import", c.askImport).Key("Ctrl+I").Tip("Reads a climb from a CSV file."),
		kit.NewButton("Export", c.askExport).Key("Ctrl+E").Tip("Writes this climb as a CSV file."),
		kit.NewButton("Copy", c.copy).Key("Ctrl+D"),
		kit.NewButton("Remove", c.remove).Key("Del"),
		kit.NewButton("New", c.add).Key("Ctrl+N"),
	}
}

func (c *climbs) content() fyne.CanvasObject { return c.body }

func (c *climbs) keys() []room.Key {
	return []room.Key{
		{Press: "C", Does: "Go to the list of climbs", Do: c.list.Focus},
		{Press: "Del", Does: "Remove the climb under the cursor", Do: c.remove},
	}
}

func (c *climbs) cell(row, column int) kit.Cell {
	plan := c.plans[row]
	switch column {
	case 0:
		cell := kit.Cell{Text: plan.Name, Bold: true}
		if _, changed := c.drafts[plan.ID]; changed {
			cell.Shape, cell.Mark = kit.Diamond, look.Warn
		}
		return cell
	case 1:
		return kit.Cell{Text: lengthOf(plan), Tone: look.Muted}
	}
	return kit.Cell{Text: strconv.Itoa(len(plan.Rungs)), Tone: look.Muted}
}

func lengthOf(plan gym.ClimbPlan) string {
	if len(plan.Rungs) == 0 {
		return ""
	}
	return climb.Time(plan.Rungs[len(plan.Rungs)-1].Until)
}

// refresh reads the climbs again. A draft stays as the coach left it.
func (c *climbs) refresh() {
	c.plans = c.host.Desk().Climbs()
	for i, plan := range c.plans {
		if plan.ID == c.shown {
			c.list.Select(i)
		}
	}
	c.list.Refresh()
	c.edit()
}

// present is the climb under the cursor as it is saved.
func (c *climbs) present() (gym.ClimbPlan, bool) {
	at := c.list.Cursor()
	if at < 0 {
		return gym.ClimbPlan{}, false
	}
	return c.plans[at], true
}

// edit shows the climb under the cursor in the editor.
func (c *climbs) edit() {
	plan, ok := c.present()
	if !ok {
		c.editor.show(desk.ClimbDraft{}, false)
		return
	}
	c.shown = plan.ID
	draft, changed := c.drafts[plan.ID]
	if !changed {
		draft = desk.DraftOf(plan)
	}
	c.editor.show(draft, changed)
}

// changed hears that the coach wrote in the editor.
func (c *climbs) changed(draft desk.ClimbDraft) (differs bool) {
	plan, ok := c.present()
	differs = ok && !draft.Same(plan)
	if differs {
		c.drafts[plan.ID] = draft
	} else {
		delete(c.drafts, plan.ID)
	}
	c.list.Refresh()
	return differs
}

func (c *climbs) save() {
	draft, changed := c.drafts[c.shown]
	if !changed {
		c.host.Say("There is nothing to save: this climb says what it said.", false)
		return
	}
	plan, faults := draft.Plan()
	if len(faults) > 0 {
		c.host.Fail(faults[0].Err)
		return
	}
	delete(c.drafts, c.shown)
	if _, err := c.host.Desk().SaveClimb(plan); !c.done(plan.Name+" is saved.", err) {
		c.drafts[c.shown] = draft
	}
	c.refresh()
}

// discard forgets what the coach wrote and shows the climb as it is saved.
func (c *climbs) discard() {
	delete(c.drafts, c.shown)
	c.refresh()
}

func (c *climbs) copy() {
	if plan, ok := c.present(); ok {
		id, err := c.host.Desk().CopyClimb(plan.ID)
		c.arrive(id, "Copied. Now give it a name of its own.", err)
	}
}

// arrive shows a climb that was just made.
func (c *climbs) arrive(id gym.ID, sentence string, err error) bool {
	if !c.done(sentence, err) {
		return false
	}
	c.shown = id
	c.refresh()
	c.list.Focus()
	return true
}

func (c *climbs) remove() {
	plan, ok := c.present()
	if !ok {
		return
	}
	if c.done(plan.Name+" is removed.", c.host.Desk().RemoveClimb(plan.ID)) {
		delete(c.drafts, plan.ID)
		c.refresh()
	}
}
