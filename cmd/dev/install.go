package main

import (
	"context"
	"fmt"
	"os"
	"slices"
	"strings"
)

// setUp installs whatever of the needs is missing, or says how to.
func (s *shop) setUp(ctx context.Context, needs []need) (note string, err error) {
	missing := s.missing(ctx, needs)
	if len(missing) == 0 {
		return "nothing to install", nil
	}
	s.out.printf("      missing on this machine:")
	for _, n := range missing {
		s.out.printf("      - %s, because %s", n.what, n.why)
	}
	h := thisHost()
	m, known := h.manager()
	switch {
	case h.os != "linux":
		return "", cannotInstall(missing, "it takes a dialogue here", h.advice(missing))
	case !known:
		return "", cannotInstall(missing, "none of "+managerNames()+" is on PATH", h.advice(missing))
	case !h.canRun(m):
		return "", cannotInstall(missing, "this is not root and there is no sudo", "as root: "+h.advice(missing))
	}
	if err := s.install(ctx, h, m, missing); err != nil {
		return "", err
	}
	return "installed " + listed(missing), nil
}

func (s *shop) missing(ctx context.Context, needs []need) []need {
	var missing []need
	for _, n := range needs {
		if n.missing(ctx, s) {
			missing = append(missing, n)
		}
	}
	return missing
}

// install also looks whether the things are there afterwards: a package may
// have come without what we took it for.
func (s *shop) install(ctx context.Context, h host, m manager, missing []need) error {
	packages := packagesFor(m, missing)
	if len(packages) == 0 {
		return cannotInstall(missing, "no package of "+m.name+" is known for it", "install it by hand")
	}
	line := h.argv(m, m.install, packages)
	s.out.printf("      installing: %s", commandLine(line[0], line[1:]))
	if err := s.fetchPackages(ctx, h, m, packages); err != nil {
		return fmt.Errorf("%w; to do it by hand: %s", err, h.advice(missing))
	}
	if left := s.missing(ctx, missing); len(left) > 0 {
		return cannotInstall(left, m.name+" ended well, yet it is not there", h.advice(left))
	}
	return nil
}

// fetchPackages refreshes the manager's lists only when they prove missing or
// old, since that can take longer than the packages.
func (s *shop) fetchPackages(ctx context.Context, h host, m manager, packages []string) error {
	run := func(verb, packages []string) error {
		line := h.argv(m, verb, packages)
		return s.asInstaller(ctx, line)
	}
	fresh := m.refresh == nil
	if m.rehearse != nil && !s.rehearses(ctx, m, packages) {
		if err := run(m.refresh, nil); err != nil {
			return err
		}
		fresh = true
	}
	err := run(m.install, packages)
	if err == nil || fresh || ctx.Err() != nil {
		return err
	}
	if err := run(m.refresh, nil); err != nil {
		return err
	}
	return run(m.install, packages)
}

func (s *shop) rehearses(ctx context.Context, m manager, packages []string) bool {
	return s.command(ctx, m.name, append(slices.Clone(m.rehearse), packages...)...).Run() == nil
}

// asInstaller keeps package scripts from asking questions, and from warning
// about a locale that the machine has not got.
func (s *shop) asInstaller(ctx context.Context, line []string) error {
	const quiet = "DEBIAN_FRONTEND=noninteractive"
	if line[0] == "sudo" { // sudo clears the environment
		at := 1
		if line[1] == "-n" {
			at = 2
		}
		line = slices.Insert(slices.Clone(line), at, "env", quiet, "LC_ALL=C.UTF-8")
	}
	cmd := s.command(ctx, line[0], line[1:]...)
	cmd.Env = append(slices.Clone(s.env), quiet, "LC_ALL=C.UTF-8")
	cmd.Stdin = os.Stdin
	output, err := cmd.CombinedOutput()
	if err != nil {
		s.show(output)
		return fmt.Errorf("%s: %w", commandLine(line[0], line[1:]), err)
	}
	return nil
}

func cannotInstall(missing []need, reason, mend string) error {
	return fmt.Errorf("cannot install %s: %s; to mend it:\n        %s", listed(missing), reason, mend)
}

func listed(needs []need) string {
	names := make([]string, len(needs))
	for i, n := range needs {
		names[i] = n.what
	}
	return strings.Join(names, ", ")
}
