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
	ended   chan error // of the process that this desk started
}

func newWallProcess(o options) *wallProcess { return &wallProcess{options: o} }

// next opens the wall; an open one fills the screen, and one that fills it is
// closed. On a machine with a second monitor a new wall fills that at once.
func (p *wallProcess) next() error {
	_, err := askWall(p.options.db, askNext)
	if !errors.Is(err, errNoWall) {
		return err
	}
	if err := p.failure(); err != nil {
		return err
	}
	return p.start()
}

// close closes the wall, if there is one.
func (p *wallProcess) close() error {
	if _, err := askWall(p.options.db, askClose); !errors.Is(err, errNoWall) {
		return err
	}
	return nil
}

// failure tells, once, why a wall that was started is gone.
func (p *wallProcess) failure() error {
	select {
	case err := <-p.ended:
		return err
	default:
		return nil
	}
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
	ended := make(chan error, 1)
	p.ended = ended
	go func() {
		if err := cmd.Wait(); err != nil {
			ended <- fmt.Errorf("open the wall: %w: %s; try again", err, lastLine(said.String()))
		}
	}()
	return nil
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
