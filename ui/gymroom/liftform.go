package gymroom

import (
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

func newLiftForm(c *catalogue) *entryForm {
	f := newEntryForm(c)
	e := editor[gym.Lift]{form: f, now: func() gym.Lift {
		l, _ := c.host.Desk().Lift(gym.LiftKey(c.shown))
		return l
	}, keep: func(l gym.Lift) error {
		_, err := c.host.Desk().KeepLift(l)
		return err
	}}
	name := e.plain("Name", func(l *gym.Lift) *string { return &l.Name })
	reps := e.text("Rep counts that are recorded", desk.LiftRepsText, func(l *gym.Lift, text string) (err error) {
		l.Reps, err = desk.ReadLiftReps(text)
		return err
	})
	region := e.word("Region", words(gym.Regions()),
		func(l gym.Lift) string { return string(l.Region) }, func(l *gym.Lift, key string) { l.Region = gym.Region(key) })
	pattern := e.word("Pattern", words(gym.Patterns()),
		func(l gym.Lift) string { return string(l.Pattern) }, func(l *gym.Lift, key string) { l.Pattern = gym.Pattern(key) })
	bar := e.word("Bar or implement", nil, func(l gym.Lift) string { return l.Bar }, func(l *gym.Lift, key string) { l.Bar = key })
	floor := f.floor(e)
	f.also = func() {
		bar.SetOptions(kindOptions(c.host.Desk().LiftKinds()))
		bar.Set(e.now().Bar)
		floor.Set(e.now().Floor)
		enable(floor, f.isOwn())
	}
	f.add(name, kit.Equal(look.Gap3, region, pattern), bar, reps, floor, f.fixed)
	return f
}

// floor says whether the lift starts from the floor, where it wants plates of
// full diameter.
func (f *entryForm) floor(e editor[gym.Lift]) *kit.Toggle {
	return kit.NewToggle("Starts from the floor", false, func(on bool) {
		f.of.host.Fail(f.of.saved("Saved.", e.change(func(l *gym.Lift) error { l.Floor = on; return nil })))
		f.rest()
	})
}
