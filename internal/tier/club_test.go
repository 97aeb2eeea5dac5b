package tier_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"time"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// club is a kind of gym of a second make. It shares no code, no scale and no curve
// with the first one nor with the model: capacity is a load in kilograms that wears
// off in proportion to the log of the reps, a margin is a share of that capacity,
// noise has Student's tails, every athlete has an own way of growing, of losing, of
// tiring and of saying "slowed", and the coach writes down only a part.
type club struct {
	name                       string
	athletes, weeks, movements int
	visits                     float64 // a week and athlete
	logged                     float64 // share of bouts that are written down
	tested                     float64 // share of athletes with lift results
	unlinked                   float64 // share of movements without a linked lift
	misfit                     float64 // sd of the log of the standard loads' error
	offM, offW                 float64 // factor by which all of a standard's loads are wrong
	strong                     float64 // sd of log strength
	own                        float64 // sd of an athlete's own way with a movement
	noise, daily               float64 // of the margin
	normal                     bool    // noise without tails
	binary                     float64 // share of athletes who never say "slowed"
	gain, pace                 float64 // typical share gained in the end, and weeks until two thirds of it
	plateaus                   float64 // share of athletes who stand still for a while
	skill                      float64 // share gained over the first few bouts of a movement
	breaks                     float64 // a year and athlete
	longest                    int     // weeks of a break
	loss                       float64 // typical share lost in a week of it
	coach                      []string
	aim, eye                   float64 // share of the capacity a coach aims at; sd of the eye
	wrong                      float64 // share of outcomes written down wrongly
	ladders                    [][]float64
}

var (
	even = [][]float64{
		{4, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30, 32, 36, 40, 44, 48},
		{5, 7.5, 10, 12.5, 15, 17.5, 20, 22.5, 25, 27.5, 30, 32.5, 35, 37.5, 40, 45, 50},
		{15, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80, 85, 90, 95, 100, 110, 120},
	}
	odd = [][]float64{
		{6, 8, 12, 16, 20, 24, 32, 40},
		{4.5, 6.8, 9.1, 11.3, 15.9, 20.4, 22.7, 31.8, 38.6},
		{20, 35, 43, 61, 70, 84, 102},
	}
	sparse = [][]float64{{8, 16, 24, 32}, {10, 20, 30}, {20, 40, 60, 90}}
)

// usualClub is what the kinds differ from.
var usualClub = club{
	athletes: 60, weeks: 30, movements: 14, visits: 2.2, logged: 0.9, tested: 0.6, unlinked: 0.25,
	misfit: 0.1, offM: 1, offW: 1, strong: 0.22, own: 0.10, noise: 0.11, daily: 0.06, normal: true,
	gain: 0.10, pace: 30, plateaus: 0.3, breaks: 0.5, longest: 10, loss: 0.012,
	coach: []string{"eye"}, aim: 0.88, eye: 0.12, wrong: 0.01, ladders: even,
}

func clubLike(name string, change func(*club)) club {
	c := usualClub
	c.name = name
	change(&c)
	return c
}

// hall is one club with its truth.
type hall struct {
	of       club
	r        *rand.Rand
	book     *gym.Book
	relative map[gym.ID]map[gym.LiftKey]float64
	members  []*member
	things   []*thing
	end      day.Date
}

// thing is a movement as it is in truth.
type thing struct {
	gym.Movement
	owned  []float64                // kilograms, rising
	real   map[gym.Standard]float64 // capacity of a usual athlete
	lift   int                      // -1 for none
	worth  float64                  // power of strength
	weight float64                  // how much of the loss and the gain it shows
}

// member is an athlete as they are in truth.
type member struct {
	id                  gym.ID
	standard            gym.Standard
	strength            [3]float64 // factor, by lift
	own                 []float64  // factor, by movement
	tries               []int
	last                []int // implement; -1 at first
	went                []gym.Outcome
	tiring              float64
	slow                float64 // how much over the capacity still goes slowly; 0 never
	seen                float64 // factor by which the coach misjudges
	coach               string
	gain, pace, trained float64
	still, until        float64 // weeks of training between which nothing is gained
	rate, lost          float64
	away                int
	visits              float64
}

var clubStart = day.Of(2024, time.September, 2)

func open(of club, seed uint64) *hall {
	h := &hall{
		of: of, r: rand.New(rand.NewPCG(seed, 1812)), book: &gym.Book{Settings: gym.DefaultSettings()},
		relative: map[gym.ID]map[gym.LiftKey]float64{}, end: clubStart.Add(7 * of.weeks),
	}
	for i := range of.movements {
		h.furnish(i)
	}
	for i := range of.athletes {
		h.join(i)
	}
	for week := range of.weeks {
		for _, m := range h.members {
			h.week(m, week)
		}
	}
	return h
}

func (h *hall) lognormal(sd float64) float64 { return math.Exp(sd * h.r.NormFloat64()) }

