package tier

// A pool shares what is known between athletes and between movements. The
// capacity of one athlete at one movement is taken apart as
//
//	c = what the standard load says            (handed in)
//	  + slope × the athlete's relative strength
//	  + how this gym differs from the load standard
//	  + how it differs from the movement's standard load
//	  + the athlete's form at the time
//	  + the pair's own difference
//
// Every term is normal with a variance that the log itself teaches (a
// random-effects model fitted by expectation and maximisation; Searle, Casella
// and McCulloch 1992, Variance Components). What a pair's bouts say enters as
// normal messages, one a stretch, and the pair's prior is what all other pairs say.
type pool struct {
	effects  []effect
	classes  [classes]variance
	forms    []*form
	messages []message // one for each pair with bouts, in the standing's order
	fresh    []effect  // room for a sweep
	scratch  gauss
}

// The classes of effects that share a variance.
const (
	knownAthlete   = iota // an athlete with a record of some linked lift, at first
	unknownAthlete        // one without
	ofMovement            // a movement for one load standard
	ofStandard            // a load standard
	ofSlope               // of capacity on relative strength
	ownLinked             // a pair whose linked lift is known
	ownOther              // any other pair
	classes
)

// variance is that of a class, with the guess it started from.
type variance struct{ guess, now float64 }

// Spreads to start from, standard deviations in log load (common practice, no
// source). They add up to 0.20 with a known linked lift and 0.37 without.
var spreads = [classes]float64{0.12, 0.28, 0.09, 0.05, 0.30, 0.12, 0.22}

// guessWeight is how many effects the guess of a variance counts for.
const guessWeight = 10

// effect is one term's posterior: its sums are those of least squares.
type effect struct {
	class        int
	cross, cover float64 // Σ weight·x·rest and Σ weight·x²
	mean         float64
}

// term is an effect with the number that it is multiplied by.
type term struct {
	effect int
	x      float64
}

const terms = 3 // movement, load standard, slope

// message is what a pair's bouts say of its capacity over what the standard load
// says.
type message struct {
	form  *form
	terms [terms]term
	class int // of the pair's own difference
	said  []saying
	// What it leaves to the terms over the form as it is thought to be: the sum of
	// the precisions, and of the precisions times the rest.
	w, wy float64
}

// saying is what a message says of one stretch: the capacity, less what was
// expected to have been gained since the athlete's first day.
type saying struct {
	stretch      int
	y, precision float64
	level        float64 // the same with the gain
	come         state   // how far the athlete had
}

// The first effects of a pool.
const (
	ownSlope = iota
	generalSlope
	standardM
	standardW
)

func newPool() *pool {
	p := &pool{}
	for _, class := range []int{ofSlope, ofSlope, ofStandard, ofStandard} {
		p.add(class)
	}
	for i, sd := range spreads {
		p.classes[i] = variance{guess: sd * sd, now: sd * sd}
	}
	return p
}

// add makes room for one more effect and returns its index.
func (p *pool) add(class int) int {
	p.effects = append(p.effects, effect{class: class})
	p.fresh = append(p.fresh, effect{})
	return len(p.effects) - 1
}

// moments returns mean and variance of an effect, without one message's share.
func (p *pool) moments(e *effect, cross, cover float64) (mean, v float64) {
	v = 1 / (1/p.classes[e.class].now + max(0, e.cover-cover))
	return v * (e.cross - cross), v
}

// predict returns mean and variance of what the terms and the pair's own
// difference say, leaving out what the pair's own message told them.
func (p *pool) predict(m *message) (mean, v float64) {
	w, rest := p.rest(m)
	v = p.own(m)
	for _, t := range m.terms {
		e := &p.effects[t.effect]
		mine, spread := p.moments(e, w*t.x*(rest+t.x*e.mean), w*t.x*t.x)
		mean += t.x * mine
		v += t.x * t.x * spread
	}
	return mean, v
}

// without sets g to an athlete's form as all pairs but one tell it.
func (p *pool) without(g *gauss, m *message) {
	g.copy(&m.form.info)
	g.tell(m.said, p.sum(m), p.own(m), -1)
	g.factor()
}

// rest returns what a message leaves when form and terms are as they are thought
// to be, and its precision, which is nothing without a message.
func (p *pool) rest(m *message) (precision, rest float64) {
	if m.w == 0 {
		return 0, 0
	}
	return 1 / (1/m.w + p.own(m)), m.wy/m.w - p.sum(m)
}

// weigh sums a message up over the form.
func (m *message) weigh() {
	m.w, m.wy = 0, 0
	for i := range m.said {
		s := &m.said[i]
		m.w += s.precision
		m.wy += s.precision * (s.y - m.form.mean[s.stretch])
	}
}

// own is the variance of a pair about what its form and its terms say.
func (p *pool) own(m *message) float64 { return p.classes[m.class].now }

func (p *pool) sum(m *message) float64 {
	s := 0.0
	for _, t := range m.terms {
		s += t.x * p.effects[t.effect].mean
	}
	return s
}

// fitRounds is how often effects and variances are fitted in turn.
const fitRounds = 4

// fit finds effects, forms and variances from the messages.
func (p *pool) fit(h Habits) {
	for range fitRounds {
		p.sweepForms(h)
		for k := range terms {
			p.sweep(k)
		}
		p.vary()
	}
	p.sweepForms(h)
}

// sweepForms fits every athlete's form to what the terms leave.
func (p *pool) sweepForms(h Habits) {
	for _, f := range p.forms {
		f.begin(&f.info, h, p.classes[f.class].now)
	}
	for i := range p.messages {
		m := &p.messages[i]
		m.form.info.tell(m.said, p.sum(m), p.own(m), 1)
	}
	for _, f := range p.forms {
		p.scratch.copy(&f.info)
		p.scratch.factor()
		f.mean = append(f.mean[:0], p.scratch.mean...)
		f.spread = p.scratch.variance(0, 0)
	}
	for i := range p.messages {
		p.messages[i].weigh()
	}
}

// sweep fits the effects of the k-th terms to what everything else leaves.
func (p *pool) sweep(k int) {
	clear(p.fresh)
	for i := range p.messages {
		m := &p.messages[i]
		w, rest := p.rest(m)
		t := m.terms[k]
		f := &p.fresh[t.effect]
		f.cross += w * t.x * (rest + t.x*p.effects[t.effect].mean)
		f.cover += w * t.x * t.x
	}
	for i, f := range p.fresh {
		if e := &p.effects[i]; f.cover > 0 {
			e.cross, e.cover = f.cross, f.cover
			e.mean, _ = p.moments(e, 0, 0)
		}
	}
}

// vary sets the variance of every class to its expectation; the slopes and the
// standards keep theirs, as there are only two of them.
func (p *pool) vary() {
	var sums, counts [classes]float64
	note := func(class int, mean, v float64) {
		sums[class] += mean*mean + v
		counts[class]++
	}
	for i := range p.effects {
		if e := &p.effects[i]; e.cover > 0 {
			mean, v := p.moments(e, 0, 0)
			note(e.class, mean, v)
		}
	}
	for _, f := range p.forms {
		if len(f.starts) > 0 {
			note(f.class, f.mean[0], f.spread)
		}
	}
	for i := range p.messages {
		if m := &p.messages[i]; m.w > 0 {
			v := 1 / (m.w + 1/p.own(m))
			note(m.class, v*(m.wy-m.w*p.sum(m)), v)
		}
	}
	for i := range p.classes {
		if i != ofSlope && i != ofStandard {
			c := &p.classes[i]
			c.now = (guessWeight*c.guess + sums[i]) / (guessWeight + counts[i])
		}
	}
}
