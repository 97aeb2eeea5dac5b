package desk_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
)

func TestTheTimetableIsKept(t *testing.T) {
	b := newBench(t)
	id, err := b.KeepSlot(gym.Slot{Weekday: day.Tuesday, At: day.ClockOf(18, 0), Minutes: 60, Name: " Evening "})
	require.NoError(t, err)
	_, err = b.KeepSlot(gym.Slot{Weekday: day.Monday, At: day.ClockOf(6, 30), Minutes: 75, Name: "Early", Tracks: []gym.ID{powerlifting}})
	require.NoError(t, err)
	slots := b.Timetable()
	assert.Equal(t, []string{"Early", "Evening"}, []string{slots[0].Name, slots[1].Name})
	assert.Equal(t, "Powerlifting", b.TracksText(slots[0]))
	assert.Equal(t, "all tracks", b.TracksText(slots[1]))

	require.NoError(t, b.ChangeSettings(func(s *gym.Settings) error { s.FirstDay = day.Tuesday; return nil }))
	assert.Equal(t, "Evening", b.Timetable()[0].Name, "the week begins on the gym's first day")

	require.NoError(t, b.MoveSlot(slots[0], -1, 15))
	moved := b.Timetable()[1]
	assert.Equal(t, day.Sunday, moved.Weekday, "the week goes round")
	assert.Equal(t, day.ClockOf(6, 45), moved.At)
	require.NoError(t, b.DropSlot(id))
	assert.Len(t, b.reopened().Timetable(), 1)

	for want, s := range map[string]gym.Slot{
		"it has no name":                {Minutes: 60},
		"10 minutes are no class":       {Name: "X", Minutes: 10},
		"do not fit the day":            {Name: "X", Minutes: 90, At: day.ClockOf(23, 0)},
		"Early on Sunday at 06:45 stan": {Name: "X", Minutes: 60, At: day.ClockOf(6, 45), Weekday: day.Sunday},
	} {
		_, err := b.KeepSlot(s)
		assert.ErrorContains(t, err, want)
	}
	assert.ErrorContains(t, b.MoveSlot(moved, 0, -24*60), "do not fit the day")
}

func TestAProposedClassStandsWhereNoneIs(t *testing.T) {
	b := newBench(t)
	for range 17 {
		s := b.ProposeSlot(day.Friday)
		_, err := b.KeepSlot(s)
		require.NoError(t, err, "%s", s.At)
	}
	assert.Equal(t, day.ClockOf(6, 0), b.Timetable()[0].At)
	assert.Equal(t, day.ClockOf(22, 0), b.Timetable()[16].At)
}

// spring is a cycle of squats on Monday and bench presses on Thursday, which
// begins on the first day of every test.
func (b *bench) spring() {
	b.t.Helper()
	main := func(week int, on day.Weekday, lift gym.LiftKey, title string) gym.DayPlan {
		return gym.DayPlan{Week: week, Weekday: on, Kind: gym.MainDay, Title: title, Main: gym.MainLift{Lift: lift, Reps: 5}}
	}
	var days []gym.DayPlan
	for week := range 3 {
		days = append(days, main(week+1, day.Monday, "back-squat", "Squat"), main(week+1, day.Thursday, "bench-press", "Press"))
	}
	require.NoError(b.t, b.file.Write(b.t.Context(), gym.PutCycle{Cycle: gym.Cycle{
		ID: "018e0000-0000-7000-8000-0000000000c1", Name: "Spring", Start: b.Today(),
		Weeks:  []gym.WeekKind{gym.TrainingWeek, gym.TrainingWeek, gym.TestWeek},
		Tracks: []gym.TrackPlan{{Track: powerlifting, MainDays: 2, Days: days}},
	}}))
	b.Desk = b.open()
}

func TestClosedDaysSayWhatTheyMove(t *testing.T) {
	b := newBench(t)
	b.spring()
	next := b.Today().Add(7) // the Monday of week 2
	id, err := b.KeepClosure(gym.Closure{From: next, Until: next, Name: "Fair"})
	require.NoError(t, err)
	_, err = b.KeepClosure(gym.Closure{From: b.Today().Add(-20), Until: b.Today().Add(-19), Name: "Flood"})
	require.NoError(t, err)
	closed := b.Closed()
	require.Len(t, closed, 2)
	assert.Equal(t, "Fair", closed[0].Closure.Name, "what is to come stands first")
	assert.Equal(t, "16 Mar", closed[0].Span())
	require.Len(t, closed[0].Moves, 1)
	move := closed[0].Moves[0]
	assert.Equal(t, []any{"Powerlifting", "Squat", next}, []any{move.Track, move.Title, move.From})
	assert.Contains(t, []day.Date{next.Add(1), next.Add(2)}, move.To, "a day that is free and not beside the press")
	assert.Equal(t, "17–18 Feb", closed[1].Span())
	assert.True(t, closed[1].Past)
	assert.Empty(t, closed[1].Moves, "no cycle ran then")

	fair := closed[0].Closure
	assert.Equal(t, "28 Feb – 1 Mar", desk.ClosedDays{Closure: gym.Closure{From: next.Add(-16), Until: next.Add(-15)}}.Span())
	fair.Until = next.Add(6)
	same, err := b.KeepClosure(fair)
	require.NoError(t, err)
	assert.Equal(t, id, same)
	assert.Equal(t, []desk.DayMove{{"Powerlifting", "Squat", next, day.None}, {"Powerlifting", "Press", next.Add(3), day.None}}, b.Closed()[0].Moves,
		"a week that is closed has no place")

	require.NoError(t, b.DropClosure(id))
	assert.Len(t, b.reopened().Closed(), 1)
}

func TestClosedDaysThatCannotBeAreRefused(t *testing.T) {
	b := newBench(t)
	for want, c := range map[string]gym.Closure{
		"they have no name":          {From: 100, Until: 100, Name: " "},
		"they want a first and a":    {Name: "X", From: 100},
		"is before the first":        {Name: "X", From: 100, Until: 99},
		"days are more than a year;": {Name: "X", From: 100, Until: 600},
	} {
		_, err := b.KeepClosure(c)
		assert.ErrorContains(t, err, want)
	}
	assert.Empty(t, b.Closed())
	first := b.ProposeClosure()
	assert.Equal(t, b.Today().Add(1), first.From)
	_, err := b.KeepClosure(first)
	require.NoError(t, err)
	assert.Equal(t, b.Today().Add(2), b.ProposeClosure().From)
}

func TestDaysThatNoClassRunsAreTold(t *testing.T) {
	b := newBench(t)
	b.spring()
	assert.Empty(t, b.Unserved(), "without a timetable every day counts")
	_, err := b.KeepSlot(gym.Slot{Weekday: day.Monday, At: day.ClockOf(18, 0), Minutes: 60, Name: "Evening"})
	require.NoError(t, err)
	assert.Equal(t, []string{"Powerlifting trains on Thursday (Press), and no class runs it."}, b.Unserved())
}
