package floor_test

import (
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
	"windlass/ui/look"
)

// TestLook draws every step of a class of thirty, for a person to look at:
//
//	go test ./ui/floor -run Look -look /tmp/floor
func TestLook(t *testing.T) {
	if *folder == "" {
		t.Skip("for looking at: run with -look DIR")
	}
	for name, p := range map[string]look.Palette{"dark": look.Dark(), "light": look.Light()} {
		t.Run(name, func(t *testing.T) {
			h := newHall(t, p)
			h.look("none-" + name)
			c := h.thirty()
			ines := h.Book().Athletes[4]
			require.NoError(t, h.KeepRestriction(gym.Restriction{ID: h.NewID(), Athlete: ines.ID, Text: "sore left knee: no deep squats", From: c.On}))
			h.room.Show(c.ID)
			h.look("setup-" + name)
			if l, _ := h.Class(c.ID); l.Lifters[4].Start == 0 {
				require.NoError(t, h.StartWith(c.ID, ines.ID, gym.Effort{Load: 40e12}))
			}
			h.press(fyne.KeyF5)
			h.look("live-start-" + name)
			h.wait(12*time.Minute + 30*time.Second)
			for range 9 {
				h.press(fyne.KeyC)
			}
			h.press(fyne.KeyS, fyne.KeyM)
			h.wait(3 * time.Minute)
			h.look("live-" + name)
			h.wait(8 * time.Minute)
			h.press(fyne.KeyR)
			h.press(fyne.KeyReturn, fyne.KeyReturn, fyne.KeyM)
			h.look("results-" + name)
			h.press(fyne.KeyF4)
			h.press(fyne.KeySpace)
			h.wait(95 * time.Second)
			h.press(fyne.KeyH, fyne.KeyS, fyne.KeyH, fyne.KeyX)
			h.look("workout-" + name)
			h.press(fyne.KeyF4)
			h.look("summary-" + name)
			t.Log(h.said, h.failed)
		})
	}
}
