package desk_test

import (
	"slices"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
)

// A class on the floor can be gone on with whatever day the machine thinks it is.
func TestTheRunningClassIsOfToday(t *testing.T) {
	b, c, _, _ := classOfTwo(t)
	require.Len(t, b.MeetingsNow(), 1)
	for _, now := range []time.Time{b.now.In(time.FixedZone("west", -11*3600)), b.now.Add(24 * time.Hour)} {
		b.now = now
		require.NotEqual(t, c.On, b.Today(), "the day is another one then")
		_, err := b.KeepSlot(gym.Slot{ID: b.NewID(), Weekday: b.Today().Weekday(), At: day.ClockOf(7, 0), Minutes: 60, Name: "Early"})
		require.NoError(t, err)
		meetings := b.MeetingsNow()
		require.NotEmpty(t, meetings)
		assert.Equal(t, c.ID, meetings[0].Class.ID)
		assert.Equal(t, desk.OnFloor, meetings[0].State)
		assert.Equal(t, "Morning", meetings[0].Slot.Name)
		assert.Equal(t, b.Meetings(b.Today()), meetings[1:])
	}
	require.NoError(t, b.FinishClass(c.ID))
	assert.Equal(t, b.Meetings(b.Today()), b.MeetingsNow(), "a finished one is of its own day")
}

// What a track does is said by one name everywhere, as the class has it.
func TestTheDaysWorkIsNamedOnce(t *testing.T) {
	for want, main := range map[string]gym.MainLift{
		"":                      {},
		"Snatch 2RM":            {Lift: "snatch", Reps: 2},
		"Snatch by percentages": {Lift: "snatch", Reps: 2, Scheme: []gym.Sets{{Percent: 75, Sets: 4, Reps: 2}}},
	} {
		lift := ""
		if main.Lift != "" {
			lift = "Snatch"
		}
		assert.Equal(t, want, desk.TrackDay{Plan: gym.DayPlan{Main: main}, Lift: lift}.Work())
	}
	b, c, _, _ := classOfTwo(t)
	require.NoError(t, b.KeepPiece(c.ID, gym.Piece{Track: powerlifting, Lift: "deadlift", Reps: 5}))
	tracks := b.MeetingsNow()[0].Tracks
	at := slices.IndexFunc(tracks, func(x desk.TrackDay) bool { return x.Track.ID == powerlifting })
	assert.Equal(t, "Deadlift 5RM", tracks[at].Work(), "the coach has changed it")
}

// A day by percentages of the 1RM needs a 1RM, and no rep max of its sets.
func TestWhatADayByPercentagesNeeds(t *testing.T) {
	b := newBench(t)
	b.planned(12)
	none, knows := b.join("Ada Lund"), b.join("Bo Ito")
	b.log(knows, "snatch", "1x60")
	slot := gym.Slot{Name: "Morning", Weekday: b.Today().Weekday(), At: day.ClockOf(6, 0), Minutes: 60}
	_, err := b.KeepSlot(slot)
	require.NoError(t, err)
	meetings := b.MeetingsNow()
	require.Len(t, meetings, 1)
	c, err := b.OpenClass(meetings[0].Slot)
	require.NoError(t, err)
	needs := func(a gym.Athlete) []string {
		var texts []string
		for _, n := range b.Needs() {
			if n.Athlete == a.ID {
				texts = append(texts, n.Text)
			}
		}
		return texts
	}
	require.NoError(t, b.KeepPiece(c.ID, gym.Piece{Track: powerlifting, Lift: "snatch", Reps: 2, Scheme: []gym.Sets{{Percent: 75, Sets: 4, Reps: 2}}}))
	assert.Equal(t, []string{"Snatch by percentages: no 1RM of Snatch is known."}, needs(none))
	assert.Empty(t, needs(knows))
	require.NoError(t, b.KeepPiece(c.ID, gym.Piece{Track: powerlifting, Lift: "snatch", Reps: 5}))
	assert.Equal(t, []string{"Snatch 5RM: neither record nor estimate."}, needs(none), "the coach has changed it")
}
