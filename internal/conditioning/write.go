package conditioning

import (
	"fmt"
	"strconv"
	"strings"

	"windlass/internal/gym"
	"windlass/internal/mass"
)

// Format writes a workout in the one line that [Parse] reads. find tells what a
// movement is counted in; nil leaves metres and calories bare.
func Format(w gym.Workout, find Find) string {
	if w.Empty() {
		return ""
	}
	items := make([]string, len(w.Items))
	for i, item := range w.Items {
		items[i] = formatItem(item, find)
	}
	return Head(w) + ": " + strings.Join(items, ", ")
}

// Head writes what a workout is without its movements: "for time 21-15-9 cap
// 10:00".
func Head(w gym.Workout) string {
	var b strings.Builder
	switch w.Format {
	case gym.AMRAP, gym.EMOM:
		fmt.Fprintf(&b, "%s %s", w.Format, clock(w.Seconds))
	case gym.ForTime:
		b.WriteString("for time " + passes(w))
	case gym.Intervals:
		fmt.Fprintf(&b, "intervals %d x %s", w.Rounds, clock(w.Work))
	case gym.PlainSets:
		fmt.Fprintf(&b, "sets %d", w.Rounds)
	default:
		b.WriteString(string(w.Format))
	}
	if w.Rest > 0 {
		b.WriteString(" rest " + clock(w.Rest))
	}
	if w.Cap > 0 {
		b.WriteString(" cap " + clock(w.Cap))
	}
	return b.String()
}

func passes(w gym.Workout) string {
	if len(w.Reps) == 0 {
		return strconv.Itoa(w.Rounds) + " rounds"
	}
	reps := make([]string, len(w.Reps))
	for i, n := range w.Reps {
		reps[i] = strconv.Itoa(n)
	}
	return strings.Join(reps, "-")
}

func formatItem(item gym.Item, find Find) string {
	if item.Movement == "" {
		return "rest"
	}
	text := string(item.Movement)
	if item.Amount > 0 {
		text = strconv.Itoa(item.Amount) + unitOf(item.Movement, find) + " " + text
	}
	if len(item.Loads) > 0 {
		text += " @"
	}
	for _, standard := range []gym.Standard{gym.StandardM, gym.StandardW} {
		if t, ok := item.Loads[standard]; ok {
			text += fmt.Sprintf(" %s %s/%s/%s", standard, exact(t.Full), exact(t.Mid), exact(t.Light))
		}
	}
	return text
}

func unitOf(key gym.MovementKey, find Find) string {
	if find == nil {
		return ""
	}
	m, _ := find(string(key))
	for _, u := range units {
		if u.measure == m.Measure {
			return u.mark
		}
	}
	return ""
}

// exact writes a load in the unit that gives it back to the last digit.
func exact(m mass.Mass) string {
	unit := mass.KG
	if back, _, err := mass.Parse(m.In(mass.LB), mass.LB); err == nil && back == m {
		unit = mass.LB
	}
	if back, _, err := mass.Parse(m.In(mass.KG), mass.KG); err == nil && back == m {
		unit = mass.KG
	}
	return m.Digits(unit) + string(unit)
}

// clock writes seconds as minutes and seconds, or with hours from one on.
func clock(seconds int) string {
	if seconds < 3600 {
		return fmt.Sprintf("%d:%02d", seconds/60, seconds%60)
	}
	return fmt.Sprintf("%d:%02d:%02d", seconds/3600, seconds/60%60, seconds%60)
}

// parseClock reads minutes and seconds, with hours before them where there are
// two colons. Minutes may be over 59 where they come first.
func parseClock(text string) (int, bool) {
	parts := strings.Split(text, ":")
	if len(parts) < 2 || len(parts) > 3 {
		return 0, false
	}
	total := 0
	for i, p := range parts {
		n, err := strconv.Atoi(p)
		if err != nil || strings.Trim(p, "0123456789") != "" || len(p) > 3 || (i > 0 && (len(p) != 2 || n > 59)) {
			return 0, false
		}
		total = total*60 + n
	}
	return total, true
}
