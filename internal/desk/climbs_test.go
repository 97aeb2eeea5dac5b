package desk_test

import (
	"io/fs"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/climb"
	"windlass/internal/desk"
	"windlass/internal/gym"
)

func (b *bench) climb(id gym.ID) gym.ClimbPlan {
	b.t.Helper()
	for _, c := range b.Climbs() {
		if c.ID == id {
			return c
		}
	}
	b.t.Fatalf("no climb %q", id)
	return gym.ClimbPlan{}
}

func TestClimbsAreGeneratedCopiedSavedAndRemoved(t *testing.T) {
	b := newBench(t)
	id, err := b.NewClimb(" 20 min")
	require.NoError(t, err)
	twin, err := b.CopyClimb(id)
	require.NoError(t, err)
	assert.Equal(t, "20 minutes", b.climb(id).Name)
	assert.Equal(t, "20 minutes 2", b.climb(twin).Name)
	assert.Equal(t, b.climb(id).Rungs, b.climb(twin).Rungs)

	plan := b.climb(twin)
	plan.Name, plan.Strict = " Slow ", true
	same, err := b.SaveClimb(plan)
	require.NoError(t, err)
	assert.Equal(t, twin, same)
	assert.Equal(t, "Slow", b.climb(twin).Name)

	plan.Name = "20 MINUTES"
	_, err = b.SaveClimb(plan)
	assert.ErrorContains(t, err, "another climb has that name")
	plan.Name, plan.Rungs = "Slow", nil
	_, err = b.SaveClimb(plan)
	require.ErrorIs(t, err, climb.ErrPlan)
	for _, minutes := range []string{"", "soon", "3", "600"} {
		_, err = b.NewClimb(minutes)
		require.Error(t, err, minutes)
	}

	require.NoError(t, b.RemoveClimb(twin))
	assert.Len(t, b.reopened().Climbs(), 1)
	require.ErrorContains(t, b.RemoveClimb(twin), "not there any more")
	_, err = b.Undo()
	require.NoError(t, err)
	assert.True(t, b.climb(twin).Strict)
}

func TestAClimbThatACycleRunsKeepsItsPlaceThere(t *testing.T) {
	b := newBench(t)
	id, err := b.NewClimb("20")
	require.NoError(t, err)
	cycle := gym.Cycle{
		ID: "018e0000-0000-7000-8000-0000000000c1", Name: "Spring", Start: b.Today(),
		Weeks: []gym.WeekKind{gym.TrainingWeek, gym.TrainingWeek, gym.TestWeek},
		Tracks: []gym.TrackPlan{{Track: powerlifting, Days: []gym.DayPlan{
			{Week: 1, Kind: gym.MainDay, Main: gym.MainLift{Lift: "back-squat", Reps: 5, Climb: "20 minutes"}},
		}}},
	}
	require.NoError(t, b.file.Write(t.Context(), gym.PutCycle{Cycle: cycle}))
	b.Desk = b.open()

	assert.ErrorContains(t, b.RemoveClimb(id), "it is run in Spring; give those days another climb first")
	plan := b.climb(id)
	plan.Name = "Twenty"
	_, err = b.SaveClimb(plan)
	require.NoError(t, err)
	again := b.reopened()
	assert.Equal(t, []string{"Spring"}, again.ClimbUses("Twenty"))
	assert.Empty(t, again.ClimbUses("20 minutes"))
	_, err = b.Undo()
	require.NoError(t, err)
	assert.Equal(t, []string{"Spring"}, b.ClimbUses("20 minutes"), "one step takes both back")
}

func TestClimbsGoOutAndComeBackAsCSV(t *testing.T) {
	b := newBench(t)
	id, err := b.NewClimb("25")
	require.NoError(t, err)
	path := filepath.Join(t.TempDir(), "Long way.csv")
	require.NoError(t, b.ExportClimb(id, path))
	require.ErrorIs(t, b.ExportClimb(id, path), fs.ErrExist)
	back, err := b.ImportClimb(path)
	require.NoError(t, err)
	assert.Equal(t, "Long way", b.climb(back).Name)
	assert.Equal(t, b.climb(id).Rungs, b.climb(back).Rungs)

	require.NoError(t, os.WriteFile(path, []byte("at,until,percent,reps,zone\n0:00,1:00,40,5,light\n2:00,3:00,50,5,light\n"), 0o600))
	_, err = b.ImportClimb(path)
	assert.ErrorContains(t, err, "leaves a gap of 60 s")
	_, err = b.ImportClimb(filepath.Join(t.TempDir(), "none.csv"))
	require.ErrorIs(t, err, fs.ErrNotExist)
	assert.Len(t, b.Climbs(), 2)
}

