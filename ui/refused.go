package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"windlass/ui/kit"
)

// RefusedSize is how large the window of [Refused] opens, in units.
var RefusedSize = fyne.NewSize(640, 320)

// Refused returns what a window shows when the gym's file cannot be opened, since
// who starts the program by its icon sees no terminal. leave closes it.
func Refused(in fyne.Window, title string, err error, leave func()) fyne.CanvasObject {
	in.SetPadded(false)
	kit.HearKeys(in.Canvas(), func(key *fyne.KeyEvent) {
		if key.Name == fyne.KeyEscape || key.Name == fyne.KeyReturn || key.Name == fyne.KeyEnter {
			leave()
		}
	})
	page := kit.NewEmpty(title, kit.Sentence(err), kit.NewButton("Close", leave).Primary().Key("Enter"))
	return kit.NewShell(container.NewStack(page))
}
