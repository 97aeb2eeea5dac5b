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
	d := c.host.Desk()
	movement := func() gym.Movement {
		m, _ := d.Movement(gym.MovementKey(c.shown))
		return m
	}
	change := func(set func(*gym.Movement) error) error {
		m := movement()
		if err := set(&m); err != nil {
			return err
		}
		_, err := d.KeepMovement(m)
		return err
	}
	name := f.line("Name", false, func() string { return movement().Name }, func(text string) error {
		return change(func(m *gym.Movement) error { m.Name = text; return nil })
	})
	f.add(f.tiers(gym.StandardM, movement), f.tiers(gym.StandardW, movement),
		note("Full, mid and light for standard M and W; empty for a movement without loads."), name)
	region := f.choice("Region", words(gym.Regions()), func() string { return string(movement().Region) }, func(key string) error {
		return change(func(m *gym.Movement) error { m.Region = gym.Region(key); return nil })
	})
	pattern := f.choice("Pattern", words(gym.Patterns()), func() string { return string(movement().Pattern) }, func(key string) error {
		return change(func(m *gym.Movement) error { m.Pattern = gym.Pattern(key); return nil })
	})
	measure := f.choice("Counted in", words(gym.Measures()), func() string { return string(movement().Measure) }, func(key string) error {
		return change(func(m *gym.Movement) error { m.Measure = gym.Measure(key); return nil })
	})
	with := f.choice("Implement", nil, func() string { return orElse(movement().Implement, bodyWeight) }, func(key string) error {
		return change(func(m *gym.Movement) error {
			m.Implement = key
			if key == bodyWeight {
				m.Implement = ""
			}
			return nil
		})
	})
	usual := f.line("Count of a usual bout", false, func() string { return strconv.Itoa(movement().ReferenceReps) }, func(text string) error {
		return change(func(m *gym.Movement) (err error) { m.ReferenceReps, err = desk.ReadCount(text); return err })
	})
	pace := f.line("Seconds for each", false, func() string { return fmt.Sprintf("%g", movement().Seconds) }, func(text string) error {
		return change(func(m *gym.Movement) (err error) { m.Seconds, err = desk.ReadSeconds(text); return err })
	})
	f.also = func() {
		with.SetOptions(implementOptions(d.Implements()))
		with.Set(orElse(movement().Implement, bodyWeight))
	}
	f.add(kit.Equal(look.Gap3, region, pattern), kit.Equal(look.Gap3, measure, with), kit.Equal(look.Gap3, usual, pace), f.fixed)
	return f
}

// tiers is the line of the three loads for one standard.
func (f *entryForm) tiers(s gym.Standard, movement func() gym.Movement) *kept {
	return f.line("Loads, standard "+string(s), true,
		func() string { return f.of.host.Desk().TierText(movement(), s) },
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
