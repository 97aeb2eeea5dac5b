package desk_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// What is written of the masses reads as masses again, as many, and is then
// written the same.
func FuzzReadMasses(f *testing.F) {
	for _, seed := range []string{"8, 12; 16", "45 lb,20", "", ",;\n", "8,5,3", "1e9", "0.001", "53lb\n24.04 kg", "-1"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		for _, unit := range []mass.Unit{mass.KG, mass.LB} {
			masses, err := desk.ReadMasses(text, unit)
			if err != nil {
				continue
			}
			written := desk.MassesText(masses, unit)
			again, err := desk.ReadMasses(written, unit)
			require.NoError(t, err, written)
			require.Len(t, again, len(masses))
			require.Equal(t, written, desk.MassesText(again, unit))
		}
	})
}

// Rep counts and percentages that are read are written as they read.
func FuzzReadSettings(f *testing.F) {
	for _, seed := range []string{"5, 3, 1", "75 %", "8,5 m", "1;2 3", "Inf", "0x1p4", "-0", "99999999999999999999", "1_0"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		if reps, err := desk.ReadDayReps(text); err == nil {
			again, err := desk.ReadDayReps(desk.DayRepsText(gym.Settings{DayReps: reps}))
			require.NoError(t, err)
			require.Equal(t, reps, again)
		}
		if metres, err := desk.ReadViewer(text); err == nil {
			again, err := desk.ReadViewer(desk.ViewerText(gym.Settings{Viewer: metres}))
			require.NoError(t, err)
			require.InDelta(t, metres, again, 0.05+1e-9*max(metres, -metres))
		}
	})
}
