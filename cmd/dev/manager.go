package main

import (
	"os"
	"os/exec"
	"runtime"
	"slices"
	"strings"
)

// A manager is a system package manager and how it is spoken to without a dialogue.
type manager struct {
	name     string // the program on PATH
	install  []string
	rehearse []string // fails when the lists of packages are missing or old; may be empty
	refresh  []string // fetches those lists
	root     bool     // must be run as root
}

// managers in the order in which they are looked for. brew comes last because
// on Linux it stands beside the system's own.
var managers = []manager{
	{
		name:     "apt-get",
		install:  []string{"install", "-y", "--no-install-recommends", "-o", "DPkg::Lock::Timeout=300"},
		rehearse: []string{"install", "-s", "--no-install-recommends"},
		refresh:  []string{"update"},
		root:     true,
	},
	{name: "dnf", install: []string{"install", "-y"}, root: true},
	{
		name:    "zypper",
		install: []string{"--non-interactive", "install", "--no-recommends"},
		refresh: []string{"--non-interactive", "refresh"},
		root:    true,
	},
	{
		name:    "pacman",
		install: []string{"-S", "--needed", "--noconfirm"},
		refresh: []string{"-Sy"},
		root:    true,
	},
	{name: "brew", install: []string{"install"}},
}

// A host is what decides how packages are installed on this machine.
type host struct {
	os       string
	root     bool
	terminal bool // somebody is there to type a password
	has      func(program string) bool
}

func thisHost() host {
	info, err := os.Stdin.Stat()
	return host{
		os:       runtime.GOOS,
		root:     os.Geteuid() == 0,
		terminal: err == nil && info.Mode()&os.ModeCharDevice != 0 && os.Getenv("CI") == "",
		has:      func(program string) bool { _, err := exec.LookPath(program); return err == nil },
	}
}

// manager finds the first package manager on PATH.
func (h host) manager() (manager, bool) {
	for _, m := range managers {
		if h.has(m.name) {
			return m, true
		}
	}
	return manager{}, false
}

// argv is the whole command line of one manager call, with sudo where it takes it.
// The result may be shown for typing when it may not be run: see canRun.
func (h host) argv(m manager, verb, packages []string) []string {
	line := append([]string{m.name}, verb...)
	line = append(line, packages...)
	switch {
	case !m.root || h.root:
		return line
	case h.terminal:
		return append([]string{"sudo"}, line...)
	}
	return append([]string{"sudo", "-n"}, line...)
}

func (h host) canRun(m manager) bool {
	return !m.root || h.root || h.has("sudo")
}

func managerNames() string {
	names := make([]string, len(managers))
	for i, m := range managers {
		names[i] = m.name
	}
	return strings.Join(names, ", ")
}

// packagesFor gathers what a manager calls the missing things, each once.
func packagesFor(m manager, missing []need) []string {
	var names []string
	for _, n := range missing {
		for _, p := range n.packages[m.name] {
			if !slices.Contains(names, p) {
				names = append(names, p)
			}
		}
	}
	return names
}

// advice says what a person must do where this command may not or cannot.
func (h host) advice(missing []need) string {
	switch h.os {
	case "darwin":
		return "xcode-select --install"
	case "windows":
		return "winget install -e --id MSYS2.MSYS2, then in its shell: pacman -S --needed mingw-w64-ucrt-x86_64-gcc, and put C:\\msys64\\ucrt64\\bin on PATH"
	}
	m, known := h.manager()
	if !known {
		return "what Debian installs with: " + byHand(managers[0], missing)
	}
	return byHand(m, missing)
}

// byHand is the line to type as the one who may install. It fetches the lists
// first, since a bare machine has none.
func byHand(m manager, missing []need) string {
	line := commandLine(m.name, append(slices.Clone(m.install), packagesFor(m, missing)...))
	if m.refresh == nil {
		return line
	}
	return commandLine(m.name, m.refresh) + " && " + line
}
