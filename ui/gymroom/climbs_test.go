package gymroom_test

import (
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
	"windlass/ui/uitest"
)

func named(t *testing.T, h *uitest.Host, name string) gym.ClimbPlan {
	t.Helper()
	plan, ok := h.Desk().ClimbNamed(name)
	require.True(t, ok, "no climb %q", name)
	return plan
}

func TestAClimbIsWrittenJudgedAndSaved(t *testing.T) {
	h := open(t, "Climbs")
	picture(t, h, "climbs")
	h.Press(t, "Ctrl+N")
	uitest.Fill(t, h.On, "Minutes", "2")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "Write 10 to 60")
	uitest.Fill(t, h.On, "Minutes", "18")
	uitest.Key(t, h.On, fyne.KeyReturn)
	plan := named(t, h, "18 minutes")

	uitest.Fill(t, h.On, "Rung 2 from", "1:30")
	uitest.Fill(t, h.On, "Rung 3 percent", "a lot")
	uitest.See(t, h.On, `In rung 3 the percentage "a lot" is not a number. Write one like 62.5.`)
	picture(t, h, "climbs-faults")
	uitest.Fill(t, h.On, "Rung 3 percent", "61")
	uitest.See(t, h.On, "Rung 2 begins at 01:30 and leaves a gap of 30 s after 01:00. Begin it at 01:00.")
	h.Press(t, "Ctrl+S")
	assert.Equal(t, plan, named(t, h, "18 minutes"), "what cannot be run is not saved")
	uitest.Fill(t, h.On, "Rung 2 from", "1:00")
	uitest.See(t, h.On, "This climb can be run. It is not saved yet")
	h.Press(t, "Ctrl+R")
	uitest.Fill(t, h.On, "Name", "Eighteen")
	h.Press(t, "Ctrl+S")
	saved := named(t, h, "Eighteen")
	assert.Len(t, saved.Rungs, len(plan.Rungs)+1)
	assert.Equal(t, saved.Rungs[1], gym.Rung{At: 60, Until: 120, Percent: plan.Rungs[1].Percent, Reps: 5, Zone: gym.LightZone})
	assert.InDelta(t, 61, saved.Rungs[3].Percent, 0, "the rung that was the third before one came in")

	uitest.Fill(t, h.On, "Name", "Something else")
	uitest.Tap(t, h.On, "Discard")
	uitest.See(t, h.On, "Eighteen", "Classes that are open keep")
}

func TestTheKeyboardBringsEveryRungIntoSight(t *testing.T) {
	h := open(t, "Climbs")
	h.Press(t, "C")
	uitest.Key(t, h.On, fyne.KeyEnd) // 25 minutes, 12 rungs
	assert.NotContains(t, uitest.Read(h.On), "11")
	uitest.Fill(t, h.On, "Rung 1 percent", "36")
	for range 11 {
		uitest.Key(t, h.On, fyne.KeyDown)
	}
	assert.Contains(t, uitest.Read(h.On), "11")
	uitest.Type(t, h.On, "x")
	uitest.See(t, h.On, "In rung 12 the percentage")
}

func TestAClimbIsCopiedExportedImportedAndRemoved(t *testing.T) {
	h := open(t, "Climbs")
	before := len(h.Desk().Climbs())
	h.Press(t, "C")
	uitest.Key(t, h.On, fyne.KeyHome)
	h.Press(t, "Ctrl+D")
	copied := named(t, h, "12 minutes 2")
	path := filepath.Join(t.TempDir(), "Way up.csv")
	h.Press(t, "Ctrl+E")
	uitest.Fill(t, h.On, "File to write", path)
	uitest.Key(t, h.On, fyne.KeyReturn)
	require.FileExists(t, path)
	h.Press(t, "Ctrl+I")
	uitest.Fill(t, h.On, "File to read", path+".not")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "There is no file or folder of that name.")
	uitest.Fill(t, h.On, "File to read", path)
	uitest.Key(t, h.On, fyne.KeyReturn)
	assert.Equal(t, copied.Rungs, named(t, h, "Way up").Rungs)
	uitest.Key(t, h.On, fyne.KeyDelete)
	assert.Len(t, h.Desk().Climbs(), before+1)

	h.Press(t, "C")
	for range h.Desk().Climbs() { // one of them is run by the demo's cycle
		uitest.Key(t, h.On, fyne.KeyDelete, fyne.KeyDown)
	}
	assert.Contains(t, h.Said[len(h.Said)-1]+h.Said[len(h.Said)-2], "it is run in")
}
