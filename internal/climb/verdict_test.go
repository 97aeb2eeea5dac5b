package climb_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"windlass/internal/climb"
	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// Heavy line 90 % of 140 kg is 126 kg. Common practice, no source.
func TestJudge(t *testing.T) {
	for _, row := range []struct {
		name   string
		load   float64
		record float64
		source gym.Source
		grade  climb.Grade
		raises bool
		why    string
	}{
		{"under", 125, 140, gym.Tested, climb.Under, false, "125 kg is 89.3 % of the record of 140 kg: under the heavy line of 90 %; the record stays."},
		{"on the line", 126, 140, gym.Tested, climb.Heavy, false, "126 kg is 90.0 % of the record of 140 kg: a heavy day; the record stays."},
		{"tie", 140, 140, gym.Reported, climb.Heavy, false, "140 kg is 100.0 % of the record of 140 kg: a heavy day that ties the record, which stays."},
		{"record by a change plate", 140.5, 140, gym.Tested, climb.Record, true, "140.5 kg is 100.4 % of the record of 140 kg: the record rises."},
		{"first", 60, 0, "", climb.Record, true, "60 kg is the first result: it becomes the record."},
		{"under an estimate", 80, 100, gym.Estimate, climb.Record, true, "80 kg is 80.0 % of the estimate of 100 kg, and the first result: it becomes the record."},
		{"over an estimate", 105, 100, gym.Estimate, climb.Record, true, "105 kg is 105.0 % of the estimate of 100 kg, and the first result: it becomes the record."},
	} {
		v := climb.Judge(kg(row.load), kg(row.record), row.source, 90, mass.KG)
		assert.Equal(t, row.grade, v.Grade, row.name)
		assert.Equal(t, row.raises, v.Raises, row.name)
		assert.Equal(t, row.why, v.Why, row.name)
	}
}

func TestJudgeInPounds(t *testing.T) {
	v := climb.Judge(230*mass.Pound, 225*mass.Pound, gym.Tested, 90, mass.LB)
	assert.Equal(t, "230 lb is 102.2 % of the record of 225 lb: the record rises.", v.Why)
}

// 16 weeks and 5 % are common practice, no source.
func TestStaleBase(t *testing.T) {
	const today = day.Date(1000)
	for _, row := range []struct {
		name       string
		on, backOn day.Date
		want       climb.Stale
		stale      bool
		why        string
	}{
		{"fresh", 900, day.None, climb.Stale{}, false, ""},
		{"16 weeks to the day", 888, day.None, climb.Stale{}, false, ""},
		{"a day more", 887, day.None, climb.Stale{Weeks: 16, Lowered: kg(95)}, true, "It is 16 weeks old: climb from 95 kg, 5 % less?"},
		{"lifted before the break", 950, 960, climb.Stale{Weeks: 7, Break: true, Lowered: kg(95)}, true, "It is older than the break: climb from 95 kg, 5 % less?"},
		{"lifted on the day of coming back", 960, 960, climb.Stale{}, false, ""},
		{"back only tomorrow", 950, 1001, climb.Stale{}, false, ""},
		{"no date", day.None, 960, climb.Stale{}, false, ""},
	} {
		s, ok := climb.StaleBase(kg(100), row.on, row.backOn, today)
		assert.Equal(t, row.stale, ok, row.name)
		assert.Equal(t, row.want, s, row.name)
		if ok {
			assert.Equal(t, row.why, s.Why(mass.KG), row.name)
		}
	}
}
