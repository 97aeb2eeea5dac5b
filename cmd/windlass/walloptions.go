package main

import (
	"fmt"
	"math"
	"strings"

	"fyne.io/fyne/v2"
)

// plain reports whether the wall is a window of a given size, for pictures.
func (o options) plain() bool { return o.size != "" }

// wallSize is the size of the wall's window, and the height in millimetres of the
// screen that it stands for, 0 where nobody says.
func (o options) wallSize() (size fyne.Size, millimetres float64) {
	if !o.plain() {
		return fyne.NewSize(960, 540), 0
	}
	var inches float64
	_, _ = fmt.Sscanf(o.size, "%fx%f@%f", &size.Width, &size.Height, &inches) // parseOptions has checked it
	return size, inches * 25.4 * float64(size.Height) / math.Hypot(float64(size.Width), float64(size.Height))
}

// checkSize says what is wrong with the size of a wall.
//
//	size = width "x" height [ "@" inches ]
func checkSize(text string) error {
	var w, h, inches float32
	n, _ := fmt.Sscanf(text, "%fx%f@%f", &w, &h, &inches)
	if text == "" || n >= 2 && w >= 200 && h >= 200 && (n == 2) != strings.Contains(text, "@") {
		return nil
	}
	return fmt.Errorf("open windlass: %q is no size of a wall; write it as 1920x1080, or 1920x1080@65 for a screen of 65 inches", text)
}
