// Package conditioning knows the formats of conditioning: what makes a workout
// whole, how it is written in a line, how it is scored, how long it takes, and
// which one fits a day.
//
// Most callers need [Check] and [Estimate]; [Parse] and [Format] read and write a
// workout as one line of text, [ParseScore] a score, [Compose] proposes a workout
// with its reasons, and [Crowd.Share] says whether a gym has the implements for a
// class to do it. The package promises that a workout which passes
// Check can be shown, timed and written, that the same seed composes the same
// workout, and that a way to share implements works with every athlete's own load.
// It chooses no loads (see package tier) and keeps no time (see package
// clock). Seconds, fatigue and the like are common practice unless a source is
// named; a gym's own scores correct them ([Calibrate]).
package conditioning
