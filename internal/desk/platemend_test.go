package desk_test

import (
	"context"
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/climb"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
)

// Whatever the class and the stock, where plates run out one action mends it: a
// count by brute force finds none that runs out afterwards, no lifter's loads fall
// on the way up, nobody attempts less than before the record, and one step of undo
// brings all back.
func TestOneActionMendsEveryShortage(t *testing.T) {
	b := newBench(t)
	b.people(9)
	mended := map[string]int{}
	rapid.Check(t, func(rt *rapid.T) {
		c := b.scarce(rt)
		boards := b.Boards()
		if len(runsOut(boards.Board(c), b.Book().Equipment.Stock)) == 0 {
			return
		}
		note, ok := plateNote(b, c)
		require.True(rt, ok, "a shortage is said")
		require.NotEmpty(rt, note.Mend, "with one action: %s", note.Text)
		require.NotEmpty(rt, note.Changes(), "that says what it changes")
		require.NoError(rt, note.Do(c.ID))
		after, _ := b.Class(c.ID)
		board := b.Boards().Board(after)
		assert.Empty(rt, runsOut(board, b.Book().Equipment.Stock), "%s: %v", note.Mend, note.Does)
		assertClimbs(rt, boards.Board(c), board)
		mended[note.Mend]++
		_, err := b.Undo()
		require.NoError(rt, err)
		back, _ := b.Class(c.ID)
		assert.Equal(rt, c.Lifters, back.Lifters, "and can be taken back")
	})
	assert.NotEmpty(t, mended, "no class was short")
}

// Each row is two stations with one rung of two minutes, their lifters in turn:
// the first, the third at one, the second, the fourth at the other.
func TestTheCheapestWayOutIsOffered(t *testing.T) {
	for _, row := range []struct {
		what   string
		plates []plates.Plate
		loads  []float64
		mend   string
		does   []string
	}{
		{
			"two lifters trade turns, so that one pair of 25 kg does for both heavy loads",
			[]plates.Plate{pairs(25, 1), pairs(5, 2)},
			[]float64{70, 70, 30, 30},
			"Swap turns",
			[]string{"At Rack 1, Lifter 0 and Lifter 2 trade turns; no load changes."},
		}, {
			"one takes what is left, 15 + 2.5 a side",
			[]plates.Plate{pairs(20, 1), pairs(15, 1), pairs(2.5, 1)},
			[]float64{60, 60},
			"Take the nearest loads",
			[]string{"Rung 1, Lifter 0: 55 kg in place of 60 kg."},
		}, {
			"nothing near 60 kg is left",
			[]plates.Plate{pairs(20, 1)},
			[]float64{60, 60},
			"Take turns",
			[]string{"Rung 1, Lifter 0: lifts when all others have."},
		},
	} {
		t.Run(row.mend, func(t *testing.T) {
			b, c := twoRacks(t, row.plates, row.loads...)
			note, ok := plateNote(b, c)
			require.True(t, ok, row.what)
			assert.Equal(t, row.mend, note.Mend, row.what)
			assert.Equal(t, row.does, note.Changes())
			require.NoError(t, note.Do(c.ID))
			after := b.Sharing(mustClass(t, b.Desk, c.ID)).Notes
			for _, n := range after {
				assert.True(t, n.Aside, n.Text)
			}
		})
	}
}

// A few pairs of 0.5 kg do not do for everybody's warm-up; kept for top rungs, they
// need not.
func TestSmallPlatesAreOfferedToBeKeptForTopRungs(t *testing.T) {
	b, c := hall(t)
	require.NoError(t, b.KeepSmallOnTop(false))
	b.lifts(c.ID, "back-squat", 3)
	for i := range 8 {
		b.come(c.ID, fmt.Sprint("Lifter ", i), gym.StandardM, "back-squat", fmt.Sprintf("3x%d", 101+7*i))
	}
	require.NoError(t, b.ShareStations(c.ID))
	note, ok := plateNote(b, mustClass(t, b.Desk, c.ID))
	require.True(t, ok)
	require.Equal(t, "Small plates on top rungs only", note.Mend)
	assert.Contains(t, note.Changes()[0], "loads change, by at most 1 kg")
	require.NoError(t, note.Do(c.ID))
	boards := b.Boards()
	for _, x := range boards.Shortages(boards.Board(mustClass(t, b.Desk, c.ID)), 0) {
		assert.GreaterOrEqual(t, x.Rungs[0], 8, x.Text())
	}
}

