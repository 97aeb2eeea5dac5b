package gym

import (
	"fmt"
	"slices"
	"strings"
	"unicode"

	"windlass/internal/mass"
)

// Regions returns every region, in the order of choice lists.
func Regions() []Region { return []Region{Lower, Upper, Trunk, WholeBody} }

// Patterns returns every pattern, in the order of choice lists.
func Patterns() []Pattern {
	return []Pattern{Squat, Hinge, Push, Press, Pull, Carry, Olympic, LoadAndLift, Core, Engine}
}

// Measures returns every measure, in the order of choice lists.
func Measures() []Measure {
	return []Measure{ByLoad, ByReps, ByDistance, ByCalories, ByTime, ByHold}
}

// Standards returns the two load standards.
func Standards() []Standard { return []Standard{StandardM, StandardW} }

// entry is what the tables of the catalogue have in common.
type entry interface {
	slug() string
	title() string
	fault() *fault
}

// fault is what is wrong with one field of an entry. The field has the name of
// its column in the catalogue's tables, so that a form and a file say the same.
type fault struct{ field, why string }

func faultf(field, format string, args ...any) *fault {
	return &fault{field, fmt.Sprintf(format, args...)}
}

func firstFault(faults ...*fault) *fault {
	for _, f := range faults {
		if f != nil {
			return f
		}
	}
	return nil
}

func validEntry(noun string, e entry) error {
	if f := e.fault(); f != nil {
		return fmt.Errorf("keep %s %q: %s: %s", noun, e.title(), f.field, f.why)
	}
	return nil
}

// Valid says what keeps l from being kept.
func (l Lift) Valid() error { return validEntry("lift", l) }

// Valid says what keeps m from being kept.
func (m Movement) Valid() error { return validEntry("movement", m) }

// Valid says what keeps f from being kept.
func (f Finisher) Valid() error { return validEntry("finisher", f) }

// Valid says what keeps d from being kept.
func (d Drill) Valid() error { return validEntry("drill", d) }

// Valid says what keeps i from being kept.
func (i Implement) Valid() error { return validEntry("implement", i) }

func (l Lift) slug() string      { return string(l.Key) }
func (m Movement) slug() string  { return string(m.Key) }
func (f Finisher) slug() string  { return f.Key }
func (d Drill) slug() string     { return d.Key }
func (i Implement) slug() string { return i.Kind }

func (l Lift) title() string      { return l.Name }
func (m Movement) title() string  { return m.Name }
func (f Finisher) title() string  { return f.Name }
func (d Drill) title() string     { return d.Name }
func (i Implement) title() string { return i.Kind }

func (l Lift) fault() *fault {
	return firstFault(
		slugFault(colKey, l.slug()), nameFault(l.Name), l.aliasFault(),
		wordFault(colRegion, l.Region, Regions()), wordFault(colPattern, l.Pattern, Patterns()),
		slugFault(colBar, l.Bar), wordFault(colMeasure, l.Measure, Measures()),
		l.repsFault(), l.ratioFault(), l.referenceFault())
}

func (m Movement) fault() *fault {
	return firstFault(
		slugFault(colKey, m.slug()), nameFault(m.Name),
		wordFault(colRegion, m.Region, Regions()), wordFault(colPattern, m.Pattern, Patterns()),
		wordFault(colMeasure, m.Measure, Measures()), m.implementFault(), m.amountFault(), m.loadsFault())
}

func (f Finisher) fault() *fault {
	return firstFault(
		slugFault(colKey, f.Key), nameFault(f.Name), textFault(colMuscle, f.Muscle),
		wordFault(colRegion, f.Region, Regions()), textFault(colSpares, f.Spares))
}

func (d Drill) fault() *fault {
	return firstFault(
		slugFault(colKey, d.Key), nameFault(d.Name),
		wordFault(colPattern, d.Pattern, Patterns()), textFault(colDose, d.Dose))
}

func (i Implement) fault() *fault {
	if f := slugFault(colKind, i.Kind); f != nil {
		return f
	}
	if !i.Unit.Valid() {
		return faultf(colMasses, "the unit %q is not kg or lb", i.Unit)
	}
	for n, m := range i.Masses {
		if m <= 0 || m > mass.Max {
			return faultf(colMasses, "%s is not between nothing and %s", m.In(i.Unit), mass.Max.In(i.Unit))
		}
		if n > 0 && m <= i.Masses[n-1] {
			return faultf(colMasses, "%s does not come after %s; write them from light to heavy",
				m.In(i.Unit), i.Masses[n-1].In(i.Unit))
		}
	}
	return i.countFault()
}

func (i Implement) countFault() *fault {
	if i.Total < 0 || i.Total > MostPieces {
		return faultf(colCount, "%d is not between 0, for not counted, and %d", i.Total, MostPieces)
	}
	if i.Total > 0 && len(i.Each) > 0 {
		return faultf(colCount, "%d in all stands beside a count of each mass; keep one of the two", i.Total)
	}
	for m, n := range i.Each {
		switch {
		case !slices.Contains(i.Masses, m):
			return faultf(colMasses, "there is a count of %s and no such mass; add it", m.In(i.Unit))
		case n < 1 || n > MostPieces:
			return faultf(colMasses, "%d of %s is not between 1 and %d", n, m.In(i.Unit), MostPieces)
		}
	}
	return nil
}

