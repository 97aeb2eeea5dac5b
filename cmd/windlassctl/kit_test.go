package main

import (
	"bytes"
	"context"
	"crypto/sha256"
	"encoding/json"
	"errors"
	"fmt"
	"maps"
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/store"
)

// now is a Thursday on which the demo gym's tracks lift.
var now = time.Date(2026, time.November, 26, 10, 0, 0, 0, time.UTC)

// answer is what a run of the program gave.
type answer struct {
	status   int
	out, err string
}

// ask runs the program in this process, with a text on the standard input.
func ask(t *testing.T, in string, args ...string) answer {
	t.Helper()
	var out, errs bytes.Buffer
	app := App{
		In: strings.NewReader(in), Out: &out, Err: &errs,
		Now: func() time.Time { return now }, Random: rand.NewChaCha8([32]byte{1}),
		DefaultDB: func() (string, error) { return "", errors.New("a test names its file with -db") },
	}
	status := app.Run(t.Context(), args)
	return answer{status, out.String(), errs.String()}
}

// do runs what must succeed, and says nothing on the side.
func do(t *testing.T, args ...string) string {
	t.Helper()
	a := ask(t, "", args...)
	require.Equal(t, done, a.status, "windlassctl %s: %s", strings.Join(args, " "), a.err)
	require.Empty(t, a.err)
	return a.out
}

// read runs what must succeed and reads its JSON, which is one document.
func read[T any](t *testing.T, args ...string) T {
	t.Helper()
	d := json.NewDecoder(strings.NewReader(do(t, append([]string{"-json"}, args...)...)))
	d.DisallowUnknownFields()
	var document T
	require.NoError(t, d.Decode(&document))
	assert.False(t, d.More(), "one document only")
	return document
}

// demoFile makes the demo gym once for all tests.
var demoFile = sync.OnceValues(func() ([]byte, error) {
	folder, err := os.MkdirTemp("", "windlassctl-*")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(folder)
	path := filepath.Join(folder, "gym.windlass")
	app := App{Out: &bytes.Buffer{}, Err: &bytes.Buffer{}, Now: func() time.Time { return now }}
	if status := app.Run(context.Background(), []string{"-db", path, "demo", "-seed", "1"}); status != done {
		return nil, fmt.Errorf("demo gym: status %d: %s", status, app.Err)
	}
	// Once opened by a writer, it is in the mode in which it is written: what a
	// refused command leaves can be compared byte by byte.
	opened, err := store.Open(context.Background(), path)
	if err != nil {
		return nil, err
	}
	if err := opened.Close(); err != nil {
		return nil, err
	}
	return os.ReadFile(path)
})

// gymFile is a demo gym of the test's own.
func gymFile(t *testing.T) string {
	t.Helper()
	whole, err := demoFile()
	require.NoError(t, err)
	path := filepath.Join(t.TempDir(), "gym.windlass")
	require.NoError(t, os.WriteFile(path, whole, 0o600))
	return path
}

// file writes a file of the test's own.
func file(t *testing.T, name, text string) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), name)
	require.NoError(t, os.WriteFile(path, []byte(text), 0o600))
	return path
}

// state is what a folder holds, to see that nothing has changed.
func state(t *testing.T, folder string) map[string][32]byte {
	t.Helper()
	held := map[string][32]byte{}
	entries, err := os.ReadDir(folder)
	require.NoError(t, err)
	for _, e := range entries {
		// Marks of open files, not of the gym.
		if strings.HasSuffix(e.Name(), ".desk") || strings.HasSuffix(e.Name(), "-wal") || strings.HasSuffix(e.Name(), "-shm") {
			continue
		}
		text, err := os.ReadFile(filepath.Join(folder, e.Name()))
		require.NoError(t, err)
		held[e.Name()] = sha256.Sum256(text)
	}
	return held
}

// fields lists the paths of a JSON document, as "lifts[].load".
func fields(t *testing.T, text string) []string {
	t.Helper()
	var document any
	require.NoError(t, json.Unmarshal([]byte(text), &document))
	found := map[string]bool{}
	walk(document, "", found)
	return slices.Sorted(maps.Keys(found))
}

func walk(v any, path string, found map[string]bool) {
	switch v := v.(type) {
	case map[string]any:
		for key, inner := range v {
			walk(inner, strings.TrimPrefix(path+"."+key, "."), found)
		}
	case []any:
		found[path+"[]"] = true
		for _, inner := range v {
			walk(inner, path+"[]", found)
		}
	default:
		found[path] = true
	}
}
