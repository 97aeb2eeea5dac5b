package wall

import (
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A workout of one track, with two movements in two lines each.
var ofATrack = Panel{
	Tracks: "Strongman", Head: "AMRAP 12 min", Loads: true,
	Items: []Item{
		{Text: "20 m Sled push", Loads: [3]string{"100 / 70", "80 / 55", "60 / 40"}},
		{Text: "10 Sandbag bear-hug squat", Loads: [3]string{"50 / 35", "40 / 25", "30 / 20"}},
		{Text: "10 Sit-up"},
	},
}

// Three movements stand on one page, also of a window on a screen that is too small for
// the hall: the tracks share their line with the names of the tiers.
func TestThreeMovementsStandTogether(t *testing.T) {
	for _, high := range []float64{0, inch65} {
		s := Screen{Height: high, Viewer: 8}
		pages, _ := fitWork(Work{Panels: []Panel{ofATrack}, Unit: "kg"}, s, fyne.NewSize(960, 540))
		require.Len(t, pages, 1, "%g mm", high)
		assert.True(t, pages[0].fit.abreast, "%g mm", high)
	}
}

// Letters are never under the least angle where larger ones have room, and at most one
// minute of arc smaller than the largest that have room on a smaller screen.
func TestSmallestLettersTried(t *testing.T) {
	for _, row := range [][2]float64{{45, LeastArc}, {16, LeastArc}, {15, 14}, {9, 8}, {3, 3}} {
		assert.InDelta(t, row[1], lastTried(row[0]), 0, "%g", row[0])
	}
}

// The small line speaks of loads where there are some, and says of a workout that it
// goes on.
func TestFootOfAWorkout(t *testing.T) {
	without := Panel{Tracks: "Weightlifting", Head: "AMRAP 10 min", Items: []Item{{Text: "6 Pull-up"}, {Text: "200 m Row"}}}
	long := ofATrack
	for range 12 {
		long.Items = append(long.Items, Item{Text: "10 Sit-up"})
	}
	w := Work{Panels: []Panel{without, long}, Unit: "kg"}
	pages, _ := fitWork(w, Screen{Viewer: 8}, fyne.NewSize(960, 540))
	require.Greater(t, len(pages), 2)
	last := len(pages) - 1
	foot := func(turn int) string { return w.foot(pages[turn], turn, len(pages), "") }
	assert.NotContains(t, foot(0), "Loads")
	assert.NotContains(t, foot(0), "more of this workout")
	assert.Contains(t, foot(1), "Loads in kg")
	assert.Contains(t, foot(1), "more of this workout")
	assert.NotContains(t, foot(last), "Loads", "only sit-ups are left")
	assert.NotContains(t, foot(last), "more of this workout")
	assert.Equal(t, "The screen is gone", w.foot(pages[1], 1, len(pages), "The screen is gone"))
}
