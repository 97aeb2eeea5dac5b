package cyclegrid

import (
	"strings"

	"windlass/ui/kit"
	"windlass/ui/look"
)

// next asks for the name and the first day of the cycle after this one.
func (r *Cycle) next() {
	if !r.ready() {
		return
	}
	c := r.view.Cycle
	name, start := kit.NewField("Name"), kit.NewField("First day")
	name.SetText(r.desk().NextName(c.Name))
	start.SetText(r.desk().NextStart(c.End()).String())
	start.SetNote(r.desk().NextStart(c.End()).Long())
	start.OnChange(func(text string) {
		on, err := r.desk().ReadStart(text)
		start.SetNote("")
		if err == nil {
			start.SetNote(on.Long())
		}
	})
	kit.Ask(r.host.Window().Canvas(), kit.Question{
		Title: "Start the next cycle from " + c.Name,
		Text:  "It begins with the same weeks, tracks and plans, all of which you can change. Write its goal when you have made it.",
		Body:  kit.Column(look.Gap2, name, start), Width: 560,
		Actions: []kit.Action{{Label: "Start it", Do: func() bool { return r.startNext(name, start) }}},
	})
}

func (r *Cycle) startNext(name, start *kit.Field) bool {
	if strings.TrimSpace(name.Text()) == "" {
		name.SetFault("Write a name for it.")
		return false
	}
	on, err := r.desk().ReadStart(start.Text())
	if err != nil {
		start.SetFault(kit.Sentence(err))
		return false
	}
	c, err := r.desk().NextCycle(r.id, strings.TrimSpace(name.Text()), on)
	if err != nil {
		start.SetFault(kit.Sentence(err))
		return false
	}
	r.take(c.ID)
	r.host.Say(c.Name+" is made. Every day of it can be changed.", true)
	return true
}

// rename asks for the cycle's name and goal; the same question removes a cycle of
// which nothing was trained.
func (r *Cycle) rename() {
	if !r.ready() {
		return
	}
	name, goal := kit.NewField("Name"), kit.NewField("Goal, in a few words")
	name.SetText(r.view.Cycle.Name)
	goal.SetText(r.view.Cycle.Goal)
	told := func(field *kit.Field, err error, sentence string) bool {
		if err != nil {
			field.SetFault(kit.Sentence(err))
			return false
		}
		r.host.Say(sentence, true)
		return true
	}
	kit.Ask(r.host.Window().Canvas(), kit.Question{
		Title: "Name and goal", Body: kit.Column(look.Gap2, name, goal), Width: 560,
		Actions: []kit.Action{
			{Label: "Keep", Do: func() bool {
				err := r.desk().NameCycle(r.id, strings.TrimSpace(name.Text()), strings.TrimSpace(goal.Text()))
				return told(name, err, "Name and goal kept.")
			}},
			{Label: "Remove the cycle", Danger: true, Do: func() bool {
				return told(goal, r.desk().DropCycle(r.id), "The cycle is removed.")
			}},
		},
	})
}
