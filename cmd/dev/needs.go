package main

import (
	"context"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
)

// A need is something that the machine must have, why, and which packages
// bring it: a list for each package manager by name.
type need struct {
	what     string
	why      string
	missing  func(ctx context.Context, s *shop) bool
	packages map[string][]string
}

// buildNeeds are what a build with Fyne's window driver takes.
var buildNeeds = []need{
	{
		what:    "a C compiler",
		why:     "Fyne's window driver is partly C",
		missing: lacksCompiler,
		packages: map[string][]string{
			"apt-get": {"gcc", "libc6-dev"},
			"dnf":     {"gcc"},
			"zypper":  {"gcc"},
			"pacman":  {"gcc"},
			"brew":    {"gcc"},
		},
	},
	{
		what:    "graphics headers",
		why:     "the windows are drawn through OpenGL and X11",
		missing: lacksHeaders,
		packages: map[string][]string{
			"apt-get": {
				"pkg-config", "libgl1-mesa-dev", "libx11-dev", "libxcursor-dev", "libxrandr-dev",
				"libxinerama-dev", "libxi-dev", "libxxf86vm-dev", "libxkbcommon-dev",
			},
			"dnf": {
				"pkgconf-pkg-config", "mesa-libGL-devel", "libX11-devel", "libXcursor-devel", "libXrandr-devel",
				"libXinerama-devel", "libXi-devel", "libXxf86vm-devel", "libxkbcommon-devel",
			},
			"zypper": {
				"pkg-config", "Mesa-libGL-devel", "libX11-devel", "libXcursor-devel", "libXrandr-devel",
				"libXinerama-devel", "libXi-devel", "libXxf86vm-devel", "libxkbcommon-devel",
			},
			"pacman": {
				"pkgconf", "mesa", "libx11", "libxcursor", "libxrandr",
				"libxinerama", "libxi", "libxxf86vm", "libxkbcommon",
			},
			"brew": {
				"pkgconf", "mesa", "libx11", "libxcursor", "libxrandr",
				"libxinerama", "libxi", "libxxf86vm", "libxkbcommon",
			},
		},
	},
}

// displayNeeds are what real windows take where there is no screen.
var displayNeeds = []need{
	{
		what:    "a virtual display",
		why:     "real windows need a screen and this machine shows none",
		missing: lacksProgram("Xvfb"),
		packages: map[string][]string{
			"apt-get": {"xvfb", "libgl1-mesa-dri"},
			"dnf":     {"xorg-x11-server-Xvfb", "mesa-dri-drivers"},
			"zypper":  {"xorg-x11-server-Xvfb", "Mesa-dri"},
			"pacman":  {"xorg-server-xvfb", "mesa"},
		},
	},
	{
		what:    "a window manager",
		why:     "full screen and focus work only under one",
		missing: lacksProgram("openbox"),
		packages: map[string][]string{
			"apt-get": {"openbox"},
			"dnf":     {"openbox"},
			"zypper":  {"openbox"},
			"pacman":  {"openbox"},
		},
	},
}

func lacksProgram(name string) func(context.Context, *shop) bool {
	return func(context.Context, *shop) bool {
		_, err := exec.LookPath(name)
		return err != nil
	}
}

func lacksCompiler(ctx context.Context, s *shop) bool {
	return !s.compiles(ctx, "int main(void) { return 0; }\n")
}

// The headers and libraries that Fyne's window driver names.
const graphicsProbe = `#include <GL/gl.h>
#include <X11/Xlib.h>
#include <X11/XKBlib.h>
#include <X11/Xresource.h>
#include <X11/Xcursor/Xcursor.h>
#include <X11/extensions/XInput2.h>
#include <X11/extensions/Xinerama.h>
#include <X11/extensions/Xrandr.h>
int main(void) { return 0; }
`

var graphicsLibraries = []string{"-lGL", "-lX11", "-lXrandr", "-lXxf86vm", "-lXi", "-lXcursor", "-lXinerama"}

// lacksHeaders asks the compiler, since a package may be called anything. On
// macOS and Windows the headers come with the compiler.
func lacksHeaders(ctx context.Context, s *shop) bool {
	if runtime.GOOS == "darwin" || runtime.GOOS == "windows" {
		return false
	}
	if s.command(ctx, "pkg-config", "--exists", "gl").Run() != nil {
		return true
	}
	return !s.compiles(ctx, graphicsProbe, graphicsLibraries...)
}

// compiles tells whether Go's C compiler makes a program of the source.
func (s *shop) compiles(ctx context.Context, source string, libraries ...string) bool {
	dir, err := os.MkdirTemp("", "windlass-probe-")
	if err != nil {
		return false
	}
	defer os.RemoveAll(dir)
	file := filepath.Join(dir, "probe.c")
	if err := os.WriteFile(file, []byte(source), 0o600); err != nil {
		return false
	}
	cc := s.compiler(ctx)
	args := append(cc[1:], "-o", filepath.Join(dir, "probe"), file)
	return s.command(ctx, cc[0], append(args, libraries...)...).Run() == nil
}

// compiler asks Go, so that the probe and the build use the same one.
func (s *shop) compiler(ctx context.Context) []string {
	output, err := s.command(ctx, "go", "env", "CC").Output()
	if words := strings.Fields(string(output)); err == nil && len(words) > 0 {
		return words
	}
	return []string{"gcc"}
}
