package desk_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/conditioning"
	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
)

// What is composed is whole, spares the next day's lift, repeats nothing of the
// days before, and is the same for the same seed.
func TestComposedWorkoutsFitTheirDay(t *testing.T) {
	b := newBench(t)
	c := b.planned(8)
	tuesday := cycle.At{Track: powerlifting, Week: 2, Weekday: day.Tuesday}
	monday := b.dayOf(c, 2, day.Monday)
	wish := b.UsualWish(tuesday, tuesday.Date(c))
	different := 0
	first, err := b.Compose(c, tuesday, wish, 1)
	require.NoError(t, err)
	for seed := range uint64(20) {
		p, err := b.Compose(c, tuesday, wish, seed+1)
		require.NoError(t, err)
		require.NoError(t, b.WorkoutFault(p.Workout))
		again, err := b.Compose(c, tuesday, wish, seed+1)
		require.NoError(t, err)
		assert.Equal(t, p, again)
		assert.NotEmpty(t, p.Why)
		for _, item := range p.Workout.Items {
			for _, done := range monday.Workout.Items {
				assert.False(t, item.Movement != "" && item.Movement == done.Movement, "%s was done the day before", item.Movement)
			}
		}
		if !assert.ObjectsAreEqual(first.Workout, p.Workout) {
			different++
		}
	}
	assert.Greater(t, different, 10, "another seed gives another one")
}

// Hard work is no proposal for a recovery day.
func TestARecoveryDayIsNotComposed(t *testing.T) {
	b := newBench(t)
	c := b.planned(8)
	plan, _ := c.Plan(powerlifting)
	recovery := 0
	for _, x := range plan.Days {
		if x.Kind != gym.RecoveryDay {
			continue
		}
		recovery++
		at := cycle.At{Track: powerlifting, Week: x.Week, Weekday: x.Weekday}
		_, err := b.Compose(c, at, b.UsualWish(at, at.Date(c)), 1)
		require.ErrorIs(t, err, conditioning.ErrNoProposal)
		assert.ErrorContains(t, err, "recovery day")
	}
	assert.Positive(t, recovery, "or the test tells nothing")
}

// The gym's settings and this once's wish decide on the window, the days apart and
// the formats.
func TestTheComposerGoesByTheSettings(t *testing.T) {
	b := newBench(t)
	c := b.planned(8)
	tuesday := cycle.At{Track: powerlifting, Week: 2, Weekday: day.Tuesday}
	reps := b.dayOf(c, 2, day.Tuesday).Main.Reps
	require.NoError(t, b.KeepFormats(reps, []gym.Format{gym.EMOM}))
	require.NoError(t, b.KeepWindow("18", "20"))
	require.NoError(t, b.KeepApart("0"))
	wish := b.reopened().UsualWish(tuesday, tuesday.Date(c))
	assert.Equal(t, desk.Wish{Shortest: 18 * 60, Longest: 20 * 60}, wish)
	p, err := b.Compose(c, tuesday, wish, 1)
	require.NoError(t, err)
	assert.Equal(t, gym.EMOM, p.Workout.Format)
	assert.GreaterOrEqual(t, p.Workout.Seconds, 18*60)
	wish.Shortest, wish.Longest = 5*60, 6*60
	p, err = b.Compose(c, tuesday, wish, 1)
	require.NoError(t, err)
	assert.LessOrEqual(t, p.Workout.Seconds, 6*60)
	for _, bad := range []desk.Wish{
		{Shortest: 600, Longest: 300}, {Shortest: 10, Longest: 300}, {Shortest: 300, Longest: 600, Apart: -1}, {Shortest: 300, Longest: 600, Class: 999},
	} {
		_, err = b.Compose(c, tuesday, bad, 1)
		assert.Error(t, err, "%+v", bad)
	}
}

