package clock_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/clock"
	"windlass/internal/gym"
)

// three is a climb of 0–60, 60–180 and 180–182 s; the last has no room for a
// tick of three.
func three() gym.ClimbPlan {
	return gym.ClimbPlan{Rungs: []gym.Rung{
		{At: 0, Until: 60, Percent: 50, Zone: gym.LightZone},
		{At: 60, Until: 180, Percent: 80, Zone: gym.WorkingZone},
		{At: 180, Until: 182, Percent: 102, Zone: gym.TopZone},
	}}
}

// short writes a moment in one line.
func short(m clock.Moment) string {
	state := "running"
	switch {
	case !m.Started:
		state = "waiting"
	case m.Finished:
		state = "finished"
	case !m.Running:
		state = "held"
	}
	return fmt.Sprintf("%s %s rung %d next %d in %s left %s of %s warn %d",
		state, m.Elapsed, m.Rung, m.Next, m.InRung, m.LeftIn, m.Left, m.Warning)
}

func TestClimbAtInstants(t *testing.T) {
	run := gym.Run{}.Start(noon)
	for _, row := range []struct {
		name string
		run  gym.Run
		at   float64
		want string
	}{
		{"before the start", gym.Run{}, 5, "waiting 0s rung 0 next 1 in 0s left 1m0s of 3m2s warn 0"},
		{"at the start", run, 0, "running 0s rung 0 next 1 in 0s left 1m0s of 3m2s warn 0"},
		{"the system clock went back", run, -9, "running 0s rung 0 next 1 in 0s left 1m0s of 3m2s warn 0"},
		{"just before the warning", run, 56.9, "running 56.9s rung 0 next 1 in 56.9s left 3.1s of 2m5.1s warn 0"},
		{"three", run, 57, "running 57s rung 0 next 1 in 57s left 3s of 2m5s warn 3"},
		{"still three", run, 57.9, "running 57.9s rung 0 next 1 in 57.9s left 2.1s of 2m4.1s warn 3"},
		{"two", run, 58, "running 58s rung 0 next 1 in 58s left 2s of 2m4s warn 2"},
		{"one", run, 59.75, "running 59.75s rung 0 next 1 in 59.75s left 250ms of 2m2.25s warn 1"},
		{"the change itself", run, 60, "running 1m0s rung 1 next 2 in 0s left 2m0s of 2m2s warn 0"},
		{"the last rung", run, 180, "running 3m0s rung 2 next -1 in 0s left 2s of 2s warn 2"},
		{"the end", run, 182, "finished 3m2s rung -1 next -1 in 0s left 0s of 0s warn 0"},
		{"long after the end", run, 9999, "finished 3m2s rung -1 next -1 in 0s left 0s of 0s warn 0"},
		{"held", run.Hold(after(30)), 4000, "held 30s rung 0 next 1 in 30s left 30s of 2m32s warn 0"},
		{"going on after a hold", run.Hold(after(30)).Start(after(100)), 140, "running 1m10s rung 1 next 2 in 10s left 1m50s of 1m52s warn 0"},
	} {
		assert.Equal(t, row.want, short(clock.Climb(three(), row.run, after(row.at))), row.name)
	}
	assert.True(t, clock.Climb(gym.ClimbPlan{}, run, noon).Finished, "a plan without rungs is over at once")
}

// The file keeps no monotonic time: a desk that still has it in memory and a
// wall that has read the file must show the same.
func TestClimbShowsWallTimeOnly(t *testing.T) {
	now := time.Now() // carries a monotonic reading; its value does not matter
	kept := gym.Run{}.Start(now)
	later := now.Add(42 * time.Second)
	read := gym.Run{Anchor: now.Round(0), Running: true}
	assert.Equal(t, clock.Climb(three(), read, later), clock.Climb(three(), kept, later))
	c := clock.Corrected(kept, clock.Instant{Wall: now}, clock.Instant{Wall: now.Round(0).Add(-time.Hour), Steady: time.Second}, true)
	assert.Equal(t, time.Second, clock.Climb(three(), c.Run, now.Round(0).Add(-time.Hour)).Elapsed)
}

