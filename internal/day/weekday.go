package day

import (
	"fmt"
	"strings"
)

// Weekday is a day of the week, Monday 0 to Sunday 6.
type Weekday int

// The days of the week, in ISO 8601's order.
const (
	Monday Weekday = iota
	Tuesday
	Wednesday
	Thursday
	Friday
	Saturday
	Sunday
)

var weekdayNames = [7]string{"Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"}

// String returns the English name.
func (w Weekday) String() string { return weekdayNames[((w%7)+7)%7] }

// Short returns the first three letters, as in "Mon".
func (w Weekday) Short() string { return w.String()[:3] }

// ParseWeekday reads a weekday's name or any beginning of it of two letters or
// more, in any case.
func ParseWeekday(text string) (Weekday, error) {
	t := strings.ToLower(strings.TrimSpace(text))
	for i, name := range weekdayNames {
		if len(t) >= 2 && strings.HasPrefix(strings.ToLower(name), t) {
			return Weekday(i), nil
		}
	}
	return 0, fmt.Errorf("read weekday %q: it is none; write one like mon or Thursday", text)
}

// Weekdays is a set of days of the week; the zero value is empty.
type Weekdays uint8

// WeekdaysOf returns the set of the given days; what is no day of the week is
// left out.
func WeekdaysOf(days ...Weekday) Weekdays {
	var s Weekdays
	for _, d := range days {
		if d >= Monday && d <= Sunday {
			s |= 1 << d
		}
	}
	return s
}

// ParseWeekdays reads a list such as "mon,tue,thu"; an empty text is the empty set.
func ParseWeekdays(text string) (Weekdays, error) {
	var s Weekdays
	for part := range strings.FieldsFuncSeq(text, func(r rune) bool { return r == ',' || r == ' ' || r == ';' }) {
		w, err := ParseWeekday(part)
		if err != nil {
			return 0, err
		}
		s |= WeekdaysOf(w)
	}
	return s, nil
}

// Has reports whether w is in the set.
func (s Weekdays) Has(w Weekday) bool { return s&WeekdaysOf(w) != 0 }

// List returns the days of the set in order.
func (s Weekdays) List() []Weekday {
	var days []Weekday
	for w := Monday; w <= Sunday; w++ {
		if s.Has(w) {
			days = append(days, w)
		}
	}
	return days
}

// Len returns the number of days in the set.
func (s Weekdays) Len() int { return len(s.List()) }

// String writes the set as "Mon, Tue, Thu".
func (s Weekdays) String() string {
	var names []string
	for _, d := range s.List() {
		names = append(names, d.Short())
	}
	return strings.Join(names, ", ")
}
