package cycle

import (
	"fmt"
	"slices"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// RunWave writes a wave's rep counts into a track's main days from a week on.
// Each weekday with main days is one lift of the wave, in the order of the week,
// lifts by percentages after those that climb. Where lifts take turns on a
// weekday, they are dealt out anew so that each meets all its rep counts. Lifts
// trained by percentages keep to percentages, and technique days stay as they are.
// The step wave also makes every fourth week from there on light, for the whole
// cycle; other waves leave light weeks light.
func RunWave(c gym.Cycle, track gym.ID, wave gym.WaveKind, from int, counts []int, trained Trained) (gym.Cycle, error) {
	if err := guardWeeks("run wave", c, []gym.ID{track}, from, len(c.Weeks), trained); err != nil {
		return c, err
	}
	weeks := c.Weeks
	if wave == gym.StepWave {
		weeks = lighten(weeks, from)
	}
	slots := waveSlots(c, track)
	if len(slots) == 0 {
		return c, fmt.Errorf("run wave: the track has no main days in the cycle %q; give it some first", c.Name)
	}
	reps, err := Wave(wave, weeks, len(slots), counts)
	if err != nil {
		return c, err
	}
	for other := range c.Tracks {
		if err := guardKinds(c, weeks, c.Tracks[other].Track, trained); err != nil {
			return c, err
		}
	}
	c.Weeks = weeks
	c = replace(c, track, func(days []gym.DayPlan) []gym.DayPlan {
		for i, at := range waveOrder(len(slots), func(i int) bool { return slots[i].percent }) {
			slots[i].write(days, from, weeks, func(week int) int { return reps[week-1][at] })
		}
		return days
	})
	i := slices.IndexFunc(c.Tracks, func(p gym.TrackPlan) bool { return p.Track == track })
	c.Tracks[i].Wave, c.Tracks[i].SameReps = wave, wave == gym.BlockWave
	return c, nil
}

// lighten makes every fourth week from a week on light.
func lighten(weeks []gym.WeekKind, from int) []gym.WeekKind {
	weeks = slices.Clone(weeks)
	for w := from; w < len(weeks); w++ {
		if w%lightEvery == 0 && weeks[w-1] == gym.TrainingWeek {
			weeks[w-1] = gym.LightWeek
		}
	}
	return weeks
}

// guardKinds refuses weeks of another kind where a track was trained.
func guardKinds(c gym.Cycle, weeks []gym.WeekKind, track gym.ID, trained Trained) error {
	for i, kind := range weeks {
		if kind == c.Weeks[i] {
			continue
		}
		if err := guardWeeks("run wave", c, []gym.ID{track}, i+1, i+1, trained); err != nil {
			return err
		}
	}
	return nil
}

// waveSlot is one weekday of a track as one lift of the wave.
type waveSlot struct {
	on      day.Weekday
	lifts   []gym.LiftKey // that take turns on it, in the order in which they come
	percent bool
	climb   string
}

// waveSlots finds the weekdays whose main lifts follow the wave: those that climb
// to a rep max in some week, or work by percentages that are not mere technique.
func waveSlots(c gym.Cycle, track gym.ID) []waveSlot {
	p, _ := c.Plan(track)
	var slots []waveSlot
	for i := range 7 {
		s := waveSlot{on: (c.Start.Weekday() + day.Weekday(i)) % 7}
		follows := false
		for _, d := range p.Days {
			if d.Weekday == s.on && d.Kind == gym.MainDay && !d.Main.Empty() && inTraining(c, d.Week) {
				follows = s.read(d.Main) || follows
			}
		}
		if follows {
			slots = append(slots, s)
		}
	}
	return slots
}

func inTraining(c gym.Cycle, week int) bool {
	return week >= 1 && week <= len(c.Weeks) && c.Weeks[week-1] == gym.TrainingWeek
}

// read takes a day of the slot into account and reports whether it follows the
// wave.
func (s *waveSlot) read(m gym.MainLift) bool {
	if !slices.Contains(s.lifts, m.Lift) {
		s.lifts = append(s.lifts, m.Lift)
	}
	if s.climb == "" {
		s.climb = m.Climb
	}
	s.percent = s.percent || len(m.Scheme) > 0
	return heaviest(m) >= techniqueBelow
}

// write sets the slot's main lifts from a week on. Test days keep their lifts:
// what is tested is the coach's choice.
func (s waveSlot) write(days []gym.DayPlan, from int, weeks []gym.WeekKind, reps func(week int) int) {
	t := turns{lifts: s.lifts, met: map[int]int{}}
	for i := range days {
		d := &days[i]
		if d.Weekday != s.on || d.Kind != gym.MainDay || d.Main.Empty() || d.Week < 1 || d.Week > len(weeks) {
			continue
		}
		n := reps(d.Week)
		if d.Week < from && len(d.Main.Scheme) == 0 {
			n = d.Main.Reps // what was done counts, not what this wave would have had
		}
		lift, nth := d.Main.Lift, 0
		switch weeks[d.Week-1] {
		case gym.TrainingWeek:
			lift, nth = t.next(n)
		case gym.LightWeek:
			lift = s.lifts[0]
		}
		if d.Week >= from {
			d.Main = mainOn(weeks[d.Week-1], lift, s.percent, n, nth, s.climb)
		}
	}
}
