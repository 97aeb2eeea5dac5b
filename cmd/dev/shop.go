package main

import (
	"bufio"
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"time"
)

// buildDir holds all that this command makes; .gitignore names it.
const buildDir = ".build"

// A shop is the tree that a command works in, and how it starts programs there.
type shop struct {
	root string
	out  *printer
	env  []string
}

func openShop() (*shop, error) {
	dir, err := os.Getwd()
	if err != nil {
		return nil, fmt.Errorf("find the working folder: %w", err)
	}
	root, err := findRoot(dir)
	if err != nil {
		return nil, err
	}
	if err := os.MkdirAll(filepath.Join(root, buildDir), 0o755); err != nil {
		return nil, fmt.Errorf("make the build folder: %w", err)
	}
	return &shop{root: root, out: &printer{out: os.Stdout}, env: childEnv(os.Environ())}, nil
}

// findRoot climbs to the folder of our go.mod, so that the command also works
// from a subfolder.
func findRoot(dir string) (string, error) {
	for at := dir; ; at = filepath.Dir(at) {
		mod, err := os.ReadFile(filepath.Join(at, "go.mod"))
		if err == nil && strings.HasPrefix(string(mod), "module windlass\n") {
			return at, nil
		}
		if at == filepath.Dir(at) {
			return "", fmt.Errorf("find the tree: no go.mod of module windlass in %q or above it; run this inside the clone", dir)
		}
	}
}

// childEnv is the environment for everything that is started here.
func childEnv(env []string) []string {
	kept := make([]string, 0, len(env)+3)
	lang := "en_GB.UTF-8"
	for _, kv := range env {
		name, value, _ := strings.Cut(kv, "=")
		switch name {
		case "LANG":
			if namesLanguage(value) {
				lang = value
			}
		case "LC_ALL", "LC_MESSAGES":
			if namesLanguage(value) {
				kept = append(kept, kv)
			}
		case "CGO_ENABLED": // Fyne's driver cannot be built without it
		default:
			kept = append(kept, kv)
		}
	}
	return append(kept, "LANG="+lang, "CGO_ENABLED=1")
}

// namesLanguage is false for the C locale, on which Fyne prints an error at start.
func namesLanguage(locale string) bool {
	base, _, _ := strings.Cut(locale, ".")
	return base != "" && base != "C" && base != "POSIX"
}

func (s *shop) path(parts ...string) string {
	return filepath.Join(append([]string{s.root}, parts...)...)
}

func (s *shop) built(parts ...string) string {
	return s.path(append([]string{buildDir}, parts...)...)
}

// command prepares a program that is asked to stop, and later made to, when the
// context ends.
func (s *shop) command(ctx context.Context, name string, args ...string) *exec.Cmd {
	cmd := exec.CommandContext(ctx, name, args...)
	cmd.Dir = s.root
	cmd.Env = s.env
	cmd.WaitDelay = 10 * time.Second
	cmd.Cancel = func() error {
		if err := cmd.Process.Signal(os.Interrupt); err != nil {
			return cmd.Process.Kill()
		}
		return nil
	}
	return cmd
}

// quietly runs a program whose output matters only when it fails.
func (s *shop) quietly(ctx context.Context, name string, args ...string) error {
	return s.quietlyWith(ctx, nil, name, args...)
}

// quietlyWith does so with more variables in the environment.
func (s *shop) quietlyWith(ctx context.Context, env []string, name string, args ...string) error {
	cmd := s.command(ctx, name, args...)
	cmd.Env = append(slices.Clone(s.env), env...)
	output, err := cmd.CombinedOutput()
	if err == nil {
		return nil
	}
	s.show(output)
	return fmt.Errorf("%s: %w", commandLine(name, args), err)
}

// streamed runs a program and hands each line of its output to take as it comes.
func (s *shop) streamed(cmd *exec.Cmd, take func(line []byte)) error {
	pipe, err := cmd.StdoutPipe()
	if err != nil {
		return fmt.Errorf("listen to %s: %w", cmd.Path, err)
	}
	if err := cmd.Start(); err != nil {
		return fmt.Errorf("start %s: %w", cmd.Path, err)
	}
	readErr := eachLine(pipe, take)
	return errors.Join(cmd.Wait(), readErr)
}

// eachLine is not a bufio.Scanner because a line of a test's output may be of
// any length.
func eachLine(r io.Reader, take func(line []byte)) error {
	buffered := bufio.NewReader(r)
	for {
		line, err := buffered.ReadBytes('\n')
		if len(line) > 0 {
			take(bytes.TrimRight(line, "\r\n"))
		}
		if errors.Is(err, io.EOF) {
			return nil
		}
		if err != nil {
			return err
		}
	}
}

// show prints a program's output, indented so that our own lines stand out.
func (s *shop) show(output []byte) {
	text := strings.TrimRight(string(output), "\n")
	if text != "" {
		s.out.printf("      | %s", strings.ReplaceAll(text, "\n", "\n      | "))
	}
}

// commandLine spells a command as one would type it.
func commandLine(name string, args []string) string {
	words := []string{name}
	for _, a := range args {
		if a == "" || strings.ContainsAny(a, " \t\"'$*?&|;<>()") {
			a = "'" + strings.ReplaceAll(a, "'", `'\''`) + "'"
		}
		words = append(words, a)
	}
	return strings.Join(words, " ")
}
