package station

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/mass"
	"windlass/internal/plates"
)

func TestClashes(t *testing.T) {
	loads := newLoads(t, bar("20", kg(20), mass.KG), plate(kg(20), mass.KG, 3), plate(kg(2.5), mass.KG, 1))
	rack := Station{Name: "rack", Loads: loads, Places: 2}
	solver, err := New([]Station{rack, rack}, []int{120, 120}, UsualPace())
	require.NoError(t, err)
	at := func(seat int, loads ...float64) Lifter {
		l := Lifter{Bar: "20", Seat: seat}
		for _, x := range loads {
			l.Sets = append(l.Sets, Set{Load: kg(x), Reps: 1})
		}
		return l
	}
	judge := func(lifters ...Lifter) []Clash {
		plan, err := solver.Judge(lifters)
		require.NoError(t, err)
		return solver.Clashes(plan)
	}

	t.Run("plates for all", func(t *testing.T) {
		assert.Empty(t, judge(at(0, 60, 60), at(1, 60, 65)))
	})
	t.Run("two want the last pair in the second window", func(t *testing.T) {
		got := judge(at(0, 60, 65), at(1, 60, 65))
		require.Len(t, got, 1)
		assert.Equal(t, 1, got[0].Window)
		assert.Equal(t, 0, got[0].Turn)
		assert.Equal(t, "2.5 kg", got[0].Disc.String())
		assert.Equal(t, plates.Reload, got[0].Ways[0].Out, "one of them at 60 kg")
	})
	t.Run("a window without the late comer has one turn", func(t *testing.T) {
		got := judge(at(0, 65, 65), at(0, 0, 60), at(1, 65, 65))
		var moments [][2]int
		for _, c := range got {
			moments = append(moments, [2]int{c.Window, c.Turn})
		}
		assert.Equal(t, [][2]int{{0, 0}, {1, 1}}, moments)
	})
	t.Run("one at the second turn, while the other bar stays loaded", func(t *testing.T) {
		got := judge(at(0, 25, 60), at(0, 100, 100), at(1, 60, 100))
		require.Len(t, got, 1)
		assert.Equal(t, 1, got[0].Window)
		assert.Equal(t, 1, got[0].Turn)
		assert.Equal(t, "20 kg", got[0].Disc.String())
	})
}
