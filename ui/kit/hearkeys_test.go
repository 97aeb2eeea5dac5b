package kit_test

import (
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"

	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

// The driver sends a key and then its character to whatever has the keyboard by
// then. Neither a window's key nor a button worked by the space bar may leave its
// character in the field that it leads to.
func TestAKeyIsNotWrittenWhereItLeads(t *testing.T) {
	uitest.App(t, look.Dark())
	field := kit.NewField("Name")
	button := kit.NewButton("Find", field.Focus)
	w := uitest.Open(t, kit.Row(8, button, field))
	heard := 0
	kit.HearKeys(w.Canvas(), func(key *fyne.KeyEvent) {
		if heard++; key.Name == fyne.KeyF {
			field.Focus()
		}
	})
	uitest.Type(t, w, "fxan")
	assert.Equal(t, "xan", field.Text(), "a key of the window")

	field.SetText("")
	w.Canvas().Focus(button)
	uitest.Type(t, w, "fbo")
	assert.Equal(t, "bo", field.Text(), "a key that a button passed on")

	field.SetText("")
	w.Canvas().Focus(button)
	uitest.Type(t, w, " dov")
	assert.Equal(t, "dov", field.Text(), "the space bar on the button")
	assert.Equal(t, 2, heard)
}

// A key that writes nothing is heard at once; a character without a key is none.
func TestKeysAreHeardOnce(t *testing.T) {
	uitest.App(t, look.Dark())
	w := uitest.Open(t, kit.NewBody("nothing here takes keys"))
	var heard []fyne.KeyName
	kit.HearKeys(w.Canvas(), func(key *fyne.KeyEvent) { heard = append(heard, key.Name) })
	w.Canvas().OnTypedRune()('é')
	w.Canvas().OnTypedKey()(&fyne.KeyEvent{Name: fyne.KeyG}) // with Alt held no character follows
	uitest.Key(t, w, fyne.KeyF5)
	w.Canvas().OnTypedRune()('g')
	uitest.Key(t, w, fyne.KeyN, fyne.KeySpace)
	assert.Equal(t, []fyne.KeyName{fyne.KeyF5, fyne.KeyN, fyne.KeySpace}, heard)
}

// Escape empties a search, and then leaves it to the window's single keys.
func TestEscapeLeavesASearch(t *testing.T) {
	uitest.App(t, look.Dark())
	for name, search := range map[string]*kit.Field{
		"alone":    kit.NewSearch("Find"),
		"with ear": kit.NewSearch("Find").OnKey(func(*fyne.KeyEvent) bool { return false }),
	} {
		w := uitest.Open(t, search)
		var heard []fyne.KeyName
		kit.HearKeys(w.Canvas(), func(key *fyne.KeyEvent) { heard = append(heard, key.Name) })
		search.Focus()
		uitest.Type(t, w, "ada")
		uitest.Key(t, w, fyne.KeyEscape)
		assert.Empty(t, search.Text(), name)
		uitest.Type(t, w, "1")
		assert.Equal(t, "1", search.Text(), name)
		uitest.Key(t, w, fyne.KeyEscape, fyne.KeyEscape, fyne.Key4)
		assert.Empty(t, search.Text(), name)
		assert.Equal(t, []fyne.KeyName{fyne.KeyEscape, fyne.Key4}, heard, name)
	}
}
