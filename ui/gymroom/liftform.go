package gymroom

import (
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

func newLiftForm(c *catalogue) *entryForm {
	f := newEntryForm(c)
	lift := func() gym.Lift {
		l, _ := c.host.Desk().Lift(gym.LiftKey(c.shown))
		return l
	}
	change := func(set func(*gym.Lift) error) error {
		l := lift()
		if err := set(&l); err != nil {
			return err
		}
		_, err := c.host.Desk().KeepLift(l)
		return err
	}
	name := f.line("Name", false, func() string { return lift().Name }, func(text string) error {
		return change(func(l *gym.Lift) error { l.Name = text; return nil })
	})
	reps := f.line("Rep counts that are recorded", false, func() string { return desk.LiftRepsText(lift()) }, func(text string) error {
		return change(func(l *gym.Lift) (err error) { l.Reps, err = desk.ReadLiftReps(text); return err })
	})
	region := f.choice("Region", words(gym.Regions()), func() string { return string(lift().Region) }, func(key string) error {
		return change(func(l *gym.Lift) error { l.Region = gym.Region(key); return nil })
	})
	pattern := f.choice("Pattern", words(gym.Patterns()), func() string { return string(lift().Pattern) }, func(key string) error {
		return change(func(l *gym.Lift) error { l.Pattern = gym.Pattern(key); return nil })
	})
	bar := f.choice("Bar or implement", nil, func() string { return lift().Bar }, func(key string) error {
		return change(func(l *gym.Lift) error { l.Bar = key; return nil })
	})
	floor := kit.NewToggle("Starts from the floor", false, func(on bool) {
		c.host.Fail(c.saved("Saved.", change(func(l *gym.Lift) error { l.Floor = on; return nil })))
		f.rest()
	})
	f.also = func() {
		bar.SetOptions(kindOptions(c.host.Desk().LiftKinds()))
		bar.Set(lift().Bar)
		floor.Set(lift().Floor)
		enable(floor, f.isOwn())
	}
	f.add(name, kit.Equal(look.Gap3, region, pattern), bar, reps, floor, f.fixed)
	return f
}
