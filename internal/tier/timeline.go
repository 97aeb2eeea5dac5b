package tier

import "windlass/internal/day"

// timeline is an athlete's time with what other pairs tell of the form.
type timeline struct {
	*person
	habits Habits
	gauss  gauss // of the form
}

func (t *timeline) between(from, to day.Date) span {
	s := t.days.between(from, to)
	s.form, s.doubt, s.told = t.change(from, to)
	return s
}

// change returns how the form changed between two days. Beyond the last stretch it
// goes on as an unknown athlete's would.
func (t *timeline) change(from, to day.Date) (mean, variance float64, told bool) {
	i, j := t.person.form.of(from), t.person.form.of(to)
	if last := t.last(); to > last {
		variance = t.habits.wander(t.days.between(max(from, last), to))
	}
	if i != j {
		mean = t.gauss.mean[j] - t.gauss.mean[i]
		variance += t.gauss.variance(i, j)
	}
	return mean, variance, true
}

func (t *timeline) last() day.Date {
	if n := len(t.days.days); n > 0 {
		return t.days.days[n-1]
	}
	return day.None
}
