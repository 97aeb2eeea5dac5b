package station

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Against every place tried in turn: a late comer joins where the plan that is shown
// is short by the fewest seconds.
func TestALateComerJoinsWhereTheClockSuffersLeast(t *testing.T) {
	const others, used = 12, 4
	rooms, windows, _ := bigClass(t)
	rooms = rooms[:used]
	for i := range rooms {
		rooms[i].Places = 4
	}
	for seed := range uint64(40) {
		r := rand.New(rand.NewPCG(seed, 3))
		solver, err := New(rooms, windows, UsualPace())
		require.NoError(t, err)
		var class []Lifter
		for i := range others + 1 {
			class = append(class, climber(i, 30+120*r.Float64(), "squat"))
		}
		plan, err := solver.Solve(class[:others])
		require.NoError(t, err)
		for i, seat := range plan.Seats {
			class[i].Seat = seat
		}
		late := &class[others]
		for w := range int(seed) % len(windows) {
			late.Sets[w].Load = 0
		}
		joined, err := solver.Join(class, others)
		require.NoError(t, err)
		for at := range rooms {
			late.Seat = at
			there, err := solver.Judge(class)
			require.NoError(t, err)
			if len(there.Standing) == 0 {
				assert.LessOrEqual(t, joined.Over, there.Over, "class %d: station %d instead of %d", seed, at, joined.Seats[others])
			}
		}
	}
}