func (l Lift) aliasFault() *fault {
	for _, a := range l.Aliases {
		if spelling(a) == "" {
			return faultf(colAliases, "%q has no letter or digit; take it out", a)
		}
	}
	return nil
}

func (l Lift) repsFault() *fault {
	if len(l.Reps) == 0 {
		return faultf(colReps, "it is empty; write the rep counts to record, as in 1;3;5")
	}
	for i, n := range l.Reps {
		if n < 1 || n > MaxReps {
			return faultf(colReps, "%d reps are not a rep max; write 1 to %d", n, MaxReps)
		}
		if i > 0 && n <= l.Reps[i-1] {
			return faultf(colReps, "%d does not come after %d; write them from few to many", n, l.Reps[i-1])
		}
	}
	return nil
}

// ratioFault takes ratios up to 3: no lift of the trade is worth three of another.
func (l Lift) ratioFault() *fault {
	if l.Related == "" {
		if l.RatioLow != 0 || l.RatioHigh != 0 {
			return faultf(colRelated, "there is a ratio without it; name the lift or take out the ratio")
		}
		return nil
	}
	switch {
	case l.Related == l.Key:
		return faultf(colRelated, "a lift gives no guess of itself; name another")
	case !(l.RatioLow > 0 && l.RatioLow <= 3):
		return faultf(colRatioLow, "%g is not above 0 and at most 3", l.RatioLow)
	case !(l.RatioHigh >= l.RatioLow && l.RatioHigh <= 3):
		return faultf(colRatioHigh, "%g is not between the low ratio %g and 3", l.RatioHigh, l.RatioLow)
	}
	return textFault(colSource, l.Source)
}

func (l Lift) referenceFault() *fault {
	for s, m := range l.Reference {
		if !slices.Contains(Standards(), s) {
			return faultf(colUsual, "%q is not the load standard M or W", s)
		}
		if m <= 0 || m > mass.Max {
			return faultf(colUsual+" "+string(s), "%s is not between nothing and %s", m, mass.Max)
		}
	}
	return nil
}

func (m Movement) implementFault() *fault {
	switch {
	case m.Implement != "":
		return slugFault(colImplement, m.Implement)
	case len(m.Loads) > 0:
		return faultf(colImplement, "there are loads without it; name the kind or take out the loads")
	case m.Pair:
		return faultf(colPair, "there is a pair of nothing; name the kind of implement or take the pair out")
	}
	return nil
}

// amountFault bounds a usual bout by a marathon in metres and a rep by ten minutes.
func (m Movement) amountFault() *fault {
	switch {
	case m.ReferenceReps < 0 || m.ReferenceReps > 50_000:
		return faultf(colReference, "%d is not between 0 and 50000", m.ReferenceReps)
	case m.ReferenceReps == 0 && len(m.Loads) > 0:
		return faultf(colReference, "it is empty; write how many a usual bout has, for the loads to mean something")
	case !(m.Seconds > 0 && m.Seconds <= 600):
		return faultf(colSeconds, "%g is not above 0 and at most 600 seconds", m.Seconds)
	}
	return nil
}

func (m Movement) loadsFault() *fault {
	for s, t := range m.Loads {
		switch {
		case !slices.Contains(Standards(), s):
			return faultf(colFull, "%q is not the load standard M or W", s)
		case t.Full > mass.Max:
			return faultf(string(s)+" "+colFull, "%s is over %s", t.Full, mass.Max)
		case t.Light <= 0:
			return faultf(string(s)+" "+colLight, "%s is no load; write all three tiers or none", t.Light)
		case t.Mid <= t.Light:
			return faultf(string(s)+" "+colMid, "%s is not over the light load %s", t.Mid, t.Light)
		case t.Full <= t.Mid:
			return faultf(string(s)+" "+colFull, "%s is not over the mid load %s", t.Full, t.Mid)
		}
	}
	return nil
}

func slugFault(field, text string) *fault {
	plain := func(r rune) bool { return r == '-' || (r >= 'a' && r <= 'z') || (r >= '0' && r <= '9') }
	if text == "" || strings.Trim(text, "-") != text || strings.IndexFunc(text, func(r rune) bool { return !plain(r) }) >= 0 {
		return faultf(field, "%q is not a key; write small letters, digits and hyphens, as in back-squat", text)
	}
	return nil
}

func nameFault(name string) *fault {
	if spelling(name) == "" {
		return faultf(colName, "%q has no letter or digit; write a name", name)
	}
	return nil
}

func textFault(field, text string) *fault {
	if strings.TrimSpace(text) == "" {
		return faultf(field, "it is empty; write it")
	}
	return nil
}

func wordFault[T ~string](field string, word T, known []T) *fault {
	if slices.Contains(known, word) {
		return nil
	}
	names := make([]string, len(known))
	for i, k := range known {
		names[i] = string(k)
	}
	return faultf(field, "%q is not one of %s", word, strings.Join(names, ", "))
}

// spelling is what two ways to write a name must differ in to be two names: its
// letters and digits, with & and + read as "and".
func spelling(name string) string {
	var b strings.Builder
	for _, r := range strings.ToLower(name) {
		switch {
		case unicode.IsLetter(r) || unicode.IsDigit(r):
			b.WriteRune(r)
		case r == '&' || r == '+':
			b.WriteString("and")
		}
	}
	return b.String()
}
