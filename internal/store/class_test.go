package store

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

func TestLoadClassPicksThePresentOne(t *testing.T) {
	on := day.Of(2026, 3, 9)
	class := func(id gym.ID, stage gym.Stage, who ...gym.ID) gym.Change {
		c := gym.Class{ID: id, On: on, Stage: stage}
		for _, w := range who {
			c.Lifters = append(c.Lifters, gym.Lifter{Athlete: w})
		}
		return gym.PutClass{Class: c}
	}
	f := newFile(t) // with one class being set up, for Ann
	for _, c := range []struct {
		name    string
		changes []gym.Change
		class   gym.ID
		names   []string
	}{
		{"the only one", nil, "class", []string{"Ann Ash"}},
		{"the later of two being set up", []gym.Change{class("next", gym.SetUp)}, "next", nil},
		{"one that climbs before any set-up", []gym.Change{class("class", gym.Climbing, "ann", "ben")}, "class", []string{"Ann Ash", "Ben Birch"}},
		{"a conditioning one just the same", []gym.Change{class("class", gym.Conditioning, "ben")}, "class", []string{"Ben Birch"}},
		{"what is left", []gym.Change{class("class", gym.Finished, "ben")}, "next", nil},
		{"nothing runs", []gym.Change{class("next", gym.Finished)}, "", nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			require.NoError(t, f.Write(t.Context(), c.changes...))
			b, err := f.LoadClass(t.Context())
			require.NoError(t, err)
			var id gym.ID
			for _, present := range b.Classes {
				id = present.ID
			}
			assert.Equal(t, c.class, id)
			assert.LessOrEqual(t, len(b.Classes), 1)
			var names []string
			for _, a := range b.Athletes {
				names = append(names, a.Name)
			}
			assert.Equal(t, c.names, names)
		})
	}
}

// The wall is read by athletes: what the coach noted stays at the desk.
func TestLoadClassLeavesOutWhatStaysAtTheDesk(t *testing.T) {
	f := newFile(t)
	ann := athlete("ann", "Ann Ash")
	ann.Notes = "sore knee"
	require.NoError(t, f.Write(t.Context(), gym.PutAthlete{Athlete: ann}))
	b, err := f.LoadClass(t.Context())
	require.NoError(t, err)
	all := load(t, f)
	assert.Equal(t, all.Settings, b.Settings)
	assert.Equal(t, all.Equipment, b.Equipment)
	assert.Equal(t, all.Lifts, b.Lifts)
	assert.Equal(t, all.Slots, b.Slots)
	require.Len(t, b.Athletes, 1)
	assert.Empty(t, b.Athletes[0].Notes)
	assert.Empty(t, b.Restrictions)
	assert.Empty(t, b.Results)
}

// A wall that celebrates a record needs what was logged and what that is held
// against, and nothing else of the log.
func TestLoadClassBringsWhatWasLoggedOfItsClimb(t *testing.T) {
	f := newFile(t)
	ann := athlete("ann", "Ann Ash")
	require.NoError(t, f.Write(t.Context(), gym.PutAthlete{Athlete: ann}))
	lift := load(t, f).Lifts[0]
	for id, reps := range map[gym.ID]int{"before": 3, "today": 3, "single": 1} {
		r := gym.Result{ID: id, Athlete: ann.ID, Lift: lift.Key, Reps: reps, Load: 100 * mass.Kilogram, Unit: mass.KG, On: 20_000, Source: gym.Tested}
		require.NoError(t, f.Write(t.Context(), gym.AddResult{Result: r}))
	}
	c := gym.Class{ID: "class", On: 20_000, Name: "Evening", Stage: gym.Climbing, Lifters: []gym.Lifter{{Athlete: ann.ID, Result: "today"}}}
	require.NoError(t, f.Write(t.Context(), gym.PutClass{Class: c}))
	b, err := f.LoadClass(t.Context())
	require.NoError(t, err)
	var ids []gym.ID
	for _, r := range b.Results {
		ids = append(ids, r.ID)
	}
	assert.ElementsMatch(t, []gym.ID{"before", "today"}, ids)
}