func (h *hall) furnish(i int) {
	kind := i % len(h.of.ladders)
	t := &thing{owned: h.of.ladders[kind], lift: h.r.IntN(3), worth: 0.5 + 0.7*h.r.Float64(), weight: 0.7 + 0.6*h.r.Float64()}
	usual := []float64{26, 22, 58}[kind] * (0.8 + 0.4*h.r.Float64())
	t.Movement = gym.Movement{
		Key: gym.MovementKey(fmt.Sprint("m", i)), ReferenceReps: []int{15, 25, 40, 60}[h.r.IntN(4)],
		Implement: fmt.Sprint("set", kind), Loads: map[gym.Standard]gym.TierLoads{},
	}
	if h.r.Float64() >= h.of.unlinked {
		t.Linked = gym.LiftKey(fmt.Sprint("l", t.lift))
	}
	t.real = map[gym.Standard]float64{gym.StandardM: usual, gym.StandardW: usual * 0.66 * h.lognormal(0.05)}
	misfit := h.lognormal(h.of.misfit)
	for _, s := range []gym.Standard{gym.StandardM, gym.StandardW} {
		off := h.of.offM
		if s == gym.StandardW {
			off = h.of.offW
		}
		full := t.real[s] * misfit * off * h.lognormal(0.04)
		t.Loads[s] = gym.TierLoads{Full: t.tiered(full), Mid: t.tiered(full * 0.8), Light: t.tiered(full * 0.62)}
	}
	if i < len(h.of.ladders) {
		masses := make([]mass.Mass, len(t.owned))
		for j, kg := range t.owned {
			masses[j] = mass.Of(kg, mass.KG)
		}
		h.book.Equipment.Implements = append(h.book.Equipment.Implements, gym.Implement{Kind: t.Implement, Masses: masses})
	}
	h.things = append(h.things, t)
	h.book.Movements = append(h.book.Movements, t.Movement)
}

// closest is the index of the implement nearest to a load in kilograms.
func (t *thing) closest(kg float64) int {
	best := 0
	for i, x := range t.owned {
		if math.Abs(x-kg) < math.Abs(t.owned[best]-kg) {
			best = i
		}
	}
	return best
}

func (t *thing) tiered(kg float64) mass.Mass { return mass.Of(t.owned[t.closest(kg)], mass.KG) }

func (h *hall) join(i int) {
	r := h.r
	m := &member{
		id: gym.ID(fmt.Sprintf("p%03d", i)), standard: gym.StandardM,
		own: make([]float64, len(h.things)), tries: make([]int, len(h.things)), last: make([]int, len(h.things)),
		went:   make([]gym.Outcome, len(h.things)),
		tiring: 0.06 + 0.12*r.Float64(), slow: 0.08 + 0.2*r.Float64(), seen: h.lognormal(h.of.eye / 2),
		coach: h.of.coach[r.IntN(len(h.of.coach))],
		gain:  h.of.gain * h.lognormal(0.7), pace: h.of.pace * h.lognormal(0.5), trained: 80 * r.Float64() * r.Float64(),
		rate: h.of.loss * h.lognormal(0.5), visits: h.of.visits * h.lognormal(0.3),
	}
	if r.Float64() < 0.45 {
		m.standard = gym.StandardW
	}
	if r.Float64() < h.of.binary {
		m.slow = 0
	}
	if r.Float64() < h.of.plateaus {
		m.still = m.trained + 20*r.Float64()
		m.until = m.still + 8 + 12*r.Float64()
	}
	general, fit := h.lognormal(h.of.strong), h.lognormal(0.07)
	for l := range m.strength {
		m.strength[l] = general * h.lognormal(0.08)
	}
	for j, t := range h.things {
		s := general
		if t.lift >= 0 {
			s = m.strength[t.lift]
		}
		m.own[j] = math.Pow(s, t.worth) * fit * h.lognormal(h.of.own)
		m.last[j] = -1
	}
	if r.Float64() < h.of.tested {
		known := map[gym.LiftKey]float64{}
		for l, s := range m.strength {
			if r.Float64() < 0.8 {
				known[gym.LiftKey(fmt.Sprint("l", l))] = math.Log(s) + 0.05*r.NormFloat64()
			}
		}
		h.relative[m.id] = known
	}
	h.members = append(h.members, m)
	h.book.Athletes = append(h.book.Athletes, gym.Athlete{ID: m.id, Standard: m.standard})
}

func (h *hall) strength(a gym.ID, l gym.LiftKey) (float64, bool) {
	v, ok := h.relative[a][l]
	return v, ok
}

// shape is what training has added and breaks have taken, as a factor.
func (m *member) shape(weight float64) float64 {
	t := m.trained
	if m.until > 0 && t > m.still {
		t = max(m.still, t-(m.until-m.still))
	}
	return (1 + weight*m.gain*(1-math.Exp(-t/m.pace))) * (1 - min(0.9, weight*m.lost))
}

