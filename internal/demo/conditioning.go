package demo

import (
	"fmt"
	"math"
	"slices"

	"windlass/internal/cycle"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// pair is somebody at a movement.
type pair struct {
	athlete  gym.ID
	movement gym.MovementKey
}

// handed is the load of a bout and how it went.
type handed struct {
	load    mass.Mass
	outcome gym.Outcome
	times   int // held in a row
}

// conditions takes somebody through the day's conditioning: a bout for every
// movement with a load, and the score.
func (w *world) conditions(c *gym.Class, d cycle.Due) string {
	p, work := w.person(d.Athlete), d.Plan.Workout
	if work.Empty() {
		return ""
	}
	rounds := w.rounds(p, work)
	score := w.score(p, work, rounds)
	for _, item := range work.Items {
		m, ok := w.movement(item.Movement)
		tiers, loaded := m.Loads[p.Standard]
		if !ok || !loaded || tiers.Full == 0 {
			continue
		}
		w.perform(c, p, m, tiers, repsIn(work, item, rounds), score)
	}
	return score
}

func (w *world) movement(key gym.MovementKey) (gym.Movement, bool) {
	i := slices.IndexFunc(w.book.Movements, func(m gym.Movement) bool { return m.Key == key })
	if i < 0 {
		return gym.Movement{}, false
	}
	return w.book.Movements[i], true
}

// rounds is how often somebody goes through the list of a workout.
func (w *world) rounds(p *person, work gym.Workout) int {
	if work.Format != gym.AMRAP {
		return max(1, work.Rounds)
	}
	return max(1, int(float64(work.Seconds)/w.roundSeconds(p, work)))
}

// roundSeconds is how long one round takes somebody, with changes and breath. A
// rep list counts as one round of all its reps.
func (w *world) roundSeconds(p *person, work gym.Workout) float64 {
	seconds := 0.0
	for _, item := range work.Items {
		m, _ := w.movement(item.Movement)
		amount := item.Amount
		if len(work.Reps) > 0 {
			amount = repsIn(work, item, 1)
		}
		seconds += float64(amount)*m.Seconds + 8
	}
	return max(30, seconds*1.25*math.Exp(-0.5*p.fit))
}

// repsIn is what somebody did of an item in all.
func repsIn(work gym.Workout, item gym.Item, rounds int) int {
	if len(work.Reps) == 0 {
		return max(1, item.Amount*rounds)
	}
	sum := 0
	for _, n := range work.Reps {
		sum += n
	}
	return sum
}

// score writes what the clock or the count said, for the formats that have one.
func (w *world) score(p *person, work gym.Workout, rounds int) string {
	switch work.Format {
	case gym.AMRAP:
		return fmt.Sprintf("%d+%d", rounds, w.chance.between(0, 20))
	case gym.ForTime, gym.Chipper:
		seconds := int(w.roundSeconds(p, work) * float64(rounds) * math.Exp(w.chance.around(0, 0.06)))
		if work.Cap > 0 {
			seconds = min(seconds, work.Cap-w.chance.between(5, 90))
		}
		return fmt.Sprintf("%d:%02d", seconds/60, seconds%60)
	}
	return ""
}

// perform is one bout: the coach hands out a load, and the athlete does what the body
// allows.
func (w *world) perform(c *gym.Class, p *person, m gym.Movement, tiers gym.TierLoads, reps int, score string) {
	key := pair{p.ID, m.Key}
	load := w.handOut(p, m, tiers, w.latest[key])
	b := gym.Bout{
		ID: w.id(c.On, c.At), Athlete: p.ID, Movement: m.Key, Load: load, Unit: mass.KG, Reps: reps,
		Outcome: w.outcome(p, m, tiers, load, reps, c), On: c.On, Score: score, Class: c.ID, Made: instant(c.On, c.At),
	}
	w.book.Bouts = append(w.book.Bouts, b)
	last := handed{load: load, outcome: b.Outcome}
	if b.Outcome == gym.Held {
		last.times = 1
		if before := w.latest[key]; before.load == load {
			last.times += before.times
		}
	}
	w.latest[key] = last
}

// handOut is the coach's choice: a tier to begin with, one implement more after
// two bouts that were held, one less after a stop.
func (w *world) handOut(p *person, m gym.Movement, tiers gym.TierLoads, last handed) mass.Mass {
	if last.load == 0 {
		seems := p.level + w.chance.around(0, 0.1)
		switch {
		case seems > 0.08:
			return tiers.Full
		case seems > -0.12:
			return tiers.Mid
		}
		return tiers.Light
	}
	owned := w.book.Equipment.Implement(m.Implement)
	at := slices.Index(owned, last.load)
	switch {
	case at < 0:
		return last.load
	case last.times >= 2 && at+1 < len(owned):
		return owned[at+1]
	case last.outcome == gym.Stopped && at > 0:
		return owned[at-1]
	}
	return last.load
}

// outcome weighs the load against what the person has for the movement, on a day
// that may be good or bad. It is not the likelihood of the program's own model.
func (w *world) outcome(p *person, m gym.Movement, tiers gym.TierLoads, load mass.Mass, reps int, c *gym.Class) gym.Outcome {
	knack, ok := p.skill[m.Key]
	if !ok {
		knack = w.chance.around(0, 0.12)
		p.skill[m.Key] = knack
	}
	weeks := float64(c.On.Since(w.start)) / 7
	able := math.Log(tiers.Full.Kilograms()) + 0.8*p.level + p.fit + knack + 1.2*p.gain*weeks
	spare := able - math.Log(load.Kilograms()) - 0.15*math.Log(float64(reps)/float64(max(1, m.ReferenceReps))) + w.chance.around(0.05, 0.08)
	switch {
	case spare > 0:
		return gym.Held
	case spare > -0.18:
		return gym.Slowed
	}
	return gym.Stopped
}
