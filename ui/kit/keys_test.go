package kit_test

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"github.com/stretchr/testify/assert"

	"windlass/ui/kit"
)

// The names are those that Fyne's desktop driver sends, read in
// internal/driver/glfw/window.go of version 2.7.1, and checked under a real
// window: Ctrl+Z arrives as Undo and not by its letters.
func TestShortcutOf(t *testing.T) {
	ctrl := fyne.KeyModifierShortcutDefault
	for _, c := range []struct {
		key  fyne.KeyName
		held fyne.KeyModifier
		want fyne.Shortcut
	}{
		{fyne.KeyZ, ctrl, &fyne.ShortcutUndo{}},
		{fyne.KeyY, ctrl, &fyne.ShortcutRedo{}},
		{fyne.KeyX, ctrl, &fyne.ShortcutCut{}},
		{fyne.KeyC, ctrl, &fyne.ShortcutCopy{}},
		{fyne.KeyV, ctrl, &fyne.ShortcutPaste{}},
		{fyne.KeyA, ctrl, &fyne.ShortcutSelectAll{}},
		{fyne.KeyK, ctrl, &desktop.CustomShortcut{KeyName: fyne.KeyK, Modifier: ctrl}},
		{fyne.KeyZ, ctrl | fyne.KeyModifierShift, &desktop.CustomShortcut{KeyName: fyne.KeyZ, Modifier: ctrl | fyne.KeyModifierShift}},
	} {
		assert.Equal(t, c.want, kit.ShortcutOf(c.key, c.held))
	}
}
