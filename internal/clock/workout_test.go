package clock

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/conditioning"
	"windlass/internal/gym"
)

var nine = time.Date(2026, 3, 2, 9, 0, 0, 0, time.UTC)

// after is an instant so many seconds behind the start.
func after(s float64) time.Time { return nine.Add(time.Duration(s * float64(time.Second))) }

func workoutOf(t require.TestingT, line string) gym.Workout {
	w, err := conditioning.Parse(line, nil)
	require.NoError(t, err)
	return w
}

func TestWorkout(t *testing.T) {
	const (
		amrap     = "amrap 12:00: 10 swing, 15 burpee"
		capped    = "for time 21-15-9 cap 10:00: thruster, pull-up"
		open      = "for time 5 rounds rest 1:00: 400 run"
		chipper   = "chipper cap 20:00: 50 wall-ball, 40 sit-up"
		emom      = "emom 6:00: 15 swing, 12 row, rest"
		intervals = "intervals 3 x 0:20 rest 0:40: 10 bike, 8 burpee"
		straight  = "intervals 2 x 1:00: row"
		sets      = "sets 3 rest 1:00: 10 row"
	)
	for _, row := range []struct {
		line          string
		at            float64 // seconds since the clock started
		phase         Phase
		face          string
		round, rounds int
		item, next    int
		warning       int
	}{
		{amrap, 0, CountedIn, "00:10", 0, 0, None, None, 0},
		{amrap, 7.5, CountedIn, "00:03", 0, 0, None, None, 3},
		{amrap, 10, Working, "12:00", 0, 0, None, None, 0},
		{amrap, 10.4, Working, "12:00", 0, 0, None, None, 0},
		{amrap, 70, Working, "11:00", 0, 0, None, None, 0},
		{amrap, 729.5, Working, "00:01", 0, 0, None, None, 1},
		{amrap, 730, Over, "00:00", 0, 0, None, None, 0},
		{amrap, 9999, Over, "00:00", 0, 0, None, None, 0},
		{capped, 10, Working, "00:00", 0, 0, None, None, 0},
		{capped, 71.9, Working, "01:01", 0, 0, None, None, 0},
		{capped, 608, Working, "09:58", 0, 0, None, None, 2},
		{capped, 610, Over, "10:00", 0, 0, None, None, 0},
		{open, 5000, Working, "83:10", 0, 0, None, None, 0},
		{chipper, 1210, Over, "20:00", 0, 0, None, None, 0},
		{emom, 9, CountedIn, "00:01", 0, 6, None, 0, 1},
		{emom, 10, Working, "01:00", 1, 6, 0, 1, 0},
		{emom, 69, Working, "00:01", 1, 6, 0, 1, 1},
		{emom, 70, Working, "01:00", 2, 6, 1, 2, 0}, // the minute after is rest, not the swing
		{emom, 130, Resting, "01:00", 3, 6, 2, 0, 0},
		{emom, 190, Working, "01:00", 4, 6, 0, 1, 0},
		{emom, 310, Resting, "01:00", 6, 6, 2, None, 0},
		{emom, 370, Over, "00:00", 6, 6, None, None, 0},
		{intervals, 10, Working, "00:20", 1, 3, 0, 1, 0},
		{intervals, 30, Resting, "00:40", 1, 3, None, 1, 0},
		{intervals, 70, Working, "00:20", 2, 3, 1, 0, 0},
		{intervals, 130, Working, "00:20", 3, 3, 0, None, 0},
		{intervals, 150, Over, "00:00", 3, 3, None, None, 0},
		{straight, 69, Working, "00:01", 1, 2, 0, 0, 1},
		{straight, 70, Working, "01:00", 2, 2, 0, None, 0},
		{sets, 100, Working, "01:30", 0, 0, None, None, 0},
	} {
		w := workoutOf(t, row.line)
		m := Workout(w, gym.Run{}.Start(nine), after(row.at))
		assert.Equal(t, row.phase, m.Phase, "%s at %g", row.line, row.at)
		assert.Equal(t, row.face, m.Face(), "%s at %g", row.line, row.at)
		assert.Equal(t, []int{row.round, row.rounds, row.item, row.next, row.warning},
			[]int{m.Round, m.Rounds, m.Item, m.Next, m.Warning}, "%s at %g", row.line, row.at)
		assert.Equal(t, row.phase != Over, m.Running)
	}
}

