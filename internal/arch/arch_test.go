package arch

import (
	"os"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestHouseKeepsItsPlan(t *testing.T) {
	units, err := survey(os.DirFS("../.."))
	require.NoError(t, err)
	require.Contains(t, units, "internal/mass", "the tree was found")
	assert.Greater(t, len(units), 15)
	for _, breach := range judge(units) {
		t.Error(breach)
	}
}

// The table may look forward to packages that are still to come, but whom it names
// it must know.
func TestTableNamesItsOwn(t *testing.T) {
	for folder, allowed := range ours {
		for _, a := range allowed {
			if a != everything {
				assert.Contains(t, ours, a, folder)
				assert.NotEqual(t, folder, a)
			}
		}
	}
}

// Nothing may lead back to where it came from.
func TestTableHasNoCircle(t *testing.T) {
	var visit func(folder string, way []string)
	visit = func(folder string, way []string) {
		require.NotContains(t, way, folder, "a circle: %v", append(way, folder))
		for _, next := range ours[folder] {
			if next != everything {
				visit(next, append(way[:len(way):len(way)], folder))
			}
		}
	}
	for folder := range ours {
		visit(folder, nil)
	}
}

// A check that cannot fail is none: each row plants one breach.
func TestBreachesAreFound(t *testing.T) {
	tests := []struct{ file, text, want string }{
		{"internal/mass/a.go", `package mass; import _ "windlass/internal/gym"`, "imports internal/gym, which internal/mass may not"},
		{"internal/store/a.go", `package store; import _ "windlass/internal/desk"`, "imports internal/desk, which internal/store may not"},
		{"internal/store/a.go", `package store; import _ "windlass/internal/climb"`, "imports internal/climb, which internal/store may not"},
		{"ui/floor/a.go", `package floor; import _ "windlass/ui/today"`, "imports ui/today, which ui/floor may not"},
		{"ui/record/a.go", `package record; import _ "windlass/ui/roster"`, "imports ui/roster, which ui/record may not"},
		{"ui/roster/a.go", `package roster; import _ "windlass/ui/record"`, ""},
		{"ui/today/a.go", `package today; import _ "windlass/internal/store"`, "imports internal/store, which ui/today may not"},
		{"ui/today/a.go", `package today; import _ "windlass/ui/uitest"`, "imports ui/uitest, which ui/today may not"},
		{"ui/today/a.go", `package today; import _ "fyne.io/fyne/v2/widget"`, ""},
		{"ui/today/a.go", `package today; import _ "fyne.io/fyne/v2/app"`, "imports fyne.io/fyne/v2/app, which ui/today may not"},
		{"ui/today/a.go", `package today; import _ "fyne.io/fyne/v2/test"`, "imports fyne.io/fyne/v2/test, which ui/today may not"},
		{"cmd/windlass/a.go", `package main; import _ "fyne.io/fyne/v2/app"`, ""},
		{"cmd/windlassctl/a.go", `package main; import _ "fyne.io/fyne/v2"`, "imports fyne.io/fyne/v2, which cmd/windlassctl may not"},
		{"cmd/windlassctl/a.go", `package main; import _ "windlass/ui/look"`, "imports ui/look, which cmd/windlassctl may not"},
		{"ui/floor/a.go", `package floor; import _ "github.com/gen2brain/malgo"`, "imports github.com/gen2brain/malgo, which ui/floor may not"},
		{"internal/sound/a.go", `package sound; import _ "github.com/gen2brain/malgo"`, ""},
		{"cmd/dev/a.go", `package main; import _ "github.com/stretchr/testify/assert"`, "imports github.com/stretchr/testify/assert, which cmd/dev may not"},
		{"cmd/dev/a.go", `package main; import _ "windlass/internal/day"`, "imports internal/day, which cmd/dev may not"},
		{"internal/day/a.go", `package day; import _ "golang.org/x/exp/slices"`, "imports golang.org/x/exp/slices, which internal/day may not"},
		{"internal/tier/a.go", `package tier; import _ "os"`, "imports os, but internal/tier is pure"},
		{"internal/tier/a.go", `package tier; import _ "math/rand"`, "imports math/rand, but internal/tier is pure"},
		{"internal/store/a.go", `package store; import _ "os"`, ""},
		{"internal/clock/a.go", `package clock; import "time"; var now = time.Now`, "uses time.Now; hand it in instead"},
		{"internal/clock/a.go", `package clock; import t "time"; func f() { t.Sleep(1) }`, "uses time.Sleep"},
		{"internal/clock/a.go", `package clock; import "time"; const s = time.Second`, ""},
		{"internal/cycle/a.go", `package cycle; func f() { go f() }`, "starts a goroutine"},
		{"internal/cycle/a.go", `package cycle; import "math/rand/v2"; var n = rand.IntN(3)`, "uses math/rand/v2.IntN"},
		{"internal/cycle/a.go", `package cycle; import "math/rand/v2"; var r = rand.New(rand.NewPCG(1, 2))`, ""},
		{"internal/util/a.go", `package util`, "internal/util says nothing"},
		{"internal/boxes/a.go", `package boxes`, "internal/boxes is not in the house"},
	}
	for _, tt := range tests {
		units, err := survey(fstest.MapFS{tt.file: {Data: []byte("// Package a has a comment.\n" + tt.text)}})
		require.NoError(t, err)
		found := judge(units)
		if tt.want == "" {
			assert.Empty(t, found, tt.text)
			continue
		}
		require.NotEmpty(t, found, tt.text)
		assert.Contains(t, found[len(found)-1]+found[0], tt.want)
	}
}

func TestOnePackageCommentEach(t *testing.T) {
	const spoken, silent = "// Package day speaks.\npackage day\n", "package day\n"
	tests := []struct {
		files []string
		want  []string
	}{
		{[]string{spoken, silent}, nil},
		{[]string{silent, silent}, []string{"internal/day has 0 package comments; keep one"}},
		{[]string{spoken, spoken}, []string{"internal/day has 2 package comments; keep one"}},
	}
	for _, tt := range tests {
		tree := fstest.MapFS{}
		for i, text := range tt.files {
			tree["internal/day/"+string(rune('a'+i))+".go"] = &fstest.MapFile{Data: []byte(text)}
		}
		units, err := survey(tree)
		require.NoError(t, err)
		assert.Equal(t, tt.want, judge(units))
	}
}

// Tests and what the go command leaves out are no part of the plan.
func TestWhatIsLeftOut(t *testing.T) {
	bad := &fstest.MapFile{Data: []byte(`package day; import _ "windlass/internal/desk"`)}
	units, err := survey(fstest.MapFS{
		"internal/day/a_test.go": bad, "internal/day/testdata/a.go": bad, ".ci/a.go": bad, "_old/a.go": bad,
	})
	require.NoError(t, err)
	assert.Empty(t, units)
	_, err = survey(fstest.MapFS{"internal/day/a.go": {Data: []byte("packag day")}})
	assert.Error(t, err, "a file that cannot be read is no pass")
}
