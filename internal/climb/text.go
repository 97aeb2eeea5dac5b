package climb

import "strings"

// ReadTime reads a time on a climb's clock as a file of climbs writes it, "02:30"
// or "150", in seconds. The error wraps [ErrPlan].
func ReadTime(text string) (int, error) { return parseTime(strings.TrimSpace(text)) }

// ReadPercent reads a percentage such as "62.5", "62,5" or "62.5 %". The error
// wraps [ErrPlan].
func ReadPercent(text string) (float64, error) { return parsePercent(strings.TrimSpace(text), ';') }

// ReadReps reads the reps of a rung; "day" and nothing are the day's rep count,
// which is 0. The error wraps [ErrPlan].
func ReadReps(text string) (int, error) { return parseReps(strings.TrimSpace(text)) }
