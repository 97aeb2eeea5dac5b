package tier

import (
	"slices"

	"windlass/internal/day"
)

const (
	// fresh is how many days without training cost nothing. Strength lasts for
	// about three weeks (from memory: Bosquet et al. 2013, Scand J Med Sci Sports
	// 23:e140), endurance for about two (from memory: Mujika and Padilla 2000,
	// Sports Med 30:79); a load held for many reps wants both.
	fresh = 14
	// regain is how many weeks of absence one week of training makes good: what
	// was lost comes back quicker than it came first (common practice, no source).
	regain = 2
)

// Calendar is the days on which an athlete trained. The zero value counts all
// time as trained.
type Calendar struct {
	days   []day.Date // rising, each once
	states []state    // on each of the days
}

// state is how far an athlete has come on a day.
type state struct {
	trained float64 // weeks of training since the first day
	owed    float64 // weeks of absence, beyond the fresh ones, not yet made good
}

// span is what lies between two days.
type span struct {
	weeks, trained float64
	before         float64 // weeks trained up to its beginning
	owed, owing    float64 // at its beginning and at its end
	form, doubt    float64 // how the athlete's form changed meanwhile, and the variance of that
	told           bool    // whether the log told that
}

// Mark adds a day of training.
func (c *Calendar) Mark(on day.Date) {
	i, found := slices.BinarySearch(c.days, on)
	if found {
		return
	}
	c.days = slices.Insert(c.days, i, on)
	c.states = append(c.states, state{})
	c.follow(i)
}

// Unmark takes a day of training away.
func (c *Calendar) Unmark(on day.Date) {
	i, found := slices.BinarySearch(c.days, on)
	if !found {
		return
	}
	c.days, c.states = slices.Delete(c.days, i, i+1), c.states[:len(c.states)-1]
	c.follow(i)
}

// follow works the states out anew from an index on.
func (c *Calendar) follow(i int) {
	for ; i < len(c.days); i++ {
		c.states[i] = state{}
		if i > 0 {
			c.states[i] = c.states[i-1].after(c.days[i].Since(c.days[i-1]))
		}
	}
}

// after returns the state so many days after the last training.
func (s state) after(days int) state {
	weeks := float64(days) / 7
	if days > fresh {
		return state{s.trained, s.owed + weeks - fresh/7.}
	}
	return state{s.trained + weeks, max(0, s.owed-regain*weeks)}
}

// at returns the state on a day of a calendar that is not empty; on days before
// the first it is the first's.
func (c *Calendar) at(on day.Date) state {
	i, found := slices.BinarySearch(c.days, on)
	switch {
	case found:
		return c.states[i]
	case i == 0:
		return state{}
	}
	return c.states[i-1].after(on.Since(c.days[i-1]))
}

// between returns what lies between two days.
func (c *Calendar) between(from, to day.Date) span {
	if to <= from {
		return span{}
	}
	weeks := float64(to.Since(from)) / 7
	if len(c.days) == 0 {
		return span{weeks: weeks, trained: weeks}
	}
	a, b := c.at(from), c.at(to)
	return span{weeks: weeks, trained: max(0, b.trained-a.trained), before: a.trained, owed: a.owed, owing: b.owed}
}

// come returns how far the athlete has come on a day; without a log, nowhere.
func (c *Calendar) come(on day.Date) state {
	if len(c.days) == 0 {
		return state{}
	}
	return c.at(on)
}
