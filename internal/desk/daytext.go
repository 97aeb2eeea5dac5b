package desk

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"windlass/internal/conditioning"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// SchemeText writes sets at percentages as ParseScheme reads them.
func SchemeText(sets []gym.Sets) string {
	parts := make([]string, len(sets))
	for i, s := range sets {
		parts[i] = fmt.Sprintf("%d × %d at %g", s.Sets, s.Reps, s.Percent)
	}
	return strings.Join(parts, ", ")
}

// ParseScheme reads sets at percentages of the 1RM.
//
//	scheme  = sets { "," sets }
//	sets    = number ( "x" | "×" | "*" ) number ( "at" | "@" ) percent [ "%" ]
//	percent = number with at most one decimal point, over 0, at most 110
func ParseScheme(text string) ([]gym.Sets, error) {
	var scheme []gym.Sets
	for part := range strings.SplitSeq(text, ",") {
		s, ok := parseSets(part)
		if !ok {
			return nil, fmt.Errorf("read sets %q: each wants sets, reps and a percentage; write 4 x 2 at 80", strings.TrimSpace(part))
		}
		scheme = append(scheme, s)
	}
	return scheme, nil
}

func parseSets(text string) (gym.Sets, bool) {
	text = strings.NewReplacer("×", "x", "*", "x", "at", "@", "%", "").Replace(strings.ToLower(text))
	head, percent, ok := strings.Cut(text, "@")
	sets, reps, ok2 := strings.Cut(head, "x")
	if !ok || !ok2 {
		return gym.Sets{}, false
	}
	n, reads := wholeIn(sets, 1, 20)
	m, reads2 := wholeIn(reps, 1, 20)
	p, reads3 := ParsePercent(percent)
	return gym.Sets{Percent: p, Sets: n, Reps: m}, reads && reads2 && reads3
}

// ParsePercent reads a percentage over 0 and at most 110, with or without its sign.
func ParsePercent(text string) (float64, bool) {
	text = strings.ReplaceAll(strings.TrimSpace(strings.TrimSuffix(strings.TrimSpace(text), "%")), ",", ".")
	if strings.Trim(text, "0123456789.") != "" {
		return 0, false
	}
	p, err := strconv.ParseFloat(text, 64)
	return p, err == nil && p > 0 && p <= 110
}

// wholeIn reads a whole number within bounds.
func wholeIn(text string, low, high int) (int, bool) {
	n, err := strconv.Atoi(strings.TrimSpace(text))
	return n, err == nil && n >= low && n <= high
}

// ParseCount reads a whole number from 1 to most, as a field of the day editor
// wants it.
func ParseCount(text string, most int) (int, error) {
	n, ok := wholeIn(text, 1, most)
	if !ok {
		return 0, fmt.Errorf("read number %q: it is not a whole number; write 1 to %d", strings.TrimSpace(text), most)
	}
	return n, nil
}

// ParseMinutes reads a length of time and returns seconds.
//
//	time = minutes | minutes ":" seconds | seconds "s"
//
// as in "12", "1:30" and "45 s".
func ParseMinutes(text string) (int, error) {
	text = strings.ToLower(strings.TrimSpace(text))
	bad := fmt.Errorf("read time %q: it is not a time; write minutes as 12, or 1:30, or 45 s", text)
	if s, ok := strings.CutSuffix(text, "s"); ok {
		n, ok := wholeIn(s, 1, 7200)
		if !ok {
			return 0, bad
		}
		return n, nil
	}
	text = strings.TrimSpace(strings.TrimSuffix(text, "min"))
	minutes, seconds, parted := strings.Cut(text, ":")
	m, ok := wholeIn(minutes, 0, 120)
	s := 0
	if parted && ok {
		s, ok = wholeIn(seconds, 0, 59)
		ok = ok && len(seconds) == 2
	}
	if !ok || 60*m+s == 0 {
		return 0, bad
	}
	return 60*m + s, nil
}

