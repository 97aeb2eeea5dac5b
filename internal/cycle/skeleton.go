package cycle

import (
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
