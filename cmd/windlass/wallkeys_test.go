package main

import (
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/ui/wall"
)

// The desk's calls are letters: one that strays to the wall's window fills no screen
// there, unless the coach has clicked that window. Every letter is tried, with Space.
func TestNoStrayKeyFillsTheScreen(t *testing.T) {
	view := wall.New()
	w := &wallWindow{app: test.NewTempApp(t), view: view, window: test.NewTempWindow(t, nil)}
	w.place = newPlacing(w.window, view)
	w.window.SetContent(newClickable(view.Content(), func() { w.clicked = true }))
	w.window.Resize(fyne.NewSize(400, 300))
	press := func(name fyne.KeyName) { w.typed(&fyne.KeyEvent{Name: name}) }
	for letter := 'A'; letter <= 'Z'; letter++ {
		press(fyne.KeyName(letter))
	}
	press(fyne.KeySpace)
	press(fyne.KeyF11)
	assert.False(t, w.place.fills)
	test.TapCanvas(w.window.Canvas(), fyne.NewPos(100, 100))
	assert.True(t, w.clicked)
}

// A letter that strays to the wall is not lost twice: the desk gets the keyboard, or the
// wall that lies over it says how to leave.
func TestALetterBringsTheDeskBack(t *testing.T) {
	db := filepath.Join(t.TempDir(), "gym.windlass")
	mail, err := listenForWall(db)
	require.NoError(t, err)
	defer mail.Close()
	asked := make(chan string, 1)
	go serve(mail, map[string]func() string{askFront: func() string { asked <- askFront; return "" }})
	w := &wallWindow{options: options{db: db}, place: &placing{}}
	w.strayed()
	assert.Equal(t, askFront, <-asked)
	w.place = &placing{fills: true, only: true}
	w.strayed()
	assert.Equal(t, wayBack, w.place.notice)
}

// A wall that lies over the only desk keeps the keys that take it away.
func TestOverTheDesk(t *testing.T) {
	p := &placing{fills: true, only: true}
	assert.True(t, p.over())
	p.only = false
	assert.False(t, p.over(), "on a screen of its own")
	p = &placing{only: true}
	assert.False(t, p.over(), "as a window")
}
