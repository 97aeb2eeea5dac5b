package tier

// A pool shares what is known between athletes and between movements. The
// capacity of one athlete at one movement is taken apart as
//
//	c = what the standard load says            (handed in)
//	  + slope × the athlete's relative strength
//	  + how the athlete differs from the standard
//	  + how the movement's standard load differs from what this gym can do
//	  + the pair's own difference
//
// Every term is normal with a variance that the log itself teaches (a
// random-effects model fitted by expectation and maximisation; Searle, Casella
// and McCulloch 1992, Variance Components). What a pair's bouts say enters as a
// normal message, and the pair's prior is what all other pairs say.
type pool struct {
	effects  []effect
	classes  [classes]variance
	messages []message // one for each pair with bouts, in the standing's order
}

// The classes of effects that share a variance.
const (
	knownAthlete   = iota // an athlete with a record of some linked lift
	unknownAthlete        // one without
	ofMovement            // a movement for one load standard
	ofSlope               // of capacity on relative strength
	ownLinked             // a pair whose linked lift is known
	ownOther              // any other pair
	classes
)

// variance is that of a class, with the guess it started from.
type variance struct{ guess, now float64 }

// Spreads to start from, standard deviations in log load (common practice, no
// source). They add up to 0.20 with a known linked lift and 0.37 without.
var spreads = [classes]float64{0.12, 0.28, 0.10, 0.30, 0.12, 0.22}

// guessWeight is how many effects the guess of a variance counts for.
const guessWeight = 10

// effect is one term's posterior: its sums are those of least squares.
type effect struct {
	class        int
	cross, cover float64 // Σ weight·x·rest and Σ weight·x²
}

// term is an effect with the number that it is multiplied by.
type term struct {
	effect int
	x      float64
}

const terms = 3 // athlete, movement, slope

// message is what a pair's bouts say of its capacity over what the standard load
// says. A precision of zero says nothing.
type message struct {
	terms        [terms]term
	class        int // of the pair's own difference
	y, precision float64
}

// The two slopes are the first effects of a pool.
const (
	ownSlope = iota
	generalSlope
)

func newPool() *pool {
	p := &pool{effects: []effect{{class: ofSlope}, {class: ofSlope}}}
	for i, sd := range spreads {
		p.classes[i] = variance{guess: sd * sd, now: sd * sd}
	}
	return p
}

// add makes room for one more effect and returns its index.
func (p *pool) add(class int) int {
	p.effects = append(p.effects, effect{class: class})
	return len(p.effects) - 1
}

// moments returns mean and variance of an effect, without one message's share.
func (p *pool) moments(e effect, cross, cover float64) (mean, v float64) {
	v = 1 / (1/p.classes[e.class].now + max(0, e.cover-cover))
	return v * (e.cross - cross), v
}

// predict returns mean and variance of what the terms say of a pair, leaving out
// what the pair's own message told them.
func (p *pool) predict(m message) (mean, v float64) {
	w, rest := p.weight(m), 0.0
	if w > 0 {
		rest = m.y - p.sum(m)
	}
	v = p.classes[m.class].now
	for _, t := range m.terms {
		e := p.effects[t.effect]
		full, _ := p.moments(e, 0, 0)
		mine, spread := p.moments(e, w*t.x*(rest+t.x*full), w*t.x*t.x)
		mean += t.x * mine
		v += t.x * t.x * spread
	}
	return mean, v
}

// weight is the precision of a message about the sum of the shared terms.
func (p *pool) weight(m message) float64 {
	if m.precision <= 0 {
		return 0
	}
	return 1 / (1/m.precision + p.classes[m.class].now)
}

func (p *pool) sum(m message) float64 {
	s := 0.0
	for _, t := range m.terms {
		mean, _ := p.moments(p.effects[t.effect], 0, 0)
		s += t.x * mean
	}
	return s
}

// fitRounds is how often effects and variances are fitted in turn.
const fitRounds = 12

// fit finds effects and variances from the messages.
func (p *pool) fit() {
	for range fitRounds {
		for k := range terms {
			p.sweep(k)
		}
		p.vary()
	}
}

// sweep fits the effects of the k-th terms to what the other terms leave.
func (p *pool) sweep(k int) {
	fresh := make([]effect, len(p.effects))
	for _, m := range p.messages {
		w := p.weight(m)
		if w == 0 {
			continue
		}
		t := m.terms[k]
		mean, _ := p.moments(p.effects[t.effect], 0, 0)
		rest := m.y - p.sum(m) + t.x*mean
		fresh[t.effect].cross += w * t.x * rest
		fresh[t.effect].cover += w * t.x * t.x
	}
	for i, f := range fresh {
		if f.cover > 0 {
			p.effects[i].cross, p.effects[i].cover = f.cross, f.cover
		}
	}
}

// vary sets the variance of every class to its expectation; the slopes keep
// theirs, as there are only two of them.
func (p *pool) vary() {
	var sums, counts [classes]float64
	for _, e := range p.effects {
		if e.cover > 0 {
			mean, v := p.moments(e, 0, 0)
			sums[e.class] += mean*mean + v
			counts[e.class]++
		}
	}
	for _, m := range p.messages {
		if m.precision > 0 {
			v := 1 / (m.precision + 1/p.classes[m.class].now)
			mean := v * m.precision * (m.y - p.sum(m))
			sums[m.class] += mean*mean + v
			counts[m.class]++
		}
	}
	for i := range p.classes {
		if i != ofSlope {
			c := &p.classes[i]
			c.now = (guessWeight*c.guess + sums[i]) / (guessWeight + counts[i])
		}
	}
}