// capacity is the load in kilograms that goes half of the time.
func (h *hall) capacity(m *member, j, reps int) float64 {
	t := h.things[j]
	skilled := 1 - h.of.skill*math.Exp(-float64(m.tries[j])/3)
	fresh := 1 - m.tiring*math.Log(float64(reps)/float64(t.ReferenceReps))
	return t.real[m.standard] * m.own[j] * m.shape(t.weight) * skilled * max(0.2, fresh)
}

// week is a week of an athlete's life.
func (h *hall) week(m *member, week int) {
	r := h.r
	if m.away == 0 && r.Float64() < h.of.breaks/52 {
		m.away = 3 + r.IntN(h.of.longest-2)
	}
	if m.away > 0 {
		m.away--
		m.lost += m.rate * (1 - m.lost/0.4)
		return
	}
	m.trained++
	for weekday := range 6 {
		if r.Float64() < m.visits/6 {
			h.visit(m, clubStart.Add(7*week+weekday))
		}
	}
	m.lost = max(0, m.lost*0.75-0.005)
}

func (h *hall) visit(m *member, on day.Date) {
	today := h.of.daily * h.r.NormFloat64()
	for range 1 + h.r.IntN(3) {
		j := h.r.IntN(len(h.things))
		t := h.things[j]
		i, reps := h.hand(m, j), max(3, int(float64(t.ReferenceReps)*h.lognormal(0.35)))
		o := h.goes(m, j, i, reps, today)
		m.tries[j]++
		if h.r.Float64() < h.of.logged {
			m.last[j], m.went[j] = i, o
			h.book.Bouts = append(h.book.Bouts, gym.Bout{
				ID: gym.ID(fmt.Sprint("b", len(h.book.Bouts))), Athlete: m.id, Movement: t.Key, Load: mass.Of(t.owned[i], mass.KG),
				Unit: mass.KG, Reps: reps, Outcome: o, On: on,
			})
		}
	}
}

// goes lets a bout happen.
func (h *hall) goes(m *member, j, i, reps int, today float64) gym.Outcome {
	if h.r.Float64() < h.of.wrong {
		return []gym.Outcome{gym.Held, gym.Slowed, gym.Stopped}[h.r.IntN(3)]
	}
	x := 1 - h.things[j].owned[i]/h.capacity(m, j, reps) + today + h.of.noise*h.draw()
	switch {
	case x > 0:
		return gym.Held
	case x > -m.slow:
		return gym.Slowed
	}
	return gym.Stopped
}

// draw is a number of a normal or of Student's distribution with four degrees of
// freedom.
func (h *hall) draw() float64 {
	z := h.r.NormFloat64()
	if h.of.normal {
		return z
	}
	chi := 0.0
	for range 4 {
		x := h.r.NormFloat64()
		chi += x * x
	}
	return z / math.Sqrt(chi/4)
}

// hand is the implement that the coach hands out.
func (h *hall) hand(m *member, j int) int {
	t, r := h.things[j], h.r
	tiers := t.Loads[m.standard]
	index := func(of mass.Mass) int { return t.closest(of.Kilograms()) }
	usual := h.capacity(m, j, t.ReferenceReps)
	switch m.coach {
	case "ladder":
		switch {
		case m.last[j] < 0:
			return index(tiers.Mid)
		case m.went[j] == gym.Held && r.Float64() < 0.5:
			return min(m.last[j]+1, len(t.owned)-1)
		case m.went[j] == gym.Stopped:
			return max(m.last[j]-1, 0)
		}
		return m.last[j]
	case "tiers":
		share := usual * m.seen / tiers.Full.Kilograms()
		switch {
		case share > 1.1:
			return index(tiers.Full)
		case share > 0.9:
			return index(tiers.Mid)
		}
		return index(tiers.Light)
	case "same":
		if m.trained > 20 {
			return index(tiers.Full)
		}
		return index(tiers.Mid)
	case "careful":
		return t.closest(0.7 * usual * m.seen * h.lognormal(h.of.eye))
	}
	return t.closest(h.of.aim * usual * m.seen * h.lognormal(h.of.eye))
}

// chance is the true chance that a load goes on a day like any other.
func (h *hall) chance(m *member, j, i, reps int) float64 {
	margin := 1 - h.things[j].owned[i]/h.capacity(m, j, reps)
	sum, weights := 0.0, 0.0
	for z := -4.0; z <= 4; z += 0.25 {
		w := math.Exp(-z * z / 2)
		sum += w * h.below((margin+h.of.daily*z)/h.of.noise)
		weights += w
	}
	return sum / weights
}

// below is the distribution function of the noise; Student's with four degrees of
// freedom has a closed form.
func (h *hall) below(x float64) float64 {
	if h.of.normal {
		return 0.5 * math.Erfc(-x/math.Sqrt2)
	}
	u := x / math.Sqrt(4+x*x)
	return 0.5 + 0.75*(u-u*u*u/3)
}