// Other plates for the same loads are simply taken: 20 kg are 10 + 10 as well.
func TestOtherPlatesForTheSameLoadsAreTaken(t *testing.T) {
	b, c := twoRacks(t, []plates.Plate{pairs(20, 1), pairs(10, 2)}, 60, 60)
	_, ok := plateNote(b, c)
	assert.False(t, ok)
	assert.Empty(t, runsOut(b.Boards().Board(c), b.Book().Equipment.Stock))
}

// Who lifts when all others have needs time after them, and the clock says so; the
// way back to the climb stays open.
func TestTurnsCostTimeAndCanBeTakenBack(t *testing.T) {
	b, c := twoRacks(t, []plates.Plate{pairs(20, 1)}, 60, 60)
	c.Climb.Rungs[0].Until = 30
	require.NoError(t, b.file.Write(context.Background(), gym.PutClass{Class: c}))
	b.Desk = b.open()
	assert.Len(t, b.Sharing(c).Notes, 1, "a set takes 8 + 6 + 3 × 3 s, and two stations lift at once")
	note, _ := plateNote(b, c)
	require.NoError(t, note.Do(c.ID))
	notes := b.Sharing(mustClass(t, b.Desk, c.ID)).Notes
	require.Len(t, notes, 2)
	assert.Equal(t, "The clock cannot be kept: all rungs are too short, by 16 s at Rack 1.", notes[0].Text, "2 × 23 s in 30 s")
	assert.Equal(t, "Back to the climb", notes[1].Mend)
	require.NoError(t, notes[0].Do(c.ID))
	require.NoError(t, b.Sharing(mustClass(t, b.Desk, c.ID)).Notes[0].Do(c.ID))
	now := mustClass(t, b.Desk, c.ID)
	assert.Equal(t, 46, now.Climb.Rungs[0].Until)
	for _, l := range now.Lifters {
		assert.Empty(t, l.Exceptions)
	}
}

// Once a rung is on the clock, what was decided for those before it stays.
func TestOnlyRungsToComeAreMended(t *testing.T) {
	b, c := twoRacks(t, []plates.Plate{pairs(20, 1)}, 60, 60)
	c.Climb.Rungs = append(c.Climb.Rungs, gym.Rung{At: 120, Until: 240, Percent: 50, Reps: 3, Zone: gym.WorkingZone})
	require.NoError(t, b.file.Write(context.Background(), gym.PutClass{Class: c}))
	b.Desk = b.open()
	require.NoError(t, b.StartClock(c.ID))
	b.now = b.now.Add(3 * time.Minute)
	note, ok := plateNote(b, mustClass(t, b.Desk, c.ID))
	require.True(t, ok)
	assert.Equal(t, "Rung 2: all stations together want 2 pairs of 20 kg, the gym has 1.", note.Text)
	assert.Equal(t, []string{"Rung 2, Lifter 0: lifts when all others have."}, note.Does)
	b.now = b.now.Add(3 * time.Minute)
	assert.Empty(t, b.Sharing(mustClass(t, b.Desk, c.ID)).Notes, "the climb is over")
}

func pairs(kg float64, n int) plates.Plate {
	return plates.Plate{Mass: mass.Of(kg, mass.KG), Unit: mass.KG, Pairs: n, Full: kg >= 10}
}

// twoRacks is a class with one rung at half of the record, on plates of its own.
func twoRacks(t *testing.T, stock []plates.Plate, loads ...float64) (*bench, gym.Class) {
	t.Helper()
	b := newBench(t)
	b.people(len(loads))
	e := b.Book().Equipment
	e.Stock.Plates = stock
	c := gym.Class{
		ID: "class", On: b.Today(), Stage: gym.SetUp, Pieces: []gym.Piece{},
		Climb: gym.ClimbPlan{Name: "one", HeavyLine: 90, Ceiling: 102, Rungs: []gym.Rung{{Until: 120, Percent: 50, Reps: 3, Zone: gym.WorkingZone}}},
	}
	for i, load := range loads {
		c.Lifters = append(c.Lifters, gym.Lifter{
			Athlete: gym.ID(fmt.Sprint(i)), Lift: "back-squat", Reps: 3, Bar: "bar-20", Place: i, Station: i % 2,
			Source: gym.Tested, Base: mass.Of(2*load, mass.KG),
		})
	}
	require.NoError(t, b.file.Write(context.Background(), gym.PutEquipment{Equipment: e}, gym.PutClass{Class: c}))
	b.Desk = b.open()
	return b, mustClass(t, b.Desk, c.ID)
}

