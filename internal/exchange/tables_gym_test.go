package exchange

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/data"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// The exported table of implements is one of a catalogue: read as such, it says
// the same masses and counts.
func TestImplementsComeBackFromTheirTable(t *testing.T) {
	own, err := gym.ReadCatalogue(data.Files())
	require.NoError(t, err)
	b := &gym.Book{Equipment: gym.Equipment{Implements: own.Implements}}
	for i := range b.Equipment.Implements {
		switch own := &b.Equipment.Implements[i]; own.Kind {
		case "kettlebell":
			own.Each = map[mass.Mass]int{8 * mass.Kilogram: 2, 16 * mass.Kilogram: 12}
		case "sled", "box":
			own.Total = 3
		}
	}
	dir := t.TempDir()
	require.NoError(t, os.CopyFS(dir, data.Files()))
	file, err := os.Create(filepath.Join(dir, "implements.csv"))
	require.NoError(t, err)
	require.NoError(t, WriteCSV(t.Context(), file, implementTable(b)))
	require.NoError(t, file.Close())
	again, err := gym.ReadCatalogue(os.DirFS(dir))
	require.NoError(t, err)
	assert.Equal(t, b.Equipment.Implements, again.Implements)
}

func TestSettingsSayWhatTheComposerGoesBy(t *testing.T) {
	rows := settingsTable(&gym.Book{Settings: gym.DefaultSettings()}).Rows
	assert.Contains(t, rows, []any{"Conditioning, shortest in minutes", 8.0})
	assert.Contains(t, rows, []any{"Conditioning on days of 1", "intervals; emom"})
	assert.Equal(t, []any{"Conditioning on days of 1", "intervals; emom"}, rows[len(rows)-1])
}
