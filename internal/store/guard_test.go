package store

import (
	"database/sql"
	"fmt"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// The file itself keeps the logs, whatever program writes to it.
func TestLogsAreOnlyAddedTo(t *testing.T) {
	f := newFile(t)
	raw, err := sql.Open("sqlite", f.Path())
	require.NoError(t, err)
	t.Cleanup(func() { require.NoError(t, raw.Close()) })
	before := load(t, f)
	for table, columns := range map[string][]string{
		"results":   {"id", "athlete", "lift", "reps", "load", "unit", "amount", "date", "source", "class", "made", "seq"},
		"bouts":     {"id", "athlete", "movement", "load", "unit", "reps", "outcome", "date", "workout", "score", "class", "made", "seq"},
		"overrides": {"id", "athlete", "movement", "load", "unit", "tier", "share", "first_day", "last_day", "reason", "made", "seq"},
	} {
		_, err := raw.ExecContext(t.Context(), "DELETE FROM "+table)
		require.ErrorContains(t, err, "never deleted", table)
		for _, c := range columns {
			// With a void in the same breath, which alone would be allowed.
			_, err := raw.ExecContext(t.Context(), fmt.Sprintf("UPDATE %s SET void_at = 'now', void_reason = 'x', %s = 9", table, c))
			require.ErrorContains(t, err, "never edited", "%s.%s", table, c)
		}
		_, err = raw.ExecContext(t.Context(), fmt.Sprintf("UPDATE %s SET void_at = NULL", table))
		require.ErrorContains(t, err, "never edited", table)
	}
	assert.Equal(t, before, load(t, f))
}

func TestVoidOnce(t *testing.T) {
	f := newFile(t)
	void := gym.Void{At: time.Date(2026, 3, 10, 9, 0, 0, 123_000_000, time.UTC), Reason: "wrong bar"}
	voids := []gym.Change{gym.VoidResult{ID: "result", Void: void}, gym.VoidBout{ID: "bout", Void: void}, gym.VoidOverride{ID: "override", Void: void}}
	require.NoError(t, f.Write(t.Context(), voids...))
	b := load(t, f)
	assert.Equal(t, []*gym.Void{&void, &void, &void}, []*gym.Void{b.Results[0].Void, b.Bouts[0].Void, b.Overrides[0].Void})
	for _, again := range voids {
		assert.ErrorIs(t, f.Write(t.Context(), again), ErrConstraint)
	}
	assert.ErrorIs(t, f.Write(t.Context(), gym.VoidResult{ID: "none", Void: void}), ErrConstraint)
}

func TestNothingInUseIsDeleted(t *testing.T) {
	f := newFile(t)
	before := load(t, f)
	for _, drop := range []gym.Change{
		gym.DropAthlete{ID: "ann"},      // a move, a restriction, a result, a bout, a class
		gym.DropTrack{ID: "track"},      // a move, a slot, a class, a cycle
		gym.DropLift{Key: "back-squat"}, // a result, a related lift, a linked movement, a cycle
		gym.DropMovement{Key: "swing"},  // a bout, an override, a cycle
		gym.DropFinisher{Key: "curl"},   // a cycle
		gym.DropDrill{Key: "leg-swing"}, // a cycle
		gym.DropClimb{ID: "climb"},      // a cycle, by its name
	} {
		err := f.Write(t.Context(), gym.DropClosure{ID: "closure"}, drop)
		require.ErrorIs(t, err, ErrInUse, "%#v", drop)
		require.ErrorContains(t, err, "hide it", "the mend")
		require.Equal(t, before, load(t, f), "the change before it was not written either")
	}
	free := []gym.Change{gym.DropLift{Key: "sprint"}, gym.DropAthlete{ID: "ben"}, gym.DropSlot{ID: "slot"}, gym.DropCycle{ID: "cycle"}, gym.DropClimb{ID: "climb"}, gym.DropClass{ID: "class"}, gym.DropDrill{Key: "leg-swing"}}
	require.NoError(t, f.Write(t.Context(), free...))
}

func TestAStartedClassStays(t *testing.T) {
	f := newFile(t)
	started := gym.Class{ID: "class", On: day.Of(2026, 3, 9), Stage: gym.Climbing}
	require.NoError(t, f.Write(t.Context(), gym.PutClass{Class: started}))
	assert.ErrorIs(t, f.Write(t.Context(), gym.DropClass{ID: "class"}), ErrInUse)
}

func TestRowsThatAreRefused(t *testing.T) {
	f := newFile(t)
	before := load(t, f)
	on := day.Of(2026, 3, 9)
	nobody := result("new", "nobody", 100, on)
	heavy := result("new", "ann", 1001, on)
	undated := result("new", "ann", 100, day.None)
	late := gym.Athlete{ID: "x", Name: "X", Standard: "Q", Status: gym.Active, Unit: mass.KG}
	for name, change := range map[string]gym.Change{
		"an athlete nobody knows":   gym.AddResult{Result: nobody},
		"a key that is taken":       gym.AddResult{Result: result("result", "ann", 100, on)},
		"a load over belief":        gym.AddResult{Result: heavy},
		"no date":                   gym.AddResult{Result: undated},
		"a date before 1970":        gym.AddResult{Result: result("new", "ann", 100, day.Of(1965, 3, 1))},
		"a standard that is none":   gym.PutAthlete{Athlete: late},
		"a closure that ends early": gym.PutClosure{Closure: gym.Closure{ID: "c", From: on, Until: on.Add(-1)}},
		"an unknown related lift":   gym.PutLift{Lift: gym.Lift{Key: "k", Name: "K", Related: "none"}},
		"an unknown lift in a plan": gym.PutClass{Class: gym.Class{ID: "k", On: on, Stage: gym.SetUp, Pieces: []gym.Piece{{Lift: "none"}}}},
		"an override of two kinds":  gym.AddOverride{Override: gym.Override{ID: "o", Athlete: "ann", Tier: gym.Mid, Load: mass.Kilogram, Unit: mass.KG, From: on, Reason: "both"}},
	} {
		t.Run(name, func(t *testing.T) {
			require.ErrorIs(t, f.Write(t.Context(), gym.DropClosure{ID: "closure"}, change), ErrConstraint)
			require.Equal(t, before, load(t, f))
		})
	}
	assert.ErrorContains(t, f.Write(t.Context(), nil), "<nil>")
}

// Related lifts may come in any order within one transaction.
func TestRelatedLiftsInAnyOrder(t *testing.T) {
	f := newFile(t)
	require.NoError(t, f.Write(t.Context(),
		gym.PutLift{Lift: gym.Lift{Key: "a", Name: "A", Related: "b"}},
		gym.PutLift{Lift: gym.Lift{Key: "b", Name: "B", Related: "a"}},
	))
}

// The view of records against the definition, row by row: no standing result of
// the same athlete, lift and reps is better, and none as good is earlier.
func TestRecordsAreTheBestResults(t *testing.T) {
	f := newFile(t)
	round := 0
	rapid.Check(t, func(rt *rapid.T) {
		round++ // each with athletes of its own
		changes := drawResults(rt, round)
		require.NoError(rt, f.Write(t.Context(), changes...))
		var drawn gym.Book
		drawn.Apply(changes...)
		want := map[string]bool{}
		for i, r := range drawn.Results {
			if r.Void == nil && !beaten(drawn.Results, i) {
				want[string(r.ID)] = true
			}
		}
		ids, err := list(t.Context(), f.read, fmt.Sprintf("SELECT result FROM records WHERE athlete LIKE '%d-%%'", round))
		require.NoError(rt, err)
		got := map[string]bool{}
		for _, id := range ids {
			got[id] = true
		}
		require.Equal(rt, want, got)
	})
}

func drawResults(rt *rapid.T, round int) []gym.Change {
	one, two := gym.ID(fmt.Sprint(round, "-one")), gym.ID(fmt.Sprint(round, "-two"))
	out := []gym.Change{gym.PutAthlete{Athlete: athlete(one, "One")}, gym.PutAthlete{Athlete: athlete(two, "Two")}}
	for i := range rapid.IntRange(0, 12).Draw(rt, "results") {
		r := gym.Result{
			ID:      gym.ID(fmt.Sprint(round, "-", i)),
			Athlete: rapid.SampledFrom([]gym.ID{one, two}).Draw(rt, "athlete"),
			Lift:    rapid.SampledFrom([]gym.LiftKey{"back-squat", "sprint"}).Draw(rt, "lift"),
			Reps:    rapid.IntRange(1, 2).Draw(rt, "reps"),
			Unit:    mass.KG, Source: gym.Tested,
			On: day.Of(2026, 3, rapid.IntRange(1, 3).Draw(rt, "on")),
		}
		if r.Lift == "sprint" {
			r.Amount = float64(rapid.IntRange(10, 12).Draw(rt, "seconds"))
		} else {
			r.Load = mass.Mass(rapid.IntRange(100, 103).Draw(rt, "load")) * mass.Kilogram
		}
		if rapid.IntRange(0, 3).Draw(rt, "void") == 0 {
			r.Void = &gym.Void{Reason: "missed"}
		}
		out = append(out, gym.AddResult{Result: r})
	}
	return out
}

func beaten(all []gym.Result, i int) bool {
	r := all[i]
	for j, o := range all {
		if o.Void != nil || o.Athlete != r.Athlete || o.Lift != r.Lift || o.Reps != r.Reps || j == i {
			continue
		}
		better, worse := o.Load > r.Load, o.Load < r.Load
		if r.Lift == "sprint" {
			better, worse = o.Amount < r.Amount, o.Amount > r.Amount
		}
		earlier := o.On < r.On || o.On == r.On && j < i
		if better || !worse && earlier {
			return true
		}
	}
	return false
}
