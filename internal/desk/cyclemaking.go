package desk

import (
	"fmt"
	"strings"

	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/gym"
)

// NextStart returns the first day on which a new cycle can begin after a day: the
// gym's first weekday.
func (d *Desk) NextStart(after day.Date) day.Date {
	from := max(after.Add(1), d.Today())
	return from.Add((int(d.book.Settings.FirstDay-from.Weekday()) + 7) % 7)
}

// FreeStart returns the first day on which a new cycle meets no other.
func (d *Desk) FreeStart() day.Date {
	last := d.Today().Add(-1)
	for _, c := range d.book.Cycles {
		last = max(last, c.End())
	}
	return d.NextStart(last)
}

// ReadStart reads the first day of a cycle, which must be the gym's first weekday.
func (d *Desk) ReadStart(text string) (day.Date, error) {
	on, err := day.Parse(strings.TrimSpace(text))
	if err != nil {
		return day.None, fmt.Errorf("read first day %q: it is not a date; write %s", strings.TrimSpace(text), d.FreeStart())
	}
	if first := d.book.Settings.FirstDay; on.Weekday() != first {
		return day.None, fmt.Errorf("start on %s: your week begins on %s; start on %s or %s",
			on.Long(), first, on.Add(-(int(on.Weekday()-first)+7)%7), on.Add((int(first-on.Weekday())+7)%7))
	}
	return on, nil
}

// ReadWeeks reads the length of a cycle.
func ReadWeeks(text string) (int, error) {
	n, ok := wholeIn(text, cycle.MinWeeks, cycle.MaxWeeks)
	if !ok {
		return 0, fmt.Errorf("read length %q: a cycle has %d to %d weeks, the test week counted in; write 12",
			strings.TrimSpace(text), cycle.MinWeeks, cycle.MaxWeeks)
	}
	return n, nil
}

// Clash says which cycle a track already runs in during some weeks, and what to
// do; empty is none.
func (d *Desk) Clash(track gym.ID, start day.Date, weeks int) string {
	for _, c := range d.book.Cycles {
		if _, in := c.Plan(track); in && start <= c.End() && c.Start <= start.Add(7*weeks-1) {
			return fmt.Sprintf("It runs in %q until %s. Start on %s or later, or leave it out.", c.Name, c.End().Long(), d.NextStart(c.End()))
		}
	}
	return ""
}

// Draft is a cycle that is not kept yet.
type Draft struct {
	View  CycleView
	Waves []DraftWave // one a track
}

// DraftWave tells how the rep counts of a track run.
type DraftWave struct {
	Track gym.ID
	Lines []string // "Monday  Back squat: 5 3 1 5 3, test 1"
}

// DraftCycle lays a cycle out without keeping it, with every breach of the rules.
func (d *Desk) DraftCycle(s cycle.Spec) (Draft, error) {
	c, err := cycle.Make(s, &d.book)
	if err != nil {
		return Draft{}, err
	}
	draft := Draft{View: d.viewOf(c, func(gym.ID, int, day.Weekday) bool { return false })}
	for _, p := range c.Tracks {
		draft.Waves = append(draft.Waves, DraftWave{p.Track, d.waveLines(c, p, 1)})
	}
	return draft, nil
}

// MakeCycle makes a cycle and keeps it. The spec's ID is given here.
func (d *Desk) MakeCycle(s cycle.Spec) (gym.Cycle, error) {
	s.ID = d.NewID()
	c, err := cycle.Make(s, &d.book)
	if err != nil {
		return gym.Cycle{}, err
	}
	return c, d.do(fmt.Sprintf("make the cycle %q", c.Name), gym.PutCycle{Cycle: c})
}

// NextCycle starts another cycle with the weeks, tracks and plans of one.
func (d *Desk) NextCycle(last gym.ID, name string, start day.Date) (gym.Cycle, error) {
	c, ok := d.Cycle(last)
	if !ok {
		return gym.Cycle{}, fmt.Errorf("make next cycle: there is no cycle to start from; make one first")
	}
	next, err := cycle.Next(c, d.NewID(), name, start, &d.book)
	if err != nil {
		return gym.Cycle{}, err
	}
	return next, d.do(fmt.Sprintf("make the cycle %q", name), gym.PutCycle{Cycle: next})
}

// NextName is a name for the cycle after one: "Spring 2" after "Spring".
func (d *Desk) NextName(name string) string {
	taken := map[string]bool{}
	for _, c := range d.book.Cycles {
		taken[c.Name] = true
	}
	for n := 2; ; n++ {
		if next := fmt.Sprintf("%s %d", name, n); !taken[next] {
			return next
		}
	}
}

// OpenWeek returns the first week of a cycle that a wave may still change in a
// track: the one after the last trained day.
func (d *Desk) OpenWeek(c gym.Cycle, track gym.ID) int {
	trained := d.Trained(c)
	for w := len(c.Weeks); w >= 1; w-- {
		for on := day.Monday; on <= day.Sunday; on++ {
			if trained(track, w, on) {
				return min(w+1, len(c.Weeks))
			}
		}
	}
	return 1
}

// WavePreview tells what running a wave would make of a track's main lifts, a line
// for each weekday, without keeping it.
func (d *Desk) WavePreview(id, track gym.ID, wave gym.WaveKind, from int) ([]string, error) {
	c, ok := d.Cycle(id)
	if !ok {
		return nil, fmt.Errorf("run wave: there is no such cycle; make one first")
	}
	c, err := cycle.RunWave(c, track, wave, from, d.dayReps(), d.Trained(c))
	if err != nil {
		return nil, err
	}
	p, _ := c.Plan(track)
	return d.waveLines(c, p, from), nil
}

// WaveText says what a wave does with the rep counts.
func WaveText(wave gym.WaveKind) string {
	switch wave {
	case gym.BlockWave:
		return "All lifts go through the rep counts together, a block of weeks for each."
	case gym.RollingWave:
		return "Every lift changes its rep count each week, one step after the lift before it."
	case gym.StepWave:
		return "As the rolling wave, and every fourth week is light for the whole gym."
	}
	return ""
}

// waveLines writes the rep counts of a track's main days, a line for each weekday.
func (d *Desk) waveLines(c gym.Cycle, p gym.TrackPlan, from int) []string {
	var lines []string
	for column := range 7 {
		on := AtColumn(c, p.Track, 1, column).Weekday
		var names, counts []string
		for w := from; w <= len(c.Weeks); w++ {
			plan := p.Day(w, on)
			if plan.Kind != gym.MainDay || plan.Main.Empty() {
				continue
			}
			if name := d.liftName(plan.Main.Lift); len(names) == 0 || names[len(names)-1] != name {
				names = append(names, name)
			}
			counts = append(counts, waveCount(plan.Main, c.Weeks[w-1]))
		}
		if len(names) > 0 {
			lines = append(lines, on.Short()+"  "+several(names)+": "+strings.Join(counts, " "))
		}
	}
	return lines
}

// several names a lift, or says that lifts take turns.
func several(names []string) string {
	seen := map[string]bool{}
	for _, n := range names {
		seen[n] = true
	}
	if len(seen) > 1 {
		return fmt.Sprintf("%s and %d more in turn", names[0], len(seen)-1)
	}
	return names[0]
}

func waveCount(m gym.MainLift, kind gym.WeekKind) string {
	text := fmt.Sprint(m.Reps)
	if len(m.Scheme) > 0 {
		text = fmt.Sprintf("%g%%", m.Scheme[len(m.Scheme)-1].Percent)
	}
	switch kind {
	case gym.TestWeek:
		return "test " + text
	case gym.LightWeek:
		return "light"
	}
	return text
}
