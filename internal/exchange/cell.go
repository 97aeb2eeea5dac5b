package exchange

import (
	"fmt"
	"strconv"
	"strings"
	"time"

	"windlass/internal/day"
)

// blank reports whether a cell says nothing: unknown, and never zero.
func blank(cell string) bool {
	switch strings.ToLower(strings.TrimSpace(cell)) {
	case "", "-", "–", "—", "?", "n/a", "na":
		return true
	}
	return false
}

// DateOrder says how a date of three numbers is read.
type DateOrder string

// Without an order, a date that could be read in two ways is refused.
const (
	NoOrder    DateOrder = ""
	DayFirst   DateOrder = "day-first"
	MonthFirst DateOrder = "month-first"
)

// ParseDateOrder reads "day-first" or "month-first", also written dmy and mdy.
func ParseDateOrder(text string) (DateOrder, error) {
	switch strings.ToLower(strings.TrimSpace(text)) {
	case "":
		return NoOrder, nil
	case "day-first", "day", "dmy":
		return DayFirst, nil
	case "month-first", "month", "mdy":
		return MonthFirst, nil
	}
	return "", fmt.Errorf("read date order %q: it is not day-first or month-first", text)
}

// The grammar of a date; what follows a blank or a "T" after it is a time of day
// and is left out:
//
//	date   = year sep month sep day                  year of four digits
//	       | number sep number sep year              day and month as DateOrder says
//	       | day month-name year | month-name day year
//	       | days                                    in a workbook, since its epoch
//	sep    = "-" | "/" | "."
//	year   = four digits | two digits                of this century
//	month-name = three letters or more of an English month
//
// With no order given, day and month are told apart by one of them being over 12
// or by both being the same.
func parseDate(text string, order DateOrder, epoch day.Date) (day.Date, error) {
	text = strings.TrimSpace(text)
	if epoch != day.None {
		if days, err := strconv.ParseFloat(text, 64); err == nil {
			return serialDate(text, days, epoch)
		}
	}
	parts := strings.FieldsFunc(withoutTime(text), func(r rune) bool { return strings.ContainsRune("-/., \u00a0", r) })
	if len(parts) < 3 {
		return notDate(text)
	}
	if len(parts[0]) == 4 && number(parts[0]) >= 0 { // and not June or July
		return civil(text, parts[0], parts[1], parts[2])
	}
	if d, m, ok := withName(parts[0], parts[1]); ok {
		return civil(text, parts[2], m, d)
	}
	dayPart, monthPart, err := inOrder(text, parts[0], parts[1], order)
	if err != nil {
		return day.None, err
	}
	return civil(text, parts[2], monthPart, dayPart)
}

// withoutTime cuts a date before a "T" between digits: OCT has one too.
func withoutTime(text string) string {
	at := strings.IndexByte(text, 'T')
	if at > 0 && at+1 < len(text) && number(text[at-1:at]) >= 0 && number(text[at+1:at+2]) >= 0 {
		return text[:at]
	}
	return text
}

// serialDate reads the days that a workbook counts, up to the end of this century.
func serialDate(text string, days float64, epoch day.Date) (day.Date, error) {
	return believable(text, epoch.Add(int(min(max(days, 0), 1e6))))
}

// believable refuses what is no date of a gym: package day knows none before 1970.
func believable(text string, d day.Date) (day.Date, error) {
	switch {
	case d < day.Of(1970, 1, 1):
		return day.None, fmt.Errorf("%q is before 1970; check the year, or leave the cell blank", text)
	case d > day.Of(2100, 1, 1):
		return notDate(text)
	}
	return d, nil
}

// withName finds a month's name among two parts, and returns the day and the
// month's number.
func withName(a, b string) (dayPart, monthPart string, ok bool) {
	if m, ok := monthNamed(b); ok {
		return strings.TrimRight(strings.ToLower(a), "stndrh"), m, true
	}
	if m, ok := monthNamed(a); ok {
		return strings.TrimRight(strings.ToLower(b), "stndrh"), m, true
	}
	return "", "", false
}

func monthNamed(text string) (number string, ok bool) {
	text = strings.ToLower(text)
	for m := time.January; m <= time.December && len(text) >= 3; m++ {
		if strings.HasPrefix(strings.ToLower(m.String()), text) {
			return strconv.Itoa(int(m)), true
		}
	}
	return "", false
}

func inOrder(text, first, second string, order DateOrder) (dayPart, monthPart string, err error) {
	switch a, b := number(first), number(second); {
	case order == DayFirst:
		return first, second, nil
	case order == MonthFirst:
		return second, first, nil
	case a > 12 || a == b:
		return first, second, nil
	case b > 12:
		return second, first, nil
	}
	return "", "", fmt.Errorf("the date %q can be read in two ways; write 2026-03-09, or say whether the day or the month is first", text)
}

// number reads a whole number, and -1 for what is none.
func number(text string) int {
	n, err := strconv.Atoi(text)
	if err != nil || strings.ContainsAny(text, "+-") {
		return -1
	}
	return n
}

// civil makes a date of its parts and refuses one that no calendar has.
func civil(text, yearPart, monthPart, dayPart string) (day.Date, error) {
	y, m, d := number(yearPart), number(monthPart), number(dayPart)
	if len(yearPart) == 2 && y >= 0 {
		y += 2000
	}
	if y < 1900 || y > 2200 || m < 1 || m > 12 || d < 1 {
		return notDate(text)
	}
	date := day.Of(y, time.Month(m), d)
	if date.Time().Day() != d {
		return notDate(text)
	}
	return believable(text, date)
}

func notDate(text string) (day.Date, error) {
	return day.None, fmt.Errorf("%q is not a date; write one like 2026-03-09", text)
}

// word finds the one of some words that a cell says, in any case, or says which
// there are.
func word[T ~string](text string, known map[string]T, choices string) (T, error) {
	if w, ok := known[strings.ToLower(strings.TrimSpace(text))]; ok {
		return w, nil
	}
	return "", fmt.Errorf("%q is not %s", text, choices)
}
