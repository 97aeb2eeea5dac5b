package cycle

import "windlass/internal/gym"

// Main parts for a rep count of the wave. A lift is trained either by climbing
// to the rep max or, as weightlifters do, by sets at percentages.

// lightMain is a light week's work on a lift: few reps, far from heavy (common
// practice, no source). The Olympic lifts stay inside Prilepin's lowest band.
func lightMain(lift gym.LiftKey, percent bool) gym.MainLift {
	if percent {
		return scheme(lift, 65, 6, 3)
	}
	return scheme(lift, 60, 3, 5)
}

// percentMain is the nth day, from 0, on which an Olympic lift meets a rep count
// of the wave. Many reps stand for the 70s of Prilepin's table and a few for the
// 80s, each a little heavier than the time before; one rep is a heavy single,
// climbed to like any rep max, with its misses counted.
func percentMain(lift gym.LiftKey, reps, nth int) gym.MainLift {
	step := float64(nth % 4)
	switch {
	case reps >= 4:
		return scheme(lift, 72+2*step, 6, 3)
	case reps >= 2:
		return scheme(lift, 81+2*step, 6, 2)
	}
	return gym.MainLift{Lift: lift, Reps: 1}
}

func scheme(lift gym.LiftKey, percent float64, sets, reps int) gym.MainLift {
	return gym.MainLift{Lift: lift, Reps: reps, Scheme: []gym.Sets{{Percent: percent, Sets: sets, Reps: reps}}}
}

// mainOn chooses the main part of a day by its week and its rep count. A test
// week climbs whatever the lift is trained by.
func mainOn(kind gym.WeekKind, lift gym.LiftKey, percent bool, reps, nth int, climb string) gym.MainLift {
	m := gym.MainLift{Lift: lift, Reps: reps}
	switch {
	case kind == gym.LightWeek:
		return lightMain(lift, percent)
	case kind == gym.TrainingWeek && percent:
		m = percentMain(lift, reps, nth)
	}
	if len(m.Scheme) == 0 {
		m.Climb = climb
	}
	return m
}

// turns deals the lifts of one weekday out over the times that each rep count
// comes: the first 5 goes to the first lift, the second 5 to the next, and so on
// round. So a lift that comes as often as there are rep counts meets them all.
type turns struct {
	lifts []gym.LiftKey
	met   map[int]int
}

func (t turns) next(reps int) (lift gym.LiftKey, nth int) {
	nth = t.met[reps]
	t.met[reps]++
	return t.lifts[nth%len(t.lifts)], nth
}

// waveOrder returns the place of each of n weekdays in the wave: lifts that climb
// come first and lifts by percentages after them, each in the order of the week,
// so that the climbs of a week mix their rep counts even where there are only two.
func waveOrder(n int, percent func(i int) bool) []int {
	order := make([]int, n)
	next := 0
	for _, turn := range []bool{false, true} {
		for i := range n {
			if percent(i) == turn {
				order[i] = next
				next++
			}
		}
	}
	return order
}
