package store

import (
	"bufio"
	"context"
	"fmt"
	"os"
	"os/exec"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
)

// many are results of the small gym's people.
func many(n int) []gym.Change {
	changes := manyResults(n)
	for i := range changes {
		r := changes[i].(gym.AddResult).Result
		r.Athlete = "ann"
		changes[i] = gym.AddResult{Result: r}
	}
	return changes
}

// A long list that is called off, wherever it had come to, has left nothing, and
// the next writer finds the way free.
func TestManyThatAreCalledOffLeaveNothing(t *testing.T) {
	f := newFile(t)
	before := tidy(loadPath(t, f.Path()))
	changes := many(3 * hearEvery)
	for _, at := range []int{0, hearEvery, 2 * hearEvery} {
		ctx, cancel := context.WithCancel(t.Context())
		err := f.WriteMany(ctx, changes, func(n int) {
			if n == at {
				cancel()
			}
		})
		require.ErrorIs(t, err, context.Canceled, "at %d", at)
		require.Equal(t, before, tidy(loadPath(t, f.Path())), "at %d", at)
	}
	require.NoError(t, f.Write(t.Context(), changes[0]))
	require.NoError(t, f.Write(t.Context(), changes[1:]...))
	assert.Len(t, loadPath(t, f.Path()).Results, 1+len(changes))
}

// A long list whose last row cannot be has left nothing either.
func TestManyWithABadRowLeaveNothing(t *testing.T) {
	f := newFile(t)
	before := tidy(loadPath(t, f.Path()))
	err := f.Write(t.Context(), append(many(2*hearEvery), gym.DropTrack{ID: "track"})...)
	require.ErrorIs(t, err, ErrInUse)
	assert.Equal(t, before, tidy(loadPath(t, f.Path())))
}

const manyVar = "WINDLASS_STORE_TEST_MANY" // names the file that a killed process writes a long list to

// writeMany writes a long list and tells how far it is.
func writeMany(path string) error {
	f, err := Open(context.Background(), path)
	if err != nil {
		return err
	}
	return f.WriteMany(context.Background(), many(40*hearEvery), func(n int) { fmt.Println(n) })
}

// A process killed on the way through a long list has left nothing of it.
func TestKilledOnTheWayThroughMany(t *testing.T) {
	path := savedFile(t)
	before := tidy(loadPath(t, path))
	for _, lines := range []int{1, 20, 39} {
		self, err := os.Executable()
		require.NoError(t, err)
		writer := exec.CommandContext(t.Context(), self)
		writer.Env = append(os.Environ(), manyVar+"="+path)
		out, err := writer.StdoutPipe()
		require.NoError(t, err)
		require.NoError(t, writer.Start())
		in := bufio.NewScanner(out)
		for range lines {
			require.True(t, in.Scan())
		}
		require.NoError(t, writer.Process.Kill())
		require.Error(t, writer.Wait(), "it was killed")
		_, err = Verify(t.Context(), path)
		require.NoError(t, err)
		require.Equal(t, before, tidy(loadPath(t, path)), "after %d lines", lines)
	}
}
