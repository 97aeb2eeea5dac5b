package desk_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// swinging is a desk on which Ada has held a swing of a load some times.
func swinging(t *testing.T, load mass.Mass, times int) (*bench, gym.Athlete) {
	t.Helper()
	b := newBench(t)
	a := b.join("Ada Brook")
	for range times {
		b.bout(a, load, gym.Held)
	}
	return b, a
}

func (b *bench) swing(a gym.Athlete) desk.Advice {
	b.t.Helper()
	advice, err := b.Advise(a.ID, swing, 0)
	require.NoError(b.t, err)
	return advice
}

// A comeback was decided in one step and is taken back in one, also when a week of
// it is over; undo brings it back as one.
func TestAComebackIsTakenBackWhole(t *testing.T) {
	b, a := swinging(t, 16*mass.Kilogram, 2)
	require.NoError(t, b.Comeback(a.ID, []float64{0.5, 0.7, 0.9}))
	b.now = b.now.AddDate(0, 0, 8) // in its second week
	by := b.swing(a).Decision.By
	require.Len(t, by, 1)
	require.NoError(t, b.VoidOverride(by[0].ID))
	for range 3 {
		assert.False(t, b.swing(a).Decided(), "nothing of it comes later")
		b.now = b.now.AddDate(0, 0, 7)
	}
	b.now = b.now.AddDate(0, 0, -21)
	left := b.Overrides(a.ID)
	require.Len(t, left, 1, "the week that is over stays as it was")
	assert.InDelta(t, 0.5, left[0].Share, 1e-12)
	_, err := b.Undo()
	require.NoError(t, err)
	rows := b.Decisions(a.ID)
	require.Len(t, rows, 1)
	assert.Equal(t, "50 %, then 30 %, then 10 % lighter", rows[0].What, "it is one step again")
	assert.Equal(t, desk.InForce, rows[0].State)
}

// A tier for every movement raises no load, and the standing follows the decision
// with the suggestion beside it.
func TestATierForAllCapsAndTheStandingFollows(t *testing.T) {
	b, a := swinging(t, 32*mass.Kilogram, 4)
	before := b.swing(a).Decision
	require.Equal(t, gym.Full, before.Suggestion.Tier, "or the test tells nothing")
	effect, err := b.CapEffect(a.ID, gym.Mid)
	require.NoError(t, err)
	assert.Equal(t, "Today it makes every one of 1 movement lighter, and none heavier.", effect.String())
	require.NoError(t, b.KeepOverride(gym.Override{Athlete: a.ID, Tier: gym.Mid, From: b.Today(), Reason: "tired"}))
	s, err := b.TierStanding(a.ID)
	require.NoError(t, err)
	assert.Equal(t, gym.Mid, s.Usual)
	assert.Equal(t, "suggested tier: full", s.Beside())
	require.NoError(t, b.KeepOverride(gym.Override{Athlete: a.ID, Tier: gym.Full, From: b.Today(), Reason: "rested"}))
	s, err = b.TierStanding(a.ID)
	require.NoError(t, err)
	assert.Equal(t, "1 load decided", s.Beside(), "the suggestion is over the full tier")
	after := b.swing(a)
	assert.LessOrEqual(t, after.Decision.Load, before.Suggestion.Load)
}

// What speaks against a load is said before it is kept.
func TestCautionAgainstAHeavyLoad(t *testing.T) {
	b := newBench(t)
	a := b.join("Ada Brook")
	b.bout(a, 16*mass.Kilogram, gym.Held)
	b.bout(a, 24*mass.Kilogram, gym.Stopped)
	asked := func(kg float64) string {
		said, err := b.Caution(gym.Override{Athlete: a.ID, Movement: swing, Load: mass.Of(kg, mass.KG), Unit: mass.KG})
		require.NoError(t, err)
		return said
	}
	assert.Empty(t, asked(12))
	assert.Contains(t, asked(20), "20 kg is heavier than the 14 kg suggested and has a chance of ")
	assert.NotContains(t, asked(20), "stopped")
	assert.Contains(t, asked(28), "24 kg stopped them on 10 March.")
	b.bout(a, 24*mass.Kilogram, gym.Held)
	assert.NotContains(t, asked(28), "stopped", "it was held since")
}

