package desk_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/store"
)

var allEntries = []desk.CatalogueKind{desk.LiftEntries, desk.MovementEntries, desk.FinisherEntries, desk.DrillEntries}

func TestTheCatalogueIsSearched(t *testing.T) {
	b := newBench(t)
	// As many as issue 3 asks of the built-in catalogue.
	for kind, least := range map[desk.CatalogueKind]int{desk.LiftEntries: 45, desk.MovementEntries: 90, desk.FinisherEntries: 50, desk.DrillEntries: 60} {
		assert.GreaterOrEqual(t, len(b.CatalogueRows(kind, "", false)), least, kind)
	}
	names := func(kind desk.CatalogueKind, search string) (all []string) {
		for _, r := range b.CatalogueRows(kind, search, false) {
			all = append(all, r.Name)
		}
		return all
	}
	assert.Contains(t, names(desk.LiftEntries, "SQUAT back"), "Back squat", "words in any order and case")
	assert.NotContains(t, names(desk.LiftEntries, "squat back"), "Bench press")
	assert.Subset(t, names(desk.LiftEntries, ""), names(desk.LiftEntries, "log"))
	assert.NotEmpty(t, names(desk.LiftEntries, "log"), "by the bar")
	assert.NotEmpty(t, names(desk.FinisherEntries, "calf"), "by the muscle")
	assert.Empty(t, names(desk.DrillEntries, "no such drill"))
}

func TestEntriesAreHiddenAndBroughtBack(t *testing.T) {
	b := newBench(t)
	for _, kind := range allEntries {
		first := b.CatalogueRows(kind, "", false)[0]
		n := len(b.CatalogueRows(kind, "", false))
		require.NoError(t, b.HideEntry(kind, first.Key, true))
		assert.Len(t, b.reopened().CatalogueRows(kind, "", false), n-1)
		assert.Len(t, b.CatalogueRows(kind, "", true), n, "it can still be asked for")
		require.NoError(t, b.HideEntry(kind, first.Key, false))
		assert.Len(t, b.CatalogueRows(kind, "", false), n)
		assert.ErrorContains(t, b.HideEntry(kind, "no-such", true), "not there any more")
		assert.ErrorContains(t, b.DropEntry(kind, first.Key), "built-in catalogue; hide it instead")
		assert.ErrorContains(t, b.DropEntry(kind, "no-such"), "not there any more")
	}
}

func TestOwnEntriesAreAddedAndDeletedWhileNothingNamesThem(t *testing.T) {
	b := newBench(t)
	for _, kind := range allEntries {
		key, err := b.AddEntry(kind, " Chain Thing ")
		require.NoError(t, err)
		assert.Equal(t, "chain-thing", key)
		rows := b.reopened().CatalogueRows(kind, "chain thing", false)
		require.Len(t, rows, 1)
		assert.True(t, rows[0].Own)
		_, err = b.AddEntry(kind, "chain  thing")
		assert.ErrorContains(t, err, "already; write a different one")
		_, err = b.AddEntry(kind, "…")
		assert.ErrorContains(t, err, "no letter or digit")
		_, err = b.AddEntry(kind, "Штанга")
		require.NoError(t, err, "a name without Latin letters has a key, too")
		require.NoError(t, b.DropEntry(kind, key))
		assert.Empty(t, b.reopened().CatalogueRows(kind, "chain thing", true))
	}
}

// What the desk says is in use must be what the file guards, and the other way
// round: the store's own refusal is the oracle.
func TestWhatIsInUseIsOnlyHidden(t *testing.T) {
	b := newBench(t)
	keys := map[desk.CatalogueKind]string{}
	for _, kind := range allEntries {
		key, err := b.AddEntry(kind, "Used thing")
		require.NoError(t, err)
		keys[kind] = key
	}
	ada := b.join("Ada Brook")
	b.log(ada, gym.LiftKey(keys[desk.LiftEntries]), "5x100")
	require.NoError(t, b.file.Write(t.Context(), gym.PutCycle{Cycle: gym.Cycle{
		ID: "018e0000-0000-7000-8000-0000000000c1", Name: "Spring", Start: b.Today(),
		Weeks: []gym.WeekKind{gym.TrainingWeek, gym.TrainingWeek, gym.TestWeek},
		Tracks: []gym.TrackPlan{{Track: powerlifting, Days: []gym.DayPlan{{
			Week: 1, Kind: gym.MainDay, Title: "All",
			WarmUp:   []gym.DrillLine{{Drill: keys[desk.DrillEntries], Dose: "1"}},
			Second:   gym.SecondLift{Lift: "bench-press", OfLift: gym.LiftKey(keys[desk.LiftEntries])},
			Workout:  gym.Workout{Format: gym.AMRAP, Seconds: 600, Items: []gym.Item{{Movement: gym.MovementKey(keys[desk.MovementEntries]), Amount: 5}}},
			Finisher: []gym.FinisherLine{{Finisher: keys[desk.FinisherEntries], Dose: "1"}},
		}}}},
	}}))
	b.Desk = b.open()
	assert.Equal(t, []string{"1 result", "the cycle Spring"}, b.EntryUses(desk.LiftEntries, keys[desk.LiftEntries]))
	drops := map[desk.CatalogueKind]gym.Change{
		desk.LiftEntries: gym.DropLift{Key: "used-thing"}, desk.MovementEntries: gym.DropMovement{Key: "used-thing"},
		desk.FinisherEntries: gym.DropFinisher{Key: "used-thing"}, desk.DrillEntries: gym.DropDrill{Key: "used-thing"},
	}
	for kind, key := range keys {
		assert.ErrorContains(t, b.DropEntry(kind, key), "the cycle Spring; hide it instead")
		require.ErrorIs(t, b.file.Write(t.Context(), drops[kind]), store.ErrInUse)
		assert.NoError(t, b.HideEntry(kind, key, true))
	}
}

func TestTierLoadsAreKept(t *testing.T) {
	b := newBench(t)
	key := gym.MovementKey("kettlebell-swing")
	_, ok := b.Movement(key)
	require.True(t, ok)
	require.NoError(t, b.KeepTiers(key, gym.StandardM, "28, 24; 20"))
	m, _ := b.reopened().Movement(key)
	assert.Equal(t, gym.TierLoads{Full: 28 * mass.Kilogram, Mid: 24 * mass.Kilogram, Light: 20 * mass.Kilogram}, m.Loads[gym.StandardM])
	assert.Equal(t, "28, 24, 20", b.TierText(m, gym.StandardM))
	for want, text := range map[string]string{
		"2 loads where three are wanted": "28, 24",
		"is not over the mid load":       "20, 24, 16",
		"it has no number":               "a,b,c",
		"is no load; write all three":    "2, 1, 0",
		"over 1000 kg":                   "2000, 1, 0.5",
	} {
		assert.ErrorContains(t, b.KeepTiers(key, gym.StandardM, text), want)
	}
	require.NoError(t, b.KeepTiers(key, gym.StandardM, " "))
	m, _ = b.Movement(key)
	assert.Empty(t, b.TierText(m, gym.StandardM))
	assert.ErrorContains(t, b.KeepTiers("none", gym.StandardM, ""), "not there any more")
	_, err := b.KeepMovement(gym.Movement{Name: "X", Region: gym.Lower, Pattern: gym.Squat, Measure: gym.ByReps, Seconds: 2, Implement: "anvil"})
	assert.ErrorContains(t, err, `the gym has no implement "anvil"`)
}
