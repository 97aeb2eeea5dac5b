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

func TestRecordRisesOnlyWhenBeaten(t *testing.T) {
	b := newBench(t)
	a := b.join("Ilse Varga")
	rows := []struct {
		text   string
		raised bool
		record string
	}{
		{"5x100", true, "100 kg"},   // the first result is a record
		{"5x97.5", false, "100 kg"}, // lighter never lowers it
		{"5x100", false, "100 kg"},  // a tie does not raise it
		{"3x110", true, "100 kg"},   // another rep count has a record of its own
		{"5x102.5", true, "102.5 kg"},
	}
	for _, row := range rows {
		assert.Equal(t, row.raised, b.log(a, "back-squat", row.text).Raised, row.text)
		r, ok := b.Record(a.ID, "back-squat", 5)
		require.True(t, ok)
		assert.Equal(t, row.record, r.Load.In(r.Unit), row.text)
	}
	again, ok := b.reopened().Record(a.ID, "back-squat", 5)
	require.True(t, ok)
	assert.Equal(t, "102.5 kg", again.Load.In(again.Unit))
}

func TestPoundsStayPounds(t *testing.T) {
	b := newBench(t)
	a := b.join("Ilse Varga")
	b.log(a, "bench-press", "5x185lb")
	r, _ := b.reopened().Record(a.ID, "bench-press", 5)
	assert.Equal(t, "185 lb", r.Load.In(r.Unit))
}

func TestVoidGivesTheRecordBack(t *testing.T) {
	b := newBench(t)
	a := b.join("Ilse Varga")
	b.log(a, "deadlift", "1x180")
	wrong := b.log(a, "deadlift", "1x280")
	require.ErrorContains(t, b.VoidResult(wrong.Result.ID, " "), "reason")
	require.NoError(t, b.VoidResult(wrong.Result.ID, "a slip of the hand"))
	r, _ := b.Record(a.ID, "deadlift", 1)
	assert.Equal(t, 180*mass.Kilogram, r.Load)
	assert.Len(t, b.Results(a.ID), 2, "a voided result stays readable")
}

func TestUndoTakesEveryVerbBackAndRedoMakesItAgain(t *testing.T) {
	b := newBench(t)
	a := b.join("Ilse Varga")
	b.log(a, "deadlift", "1x180")
	require.NoError(t, b.SetStatus(gym.Paused, a.ID))
	for range 2 {
		label, err := b.Undo() // the pause
		require.NoError(t, err)
		assert.Contains(t, label, "paused")
		now, _ := b.Athlete(a.ID)
		assert.Equal(t, gym.Active, now.Status)
		_, err = b.Undo() // the result
		require.NoError(t, err)
		_, ok := b.Record(a.ID, "deadlift", 1)
		assert.False(t, ok)
		_, err = b.Redo()
		require.NoError(t, err)
		r, ok := b.Record(a.ID, "deadlift", 1)
		require.True(t, ok)
		assert.Equal(t, 180*mass.Kilogram, r.Load)
		_, err = b.Redo()
		require.NoError(t, err)
	}
	_, err := b.Redo()
	require.ErrorIs(t, err, desk.ErrNothing)
	assert.Equal(t, b.Book().Athletes, b.reopened().Book().Athletes)
}

func TestUndoneAthleteWithResultsIsArchived(t *testing.T) {
	b := newBench(t)
	a := b.join("Ilse Varga")
	b.log(a, "deadlift", "1x180")
	for range 2 {
		_, err := b.Undo()
		require.NoError(t, err)
	}
	now, ok := b.Athlete(a.ID)
	require.True(t, ok, "voided results still name the athlete")
	assert.Equal(t, gym.Archived, now.Status)
}

func TestTrackOfADayIsTheLatestMove(t *testing.T) {
	b := newBench(t)
	a := b.join("Ilse Varga")
	require.NoError(t, b.MoveTrack("", b.Today().Add(7), a.ID))
	assert.Equal(t, "Powerlifting", b.TrackOn(a.ID, b.Today().Add(6)).Name)
	assert.Empty(t, b.TrackOn(a.ID, b.Today().Add(7)).ID)
	assert.Empty(t, b.TrackOn(a.ID, b.Today().Add(-1)).ID)
}

func TestEntriesThatCannotBe(t *testing.T) {
	b := newBench(t)
	a := b.join("Ilse Varga")
	rows := []struct {
		name string
		e    desk.Entry
		says string
	}{
		{"no x", desk.Entry{Athlete: a.ID, Lift: "deadlift", Text: "142.5", On: b.Today(), Source: gym.Tested}, "5x142.5"},
		{"21 reps", desk.Entry{Athlete: a.ID, Lift: "deadlift", Text: "21x50", On: b.Today(), Source: gym.Tested}, "1 to 20"},
		{"no mass", desk.Entry{Athlete: a.ID, Lift: "deadlift", Text: "5xheavy", On: b.Today(), Source: gym.Tested}, "heavy"},
		{"unknown lift", desk.Entry{Athlete: a.ID, Lift: "moon-lift", Text: "5x50", On: b.Today(), Source: gym.Tested}, "moon-lift"},
		{"nobody", desk.Entry{Athlete: "x", Lift: "deadlift", Text: "5x50", On: b.Today(), Source: gym.Tested}, "no such athlete"},
		{"tomorrow", desk.Entry{Athlete: a.ID, Lift: "deadlift", Text: "5x50", On: b.Today().Add(1), Source: gym.Tested}, "not come yet"},
		{"an estimate", desk.Entry{Athlete: a.ID, Lift: "deadlift", Text: "5x50", On: b.Today(), Source: gym.Estimate}, "tested or reported"},
	}
	for _, row := range rows {
		t.Run(row.name, func(t *testing.T) {
			_, err := b.EnterResult(row.e)
			require.ErrorContains(t, err, row.says)
			assert.Empty(t, b.Results(a.ID), "nothing was written")
		})
	}
}

func TestSecondDeskSeesWhatTheFirstWrote(t *testing.T) {
	b := newBench(t)
	b.join("Ilse Varga")
	b.now = b.now.Add(time.Hour)
	assert.Equal(t, b.Book(), b.reopened().Book())
}

func TestUndoGoesThroughAVoidAndBack(t *testing.T) {
	b := newBench(t)
	a := b.join("Ilse Varga")
	e := b.log(a, "deadlift", "1x180")
	require.NoError(t, b.VoidResult(e.Result.ID, "a slip of the hand"))
	holds := func() bool { _, ok := b.Record(a.ID, "deadlift", 1); return ok }
	for range 3 {
		for _, want := range []bool{true, false} { // the void, then the result
			_, err := b.Undo()
			require.NoError(t, err)
			assert.Equal(t, want, holds())
		}
		for _, want := range []bool{true, false} {
			_, err := b.Redo()
			require.NoError(t, err)
			assert.Equal(t, want, holds())
		}
	}
	assert.Equal(t, b.Book(), b.reopened().Book())
}