// cues writes cues in short: seconds after noon and what they tell.
func cues(all []clock.Cue) string {
	var words []string
	for _, c := range all {
		word := fmt.Sprintf("%g:%s%d", c.At.Sub(noon).Seconds(), c.Kind, c.Part)
		if c.Kind == clock.Tick {
			word += fmt.Sprintf("-%d", c.Left)
		}
		words = append(words, word)
	}
	return strings.Join(words, " ")
}

func TestClimbCues(t *testing.T) {
	run := gym.Run{}.Start(noon)
	for _, row := range []struct {
		name     string
		run      gym.Run
		from, to float64
		want     string
	}{
		{"all", run, -1, 1000, "0:start0 57:tick0-3 58:tick0-2 59:tick0-1 60:change1 177:tick1-3 178:tick1-2 179:tick1-1 180:change2 181:tick2-1 182:finish2"},
		{"the end of an interval counts, its beginning does not", run, 57, 60, "58:tick0-2 59:tick0-1 60:change1"},
		{"quiet", run, 61, 170, ""},
		{"never started", gym.Run{}, -1, 1000, ""},
		{"held", run.Hold(after(58.5)), 50, 100, ""},
		{"after a hold of 40 s", run.Hold(after(58.5)).Start(after(98.5)), 60, 110, "99:tick0-1 100:change1"},
		{"skipped to the second rung", clock.Skip(three(), run, after(10)), 9, 12, "10:change1"},
		{"skipped before the interval", clock.Skip(three(), run, after(10)), 10, 128, "127:tick1-3 128:tick1-2"},
	} {
		assert.Equal(t, row.want, cues(clock.ClimbCues(three(), row.run, after(row.from), after(row.to))), row.name)
	}
	assert.Empty(t, clock.ClimbCues(gym.ClimbPlan{}, run, after(-1), after(9)))
}

func TestSkipAndBack(t *testing.T) {
	run := gym.Run{}.Start(noon)
	at := after(100)
	shows := func(r gym.Run) time.Duration { return clock.Climb(three(), r, at).Elapsed }
	assert.Equal(t, 180*time.Second, shows(clock.Skip(three(), run, at)))
	assert.Equal(t, 182*time.Second, shows(clock.Skip(three(), clock.Skip(three(), run, at), at)), "from the last rung to the end")
	assert.True(t, clock.Climb(three(), clock.Skip(three(), run, after(9999)), after(9999)).Finished, "and not beyond")
	assert.Equal(t, time.Duration(0), shows(clock.Back(three(), run, at)))
	assert.Equal(t, time.Duration(0), shows(clock.Back(three(), clock.Back(three(), run, at), at)), "not before the first")
	over := clock.To(three(), run, 3, at)
	assert.True(t, clock.Climb(three(), over, at).Finished)
	assert.Equal(t, 180*time.Second, shows(clock.Back(three(), over, at)), "a finished climb goes back into its last rung")
	assert.Equal(t, 60*time.Second, shows(clock.To(three(), run, 1, at)))
	assert.Equal(t, time.Duration(0), shows(clock.To(three(), run, -7, at)))
	assert.True(t, clock.Skip(three(), run, at).Running, "it goes on")
	assert.False(t, clock.Skip(three(), run.Hold(at), at).Running, "a held clock stays held")
	assert.Equal(t, gym.Run{}, clock.Skip(three(), gym.Run{}, at), "a clock that never started stays so")
}

func drawPlan(t *rapid.T) gym.ClimbPlan {
	var plan gym.ClimbPlan
	at := 0
	for _, n := range rapid.SliceOfN(rapid.IntRange(1, 20), 1, 8).Draw(t, "lengths") {
		plan.Rungs = append(plan.Rungs, gym.Rung{At: at, Until: at + n})
		at += n
	}
	return plan
}

