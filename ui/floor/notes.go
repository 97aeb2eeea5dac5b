package floor

import (
	"fmt"
	"slices"
	"strings"

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
	does *kit.Prose // what the mend changes
	mend *kit.Button
	do   func()
	all  fyne.CanvasObject
}

func newNoteList(s *setUp) *noteList {
	n := &noteList{setUp: s, fine: kit.NewProse("", 200).Tone(look.Muted), box: kit.Column(look.Gap3)}
	besideBar := kit.Wide(look.Gap2, kit.Column(0)) // no word stands under the scroll bar
	n.all = kit.NewCard("Will it work out?", kit.Scroll(kit.Row(0, kit.Fill(kit.Column(look.Gap2, n.fine, n.box)), besideBar)))
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
	keys := keysOf(n.notes)
	for i, note := range n.notes {
		n.rows[i].set(note, keys[i], func() { f.mend(note) })
		n.box.Objects = append(n.box.Objects, n.rows[i].all)
	}
	n.box.Refresh()
}

func (n *noteList) say(sharing desk.Sharing) {
	switch {
	case len(n.setUp.floor.class.Lifters) == 0:
		n.fine.SetText("Once lifters are here, this says whether everybody has a bar, the clock can be kept and the plates suffice.")
	case n.setUp.floor.moment().Finished:
		n.fine.SetText("The climb is over.")
	case slices.ContainsFunc(sharing.Notes, func(note desk.SharingNote) bool { return !note.Aside }):
		n.fine.SetText("")
	default:
		n.fine.SetText(fineWords(sharing))
	}
	show(n.fine, n.fine.Label() != "")
}

// fineWords say what was judged, and who was not.
func fineWords(sharing desk.Sharing) string {
	words := "Nobody climbs to a rep max today."
	if sharing.Judged > 0 {
		words = fmt.Sprintf("Yes: everybody who climbs has a bar, every rung is long enough and the plates suffice. %d plates are moved in all.", sharing.Moves)
	}
	if sharing.Aside > 0 {
		words += fmt.Sprintf(" Not counted: %s by percentages or without a lift, with bars and plates of their own.", count(sharing.Aside, "lifter"))
	}
	return words
}

func count(n int, noun string) string {
	if n == 1 {
		return "1 " + noun
	}
	return fmt.Sprintf("%d %ss", n, noun)
}

func newNoteRow() *noteRow {
	r := &noteRow{text: kit.NewProse("", 140).Tone(look.Warn), does: kit.NewProse("", 140).Small().Tone(look.Muted)}
	r.mend = kit.NewButton("", func() { r.do() })
	r.all = kit.Column(look.Gap1, r.text, r.does, kit.Row(0, r.mend, kit.Fill()))
	return r
}

func (r *noteRow) set(note desk.SharingNote, key string, do func()) {
	r.text.SetText(note.Text + kit.Sentence(note.Err))
	r.text.Tone(toneIf(note.Aside, look.Muted, look.Warn))
	r.does.SetText(strings.Join(note.Changes(), "\n"))
	show(r.does, len(note.Does) > 0)
	r.do = do
	show(r.mend, note.Mend != "")
	if note.Mend != "" {
		r.mend.SetLabel(note.Mend)
		r.mend.Key(key)
	}
}

// mendKeys are those of the mends, from the top.
var mendKeys = []string{"F8", "F9", "F10"}

// keysOf gives the mends their keys: sharing anew has one of its own.
func keysOf(notes []desk.SharingNote) []string {
	keys, next := make([]string, len(notes)), 0
	for i, note := range notes {
		switch {
		case note.Mend == "":
		case note.Anew:
			keys[i] = "F6"
		case next < len(mendKeys):
			keys[i] = mendKeys[next]
			next++
		}
	}
	return keys
}

// press does the mend of a key; without one it says that there is nothing to mend.
func (n *noteList) press(key string) func() {
	return func() {
		for i, k := range keysOf(n.notes) {
			if k == key {
				n.setUp.floor.mend(n.notes[i])
				return
			}
		}
		n.setUp.floor.host.Say("There is nothing to mend.", false)
	}
}

// mend does what a note offers and says what was changed.
func (f *Floor) mend(note desk.SharingNote) {
	if note.Anew {
		f.shareAnew()
		return
	}
	f.did(note.Do(f.id), note.Said())
}
