package main

import (
	"bytes"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
)

// Whatever is typed, the program ends with one of its three statuses, complains in
// one line or not at all, and never panics.
func FuzzArguments(f *testing.F) {
	for _, line := range []string{
		"", "-h", "climb -h", "climb -record 140kg -reps 3 -calls climb,settle", "climb -record 225lb -unit kg -bar 45lb",
		"plates -target 142,5kg -pairs 25kg*4,1.25kg*1 -round down", "sequence -targets 60kg,100kg", "repmax -from 5x140kg -to 1,2,3 -curve wathan",
		"repmax -from 5×140 -to ,", "import roster -", "record -- -h", "-json hold -all -loads 16kg,", "arrange -track x -days mon,,tue", "-db", "climb -record 1e9kg",
		"plates -target 100kg -pairs 0.001kg*200", "verify -", "restore - -", "\x00", "-json -json repmax -from 1x1",
	} {
		f.Add(line)
	}
	f.Fuzz(func(t *testing.T, line string) {
		folder := t.TempDir()
		t.Chdir(folder)
		var out, errs bytes.Buffer
		app := App{
			In: strings.NewReader("Name,Squat\n"), Out: &out, Err: &errs, Now: func() time.Time { return now }, Random: zeros{},
			DefaultDB: func() (string, error) { return filepath.Join(folder, "none", "gym.windlass"), nil },
		}
		switch status := app.Run(t.Context(), strings.Fields(line)); status {
		case done:
			assert.Empty(t, errs.String(), line)
			assert.NotEmpty(t, out.String(), line)
		case refused, misused:
			assert.Equal(t, 1, strings.Count(errs.String(), "\n"), "one line: %q", errs.String())
		default:
			t.Fatalf("status %d for %q", status, line)
		}
	})
}
