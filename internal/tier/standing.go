package tier

import (
	"context"
	"fmt"
	"math"
	"slices"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// Strength tells how strong an athlete is at a lift against a usual member of
// the same load standard: the log of estimate over the lift's reference. It is
// not known without a record.
type Strength func(athlete gym.ID, lift gym.LiftKey) (relative float64, known bool)

// Standing is where every athlete of a gym stands at every movement, as its book
// was when it was learnt: new athletes, records and implements want a new [Learn].
// It is not safe for use by several goroutines at once.
type Standing struct {
	habits     Habits
	strength   Strength
	equipment  gym.Equipment
	confidence float64
	movements  map[gym.MovementKey]gym.Movement
	people     map[gym.ID]*person
	columns    map[column]int // effects of movements in the pool
	pairs      map[pairKey]*pair
	tried      []*pair // the pairs with bouts, in the order of the pool's messages
	bouts      []gym.Bout
	pool       *pool
}

// Learn reads a gym's whole log. It stops with the context's error when the
// context ends. Bouts of unknown athletes, and of movements without loads, are
// left out.
func Learn(ctx context.Context, book *gym.Book, strength Strength) (*Standing, error) {
	s := newStanding(book, strength)
	for i := range s.bouts {
		s.place(i)
	}
	for _, a := range book.Athletes {
		who := s.people[a.ID]
		who.form.cut(&who.days)
	}
	for _, p := range s.tried {
		s.replay(p)
	}
	s.pool.fit(s.habits)
	if err := s.study(ctx); err != nil {
		return nil, err
	}
	return s, nil
}

func newStanding(book *gym.Book, strength Strength) *Standing {
	s := &Standing{
		habits: DefaultHabits(), strength: strength,
		equipment: book.Equipment, confidence: book.Settings.Confidence,
		movements: map[gym.MovementKey]gym.Movement{}, people: map[gym.ID]*person{},
		columns: map[column]int{}, pairs: map[pairKey]*pair{}, bouts: slices.Clone(book.Bouts),
	}
	slices.SortStableFunc(s.bouts, inOrder)
	s.pool = newPool()
	for _, m := range book.Movements {
		s.movements[m.Key] = m
		for _, standard := range []gym.Standard{gym.StandardM, gym.StandardW} {
			s.columns[column{m.Key, standard}] = s.pool.add(ofMovement)
		}
	}
	for _, a := range book.Athletes {
		s.people[a.ID] = s.person(a, book.Movements)
	}
	return s
}

// Habits returns what the log taught.
func (s *Standing) Habits() Habits { return s.habits }

// Model returns the model of an athlete at a movement with the pair's bouts up to
// a day; the gym's habits and what other pairs say come from the whole log. The
// error wraps [ErrUnloaded] where there is no load to speak of.
func (s *Standing) Model(athlete gym.ID, movement gym.MovementKey, on day.Date) (*Model, error) {
	p := s.pair(athlete, movement)
	if p == nil {
		return nil, fmt.Errorf("suggest load of %q: %w", movement, ErrUnloaded)
	}
	start := on
	if len(p.rows) > 0 {
		start = min(on, s.bouts[p.rows[0]].On)
	}
	t := &timeline{person: p.who, habits: s.habits}
	m := New(s.prior(p, &t.gauss, start), p.rack, s.habits, nil)
	m.time, m.bouts = t, make([]gym.Bout, 0, len(p.rows))
	m.at = start
	for _, row := range p.rows {
		if s.bouts[row].On <= on {
			m.observe(&s.bouts[row])
		}
	}
	m.Advance(on)
	return m, nil
}

// Observe files a bout that was logged since. The pair's own model heeds it at
// once; what it says of others waits for the next [Learn].
func (s *Standing) Observe(b gym.Bout) {
	s.bouts = append(s.bouts, b)
	if p := s.place(len(s.bouts) - 1); p != nil {
		slices.SortStableFunc(p.rows, func(i, j int) int { return inOrder(s.bouts[i], s.bouts[j]) })
	}
}

// Void takes a bout out of every model from now on.
func (s *Standing) Void(id gym.ID) {
	row := len(s.bouts) - 1
	for row >= 0 && s.bouts[row].ID != id {
		row--
	}
	if row < 0 || s.bouts[row].Void != nil {
		return
	}
	b := &s.bouts[row]
	b.Void = &gym.Void{} // the rows are the standing's own copy
	if p := s.pair(b.Athlete, b.Movement); p != nil {
		p.rows = slices.DeleteFunc(p.rows, func(i int) bool { return i == row })
		if !s.trained(p.who, b.On) {
			p.who.days.Unmark(b.On)
		}
	}
}

// trained reports whether an athlete has a bout on a day.
func (s *Standing) trained(who *person, on day.Date) bool {
	return slices.ContainsFunc(who.pairs, func(p *pair) bool {
		return slices.ContainsFunc(p.rows, func(row int) bool { return s.bouts[row].On == on })
	})
}

// place files a bout under its pair, and returns the pair.
func (s *Standing) place(row int) *pair {
	b := &s.bouts[row]
	p := s.pair(b.Athlete, b.Movement)
	if p == nil || b.Void != nil || b.Load <= 0 {
		return nil
	}
	p.who.days.Mark(b.On)
	p.rows = append(p.rows, row)
	if len(p.rows) == 1 && p.slot < 0 {
		p.slot = len(s.pool.messages)
		s.pool.messages = append(s.pool.messages, p.silent)
		s.tried = append(s.tried, p)
	}
	return p
}

// replay turns a pair's bouts into trials.
func (s *Standing) replay(p *pair) {
	first := s.bouts[p.rows[0]].On
	p.trials = make([]trial, 0, len(p.rows))
	var c course
	at := first
	for _, row := range p.rows {
		b := &s.bouts[row]
		t := p.rack.trialOf(b, c)
		t.since, t.come = p.who.days.between(at, b.On), p.who.days.at(b.On)
		t.on, t.stretch = b.On, p.who.form.of(b.On)
		p.trials = append(p.trials, t)
		c, at = c.then(b), b.On
	}
}

// prior returns what everything but the pair's own bouts says of its capacity on a
// day, and leaves the athlete's form in g.
func (s *Standing) prior(p *pair, g *gauss, on day.Date) Prior {
	m := &p.silent
	if p.slot >= 0 {
		m = &s.pool.messages[p.slot]
	}
	mean, variance := s.pool.predict(m)
	s.pool.without(g, m)
	k := m.form.of(on)
	gained := s.habits.reached(p.who.days.come(on))
	return Prior{Mean: p.base + mean + g.mean[k] + gained, SD: math.Sqrt(variance + g.variance(k, k))}
}
