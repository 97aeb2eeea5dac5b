package tier

import (
	"windlass/internal/gym"
)

// What relative strength is worth in conditioning, before a gym's log says
// otherwise: at the movement's own linked lift, and at any other lift (common
// practice, no source).
const (
	ownWorth     = 0.9
	generalWorth = 0.6
)

type pairKey struct {
	athlete  gym.ID
	movement gym.MovementKey
}

// column is a movement's loads for one load standard.
type column struct {
	movement gym.MovementKey
	standard gym.Standard
}

// person is an athlete as the pool sees one.
type person struct {
	standard gym.Standard
	form     form
	days     Calendar
	pairs    []*pair
	general  float64 // mean relative strength over the known linked lifts; 0 when none is known
}

// pair is one athlete at one movement.
type pair struct {
	who    *person
	rack   Rack
	base   float64 // log capacity by standard load and relative strength
	silent message // with nothing said
	slot   int     // of its message in the pool; -1 without bouts
	rows   []int   // of Standing.bouts, in order
	trials []trial // the same, as they were when the log was learnt
}

// person gathers what the records say of an athlete as a whole.
func (s *Standing) person(a gym.Athlete, movements []gym.Movement) *person {
	p := &person{standard: a.Standard}
	seen, sum := map[gym.LiftKey]bool{}, 0.0
	for _, m := range movements {
		if r, known := s.relative(a.ID, m.Linked); known && !seen[m.Linked] {
			seen[m.Linked] = true
			sum += r
		}
	}
	class := unknownAthlete
	if n := len(seen); n > 0 {
		p.general, class = sum/float64(n), knownAthlete
	}
	p.form.class = class
	s.pool.forms = append(s.pool.forms, &p.form)
	return p
}

// relative asks for the relative strength at a lift that may be none.
func (s *Standing) relative(athlete gym.ID, lift gym.LiftKey) (float64, bool) {
	if lift == "" || s.strength == nil {
		return 0, false
	}
	return s.strength(athlete, lift)
}

// pair returns the pair of an athlete and a movement, made when first asked for,
// and nil where there is no load to speak of.
func (s *Standing) pair(athlete gym.ID, movement gym.MovementKey) *pair {
	key := pairKey{athlete, movement}
	if p, ok := s.pairs[key]; ok {
		return p
	}
	s.pairs[key] = nil
	who, m := s.people[athlete], s.movements[movement]
	if who != nil && m.Loads[who.standard].Full > 0 {
		s.pairs[key] = s.newPair(athlete, who, m)
	}
	return s.pairs[key]
}

func (s *Standing) newPair(athlete gym.ID, who *person, m gym.Movement) *pair {
	p := &pair{who: who, slot: -1, rack: RackOf(s.equipment, m, who.standard, s.confidence)}
	who.pairs = append(who.pairs, p)
	slope, relative, class, worth := generalSlope, who.general, ownOther, generalWorth
	if r, known := s.relative(athlete, m.Linked); known {
		slope, relative, class, worth = ownSlope, r, ownLinked, ownWorth
	}
	p.base = logOf(m.Loads[who.standard].Full) + worth*relative
	p.silent = message{form: &who.form, class: class, terms: [terms]term{
		{s.columns[column{m.Key, who.standard}], 1}, {standardOf(who.standard), 1}, {slope, relative},
	}}
	return p
}

// standardOf is the effect of a load standard.
func standardOf(s gym.Standard) int {
	if s == gym.StandardW {
		return standardW
	}
	return standardM
}
