package gymroom

import (
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

func newFinisherForm(c *catalogue) *entryForm {
	f := newEntryForm(c)
	e := editor[gym.Finisher]{form: f, now: func() gym.Finisher {
		v, _ := c.host.Desk().Finisher(c.shown)
		return v
	}, keep: func(v gym.Finisher) error {
		_, err := c.host.Desk().KeepFinisher(v)
		return err
	}}
	name := e.plain("Name", func(v *gym.Finisher) *string { return &v.Name })
	muscle := e.plain("Muscle", func(v *gym.Finisher) *string { return &v.Muscle })
	spares := e.plain("What it spares or protects", func(v *gym.Finisher) *string { return &v.Spares })
	region := e.word("Region", words(gym.Regions()),
		func(v gym.Finisher) string { return string(v.Region) }, func(v *gym.Finisher, key string) { v.Region = gym.Region(key) })
	f.add(name, kit.Equal(look.Gap3, region, muscle), spares, f.fixed)
	return f
}

func newDrillForm(c *catalogue) *entryForm {
	f := newEntryForm(c)
	e := editor[gym.Drill]{form: f, now: func() gym.Drill {
		v, _ := c.host.Desk().Drill(c.shown)
		return v
	}, keep: func(v gym.Drill) error {
		_, err := c.host.Desk().KeepDrill(v)
		return err
	}}
	name := e.plain("Name", func(v *gym.Drill) *string { return &v.Name })
	dose := e.plain("Dose, as in 2 × 10 or 30 s a side", func(v *gym.Drill) *string { return &v.Dose })
	pattern := e.word("Pattern", words(gym.Patterns()),
		func(v gym.Drill) string { return string(v.Pattern) }, func(v *gym.Drill, key string) { v.Pattern = gym.Pattern(key) })
	f.add(name, pattern, dose, f.fixed)
	return f
}
