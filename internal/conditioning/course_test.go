package conditioning

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
)

// A course goes through every item of every pass and ends when the estimate does.
func TestCourse(t *testing.T) {
	_, find := catalogue(t)
	for name, legs := range map[string]int{"rounds": 10, "rep list": 6, "chipper": 3, "emom": 0, "intervals": 0, "sets": 4} {
		w := wholes[name]
		w.Cap = 0
		course, err := Course(w, find, DefaultPace())
		require.NoError(t, err)
		require.Len(t, course, legs, name)
		for i, leg := range course {
			assert.Equal(t, Leg{i / len(w.Items), i % len(w.Items), leg.Done}, leg)
			assert.True(t, i == 0 || leg.Done > course[i-1].Done)
		}
		if legs > 0 {
			d, err := Estimate(w, find, DefaultPace())
			require.NoError(t, err)
			assert.InDelta(t, d.Usual.Seconds, course[legs-1].Done.Seconds(), 0.5)
		}
	}
	course, err := Course(wholes["amrap"], find, DefaultPace())
	require.NoError(t, err)
	assert.GreaterOrEqual(t, course[len(course)-1].Done, 720*time.Second)
	assert.Less(t, course[len(course)-2].Done, 720*time.Second)
	course, err = Course(gym.Workout{}, find, DefaultPace())
	assert.NoError(t, err)
	assert.Empty(t, course)
	_, err = Course(wholes["rounds"], nil, DefaultPace())
	assert.ErrorIs(t, err, ErrMovement)
}
