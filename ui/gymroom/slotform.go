package gymroom

import (
	"fmt"
	"slices"
	"strconv"

	"fyne.io/fyne/v2"

	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// slotForm changes the class under the cursor of the timetable.
type slotForm struct {
	of     *timetable
	card   *kit.Card
	name   *kept
	lines  []*kept
	on     *kit.Choice
	tracks []*kit.Toggle
	list   *fyne.Container
	all    *fyne.Container // what is hidden while no class is chosen
}

func newSlotForm(t *timetable) *slotForm {
	f := &slotForm{of: t, list: kit.Column(0)}
	f.name = f.line("Name", func(s gym.Slot) string { return s.Name }, func(s *gym.Slot, text string) error {
		s.Name = text
		return nil
	})
	at := f.line("Begins at", func(s gym.Slot) string { return s.At.String() }, func(s *gym.Slot, text string) (err error) {
		s.At, err = day.ParseClock(text)
		return err
	})
	length := f.line("Minutes", func(s gym.Slot) string { return strconv.Itoa(s.Minutes) }, func(s *gym.Slot, text string) (err error) {
		s.Minutes, err = desk.ReadCount(text)
		return err
	})
	f.on = kit.NewChoice("Weekday", weekdayOptions(), func(o kit.Option) {
		f.keep(func(s *gym.Slot) { s.Weekday = weekdays[indexOfKey(o.Key)] })
	})
	f.all = kit.Column(look.Gap1, f.name, f.on, kit.Equal(look.Gap3, at, length),
		kit.NewCaption("Tracks that run in it; none ticked means all"), f.list)
	f.card = kit.NewCard("Class", kit.Column(look.Gap3, f.all, t.gaps),
		kit.NewButton("", t.grid.Focus).Key("C").Plain().Tip("Go to the week's classes"))
	return f
}

func (f *slotForm) line(label string, read func(gym.Slot) string, write func(*gym.Slot, string) error) *kept {
	k := keep(kit.NewField(label), func() string {
		s, ok := f.of.slot()
		if !ok {
			return ""
		}
		return read(s)
	}, func(text string) error {
		return f.of.change("The class is saved.", func(s *gym.Slot) error { return write(s, text) })
	})
	f.lines = append(f.lines, k)
	return k
}

// keep changes what is no line of text.
func (f *slotForm) keep(set func(*gym.Slot)) {
	f.of.host.Fail(f.of.change("The class is saved.", func(s *gym.Slot) error {
		set(s)
		return nil
	}))
	f.rest()
}

// weekdayOptions are the days of the week; a key is the number of the weekday.
func weekdayOptions() []kit.Option {
	var options []kit.Option
	for i, w := range weekdays {
		options = append(options, kit.Option{Key: fmt.Sprint(i + 1), Text: w.String()})
	}
	return options
}

func indexOfKey(key string) int {
	return slices.IndexFunc(weekdayOptions(), func(o kit.Option) bool { return o.Key == key })
}

func (f *slotForm) show() {
	for _, k := range f.lines {
		k.show()
	}
	f.rest()
}

func (f *slotForm) refresh() {
	for _, k := range f.lines {
		k.refresh()
	}
	f.rest()
}

// rest shows the weekday and the tracks.
func (f *slotForm) rest() {
	s, ok := f.of.slot()
	title := "No class chosen"
	f.all.Hidden = !ok
	if ok {
		title = s.Name
		f.on.Set(fmt.Sprint(int(s.Weekday) + 1))
	}
	f.card.SetTitle(title)
	tracks := f.of.host.Desk().Tracks()
	for len(f.tracks) < len(tracks) {
		at := len(f.tracks)
		toggle := kit.NewToggle(tracks[at].Name, false, func(on bool) { f.track(at, on) })
		f.tracks = append(f.tracks, toggle)
		f.list.Add(toggle)
	}
	for i, toggle := range f.tracks {
		toggle.Hidden = i >= len(tracks)
		if i < len(tracks) {
			toggle.SetLabel(tracks[i].Name)
			toggle.Set(slices.Contains(s.Tracks, tracks[i].ID))
		}
	}
	f.list.Refresh()
}

func (f *slotForm) track(at int, on bool) {
	id := f.of.host.Desk().Tracks()[at].ID
	f.keep(func(s *gym.Slot) {
		s.Tracks = slices.DeleteFunc(s.Tracks, func(t gym.ID) bool { return t == id })
		if on {
			s.Tracks = append(s.Tracks, id)
		}
	})
}
