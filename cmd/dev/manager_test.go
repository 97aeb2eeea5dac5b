package main

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// hostWith is a Linux machine with these programs on PATH.
func hostWith(programs ...string) host {
	return host{os: "linux", has: func(p string) bool { return slices.Contains(programs, p) }}
}

func TestManagerIsTheFirstOnPath(t *testing.T) {
	tests := []struct {
		name     string
		programs []string
		want     string
	}{
		{"Debian", []string{"apt-get", "sudo"}, "apt-get"},
		{"Fedora", []string{"dnf", "sudo"}, "dnf"},
		{"openSUSE", []string{"zypper"}, "zypper"},
		{"Arch", []string{"pacman"}, "pacman"},
		{"brew beside the system's own", []string{"brew", "dnf"}, "dnf"},
		{"brew alone", []string{"brew"}, "brew"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			m, ok := hostWith(tt.programs...).manager()
			require.True(t, ok)
			assert.Equal(t, tt.want, m.name)
		})
	}

	_, ok := hostWith("sudo", "make").manager()
	assert.False(t, ok, "no manager on PATH")
}

func TestInstallCommand(t *testing.T) {
	apt, dnf, brew := managers[0], managers[1], managers[len(managers)-1]
	tests := []struct {
		name     string
		root     bool
		terminal bool
		m        manager
		want     string
	}{
		{"root needs no sudo", true, false, dnf, "dnf install -y gcc"},
		{"a person may type a password", false, true, dnf, "sudo dnf install -y gcc"},
		{"without one sudo must not wait", false, false, dnf, "sudo -n dnf install -y gcc"},
		{"brew refuses root", false, true, brew, "brew install gcc"},
		{"apt waits for its lock", true, false, apt, "apt-get install -y --no-install-recommends -o DPkg::Lock::Timeout=300 gcc"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			h := host{root: tt.root, terminal: tt.terminal}
			line := h.argv(tt.m, tt.m.install, []string{"gcc"})
			assert.Equal(t, tt.want, commandLine(line[0], line[1:]))
		})
	}
}

func TestWhoMayInstall(t *testing.T) {
	apt, brew := managers[0], managers[len(managers)-1]
	root := hostWith("apt-get")
	root.root = true

	assert.True(t, root.canRun(apt), "root")
	assert.True(t, hostWith("sudo").canRun(apt), "sudo")
	assert.False(t, hostWith().canRun(apt), "neither")
	assert.True(t, hostWith().canRun(brew), "brew takes no root")
}

func TestAdviceIsALineToType(t *testing.T) {
	missing := []need{{what: "a window manager", packages: map[string][]string{
		"apt-get": {"openbox"}, "pacman": {"openbox"},
	}}}

	assert.Equal(t, "pacman -Sy && pacman -S --needed --noconfirm openbox", hostWith("pacman").advice(missing))
	assert.Contains(t, hostWith().advice(missing), "what Debian installs with: apt-get update && apt-get install -y")
	assert.Equal(t, "xcode-select --install", host{os: "darwin"}.advice(missing))
	assert.Contains(t, host{os: "windows"}.advice(missing), "gcc")
}

func TestPackagesComeOnce(t *testing.T) {
	missing := []need{
		{packages: map[string][]string{"pacman": {"mesa", "libx11"}}},
		{packages: map[string][]string{"pacman": {"xorg-server-xvfb", "mesa"}}},
		{packages: map[string][]string{"dnf": {"gcc"}}},
	}
	assert.Equal(t, []string{"mesa", "libx11", "xorg-server-xvfb"}, packagesFor(manager{name: "pacman"}, missing))
}

// Every manager must know every need, but for a display that brew has not got.
func TestEveryNeedIsNamedForEveryManager(t *testing.T) {
	for _, m := range managers {
		for _, n := range buildNeeds {
			assert.NotEmpty(t, n.packages[m.name], "%s for %s", n.what, m.name)
		}
		for _, n := range displayNeeds {
			if m.name != "brew" {
				assert.NotEmpty(t, n.packages[m.name], "%s for %s", n.what, m.name)
			}
		}
	}
}
