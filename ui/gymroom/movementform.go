package gymroom

import (
	"fmt"
	"strconv"

	"fyne.io/fyne/v2"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// bodyWeight is the key of the choice of no implement.
const bodyWeight = "body-weight"

func newMovementForm(c *catalogue) *entryForm {
	f := newEntryForm(c)
	e := editor[gym.Movement]{form: f, now: func() gym.Movement {
		m, _ := c.host.Desk().Movement(gym.MovementKey(c.shown))
		return m
	}, keep: func(m gym.Movement) error {
		_, err := c.host.Desk().KeepMovement(m)
		return err
	}}
	f.add(f.tiers(e, gym.StandardM), f.tiers(e, gym.StandardW),
		note("Full, mid and light for standard M and W; empty for a movement without loads."),
		e.plain("Name", func(m *gym.Movement) *string { return &m.Name }))
	f.movementWords(e)
	usual := e.text("Count of a usual bout",
		func(m gym.Movement) string { return strconv.Itoa(m.ReferenceReps) },
		func(m *gym.Movement, text string) (err error) {
			m.ReferenceReps, err = desk.ReadCount(text)
			return err
		})
	pace := e.text("Seconds for each",
		func(m gym.Movement) string { return fmt.Sprintf("%g", m.Seconds) },
		func(m *gym.Movement, text string) (err error) { m.Seconds, err = desk.ReadSeconds(text); return err })
	f.add(kit.Equal(look.Gap3, usual, pace), f.fixed)
	return f
}

// movementWords adds the choices among words.
func (f *entryForm) movementWords(e editor[gym.Movement]) {
	region := e.word("Region", words(gym.Regions()),
		func(m gym.Movement) string { return string(m.Region) }, func(m *gym.Movement, key string) { m.Region = gym.Region(key) })
	pattern := e.word("Pattern", words(gym.Patterns()),
		func(m gym.Movement) string { return string(m.Pattern) }, func(m *gym.Movement, key string) { m.Pattern = gym.Pattern(key) })
	measure := e.word("Counted in", words(gym.Measures()),
		func(m gym.Movement) string { return string(m.Measure) }, func(m *gym.Movement, key string) { m.Measure = gym.Measure(key) })
	with := e.word("Implement", nil,
		func(m gym.Movement) string { return orElse(m.Implement, bodyWeight) },
		func(m *gym.Movement, key string) {
			m.Implement = key
			if key == bodyWeight {
				m.Implement, m.Pair = "", false
			}
		})
	pair := e.word("An athlete takes", []kit.Option{{Key: "one", Text: "one of it"}, {Key: "pair", Text: "a pair"}},
		func(m gym.Movement) string {
			if m.Pair {
				return "pair"
			}
			return "one"
		}, func(m *gym.Movement, key string) { m.Pair = key == "pair" })
	f.also = func() {
		with.SetOptions(implementOptions(f.of.host.Desk().Implements()))
		with.Set(with.read())
	}
	f.add(kit.Equal(look.Gap3, region, pattern), kit.Equal(look.Gap3, with, pair), measure)
}

// tiers is the line of the three loads for one standard, which is open in every
// movement.
func (f *entryForm) tiers(e editor[gym.Movement], s gym.Standard) *kept {
	return f.line("Loads, standard "+string(s), true,
		func() string { return f.of.host.Desk().TierText(e.now(), s) },
		func(text string) error { return f.of.host.Desk().KeepTiers(gym.MovementKey(f.of.shown), s, text) })
}

func implementOptions(all []desk.OwnImplement) []kit.Option {
	options := []kit.Option{{Key: bodyWeight, Text: "body weight"}}
	for _, i := range all {
		options = append(options, kit.Option{Key: i.Kind, Text: plain(i.Kind)})
	}
	return options
}

func note(text string) fyne.CanvasObject {
	return kit.NewProse(text, 200).Small().Tone(look.Muted)
}

func enable(t fyne.Disableable, yes bool) {
	if yes {
		t.Enable()
	} else {
		t.Disable()
	}
}
