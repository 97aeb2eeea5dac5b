package main

import (
	"bytes"
	"context"
	"errors"
	"flag"
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestExitCodes(t *testing.T) {
	ctx := context.Background()
	assert.Equal(t, 2, exitCode(dispatch(ctx, nil)), "no command")
	assert.Equal(t, 2, exitCode(dispatch(ctx, []string{"fly"})), "unknown command")
	assert.Equal(t, 2, exitCode(dispatch(ctx, []string{"test", "-fly"})), "unknown flag")
	assert.Equal(t, 2, exitCode(dispatch(ctx, []string{"test", "./..."})), "an argument")
	assert.Equal(t, 0, exitCode(flag.ErrHelp), "help was asked for")
	assert.Equal(t, 1, exitCode(errors.New("a fault")))
	assert.Equal(t, 0, exitCode(nil))
}

func TestWorkEndsWithGoRun(t *testing.T) {
	assert.True(t, startedByGoRun(filepath.FromSlash("/tmp/go-build1745172484/b001/exe/dev")))
	assert.False(t, startedByGoRun(filepath.FromSlash("/usr/local/bin/dev")), "its parent may leave it alone")

	parents := []int{7, 7, 7, 1}
	ended := false
	cancelWithParent(func() int {
		next := parents[0]
		parents = parents[1:]
		return next
	}, 0, func() { ended = true })
	assert.True(t, ended)
	assert.Empty(t, parents)
}

func TestWalkReportsEveryFault(t *testing.T) {
	var text bytes.Buffer
	did := ""
	mark := func(name string, must bool, err error) step {
		return step{name: name, must: must, do: func(context.Context) (string, error) { did += name; return "note", err }}
	}
	fault := errors.New("fault")

	err := walk(context.Background(), &printer{out: &text}, []step{mark("a", true, nil), mark("b", false, fault), mark("c", false, nil)})
	assert.ErrorContains(t, err, ": b")
	assert.Equal(t, "abc", did, "a later step goes on")
	assert.Contains(t, text.String(), "[2/3] b\n")

	did = ""
	err = walk(context.Background(), &printer{out: &text}, []step{mark("a", true, fault), mark("b", false, nil)})
	assert.Error(t, err)
	assert.Equal(t, "a", did, "a step that must hold ends the walk")
}

func TestWalkStopsWhenInterrupted(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	var text bytes.Buffer
	err := walk(ctx, &printer{out: &text}, []step{
		{name: "a", do: func(context.Context) (string, error) { cancel(); return "", ctx.Err() }},
		{name: "b", do: func(context.Context) (string, error) { t.Error("went on"); return "", nil }},
	})
	assert.ErrorContains(t, err, "stopped")
}

func TestHeartbeatSpeaksOnlyIntoSilence(t *testing.T) {
	now := time.Now()
	p := &printer{out: &bytes.Buffer{}}
	p.printf("a line")
	assert.Less(t, p.quietFor(now), heartbeat)
	assert.GreaterOrEqual(t, p.quietFor(now.Add(heartbeat+time.Second)), heartbeat)
}

func TestChildEnv(t *testing.T) {
	tests := []struct {
		name      string
		have      []string
		want, not string
	}{
		{"the C locale makes Fyne complain", []string{"LANG=C.UTF-8"}, "LANG=en_GB.UTF-8", "LANG=C.UTF-8"},
		{"so does an overriding one", []string{"LC_ALL=C.UTF-8"}, "LANG=en_GB.UTF-8", "LC_ALL=C.UTF-8"},
		{"a coach's own language stays", []string{"LANG=nb_NO.UTF-8"}, "LANG=nb_NO.UTF-8", "LANG=en_GB.UTF-8"},
		{"no locale at all", nil, "LANG=en_GB.UTF-8", "LANG="},
		{"the driver is C", []string{"CGO_ENABLED=0"}, "CGO_ENABLED=1", "CGO_ENABLED=0"},
		{"the rest stays", []string{"HOME=/root"}, "HOME=/root", ""},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			got := childEnv(tt.have)
			assert.Contains(t, got, tt.want)
			assert.NotContains(t, got, tt.not)
		})
	}
}