// drawRun starts, holds and sets a clock at whole milliseconds, and returns the
// instant of the last of these.
func drawRun(t *rapid.T) (gym.Run, time.Time) {
	now := noon
	run := gym.Run{}.Start(now)
	for range rapid.IntRange(0, 5).Draw(t, "verbs") {
		now = now.Add(time.Duration(rapid.IntRange(1, 60_000).Draw(t, "ms")) * time.Millisecond)
		switch rapid.IntRange(0, 2).Draw(t, "verb") {
		case 0:
			run = run.Hold(now)
		case 1:
			run = run.Start(now)
		case 2:
			run = run.Set(time.Duration(rapid.IntRange(0, 160).Draw(t, "to"))*time.Second, now)
		}
	}
	return run, now
}

func TestMomentsHoldTogether(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		plan := drawPlan(t)
		run, set := drawRun(t)
		total := time.Duration(plan.Rungs[len(plan.Rungs)-1].Until) * time.Second
		now := set.Add(time.Duration(rapid.IntRange(0, 200_000).Draw(t, "later")) * time.Millisecond)
		m := clock.Climb(plan, run, now)
		assert.Equal(t, total, m.Elapsed+m.Left)
		assert.Equal(t, m.Finished, m.Left == 0)
		if m.Finished {
			assert.Equal(t, clock.None, m.Rung)
			assert.False(t, m.Running)
			return
		}
		rung := plan.Rungs[m.Rung]
		assert.Equal(t, time.Duration(rung.Until-rung.At)*time.Second, m.InRung+m.LeftIn)
		assert.GreaterOrEqual(t, m.InRung, time.Duration(0))
		assert.Positive(t, m.LeftIn)
		assert.Equal(t, m.LeftIn <= 3*time.Second, m.Warning > 0)
		// Never drifts: a second later, a running clock shows a second more.
		later := clock.Climb(plan, run, now.Add(time.Second))
		if run.Running {
			assert.Equal(t, min(total, m.Elapsed+time.Second), later.Elapsed)
		} else {
			assert.Equal(t, m, later)
		}
	})
}

func TestCuesOfIntervalsLaidEndToEnd(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		plan := drawPlan(t)
		run, _ := drawRun(t)
		from := noon.Add(-time.Millisecond)
		cuts := rapid.SliceOfN(rapid.IntRange(0, 500_000), 0, 12).Draw(t, "cuts")
		slices.Sort(cuts)
		var pieces []clock.Cue
		at := from
		for _, ms := range append(cuts, 600_000) {
			to := noon.Add(time.Duration(ms) * time.Millisecond)
			pieces = append(pieces, clock.ClimbCues(plan, run, at, to)...)
			at = to
		}
		whole := clock.ClimbCues(plan, run, from, noon.Add(600*time.Second))
		require.Equal(t, whole, pieces)
		for i := 1; i < len(whole); i++ {
			assert.True(t, whole[i-1].At.Before(whole[i].At), "one cue at a time, in order")
		}
	})
}

// Brute force: what is heard each second is what the moments before and at that
// second say.
func TestCuesAgainstMoments(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		plan := drawPlan(t)
		run := gym.Run{}.Start(noon)
		total := plan.Rungs[len(plan.Rungs)-1].Until
		for s := 0; s <= total+2; s++ {
			before, now := clock.Climb(plan, run, after(float64(s-1))), clock.Climb(plan, run, after(float64(s)))
			want := ""
			switch {
			case s == 0:
				want = "start"
			case now.Finished && !before.Finished:
				want = "finish"
			case now.Rung != before.Rung:
				want = "change"
			case now.Warning > 0:
				want = "tick"
			}
			heard := ""
			for _, c := range clock.ClimbCues(plan, run, after(float64(s-1)), after(float64(s))) {
				heard += string(c.Kind)
			}
			assert.Equal(t, want, heard, "at %d s", s)
		}
	})
}
