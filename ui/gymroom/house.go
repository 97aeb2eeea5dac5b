package gymroom

import (
	"fyne.io/fyne/v2"

	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// house is the section about the gym as a whole.
type house struct {
	*Gym
	body   fyne.CanvasObject
	own    *ownMachine
	lines  []*kept
	unit   *kit.Segmented
	first  *kit.Segmented
	round  *kit.Segmented
	dark   *kit.Segmented
	volume *kit.Segmented
	sound  *kit.Toggle
	discs  *kit.Toggle
}

// What the segments stand for, in order.
var (
	units     = []mass.Unit{mass.KG, mass.LB}
	roundings = []plates.Rounding{plates.Nearest, plates.Down, plates.Up}
	volumes   = []float64{0.2, 0.4, 0.6, 0.8, 1}
	weekdays  = []day.Weekday{day.Monday, day.Tuesday, day.Wednesday, day.Thursday, day.Friday, day.Saturday, day.Sunday}
)

func newHouse(g *Gym) section {
	h := &house{Gym: g, own: newOwnMachine(g)}
	left := kit.Column(look.Gap4, h.identity(), h.noise())
	right := kit.Column(look.Gap4, h.loads(), h.screens())
	h.body = page("The gym", scroll(kit.Equal(look.Gap4, left, right)))
	return h
}

func (h *house) content() fyne.CanvasObject { return h.body }

func (h *house) keys() []room.Key {
	return append([]room.Key{
		{Press: "L", Does: "Change between the dark and the light look", Do: func() { h.choose(1 - h.dark.Chosen()) }},
		{Press: "S", Does: "Switch the sound on or off", Do: func() { h.setSound(!h.sound.On()) }},
	}, h.own.keys()...)
}

// line adds a line of text that is a part of the settings.
func (h *house) line(label, saved string, read func(gym.Settings) string, write func(*gym.Settings, string) error) *kept {
	k := keep(kit.NewField(label),
		func() string { return read(h.host.Desk().Settings()) },
		func(text string) error {
			return h.saved(saved, h.host.Desk().ChangeSettings(func(s *gym.Settings) error { return write(s, text) }))
		})
	h.lines = append(h.lines, k)
	return k
}

// set changes a part of the settings that is no text.
func (h *house) set(saved string, change func(*gym.Settings)) {
	h.done(saved, h.host.Desk().ChangeSettings(func(s *gym.Settings) error {
		change(s)
		return nil
	}))
	h.refresh()
}

func (h *house) identity() fyne.CanvasObject {
	name := h.line("Name", "The gym's name is saved.", func(s gym.Settings) string { return s.Name },
		func(s *gym.Settings, text string) error { s.Name = text; return nil })
	town := h.line("Town", "The town is saved.", func(s gym.Settings) string { return s.Town },
		func(s *gym.Settings, text string) error { s.Town = text; return nil })
	h.unit = kit.NewSegmented([]string{"Kilograms", "Pounds"}, 0, func(i int) {
		h.set("Loads without a unit are now read in "+string(units[i])+".", func(s *gym.Settings) { s.Unit = units[i] })
	})
	h.first = kit.NewSegmented(shortNames(), 0, func(i int) {
		h.set("Weeks now begin on "+weekdays[i].String()+".", func(s *gym.Settings) { s.FirstDay = weekdays[i] })
	})
	return kit.NewCard("Name and units", kit.Column(look.Gap2, name, town,
		labelled("Loads are written in", h.unit, "An athlete may read theirs in the other unit: see the record."),
		labelled("The week begins on", h.first, "A new cycle starts on this day. Cycles that stand keep theirs.")))
}

func shortNames() []string {
	var names []string
	for _, w := range weekdays {
		names = append(names, w.Short())
	}
	return names
}

func (h *house) screens() fyne.CanvasObject {
	h.dark = kit.NewSegmented([]string{"Dark", "Light"}, 0, h.choose)
	viewer := h.line("Metres from the wall to its farthest reader", "The wall's letters are set for that distance.", desk.ViewerText,
		func(s *gym.Settings, text string) (err error) { s.Viewer, err = desk.ReadViewer(text); return err })
	turns := kit.NewProse("On a screen that is small for it, the wall turns many pages.", 300).Small().Tone(look.Muted)
	h.own.wall = turns.SetText
	h.discs = kit.NewToggle("Discs in the sport's colours", false, func(on bool) {
		h.set("Plate pictures are redrawn.", func(s *gym.Settings) { s.SportDiscs = on })
	})
	return kit.NewCard("Screens", kit.Column(look.Gap2,
		labelled("Look of the desk and the wall  (L)", h.dark, "Dark for a room with the lights down, light for daylight and projectors."),
		viewer, turns, h.discs,
		kit.NewProse("Red for 25 kg, blue for 20 kg and so on, as weightlifting's rules colour them.", 300).Small().Tone(look.Muted)))
}

func (h *house) choose(i int) {
	h.set("The look is changed.", func(s *gym.Settings) { s.Dark = i == 0 })
}

func (h *house) loads() fyne.CanvasObject {
	h.round = kit.NewSegmented([]string{"Nearest", "Down", "Up"}, 0, func(i int) {
		h.set("Light and working rungs are rounded that way from now on.", func(s *gym.Settings) { s.Rounding = roundings[i] })
	})
	reps := h.line("Rep counts of main days", "The rep counts are saved.", desk.DayRepsText,
		func(s *gym.Settings, text string) (err error) { s.DayReps, err = desk.ReadDayReps(text); return err })
	reps.SetNote("From many to few, as in 5, 3, 1.")
	sure := h.line("How sure a conditioning load has to be", "Suggestions are made anew with that confidence.", desk.ConfidenceText,
		func(s *gym.Settings, text string) (err error) {
			s.Confidence, err = desk.ReadConfidence(text)
			return err
		})
	return kit.NewCard("Loads", kit.Column(look.Gap2,
		labelled("Round light and working rungs", h.round, "Top rungs are never rounded under a record that is to be beaten."),
		reps, sure,
		kit.NewProse("A load is suggested when the athlete is at least this likely to hold it, so at 75 per cent up to "+
			"one bout in four is slowed or stopped. A higher figure gives lighter loads. You can always decide otherwise.", 300).Small().Tone(look.Muted)))
}

func (h *house) noise() fyne.CanvasObject {
	h.sound = kit.NewToggle("Sound the clock's cues  (S)", false, h.setSound)
	h.volume = kit.NewSegmented([]string{"20 %", "40 %", "60 %", "80 %", "100 %"}, 0, func(i int) {
		h.set("The volume is changed.", func(s *gym.Settings) { s.Volume = volumes[i] })
	})
	rows, actions := h.own.sound()
	rows = append([]fyne.CanvasObject{
		h.sound,
		labelled("Volume", h.volume, "Every cue is shown on the screen as well, with or without sound."),
	}, rows...)
	return kit.NewCard("Sound", kit.Column(look.Gap2, rows...), actions...)
}

func (h *house) setSound(on bool) {
	said := "The clock is silent from now on."
	if on {
		said = "The clock sounds its cues."
	}
	h.set(said, func(s *gym.Settings) { s.Sound = on })
}

// labelled sets a caption above a choice and says below what it means.
func labelled(caption string, choice fyne.CanvasObject, meaning string) fyne.CanvasObject {
	rows := []fyne.CanvasObject{kit.NewCaption(caption), choice}
	if meaning != "" {
		rows = append(rows, kit.NewProse(meaning, 300).Small().Tone(look.Muted))
	}
	return kit.Column(look.Gap1, append(rows, kit.Tall(look.Gap2, kit.Fill()))...)
}

func (h *house) refresh() {
	s := h.host.Desk().Settings()
	for _, k := range h.lines {
		k.refresh()
	}
	h.unit.Set(indexOf(units, s.Unit))
	h.first.Set(int(s.FirstDay))
	h.round.Set(indexOf(roundings, s.Rounding))
	h.dark.Set(1)
	if s.Dark {
		h.dark.Set(0)
	}
	h.volume.Set(desk.NearestStep(volumes, s.Volume))
	h.sound.Set(s.Sound)
	h.discs.Set(s.SportDiscs)
	h.own.refresh()
}

func indexOf[T comparable](all []T, one T) int {
	for i, v := range all {
		if v == one {
			return i
		}
	}
	return 0
}
