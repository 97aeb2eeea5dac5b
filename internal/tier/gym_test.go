package tier

import (
	"fmt"
	"math"
	"math/rand/v2"
	"time"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// simGym says how an invented gym behaves. Nothing here is the model's: outcomes
// follow a normal curve, not a logistic one, with an effect of the day; growth
// slows down; movements are worth what they are to everybody in another way than
// the standard loads say; and the coach chooses loads by eye.
type simGym struct {
	name        string
	athletes    int
	weeks       int
	movements   int
	comes       float64 // chance that an athlete comes on a class day, of which a week has three
	known       float64 // share of athletes with records
	worth       float64 // of strength in conditioning
	misfit      float64 // sd of the standard loads against what the gym can do, a movement
	own         float64 // sd of an athlete's own difference at a movement
	fuzzy       float64 // sd of the normal curve of holding
	daily       float64 // sd of the day's effect, on all movements of the day
	reps        float64 // power of the reps
	growth      float64 // a week at the start, halved every 26 weeks
	breakChance float64 // a week, of a break of 4 to 16 weeks
	lossWeekly  float64 // share lost in a week of a break
	coach       string  // how loads are chosen: "eye", "bold", "rule" or "tier"
	coachNoise  float64
	mistakes    float64 // share of outcomes written down at random
}

// simulation is an invented gym with its hidden truth.
type simulation struct {
	book     *gym.Book
	strength Strength
	owned    map[gym.MovementKey][]mass.Mass
	truth    map[pairKey]float64 // capacity at the end
	of       simGym
	end      day.Date
}

var simLifts = []gym.LiftKey{"lift-0", "lift-1", "lift-2"}

var simStart = day.Of(2025, time.January, 6)

func simulate(of simGym, seed uint64) *simulation {
	r := rand.New(rand.NewPCG(seed, 7))
	s := &simulation{
		book: &gym.Book{Settings: gym.DefaultSettings()}, owned: map[gym.MovementKey][]mass.Mass{}, truth: map[pairKey]float64{},
		of: of, end: simStart.Add(7 * of.weeks),
	}
	s.equip()
	strengths := map[gym.ID]map[gym.LiftKey]float64{}
	for i := range of.athletes {
		s.athlete(r, i, strengths)
	}
	s.strength = func(a gym.ID, l gym.LiftKey) (float64, bool) { v, ok := strengths[a][l]; return v, ok }
	return s
}

// equip makes the movements, in thirds done with kettlebells, dumbbells and bars.
func (s *simulation) equip() {
	for i := range s.of.movements {
		m := gym.Movement{Key: gym.MovementKey(fmt.Sprintf("movement-%d", i)), ReferenceReps: 20 + 10*(i%4)}
		if i%4 != 3 {
			m.Linked = simLifts[i%3]
		}
		m.Implement = fmt.Sprintf("kind-%d", i%3)
		var owned []mass.Mass
		var full, mid, light int
		switch i % 3 {
		case 0:
			owned = series(4, 4, 12)
			full, mid, light = 24, 20, 16
		case 1:
			owned = series(5, 2.5, 14)
			full, mid, light = 25, 20, 15
		default:
			owned = series(20, 5, 20)
			full, mid, light = 60, 50, 40
		}
		kg := func(n int, share float64) mass.Mass { return mass.Of(math.Round(float64(n)*share), mass.KG) }
		m.Loads = map[gym.Standard]gym.TierLoads{
			gym.StandardM: {Full: kg(full, 1), Mid: kg(mid, 1), Light: kg(light, 1)},
			gym.StandardW: {Full: kg(full, 2./3), Mid: kg(mid, 2./3), Light: kg(light, 2./3)},
		}
		s.owned[m.Key] = owned
		if i < 3 {
			s.book.Equipment.Implements = append(s.book.Equipment.Implements, gym.Implement{Kind: m.Implement, Masses: owned})
		}
		s.book.Movements = append(s.book.Movements, m)
	}
}

func series(from, step float64, n int) []mass.Mass {
	var rows []mass.Mass
	for i := range n {
		rows = append(rows, mass.Of(from+step*float64(i), mass.KG))
	}
	return rows
}

// athlete makes one athlete with records, truth and a log.
func (s *simulation) athlete(r *rand.Rand, i int, strengths map[gym.ID]map[gym.LiftKey]float64) {
	a := gym.Athlete{ID: gym.ID(fmt.Sprintf("athlete-%03d", i)), Standard: gym.StandardM}
	if i%2 == 1 {
		a.Standard = gym.StandardW
	}
	s.book.Athletes = append(s.book.Athletes, a)
	general := r.NormFloat64() * 0.22
	lifts := map[gym.LiftKey]float64{}
	for _, l := range simLifts {
		lifts[l] = general + r.NormFloat64()*0.08
	}
	fitness := r.NormFloat64() * 0.08
	capacity := make([]float64, len(s.book.Movements))
	for j, m := range s.book.Movements {
		strong := general
		if v, ok := lifts[m.Linked]; ok {
			strong = v
		}
		// The misfit of a movement is the same for all: drawn from its own number.
		misfit := rand.New(rand.NewPCG(uint64(j), 99)).NormFloat64() * s.of.misfit
		capacity[j] = math.Log(m.Loads[a.Standard].Full.Kilograms()) + misfit +
			s.of.worth*strong + fitness + r.NormFloat64()*s.of.own
	}
	if r.Float64() < s.of.known {
		strengths[a.ID] = map[gym.LiftKey]float64{}
		for _, l := range simLifts {
			if r.Float64() < 0.9 {
				strengths[a.ID][l] = lifts[l] + r.NormFloat64()*0.04
			}
		}
	}
	s.log(r, a, capacity)
	for j, m := range s.book.Movements {
		s.truth[pairKey{a.ID, m.Key}] = capacity[j]
	}
}

// trainee is an athlete's hidden state while the weeks go by.
type trainee struct {
	athlete     gym.Athlete
	capacity    []float64
	eye         float64 // how the coach misjudges this athlete
	last        []int   // implement of the last bout at each movement
	outcome     []gym.Outcome
	away        int     // weeks of a break that are left
	lost, weeks float64 // lost in breaks and not regained; weeks trained
}

// log lets an athlete train through the weeks.
func (s *simulation) log(r *rand.Rand, a gym.Athlete, capacity []float64) {
	t := &trainee{
		athlete: a, capacity: capacity, eye: r.NormFloat64() * s.of.coachNoise / 2,
		last: make([]int, len(capacity)), outcome: make([]gym.Outcome, len(capacity)),
	}
	for week := range s.of.weeks {
		if t.away == 0 && r.Float64() < s.of.breakChance {
			t.away = 4 + r.IntN(13)
		}
		if t.away > 0 {
			t.fade(s.of.lossWeekly)
			continue
		}
		t.grow(s.of.growth * (0.5 + r.Float64()))
		for _, weekday := range []int{0, 2, 4} {
			if r.Float64() < s.of.comes {
				s.train(r, t, simStart.Add(7*week+weekday))
			}
		}
	}
}

// fade is a week of a break; no more than a quarter is ever lost.
func (t *trainee) fade(share float64) {
	t.away--
	if by := math.Log1p(-share); t.lost+by > -0.3 {
		t.lost += by
		t.add(by)
	}
}

// grow is a week of training: what was lost comes back quicker than it came first.
func (t *trainee) grow(by float64) {
	by *= math.Exp2(-t.weeks / 26)
	back := min(-t.lost, 0.02)
	t.lost += back
	t.weeks++
	t.add(by + back)
}

func (t *trainee) add(by float64) {
	for j := range t.capacity {
		t.capacity[j] += by
	}
}

// train is one class day with one or two loaded movements.
func (s *simulation) train(r *rand.Rand, t *trainee, on day.Date) {
	today := r.NormFloat64() * s.of.daily
	for range 1 + r.IntN(2) {
		j := r.IntN(len(t.capacity))
		m := s.book.Movements[j]
		owned := s.owned[m.Key]
		i := s.choose(r, t, j)
		reps := m.ReferenceReps/2 + r.IntN(m.ReferenceReps)
		x := t.capacity[j] + today - s.demand(owned[i], reps, m.ReferenceReps) + r.NormFloat64()*s.of.fuzzy
		o := s.outcome(r, x)
		t.last[j], t.outcome[j] = i, o
		s.book.Bouts = append(s.book.Bouts, gym.Bout{
			ID: gym.ID(fmt.Sprint("bout-", len(s.book.Bouts))), Athlete: t.athlete.ID, Movement: m.Key,
			Load: owned[i], Unit: mass.KG, Reps: reps, Outcome: o, On: on,
		})
	}
}

func (s *simulation) outcome(r *rand.Rand, x float64) gym.Outcome {
	if r.Float64() < s.of.mistakes {
		return []gym.Outcome{gym.Held, gym.Slowed, gym.Stopped}[r.IntN(3)]
	}
	switch {
	case x > 0:
		return gym.Held
	case x > -0.17-0.1*r.Float64():
		return gym.Slowed
	}
	return gym.Stopped
}

// choose is the coach's choice of an implement for the j-th movement.
func (s *simulation) choose(r *rand.Rand, t *trainee, j int) int {
	m := s.book.Movements[j]
	owned, tiers := s.owned[m.Key], m.Loads[t.athlete.Standard]
	noise := t.eye + r.NormFloat64()*s.of.coachNoise
	switch s.of.coach {
	case "tier": // one of the three at random
		three := []mass.Mass{tiers.Full, tiers.Mid, tiers.Light}
		return nearest(owned, math.Log(three[r.IntN(3)].Kilograms()))
	case "rule": // a step up when the last load was held, more often than not
		switch {
		case t.outcome[j] == "":
			return nearest(owned, math.Log(tiers.Mid.Kilograms())+noise)
		case t.outcome[j] == gym.Held && r.Float64() < 0.6:
			return min(t.last[j]+1, len(owned)-1)
		case t.outcome[j] == gym.Stopped:
			return max(t.last[j]-1, 0)
		}
		return t.last[j]
	case "bold":
		return nearest(owned, t.capacity[j]+0.02+noise)
	}
	return nearest(owned, t.capacity[j]-0.12+noise)
}

func nearest(owned []mass.Mass, log float64) int {
	best := 0
	off := func(i int) float64 { return math.Abs(math.Log(owned[i].Kilograms()) - log) }
	for i := range owned {
		if off(i) < off(best) {
			best = i
		}
	}
	return best
}

func (s *simulation) demand(load mass.Mass, reps, usual int) float64 {
	return math.Log(load.Kilograms()) + s.of.reps*math.Log(float64(reps)/float64(usual))
}

// chance is the true chance that a load is held on a day like any other.
func (s *simulation) chance(k pairKey, load mass.Mass, reps, usual int) float64 {
	sd := math.Hypot(s.of.fuzzy, s.of.daily)
	return 0.5 * math.Erfc(-(s.truth[k]-s.demand(load, reps, usual))/sd/math.Sqrt2)
}
