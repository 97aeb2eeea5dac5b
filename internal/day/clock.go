package day

import (
	"fmt"
	"time"
)

// Clock is a time of day in minutes since midnight, 0 to 1439.
type Clock int

// ClockOf returns the time of day of hour and minute.
func ClockOf(hour, minute int) Clock { return Clock(hour*60 + minute) }

// ParseClock reads a 24-hour time such as "17:30" or "6:15".
func ParseClock(text string) (Clock, error) {
	t, err := time.Parse("15:04", text)
	if err != nil {
		return 0, fmt.Errorf("read time %q: it is not an hour of the day; write one like 17:30", text)
	}
	return ClockOf(t.Hour(), t.Minute()), nil
}

// Hour returns the hour, 0 to 23.
func (c Clock) Hour() int { return int(c) / 60 }

// Minute returns the minute, 0 to 59.
func (c Clock) Minute() int { return int(c) % 60 }

// String writes c as "17:30".
func (c Clock) String() string { return fmt.Sprintf("%02d:%02d", c.Hour(), c.Minute()) }
