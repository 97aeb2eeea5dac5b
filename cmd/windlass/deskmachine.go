package main

import (
	"errors"
	"time"

	"fyne.io/fyne/v2"

	"windlass/internal/sound"
)

// machine is what the Gym room learns and sets of the machine that the desk runs on.
// What takes a while is done beside Fyne's thread.
type machine struct{ *console }

// Speakers looks for the machine's speakers.
func (m machine) Speakers(found func(names []string, err error)) {
	go func() {
		names, err := sound.Devices()
		fyne.Do(func() { found(names, err) })
	}()
}

// Speaker returns the chosen one; it is empty for the usual one.
func (m machine) Speaker() string { return recall(speakerKept) }

// Choose plays the cues through a speaker from now on.
func (m machine) Choose(name string) error {
	m.engine.Choose(name)
	return keepHere(speakerKept, name)
}

// Test lets a cue be heard now, at the volume of the settings.
func (m machine) Test() { m.engine.Test() }

// Wall asks the wall how it shows the class, once it has seen the change after which
// it is asked.
func (m machine) Wall(told func(sentence string)) {
	go func() {
		time.Sleep(3 * wallPoll)
		sentence, err := askWall(m.options.db, askReading)
		switch {
		case errors.Is(err, errNoWall):
			sentence = "Open the wall with Ctrl+W to see here how many pages it turns."
		case err != nil:
			sentence = "The wall does not answer. Close its window and open it again."
		}
		fyne.Do(func() { told(sentence) })
	}()
}
