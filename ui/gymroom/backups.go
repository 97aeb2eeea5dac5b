package gymroom

import (
	"context"
	"path/filepath"

	"fyne.io/fyne/v2"

	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// backups is the section about copies of the gym's file.
type backups struct {
	*Gym
	body  fyne.CanvasObject
	last  *kit.Prose
	to    *kit.Field
	from  *kit.Field
	wrote *kit.Prose // what came of the last backup
	found *kit.Prose // what came of the last check
}

func newBackups(g *Gym) section {
	b := &backups{Gym: g, last: kit.NewProse("", 300)}
	b.wrote, b.found = kit.NewProse("", 300).Small(), kit.NewProse("", 300).Small()
	if g.keeper() == nil {
		b.body = page("Backups", kit.NewEmpty("No file to copy",
			"This window was opened without a file of its own, so it cannot make backups. Open the gym with the usual program."))
		return b
	}
	b.to, b.from = kit.NewField("File to write the copy to"), kit.NewField("Copy to restore")
	b.from.Hint(filepath.Join(home(), "gym.windlass"))
	b.body = page("Backups", scroll(kit.Column(look.Gap4, b.backupCard(), b.checkCard(), b.restoreCard())))
	return b
}

func (b *backups) backupCard() fyne.CanvasObject {
	return kit.NewCard("Back up", kit.Column(look.Gap2, b.last,
		kit.NewProse("The copy is checked before it counts. Keep one on another disk or a memory stick.", 300).Small().Tone(look.Muted),
		b.to, b.wrote), kit.NewButton("Back up now", b.backup).Key("U").Primary())
}

func (b *backups) checkCard() fyne.CanvasObject {
	return kit.NewCard("Check the file", kit.Column(look.Gap2,
		kit.NewProse("Reads all of the gym's file and says whether it is sound. Nothing is changed.", 300),
		b.found), kit.NewButton("Check it now", b.check).Key("V"))
}

func (b *backups) restoreCard() fyne.CanvasObject {
	return kit.NewCard("Restore a copy", kit.Column(look.Gap2,
		kit.NewProse("The copy takes the place of the gym's file. What was entered since the copy was made is then no longer "+
			"shown; the file that was there is kept beside it.", 300),
		b.from), kit.NewButton("Restore", b.askRestore).Key("R").Danger())
}

func (b *backups) content() fyne.CanvasObject { return b.body }

func (b *backups) keys() []room.Key {
	if b.keeper() == nil {
		return nil
	}
	return []room.Key{
		{Press: "U", Does: "Back up now", Do: b.askBackup},
		{Press: "V", Does: "Check the gym's file", Do: b.check},
		{Press: "R", Does: "Restore a copy", Do: b.askRestore},
	}
}

func (b *backups) refresh() {
	if b.to == nil {
		return
	}
	b.last.SetText("A gym's whole history is in one file: copy it often.")
	if k, ok := b.keeper().(remembering); ok {
		b.last.SetText(k.Last())
	}
	if b.to.Text() == "" {
		b.to.SetText(b.proposed())
	}
}

// proposed is a name that says when the copy was made.
func (b *backups) proposed() string {
	return filepath.Join(home(), "Windlass backup "+b.host.Desk().Now().Format("2006-01-02 1504")+".windlass")
}

// run does long work with the file. What went wrong stands under the field, or
// at the foot where there is none.
func (b *backups) run(title string, field *kit.Field, work func(ctx context.Context) (string, error), said func(string)) {
	var sentence string
	b.host.Long(title, func(job *room.Job) (err error) {
		sentence, err = work(job.Context())
		return err
	}, func(err error) {
		if field != nil {
			field.SetFault(kit.Sentence(err))
		}
		if err == nil || field == nil && b.host.Fail(err) {
			said(sentence)
		}
	})
}

// askBackup asks first: a single key is easily struck, and a copy is large.
func (b *backups) askBackup() {
	var sheet *kit.Modal
	sheet = kit.Ask(b.host.Window().Canvas(), kit.Question{
		Title: "Write a copy now?", Text: "It is written to " + b.to.Text() + ".",
		Actions: []kit.Action{{Label: "Write it", Do: func() bool {
			sheet.Close() // before the sheet of progress, which it would take along
			b.backup()
			return false
		}}},
	})
}

func (b *backups) backup() {
	path := b.to.Text()
	b.run("Backing up", b.to, func(ctx context.Context) (string, error) { return b.keeper().Backup(ctx, path) }, func(sentence string) {
		b.wrote.SetText(sentence)
		b.host.Say(sentence, false)
		b.to.SetText(b.proposed())
		b.refresh()
	})
}

func (b *backups) check() {
	b.found.SetText("")
	b.run("Checking the file", nil, b.keeper().Verify, func(sentence string) {
		b.found.SetText(sentence)
		b.host.Say(sentence, false)
	})
}

// askRestore asks first: nothing else here replaces what a coach entered.
func (b *backups) askRestore() {
	path := b.from.Text()
	if path == "" {
		b.from.SetFault("Write where the copy is, then press R again.")
		return
	}
	var sheet *kit.Modal
	sheet = kit.Ask(b.host.Window().Canvas(), kit.Question{
		Title: "Restore this copy?", Text: "The gym will be as " + path + " has it. The present file is kept beside it.",
		Actions: []kit.Action{{Label: "Restore it", Danger: true, Do: func() bool {
			sheet.Close() // as above
			b.restore(path)
			return false
		}}},
	})
}

func (b *backups) restore(path string) {
	b.run("Restoring", b.from, func(ctx context.Context) (string, error) { return b.keeper().Restore(ctx, path) }, func(sentence string) {
		b.from.SetText("")
		b.host.Say(sentence, false)
	})
}
