package cycle

import (
	"fmt"
	"slices"
	"strings"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// Spec says what cycle a coach wants.
type Spec struct {
	ID     gym.ID // a new one
	Name   string
	Goal   string
	Start  day.Date // on the gym's first weekday
	Weeks  int      // MinWeeks to MaxWeeks
	Tracks []TrackSpec
}

// TrackSpec says what one track does in the cycle.
type TrackSpec struct {
	Track    gym.ID
	Template string // Template.Key; empty for a track that the coach writes alone
	Wave     gym.WaveKind
}

// Make builds a whole cycle, ready to be checked and edited. Weeks are light
// where any of its tracks runs the step wave, since a week is light for the whole
// gym. It refuses what [Check] would find wrong with the cycle's name, length,
// start and tracks, and says how to mend it.
func Make(s Spec, b *gym.Book) (gym.Cycle, error) {
	if err := s.valid(); err != nil {
		return gym.Cycle{}, err
	}
	c := gym.Cycle{ID: s.ID, Name: s.Name, Goal: s.Goal, Start: s.Start}
	wave := gym.BlockWave
	if slices.ContainsFunc(s.Tracks, func(t TrackSpec) bool { return t.Wave == gym.StepWave }) {
		wave = gym.StepWave
	}
	var err error
	if c.Weeks, err = Weeks(wave, s.Weeks); err != nil {
		return gym.Cycle{}, fmt.Errorf("make cycle %q: %w", s.Name, err)
	}
	for _, t := range s.Tracks {
		p, err := t.plan(c.Weeks, countsOf(b.Settings))
		if err != nil {
			return gym.Cycle{}, fmt.Errorf("make cycle %q: %w", s.Name, err)
		}
		sortDays(p.Days, c.Start.Weekday())
		c.Tracks = append(c.Tracks, p)
	}
	if err := allowed("make", c, b); err != nil {
		return gym.Cycle{}, err
	}
	return c, nil
}

func (s Spec) valid() error {
	if strings.TrimSpace(s.Name) == "" {
		return fmt.Errorf("make cycle: it has no name; write one")
	}
	if s.Start == day.None {
		return fmt.Errorf("make cycle %q: it has no first day; choose one", s.Name)
	}
	if len(s.Tracks) == 0 {
		return fmt.Errorf("make cycle %q: it has no tracks; choose one at least", s.Name)
	}
	for i, t := range s.Tracks {
		if slices.ContainsFunc(s.Tracks[:i], func(o TrackSpec) bool { return o.Track == t.Track }) {
			return fmt.Errorf("make cycle %q: a track stands in it twice; take one out", s.Name)
		}
	}
	return nil
}

func (t TrackSpec) plan(weeks []gym.WeekKind, counts []int) (gym.TrackPlan, error) {
	if t.Template == "" {
		return gym.TrackPlan{Track: t.Track, Wave: t.Wave, SameReps: t.Wave == gym.BlockWave, MainDays: 4}, knownWave(t.Wave)
	}
	template, ok := TemplateOf(t.Template)
	if !ok {
		return gym.TrackPlan{}, fmt.Errorf("find built-in track %q: there is none; choose powerlifting, strongman or weightlifting", t.Template)
	}
	p, err := template.Plan(weeks, t.Wave, counts)
	p.Track = t.Track
	return p, err
}

// Next makes the cycle after a cycle: the same weeks, tracks and plans from
// another first day, with a goal still to be written. It refuses a start before
// the old cycle is over, and what [Check] would find wrong with the whole.
func Next(last gym.Cycle, id gym.ID, name string, start day.Date, b *gym.Book) (gym.Cycle, error) {
	if strings.TrimSpace(name) == "" {
		return gym.Cycle{}, fmt.Errorf("make next cycle: it has no name; write one")
	}
	if start <= last.End() {
		return gym.Cycle{}, fmt.Errorf("make next cycle %q: %q runs until %s; start on %s or later",
			name, last.Name, last.End().Long(), firstOnOrAfter(last.End().Add(1), b.Settings.FirstDay).Long())
	}
	next := gym.Cycle{ID: id, Name: name, Start: start, Weeks: slices.Clone(last.Weeks), Tracks: slices.Clone(last.Tracks)}
	for i := range next.Tracks {
		next.Tracks[i].Days = slices.Clone(next.Tracks[i].Days)
	}
	if err := allowed("make next", next, b); err != nil {
		return gym.Cycle{}, err
	}
	return next, nil
}

// allowed turns what is wrong with a cycle as a whole into an error: a plan can
// be mended day by day, but a cycle in the wrong place cannot stand.
func allowed(what string, c gym.Cycle, b *gym.Book) error {
	wrong := checkCycle(c, b)
	if len(wrong) == 0 {
		return nil
	}
	return fmt.Errorf("%s cycle %q: %s; %s", what, c.Name, sentence(wrong[0].Why), sentence(wrong[0].Mend))
}

// sentence fits a sentence into an error text.
func sentence(s string) string {
	s = strings.TrimSuffix(s, ".")
	return strings.ToLower(s[:1]) + s[1:]
}
