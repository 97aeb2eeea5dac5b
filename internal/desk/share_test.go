package desk_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/climb"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
)

// Whatever the class, no two stations count on the same pair of plates while each
// has loads of its own heap; where the stock is short, the board says so.
func TestStationsNeverCountOnTheSamePlates(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		book := smallGym(t)
		for i := range book.Equipment.Stock.Plates {
			book.Equipment.Stock.Plates[i].Pairs = rapid.IntRange(1, 8).Draw(rt, "pairs")
		}
		book.Equipment.Stations = nil
		for i := range rapid.IntRange(1, 5).Draw(rt, "stations") {
			book.Equipment.Stations = append(book.Equipment.Stations, gym.Station{Name: fmt.Sprint("Rack ", i+1), Bar: "bar-20"})
		}
		plan, err := climb.Generate(20)
		require.NoError(rt, err)
		c := gym.Class{Climb: plan}
		for i := range rapid.IntRange(1, 9).Draw(rt, "lifters") {
			c.Lifters = append(c.Lifters, gym.Lifter{
				Athlete: gym.ID(fmt.Sprint(i)), Lift: "back-squat", Reps: 3, Bar: "bar-20", Place: i, Station: i % len(book.Equipment.Stations),
				Base: mass.Of(float64(rapid.IntRange(30, 200).Draw(rt, "base")), mass.KG),
			})
		}
		boards := desk.NewBoards(&book)
		board := boards.Board(c)
		told := boards.Shortages(board, 0)
		assert.Equal(rt, len(runsOut(board, book.Equipment.Stock)) > 0, len(told) > 0, "what runs out is said, and nothing else")
	})
}

func TestShortageSentences(t *testing.T) {
	disc := plates.Disc{Mass: 25 * mass.Kilogram, Unit: mass.KG}
	for want, rungs := range map[string][]int{
		"Rung 6: all stations together want 9 pairs of 25 kg, the gym has 8.":                {6},
		"Rungs 6 and 7: all stations together want 9 pairs of 25 kg, the gym has 8.":         {6, 7},
		"Rungs 6 to 8: all stations together want 9 pairs of 25 kg, the gym has 8.":          {6, 7, 8},
		"Rungs 2, 4 to 7 and 9: all stations together want 9 pairs of 25 kg, the gym has 8.": {2, 4, 5, 6, 7, 9},
		"Rungs 6, 7 and 9: all stations together want 9 pairs of 25 kg, the gym has 8.":      {6, 7, 9},
	} {
		assert.Equal(t, want, desk.Shortage{Rungs: rungs, Disc: disc, Need: 9, Have: 8}.Text())
	}
	assert.True(t, strings.HasPrefix(desk.Plates(nil, mass.KG), "bar"))
	assert.Equal(t, "25 + 45 lb", desk.Plates([]plates.Disc{disc, {Mass: 45 * mass.Pound, Unit: mass.LB}}, mass.KG))
}