// clockText writes seconds as ParseMinutes reads them.
func clockText(seconds int) string { return fmt.Sprintf("%d:%02d", seconds/60, seconds%60) }

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
		return "1:00"
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
		if n, err = ParseMinutes(text); err != nil {
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

// WithFormat returns a workout in another format, with its movements and with a
// length to begin with (common practice, no source).
func (d *Desk) WithFormat(w gym.Workout, f gym.Format) gym.Workout {
	next := gym.Workout{Format: f, Items: w.Items}
	switch f {
	case gym.AMRAP, gym.EMOM:
		next.Seconds = 12 * 60
	case gym.ForTime:
		next.Rounds = 3
	case gym.Intervals:
		next.Rounds, next.Work, next.Rest = 6, 60, 60
	case gym.PlainSets:
		next.Rounds = 3
	case gym.Chipper:
	default:
		return gym.Workout{}
	}
	next.Items = withAmounts(next.Items, func(i gym.Item) int {
		if i.Amount > 0 || i.Movement == "" {
			return i.Amount
		}
		return d.usualAmount(next, i.Movement)
	})
	return next
}

// usualAmount is a third of a usual bout of a movement, or nothing under a rep
// list, which says it.
func (d *Desk) usualAmount(w gym.Workout, key gym.MovementKey) int {
	m, ok := d.Movement(key)
	if len(w.Reps) > 0 || !ok {
		return 0
	}
	return max(1, m.ReferenceReps/3)
}

// WithMovement returns a workout with one more movement, or with another in the
// place of one; no key at all is a minute of rest.
func (d *Desk) WithMovement(w gym.Workout, at int, key gym.MovementKey) gym.Workout {
	if w.Format == "" {
		w = d.WithFormat(w, gym.ForTime)
	}
	w.Items = slices.Clone(w.Items)
	item := gym.Item{Movement: key, Amount: d.usualAmount(w, key)}
	if at >= len(w.Items) {
		w.Items = append(w.Items, item)
		return w
	}
	if old, _ := d.Movement(w.Items[at].Movement); w.Items[at].Amount > 0 {
		if m, _ := d.Movement(key); m.Measure == old.Measure {
			item.Amount = w.Items[at].Amount
		}
	}
	w.Items[at] = item
	return w
}

// TiersText writes the three loads of a movement for a load standard, where the
// day differs from the catalogue or not: "24/20/16". It is empty for a movement
// without a load.
func (d *Desk) TiersText(item gym.Item, standard gym.Standard) string {
	m, _ := d.Movement(item.Movement)
	t := tiersOf(item, m, standard)
	if t.Full == 0 {
		return ""
	}
	u := d.book.Settings.Unit
	return t.Full.Digits(u) + "/" + t.Mid.Digits(u) + "/" + t.Light.Digits(u)
}

// WithTiers returns an item with the three loads that a coach wrote for a load
// standard; an empty text gives it the catalogue's again.
func (d *Desk) WithTiers(item gym.Item, standard gym.Standard, text string) (gym.Item, error) {
	loads := map[gym.Standard]gym.TierLoads{}
	for s, t := range item.Loads {
		loads[s] = t
	}
	delete(loads, standard)
	if strings.TrimSpace(text) != "" {
		t, err := d.parseTiers(text)
		if err != nil {
			return item, err
		}
		if m, _ := d.Movement(item.Movement); m.Loads[standard] != t {
			loads[standard] = t
		}
	}
	item.Loads = loads
	if len(loads) == 0 {
		item.Loads = nil
	}
	return item, nil
}

func (d *Desk) parseTiers(text string) (gym.TierLoads, error) {
	parts := strings.Split(text, "/")
	bad := func(why string) error {
		return fmt.Errorf("read loads %q: %s; write full, mid and light as in 24/20/16", strings.TrimSpace(text), why)
	}
	if len(parts) != 3 {
		return gym.TierLoads{}, bad("there are not three")
	}
	var three [3]mass.Mass
	for i, p := range parts {
		m, _, err := mass.Parse(p, d.book.Settings.Unit)
		if err != nil || m == 0 {
			return gym.TierLoads{}, bad(fmt.Sprintf("%q is no load", strings.TrimSpace(p)))
		}
		three[i] = m
	}
	if three[0] < three[1] || three[1] < three[2] {
		return gym.TierLoads{}, bad("they do not go from heavy to light")
	}
	return gym.TierLoads{Full: three[0], Mid: three[1], Light: three[2]}, nil
}

// WorkoutFault says what keeps a workout from being whole; empty is nothing.
func (d *Desk) WorkoutFault(w gym.Workout) error { return conditioning.Check(w, d.findMovement) }

// UsualDose returns how much of a drill the catalogue gives, and three sets of ten
// for anything else (common practice, no source).
func (d *Desk) UsualDose(key string) string {
	for _, x := range d.book.Drills {
		if x.Key == key {
			return x.Dose
		}
	}
	return "3 × 10"
}

// WithLift returns a main part with another lift. A rep count that the lift keeps
// no record for gives way to the nearest that it does.
func (d *Desk) WithLift(m gym.MainLift, key gym.LiftKey) gym.MainLift {
	m.Lift = key
	lift, _ := d.Lift(key)
	if len(m.Scheme) > 0 || lift.Records(m.Reps) {
		return m
	}
	m.Reps = 0
	for _, n := range d.dayReps() {
		if lift.Records(n) && m.Reps == 0 {
			m.Reps = n
		}
	}
	if m.Reps == 0 && len(lift.Reps) > 0 {
		m.Reps = lift.Reps[len(lift.Reps)-1]
	}
	return m
}

// ByPercent returns a main part that works by percentages; it begins with five
// sets of three at 75, inside Prilepin's ranges.
func ByPercent(m gym.MainLift) gym.MainLift {
	if len(m.Scheme) == 0 {
		m.Scheme = []gym.Sets{{Percent: 75, Sets: 5, Reps: 3}}
	}
	m.Reps = 0
	return m
}

// WithSecond returns a second lift with another lift; a first one begins with four
// sets of six at 75 per cent of the 5RM (common practice, no source).
func (d *Desk) WithSecond(s gym.SecondLift, key gym.LiftKey) gym.SecondLift {
	if s.Empty() {
		s = gym.SecondLift{Sets: 4, Reps: 6, Percent: 75, OfReps: 5}
	}
	s.Lift, s.OfLift = key, ""
	if lift, _ := d.Lift(key); !lift.Records(s.OfReps) && len(lift.Reps) > 0 {
		s.OfReps = lift.Reps[len(lift.Reps)-1]
	}
	return s
}
