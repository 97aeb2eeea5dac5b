package gymroom_test

import (
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"

	"windlass/internal/gym"
	"windlass/ui/uitest"
)

func TestWhatIsComposedByIsKeptAtOnceAndRefusedInPlace(t *testing.T) {
	h := open(t, "Conditioning")
	by := func() gym.Composing { return h.Desk().Settings().ComposeBy() }
	uitest.Fill(t, h.On, "Minutes, at most", "12")
	uitest.Fill(t, h.On, "Days from a movement to the next time", "5")
	uitest.Key(t, h.On, fyne.KeyReturn)
	assert.Equal(t, 12*60, by().Longest)
	assert.Equal(t, 5, by().Apart)
	for field, text := range map[string]string{
		"Minutes, at least": "20", "Minutes, at most": "0", "Days from a movement to the next time": "-1",
	} {
		before := by()
		uitest.Fill(t, h.On, field, text)
		uitest.Key(t, h.On, fyne.KeyReturn)
		uitest.See(t, h.On, "Could not")
		assert.Equal(t, before, by(), field)
	}
	uitest.TapNth(t, h.On, "EMOM", 0)
	assert.Equal(t, []gym.Format{gym.ForTime, gym.AMRAP, gym.EMOM, gym.Chipper}, by().Formats[5])
	uitest.TapNth(t, h.On, "EMOM", 2)
	uitest.TapNth(t, h.On, "Intervals", 2)
	assert.Contains(t, h.Said[len(h.Said)-1], "days of 1 have no format of conditioning", "the last stays")
	assert.Equal(t, []gym.Format{gym.Intervals}, by().Formats[1])
	picture(t, h, "conditioning")
	uitest.Fill(t, h.On, "Days from a movement to the next time", "99")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "Could not")
	h.Press(t, "U")
	assert.Equal(t, gym.UsualComposing(), by())
	uitest.NotSee(t, h.On, "Could not", "99")
}

// A rep count that the table lacks takes any of its formats, until one is ticked.
func TestARepCountWithoutFormatsTakesAny(t *testing.T) {
	h := open(t, "Conditioning")
	assert.NoError(t, h.Desk().ChangeSettings(func(s *gym.Settings) error { s.DayReps = []int{8, 3}; return nil }))
	uitest.Tap(t, h.On, "Implements")
	uitest.Tap(t, h.On, "Conditioning")
	uitest.See(t, h.On, "Days of 8: none chosen, so any of the others' will do")
	uitest.TapNth(t, h.On, "Sets", 0)
	assert.Equal(t, []gym.Format{gym.PlainSets}, h.Desk().Settings().ComposeBy().Formats[8])
	uitest.See(t, h.On, "Days of 8")
}
