//go:build !linux && !windows

package main

import "fyne.io/fyne/v2"

// monitors is known on Linux and Windows only.
func monitors() ([]monitor, error) { return nil, errFixed }

func moveTo(fyne.Window, int, int) error { return errFixed }

func windowMonitor(fyne.Window, []monitor) (monitor, bool) { return monitor{}, false }