func TestADraftSaysWhatIsWrongWithIt(t *testing.T) {
	plan, err := climb.Generate(12)
	require.NoError(t, err)
	good := desk.DraftOf(plan)
	tests := map[string]func(*desk.ClimbDraft){
		"the climb has no name; write one":                            func(c *desk.ClimbDraft) { c.Name = " " },
		`in rung 2 the time "soon" is not minutes and seconds`:        func(c *desk.ClimbDraft) { c.Rungs[1].At = "soon" },
		`in rung 1 the percentage "" is not a number`:                 func(c *desk.ClimbDraft) { c.Rungs[0].Percent = "" },
		`in rung 1 the reps "many" are not a number`:                  func(c *desk.ClimbDraft) { c.Rungs[0].Reps = "many" },
		`of the heavy line the percentage "x" is not a number`:        func(c *desk.ClimbDraft) { c.HeavyLine = "x" },
		"the ceiling of 90 % is not over 100":                         func(c *desk.ClimbDraft) { c.Ceiling = "90" },
		"rung 2 begins at 01:30 and leaves a gap of 30 s after 01:00": func(c *desk.ClimbDraft) { c.Rungs[1].At = "1:30" },
		"rung 1 is in the zone \"\"; write light, working or top":     func(c *desk.ClimbDraft) { c.Rungs[0].Zone = "" },
		"the climb has no rungs; add at least one":                    func(c *desk.ClimbDraft) { c.Rungs = nil },
		"rung 2 falls from 99 % to 55 %; write 99 or more":            func(c *desk.ClimbDraft) { c.Rungs[0].Percent = "99 %" },
	}
	for want, spoil := range tests {
		draft := desk.DraftOf(plan)
		spoil(&draft)
		_, faults := draft.Plan()
		require.NotEmpty(t, faults, want)
		assert.ErrorContains(t, faults[0].Err, want)
		assert.False(t, draft.Same(plan), want)
	}
	_, faults := good.Plan()
	assert.Empty(t, faults)
	assert.True(t, good.Same(plan))
}

// What a draft says of a climb is what it was written from, and rungs that are
// put in and taken out leave a climb that still follows its own clock.
func TestDraftsRoundTripAndKeepTheirClock(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		plan, err := climb.Generate(rapid.IntRange(climb.MinMinutes, climb.MaxMinutes).Draw(t, "minutes"))
		if err != nil {
			t.Fatal(err)
		}
		draft := desk.DraftOf(plan)
		if back, faults := draft.Plan(); len(faults) > 0 || !draft.Same(back) {
			t.Fatalf("came back as %v with %v", back, faults)
		}
		seconds := plan.Rungs[len(plan.Rungs)-1].Until
		for range rapid.IntRange(1, 5).Draw(t, "times") {
			at := rapid.IntRange(0, len(draft.Rungs)-1).Draw(t, "at")
			got, _ := draft.Plan()
			length := got.Rungs[at].Until - got.Rungs[at].At
			if rapid.Bool().Draw(t, "in") {
				draft.Insert(at)
				seconds += length
			} else if len(draft.Rungs) > 1 {
				draft.Remove(at)
				seconds -= length
			}
		}
		got, faults := draft.Plan()
		if len(faults) > 0 || got.Rungs[len(got.Rungs)-1].Until != seconds {
			t.Fatalf("%v, and %v", got, faults)
		}
	})
}

func TestInsertIntoNothingAndRemoveBesideLeaveNoHarm(t *testing.T) {
	var draft desk.ClimbDraft
	draft.Remove(0)
	draft.Insert(7)
	require.Len(t, draft.Rungs, 1)
	draft.Rungs[0].Until = "whenever"
	draft.Insert(0)
	assert.Len(t, draft.Rungs, 2, "a text that is no time is left for the coach to mend")
}
