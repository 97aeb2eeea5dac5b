package cycle

import (
	"slices"

	"windlass/internal/gym"
)

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
	return gym.Workout{Format: gym.ForTime, Reps: reps, Cap: capMinutes * minute, Items: unnumbered(movements)}
}

func chipper(capMinutes int, items ...gym.Item) gym.Workout {
	return gym.Workout{Format: gym.Chipper, Cap: capMinutes * minute, Items: items}
}

func emom(minutes int, slots ...gym.Item) gym.Workout {
	return gym.Workout{Format: gym.EMOM, Seconds: minutes * minute, Items: slots}
}

// intervals gives every movement its rounds in turn, as much as possible in each.
func intervals(rounds, work, rest int, movements ...gym.MovementKey) gym.Workout {
	return gym.Workout{Format: gym.Intervals, Rounds: rounds, Work: work, Rest: rest, Items: unnumbered(movements)}
}

func plainSets(rounds, rest int, items ...gym.Item) gym.Workout {
	return gym.Workout{Format: gym.PlainSets, Rounds: rounds, Rest: rest, Items: items}
}

func unnumbered(movements []gym.MovementKey) []gym.Item {
	items := make([]gym.Item, len(movements))
	for i, m := range movements {
		items[i] = do(0, m)
	}
	return items
}
