package ui

import (
	"fyne.io/fyne/v2"

	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// showKeys shows what the keyboard does in the room in front and everywhere.
func (w *Window) showKeys() {
	body := kit.Equal(look.Gap6,
		keyColumn("In "+w.Front(), w.rooms[w.front].Keys()),
		keyColumn("Everywhere", w.keys()))
	kit.Ask(w.window.Canvas(), kit.Question{
		Title: "What the keys do", Body: kit.Tall(520, kit.Fill(kit.Scroll(body))), Width: 880, Cancel: "Close",
	})
}

// keyWidth is that of the longest key, in units.
const keyWidth = 96

func keyColumn(title string, keys []room.Key) fyne.CanvasObject {
	rows := []fyne.CanvasObject{kit.NewHeading(title)}
	for _, k := range keys {
		rows = append(rows, kit.Row(look.Gap3, kit.Full(kit.Wide(keyWidth, kit.NewStrong(k.Press))), kit.Fill(kit.NewProse(k.Does, 80))))
	}
	if len(keys) == 0 {
		rows = append(rows, kit.NewCaption("Nothing of its own."))
	}
	return kit.Column(look.Gap2, rows...)
}
