package gymroom

import (
	"fmt"
	"os"
	"path/filepath"

	"windlass/internal/climb"
	"windlass/ui/kit"
)

// add asks for how many minutes a new climb is.
func (c *climbs) add() {
	minutes := kit.NewField("Minutes").Hint("20")
	c.ask(kit.Question{
		Title: "New climb",
		Text: fmt.Sprintf("Half of the clock goes to the top rungs, the rest to the way there. Write %d to %d minutes; you can change every rung afterwards.",
			climb.MinMinutes, climb.MaxMinutes),
		Body: minutes, First: minutes.Keyboard(),
	}, "Make it", minutes, func() error {
		id, err := c.host.Desk().NewClimb(minutes.Text())
		if err == nil {
			c.arrive(id, "Made. Change what you like.", nil)
		}
		return err
	})
}

func (c *climbs) askImport() {
	path := kit.NewField("File to read").Hint(filepath.Join(home(), "climb.csv"))
	path.SetNote("With the columns at, until, percent, reps and zone.")
	c.ask(kit.Question{Title: "Import a climb", Body: path, First: path.Keyboard(), Width: 640}, "Read it", path, func() error {
		id, err := c.host.Desk().ImportClimb(path.Text())
		if err == nil {
			c.arrive(id, "The climb is read. Check its heavy line and ceiling.", nil)
		}
		return err
	})
}

func (c *climbs) askExport() {
	plan, ok := c.present()
	if !ok {
		return
	}
	if _, changed := c.drafts[plan.ID]; changed {
		c.host.Say("Save the climb first, then write it to a file.", false)
		return
	}
	path := kit.NewField("File to write")
	path.SetText(filepath.Join(home(), plan.Name+".csv"))
	c.ask(kit.Question{Title: "Export " + plan.Name, Body: path, First: path.Keyboard(), Width: 640}, "Write it", path, func() error {
		err := c.host.Desk().ExportClimb(plan.ID, path.Text())
		if err == nil {
			c.host.Say("Wrote "+path.Text()+".", false)
		}
		return err
	})
}

// ask puts a question with one field in front; what goes wrong stands under the
// field, and the question stays.
func (g *Gym) ask(q kit.Question, answer string, field *kit.Field, do func() error) {
	q.Actions = []kit.Action{{Label: answer, Do: func() bool {
		err := do()
		field.SetFault(kit.Sentence(err))
		return err == nil
	}}}
	kit.Ask(g.host.Window().Canvas(), q)
}

// home is where a coach keeps files.
func home() string {
	folder, err := os.UserHomeDir()
	if err != nil {
		return os.TempDir()
	}
	return folder
}
