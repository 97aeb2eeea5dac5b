package cycle

import (
	"slices"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// usualClimb is the built-in climb of the built-in tracks' main days.
const usualClimb = "20 minutes"

// skeleton is a built-in track before it has weeks.
type skeleton struct {
	slots []slot  // the main days that follow the wave, in the order of the week
	extra []extra // technique and recovery days, the same in every week
}

// slot is a weekday whose main lift follows the wave.
type slot struct {
	on        day.Weekday
	title     string
	lifts     []gym.LiftKey // that take turns; the first is the one tested
	percent   bool          // by percentages instead of climbs
	second    []helper      // that take turns, a round of rep counts each
	warmUp    []gym.DrillLine
	workouts  []gym.Workout // that take turns week by week
	finishers [][]gym.FinisherLine
	notes     string
	test      string // notes of the test day
}

// extra is a day that no wave touches.
type extra struct {
	on        day.Weekday
	title     string
	practice  []gym.MainLift // of a technique day; none on a recovery day
	second    helper
	warmUp    []gym.DrillLine
	workouts  []gym.Workout
	finishers [][]gym.FinisherLine
	notes     string
	training  bool // left out of the test week
}

// helper is a second lift: what it is counted from, and how hard it is.
type helper struct {
	lift   gym.LiftKey
	of     gym.LiftKey // empty: the lift itself
	ofReps int
	dose   dose
}

// dose is how a second lift is done in a light week, and beside a main lift of
// many reps (four and more), of a few, and of one.
type dose struct{ light, many, few, one gym.Sets }

// The doses of second lifts; common practice, no source. The fewer reps the main
// lift has, the less there is of the second.
func bySets() dose { // of a 5RM
	return dose{
		light: gym.Sets{Percent: 65, Sets: 2, Reps: 6}, many: gym.Sets{Percent: 80, Sets: 4, Reps: 6},
		few: gym.Sets{Percent: 85, Sets: 4, Reps: 5}, one: gym.Sets{Percent: 87.5, Sets: 3, Reps: 4},
	}
}

func byTriples() dose { // of a 3RM
	return dose{
		light: gym.Sets{Percent: 65, Sets: 3, Reps: 2}, many: gym.Sets{Percent: 75, Sets: 5, Reps: 3},
		few: gym.Sets{Percent: 82.5, Sets: 5, Reps: 2}, one: gym.Sets{Percent: 85, Sets: 4, Reps: 2},
	}
}

func byPulls() dose { // of the Olympic lift's 1RM
	return dose{
		light: gym.Sets{Percent: 80, Sets: 3, Reps: 3}, many: gym.Sets{Percent: 90, Sets: 4, Reps: 4},
		few: gym.Sets{Percent: 95, Sets: 4, Reps: 3}, one: gym.Sets{Percent: 100, Sets: 3, Reps: 3},
	}
}

func (d dose) beside(reps int) gym.Sets {
	switch {
	case reps == 0:
		return d.light
	case reps >= 4:
		return d.many
	case reps >= 2:
		return d.few
	}
	return d.one
}

// second is the second part beside a main lift of so many reps, 0 in a light week.
func (h helper) second(reps int) gym.SecondLift {
	if h.lift == "" {
		return gym.SecondLift{}
	}
	s := h.dose.beside(reps)
	return gym.SecondLift{Lift: h.lift, Sets: s.Sets, Reps: s.Reps, Percent: s.Percent, OfReps: h.ofReps, OfLift: h.of}
}

// fill makes a track's plan for the weeks of a cycle under a wave.
func (s skeleton) fill(weeks []gym.WeekKind, wave gym.WaveKind, counts []int) (gym.TrackPlan, error) {
	reps, err := Wave(wave, weeks, len(s.slots), counts)
	if err != nil {
		return gym.TrackPlan{}, err
	}
	p := gym.TrackPlan{Wave: wave, SameReps: wave == gym.BlockWave, MainDays: s.mainDays()}
	for i, at := range waveOrder(len(s.slots), func(i int) bool { return s.slots[i].percent }) {
		p.Days = append(p.Days, s.slots[i].days(weeks, len(counts), func(week int) int { return reps[week-1][at] })...)
	}
	for _, e := range s.extra {
		p.Days = append(p.Days, e.days(weeks)...)
	}
	sortDays(p.Days, day.Monday)
	return p, nil
}

func (s skeleton) mainDays() int {
	n := len(s.slots)
	for _, e := range s.extra {
		if len(e.practice) > 0 {
			n++
		}
	}
	return n
}

// days makes the slot's day of every week; a round is how many rep counts there
// are before they begin again.
func (s slot) days(weeks []gym.WeekKind, round int, reps func(week int) int) []gym.DayPlan {
	t := turns{lifts: s.lifts, met: map[int]int{}}
	trained := 0
	days := make([]gym.DayPlan, 0, len(weeks))
	for w, kind := range weeks {
		n := reps(w + 1)
		d := gym.DayPlan{
			Week: w + 1, Weekday: s.on, Kind: gym.MainDay, Title: s.title, Notes: s.notes,
			WarmUp: s.warmUp, Finisher: turn(s.finishers, w),
		}
		lift, nth := s.lifts[0], 0
		if kind == gym.TrainingWeek {
			lift, nth = t.next(n)
		}
		d.Main = mainOn(kind, lift, s.percent, n, nth, usualClimb)
		if kind == gym.TestWeek {
			d.Title, d.Notes, d.Finisher = "Test: "+s.title, s.test, nil
		} else {
			d.Second = s.second[trained/round%len(s.second)].second(n)
			d.Workout = turn(s.workouts, w)
		}
		if kind == gym.TrainingWeek {
			trained++
		}
		days = append(days, d)
	}
	return days
}

func (e extra) days(weeks []gym.WeekKind) []gym.DayPlan {
	var days []gym.DayPlan
	for w, kind := range weeks {
		if kind == gym.TestWeek && e.training {
			continue
		}
		d := gym.DayPlan{
			Week: w + 1, Weekday: e.on, Kind: gym.RecoveryDay, Title: e.title, Notes: e.notes,
			WarmUp: e.warmUp, Workout: turn(e.workouts, w), Finisher: turn(e.finishers, w),
		}
		if len(e.practice) > 0 {
			d.Kind, d.Main, d.Second = gym.MainDay, turn(e.practice, w), e.second.second(0)
		}
		days = append(days, d)
	}
	return days
}

// turn returns the nth of a list that goes round, and the zero value of none.
func turn[T any](list []T, nth int) T {
	if len(list) == 0 {
		var none T
		return none
	}
	return list[nth%len(list)]
}

// The parts of a day, as the built-in tracks write them.

// drills takes pairs of a drill and its dose.
func drills(pairs ...string) []gym.DrillLine {
	var lines []gym.DrillLine
	for pair := range slices.Chunk(pairs, 2) {
		lines = append(lines, gym.DrillLine{Drill: pair[0], Dose: pair[1]})
	}
	return lines
}

// finish takes pairs of a finisher and its dose.
func finish(pairs ...string) []gym.FinisherLine {
	var lines []gym.FinisherLine
	for pair := range slices.Chunk(pairs, 2) {
		lines = append(lines, gym.FinisherLine{Finisher: pair[0], Dose: pair[1]})
	}
	return lines
}

func do(amount int, m gym.MovementKey) gym.Item { return gym.Item{Movement: m, Amount: amount} }

const minute = 60 // seconds

func amrap(minutes int, items ...gym.Item) gym.Workout {
	return gym.Workout{Format: gym.AMRAP, Seconds: minutes * minute, Items: items}
}

func forTime(rounds, capMinutes int, items ...gym.Item) gym.Workout {
	return gym.Workout{Format: gym.ForTime, Rounds: rounds, Cap: capMinutes * minute, Items: items}
}

// ladder goes through a list of reps with every movement in turn.
func ladder(capMinutes int, reps []int, movements ...gym.MovementKey) gym.Workout {
	w := gym.Workout{Format: gym.ForTime, Reps: reps, Cap: capMinutes * minute}
	for _, m := range movements {
		w.Items = append(w.Items, do(0, m))
	}
	return w
}

func chipper(capMinutes int, items ...gym.Item) gym.Workout {
	return gym.Workout{Format: gym.Chipper, Cap: capMinutes * minute, Items: items}
}

func emom(minutes int, slots ...gym.Item) gym.Workout {
	return gym.Workout{Format: gym.EMOM, Seconds: minutes * minute, Items: slots}
}

func intervals(rounds, work, rest int, items ...gym.Item) gym.Workout {
	return gym.Workout{Format: gym.Intervals, Rounds: rounds, Work: work, Rest: rest, Items: items}
}

func plainSets(rounds, rest int, items ...gym.Item) gym.Workout {
	return gym.Workout{Format: gym.PlainSets, Rounds: rounds, Rest: rest, Items: items}
}
