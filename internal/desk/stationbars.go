package desk

import "windlass/internal/gym"

// want is what makes lifters need a station of their own.
type want struct {
	bar  string
	lift gym.LiftKey
}

// stationBars says which bar stands at each station: that of its lifters, else
// its own. Where lifters without a station want a bar that none has free, empty
// stations take it, the last first, as far as the gym owns that bar; and where many
// would share one bar while stations stand empty, those take it, too.
func (d *Desk) stationBars(c gym.Class, places int) []string {
	e := d.book.Equipment
	bars, taken := make([]string, len(e.Stations)), make([]int, len(e.Stations))
	for i, s := range e.Stations {
		bars[i] = s.Bar
	}
	waiting, lifters := map[want]int{}, map[string]int{}
	for _, l := range c.Lifters {
		if l.Lift == "" || l.Bar == "" {
			continue
		}
		lifters[l.Bar]++
		if l.Station < 0 || l.Station >= len(bars) {
			waiting[want{l.Bar, l.Lift}]++
			continue
		}
		bars[l.Station] = l.Bar
		taken[l.Station]++
	}
	need := needs(c, waiting, places)
	d.lendBars(bars, taken, need)
	d.evenOut(bars, taken, need, lifters)
	return bars
}

// needs counts, for each bar, the empty stations that lifters without one need.
func needs(c gym.Class, waiting map[want]int, places int) map[string]int {
	free := map[want]int{}
	seen := map[int]bool{}
	for _, l := range c.Lifters {
		if l.Station >= 0 && l.Lift != "" {
			w := want{l.Bar, l.Lift}
			if !seen[l.Station] {
				seen[l.Station], free[w] = true, free[w]+places
			}
			free[w]--
		}
	}
	need := map[string]int{}
	for w, n := range waiting {
		need[w.bar] += max(0, n-max(0, free[w])+places-1) / places
	}
	return need
}

// lendBars puts wanted bars at empty stations whose own bar nobody wants.
func (d *Desk) lendBars(bars []string, taken []int, need map[string]int) {
	have, out := map[string]int{}, map[string]int{}
	for i, bar := range bars {
		out[bar]++
		if taken[i] == 0 {
			have[bar]++
		}
	}
	for _, b := range d.book.Equipment.Bars {
		for i := len(bars) - 1; i >= 0 && have[b.Key] < need[b.Key] && out[b.Key] < b.Count; i-- {
			if own := bars[i]; taken[i] == 0 && own != b.Key && have[own] > need[own] {
				have[own]--
				out[own]--
				have[b.Key]++
				out[b.Key]++
				bars[i] = b.Key
			}
		}
	}
}

// evenOut puts bars at empty stations until no station more would lower the most
// lifters that share a bar.
func (d *Desk) evenOut(bars []string, taken []int, need, lifters map[string]int) {
	for range bars {
		stations, empty := map[string]int{}, map[string]int{}
		for i, bar := range bars {
			stations[bar]++
			if taken[i] == 0 {
				empty[bar]++
			}
		}
		crowd := func(bar string, more int) float64 {
			if lifters[bar] == 0 {
				return 0
			}
			return float64(lifters[bar]) / max(float64(stations[bar]+more), 0.1)
		}
		to := d.mostCrowded(stations, crowd)
		from, at := crowd(to, 0), -1
		for i := len(bars) - 1; i >= 0; i-- {
			spare := taken[i] == 0 && bars[i] != to && empty[bars[i]] > need[bars[i]]
			if after := crowd(bars[i], -1); to != "" && spare && after < from {
				from, at = after, i
			}
		}
		if at < 0 {
			return
		}
		bars[at] = to
	}
}

// mostCrowded is the bar that most lifters share, of those of which the gym has one
// more.
func (d *Desk) mostCrowded(stations map[string]int, crowd func(bar string, more int) float64) (most string) {
	for _, b := range d.book.Equipment.Bars {
		if stations[b.Key] < b.Count && crowd(b.Key, 0) > max(1, crowd(most, 0)) {
			most = b.Key
		}
	}
	return most
}
