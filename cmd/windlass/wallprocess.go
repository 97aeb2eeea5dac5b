package main

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"strings"
)

// wallProcess is the wall as its desk knows it: another process, which goes on
// when the desk does not.
type wallProcess struct {
	options options
	died    func(error) // told, on any goroutine, of a wall that ended by mistake
}

func newWallProcess(o options) *wallProcess {
	return &wallProcess{options: o, died: func(error) {}}
}

// next opens the wall; an open one fills the screen, and one that fills it is
// closed. On a machine with a second monitor a new wall fills that at once.
func (p *wallProcess) next() (opened bool, err error) {
	if _, err := askWall(p.options.db, askNext); !errors.Is(err, errNoWall) {
		return false, err
	}
	err = p.start()
	return err == nil, err
}

// close closes the wall, if there is one.
func (p *wallProcess) close() error {
	if _, err := askWall(p.options.db, askClose); !errors.Is(err, errNoWall) {
		return err
	}
	return nil
}

func (p *wallProcess) start() error {
	program, err := os.Executable()
	if err != nil {
		return fmt.Errorf("open the wall: %w", err)
	}
	cmd := exec.Command(program, p.options.wallArgs()...)
	var said bytes.Buffer
	cmd.Stderr = &said
	if err := cmd.Start(); err != nil {
		return fmt.Errorf("open the wall: %w", err)
	}
	go func() {
		if err := cmd.Wait(); err != nil {
			p.died(wallEnd(err, said.String()))
		}
	}()
	return nil
}

// wallEnd says why a wall is gone: in its own words where it gave up by itself. What
// one that was killed wrote before is for no coach.
func wallEnd(err error, said string) error {
	var exit *exec.ExitError
	if errors.As(err, &exit) && exit.ExitCode() == gaveUp {
		return fmt.Errorf("keep the wall open: %s; press Ctrl+W to open it again", lastLine(said))
	}
	return fmt.Errorf("keep the wall open: its window has ended (%w); press Ctrl+W to open it again", err)
}

// wallArgs are the flags of the wall that belongs to a desk.
func (o options) wallArgs() []string {
	args := []string{"-wall", "-db", o.db}
	if pace := o.pace.String(); pace != "" {
		args = append(args, "-pace", pace)
	}
	if o.light {
		args = append(args, "-light")
	}
	if o.plain() {
		args = append(args, "-size", o.size)
	}
	return args
}

func lastLine(text string) string {
	lines := strings.Split(strings.TrimSpace(text), "\n")
	return lines[len(lines)-1]
}
