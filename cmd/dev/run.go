package main

import (
	"context"
	"errors"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"time"
)

// runConsole is the command run: from a bare machine to the console on the demo
// gym, or to pictures of it where no screen is.
func runConsole(ctx context.Context, args []string) error {
	fs := flag.NewFlagSet("run", flag.ContinueOnError)
	tour := fs.Bool("tour", false, "play the tour even where there is a screen")
	if err := parseFlags(fs, args); err != nil {
		return err
	}
	s, err := openShop()
	if err != nil {
		return err
	}
	headless := lacksScreen(runtime.GOOS, os.Getenv)
	if !headless && !*tour {
		return walk(ctx, s.out, s.consoleSteps())
	}
	var d *display
	defer func() { d.close() }()
	return walk(ctx, s.out, s.headlessSteps(headless, &d))
}

func (s *shop) consoleSteps() []step {
	return []step{
		s.setUpStep(buildNeeds),
		s.buildStep(),
		{name: "open the console on the demo gym (close its window to end)", must: true, do: s.openConsole},
	}
}

func (s *shop) headlessSteps(headless bool, d **display) []step {
	needs := buildNeeds
	if headless {
		s.out.printf("no display here ($DISPLAY and $WAYLAND_DISPLAY are empty): the tour plays on a virtual one")
		needs = append(needs[:len(needs):len(needs)], displayNeeds...)
	}
	list := []step{s.setUpStep(needs), s.buildStep()}
	if headless {
		list = append(list, s.displayStep(d))
	}
	return append(list, step{name: "play the tour", must: true, do: func(ctx context.Context) (string, error) {
		return s.playTour(ctx, s.built("tour"))
	}})
}

func (s *shop) setUpStep(needs []need) step {
	return step{name: "look for what a build needs", must: true, do: func(ctx context.Context) (string, error) {
		return s.setUp(ctx, needs)
	}}
}

func (s *shop) buildStep() step {
	return step{
		name: "build windlass (the first time takes some minutes, most of it Fyne's window driver)",
		must: true,
		do: func(ctx context.Context) (string, error) {
			if !s.hasProgram() {
				return "", errors.New("build windlass: cmd/windlass has no Go file; is the clone whole?")
			}
			return s.program(), s.buildProgram(ctx)
		},
	}
}

func (s *shop) displayStep(d **display) step {
	return step{name: "start a virtual display", must: true, do: func(ctx context.Context) (note string, err error) {
		if *d, err = s.startDisplay(ctx); err != nil {
			return "", err
		}
		return screen + " at " + (*d).name, nil
	}}
}

func (s *shop) program() string {
	if runtime.GOOS == "windows" {
		return s.built("windlass.exe")
	}
	return s.built("windlass")
}

func (s *shop) hasProgram() bool {
	files, _ := filepath.Glob(s.path("cmd", "windlass", "*.go"))
	return len(files) > 0
}

func (s *shop) buildProgram(ctx context.Context) error {
	return s.quietly(ctx, "go", "build", "-o", s.program(), "./cmd/windlass")
}

// openConsole leaves the terminal to the program. An interrupt reaches both, so
// the end that it brings is no fault.
func (s *shop) openConsole(ctx context.Context) (string, error) {
	cmd := s.command(ctx, s.program(), "-db", s.built("demo.windlass"), "-demo")
	cmd.Stdout, cmd.Stderr = os.Stdout, os.Stderr
	err := cmd.Run()
	if err != nil && ctx.Err() == nil {
		return "", fmt.Errorf("windlass: %w; what it said stands above", err)
	}
	return "closed", nil
}

// tourLimit is far over what a tour takes on two slow cores.
const tourLimit = 10 * time.Minute
