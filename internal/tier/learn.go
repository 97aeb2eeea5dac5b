package tier

import (
	"math"
	"slices"
)

// knob is one of the habits with the few values that it may take.
type knob struct {
	of     func(*Habits) *float64
	values []float64
	doubt  float64 // what a value other than the default has to gain, in log likelihood
}

// The knobs of how bouts go, in the order in which they are turned. That the
// coach's eye counts has to be shown more clearly than the rest, as it is wrong
// where loads are handed out by rote.
var (
	over = knob{func(h *Habits) *float64 { return &h.Over }, []float64{-0.1, -0.05, 0, 0.05, 0.1, 0.15, 0.2, 0.25, 0.3, 0.35, 0.4}, 1}

	boutKnobs = []knob{
		{func(h *Habits) *float64 { return &h.Scale }, []float64{0.03, 0.04, 0.05, 0.06, 0.07, 0.085, 0.1, 0.12, 0.14, 0.17, 0.2, 0.28}, 1},
		{func(h *Habits) *float64 { return &h.Choice }, []float64{0, 0.7, 0.5, 0.35, 0.25, 0.18, 0.13, 0.1}, 4},
		over,
		{func(h *Habits) *float64 { return &h.Slow }, []float64{0.01, 0.02, 0.04, 0.08, 0.12, 0.16, 0.2, 0.25, 0.3, 0.45}, 1},
		{func(h *Habits) *float64 { return &h.Drift }, []float64{0.002, 0.004, 0.008, 0.012, 0.02, 0.035}, 1},
		{func(h *Habits) *float64 { return &h.Reps }, []float64{0, 0.04, 0.08, 0.12, 0.15, 0.18, 0.22, 0.26, 0.3}, 1},
	}
)

// The knobs of how athletes come on.
var (
	growth = knob{func(h *Habits) *float64 { return &h.Growth }, []float64{0, 0.001, 0.002, 0.003, 0.004, 0.006, 0.008, 0.011, 0.016}, 1}

	formKnobs = []knob{
		growth,
		{func(h *Habits) *float64 { return &h.Ease }, []float64{0, 100, 50, 25}, 1},
		{func(h *Habits) *float64 { return &h.Loss }, []float64{0, 0.0025, 0.005, 0.0075, 0.01, 0.015, 0.02, 0.03, 0.04}, 1},
		{func(h *Habits) *float64 { return &h.Form }, []float64{0.003, 0.006, 0.009, 0.013, 0.018, 0.025, 0.035}, 1},
	}
)

// near returns the values to try in a round: all in the first, later only the
// present one's neighbours.
func (k knob) near(h Habits, round int) []float64 {
	i := slices.Index(k.values, *k.of(&h))
	if round == 0 || i < 0 {
		return k.values
	}
	return k.values[max(0, i-1):min(len(k.values), i+2)]
}

// learn sets the habits to those under which the log is likeliest, each in turn
// over its few values, and those of how bouts go twice in the first round. The
// chance of an outcome is the one given before it was seen, so habits that overfit
// do not win.
func (s *Standing) learn(pairs []*pair, round int) {
	t := turning{of: s.newBoutLearner(pairs).told, best: s.habits}
	t.value = t.worth(s.habits)
	if s.habits.Choice == 0 {
		t.eye()
	}
	t.turn(boutKnobs, round)
	if round == 0 {
		t.turn(boutKnobs, round) // again: each was turned beside others that stood far off
	}
	t = turning{of: s.newFormLearner(pairs).told, best: t.best}
	t.value = t.worth(t.best)
	t.turn(formKnobs, round)
	s.habits = t.best
}

// temper takes the growth that the forms show back towards the usual, for as long as
// less of it makes the outcomes of bouts no less likely. Where nearly all is held, what
// bouts say of each stretch is hardly more than that the capacity lies higher than
// thought, and many such words in a row look like growth to a form.
func (s *Standing) temper(pairs []*pair) {
	usual, learnt, likely := DefaultHabits().Growth, s.habits.Growth, math.Inf(-1)
	for i := slices.Index(growth.values, learnt); i >= 0 && growth.values[i] >= usual; i-- {
		s.habits.Growth = growth.values[i]
		s.exchange(pairs)
		now := s.newBoutLearner(pairs).told(s.habits)
		if now < likely {
			break
		}
		learnt, likely = s.habits.Growth, now
	}
	s.habits.Growth = learnt
}

