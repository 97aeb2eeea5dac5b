package handouts_test

import (
	"flag"
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/ui/handouts"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

var pictures = flag.String("pictures", "", "keep pictures of the room in a folder")

func TestTablesAreWrittenOnceAndNeverOver(t *testing.T) {
	d, _ := uitest.DemoDesk(t)
	h := uitest.Stage(t, d, look.Light(), fyne.NewSize(1240, 860), handouts.New)
	if *pictures != "" {
		uitest.Snapshot(t, h.On, filepath.Join(*pictures, "handouts.png"))
	}
	folder := filepath.Join(t.TempDir(), "out")
	uitest.Fill(t, h.On, "Folder to write into", folder)
	uitest.Tap(t, h.On, "Write CSV tables")
	files, err := filepath.Glob(filepath.Join(folder, "*.csv"))
	require.NoError(t, err)
	assert.Greater(t, len(files), 10)
	assert.Equal(t, []string{"The tables are written."}, h.Said)
	uitest.Tap(t, h.On, "Write one XLSX file")
	assert.FileExists(t, filepath.Join(folder, "windlass.xlsx"))
	uitest.Tap(t, h.On, "Write CSV tables")
	uitest.See(t, h.On, "already")
	assert.Len(t, h.Said, 2, "nothing more was written")
}
