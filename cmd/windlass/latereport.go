package main

import (
	"fmt"
	"os"
	"slices"
	"strings"
	"time"
)

// drift is how far the clock of the wall and the one that only runs forward have
// gone apart.
func drift(began time.Time) time.Duration {
	now := time.Now()
	return now.Round(0).Sub(began.Round(0)) - now.Sub(began)
}

func (l *lateness) report(lifters int, drift time.Duration, load string) {
	var all []time.Duration
	for _, phase := range []string{classAlone, sheetRead, sheetComes, sheetLearnt, sheetBack} {
		fmt.Println(tell(phase, l.late[phase]))
		all = append(all, l.late[phase]...)
	}
	fmt.Println(tell("all", all))
	fmt.Println(tell("a result logged", l.verbs))
	fmt.Printf("%d lifters, %d seconds never shown, clocks apart by %s, load of the machine before and after: %s\n", lifters, l.missed, drift, load)
}

// tell names the percentiles of some durations.
func tell(what string, all []time.Duration) string {
	if len(all) == 0 {
		return fmt.Sprintf("%-20s none", what)
	}
	p := percentiles(all)
	return fmt.Sprintf("%-20s n %4d  p50 %.2f  p95 %.2f  p99 %.2f  p99.9 %.2f  max %.2f ms", what, len(all), p[0], p[1], p[2], p[3], p[4])
}

// percentiles returns p50, p95, p99, p99.9 and the largest, in milliseconds, each the
// nearest rank above.
func percentiles(all []time.Duration) []float64 {
	sorted := slices.Sorted(slices.Values(all))
	var ms []float64
	for _, perMille := range []int{500, 950, 990, 999, 1000} {
		rank := (perMille*len(sorted) + 999) / 1000
		ms = append(ms, float64(sorted[max(1, rank)-1])/float64(time.Millisecond))
	}
	return ms
}

// loadOfMachine is the load over the last minutes as Linux tells it.
func loadOfMachine() string {
	text, err := os.ReadFile("/proc/loadavg")
	if err != nil {
		return "unknown"
	}
	return strings.Join(strings.Fields(string(text))[:3], " ")
}
