package tier

import (
	"math"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// Prior is what is thought of an athlete's capacity at a movement before the
// first bout: mean and standard deviation of the log of the load in kilograms.
type Prior struct{ Mean, SD float64 }

// Model is what is known about one athlete at one movement.
type Model struct {
	rack   Rack
	habits Habits
	time   interface {
		between(from, to day.Date) span
	}
	grid   *grid
	at     day.Date // the day that the grid speaks for
	bouts  []gym.Bout
	course course
}

// New returns the model of an athlete without bouts. The days are those on which
// the athlete trained at all; nil counts all time as trained.
func New(p Prior, r Rack, h Habits, days *Calendar) *Model {
	if days == nil {
		days = &Calendar{}
	}
	m := &Model{rack: r, habits: h, time: days, grid: newGrid()}
	m.grid.normal(p.Mean, p.SD, h.Scale)
	return m
}

// Observe takes a bout into account. Bouts come in order of their dates; one
// that is void or has no load changes nothing. It returns the chance that the
// model had given to what happened, for scoring.
func (m *Model) Observe(b gym.Bout) float64 {
	return m.observe(&b)
}

func (m *Model) observe(b *gym.Bout) float64 {
	if b.Void != nil || b.Load <= 0 {
		return 1
	}
	t := m.rack.trialOf(b, m.course)
	t.since = m.pass(b.On)
	m.bouts, m.course = append(m.bouts, *b), m.course.then(b)
	return m.grid.live(&m.habits, &t)
}

// Hold returns the chance that a load is held for so many reps on the day the
// model has come to. Reps of 0 are a usual bout's.
func (m *Model) Hold(load mass.Mass, reps int) float64 {
	if load <= 0 {
		return 1
	}
	return m.grid.hold(&m.habits, m.demand(load, reps))
}

// TooHeavy returns the chance that so many reps with a load are held less than half
// of the time, on the day the model has come to.
func (m *Model) TooHeavy(load mass.Mass, reps int) float64 {
	if load <= 0 {
		return 0
	}
	return m.grid.below(m.demand(load, reps))
}

// Capacity returns the mean and the standard deviation of the log of the load, in
// kilograms, a usual bout of which would be held half of the time.
func (m *Model) Capacity() (mean, sd float64) {
	mean, variance := m.grid.moments()
	return mean, math.Sqrt(variance)
}

// Rack returns what the movement offers.
func (m *Model) Rack() Rack { return m.rack }

// Advance lets time pass until a day; an earlier day changes nothing.
func (m *Model) Advance(on day.Date) { m.grid.age(&m.habits, m.pass(on)) }

// Bouts returns the bouts taken into account, oldest first. Do not change it.
func (m *Model) Bouts() []gym.Bout { return m.bouts }

func (m *Model) demand(load mass.Mass, reps int) float64 {
	return logOf(load) + m.habits.Reps*m.rack.logReps(reps)
}

// pass moves the model's day on and returns the time that went by.
func (m *Model) pass(on day.Date) span {
	if m.at == day.None {
		m.at = on
	}
	passed := m.time.between(m.at, on)
	m.at = max(m.at, on)
	return passed
}

// inOrder sorts bouts as they happened.
func inOrder(a, b gym.Bout) int {
	if a.On != b.On {
		return int(a.On - b.On)
	}
	return a.Made.Compare(b.Made)
}
