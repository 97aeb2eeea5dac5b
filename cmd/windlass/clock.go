package main

import (
	"fmt"
	"strconv"
	"strings"
	"time"
)

// pace is a clock that may run faster than the real one, for the tour: it shows
// start plus speed times what has passed since real.
type pace struct {
	start, real time.Time
	speed       float64
}

// now returns what the clock shows. At speed 1 without a start it is the real
// clock, with its monotonic reading.
func (p pace) now() time.Time {
	if p.speed == 0 {
		return time.Now()
	}
	return p.start.Add(time.Duration(p.speed * float64(time.Since(p.real))))
}

// String writes p so that another process can take it up; parsePace reads it.
func (p pace) String() string {
	if p.speed == 0 {
		return ""
	}
	return fmt.Sprintf("%d,%d,%g", p.start.UnixNano(), p.real.UnixNano(), p.speed)
}

// parsePace reads a pace.
//
//	pace = "" | start "," real "," speed
//
// start and real are nanoseconds since 1970.
func parsePace(text string) (pace, error) {
	if text == "" {
		return pace{}, nil
	}
	parts := strings.Split(text, ",")
	if len(parts) != 3 {
		return pace{}, fmt.Errorf("read pace %q: it wants start, real and speed", text)
	}
	start, err1 := strconv.ParseInt(parts[0], 10, 64)
	real, err2 := strconv.ParseInt(parts[1], 10, 64)
	speed, err3 := strconv.ParseFloat(parts[2], 64)
	if err1 != nil || err2 != nil || err3 != nil || speed <= 0 {
		return pace{}, fmt.Errorf("read pace %q: start and real are whole numbers, speed is over nothing", text)
	}
	return pace{start: time.Unix(0, start), real: time.Unix(0, real), speed: speed}, nil
}
