package demo

import (
	"encoding/binary"
	"math/rand/v2"
	"time"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// chance is where everything random in the gym comes from.
type chance struct{ *rand.Rand }

// newChance returns the same numbers for the same seed on every machine.
func newChance(seed uint64) chance {
	return chance{rand.New(rand.NewPCG(seed, 0x9e3779b97f4a7c15))} // an invented gym keeps no secrets
}

// around returns a number spread normally.
func (c chance) around(mean, sd float64) float64 { return mean + sd*c.NormFloat64() }

// happens reports whether an event of a probability comes.
func (c chance) happens(p float64) bool { return c.Float64() < p }

// between returns a whole number from one to another, ends included.
func (c chance) between(low, high int) int { return low + c.IntN(high-low+1) }

// id names a row as if it had been made on a day at an hour.
func (w *world) id(on day.Date, at day.Clock) gym.ID { return w.idAt(instant(on, at)) }

func (w *world) idAt(at time.Time) gym.ID {
	var bytes [16]byte
	binary.BigEndian.PutUint64(bytes[:], w.chance.Uint64())
	binary.BigEndian.PutUint64(bytes[8:], w.chance.Uint64())
	return gym.NewID(at, [10]byte(bytes[:10]))
}

// instant places an hour of the gym's wall clock in UTC, so that the book is the
// same whatever zone it is made in.
func instant(on day.Date, at day.Clock) time.Time { return on.At(at, time.UTC) }
