package gymroom

import (
	"slices"

	"fyne.io/fyne/v2"

	"windlass/ui/kit"
	"windlass/ui/room"
)

// Machine is what the room learns and sets of the machine that the program runs on,
// and of the wall that hangs on it. None of it is in the gym's file: another machine
// has other speakers and screens. What takes a while is answered later, on Fyne's
// thread.
type Machine interface {
	// Speakers looks for the machine's speakers.
	Speakers(found func(names []string, err error))
	// Speaker is the name of the chosen one; empty for the machine's usual one.
	Speaker() string
	// Choose plays the cues through a speaker from now on.
	Choose(name string) error
	// Test lets a cue be heard, also while the sound is off.
	Test()
	// Wall says how much of the class the wall shows at once.
	Wall(told func(sentence string))
}

// onMachine is a host that knows its machine; without one nothing of it is shown.
type onMachine interface{ Machine() Machine }

// ownMachine is what the section about the gym shows of this machine.
type ownMachine struct {
	*Gym
	machine  Machine // nil where nothing is known of it
	speakers *kit.Choice
	looked   bool
	wall     func(sentence string)
}

// The usual speaker among the choices, which need a key each.
const (
	usualKey  = "\x00"
	usualText = "This machine's usual one"
)

func newOwnMachine(g *Gym) *ownMachine {
	m := &ownMachine{Gym: g, wall: func(string) {}}
	if h, ok := g.host.(onMachine); ok {
		m.machine = h.Machine()
	}
	m.speakers = kit.NewChoice("Speaker of this machine", []kit.Option{{Key: usualKey, Text: usualText}}, m.choose)
	m.speakers.SetNote("While it is not connected, the usual one is heard.")
	return m
}

// sound is the choice of a speaker and the button that tests it.
func (m *ownMachine) sound() (rows, actions []fyne.CanvasObject) {
	if m.machine == nil {
		return nil, nil
	}
	return []fyne.CanvasObject{m.speakers}, []fyne.CanvasObject{kit.NewButton("Test the sound", m.test).Key("T")}
}

func (m *ownMachine) keys() []room.Key {
	if m.machine == nil {
		return nil
	}
	return []room.Key{{Press: "T", Does: "Test the sound", Do: m.test}}
}

// refresh asks the wall again. Speakers take longer: they are looked for once, and
// whenever one is tested.
func (m *ownMachine) refresh() {
	if m.machine == nil {
		return
	}
	if !m.looked {
		m.look()
	}
	m.machine.Wall(m.wall)
}

func (m *ownMachine) look() {
	m.looked = true
	m.machine.Speakers(m.found)
}

// found offers what there is, and the chosen one even if it is not.
func (m *ownMachine) found(names []string, err error) {
	m.speakers.SetFault("")
	if err != nil {
		m.speakers.SetFault(kit.Sentence(err))
	}
	options := []kit.Option{{Key: usualKey, Text: usualText}}
	for _, name := range names {
		options = append(options, kit.Option{Key: name, Text: name})
	}
	chosen := m.machine.Speaker()
	if chosen != "" && !slices.Contains(names, chosen) {
		options = append(options, kit.Option{Key: chosen, Text: chosen, Note: "not connected"})
	}
	m.speakers.SetOptions(options)
	if chosen == "" {
		chosen = usualKey
	}
	m.speakers.Set(chosen)
}

func (m *ownMachine) choose(o kit.Option) {
	name, said := o.Key, "The cues are heard through "+o.Text+" from now on."
	if name == usualKey {
		name, said = "", "The cues are heard through this machine's usual speaker from now on."
	}
	if m.host.Fail(m.machine.Choose(name)) {
		m.host.Say(said, false)
	}
}

func (m *ownMachine) test() {
	m.machine.Test()
	m.host.Say("A cue is on its way. Nothing to be heard? See whether the speaker is on, and its volume up.", false)
	m.look()
}