func TestWorkoutBeforeAndHeld(t *testing.T) {
	w := workoutOf(t, "amrap 12:00: 10 swing")
	m := Workout(w, gym.Run{}, nine)
	assert.Equal(t, Ready, m.Phase)
	assert.Equal(t, "00:10", m.Face())
	assert.Equal(t, 12*time.Minute, m.Left)
	assert.False(t, m.Running)
	held := gym.Run{}.Start(nine).Hold(after(70))
	m = Workout(w, held, after(500))
	assert.Equal(t, Working, m.Phase)
	assert.Equal(t, "11:00", m.Face())
	assert.False(t, m.Running)
	assert.Empty(t, WorkoutCues(w, held, nine, after(800)))
	assert.Equal(t, Over, Workout(gym.Workout{}, gym.Run{}.Start(nine), nine).Phase)
	assert.Empty(t, WorkoutCues(gym.Workout{}, gym.Run{}.Start(nine), nine, after(800)))
	// An instant before the start, as after the system clock was set back.
	assert.Equal(t, "00:10", Workout(w, gym.Run{}.Start(nine), after(-30)).Face())
}

func TestWorkoutOpen(t *testing.T) {
	m := Workout(workoutOf(t, "for time 5 rounds: 10 burpee"), gym.Run{}.Start(nine), after(70))
	assert.True(t, m.Open && m.Up)
	assert.Zero(t, m.Left)
	assert.Zero(t, m.LeftIn)
	assert.Equal(t, time.Minute, m.InPart)
}

func TestWorkoutCues(t *testing.T) {
	w := workoutOf(t, "intervals 2 x 0:20 rest 0:40: row")
	run := gym.Run{}.Start(nine)
	var got []string
	for _, c := range WorkoutCues(w, run, after(-1), after(1000)) {
		got = append(got, c.At.Format("05 ")+string(c.Kind))
	}
	assert.Equal(t, []string{
		"00 start", "07 tick", "08 tick", "09 tick", "10 change",
		"27 tick", "28 tick", "29 tick", "30 change",
		"07 tick", "08 tick", "09 tick", "10 change",
		"27 tick", "28 tick", "29 tick", "30 finish",
	}, got)
	open := workoutOf(t, "for time 1 rounds: 10 burpee")
	assert.Len(t, WorkoutCues(open, run, after(-1), after(100000)), 5) // start, three ticks, change
}

// Whatever the workout: parts tile the clock, what is elapsed and left add up, a
// tick a second misses no cue, and a held clock starts where it was.
func TestWorkoutLaws(t *testing.T) {
	lines := []string{
		"amrap 2:00: 10 swing", "for time 3 rounds cap 3:00: 10 burpee", "chipper cap 2:00: 5 a, 6 b", "emom 5:00: 5 a, rest",
		"intervals 4 x 0:10 rest 0:05: a, b", "intervals 30 x 0:02 rest 0:01: a",
	}
	rapid.Check(t, func(t *rapid.T) {
		w := workoutOf(t, rapid.SampledFrom(lines).Draw(t, "line"))
		run := gym.Run{}.Start(nine)
		at := rapid.Float64Range(0, 400).Draw(t, "at")
		m := Workout(w, run, after(at))
		whole := Workout(w, run, nine).Left
		assert.Equal(t, whole, m.Elapsed+m.Left)
		if m.Phase != Over {
			assert.Positive(t, m.LeftIn)
			assert.Equal(t, m, Workout(w, run.Hold(after(at)).Start(after(at+50)), after(at+50)))
		}
		var ticked []Cue
		for s := -1.0; s < 400; s++ {
			ticked = append(ticked, WorkoutCues(w, run, after(s), after(s+1))...)
		}
		assert.Equal(t, WorkoutCues(w, run, after(-1), after(400)), ticked)
	})
}

func TestPosition(t *testing.T) {
	find := func(string) (gym.Movement, bool) {
		return gym.Movement{Measure: gym.ByReps, Pattern: gym.Engine, Seconds: 2}, true
	}
	w := workoutOf(t, "chipper: 30 a, 20 b, 10 c") // 60, 40 and 20 s, with no change-overs
	course, err := conditioning.Course(w, find, conditioning.Pace{Factor: 1})
	require.NoError(t, err)
	run := gym.Run{}.Start(nine)
	for at, want := range map[float64]int{5: None, 10: 0, 69: 0, 70: 1, 109: 1, 110: 2, 129: 2, 130: None} {
		assert.Equal(t, want, Position(course, Workout(w, run, after(at))), "at %g", at)
	}
	assert.Equal(t, None, Position(nil, Workout(w, run, after(20))))
}

func BenchmarkWorkout(b *testing.B) {
	w := workoutOf(b, "emom 40:00: 5 a, 6 b, rest")
	run := gym.Run{}.Start(nine)
	for b.Loop() {
		Workout(w, run, after(1000))
	}
}
