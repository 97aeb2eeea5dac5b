// Package handouts is the room for what goes out of the program.
//
// [New] makes it. It writes tables; paper is not made yet, and the room says so.
package handouts

import (
	"fmt"
	"os"
	"path/filepath"
	"time"

	"fyne.io/fyne/v2"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// Handouts is the room.
type Handouts struct {
	host    room.Host
	content *fyne.Container
	folder  *kit.Field
	made    *kit.Prose
}

// New makes the room.
func New(h room.Host) room.Room {
	r := &Handouts{host: h, folder: kit.NewField("Folder to write into"), made: kit.NewProse("", 300).Small()}
	r.folder.SetText(usualFolder(h.Desk()))
	cards := kit.Equal(look.Gap6, r.tables(), paper())
	r.content = kit.Room("Handouts", kit.Column(look.Gap6, cards, caution()))
	return r
}

// usualFolder lies where people look for what they saved, named by the day.
func usualFolder(d *desk.Desk) string {
	home, err := os.UserHomeDir()
	if err != nil {
		home = os.TempDir()
	}
	return filepath.Join(home, "Windlass "+d.Today().String())
}

func (r *Handouts) tables() fyne.CanvasObject {
	buttons := kit.Row(look.Gap2,
		kit.NewButton("Write CSV tables", r.writeTables).Key("C").Primary().Tip("One file a table, for any program."),
		kit.NewButton("Write one XLSX file", r.writeWorkbook).Key("X").Tip("One sheet a table, for a spreadsheet."),
		kit.Fill())
	return kit.NewCard("Everything as tables", kit.Column(look.Gap4,
		kit.NewProse("Athletes, results, bouts, cycles and all the rest, one table each. Your notes and the athletes' restrictions stay here.", 300),
		r.folder, buttons, r.made))
}

func paper() fyne.CanvasObject {
	return kit.NewCard("On paper", kit.NewProse(
		"Record cards, week sheets, class sheets and calendars are not made by this version. "+
			"Until they are, the tables hold the same facts: print them from a spreadsheet.", 300))
}

// caution goes with whatever is handed out.
func caution() fyne.CanvasObject {
	return kit.NewCard("Before you hand anything out", kit.NewProse(
		"Loads are proposals. Screen people before they start, use spotters and safety arms, stop on pain, "+
			"and defer to a doctor, to licensed practice and to local rules. "+
			"Minors and pregnant athletes need advice of their own.", 600))
}

func (r *Handouts) writeTables() {
	r.write("Writing the tables", r.host.Desk().ExportTables(r.folder.Text()))
}

func (r *Handouts) writeWorkbook() {
	r.write("Writing the file", r.host.Desk().ExportWorkbook(filepath.Join(r.folder.Text(), "windlass.xlsx")))
}

func (r *Handouts) write(title string, export desk.Export) {
	var names []string
	r.host.Long(title, func(job *room.Job) (err error) {
		names, err = export(job.Context())
		return err
	}, func(err error) {
		r.folder.SetFault(kit.Sentence(err))
		if err != nil {
			return
		}
		r.made.SetText(fmt.Sprintf("Wrote %s into %s.", files(len(names)), r.folder.Text()))
		r.host.Say("The tables are written.", false)
	})
}

func files(n int) string {
	if n == 1 {
		return "one file"
	}
	return fmt.Sprintf("%d files", n)
}

// Content implements room.Room.
func (r *Handouts) Content() fyne.CanvasObject { return r.content }

// Refresh implements room.Room: what is written is read when it is asked for.
func (r *Handouts) Refresh(desk.Topic) {}

// Show implements room.Room.
func (r *Handouts) Show(gym.ID) {}

// Tick implements room.Room.
func (r *Handouts) Tick(time.Time) {}

// Keys implements room.Room.
func (r *Handouts) Keys() []room.Key {
	return []room.Key{
		{Press: "C", Does: "Write everything as CSV tables", Do: r.writeTables},
		{Press: "X", Does: "Write everything as one XLSX file", Do: r.writeWorkbook},
	}
}
