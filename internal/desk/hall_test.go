package desk_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"windlass/internal/climb"
	"windlass/internal/desk"
	"windlass/internal/gym"
)

// hall is a starter gym, of eight stations with a 20 kg bar and six 15 kg bars,
// with an open class on the climb of twenty minutes.
func hall(t *testing.T) (*bench, gym.Class) {
	t.Helper()
	b := newBench(t)
	n := byte(0)
	starter, err := desk.Starter("Hall", func() gym.ID { n++; return gym.NewID(monday, [10]byte{n}) })
	require.NoError(t, err)
	require.NoError(t, b.KeepEquipment(starter.Equipment))
	plan, err := climb.Generate(20)
	require.NoError(t, err)
	c, err := b.OpenFreeClass()
	require.NoError(t, err)
	require.NoError(t, b.KeepClimb(c.ID, plan))
	return b, c
}

// come checks somebody in with a record.
func (b *bench) come(class gym.ID, name string, standard gym.Standard, lift gym.LiftKey, text string) gym.Athlete {
	b.t.Helper()
	a := b.NewAthlete(name)
	a.Standard = standard
	require.NoError(b.t, b.AddAthlete(a, powerlifting))
	if text != "" {
		b.log(a, lift, text)
	}
	require.NoError(b.t, b.CheckIn(class, a.ID))
	return a
}

func (b *bench) lifts(class gym.ID, lift gym.LiftKey, reps int) {
	b.t.Helper()
	require.NoError(b.t, b.KeepPiece(class, gym.Piece{Track: powerlifting, Lift: lift, Reps: reps}))
}

func (b *bench) seatOf(class gym.ID, a gym.Athlete) gym.Lifter {
	b.t.Helper()
	c := mustClass(b.t, b.Desk, class)
	for _, l := range c.Lifters {
		if l.Athlete == a.ID {
			return l
		}
	}
	require.Fail(b.t, "not checked in", a.Name)
	return gym.Lifter{}
}
