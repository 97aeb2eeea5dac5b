package desk_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
)

// Eight lifters who came first hold a station each; whoever needs the lighter bar
// comes too late for one, though two to a station would leave room.
func TestSharingAnewIsOfferedWhereItSeatsSomebody(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "clean", 1)
	for i := range 8 {
		a := b.come(c.ID, fmt.Sprint("Ola ", i), gym.StandardM, "clean", fmt.Sprintf("1x%d", 80+5*i))
		require.NoError(t, b.MoveLifter(c.ID, a.ID, i))
	}
	assert.Empty(t, b.Stationless(mustClass(t, b.Desk, c.ID)).Text())
	first := b.come(c.ID, "Una Dahl", gym.StandardW, "clean", "1x60")
	second := b.come(c.ID, "Siv Moen", gym.StandardW, "clean", "1x70")
	require.Equal(t, -1, b.seatOf(c.ID, first).Station)

	before := mustClass(t, b.Desk, c.ID)
	without := b.Stationless(before)
	assert.Equal(t, "Una Dahl and Siv Moen have no station. Shared anew, everybody has one.", without.Text())
	assert.Equal(t, before, mustClass(t, b.Desk, c.ID), "to ask moves nobody")
	notes := b.Sharing(before).Notes
	require.NotEmpty(t, notes)
	assert.Equal(t, without.Text(), notes[0].Text)
	assert.Equal(t, "Share anew", notes[0].Mend)
	require.NoError(t, notes[0].Do(c.ID))
	assert.GreaterOrEqual(t, b.seatOf(c.ID, first).Station, 0)
	assert.GreaterOrEqual(t, b.seatOf(c.ID, second).Station, 0)
	assert.Empty(t, b.Stationless(mustClass(t, b.Desk, c.ID)).Names)
}

// Where no sharing helps, nothing is offered and the reason stands there.
func TestSharingAnewIsNotOfferedWithoutABar(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "clean", 1)
	e := b.Book().Equipment
	e.Stations = e.Stations[:1]
	require.NoError(t, b.KeepEquipment(e))
	b.come(c.ID, "Ola Berg", gym.StandardM, "clean", "1x100")
	b.come(c.ID, "Una Dahl", gym.StandardW, "clean", "1x60")
	now := mustClass(t, b.Desk, c.ID)
	without := b.Stationless(now)
	require.Len(t, without.Names, 1)
	assert.False(t, without.Mends())
	notes := b.Sharing(now).Notes
	require.NotEmpty(t, notes)
	assert.Contains(t, notes[0].Text, without.Names[0]+" has no station: ")
	assert.False(t, notes[0].Anew)
}
