package gymroom_test

import (
	"errors"
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"

	"windlass/ui/gymroom"
	"windlass/ui/look"
	"windlass/ui/room"
	"windlass/ui/uitest"
)

// box is a machine with speakers that a test plugs in.
type box struct {
	names  []string
	chosen string
	err    error // of looking for speakers
	refuse error // of choosing
	tests  int
}

func (b *box) Speakers(found func([]string, error)) { found(b.names, b.err) }
func (b *box) Speaker() string                      { return b.chosen }
func (b *box) Test()                                { b.tests++ }
func (b *box) Wall(told func(string)) {
	told("36 lifters at 8 m on this screen: 8 pages, 30 s a round. With the farthest reader at 6 m, or a screen a third larger: 5 pages, 30 s a round.")
}

func (b *box) Choose(name string) error {
	if b.refuse == nil {
		b.chosen = name
	}
	return b.refuse
}

// onBox is a host that knows its machine.
type onBox struct {
	room.Host
	box *box
}

func (h onBox) Machine() gymroom.Machine { return h.box }

func openOn(t *testing.T, b *box) *uitest.Host {
	t.Helper()
	d, _ := uitest.DemoDesk(t)
	return uitest.Stage(t, d, look.Dark(), stage, func(h room.Host) room.Room { return gymroom.New(onBox{h, b}) })
}

func TestASpeakerIsChosenOnThisMachine(t *testing.T) {
	b := &box{names: []string{"Built-in", "Hall amplifier"}}
	h := openOn(t, b)
	uitest.See(t, h.On, "36 lifters at 8 m on this screen: 8 pages, 30 s a round.")
	uitest.Fill(t, h.On, "Speaker of this machine", "hall")
	uitest.Key(t, h.On, fyne.KeyReturn)
	assert.Equal(t, "Hall amplifier", b.chosen)
	picture(t, h, "machine")
	uitest.Fill(t, h.On, "Speaker of this machine", "usual")
	uitest.Key(t, h.On, fyne.KeyReturn)
	assert.Empty(t, b.chosen)
	h.Press(t, "T")
	uitest.Tap(t, h.On, "Test the sound")
	assert.Equal(t, 2, b.tests)
	assert.Empty(t, h.Desk().CanUndo(), "the gym's file knows nothing of it")
}

// What is chosen but not there stays chosen, and what cannot be is said in place.
func TestAMissingSpeakerStaysChosen(t *testing.T) {
	b := &box{names: []string{"Built-in"}, chosen: "Hall amplifier"}
	h := openOn(t, b)
	uitest.See(t, h.On, "Hall amplifier")
	assert.Equal(t, "Hall amplifier", b.chosen)
	b.err = errors.New("this machine has no sound system that works")
	h.Press(t, "T") // looks again
	uitest.See(t, h.On, "no sound system that works")
}
