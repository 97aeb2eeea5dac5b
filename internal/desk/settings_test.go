package desk_test

import (
	"errors"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/desk"
	"windlass/internal/gym"
)

func TestSettingsAreReadAsTheyAreWritten(t *testing.T) {
	s := gym.DefaultSettings()
	assert.Equal(t, "75 %", desk.ConfidenceText(s))
	assert.Equal(t, "8 m", desk.ViewerText(s))
	assert.Equal(t, "5, 3, 1", desk.DayRepsText(s))
	s.Confidence = 0.55 // whose hundredfold is not whole in binary
	assert.Equal(t, "55 %", desk.ConfidenceText(s))

	for text, want := range map[string]float64{"75": 0.75, " 62,5 %": 0.625, "62.5%": 0.625} {
		got, err := desk.ReadConfidence(text)
		require.NoError(t, err, text)
		assert.InDelta(t, want, got, 1e-12, text)
	}
	for text, want := range map[string]float64{"8": 8, "8 m": 8, "8,5M": 8.5} {
		got, err := desk.ReadViewer(text)
		require.NoError(t, err, text)
		assert.InDelta(t, want, got, 1e-12, text)
	}
	for _, text := range []string{"", "1e1", "0x10", "Inf", "8 9", "8,5,5"} {
		_, err := desk.ReadViewer(text)
		require.ErrorContains(t, err, "it is not a number; write one like 8 m", text)
	}
	reps, err := desk.ReadDayReps("5;3 1")
	require.NoError(t, err)
	assert.Equal(t, []int{5, 3, 1}, reps)
}

func TestSettingsThatAreNoneAreRefused(t *testing.T) {
	b := newBench(t)
	before := b.Settings()
	tests := map[string]func(*gym.Settings) error{
		"it is not a number":       func(s *gym.Settings) (err error) { s.Viewer, err = desk.ReadViewer("NaN"); return err },
		"outside 1 to 50 m":        func(s *gym.Settings) (err error) { s.Viewer, err = desk.ReadViewer("900"); return err },
		"outside 0.5 to 0.95":      func(s *gym.Settings) (err error) { s.Confidence, err = desk.ReadConfidence("75000"); return err },
		`"x" is not a whole`:       func(s *gym.Settings) (err error) { s.DayReps, err = desk.ReadDayReps("5, x"); return err },
		"5 reps come after 3":      func(s *gym.Settings) (err error) { s.DayReps, err = desk.ReadDayReps("3 5"); return err },
		"main days have no rep":    func(s *gym.Settings) (err error) { s.DayReps, err = desk.ReadDayReps(" , "); return err },
		"the gym has no name":      func(s *gym.Settings) error { s.Name = " "; return nil },
		"refused by what asked it": func(s *gym.Settings) error { s.Name = "X"; return errors.New("refused by what asked it") },
	}
	for want, change := range tests {
		assert.ErrorContains(t, b.ChangeSettings(change), want)
		assert.Equal(t, before, b.Settings(), want)
		assert.Empty(t, b.CanUndo(), want)
	}
	require.NoError(t, b.ChangeSettings(func(s *gym.Settings) error { s.DayReps[0] = 8; return nil }))
	assert.Equal(t, []int{8, 3, 1}, b.reopened().Settings().DayReps)
	_, err := b.Undo()
	require.NoError(t, err)
	assert.Equal(t, before, b.Settings(), "also what lies behind a slice")
}

func TestNearestStep(t *testing.T) {
	steps := []float64{0.2, 0.4, 0.6, 0.8, 1}
	for value, want := range map[float64]int{0: 0, 0.31: 1, 0.8: 3, 0.9: 3, 7: 4} {
		assert.Equal(t, want, desk.NearestStep(steps, value), value)
	}
}