// people adds athletes with the IDs 0, 1, 2 and so on.
func (b *bench) people(n int) {
	b.t.Helper()
	for i := range n {
		a := b.NewAthlete(fmt.Sprint("Lifter ", i))
		a.ID = gym.ID(fmt.Sprint(i))
		require.NoError(b.t, b.file.Write(context.Background(), gym.PutAthlete{Athlete: a}))
	}
}

// scarce is a class on a stock that is drawn short.
func (b *bench) scarce(rt *rapid.T) gym.Class {
	e := smallGym(b.t).Equipment
	for i := range e.Stock.Plates {
		e.Stock.Plates[i].Pairs = rapid.IntRange(1, 6).Draw(rt, "pairs")
	}
	e.Stations = nil
	for i := range rapid.IntRange(2, 5).Draw(rt, "stations") {
		e.Stations = append(e.Stations, gym.Station{Name: fmt.Sprint("Rack ", i+1), Bar: "bar-20"})
	}
	plan, err := climb.Generate(20)
	require.NoError(rt, err)
	c := gym.Class{ID: "class", On: 20000, Stage: gym.SetUp, Climb: plan, Pieces: []gym.Piece{}}
	for i := range rapid.IntRange(2, 9).Draw(rt, "lifters") {
		c.Lifters = append(c.Lifters, gym.Lifter{
			Athlete: gym.ID(fmt.Sprint(i)), Lift: "back-squat", Reps: 3, Bar: "bar-20", Place: i, Station: i % len(e.Stations),
			Source: gym.Tested, Base: mass.Of(float64(rapid.IntRange(60, 200).Draw(rt, "base")), mass.KG),
		})
	}
	require.NoError(rt, b.file.Write(context.Background(), gym.PutEquipment{Equipment: e}, gym.PutClass{Class: c}))
	b.Desk = b.open()
	return mustClass(b.t, b.Desk, c.ID)
}

func plateNote(b *bench, c gym.Class) (desk.SharingNote, bool) {
	for _, n := range b.Sharing(c).Notes {
		if !n.Aside && strings.HasPrefix(n.Text, "Rung") {
			return n, true
		}
	}
	return desk.SharingNote{}, false
}

// assertClimbs compares the lifters of a board with those of the board before.
func assertClimbs(t require.TestingT, before, after desk.Board) {
	for _, l := range after.Lifters() {
		was, _ := before.Lifter(l.Athlete)
		last := len(l.Sets) - 1
		for i := 1; i <= last; i++ {
			assert.GreaterOrEqual(t, l.Sets[i].Likely(), l.Sets[i-1].Likely(), "%s, rung %d", l.Athlete, i+1)
		}
		if was.Sets[last].Likely() > l.Base {
			assert.Greater(t, l.Sets[last].Likely(), l.Base, "an attempt stays one")
		}
	}
}

// runsOut counts by brute force the discs that run out: all stations load their
// first lifters at once, then their second; then those who lift last, one alone.
func runsOut(b desk.Board, stock plates.Stock) (short []string) {
	on := map[int][]plates.Disc{}
	look := func(rung int, when string) {
		need := map[plates.Disc]int{}
		for _, discs := range on {
			for _, d := range discs {
				need[d]++
			}
		}
		for _, p := range stock.Plates {
			if need[p.Disc()] > p.Pairs {
				short = append(short, fmt.Sprintf("rung %d, %s: %s", rung+1, when, p.Disc()))
			}
		}
	}
	most := 0
	for _, s := range b.Stations {
		most = max(most, len(s.Lifters))
	}
	for rung := range b.Class.Climb.Rungs {
		for turn := range most {
			for i, s := range b.Stations {
				if turn >= len(s.Lifters) {
					continue
				}
				switch set := s.Lifters[turn].Sets[rung]; {
				case set.Likely() > 0 && set.Last:
					delete(on, i)
				case set.Likely() > 0:
					on[i] = set.Discs
				}
			}
			look(rung, fmt.Sprint("turn ", turn+1))
		}
		for i, s := range b.Stations {
			for _, l := range s.Lifters {
				if l.Sets[rung].Last {
					clear(on)
					on[i] = l.Sets[rung].Discs
					look(rung, "alone")
				}
			}
		}
	}
	return short
}
