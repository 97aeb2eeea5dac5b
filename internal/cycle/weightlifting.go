package cycle

import (
	"windlass/internal/day"
	"windlass/internal/gym"
)

// weightlifting trains snatch and clean and jerk by percentages in the bands of
// Prilepin's table, with heavy singles where the wave comes to one rep, and squats
// by climbs. Other doses are common practice, no source.
func weightlifting() Template {
	return Template{
		Key: "weightlifting", Name: "Weightlifting",
		About: "Snatch and clean and jerk by percentages and heavy singles, with pulls, squats and a technique day.",
		plan: skeleton{
			slots: []slot{olympicSnatch(), olympicBackSquat(), olympicCleanAndJerk(), olympicFrontSquat()},
			extra: []extra{easyMidweek(), olympicTechnique()},
		},
	}
}

// misses stands on every day that may come to heavy singles.
const misses = "On a heavy single every miss counts and is logged; after three misses the lift is over for the day. Nobody spots: step away and clear the floor."

func olympicSnatch() slot {
	return slot{
		on: day.Monday, title: "Snatch", lifts: []gym.LiftKey{"snatch"}, percent: true,
		second: []helper{{lift: "snatch-pull", of: "snatch", ofReps: 1, dose: byPulls()}},
		warmUp: drills("easy-row", "3 min", "band-pass-through", "2 × 10", "overhead-squat-with-stick", "2 × 8", "muscle-snatch-with-bar", "2 × 5", "snatch-grip-drop", "2 × 5"),
		workouts: []gym.Workout{
			forTime(4, 12, do(12, "push-up"), do(10, "ring-row"), do(12, "row-calories")),
			emom(12, do(12, "ski-calories"), do(10, "toes-to-bar"), do(8, "dumbbell-shoulder-press")),
			amrap(10, do(6, "pull-up"), do(12, "v-up"), do(200, "row-metres")),
		},
		finishers: [][]gym.FinisherLine{
			finish("external-rotation", "2 × 15 a side", "roll-out", "3 × 8"),
			finish("y-raise", "3 × 12", "wrist-extension", "2 × 15"),
		},
		notes: misses,
		test:  "Six snatch attempts at most, the last for the record. " + misses,
	}
}

func olympicBackSquat() slot {
	return slot{
		on: day.Tuesday, title: "Back squat", lifts: []gym.LiftKey{"back-squat"},
		second: []helper{
			{lift: "push-press", ofReps: 5, dose: bySets()},
			{lift: "bent-over-row", ofReps: 5, dose: bySets()},
		},
		warmUp: drills("easy-bike", "3 min", "ankle-rock", "10 a side", "squat-pry", "60 s", "bodyweight-squat", "2 × 10", "wall-slide", "2 × 10"),
		workouts: []gym.Workout{
			amrap(10, do(10, "box-jump"), do(12, "kettlebell-swing"), do(10, "push-up")),
			intervals(6, 30, 60, "bike-calories"),
			forTime(3, 12, do(16, "kettlebell-rack-lunge"), do(12, "hanging-knee-raise"), do(300, "row-metres")),
		},
		finishers: [][]gym.FinisherLine{
			finish("leg-curl", "3 × 12", "dead-bug", "3 × 8 a side"),
			finish("single-leg-bridge", "3 × 10 a side", "face-pull", "3 × 15"),
		},
		notes: "Safety arms at the lowest point of the squat, collars on.",
		test:  "One back squat record attempt. Spotters at both ends, safety arms set.",
	}
}

func olympicCleanAndJerk() slot {
	return slot{
		on: day.Thursday, title: "Clean and jerk", lifts: []gym.LiftKey{"clean-and-jerk"}, percent: true,
		second: []helper{{lift: "clean-pull", of: "clean-and-jerk", ofReps: 1, dose: byPulls()}},
		warmUp: drills("easy-row", "3 min", "front-rack-stretch", "45 s", "tall-clean", "2 × 5", "jerk-footwork", "2 × 6", "jump-and-land", "2 × 5"),
		workouts: []gym.Workout{
			amrap(10, do(8, "dumbbell-row"), do(12, "sit-up"), do(12, "ski-calories")),
			forTime(3, 12, do(10, "hand-release-push-up"), do(20, "mountain-climber"), do(12, "row-calories")),
			emom(12, do(8, "chest-to-bar-pull-up"), do(15, "hollow-rock"), do(12, "bike-calories")),
		},
		finishers: [][]gym.FinisherLine{
			finish("triceps-pushdown", "3 × 15", "anti-rotation-press", "3 × 10 a side"),
			finish("t-raise", "3 × 12", "forearm-turn", "2 × 12 a side"),
		},
		notes: misses,
		test:  "Six clean and jerk attempts at most, the last for the record. " + misses,
	}
}

func olympicFrontSquat() slot {
	return slot{
		on: day.Friday, title: "Front squat", lifts: []gym.LiftKey{"front-squat"},
		second: []helper{
			{lift: "shoulder-press", ofReps: 5, dose: bySets()},
			{lift: "dead-stop-row", ofReps: 5, dose: bySets()},
		},
		warmUp: drills("easy-bike", "3 min", "front-rack-stretch", "45 s", "goblet-hold", "3 × 20 s", "step-down", "8 a side", "bird-dog-warm-up", "6 a side"),
		workouts: []gym.Workout{
			forTime(4, 13, do(12, "wall-ball"), do(10, "pull-up"), do(200, "run")),
			amrap(11, do(8, "dumbbell-hang-clean-and-press"), do(10, "box-jump-over"), do(12, "sit-up")),
			intervals(8, 30, 45, "burpee", "row-calories"),
		},
		finishers: [][]gym.FinisherLine{
			finish("back-extension-hold", "3 × 30 s", "lateral-raise", "3 × 15"),
			finish("standing-calf-raise", "3 × 15", "biceps-curl", "3 × 12"),
		},
		notes: "When the elbows drop, the set is over.",
		test:  "One front squat record attempt, safety arms set.",
	}
}

// olympicTechnique stays under 70 %, so it may stand beside any day.
func olympicTechnique() extra {
	return extra{
		on: day.Saturday, title: "Technique", training: true,
		practice: []gym.MainLift{scheme("power-snatch", 62, 6, 3), scheme("power-clean-and-jerk", 62, 6, 3), scheme("hang-snatch", 65, 6, 3), scheme("hang-clean", 65, 6, 3)},
		second:   helper{lift: "snatch-balance", of: "snatch", ofReps: 1, dose: dose{light: gym.Sets{Percent: 60, Sets: 4, Reps: 3}}},
		warmUp:   drills("easy-skip", "2 min", "shoulder-circles", "10 each way", "press-in-snatch", "2 × 5", "high-pull-with-bar", "2 × 5", "jump-and-land", "2 × 5"),
		workouts: []gym.Workout{
			plainSets(3, 60, do(500, "row-metres"), do(30, "plank-hold")),
			plainSets(3, 60, do(1000, "bike-metres"), do(12, "hanging-knee-raise")),
		},
		finishers: [][]gym.FinisherLine{finish("side-lying-rotation", "2 × 12 a side", "shin-raise", "2 × 20")},
		notes:     "Every rep as good as the first. Film one set.",
	}
}
