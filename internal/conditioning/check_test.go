package conditioning

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"windlass/internal/gym"
)

// One whole workout of every format.
var wholes = map[string]gym.Workout{
	"amrap":     {Format: gym.AMRAP, Seconds: 720, Items: []gym.Item{do(10, "kettlebell-swing"), do(200, "row-metres")}},
	"rounds":    {Format: gym.ForTime, Rounds: 5, Rest: 60, Cap: 900, Items: []gym.Item{do(400, "run"), do(15, "burpee")}},
	"rep list":  {Format: gym.ForTime, Reps: []int{21, 15, 9}, Items: []gym.Item{do(0, "barbell-thruster"), do(0, "pull-up")}},
	"chipper":   {Format: gym.Chipper, Cap: 1200, Items: []gym.Item{do(50, "wall-ball"), do(40, "sit-up"), do(30, "burpee")}},
	"emom":      {Format: gym.EMOM, Seconds: 720, Items: []gym.Item{do(15, "kettlebell-swing"), do(12, "row-calories"), {}}},
	"intervals": {Format: gym.Intervals, Rounds: 8, Work: 20, Rest: 60, Items: []gym.Item{do(0, "bike-calories")}},
	"sets":      {Format: gym.PlainSets, Rounds: 4, Rest: 90, Items: []gym.Item{do(12, "dumbbell-row")}},
}

func TestCheckTakesWholeWorkouts(t *testing.T) {
	_, find := catalogue(t)
	assert.NoError(t, Check(gym.Workout{}, find))
	for name, w := range wholes {
		assert.NoError(t, Check(w, find), name)
		assert.NoError(t, Check(w, nil), name)
	}
}

func TestCheckNamesTheFault(t *testing.T) {
	_, find := catalogue(t)
	loads := func(full, mid, light float64) map[gym.Standard]gym.TierLoads {
		return map[gym.Standard]gym.TierLoads{gym.StandardM: {Full: kg(full), Mid: kg(mid), Light: kg(light)}}
	}
	for _, row := range []struct {
		of     string
		change func(*gym.Workout)
		want   error
		text   string
	}{
		{"amrap", func(w *gym.Workout) { w.Format = "ladder" }, ErrFormat, `"ladder"`},
		{"amrap", func(w *gym.Workout) { w.Format = "" }, ErrFormat, "unnamed"},
		{"amrap", func(w *gym.Workout) { w.Items = nil }, ErrEmpty, "add one"},
		{"amrap", func(w *gym.Workout) { w.Seconds = 0 }, ErrLength, "no length"},
		{"amrap", func(w *gym.Workout) { w.Seconds = -60 }, ErrLength, "-60"},
		{"amrap", func(w *gym.Workout) { w.Seconds = 100000 }, ErrLength, "100000"},
		{"amrap", func(w *gym.Workout) { w.Rounds = 3 }, ErrExtra, "number of rounds"},
		{"amrap", func(w *gym.Workout) { w.Reps = []int{3, 2} }, ErrExtra, "rep list"},
		{"amrap", func(w *gym.Workout) { w.Cap = 60 }, ErrExtra, "cap"},
		{"amrap", func(w *gym.Workout) { w.Items[0].Amount = 0 }, ErrAmount, "how many"},
		{"amrap", func(w *gym.Workout) { w.Items[0].Amount = -5 }, ErrAmount, `"Kettlebell swing": -5`},
		{"amrap", func(w *gym.Workout) { w.Items[0].Amount = 20000 }, ErrAmount, "20000"},
		{"amrap", func(w *gym.Workout) { w.Items[1].Movement = "" }, ErrMovement, "movement 2"},
		{"amrap", func(w *gym.Workout) { w.Items[1].Movement = "levitation" }, ErrMovement, `"levitation"`},
		{"amrap", func(w *gym.Workout) { w.Items = make([]gym.Item, 41) }, ErrAmount, "41"},
		{"amrap", func(w *gym.Workout) { w.Items[0].Loads = loads(16, 20, 12) }, ErrLoads, "must fall"},
		{"amrap", func(w *gym.Workout) { w.Items[0].Loads = map[gym.Standard]gym.TierLoads{"X": {}} }, ErrLoads, `"X"`},
		{"rounds", func(w *gym.Workout) { w.Rounds = 0 }, ErrRounds, "neither"},
		{"rounds", func(w *gym.Workout) { w.Rounds = 101 }, ErrRounds, "101"},
		{"rounds", func(w *gym.Workout) { w.Reps = []int{3, 2} }, ErrExtra, "both"},
		{"rounds", func(w *gym.Workout) { w.Cap = -1 }, ErrCap, "-1"},
		{"rounds", func(w *gym.Workout) { w.Rest = -1 }, ErrRest, "-1"},
		{"rounds", func(w *gym.Workout) { w.Work = 20 }, ErrExtra, "work time"},
		{"rep list", func(w *gym.Workout) { w.Reps = []int{21, 0, 9} }, ErrReps, "number 2"},
		{"rep list", func(w *gym.Workout) { w.Reps = []int{21} }, ErrReps, "no list"},
		{"rep list", func(w *gym.Workout) { w.Reps = make([]int, 101) }, ErrReps, "101"},
		{"rep list", func(w *gym.Workout) { w.Items[0].Amount = 3 }, ErrAmount, "already"},
		{"chipper", func(w *gym.Workout) { w.Items = w.Items[:1] }, ErrEmpty, "second"},
		{"chipper", func(w *gym.Workout) { w.Rounds = 1 }, ErrExtra, "rounds"},
		{"emom", func(w *gym.Workout) { w.Seconds = 90 }, ErrLength, "1:30"},
		{"emom", func(w *gym.Workout) { w.Items[2].Amount = 3 }, ErrMovement, "movement 3"},
		{"intervals", func(w *gym.Workout) { w.Work = 0 }, ErrWork, "no work time"},
		{"intervals", func(w *gym.Workout) { w.Rounds = 0 }, ErrRounds, "no number"},
		{"intervals", func(w *gym.Workout) { w.Seconds = 60 }, ErrExtra, "length"},
		{"sets", func(w *gym.Workout) { w.Rounds = 0 }, ErrRounds, "no number"},
	} {
		w := wholes[row.of]
		w.Items = append([]gym.Item(nil), w.Items...)
		row.change(&w)
		err := Check(w, find)
		assert.ErrorIs(t, err, row.want)
		assert.ErrorContains(t, err, row.text)
	}
}
