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

// noteBar says on the live floor what will not work out, with the cheapest mend as
// one key. It is there only while something stands in the way.
type noteBar struct {
	live  *live
	notes []desk.SharingNote
	left  string // what the coach leaves as it is
	text  *kit.Text
	does  *kit.Text
	mend  *kit.Button
	all   fyne.CanvasObject
}

func newNoteBar(l *live) *noteBar {
	b := &noteBar{live: l, text: kit.NewStrong("").Shrinks(200).Tone(look.Warn), does: kit.NewCaption("").Shrinks(200)}
	b.mend = kit.NewButton("", b.do).Key("F8")
	leave := kit.NewButton("Leave it", b.leave).Key("F9").Plain()
	words := kit.Fill(kit.Column(0, kit.Fill(), b.text, b.does, kit.Fill()))
	b.all = kit.NewPanel(kit.Pad(look.Gap2, kit.Row(look.Gap2, kit.NewMark(kit.Warning, look.Warn, 16), words, b.mend, leave)))
	b.all.Hide()
	return b
}

// refresh reads anew what stands in the way.
func (b *noteBar) refresh() {
	f := b.live.floor
	b.notes = slices.DeleteFunc(f.desk().Sharing(f.class).Notes, func(n desk.SharingNote) bool { return n.Aside || n.Err != nil })
	// What can be mended comes first.
	slices.SortStableFunc(b.notes, func(x, y desk.SharingNote) int { return toInt(y.Mend != "") - toInt(x.Mend != "") })
	if len(b.notes) == 0 {
		show(b.all, false)
		return
	}
	first := b.notes[0]
	show(b.all, first.Text != b.left)
	b.text.SetText(more(first.Text, len(b.notes)-1))
	b.does.SetText(strings.Join(first.Changes(), " "))
	show(b.does, len(first.Does) > 0)
	show(b.mend, first.Mend != "")
	b.mend.SetLabel(first.Mend)
	b.all.Refresh()
}

func more(text string, others int) string {
	if others == 0 {
		return text
	}
	return fmt.Sprintf("%s And %d more.", text, others)
}

func toInt(yes bool) int {
	if yes {
		return 1
	}
	return 0
}

// do does the mend that is shown.
func (b *noteBar) do() {
	if !b.all.Visible() || b.notes[0].Mend == "" {
		b.live.floor.host.Say("There is nothing to mend.", false)
		return
	}
	b.live.floor.mend(b.notes[0])
}

// leave puts a note away until another stands in the way.
func (b *noteBar) leave() {
	if b.all.Visible() {
		b.left = b.notes[0].Text
		b.refresh()
		b.live.all.Refresh()
	}
}
