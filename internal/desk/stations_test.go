package desk_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
)

// The lighter bar of the Olympic lifts is lent to an empty station (IWF TCRR
// 3.3.3: women lift a 15 kg bar); no station of the starter has it by itself.
func TestLighterBarsAreLentToEmptyStations(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "clean", 1)
	m := b.come(c.ID, "Ola Berg", gym.StandardM, "clean", "1x100")
	w := b.come(c.ID, "Una Dahl", gym.StandardW, "clean", "1x70")
	assert.Equal(t, "bar-20", b.seatOf(c.ID, m).Bar)
	assert.Equal(t, "bar-15", b.seatOf(c.ID, w).Bar)
	assert.GreaterOrEqual(t, b.seatOf(c.ID, w).Station, 0)
	assert.NotEqual(t, b.seatOf(c.ID, m).Station, b.seatOf(c.ID, w).Station, "two bars, two stations")
	board := b.Boards().Board(mustClass(t, b.Desk, c.ID))
	assert.Equal(t, "15 kg bar", board.Stations[b.seatOf(c.ID, w).Station].Bar)
}

// Light bars lie unused and stations stand empty: nobody queues for one bar.
func TestEmptyStationsTakeTheBarThatManyShare(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "snatch", 5)
	for i := range 3 {
		b.come(c.ID, fmt.Sprint("W ", i), gym.StandardW, "snatch", fmt.Sprintf("5x%d", 40+5*i))
	}
	for i := range 5 {
		b.come(c.ID, fmt.Sprint("M ", i), gym.StandardM, "snatch", fmt.Sprintf("5x%d", 60+5*i))
	}
	require.NoError(t, b.ShareStations(c.ID))
	share := map[int]int{}
	for _, l := range mustClass(t, b.Desk, c.ID).Lifters {
		share[l.Station]++
	}
	assert.Len(t, share, 8, "eight lifters, eight stations, bars enough of both kinds: %v", share)
}

func TestLiftersAreMovedByHand(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "clean", 1)
	m := b.come(c.ID, "Ola Berg", gym.StandardM, "clean", "1x100")
	w := b.come(c.ID, "Una Dahl", gym.StandardW, "clean", "1x70")
	there := b.seatOf(c.ID, m).Station
	require.NoError(t, b.MoveLifter(c.ID, w.ID, there))
	assert.Equal(t, there, b.seatOf(c.ID, w).Station)
	assert.Equal(t, "bar-20", b.seatOf(c.ID, w).Bar, "at a shared bar everybody lifts that bar")
	assert.Less(t, b.seatOf(c.ID, w).Place, b.seatOf(c.ID, m).Place, "the lighter lifts first")

	b.lifts(c.ID, "back-squat", 3)
	s := b.come(c.ID, "Siv Moen", gym.StandardW, "back-squat", "3x90")
	b.log(m, "deadlift", "5x150")
	strongman := b.NewID()
	require.NoError(t, b.file.Write(t.Context(), gym.PutTrack{Track: gym.Track{ID: strongman, Name: "Strongman", Position: 2}}))
	b.Desk = b.open()
	require.NoError(t, b.KeepPiece(c.ID, gym.Piece{Track: strongman, Lift: "deadlift", Reps: 5}))
	require.NoError(t, b.ChangeTrack(c.ID, m.ID, strongman))
	require.GreaterOrEqual(t, b.seatOf(c.ID, m).Station, 0, "another lift, another station")
	err := b.MoveLifter(c.ID, s.ID, b.seatOf(c.ID, m).Station)
	require.ErrorContains(t, err, "two lifts do not share a bar")
	require.ErrorContains(t, b.MoveLifter(c.ID, s.ID, 99), "the gym has 8 stations")
	require.NoError(t, b.MoveLifter(c.ID, s.ID, -1))
	assert.Equal(t, -1, b.seatOf(c.ID, s).Station)
	var texts []string
	for _, n := range b.Sharing(mustClass(t, b.Desk, c.ID)).Notes {
		texts = append(texts, n.Text)
	}
	assert.Contains(t, strings.Join(texts, " "), "Siv Moen has no station")
	assert.Contains(t, strings.Join(texts, " "), "Una Dahl has no number for the lift")
}