// A gym of four kettlebells composes nothing for twelve that wants twelve of them
// at once, and says of a workout by hand what it lacks.
func TestImplementsDecideForTheClassOfTheDay(t *testing.T) {
	b := newBench(t)
	for _, name := range []string{"Ada Brook", "Bo Quist", "Cy Marsh", "Di Fenn", "Ed Holm", "Flo Birch"} {
		b.join(name)
	}
	c := b.planned(8)
	monday := cycle.At{Track: powerlifting, Week: 2, Weekday: day.Monday}
	on := monday.Date(c)
	assert.Equal(t, 6, b.UsualWish(monday, on).Class)
	w := b.WithMovement(b.WithFormat(gym.Workout{}, gym.AMRAP), 0, "row-calories")
	assert.Contains(t, b.WorkoutSharing(w, powerlifting, on).Text, "All 6 can work at once, if there are enough of what nobody has counted: rower.")
	require.NoError(t, b.KeepTotal("rower", "3"))
	s := b.WorkoutSharing(w, powerlifting, on)
	assert.True(t, s.Short)
	assert.Equal(t, "Too few for all 6 at once: rower (6 wanted, 3 there). Go in two heats, about 24 min in all.", s.Text)
	s = b.WorkoutSharing(b.WithMovement(w, 1, "burpee"), powerlifting, on)
	assert.Equal(t, "Too few for all 6 at once: rower (6 wanted, 3 there). Begin at different movements, in 2 groups.", s.Text)
	assert.Equal(t, desk.ClassSharing{}, b.WorkoutSharing(gym.Workout{}, powerlifting, on))
	assert.Equal(t, desk.ClassSharing{}, b.WorkoutSharing(w, "no such track", on))

	// Only loads of its own may ask for what is not there.
	require.NoError(t, b.KeepMasses("kettlebell", "8×6, 12×6, 16×6, 20×6, 24×6, 28×6"))
	w = b.WithMovement(b.WithFormat(gym.Workout{}, gym.ForTime), 0, "kettlebell-swing")
	assert.Equal(t, "All 6 can work at once: there is enough of everything it takes.", b.WorkoutSharing(w, powerlifting, on).Text)
	w.Items[0].Loads = map[gym.Standard]gym.TierLoads{}
	for _, standard := range gym.Standards() {
		w.Items[0].Loads[standard] = gym.TierLoads{Full: kilos(23), Mid: kilos(23), Light: kilos(23)}
	}
	assert.Contains(t, b.WorkoutSharing(w, powerlifting, on).Text, "23 kg kettlebell (6 wanted, 0 there)")
}

// A class larger than the roster, and one without a roster, can be composed for.
func TestTheClassCanBeChosenThisOnce(t *testing.T) {
	b := newBench(t)
	c := b.planned(8)
	monday := cycle.At{Track: powerlifting, Week: 2, Weekday: day.Monday}
	wish := b.UsualWish(monday, monday.Date(c))
	assert.Zero(t, wish.Class, "nobody is on the track")
	wish.Class = 24
	p, err := b.Compose(c, monday, wish, 1)
	require.NoError(t, err)
	assert.Contains(t, strings.Join(p.Why, "\n"), "all 24 at once: barbell (24 wanted, 8 there)")
	b.join("Ada Brook")
	p, err = b.Compose(c, monday, wish, 1)
	require.NoError(t, err)
	assert.Contains(t, strings.Join(p.Why, "\n"), "all 24 at once")
	assert.True(t, p.Sharing.Enough())
}

// The loads of the catalogue's wall ball, and those that a day has of its own.
func TestWorkoutLoadsAreWritten(t *testing.T) {
	b := newBench(t)
	w := b.WithMovement(b.WithMovement(gym.Workout{}, 0, "wall-ball"), 1, "burpee")
	assert.Equal(t, []string{"Wall ball: M 9/7/5, W 6/5/4 kg"}, b.WorkoutLoads(w))
	var err error
	w.Items[0], err = b.WithTiers(w.Items[0], gym.StandardM, "10/8/6")
	require.NoError(t, err)
	assert.Equal(t, []string{"Wall ball: M 10/8/6, W 6/5/4 kg"}, b.WorkoutLoads(w))
	assert.Empty(t, b.WorkoutLoads(gym.Workout{}))
}
