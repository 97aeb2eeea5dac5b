package desk_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/desk"
	"windlass/internal/gym"
)

func (b *bench) names(f desk.RosterFilter) []string {
	var names []string
	for _, id := range b.RosterList(f) {
		a, ok := b.Athlete(id)
		require.True(b.t, ok)
		names = append(names, a.Name)
	}
	return names
}

func TestRosterList(t *testing.T) {
	b := newBench(t)
	zoe, adam := b.join("Zoë van Dell"), b.join("Adam Quist")
	b.join("Mara Zoltan")
	loose := b.NewAthlete("Ben Loose")
	require.NoError(t, b.AddAthlete(loose, ""))
	require.NoError(t, b.SetStatus(gym.Paused, adam.ID))
	b.log(zoe, "back-squat", "5x100")
	cases := []struct {
		about string
		ask   desk.RosterFilter
		want  []string
	}{
		{"everybody by name", desk.RosterFilter{Track: desk.AnyTrack}, []string{"Adam Quist", "Ben Loose", "Mara Zoltan", "Zoë van Dell"}},
		{"the other way round", desk.RosterFilter{Track: desk.AnyTrack, Down: true}, []string{"Zoë van Dell", "Mara Zoltan", "Ben Loose", "Adam Quist"}},
		{"accents and case do not count, any word may begin so", desk.RosterFilter{Track: desk.AnyTrack, Text: "ZO"}, []string{"Mara Zoltan", "Zoë van Dell"}},
		{"every word must fit, in any order", desk.RosterFilter{Track: desk.AnyTrack, Text: "dell zoe"}, []string{"Zoë van Dell"}},
		{"the middle of a word does not fit", desk.RosterFilter{Track: desk.AnyTrack, Text: "oe"}, nil},
		{"on a track", desk.RosterFilter{Track: powerlifting, Status: gym.Active}, []string{"Mara Zoltan", "Zoë van Dell"}},
		{"on none", desk.RosterFilter{}, []string{"Ben Loose"}},
		{"of a status", desk.RosterFilter{Track: desk.AnyTrack, Status: gym.Paused}, []string{"Adam Quist"}},
		{"by track, those on none first", desk.RosterFilter{Track: desk.AnyTrack, Sort: desk.ByTrack}, []string{"Ben Loose", "Adam Quist", "Mara Zoltan", "Zoë van Dell"}},
	}
	for _, c := range cases {
		assert.Equal(t, c.want, b.names(c.ask), c.about)
	}
}

func TestKnownCountsWhatThePlanIsCountedFrom(t *testing.T) {
	b := newBench(t)
	b.plan()
	a := b.join("Ada Brook")
	assert.Equal(t, desk.Known{Have: 0, Want: 6}, b.Known(a.ID), "two lifts at three rep counts")
	b.log(a, "back-squat", "5x100")
	b.log(a, "back-squat", "5x105")
	assert.Equal(t, desk.Known{Have: 1, Want: 6}, b.Known(a.ID), "the same rep max twice is one")
	b.log(a, "bench-press", "1x80")
	assert.Equal(t, desk.Known{Have: 2, Want: 6}, b.Known(a.ID))
	_, err := b.Undo()
	require.NoError(t, err)
	assert.Equal(t, desk.Known{Have: 1, Want: 6}, b.Known(a.ID), "taken back is not known")
	b.log(a, "deadlift", "1x140")
	assert.Equal(t, desk.Known{Have: 1, Want: 6}, b.Known(a.ID), "the plan does not ask for it")
	loose := b.NewAthlete("Ben Loose")
	require.NoError(t, b.AddAthlete(loose, ""))
	assert.Zero(t, b.Known(loose.ID), "without a track nothing is wanted")
}

func TestRosterRowShowsTheWeek(t *testing.T) {
	b := newBench(t)
	b.plan()
	a := b.join("Ada Brook")
	row := b.RosterRow(a.ID)
	assert.Equal(t, "Powerlifting", row.Track.Name)
	assert.Equal(t, "Mon, Tue", row.Days.String())
	assert.Equal(t, a, row.Athlete)
	require.NoError(t, b.SetStatus(gym.Paused, a.ID))
	assert.Empty(t, b.RosterRow(a.ID).Days, "who is away trains on no day")
	assert.Zero(t, b.RosterRow("nobody"))
}

// plan gives the powerlifting track a cycle of three weeks from this Monday, with
// a squat on Mondays and a bench press on Tuesdays.
func (b *bench) plan() {
	b.t.Helper()
	c := gym.Cycle{
		ID: b.NewID(), Name: "Spring", Start: b.Today(),
		Weeks: []gym.WeekKind{gym.TrainingWeek, gym.TrainingWeek, gym.TestWeek},
	}
	var days []gym.DayPlan
	for week := range c.Weeks {
		for i, lift := range []gym.LiftKey{"back-squat", "bench-press"} {
			days = append(days, gym.DayPlan{
				Week: week + 1, Weekday: b.Today().Add(i).Weekday(), Kind: gym.MainDay, Title: fmt.Sprintf("Day %d", i+1),
				Main: gym.MainLift{Lift: lift, Reps: []int{5, 3, 1}[week]},
			})
		}
	}
	c.Tracks = []gym.TrackPlan{{Track: powerlifting, MainDays: 2, Days: days}}
	require.NoError(b.t, b.file.Write(b.t.Context(), gym.PutCycle{Cycle: c}))
	b.Desk = b.open()
}

func BenchmarkRosterListOfTenThousand(bench *testing.B) {
	b := crowded(bench, 10_000)
	for bench.Loop() {
		if len(b.RosterList(desk.RosterFilter{Track: desk.AnyTrack, Text: "ar"})) == 0 {
			bench.Fatal("nobody found")
		}
	}
}