// turning looks for the best habits.
type turning struct {
	of    func(Habits) float64 // log likelihood
	best  Habits
	value float64
}

func (t *turning) try(h Habits) {
	if v := t.worth(h); v > t.value {
		t.best, t.value = h, v
	}
}

// worth is the log likelihood less what habits other than the usual have to gain.
func (t *turning) worth(h Habits) float64 {
	v, usual := t.of(h), DefaultHabits()
	for _, knobs := range [][]knob{boutKnobs, formKnobs} {
		for _, k := range knobs {
			if *k.of(&h) != *k.of(&usual) {
				v -= k.doubt
			}
		}
	}
	return v
}

// eye tries a middling eye of the coach together with every aim: with the wrong
// aim, no eye would seem to be any good.
func (t *turning) eye() {
	const middling = 0.25
	start := t.best
	start.Choice = middling
	for _, start.Over = range over.values {
		t.try(start)
	}
}

func (t *turning) turn(knobs []knob, round int) {
	for _, k := range knobs {
		start := t.best
		for _, v := range k.near(start, round) {
			try := start
			*k.of(&try) = v
			if v != *k.of(&start) {
				t.try(try)
			}
		}
	}
}

// boutLearner tries habits on how the bouts of some pairs went.
type boutLearner struct {
	pairs  []*pair
	priors []Prior // at the first bout
}

// enough is about how many bouts the habits of bouts are learnt from.
const enough = 5000

func (s *Standing) newBoutLearner(pairs []*pair) *boutLearner {
	bouts := 0
	for _, p := range pairs {
		bouts += len(p.trials)
	}
	l, stride := &boutLearner{}, 1+bouts/enough
	for i := 0; i < len(pairs); i += stride {
		p := pairs[i]
		l.pairs, l.priors = append(l.pairs, p), append(l.priors, s.prior(p, &s.pool.scratch, p.trials[0].on))
		s.follow(p, &s.pool.scratch)
	}
	return l
}

// told returns the log of the chance that the sample had under some habits.
func (l *boutLearner) told(h Habits) float64 {
	sum := 0.0
	for i, p := range l.pairs {
		b := belief{l.priors[i].Mean, l.priors[i].SD * l.priors[i].SD}
		chance := 1.0
		for i := range p.trials {
			chance *= b.live(&h, &p.trials[i])
			if chance < 1e-200 {
				sum, chance = sum+math.Log(chance), 1
			}
		}
		sum += math.Log(chance)
	}
	return sum
}

// formLearner tries habits on how the forms of some athletes went.
type formLearner struct {
	pool     *pool
	forms    []*form
	messages [][]*message // of each form
	gauss    gauss
	said     []saying
}

func (s *Standing) newFormLearner(pairs []*pair) *formLearner {
	l, rows := &formLearner{pool: s.pool}, map[*form]int{}
	for _, p := range pairs {
		f := &p.who.form
		row, met := rows[f]
		if !met {
			row = len(l.forms)
			rows[f], l.forms, l.messages = row, append(l.forms, f), append(l.messages, nil)
		}
		l.messages[row] = append(l.messages[row], &s.pool.messages[p.slot])
	}
	return l
}

// told returns the log of the density of what the sample's pairs say under some
// habits, less a constant.
func (l *formLearner) told(h Habits) float64 {
	sum := 0.0
	for i, f := range l.forms {
		sum += l.density(h, f, l.messages[i])
	}
	return sum
}

func (l *formLearner) density(h Habits, f *form, messages []*message) float64 {
	spread := f.begin(&l.gauss, h, l.pool.classes[f.class].now)
	squares := 0.0
	for _, m := range messages {
		l.said = l.said[:0]
		for _, s := range m.said {
			s.y = s.level - h.reached(s.come)
			l.said = append(l.said, s)
		}
		squares += l.gauss.tell(l.said, l.pool.sum(m), l.pool.own(m), 1)
	}
	explained := l.gauss.factor()
	return -(spread + l.gauss.logDet() + squares - explained) / 2
}
