package store

import "windlass/internal/gym"

var climbs = table[gym.ClimbPlan]{name: "climbs", noun: "climb", cells: func(c *gym.ClimbPlan) []cell {
	return []cell{
		text("id", &c.ID),
		text("name", &c.Name),
		asJSON("rungs", &c.Rungs),
		number("heavy_line", &c.HeavyLine),
		number("ceiling", &c.Ceiling),
		truth("strict", &c.Strict),
		truth("built_in", &c.BuiltIn),
	}
}}

var slots = table[gym.Slot]{name: "slots", noun: "slot", cells: func(s *gym.Slot) []cell {
	return []cell{
		text("id", &s.ID),
		whole("weekday", &s.Weekday),
		whole("at", &s.At),
		whole("minutes", &s.Minutes),
		text("name", &s.Name),
		asJSON("tracks", &s.Tracks),
	}
}}

var closures = table[gym.Closure]{name: "closures", noun: "closure", cells: func(c *gym.Closure) []cell {
	return []cell{
		text("id", &c.ID),
		date("first_day", &c.From),
		date("last_day", &c.Until),
		text("name", &c.Name),
	}
}}

// A cycle and a class are read from their body alone, which is why it comes last:
// it overwrites what the columns said.

var cycles = table[gym.Cycle]{name: "cycles", noun: "cycle", cells: func(c *gym.Cycle) []cell {
	return []cell{
		text("id", &c.ID),
		text("name", &c.Name),
		date("start", &c.Start),
		asJSON("body", c),
	}
}}

var classes = table[gym.Class]{name: "classes", noun: "class", cells: func(c *gym.Class) []cell {
	return []cell{
		text("id", &c.ID),
		text("slot", &c.Slot),
		date("date", &c.On),
		whole("at", &c.At),
		text("stage", &c.Stage),
		asJSON("body", c),
	}
}}
