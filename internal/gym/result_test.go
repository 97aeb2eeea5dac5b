package gym_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

func aResult() gym.Result {
	return gym.Result{
		ID: "r", Athlete: "a", Lift: "back-squat", Reps: 5, Load: 185 * mass.Pound, Unit: mass.LB,
		On: on("2026-03-09"), Source: gym.Tested,
	}
}

func TestResultValid(t *testing.T) {
	checkRefusals(t, aResult(), []refusal[gym.Result]{
		{"names no athlete or no lift", func(r *gym.Result) { r.Athlete = "" }},
		{"names no athlete or no lift", func(r *gym.Result) { r.Lift = "" }},
		{"0 reps are not a rep max", func(r *gym.Result) { r.Reps = 0 }},
		{"21 reps are not a rep max; write 1 to 20", func(r *gym.Result) { r.Reps = 21 }},
		{"the load is nothing", func(r *gym.Result) { r.Load = 0 }},
		{"not believable", func(r *gym.Result) { r.Load = -1 }},
		{"not believable", func(r *gym.Result) { r.Load, r.Amount = -1, 40 }},
		{"not believable", func(r *gym.Result) { r.Amount = -0.5 }},
		{"not believable", func(r *gym.Result) { r.Amount = math.NaN() }},
		{"not believable", func(r *gym.Result) { r.Amount = math.Inf(1) }},
		{"is over 1000 kg", func(r *gym.Result) { r.Load = mass.Max + 1 }},
		{`unit "stone" is not kg or lb`, func(r *gym.Result) { r.Unit = "stone" }},
		{"it has no date", func(r *gym.Result) { r.On = day.None }},
		{`source "estimate" is not tested or reported`, func(r *gym.Result) { r.Source = gym.Estimate }},
		{"", func(r *gym.Result) { r.Reps = gym.MaxReps }},
		{"", func(r *gym.Result) { r.Load, r.Amount = 0, 62.5 }}, // a hang in seconds
		{"", func(r *gym.Result) { r.Source = gym.Reported }},
	})
}

func aBout() gym.Bout {
	return gym.Bout{
		ID: "b", Athlete: "a", Movement: "kettlebell-swing", Load: 20 * mass.Kilogram, Unit: mass.KG,
		Reps: 40, Outcome: gym.Held, On: on("2026-03-09"),
	}
}

func TestBoutValid(t *testing.T) {
	checkRefusals(t, aBout(), []refusal[gym.Bout]{
		{"names no athlete or no movement", func(b *gym.Bout) { b.Athlete = "" }},
		{"names no athlete or no movement", func(b *gym.Bout) { b.Movement = "" }},
		{"the load 0 kg is not between", func(b *gym.Bout) { b.Load = 0 }},
		{"is not between nothing and 1000 kg", func(b *gym.Bout) { b.Load = mass.Max + mass.Gram }},
		{"0 reps are not believable", func(b *gym.Bout) { b.Reps = 0 }},
		{"10001 reps are not believable", func(b *gym.Bout) { b.Reps = 10_001 }},
		{`outcome "fine" is not held, slowed or stopped`, func(b *gym.Bout) { b.Outcome = "fine" }},
		{"it has no date", func(b *gym.Bout) { b.On = day.None }},
		{`unit "" is not kg or lb`, func(b *gym.Bout) { b.Unit = "" }},
		{"", func(b *gym.Bout) { b.Outcome = gym.Stopped }},
		{"", func(b *gym.Bout) { b.Load = 21 * mass.Kilogram }}, // no implement has it: kept all the same
	})
}

func anOverride() gym.Override {
	return gym.Override{
		ID: "o", Athlete: "a", Movement: "wall-ball", Load: 6 * mass.Kilogram, Unit: mass.KG,
		From: on("2026-03-02"), Until: on("2026-03-29"), Reason: "shoulder",
	}
}

func TestOverrideValid(t *testing.T) {
	checkRefusals(t, anOverride(), []refusal[gym.Override]{
		{"names no athlete", func(o *gym.Override) { o.Athlete = "" }},
		{"it says 0 of load, tier and share", func(o *gym.Override) { o.Load = 0 }},
		{"it says 2 of load, tier and share", func(o *gym.Override) { o.Tier = gym.Mid }},
		{"is not between nothing", func(o *gym.Override) { o.Load = -1 }},
		{`unit "" is not kg or lb`, func(o *gym.Override) { o.Unit = "" }},
		{`tier "below" is not full, mid or light`, func(o *gym.Override) { o.Load, o.Tier = 0, gym.Below }},
		{"a share of 1 is not", func(o *gym.Override) { o.Load, o.Share = 0, 1 }},
		{"a share of NaN is not", func(o *gym.Override) { o.Load, o.Share = 0, math.NaN() }},
		{"it has no first day", func(o *gym.Override) { o.From = day.None }},
		{"is before its first", func(o *gym.Override) { o.Until = o.From.Add(-1) }},
		{"it has no reason", func(o *gym.Override) { o.Reason = "" }},
		{"", func(o *gym.Override) { o.Load, o.Unit, o.Share = 0, "", 0.8 }},
		{"", func(o *gym.Override) { o.Load, o.Tier = 0, gym.Light }},
		{"one load does not fit every movement", func(o *gym.Override) { o.Movement = "" }},
		{"", func(o *gym.Override) { o.Movement, o.Load, o.Tier, o.Until = "", 0, gym.Light, day.None }},
	})
}

func TestOverrideHolds(t *testing.T) {
	tests := []struct {
		day      string
		movement gym.MovementKey
		want     bool
	}{
		{"2026-03-01", "wall-ball", false}, // the day before
		{"2026-03-02", "wall-ball", true},  // the first day
		{"2026-03-29", "wall-ball", true},  // the last day
		{"2026-03-30", "wall-ball", false}, // the day after
		{"2026-03-09", "run", false},       // another movement
	}
	for _, tt := range tests {
		assert.Equal(t, tt.want, anOverride().Holds(tt.movement, on(tt.day)), "%+v", tt)
	}
	all := anOverride()
	all.Movement, all.Until = "", day.None
	assert.True(t, all.Holds("run", on("2036-01-01")), "every movement, until it is voided")
	all.Void = &gym.Void{Reason: "well again"}
	assert.False(t, all.Holds("run", on("2036-01-01")))
}
