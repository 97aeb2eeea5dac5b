// Package day holds civil dates: a day on the gym's wall calendar, with no hour
// and no time zone.
//
// Most callers need [Parse] and [Date.Add]. Dates compare with the operators of
// whole numbers: an earlier day is less. The package promises ISO 8601's text and
// weekdays. It never asks what day it is.
package day

import (
	"fmt"
	"time"
)

// Date is a day counted from 1 January 1970, which is day 1 so that the zero
// value can mean "no date".
type Date int32

// None is the absence of a date.
const None Date = 0

// Of returns the date of a calendar day; out-of-range months and days carry
// over as time.Date does.
func Of(year int, month time.Month, dayOfMonth int) Date {
	return Date(time.Date(year, month, dayOfMonth, 0, 0, 0, 0, time.UTC).Unix()/86400) + 1
}

// From returns the calendar day of t in t's own zone.
func From(t time.Time) Date { return Of(t.Year(), t.Month(), t.Day()) }

// Parse reads an ISO 8601 calendar date from 1970 on, "2026-03-09". An earlier
// one is a slip of the hand, and the day before 1970 would mean [None].
func Parse(text string) (Date, error) {
	t, err := time.Parse(time.DateOnly, text)
	if err != nil {
		return None, fmt.Errorf("read date %q: it is not a day; write year-month-day, as in 2026-03-09", text)
	}
	if t.Year() < 1970 {
		return None, fmt.Errorf("read date %q: it is before 1970; write the year in full, as in 2026-03-09", text)
	}
	return From(t), nil
}

// Time returns midnight of d in UTC, for formatting and arithmetic.
func (d Date) Time() time.Time { return time.Unix((int64(d)-1)*86400, 0).UTC() }

// String writes d as ISO 8601, and nothing for [None].
func (d Date) String() string {
	if d == None {
		return ""
	}
	return d.Time().Format(time.DateOnly)
}

// Short writes d for a table, as in "9 Mar".
func (d Date) Short() string { return d.format("2 Jan") }

// Long writes d for a heading, as in "Monday 9 March 2026".
func (d Date) Long() string { return d.format("Monday 2 January 2006") }

func (d Date) format(layout string) string {
	if d == None {
		return ""
	}
	return d.Time().Format(layout)
}

// Add returns the date n days later; n may be negative.
func (d Date) Add(n int) Date { return d + Date(n) }

// Since returns the number of days from e to d.
func (d Date) Since(e Date) int { return int(d - e) }

// Weekday returns the day of the week.
func (d Date) Weekday() Weekday { return Weekday((d.Time().Weekday() + 6) % 7) }

// At returns the instant of a time of day on d in the given zone.
func (d Date) At(c Clock, zone *time.Location) time.Time {
	t := d.Time()
	return time.Date(t.Year(), t.Month(), t.Day(), c.Hour(), c.Minute(), 0, 0, zone)
}
