package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"time"
)

// screen has room for the desk and a full-HD wall side by side.
const screen = "3520x1300x24"

// A display is a virtual screen with a window manager on it.
type display struct {
	name    string // for DISPLAY
	dir     string
	server  *exec.Cmd
	manager *exec.Cmd
}

// lacksScreen tells whether windows would have nowhere to open.
func lacksScreen(goos string, getenv func(string) string) bool {
	return goos == "linux" && getenv("DISPLAY") == "" && getenv("WAYLAND_DISPLAY") == ""
}

// startDisplay brings a virtual screen up and points every later program of the
// shop at it. The caller closes it.
func (s *shop) startDisplay(ctx context.Context) (*display, error) {
	dir, err := os.MkdirTemp("", "windlass-display-")
	if err != nil {
		return nil, fmt.Errorf("start a virtual display: %w", err)
	}
	d := &display{dir: dir}
	if err := d.startServer(ctx, s); err != nil {
		d.close()
		return nil, err
	}
	s.env = onDisplay(s.env, d.name)
	if err := d.startManager(ctx, s); err != nil {
		d.close()
		return nil, err
	}
	return d, nil
}

// onDisplay leaves out Wayland, which a toolkit would prefer over the name.
func onDisplay(env []string, name string) []string {
	kept := make([]string, 0, len(env)+1)
	for _, kv := range env {
		if !strings.HasPrefix(kv, "DISPLAY=") && !strings.HasPrefix(kv, "WAYLAND_DISPLAY=") {
			kept = append(kept, kv)
		}
	}
	return append(kept, "DISPLAY="+name)
}

// startServer lets Xvfb choose a free number and waits until it tells it, which
// it does only when it takes clients.
func (d *display) startServer(ctx context.Context, s *shop) error {
	read, write, err := os.Pipe()
	if err != nil {
		return fmt.Errorf("start Xvfb: %w", err)
	}
	defer read.Close()
	d.server = s.command(ctx, "Xvfb", "-displayfd", "3", "-screen", "0", screen, "-nolisten", "tcp", "-noreset")
	d.server.ExtraFiles = []*os.File{write}
	log, err := d.logTo("xvfb.log", d.server)
	if err != nil {
		return errors.Join(err, write.Close())
	}
	err = d.server.Start()
	write.Close() // the server holds its own copy; ours would hide its end
	if err != nil {
		d.server = nil
		return fmt.Errorf("start Xvfb: %w", err)
	}
	number, err := readNumber(read, 30*time.Second)
	if err != nil {
		output, _ := os.ReadFile(log)
		s.show(output)
		return fmt.Errorf("start Xvfb: it named no display: %w", err)
	}
	d.name = ":" + number
	return nil
}

func readNumber(pipe *os.File, limit time.Duration) (string, error) {
	if err := pipe.SetReadDeadline(time.Now().Add(limit)); err != nil {
		return "", err
	}
	text, err := io.ReadAll(io.LimitReader(pipe, 16))
	number := strings.TrimSpace(string(text))
	if number == "" && err == nil {
		err = io.ErrUnexpectedEOF
	}
	if number != "" {
		return number, nil
	}
	return "", err
}

// startManager waits for openbox to run its start-up command, which it does
// once it manages windows.
func (d *display) startManager(ctx context.Context, s *shop) error {
	ready := filepath.Join(d.dir, "ready")
	d.manager = s.command(ctx, "openbox", "--sm-disable", "--startup", "touch "+ready)
	log, err := d.logTo("openbox.log", d.manager)
	if err != nil {
		return err
	}
	if err := d.manager.Start(); err != nil {
		d.manager = nil
		return fmt.Errorf("start openbox: %w", err)
	}
	for deadline := time.Now().Add(30 * time.Second); time.Now().Before(deadline); time.Sleep(50 * time.Millisecond) {
		if _, err := os.Stat(ready); err == nil {
			return nil
		}
		if ctx.Err() != nil {
			return ctx.Err()
		}
	}
	output, _ := os.ReadFile(log)
	s.show(output)
	return fmt.Errorf("start openbox on %s: it was not ready within 30 seconds", d.name)
}

// logTo keeps a program's words in a file, since a pipe would have to be emptied.
func (d *display) logTo(name string, cmd *exec.Cmd) (string, error) {
	path := filepath.Join(d.dir, name)
	file, err := os.Create(path)
	if err != nil {
		return "", fmt.Errorf("keep a log of %s: %w", cmd.Path, err)
	}
	cmd.Stdout, cmd.Stderr = file, file
	return path, nil
}

// close stops what was started, the window manager first so that it can leave
// in peace. It is safe on a display that came up in part or not at all.
func (d *display) close() {
	if d == nil {
		return
	}
	stopProgram(d.manager)
	stopProgram(d.server)
	os.RemoveAll(d.dir)
}

func stopProgram(cmd *exec.Cmd) {
	if cmd == nil || cmd.Process == nil {
		return
	}
	done := make(chan struct{})
	go func() {
		_ = cmd.Wait() // it was told to stop: how it ended is of no interest
		close(done)
	}()
	_ = cmd.Process.Signal(os.Interrupt)
	select {
	case <-done:
	case <-time.After(5 * time.Second):
		_ = cmd.Process.Kill()
		<-done
	}
}
