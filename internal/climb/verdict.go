package climb

import (
	"fmt"

	"windlass/internal/gym"
	"windlass/internal/mass"
)

// Grade is what a day's result amounts to.
type Grade string

// The grades: under the heavy line; from there to the record; a new record.
const (
	Under  Grade = "under"
	Heavy  Grade = "heavy"
	Record Grade = "record"
)

// Verdict is what a day's result means.
type Verdict struct {
	Grade   Grade
	Percent float64 // of the record, or of the estimate that stood in for it; 0 without either
	Raises  bool    // the result becomes the record
	Why     string  // one sentence for the coach
	Doubt   string  // why it is hardly what was lifted, see [Doubt]; empty where it may be
}

// Judge weighs the load of the day's rep max against the record for the same rep
// count. Where source is gym.Estimate there was no record yet, and where record
// is 0 nothing at all: then any result becomes the record. Otherwise only a
// strictly heavier load does; a tie does not, and a lighter load never lowers
// it. The heavy line is in per cent of the record.
func Judge(load, record mass.Mass, source gym.Source, heavyLine float64, u mass.Unit) Verdict {
	if record <= 0 {
		return Verdict{Grade: Record, Raises: true, Why: fmt.Sprintf("%s is the first result: it becomes the record.", load.In(u))}
	}
	v := Verdict{Grade: grade(load, record, heavyLine), Percent: percentOf(load, record)}
	if source == gym.Estimate {
		v.Grade, v.Raises = Record, true
		v.Why = fmt.Sprintf("%s is %.1f %% of the estimate of %s, and the first result: it becomes the record.", load.In(u), v.Percent, record.In(u))
		return v
	}
	v.Raises = load > record
	v.Why = fmt.Sprintf("%s is %.1f %% of the record of %s: %s.", load.In(u), v.Percent, record.In(u), v.meaning(load == record, heavyLine))
	return v
}

func grade(load, record mass.Mass, heavyLine float64) Grade {
	switch {
	case load > record:
		return Record
	case load >= share(record, heavyLine):
		return Heavy
	}
	return Under
}

func (v Verdict) meaning(tie bool, heavyLine float64) string {
	switch {
	case v.Raises:
		return "the record rises"
	case tie:
		return "a heavy day that ties the record, which stays"
	case v.Grade == Heavy:
		return "a heavy day; the record stays"
	}
	return fmt.Sprintf("under the heavy line of %g %%; the record stays", heavyLine)
}
