package desk_test

import (
	"context"
	"fmt"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/tier"
)

const swing gym.MovementKey = "kettlebell-swing"

// bout logs a bout of today and opens the desk again, as a class would have.
func (b *bench) bout(a gym.Athlete, load mass.Mass, o gym.Outcome) gym.Bout {
	b.t.Helper()
	bout := gym.Bout{ID: b.NewID(), Athlete: a.ID, Movement: swing, Load: load, Unit: mass.KG, Reps: 15, Outcome: o, On: b.Today(), Made: b.now}
	require.NoError(b.t, b.file.Write(context.Background(), gym.AddBout{Bout: bout}))
	b.Desk = b.open()
	b.now = b.now.Add(24 * time.Hour)
	return bout
}

func TestAdviceFollowsTheLog(t *testing.T) {
	b := newBench(t)
	a := b.join("Ada Brook")
	first, err := b.Advise(a.ID, swing, 0)
	require.NoError(t, err)
	assert.Zero(t, first.Last, "nothing was done yet")
	assert.Contains(t, first.Decision.Suggestion.Why, "no bout logged yet")
	for range 3 {
		b.bout(a, 16*mass.Kilogram, gym.Stopped)
	}
	after, err := b.Advise(a.ID, swing, 0)
	require.NoError(t, err)
	assert.Equal(t, gym.Stopped, after.Last.Outcome)
	assert.Less(t, after.Decision.Load, first.Decision.Load)
	assert.Equal(t, swing, b.Loaded(a.ID)[0], "what was done stands before what was not")
	require.NoError(t, b.VoidBout(after.Last.ID, "another athlete's row"))
	voided, err := b.Advise(a.ID, swing, 0)
	require.NoError(t, err)
	assert.NotEqual(t, after.Last.ID, voided.Last.ID)
	require.ErrorContains(t, b.VoidBout(voided.Last.ID, ""), "reason")
}

// A load is suggested for a usual bout; where the athlete's last one was of another
// size the reason says so, and nothing where the size is asked for or much the same.
func TestAReasonNamesTheSizeOfTheLastBout(t *testing.T) {
	b, a := swinging(t, 16*mass.Kilogram, 1)
	m, _ := b.Movement(swing)
	last := []gym.Bout{{Reps: m.ReferenceReps / 3}, {Reps: 2 * m.ReferenceReps}}
	assert.Equal(t, fmt.Sprintf("a usual bout of %d reps (the last was %d reps)", m.ReferenceReps, 2*m.ReferenceReps), desk.AskedText(m, 0, last))
	assert.NotContains(t, desk.AskedText(m, 20, last), "last")
	assert.NotContains(t, desk.AskedText(m, 0, []gym.Bout{{Reps: m.ReferenceReps + 2}}), "last")
	assert.Contains(t, b.swing(a).Decision.Suggestion.Why, "(the last was 15 reps)")
}

// What the desk heeds bout by bout equals what it learns from the whole log.
func TestHeedingEqualsAFreshStart(t *testing.T) {
	b := newBench(t)
	a := b.join("Ada Brook")
	bout := b.bout(a, 16*mass.Kilogram, gym.Held)
	_, err := b.Advise(a.ID, swing, 0)
	require.NoError(t, err)
	require.NoError(t, b.VoidBout(bout.ID, "wrong"))
	now, err := b.Advise(a.ID, swing, 0)
	require.NoError(t, err)
	fresh, err := b.reopened().Advise(a.ID, swing, 0)
	require.NoError(t, err)
	assert.Equal(t, fresh.Decision.Suggestion.Load, now.Decision.Suggestion.Load)
	assert.InDelta(t, fresh.Decision.Suggestion.Hold, now.Decision.Suggestion.Hold, 0.02, "what one bout taught of others waits for the next start")
}

func TestOverrideStandsBesideTheSuggestion(t *testing.T) {
	b := newBench(t)
	a := b.join("Ada Brook")
	before, err := b.Advise(a.ID, swing, 0)
	require.NoError(t, err)
	o := gym.Override{Athlete: a.ID, Movement: swing, Load: 8 * mass.Kilogram, Unit: mass.KG, From: b.Today()}
	require.ErrorContains(t, b.KeepOverride(o), "reason")
	o.Reason = "sore wrist"
	require.NoError(t, b.KeepOverride(o))
	after, err := b.Advise(a.ID, swing, 0)
	require.NoError(t, err)
	assert.True(t, after.Decided())
	assert.Equal(t, 8*mass.Kilogram, after.Decision.Load)
	assert.Equal(t, before.Decision.Suggestion.Load, after.Decision.Suggestion.Load, "the suggestion stays in sight")
	require.NoError(t, b.VoidOverride(after.Decision.By[0].ID))
	again, err := b.Advise(a.ID, swing, 0)
	require.NoError(t, err)
	assert.False(t, again.Decided())
}

// The shares are those of tier.Comeback, which names its source.
func TestComebackIsLighterForSoManyWeeks(t *testing.T) {
	b := newBench(t)
	a := b.join("Ada Brook")
	require.NoError(t, b.Comeback(a.ID, []float64{0.5, 0.7}))
	var shares []float64
	for range 3 {
		advice, err := b.Advise(a.ID, swing, 0)
		require.NoError(t, err)
		share := 1.0
		if advice.Decided() {
			share = advice.Decision.By[0].Share
			assert.Less(t, advice.Decision.Load, advice.Decision.Suggestion.Load)
		}
		shares = append(shares, share)
		b.now = b.now.AddDate(0, 0, 7)
	}
	assert.Equal(t, []float64{0.5, 0.7, 1}, shares)
	require.Error(t, b.Comeback(a.ID, nil))
	require.Error(t, b.Comeback(a.ID, []float64{1.2}))
	_, err := b.Undo()
	require.NoError(t, err)
	assert.Empty(t, b.Overrides(a.ID), "all weeks are one step")
}

func TestTierStandingNamesTheUsualTier(t *testing.T) {
	b := newBench(t)
	a := b.join("Ada Brook")
	s, err := b.TierStanding(a.ID)
	require.NoError(t, err)
	assert.Equal(t, "no bout yet", s.String())
	b.bout(a, 16*mass.Kilogram, gym.Held)
	s, err = b.TierStanding(a.ID)
	require.NoError(t, err)
	advice, err := b.Advise(a.ID, swing, 0)
	require.NoError(t, err)
	assert.Equal(t, advice.Decision.Suggestion.Tier, s.Usual, "one movement is all there is")
	assert.Equal(t, desk.TierStanding{Usual: s.Usual, Suggested: s.Usual, Count: map[gym.Tier]int{s.Usual: 1}}, s)
}

// A 16 kg kettlebell stays one for an athlete who reads pounds.
func TestImplementsAreReadInTheUnitOnThem(t *testing.T) {
	b := newBench(t)
	a := b.NewAthlete("Ada Brook")
	a.Unit = mass.LB
	require.NoError(t, b.AddAthlete(a, powerlifting))
	advice, err := b.Advise(a.ID, swing, 0)
	require.NoError(t, err)
	assert.Equal(t, mass.KG, advice.Unit)
	assert.Contains(t, advice.Decision.Suggestion.Why, " kg")
}

func TestAdviceIsRefusedWhereThereIsNoLoad(t *testing.T) {
	b := newBench(t)
	a := b.join("Ada Brook")
	_, err := b.Advise(a.ID, "burpee", 0)
	require.ErrorIs(t, err, tier.ErrUnloaded)
	_, err = b.Advise(a.ID, "no-such-thing", 0)
	require.ErrorContains(t, err, "no-such-thing")
}
