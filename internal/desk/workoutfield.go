package desk

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"windlass/internal/gym"
)

// FieldKind is one thing that a coach says about a workout.
type FieldKind string

// The fields of a workout, under the names that the coach reads.
const (
	LengthField    FieldKind = "Minutes"
	PassesField    FieldKind = "Rounds or reps"
	RoundsField    FieldKind = "Rounds"
	SetsField      FieldKind = "Sets"
	CapField       FieldKind = "Time cap"
	WorkField      FieldKind = "Work"
	RestField      FieldKind = "Rest"
	RestAfterField FieldKind = "Rest after each"
)

// WorkoutFields returns what is to be said about a workout of a format, in order.
func WorkoutFields(f gym.Format) []FieldKind {
	switch f {
	case gym.AMRAP, gym.EMOM:
		return []FieldKind{LengthField}
	case gym.ForTime:
		return []FieldKind{PassesField, CapField, RestAfterField}
	case gym.Chipper:
		return []FieldKind{CapField}
	case gym.Intervals:
		return []FieldKind{RoundsField, WorkField, RestField}
	case gym.PlainSets:
		return []FieldKind{SetsField, RestAfterField}
	}
	return nil
}

// Hint is an example of what stands in the field.
func (k FieldKind) Hint() string {
	switch k {
	case PassesField:
		return "3 or 21-15-9"
	case CapField, RestField, RestAfterField:
		return "none"
	case WorkField:
		return "0:40"
	}
	return ""
}

// Text returns what stands in the field for a workout.
func (k FieldKind) Text(w gym.Workout) string {
	seconds := map[FieldKind]int{LengthField: w.Seconds, CapField: w.Cap, WorkField: w.Work, RestField: w.Rest, RestAfterField: w.Rest}
	if n, ok := seconds[k]; ok {
		if n == 0 {
			return ""
		}
		return clockText(n)
	}
	if k == PassesField && len(w.Reps) > 0 {
		return repList(w.Reps)
	}
	if w.Rounds == 0 {
		return ""
	}
	return strconv.Itoa(w.Rounds)
}

// Read returns the workout with what a coach wrote into the field.
func (k FieldKind) Read(w gym.Workout, text string) (gym.Workout, error) {
	if k == PassesField || k == RoundsField || k == SetsField {
		return readPasses(w, text, k == PassesField)
	}
	n := 0
	optional := k != LengthField && k != WorkField
	if text = strings.TrimSpace(text); text != "" || !optional {
		var err error
		if n, err = k.readTime(text); err != nil {
			return w, err
		}
	}
	switch k {
	case LengthField:
		w.Seconds = n
	case CapField:
		w.Cap = n
	case WorkField:
		w.Work = n
	default:
		w.Rest = n
	}
	return w, nil
}

// readTime reads a time in minutes. In work and in rest a bare number over ten is
// seconds: nobody works 40 minutes at a stretch.
func (k FieldKind) readTime(text string) (int, error) {
	if n, ok := wholeIn(text, 11, 600); ok && (k == WorkField || k == RestField || k == RestAfterField) {
		return n, nil
	}
	return ParseMinutes(text)
}

// readPasses reads a number of rounds or, where it may be one, a rep list.
func readPasses(w gym.Workout, text string, list bool) (gym.Workout, error) {
	if parts := strings.Split(text, "-"); list && len(parts) > 1 {
		reps := make([]int, len(parts))
		for i, p := range parts {
			n, ok := wholeIn(p, 1, 999)
			if !ok {
				return w, fmt.Errorf("read reps %q: they are not whole numbers; write 21-15-9", text)
			}
			reps[i] = n
		}
		w.Rounds, w.Reps = 0, reps
		w.Items = withAmounts(w.Items, func(gym.Item) int { return 0 })
		return w, nil
	}
	n, err := ParseCount(text, 100)
	if err != nil {
		return w, err
	}
	if len(w.Reps) > 0 {
		w.Items = withAmounts(w.Items, func(gym.Item) int { return w.Reps[0] })
	}
	w.Rounds, w.Reps = n, nil
	return w, nil
}

func withAmounts(items []gym.Item, amount func(gym.Item) int) []gym.Item {
	items = slices.Clone(items)
	for i := range items {
		items[i].Amount = amount(items[i])
	}
	return items
}

// ItemAmountText writes how much of a movement an item asks for, with its unit: "300 m".
// It is empty for as much as possible.
func ItemAmountText(n int, m gym.Measure) string {
	if n == 0 {
		return ""
	}
	return strconv.Itoa(n) + amountUnits[m]
}

// ReadAmount reads an amount of a movement with or without its unit.
func ReadAmount(text string, m gym.Measure) (int, error) {
	unit := strings.TrimSpace(amountUnits[m])
	if m == gym.ByReps {
		unit = "reps"
	}
	return ParseCount(strings.TrimSuffix(strings.ToLower(strings.TrimSpace(text)), unit), mostAmount)
}

// mostAmount is as much of a movement as anybody writes.
const mostAmount = 10_000
