package kit

import (
	"time"

	"windlass/internal/day"
)

// mostTicks is how many dates a time axis names; more would stand too close.
const mostTicks = 6

// dateStep is a regular distance between dates: so many days, or so many months.
type dateStep struct{ days, months int }

// dateSteps are the distances that a reader counts easily, the shortest first.
var dateSteps = []dateStep{{1, 0}, {2, 0}, {7, 0}, {14, 0}, {0, 1}, {0, 2}, {0, 3}, {0, 6}, {0, 12}, {0, 24}, {0, 60}, {0, 120}}

// DateTicks names dates along an axis between two days, both counted in: days,
// then weeks, then first days of months, as close as can be read. The first has
// its year, and so has every one that begins a new year. There is always one, for
// an axis without a date says nothing.
func DateTicks(from, to day.Date) []PlotTick {
	if from == day.None || to < from {
		return nil
	}
	var dates []day.Date
	for _, step := range dateSteps {
		if dates = step.between(from, to); len(dates) <= mostTicks && len(dates) > 0 {
			break
		}
	}
	ticks := make([]PlotTick, 0, len(dates))
	for i, on := range dates {
		ticks = append(ticks, PlotTick{X: float64(on), Label: dateLabel(on, i == 0 || on.Time().Year() != dates[i-1].Time().Year())})
	}
	return ticks
}

// between returns the dates of the step from a day to another. Days are counted
// from the first day, months from the first of a January.
func (s dateStep) between(from, to day.Date) []day.Date {
	var dates []day.Date
	if s.days > 0 {
		for on := from; on <= to && len(dates) <= mostTicks; on = on.Add(s.days) {
			dates = append(dates, on)
		}
		return dates
	}
	first := from.Time()
	for m := time.Date(first.Year(), 1, 1, 0, 0, 0, 0, time.UTC); day.From(m) <= to && len(dates) <= mostTicks; m = m.AddDate(0, s.months, 0) {
		if on := day.From(m); on >= from {
			dates = append(dates, on)
		}
	}
	return dates
}

// dateLabel writes a date so that no month reads as a day.
func dateLabel(on day.Date, year bool) string {
	layout := "2 Jan"
	if year {
		layout = "2 Jan 2006"
	}
	return on.Time().Format(layout)
}
