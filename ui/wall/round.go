package wall

import "time"

// How long a page stands at least: somebody sees that it turned, finds their own
// name and reads their row. People read about 240 words a minute, a quarter of a
// second each (Brysbaert 2019, from memory): the names until one's own, then the
// six words of a row, and half a second for the eye to arrive.
const (
	settle  = 2 * time.Second
	perName = 250 * time.Millisecond
)

// Turn is how long a page stands at most, of several.
const Turn = 8 * time.Second

// longestWait is how long a lifter waits for their page at most, where the screen
// allows: half a minute, the time in which a bar is loaded (common practice, no
// source).
const longestWait = 30 * time.Second

// waitIn is how long a lifter may wait for their page in a rung: a third of it,
// which leaves the rest for loading the bar and lifting. Outside of a climb nobody
// lifts.
func waitIn(rung time.Duration) time.Duration {
	if rung == 0 {
		return longestWait
	}
	return min(longestWait, rung/3)
}

// standing is how long pages of so many lines stand: as long as a round may last,
// in proportion to what is to be read on each, but never less than that takes.
func standing(lines []int, round time.Duration) []time.Duration {
	stands, all := make([]time.Duration, len(lines)), time.Duration(0)
	for i, n := range lines {
		stands[i] = settle + time.Duration(n)*perName
		all += stands[i]
	}
	for i, least := range stands {
		if stretched := time.Duration(float64(least) * float64(round) / float64(all)); stretched > least {
			stands[i] = min(stretched, max(least, Turn)).Truncate(time.Millisecond)
		}
	}
	return stands
}

// roundTime is the time of all pages, one after the other; a single one needs none.
func roundTime(stands []time.Duration) time.Duration {
	if len(stands) < 2 {
		return 0
	}
	return sum(stands)
}

func sum(stands []time.Duration) (all time.Duration) {
	for _, s := range stands {
		all += s
	}
	return all
}

// turnAt is the page that stands so long after the first one came.
func turnAt(stands []time.Duration, since time.Duration) int {
	all := sum(stands)
	if len(stands) < 2 || all <= 0 {
		return 0
	}
	since = (since%all + all) % all
	for i, s := range stands {
		if since < s {
			return i
		}
		since -= s
	}
	return 0
}
