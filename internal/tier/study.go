package tier

import (
	"context"
	"fmt"
)

const (
	// rounds is how often habits are learnt, with what the pairs say renewed
	// between.
	rounds = 3
	// sample is about how many bouts of a long log the habits are learnt from: more
	// change nothing that shows.
	sample = 25_000
)

// study learns the gym's habits from a sample of its athletes, tempers their growth,
// and learns after that what all of them say.
func (s *Standing) study(ctx context.Context) error {
	some := s.some()
	steps := []func(){func() { s.exchange(some) }}
	for round := range rounds {
		steps = append(steps, func() { s.exchange(some) }, func() { s.learn(some, round) })
	}
	steps = append(steps, func() { s.temper(some) })
	if len(some) < len(s.tried) {
		steps = append(steps, func() { s.exchange(s.tried) })
	}
	steps = append(steps, func() { s.exchange(s.tried) })
	for _, step := range steps {
		if err := ctx.Err(); err != nil {
			return fmt.Errorf("learn from the log: %w", err)
		}
		step()
	}
	return nil
}

// some returns the pairs of as many athletes as make a sample.
func (s *Standing) some() []*pair {
	stride := 1 + len(s.bouts)/sample
	chosen := make(map[*person]bool, len(s.people))
	var some []*pair
	for _, p := range s.tried {
		in, met := chosen[p.who]
		if !met {
			in = len(chosen)%stride == 0
			chosen[p.who] = in
		}
		if in {
			some = append(some, p)
		}
	}
	return some
}

// exchange lets pairs tell the pool what their bouts say, and fits the pool.
func (s *Standing) exchange(pairs []*pair) {
	for _, p := range pairs {
		s.speak(p)
	}
	s.pool.fit(s.habits)
}

// follow works out how the form changed between a pair's trials.
func (s *Standing) follow(p *pair, g *gauss) {
	for i := range p.trials {
		t := &p.trials[i]
		t.since.told, t.since.form, t.since.doubt = true, 0, 0
		if i == 0 {
			continue
		}
		if k := p.trials[i-1].stretch; k != t.stretch {
			t.since.form, t.since.doubt = g.mean[t.stretch]-g.mean[k], g.variance(k, t.stretch)
		}
	}
}

// speak renews a pair's message: what its bouts add to its prior in each stretch.
func (s *Standing) speak(p *pair) {
	m := &s.pool.messages[p.slot]
	prior := s.prior(p, &s.pool.scratch, s.bouts[p.rows[0]].On)
	s.follow(p, &s.pool.scratch)
	m.said = m.said[:0]
	now := belief{prior.Mean, prior.SD * prior.SD}
	before := now
	for i := range p.trials {
		t := &p.trials[i]
		shift, added := s.habits.over(t.since)
		before.mean, before.variance = before.mean+shift, before.variance+added
		now.live(&s.habits, t)
		if i+1 < len(p.trials) && p.trials[i+1].stretch == t.stretch {
			continue
		}
		if precision := 1/now.variance - 1/before.variance; precision > slight {
			level := (now.mean/now.variance-before.mean/before.variance)/precision - p.base
			m.said = append(m.said, saying{t.stretch, level - s.habits.reached(t.come), precision, level, t.come})
		}
		before = now
	}
}

// slight is a precision that is not worth a message: a standard deviation of 30.
const slight = 1e-3