func TestScreenIsLackingOnlyOnLinux(t *testing.T) {
	env := func(set string) func(string) string {
		return func(name string) string {
			if name == set {
				return ":0"
			}
			return ""
		}
	}
	assert.True(t, lacksScreen("linux", env("")))
	assert.False(t, lacksScreen("linux", env("DISPLAY")))
	assert.False(t, lacksScreen("linux", env("WAYLAND_DISPLAY")))
	assert.False(t, lacksScreen("darwin", env("")))
	assert.False(t, lacksScreen("windows", env("")))
}

func TestOnDisplayReplacesTheOldOne(t *testing.T) {
	got := onDisplay([]string{"DISPLAY=:0", "WAYLAND_DISPLAY=wayland-0", "HOME=/root"}, ":7")
	assert.Equal(t, []string{"HOME=/root", "DISPLAY=:7"}, got)
}

func TestFindRootFromASubfolder(t *testing.T) {
	root := t.TempDir()
	sub := filepath.Join(root, "ui", "kit")
	require.NoError(t, os.MkdirAll(sub, 0o755))

	_, err := findRoot(sub)
	assert.ErrorContains(t, err, "run this inside the clone")

	require.NoError(t, os.WriteFile(filepath.Join(root, "go.mod"), []byte("module windlass\n\ngo 1.26\n"), 0o600))
	got, err := findRoot(sub)
	require.NoError(t, err)
	assert.Equal(t, root, got)
}

func TestJudgeTour(t *testing.T) {
	assert.NoError(t, judgeTour([]byte("12 steps\n"), nil, 12))
	assert.ErrorContains(t, judgeTour(nil, errors.New("exit status 1"), 12), "exit status 1")
	assert.ErrorContains(t, judgeTour([]byte("*** Error in Fyne call thread, this …"), nil, 12), "fyne.Do")
	assert.ErrorContains(t, judgeTour(nil, nil, 0), "no picture")
}

func TestFormatFault(t *testing.T) {
	tests := []struct {
		name, source, want string
	}{
		{"formatted", "package a\n\nvar x = 1\n", ""},
		{"a space too many", "package a\n\nvar  x = 1\n", "not formatted"},
		{"not Go", "package\n", "expected"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			file := filepath.Join(t.TempDir(), "a.go")
			require.NoError(t, os.WriteFile(file, []byte(tt.source), 0o600))
			err := formatFault(file)
			if tt.want == "" {
				assert.NoError(t, err)
			} else {
				assert.ErrorContains(t, err, tt.want)
			}
		})
	}
}

func TestGoFilesSkipsDotFolders(t *testing.T) {
	root := t.TempDir()
	for _, name := range []string{"a.go", "b/b_test.go", "b/b.txt", ".build/c.go"} {
		require.NoError(t, os.MkdirAll(filepath.Dir(filepath.Join(root, name)), 0o755))
		require.NoError(t, os.WriteFile(filepath.Join(root, name), nil, 0o600))
	}
	got, err := goFiles(root)
	require.NoError(t, err)
	assert.Equal(t, []string{filepath.Join(root, "a.go"), filepath.Join(root, "b", "b_test.go")}, got)

	s := &shop{root: root}
	assert.True(t, s.hasFiles("b", "_test.go"))
	assert.True(t, s.hasFiles("b/...", "_test.go"))
	assert.False(t, s.hasFiles(".", "_test.go"), "only below it")
	assert.False(t, s.hasFiles("c", "_test.go"))
	assert.False(t, s.hasFiles("c/...", "_test.go"))
}

func TestCommandLineCanBeTyped(t *testing.T) {
	assert.Equal(t, "apt-get install -y gcc", commandLine("apt-get", []string{"install", "-y", "gcc"}))
	assert.Equal(t, `touch 'two words' '' 'it'\''s'`, commandLine("touch", []string{"two words", "", "it's"}))
}

func TestShortTimes(t *testing.T) {
	assert.Equal(t, "1.2s", short(1234*time.Millisecond))
	assert.Equal(t, "1m40s", short(100*time.Second+300*time.Millisecond))
}