// Every decision stays readable, with what became of it.
func TestDecisionsAreReadable(t *testing.T) {
	b, a := swinging(t, 16*mass.Kilogram, 1)
	keep := func(o gym.Override) {
		o.Athlete, o.From = a.ID, b.Today()
		require.NoError(t, b.KeepOverride(o))
		b.now = b.now.Add(24 * time.Hour)
	}
	keep(gym.Override{Movement: swing, Load: 8 * mass.Kilogram, Unit: mass.KG, Until: b.Today(), Reason: "sore wrist"})
	keep(gym.Override{Tier: gym.Light, Reason: "tired"})
	require.NoError(t, b.VoidOverride(b.Decisions(a.ID)[0].ID))
	require.NoError(t, b.Comeback(a.ID, []float64{0.8}))
	rows := b.Decisions(a.ID)
	var told []string
	for _, r := range rows {
		told = append(told, r.What+" | "+r.For+" | "+r.Days()+" | "+r.Why+" | "+string(r.State))
	}
	assert.Equal(t, []string{
		"20 % lighter | every movement | 12 Mar – 18 Mar | back from a break | in force",
		"at most the light tier | every movement | from 11 Mar | tired | taken back",
		"8 kg | Kettlebell swing | 10 Mar | sore wrist | over",
	}, told)
	require.ErrorContains(t, b.VoidOverride(rows[1].ID), "was taken back on 12 March")
	require.ErrorContains(t, b.VoidOverride("nobody"), "none like that")
}

// Of two decisions for one movement the later stands, the list says so of both, and
// what it says of taking one back comes true.
func TestALaterDecisionReplacesAnEarlierOne(t *testing.T) {
	b, a := swinging(t, 16*mass.Kilogram, 1)
	keep := func(o gym.Override) {
		o.Athlete, o.From = a.ID, b.Today()
		require.NoError(t, b.KeepOverride(o))
		b.now = b.now.Add(time.Hour)
	}
	states := func() (told []string) {
		for _, r := range b.Decisions(a.ID) {
			told = append(told, r.What+" "+string(r.State))
		}
		return told
	}
	keep(gym.Override{Movement: swing, Load: 24 * mass.Kilogram, Unit: mass.KG, Until: b.Today().Add(10), Reason: "asked for it"})
	assert.Contains(t, b.Decisions(a.ID)[0].String(), "Taking it back lets the suggestion stand again.")
	keep(gym.Override{Movement: swing, Load: 20 * mass.Kilogram, Unit: mass.KG, Until: b.Today().Add(2), Reason: "sore"})
	assert.Equal(t, []string{"20 kg in force", "24 kg replaced"}, states())
	rows := b.Decisions(a.ID)
	assert.Contains(t, rows[0].String(), "Taking it back leaves 24 kg for Kettlebell swing until 20 Mar: asked for it.")
	assert.Contains(t, rows[1].String(), "Replaced by 20 kg for Kettlebell swing until 12 Mar: sore, for as long as that stands.")

	b.now = b.now.AddDate(0, 0, 3)
	assert.Equal(t, []string{"20 kg over", "24 kg in force"}, states(), "it stands again")
	b.now = b.now.AddDate(0, 0, -3)
	keep(gym.Override{Tier: gym.Light, Reason: "tired"})
	assert.Equal(t, []string{"at most the light tier in force", "20 kg in force", "24 kg replaced"}, states(), "for the other movements")
	require.NoError(t, b.VoidOverride(rows[0].ID))
	assert.Equal(t, 24*mass.Kilogram, b.swing(a).Decision.Load, "as was said")
	require.NoError(t, b.VoidOverride(rows[1].ID))
	b.now = b.now.Add(time.Hour)
	require.NoError(t, b.Comeback(a.ID, []float64{0.5, 0.7}))
	assert.Contains(t, b.Decisions(a.ID)[0].String(), "Taking it back leaves at most the light tier for every movement: tired.")
	b.now = b.now.Add(time.Hour)
	require.NoError(t, b.Comeback(a.ID, []float64{0.8}))
	rows = b.Decisions(a.ID)
	assert.Equal(t, []desk.DecisionState{desk.InForce, desk.Replaced}, []desk.DecisionState{rows[0].State, rows[1].State})
}

// Every bout stays in the log of its movement, the void ones with their reason.
func TestTheLogOfBoutsKeepsVoidOnes(t *testing.T) {
	b, a := swinging(t, 16*mass.Kilogram, 1)
	wrong := b.bout(a, 24*mass.Kilogram, gym.Stopped)
	require.NoError(t, b.VoidBout(wrong.ID, "another athlete's row"))
	log := b.BoutLog(a.ID, swing)
	require.Len(t, log, 2)
	assert.Equal(t, wrong.ID, log[0].ID)
	assert.Equal(t, "another athlete's row", log[0].Void.Reason)
	assert.Equal(t, "15 reps", log[0].Work)
	assert.Equal(t, "outside a class", log[0].Where)
	assert.Nil(t, log[1].Void)
	_, err := b.Undo()
	require.NoError(t, err)
	require.Len(t, b.BoutLog(a.ID, swing), 2, "a bout that stands again is told once")
	assert.Nil(t, b.BoutLog(a.ID, swing)[0].Void)
	require.NoError(t, b.VoidBout(b.BoutLog(a.ID, swing)[0].ID, "wrong"))
	require.ErrorContains(t, b.VoidBout(wrong.ID, "again"), "void already")
	require.ErrorContains(t, b.VoidBout("none", "again"), "no such bout")
}
