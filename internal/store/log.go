package store

import "windlass/internal/gym"

// The three logs: rows are only ever added, and voided at most once.

var results = table[gym.Result]{name: "results", noun: "result", valid: gym.Result.Valid, cells: func(r *gym.Result) []cell {
	return append([]cell{
		text("id", &r.ID),
		text("athlete", &r.Athlete),
		text("lift", &r.Lift),
		whole("reps", &r.Reps),
		whole("load", &r.Load),
		text("unit", &r.Unit),
		number("amount", &r.Amount),
		date("date", &r.On),
		text("source", &r.Source),
		maybe("class", &r.Class),
		instant("made", &r.Made),
	}, voided(&r.Void)...)
}}

var bouts = table[gym.Bout]{name: "bouts", noun: "bout", valid: gym.Bout.Valid, cells: func(b *gym.Bout) []cell {
	return append([]cell{
		text("id", &b.ID),
		text("athlete", &b.Athlete),
		text("movement", &b.Movement),
		whole("load", &b.Load),
		text("unit", &b.Unit),
		whole("reps", &b.Reps),
		text("outcome", &b.Outcome),
		date("date", &b.On),
		text("workout", &b.Workout),
		text("score", &b.Score),
		maybe("class", &b.Class),
		instant("made", &b.Made),
	}, voided(&b.Void)...)
}}

var overrides = table[gym.Override]{name: "overrides", noun: "override", valid: gym.Override.Valid, cells: func(o *gym.Override) []cell {
	return append([]cell{
		text("id", &o.ID),
		text("athlete", &o.Athlete),
		maybe("movement", &o.Movement),
		whole("load", &o.Load),
		text("unit", &o.Unit),
		text("tier", &o.Tier),
		number("share", &o.Share),
		date("first_day", &o.From),
		date("last_day", &o.Until),
		text("reason", &o.Reason),
		instant("made", &o.Made),
	}, voided(&o.Void)...)
}}
