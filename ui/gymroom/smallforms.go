package gymroom

import (
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

func newFinisherForm(c *catalogue) *entryForm {
	f := newEntryForm(c)
	finisher := func() gym.Finisher {
		v, _ := c.host.Desk().Finisher(c.shown)
		return v
	}
	change := func(set func(*gym.Finisher)) error {
		v := finisher()
		set(&v)
		_, err := c.host.Desk().KeepFinisher(v)
		return err
	}
	name := f.line("Name", false, func() string { return finisher().Name }, func(text string) error {
		return change(func(v *gym.Finisher) { v.Name = text })
	})
	muscle := f.line("Muscle", false, func() string { return finisher().Muscle }, func(text string) error {
		return change(func(v *gym.Finisher) { v.Muscle = text })
	})
	spares := f.line("What it spares or protects", false, func() string { return finisher().Spares }, func(text string) error {
		return change(func(v *gym.Finisher) { v.Spares = text })
	})
	region := f.choice("Region", words(gym.Regions()), func() string { return string(finisher().Region) }, func(key string) error {
		return change(func(v *gym.Finisher) { v.Region = gym.Region(key) })
	})
	f.add(name, kit.Equal(look.Gap3, region, muscle), spares, f.fixed)
	return f
}

func newDrillForm(c *catalogue) *entryForm {
	f := newEntryForm(c)
	drill := func() gym.Drill {
		v, _ := c.host.Desk().Drill(c.shown)
		return v
	}
	change := func(set func(*gym.Drill)) error {
		v := drill()
		set(&v)
		_, err := c.host.Desk().KeepDrill(v)
		return err
	}
	name := f.line("Name", false, func() string { return drill().Name }, func(text string) error {
		return change(func(v *gym.Drill) { v.Name = text })
	})
	dose := f.line("Dose, as in 2 × 10 or 30 s a side", false, func() string { return drill().Dose }, func(text string) error {
		return change(func(v *gym.Drill) { v.Dose = text })
	})
	pattern := f.choice("Pattern", words(gym.Patterns()), func() string { return string(drill().Pattern) }, func(key string) error {
		return change(func(v *gym.Drill) { v.Pattern = gym.Pattern(key) })
	})
	f.add(name, pattern, dose, f.fixed)
	return f
}
