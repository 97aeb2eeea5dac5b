package cycle

import (
	"windlass/internal/day"
	"windlass/internal/gym"
)

// strongman stands on the skeleton of powerlifting with more lifts, which take
// turns; only the first of each weekday is tested. Doses are common practice, no
// source.
func strongman() Template {
	return Template{
		Key: "strongman", Name: "Strongman",
		About: "Squats, overhead presses and pulls that take turns, carries and loading after them. Some lifts are never tested.",
		plan: skeleton{
			slots: []slot{strongSquat(), strongOverhead(), strongPull(), strongPress()},
			extra: []extra{easyMidweek(), strongMedley()},
		},
	}
}

func strongSquat() slot {
	return slot{
		on: day.Monday, title: "Squat", lifts: []gym.LiftKey{"back-squat", "paused-squat", "front-squat"},
		second: []helper{
			{lift: "good-morning", ofReps: 5, dose: bySets()},
			{lift: "box-squat", ofReps: 5, dose: bySets()},
		},
		warmUp: drills("easy-bike", "3 min", "ankle-rock", "10 a side", "hug-and-squat", "2 × 6", "bear-hug-walk", "40 m", "side-plank", "30 s a side"),
		workouts: []gym.Workout{
			plainSets(5, 90, do(20, "yoke-carry")),
			amrap(12, do(20, "sled-push"), do(10, "sandbag-bear-hug-squat"), do(10, "sit-up")),
			forTime(4, 14, do(40, "sandbag-bear-hug-carry"), do(6, "tyre-flip"), do(200, "run")),
			intervals(6, 45, 75, "sled-drag", "bike-calories"),
		},
		finishers: [][]gym.FinisherLine{
			finish("backward-sled-walk", "4 × 20 m", "side-bend", "3 × 12 a side"),
			finish("leg-extension", "3 × 12", "standing-calf-raise", "3 × 15"),
		},
		notes: "A lift without a record is found from a light start: go up only while it moves well.",
		test:  "One back squat record attempt. Spotters at both ends, safety arms set.",
	}
}

func strongOverhead() slot {
	return slot{
		on: day.Tuesday, title: "Overhead", lifts: []gym.LiftKey{"log-press", "axle-press"},
		second: []helper{
			{lift: "incline-bench-press", ofReps: 5, dose: bySets()},
			{lift: "dead-stop-row", ofReps: 5, dose: bySets()},
		},
		warmUp: drills("easy-row", "3 min", "wall-slide", "2 × 10", "upper-back-extension", "10", "kneeling-press", "8 a side", "active-hang", "3 × 15 s"),
		workouts: []gym.Workout{
			emom(12, do(4, "log-clean-and-press"), do(12, "ski-calories"), do(10, "ring-row")),
			amrap(12, do(6, "axle-ground-to-overhead"), do(20, "sled-rope-pull"), do(12, "push-up")),
			plainSets(4, 75, do(20, "kettlebell-overhead-carry"), do(12, "dumbbell-row")),
			ladder(12, []int{12, 9, 6, 3}, "sandbag-to-overhead", "burpee"),
		},
		finishers: [][]gym.FinisherLine{
			finish("triceps-extension-lying", "3 × 12", "rear-raise", "3 × 15"),
			finish("hammer-curl", "3 × 12", "face-pull", "3 × 15"),
		},
		notes: "Clean the log once, then press. Drop it in front of you, never behind.",
		test:  "One log press record attempt, cleaned from the floor, with the floor around you clear.",
	}
}

func strongPull() slot {
	return slot{
		on: day.Thursday, title: "Pull", lifts: []gym.LiftKey{"axle-deadlift", "deficit-deadlift", "block-deadlift", "sumo-deadlift"},
		second: []helper{
			{lift: "front-squat", ofReps: 5, dose: bySets()},
			{lift: "romanian-deadlift", ofReps: 5, dose: bySets()},
		},
		warmUp: drills("easy-row", "3 min", "roll-down", "6", "hinge-with-stick", "2 × 8", "lap-to-chest", "2 × 6", "grip-opener", "2 × 15"),
		workouts: []gym.Workout{
			plainSets(5, 90, do(40, "handles-carry")),
			amrap(12, do(6, "sandbag-over-shoulder"), do(40, "sled-drag"), do(12, "back-extension")),
			forTime(3, 14, do(60, "keg-carry"), do(15, "kettlebell-swing"), do(300, "row-metres")),
			intervals(6, 40, 80, "frame-carry-metres", "ball-over-shoulder"),
		},
		finishers: [][]gym.FinisherLine{
			finish("back-extension-hold", "3 × 30 s", "plate-pinch", "3 × 30 s"),
			finish("leg-curl", "3 × 12", "finger-opening", "2 × 20"),
		},
		notes: "Double overhand on the axle, or straps: no mixed grip on a thick bar.",
		test:  "One axle deadlift record attempt, straps as your next contest allows.",
	}
}

func strongPress() slot {
	return slot{
		on: day.Friday, title: "Press and load", lifts: []gym.LiftKey{"push-press", "floor-press", "seated-press"},
		second: []helper{
			{lift: "stone-over-bar", ofReps: 3, dose: byTriples()},
			{lift: "sandbag-to-shoulder", ofReps: 3, dose: byTriples()},
			{lift: "sandbag-over-bar", ofReps: 3, dose: byTriples()},
		},
		warmUp: drills("easy-skip", "2 min", "shoulder-circles", "10 each way", "bottoms-up-press", "6 a side", "kneeling-pick", "6 a side", "ball-to-shoulder", "5 a side"),
		workouts: []gym.Workout{
			forTime(4, 14, do(4, "stone-lap-and-load"), do(10, "dumbbell-push-press"), do(80, "shuttle-run")),
			amrap(12, do(4, "keg-over-bar"), do(20, "sandbag-bear-hug-carry"), do(12, "push-up")),
			emom(12, do(6, "sandbag-clean"), do(12, "row-calories")),
			ladder(14, []int{10, 8, 6, 4}, "tyre-flip", "ball-slam"),
		},
		finishers: [][]gym.FinisherLine{
			finish("lateral-raise", "3 × 15", "preacher-curl", "3 × 12"),
			finish("shrug", "3 × 12", "band-press-down", "3 × 20"),
		},
		notes: "Load to a bar low enough to keep the back long, and keep the elbows straight under a stone.",
		test:  "One push press record attempt.",
	}
}

// strongMedley is Saturday's light round through the implements.
func strongMedley() extra {
	return extra{
		on: day.Saturday, title: "Carry practice",
		warmUp: drills("easy-jog", "400 m", "farmers-march", "30 s", "suitcase-walk", "20 m a side", "foot-rock", "60 s"),
		workouts: []gym.Workout{
			plainSets(4, 90, do(20, "yoke-carry"), do(20, "handles-carry")),
			plainSets(4, 90, do(40, "keg-carry"), do(40, "sled-push")),
			plainSets(4, 90, do(20, "frame-carry-metres"), do(40, "sandbag-bear-hug-carry")),
		},
		notes: "Half of what you could do. Feet fast, breath steady.",
	}
}
