package store

import "windlass/internal/gym"

var lifts = table[gym.Lift]{name: "lifts", noun: "lift", cells: func(l *gym.Lift) []cell {
	return []cell{
		text("key", &l.Key),
		text("name", &l.Name),
		asJSON("aliases", &l.Aliases),
		text("region", &l.Region),
		text("pattern", &l.Pattern),
		text("bar", &l.Bar),
		truth("floor", &l.Floor),
		text("measure", &l.Measure),
		asJSON("reps", &l.Reps),
		maybe("related", &l.Related),
		number("ratio_low", &l.RatioLow),
		number("ratio_high", &l.RatioHigh),
		text("source", &l.Source),
		asJSON("reference", &l.Reference),
		truth("own", &l.Own),
		truth("hidden", &l.Hidden),
	}
}}

var movements = table[gym.Movement]{name: "movements", noun: "movement", cells: func(m *gym.Movement) []cell {
	return []cell{
		text("key", &m.Key),
		text("name", &m.Name),
		text("region", &m.Region),
		text("pattern", &m.Pattern),
		text("measure", &m.Measure),
		text("implement", &m.Implement),
		truth("pair", &m.Pair),
		maybe("linked", &m.Linked),
		whole("reference_reps", &m.ReferenceReps),
		number("seconds", &m.Seconds),
		asJSON("loads", &m.Loads),
		truth("own", &m.Own),
		truth("hidden", &m.Hidden),
	}
}}

var finishers = table[gym.Finisher]{name: "finishers", noun: "finisher", cells: func(f *gym.Finisher) []cell {
	return []cell{
		text("key", &f.Key),
		text("name", &f.Name),
		text("muscle", &f.Muscle),
		text("region", &f.Region),
		text("spares", &f.Spares),
		truth("own", &f.Own),
		truth("hidden", &f.Hidden),
	}
}}

var drills = table[gym.Drill]{name: "drills", noun: "drill", cells: func(d *gym.Drill) []cell {
	return []cell{
		text("key", &d.Key),
		text("name", &d.Name),
		text("pattern", &d.Pattern),
		text("dose", &d.Dose),
		truth("own", &d.Own),
		truth("hidden", &d.Hidden),
	}
}}
