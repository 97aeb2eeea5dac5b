package floor

import (
	"fmt"
	"slices"

	"fyne.io/fyne/v2"

	"windlass/internal/desk"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// noteList says what does not work out about the stations, each with its mend.
type noteList struct {
	setUp *setUp
	notes []desk.SharingNote
	fine  *kit.Prose
	rows  []*noteRow
	box   *fyne.Container
	all   fyne.CanvasObject
}

type noteRow struct {
	text *kit.Prose
	mend *kit.Button
	do   func()
	all  fyne.CanvasObject
}

func newNoteList(s *setUp) *noteList {
	n := &noteList{setUp: s, fine: kit.NewProse("", 200).Tone(look.Muted), box: kit.Column(look.Gap2)}
	n.all = kit.NewCard("Will it work out?", kit.Scroll(kit.Column(look.Gap2, n.fine, n.box)))
	return n
}

func (n *noteList) refresh() {
	f := n.setUp.floor
	sharing := f.desk().Sharing(f.class)
	n.notes = sharing.Notes
	n.say(sharing)
	for len(n.rows) < len(n.notes) {
		n.rows = append(n.rows, newNoteRow())
	}
	n.box.Objects = nil
	first := true
	for i, note := range n.notes {
		n.rows[i].set(note, first && note.Mend != "", func() { n.mend(note) })
		first = first && note.Mend == ""
		n.box.Objects = append(n.box.Objects, n.rows[i].all)
	}
	n.box.Refresh()
}

func (n *noteList) say(sharing desk.Sharing) {
	switch {
	case len(n.setUp.floor.class.Lifters) == 0:
		n.fine.SetText("Once lifters are here, this says whether everybody has a bar, the clock can be kept and the plates suffice.")
	case !slices.ContainsFunc(sharing.Notes, func(note desk.SharingNote) bool { return !note.Aside }):
		n.fine.SetText(fmt.Sprintf("Yes: everybody has a bar, every rung is long enough and the plates suffice. %d discs are moved in all.", sharing.Moves))
	default:
		n.fine.SetText("Not yet:")
	}
}

func newNoteRow() *noteRow {
	r := &noteRow{text: kit.NewProse("", 140).Tone(look.Warn)}
	r.mend = kit.NewButton("", func() { r.do() })
	r.all = kit.Column(look.Gap1, r.text, kit.Row(0, r.mend, kit.Fill()))
	return r
}

func (r *noteRow) set(note desk.SharingNote, first bool, do func()) {
	r.text.SetText(note.Text + kit.Sentence(note.Err))
	r.text.Tone(toneIf(note.Aside, look.Muted, look.Warn))
	r.do = do
	show(r.mend, note.Mend != "")
	if note.Mend != "" {
		r.mend.SetLabel(note.Mend)
		r.mend.Key(mendKey(note, first))
	}
}

// mendKey is the key cap of a mend: the first has one, and sharing anew its own.
func mendKey(note desk.SharingNote, first bool) string {
	switch {
	case note.Anew:
		return "F6"
	case first:
		return "F8"
	}
	return ""
}

func (n *noteList) mend(note desk.SharingNote) {
	if note.Anew {
		n.setUp.share()
		return
	}
	n.setUp.floor.did(note.Do(n.setUp.floor.id), "Done: "+note.Text)
}

// first does the first mend that there is.
func (n *noteList) first() {
	for _, note := range n.notes {
		if note.Mend != "" {
			n.mend(note)
			return
		}
	}
}
