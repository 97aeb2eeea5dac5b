package cycle

import (
	"windlass/internal/day"
	"windlass/internal/gym"
)

// powerlifting is four main days, lower and upper body in turn, so that squat and
// deadlift lie 72 hours apart. Doses are common practice, no source.
func powerlifting() Template {
	return Template{
		Key: "powerlifting", Name: "Powerlifting",
		About: "Squat, bench press, deadlift and shoulder press, a climb each, with conditioning that spares the next day's lift.",
		plan: skeleton{
			slots: []slot{powerSquat(), powerBench(), powerDeadlift(), powerPress()},
			extra: []extra{easyMidweek(), longSaturday()},
		},
	}
}

func powerSquat() slot {
	return slot{
		on: day.Monday, title: "Squat", lifts: []gym.LiftKey{"back-squat"},
		second: []helper{
			{lift: "romanian-deadlift", ofReps: 5, dose: bySets()},
			{lift: "paused-squat", ofReps: 5, dose: bySets()},
			{lift: "front-squat", ofReps: 5, dose: bySets()},
		},
		warmUp: drills("easy-bike", "3 min", "ankle-rock", "10 a side", "squat-pry", "60 s", "goblet-hold", "3 × 20 s", "front-plank", "2 × 30 s"),
		workouts: []gym.Workout{
			amrap(12, do(12, "kettlebell-goblet-squat"), do(10, "box-jump-over"), do(200, "run")),
			forTime(4, 15, do(300, "row-metres"), do(20, "dumbbell-walking-lunge"), do(12, "sit-up")),
			emom(12, do(12, "row-calories"), do(12, "wall-ball"), do(15, "v-up")),
			intervals(8, 40, 50, "bike-calories", "dumbbell-front-squat"),
		},
		finishers: [][]gym.FinisherLine{
			finish("leg-curl", "3 × 12", "standing-calf-raise", "3 × 15"),
			finish("single-leg-bridge", "3 × 10 a side", "anti-rotation-press", "3 × 10 a side"),
		},
		notes: "Safety arms at the lowest point of the squat, collars on.",
		test:  "One squat record attempt. Spotters at both ends, safety arms set. Walk after it, then go home.",
	}
}

func powerBench() slot {
	return slot{
		on: day.Tuesday, title: "Bench press", lifts: []gym.LiftKey{"bench-press"},
		second: []helper{
			{lift: "bent-over-row", ofReps: 5, dose: bySets()},
			{lift: "close-grip-bench-press", ofReps: 5, dose: bySets()},
			{lift: "incline-bench-press", ofReps: 5, dose: bySets()},
		},
		warmUp: drills("easy-row", "3 min", "band-pass-through", "2 × 10", "shoulder-blade-push-up", "2 × 10", "pull-apart", "2 × 15", "empty-bar-bench", "2 × 10"),
		workouts: []gym.Workout{
			forTime(5, 14, do(12, "push-up"), do(10, "dumbbell-row"), do(15, "ski-calories")),
			amrap(10, do(8, "pull-up"), do(12, "dumbbell-floor-press"), do(40, "double-under")),
			ladder(14, []int{18, 14, 10, 6}, "ring-row", "hand-release-push-up", "burpee"),
			emom(15, do(12, "ski-calories"), do(10, "dumbbell-bench-press"), do(12, "hanging-knee-raise")),
		},
		finishers: [][]gym.FinisherLine{
			finish("triceps-pushdown", "3 × 15", "face-pull", "3 × 15"),
			finish("hammer-curl", "3 × 12", "external-rotation", "2 × 15 a side"),
		},
		notes: "Never bench heavy without a spotter.",
		test:  "One bench press record attempt, with a spotter who lifts off and counts the pause.",
	}
}

