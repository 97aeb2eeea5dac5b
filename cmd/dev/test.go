package main

import (
	"bytes"
	"context"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
)

// raced are the packages where the race detector pays. It slows a test about
// tenfold, so a package without goroutines is not worth it, and long series of
// cases without any take a sample (go test -short): the step before ran them all.
var raced = []struct{ pattern, why string }{
	{"internal/store", "readers in a pool of connections beside one writer"},
	{"internal/desk", "long jobs, and a clock that ticks beside the verbs"},
	{"internal/sound", "cues are played on a goroutine of the engine's own"},
	{"ui/...", "the test driver runs fyne.Do on the goroutine that calls it"},
	{"cmd/windlass", "starts the ticker, the jobs and the wall"},
}

// windowless are the packages that must build without C, so that they are tested
// on any machine and the command line runs anywhere.
var windowless = []string{"internal/...", "ui/...", "data/...", "assets/...", "cmd/windlassctl"}

type testFlags struct {
	skipLint, skipRace, skipTour bool
}

// runChecks is the command test: all that a change must pass, from a bare
// machine on.
func runChecks(ctx context.Context, args []string) error {
	fs := flag.NewFlagSet("test", flag.ContinueOnError)
	var f testFlags
	fs.BoolVar(&f.skipLint, "skip-lint", false, "leave the linter out")
	fs.BoolVar(&f.skipRace, "skip-race", false, "leave the race detector out")
	fs.BoolVar(&f.skipTour, "skip-tour", false, "leave the tour out")
	if err := parseFlags(fs, args); err != nil {
		return err
	}
	s, err := openShop()
	if err != nil {
		return err
	}
	var d *display
	defer func() { d.close() }()
	counts := newTally()
	err = walk(ctx, s.out, s.checkSteps(f, &d, counts))
	for _, failure := range counts.failures() {
		s.out.printf("%s", failure)
	}
	s.out.printf("%s", counts)
	return err
}

// checkSteps puts what is cheap and often wrong first, once the machine can build.
func (s *shop) checkSteps(f testFlags, d **display, counts *tally) []step {
	var list []step
	if runtime.GOOS == "linux" {
		needs := append(buildNeeds[:len(buildNeeds):len(buildNeeds)], displayNeeds...)
		list = append(list, s.setUpStep(needs), s.displayStep(d))
	} else {
		list = append(list, s.setUpStep(buildNeeds))
	}
	list = append(list,
		step{name: "gofmt", do: s.checkFormat},
		step{name: "go build (the first time takes some minutes, most of it Fyne's window driver)", do: s.buildAll},
		step{name: "go build without C, for Windows", do: s.buildWindowless},
		step{name: "go vet", do: func(ctx context.Context) (string, error) { return "", s.quietly(ctx, "go", "vet", "./...") }},
	)
	if !f.skipLint {
		list = append(list,
			step{name: "fetch the linter (the first time takes about two minutes)", do: s.fetchLinter},
			step{name: "lint", do: s.lint})
	}
	list = append(list, step{name: "go test", do: func(ctx context.Context) (string, error) {
		return s.goTest(ctx, counts, "./...")
	}})
	if !f.skipRace {
		list = append(list, step{name: "go test with the race detector", do: func(ctx context.Context) (string, error) {
			return s.raceTest(ctx, counts)
		}})
	}
	if !f.skipTour {
		list = append(list, step{name: "the tour in real windows", do: func(ctx context.Context) (string, error) {
			return s.testTour(ctx, counts)
		}})
	}
	return list
}

func (s *shop) buildAll(ctx context.Context) (string, error) {
	os.Remove(s.program()) // an old one must not pass the tour in place of one that fails to build
	if err := s.quietly(ctx, "go", "build", "./..."); err != nil {
		return "", err
	}
	if !s.hasProgram() {
		return "no cmd/windlass yet", nil
	}
	return "", s.buildProgram(ctx)
}

// buildWindowless builds for another system than most of us sit at, which also
// finds a package that took to Fyne's window driver.
func (s *shop) buildWindowless(ctx context.Context) (string, error) {
	args := []string{"build"}
	for _, pattern := range windowless {
		if s.hasFiles(pattern, ".go") {
			args = append(args, "./"+pattern)
		}
	}
	if len(args) == 1 {
		return "none of its packages is there yet", nil
	}
	return "", s.quietlyWith(ctx, []string{"GOOS=windows", "CGO_ENABLED=0"}, "go", args...)
}

// goTest runs tests and tells of each package as it ends.
func (s *shop) goTest(ctx context.Context, counts *tally, args ...string) (string, error) {
	cmd := s.command(ctx, "go", append([]string{"test", "-json", "-timeout", "20m"}, args...)...)
	var complaints bytes.Buffer
	cmd.Stderr = &complaints
	ran := newTally()
	err := s.streamed(cmd, func(line []byte) {
		if news := ran.read(line); news != "" && !strings.HasPrefix(news, "no tests") {
			s.out.printf("      %s", news)
		}
	})
	counts.add(ran)
	if err != nil {
		s.show(complaints.Bytes())
		return "", fmt.Errorf("%s: %w", ran, err)
	}
	return ran.String(), nil
}

func (s *shop) raceTest(ctx context.Context, counts *tally) (string, error) {
	flags := []string{"-race", "-short"}
	args := flags
	for _, r := range raced {
		if s.hasFiles(r.pattern, "_test.go") {
			s.out.printf("      %s: %s", r.pattern, r.why)
			args = append(args, "./"+r.pattern)
		}
	}
	if len(args) == len(flags) {
		return "none of its packages has a test yet", nil
	}
	return s.goTest(ctx, counts, args...)
}

// hasFiles tells whether a package, or with /... any below it, has a file whose
// name ends so.
func (s *shop) hasFiles(pattern, end string) bool {
	dir, below := strings.CutSuffix(pattern, "/...")
	files, _ := goFiles(s.path(dir))
	for _, file := range files {
		if strings.HasSuffix(file, end) && (below || filepath.Dir(file) == s.path(dir)) {
			return true
		}
	}
	return false
}

// testTour counts the tour as one test, in windows of their true size.
func (s *shop) testTour(ctx context.Context, counts *tally) (string, error) {
	if !s.hasProgram() {
		return "skipped: cmd/windlass has no Go file yet", nil
	}
	if _, err := exec.LookPath(s.program()); err != nil {
		return "", fmt.Errorf("play the tour: %s is not there, since the build failed above", s.program())
	}
	if !s.hasTour(ctx) {
		return "skipped: windlass knows no -tour yet", nil
	}
	id := testID{"windlass/cmd/windlass", "Tour"}
	note, err := s.playTour(ctx, s.built("tour"))
	if err != nil {
		counts.record(id, failed)
		write(counts.output, id, err.Error())
		return "", err
	}
	counts.record(id, passed)
	return note, nil
}
