package main

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"runtime"
)

// The linter is pinned here and not in go.mod, where its several hundred
// dependencies would drown ours. It is built from source by the go command.
const (
	linterModule  = "github.com/golangci/golangci-lint/v2/cmd/golangci-lint"
	linterVersion = "v2.15.0"
)

// linterDir also names Go's version: a linter that was built by an older Go
// refuses to read newer code.
func (s *shop) linterDir() string {
	return s.built("tools", "golangci-lint-"+linterVersion+"-"+runtime.Version())
}

func (s *shop) linter() string {
	name := filepath.Join(s.linterDir(), "golangci-lint")
	if runtime.GOOS == "windows" {
		name += ".exe"
	}
	return name
}

// fetchLinter builds the linter unless it is there already.
func (s *shop) fetchLinter(ctx context.Context) (note string, err error) {
	if _, err := os.Stat(s.linter()); err == nil {
		return "already built", nil
	}
	env := []string{"GOBIN=" + s.linterDir(), "CGO_ENABLED=0"}
	if err := s.quietlyWith(ctx, env, "go", "install", linterModule+"@"+linterVersion); err != nil {
		return "", fmt.Errorf("fetch the linter golangci-lint %s: %w; check the network and GOPROXY, or leave it out with -skip-lint", linterVersion, err)
	}
	return "golangci-lint " + linterVersion, nil
}

func (s *shop) lint(ctx context.Context) (note string, err error) {
	if _, err := os.Stat(s.linter()); err != nil {
		return "", fmt.Errorf("lint: golangci-lint %s is not there, since fetching it failed above", linterVersion)
	}
	if err := s.quietly(ctx, s.linter(), "run", "--color", "never", "--show-stats=false", "./..."); err != nil {
		return "", fmt.Errorf("%w; what is only about format is mended by: %s fmt", err, s.linter())
	}
	return "no finding", nil
}
