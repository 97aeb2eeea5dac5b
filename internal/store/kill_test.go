package store

import (
	"bufio"
	"context"
	"fmt"
	"os"
	"os/exec"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/day"
	"windlass/internal/gym"
)

const (
	victimVar = "WINDLASS_STORE_TEST_VICTIM" // names the file that the killed process writes
	perBatch  = 7
)

// processes are what the tests' program does as another process, by the variable
// that names its file.
var processes = map[string]func(path string) error{victimVar: writeForEver, manyVar: writeMany}

func TestMain(m *testing.M) {
	for name, work := range processes {
		if path := os.Getenv(name); path != "" {
			if err := work(path); err != nil {
				fmt.Fprintln(os.Stderr, err)
				os.Exit(1)
			}
			return
		}
	}
	os.Exit(m.Run())
}

// writeForEver writes batches of results, and tells of each that was kept.
func writeForEver(path string) error {
	ctx := context.Background()
	f, err := Open(ctx, path)
	if err != nil {
		return err
	}
	b, err := f.Load(ctx)
	if err != nil {
		return err
	}
	for batch := len(b.Results) / perBatch; ; batch++ {
		var changes []gym.Change
		for i := range perBatch {
			id := gym.ID(fmt.Sprintf("batch-%d-%d", batch, i))
			changes = append(changes, gym.AddResult{Result: result(id, "ann", 100, day.Of(2026, 3, 9))})
		}
		if err := f.Write(ctx, changes...); err != nil {
			return err
		}
		fmt.Println(batch)
	}
}

// A process killed at any moment has kept every batch that it told of, and no
// part of another.
func TestKilledWriterLosesNothing(t *testing.T) {
	path := savedFile(t)
	kept := 0
	for round := range 4 {
		kept = max(kept, runAndKill(t, path, 3+5*round))
		s, err := Verify(t.Context(), path)
		require.NoError(t, err)
		batches := map[string]int{}
		for _, r := range loadPath(t, path).Results {
			batch, found := strings.CutPrefix(string(r.ID), "batch-")
			if found {
				batch, _, _ = strings.Cut(batch, "-")
				batches[batch]++
			}
		}
		for batch, n := range batches {
			assert.Equal(t, perBatch, n, "batch %s", batch)
		}
		for batch := range kept + 1 {
			assert.Contains(t, batches, fmt.Sprint(batch), "it was told of")
		}
		assert.Equal(t, 1+perBatch*len(batches), s.Results)
	}
}

// runAndKill returns the last batch that the writer told of before it was killed.
func runAndKill(t *testing.T, path string, lines int) int {
	t.Helper()
	self, err := os.Executable()
	require.NoError(t, err)
	writer := exec.CommandContext(t.Context(), self)
	writer.Env = append(os.Environ(), victimVar+"="+path)
	writer.Stderr = os.Stderr
	out, err := writer.StdoutPipe()
	require.NoError(t, err)
	require.NoError(t, writer.Start())
	last := -1
	in := bufio.NewScanner(out)
	for n := 0; in.Scan(); n++ {
		if n == lines {
			require.NoError(t, writer.Process.Kill())
		}
		_, err := fmt.Sscan(in.Text(), &last)
		require.NoError(t, err)
	}
	require.Error(t, writer.Wait(), "it was killed")
	return last
}