func powerDeadlift() slot {
	return slot{
		on: day.Thursday, title: "Deadlift", lifts: []gym.LiftKey{"deadlift"},
		second: []helper{
			{lift: "front-squat", ofReps: 5, dose: bySets()},
			{lift: "paused-deadlift", ofReps: 5, dose: bySets()},
			{lift: "deficit-deadlift", ofReps: 5, dose: bySets()},
		},
		warmUp: drills("easy-row", "3 min", "cat-and-cow", "10", "hinge-with-stick", "2 × 8", "light-swing", "2 × 10", "side-plank", "30 s a side"),
		workouts: []gym.Workout{
			amrap(12, do(15, "kettlebell-swing"), do(40, "sled-push"), do(12, "toes-to-bar")),
			chipper(16, do(1000, "row-metres"), do(40, "kettlebell-deadlift"), do(40, "box-step-up"), do(40, "sit-up"), do(400, "run")),
			intervals(6, 60, 90, "kettlebell-farmers-carry", "bike-calories"),
			forTime(3, 13, do(400, "run"), do(18, "back-extension"), do(18, "box-jump")),
		},
		finishers: [][]gym.FinisherLine{
			finish("back-extension-hold", "3 × 30 s", "dead-bug", "3 × 8 a side"),
			finish("sliding-leg-curl", "3 × 8", "plate-pinch", "3 × 30 s"),
		},
		notes: "A mixed grip strains the arm that is turned out: change sides, or hook or strap.",
		test:  "One deadlift record attempt. Stop when the back rounds.",
	}
}

func powerPress() slot {
	return slot{
		on: day.Friday, title: "Shoulder press", lifts: []gym.LiftKey{"shoulder-press"},
		second: []helper{
			{lift: "push-press", ofReps: 5, dose: bySets()},
			{lift: "bent-over-row", ofReps: 5, dose: bySets()},
			{lift: "seated-press", ofReps: 5, dose: bySets()},
		},
		warmUp: drills("easy-skip", "2 min", "wall-slide", "2 × 10", "upper-back-extension", "10", "active-hang", "3 × 15 s", "empty-bar-press", "2 × 8"),
		workouts: []gym.Workout{
			amrap(14, do(10, "dumbbell-push-press"), do(12, "ring-row"), do(250, "row-metres")),
			forTime(4, 14, do(30, "plate-overhead-lunge"), do(10, "barbell-push-press"), do(10, "burpee-over-bar")),
			ladder(12, []int{5, 10, 15, 10, 5}, "dumbbell-thruster", "pull-up"),
			emom(14, do(12, "kettlebell-clean-and-press"), do(12, "bike-calories")),
		},
		finishers: [][]gym.FinisherLine{
			finish("lateral-raise", "3 × 15", "biceps-curl", "3 × 12"),
			finish("y-raise", "3 × 12", "triceps-extension-overhead", "3 × 12"),
		},
		notes: "Ribs down; no leg drive in the press itself.",
		test:  "One press record attempt, strict.",
	}
}

// easyMidweek rests between the two halves of a week. It trains no region that
// the next day lifts with.
func easyMidweek() extra {
	return extra{
		on: day.Wednesday, title: "Easy day",
		warmUp: drills("easy-bike", "3 min", "low-lunge-turn", "5 a side", "chest-turn", "8 a side", "hollow-hold", "3 × 20 s"),
		workouts: []gym.Workout{
			plainSets(3, 60, do(1000, "row-metres"), do(45, "plank-hold")),
			plainSets(3, 60, do(2000, "bike-metres"), do(20, "ball-seated-twist")),
			plainSets(4, 60, do(400, "run"), do(15, "hollow-rock")),
		},
		notes: "Talking pace throughout.",
	}
}

func longSaturday() extra {
	return extra{
		on: day.Saturday, title: "Long and easy",
		warmUp: drills("easy-jog", "400 m", "leg-swing", "12 a side", "inchworm", "8"),
		workouts: []gym.Workout{
			amrap(24, do(500, "row-metres"), do(400, "run"), do(50, "kettlebell-rack-carry")),
			amrap(24, do(1000, "bike-metres"), do(60, "dumbbell-farmers-carry"), do(20, "mountain-climber")),
			amrap(24, do(500, "ski-metres"), do(100, "single-under"), do(40, "bear-crawl")),
		},
		notes: "Steady, with an athlete beside you who can still talk.",
	}
}
