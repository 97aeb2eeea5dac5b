package cycle

import (
	"fmt"

	"windlass/internal/gym"
)

// A cycle has 3 to 26 weeks, the test week counted in.
const (
	MinWeeks = 3
	MaxWeeks = 26
)

// lightEvery is the step wave's lighter week (common practice, no source).
const lightEvery = 4

// Weeks returns the kinds of n weeks under a wave. The last is the test week;
// the step wave makes every fourth of the others light. It refuses a length
// outside [MinWeeks] to [MaxWeeks] and an unknown wave.
func Weeks(wave gym.WaveKind, n int) ([]gym.WeekKind, error) {
	if err := knownWave(wave); err != nil {
		return nil, err
	}
	if n < MinWeeks || n > MaxWeeks {
		return nil, fmt.Errorf("lay out weeks: a cycle of %d weeks is too short or too long; choose %d to %d", n, MinWeeks, MaxWeeks)
	}
	weeks := make([]gym.WeekKind, n)
	for i := range weeks {
		weeks[i] = gym.TrainingWeek
		if wave == gym.StepWave && (i+1)%lightEvery == 0 {
			weeks[i] = gym.LightWeek
		}
	}
	weeks[n-1] = gym.TestWeek
	return weeks, nil
}

// Wave returns the rep count of every lift in every week: reps[w][i] for lift i
// in week w+1. Counts go from the most reps to the fewest, as in 5, 3, 1; a test
// week tests the last of them, and a light week has 0, for no rep max at all.
//
// In the block wave all lifts go through the counts together, a stretch of weeks
// for each. In the rolling and step waves every lift goes through them week by
// week, each lift one step after the lift before it. Over its training weeks no
// lift meets one count more than once oftener than another. A cycle with fewer
// training weeks than counts leaves the last count to the test week.
func Wave(wave gym.WaveKind, weeks []gym.WeekKind, lifts int, counts []int) ([][]int, error) {
	if err := knownWave(wave); err != nil {
		return nil, err
	}
	if lifts < 1 || len(counts) == 0 {
		return nil, fmt.Errorf("run wave: %d lifts over %d rep counts make no wave; give at least one of each", lifts, len(counts))
	}
	next := stepper(wave, trainingWeeks(weeks), counts)
	reps := make([][]int, len(weeks))
	nth := 0
	for w, kind := range weeks {
		reps[w] = make([]int, lifts)
		for i := range lifts {
			switch kind {
			case gym.TestWeek:
				reps[w][i] = counts[len(counts)-1]
			case gym.TrainingWeek:
				reps[w][i] = next(nth, i)
			}
		}
		if kind == gym.TrainingWeek {
			nth++
		}
	}
	return reps, nil
}

// stepper returns the rep count of a lift in the nth of n training weeks.
func stepper(wave gym.WaveKind, n int, counts []int) func(nth, lift int) int {
	if wave == gym.BlockWave {
		return func(nth, _ int) int { return counts[blockOf(nth, n, len(counts))] }
	}
	if n > 0 && n < len(counts) {
		counts = counts[:n]
	}
	return func(nth, lift int) int { return counts[(nth+lift)%len(counts)] }
}

// blockOf cuts n weeks into blocks whose lengths differ by one at most, longer
// ones first, and returns the block of the nth week.
func blockOf(nth, n, blocks int) int {
	short, longer := n/blocks, n%blocks
	if inLonger := longer * (short + 1); nth >= inLonger {
		return longer + (nth-inLonger)/short
	}
	return nth / (short + 1)
}

func trainingWeeks(weeks []gym.WeekKind) int {
	n := 0
	for _, k := range weeks {
		if k == gym.TrainingWeek {
			n++
		}
	}
	return n
}

func knownWave(wave gym.WaveKind) error {
	switch wave {
	case gym.BlockWave, gym.RollingWave, gym.StepWave:
		return nil
	}
	return fmt.Errorf("run wave %q: there is no such wave; choose block, rolling or step", wave)
}
