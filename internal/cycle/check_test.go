package cycle_test

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/gym"
)

// planted is a good cycle of one track in which a test breaks something.
type planted struct {
	t     *testing.T
	book  *gym.Book
	cycle gym.Cycle
	track gym.ID
}

func (p *planted) plan() *gym.TrackPlan { return &p.cycle.Tracks[0] }

// edit changes one day by way of Copy and Put.
func (p *planted) edit(week int, on day.Weekday, change func(*gym.DayPlan)) {
	d := cycle.Copy(p.cycle, cycle.At{Track: p.track, Week: week, Weekday: on})
	change(&d)
	c, err := cycle.Put(p.cycle, p.track, d, nil)
	require.NoError(p.t, err)
	p.cycle = c
}

func (p *planted) move(week int, from, to day.Weekday) {
	c, err := cycle.Move(p.cycle, cycle.At{Track: p.track, Week: week, Weekday: from}, cycle.At{Track: p.track, Week: week, Weekday: to}, nil)
	require.NoError(p.t, err)
	p.cycle = c
}

// lift changes the gym's own entry of a lift.
func (p *planted) lift(key gym.LiftKey, change func(*gym.Lift)) {
	p.book.Lifts = slices.Clone(p.book.Lifts)
	i := slices.IndexFunc(p.book.Lifts, func(l gym.Lift) bool { return l.Key == key })
	require.GreaterOrEqual(p.t, i, 0)
	change(&p.book.Lifts[i])
}

// Parts that break no rule on the days on which they are planted.
var (
	running   = gym.Workout{Format: gym.ForTime, Rounds: 4, Items: []gym.Item{{Movement: "run", Amount: 400}}}
	yokes     = gym.SecondLift{Lift: "yoke-walk", Sets: 3, Reps: 1, Percent: 70, OfReps: 1}
	romanians = gym.SecondLift{Lift: "romanian-deadlift", Sets: 3, Reps: 5, Percent: 80, OfReps: 5}
)

// where is a breach without its sentences.
type where struct {
	rule cycle.Rule
	week int
	on   day.Weekday
}

// Each breach planted alone in a built-in track is found, and nothing else is.
func TestCheckFindsEachPlantedBreach(t *testing.T) {
	const no = cycle.NoWeekday
	for _, test := range []struct {
		name  string
		track gym.ID // powerlifting when empty
		plant func(*planted)
		want  []where
	}{
		{
			name: "two upper-body days side by side",
			plant: func(p *planted) {
				p.plan().MainDays = 5
				p.edit(2, day.Tuesday, func(d *gym.DayPlan) { d.Workout = running })
				p.edit(2, day.Wednesday, func(d *gym.DayPlan) {
					d.Kind, d.Main, d.Second = gym.MainDay, gym.MainLift{Lift: "incline-bench-press", Reps: 1}, yokes
				})
			},
			want: []where{{cycle.RuleNeighbours, 2, day.Wednesday}},
		},
		{
			name: "neighbours over the end of a week",
			plant: func(p *planted) {
				p.plan().MainDays = 5
				p.edit(4, day.Monday, func(d *gym.DayPlan) {
					d.Week, d.Weekday, d.Title, d.Workout = 3, day.Sunday, "Extra squat", running
				})
			},
			want: []where{{cycle.RuleNeighbours, 4, day.Monday}},
		},
		{
			name: "heavy lower-body days 48 hours apart",
			plant: func(p *planted) {
				p.move(2, day.Thursday, day.Wednesday)
				p.edit(2, day.Friday, func(d *gym.DayPlan) { d.Second = yokes })
			},
			want: []where{{cycle.RuleRecovery, 2, day.Wednesday}},
		},
		{
			name: "a lighter lower-body day 48 hours away is fine, but then the lower body waits 4 days",
			plant: func(p *planted) {
				p.move(2, day.Thursday, day.Wednesday)
				p.edit(2, day.Wednesday, func(d *gym.DayPlan) { d.Main.Scheme = []gym.Sets{{Percent: 80, Sets: 3, Reps: 5}} })
			},
			want: []where{{cycle.RuleFrequency, 3, day.Monday}},
		},
		{
			name: "a second lift that loads what the day before loaded",
			plant: func(p *planted) {
				p.edit(2, day.Tuesday, func(d *gym.DayPlan) { d.Second.Lift = "romanian-deadlift" })
			},
			want: []where{{cycle.RuleRecovery, 2, day.Tuesday}},
		},
		{
			name: "a second lift after a technique day, the day after squats", track: "weightlifting",
			plant: func(p *planted) {
				p.edit(2, day.Saturday, func(d *gym.DayPlan) { d.Second = romanians })
			},
			want: []where{{cycle.RuleRecovery, 2, day.Saturday}},
		},
		{
			name: "two heavy whole-body days side by side, and the squats they push together", track: "weightlifting",
			plant: func(p *planted) { p.move(2, day.Thursday, day.Tuesday) },
			want:  []where{{cycle.RuleNeighbours, 2, day.Tuesday}, {cycle.RuleNeighbours, 2, day.Friday}},
		},
		{
			name: "the upper body waits a week",
			plant: func(p *planted) {
				p.edit(3, day.Tuesday, func(d *gym.DayPlan) { *d = gym.DayPlan{Week: 3, Weekday: day.Tuesday, Kind: gym.RestDay} })
				p.edit(4, day.Tuesday, func(d *gym.DayPlan) { *d = gym.DayPlan{Week: 4, Weekday: day.Tuesday, Kind: gym.RestDay} })
			},
			want: []where{{cycle.RuleFrequency, 3, day.Friday}, {cycle.RuleFrequency, 4, day.Friday}},
		},
		{
			name: "a week with one session",
			plant: func(p *planted) {
				for _, on := range []day.Weekday{day.Monday, day.Tuesday, day.Friday} {
					p.edit(12, on, func(d *gym.DayPlan) { d.Kind = gym.RecoveryDay })
					p.edit(3, on, func(d *gym.DayPlan) { d.Kind = gym.RecoveryDay })
				}
			},
			want: []where{{cycle.RuleFrequency, 3, no}},
		},
		{
			name: "a week with no main day",
			plant: func(p *planted) {
				p.plan().Days = slices.DeleteFunc(slices.Clone(p.plan().Days), func(d gym.DayPlan) bool { return d.Week == 3 })
			},
			want: []where{{cycle.RuleFrequency, 3, no}, {cycle.RuleFrequency, 4, day.Monday}, {cycle.RuleFrequency, 4, day.Tuesday}},
		},
		{
			name: "days of no known kind, and a rest day with work in it",
			plant: func(p *planted) {
				p.edit(1, day.Wednesday, func(d *gym.DayPlan) { d.Kind = "odd" })
				p.edit(1, day.Saturday, func(d *gym.DayPlan) { d.Kind = gym.RestDay })
			},
			want: []where{{cycle.RuleKind, 1, day.Wednesday}, {cycle.RuleKind, 1, day.Saturday}},
		},
		{
			name: "a track twice",
			plant: func(p *planted) {
				p.cycle.Tracks = append(slices.Clone(p.cycle.Tracks), p.cycle.Tracks[0])
			},
			want: []where{{cycle.RulePlace, 0, no}},
		},
		{
			name:  "a week of no known kind",
			plant: func(p *planted) { p.cycle.Weeks = slices.Replace(slices.Clone(p.cycle.Weeks), 1, 2, "odd") },
			want:  []where{{cycle.RuleKind, 0, no}},
		},
		{
			name: "swings the day before the deadlift",
			plant: func(p *planted) {
				p.edit(5, day.Wednesday, func(d *gym.DayPlan) { d.Workout.Items[0].Movement = "kettlebell-swing" })
			},
			want: []where{{cycle.RulePreTires, 5, day.Wednesday}},
		},
		{
			name: "a minute of rest is no movement",
			plant: func(p *planted) {
				p.edit(5, day.Monday, func(d *gym.DayPlan) {
					d.Workout = gym.Workout{Format: gym.EMOM, Seconds: 600, Items: []gym.Item{{Movement: "run", Amount: 100}, {}}}
				})
			},
		},
		{
			name: "thrusters share the press's pattern",
			plant: func(p *planted) {
				p.edit(5, day.Thursday, func(d *gym.DayPlan) { d.Workout.Items[0].Movement = "barbell-thruster" })
			},
			want: []where{{cycle.RulePreTires, 5, day.Thursday}},
		},
		{
			name: "running never pre-tires",
			plant: func(p *planted) {
				p.edit(5, day.Wednesday, func(d *gym.DayPlan) { d.Workout.Items[0].Movement = "run" })
			},
		},
		{
			name: "bench press never climbs to a 3RM",
			plant: func(p *planted) {
				for _, d := range p.plan().Days {
					if d.Main.Lift == "bench-press" && d.Main.Reps == 3 {
						p.edit(d.Week, d.Weekday, func(d *gym.DayPlan) { d.Main.Reps = 5 })
					}
				}
			},
			want: []where{{cycle.RuleMissingReps, 1, day.Tuesday}},
		},
		{
			name: "one rep count for all lifts of a week",
			plant: func(p *planted) {
				for _, on := range []day.Weekday{day.Monday, day.Tuesday, day.Thursday, day.Friday} {
					p.edit(6, on, func(d *gym.DayPlan) { d.Main.Reps = 3 })
				}
			},
			want: []where{{cycle.RuleSameReps, 6, day.Monday}},
		},
		{
			name: "one rep count a week is wanted",
			plant: func(p *planted) {
				p.plan().SameReps = true
				for _, on := range []day.Weekday{day.Monday, day.Tuesday, day.Thursday, day.Friday} {
					p.edit(6, on, func(d *gym.DayPlan) { d.Main.Reps = 3 })
				}
			},
		},
		{
			name:  "no test week",
			plant: func(p *planted) { p.cycle.Weeks = append(slices.Clone(p.cycle.Weeks[:11]), gym.TrainingWeek) },
			want: []where{
				{cycle.RuleTestWeek, 0, no},
				{cycle.RuleEmptyPart, 12, day.Monday},
				{cycle.RuleEmptyPart, 12, day.Monday},
				{cycle.RuleSameReps, 12, day.Monday},
				{cycle.RuleEmptyPart, 12, day.Tuesday},
				{cycle.RuleEmptyPart, 12, day.Tuesday},
				{cycle.RuleEmptyPart, 12, day.Thursday},
				{cycle.RuleEmptyPart, 12, day.Thursday},
				{cycle.RuleEmptyPart, 12, day.Friday},
				{cycle.RuleEmptyPart, 12, day.Friday},
			},
		},
		{
			name: "a test week that tests nothing",
			plant: func(p *planted) {
				p.plan().Days = slices.DeleteFunc(slices.Clone(p.plan().Days), func(d gym.DayPlan) bool { return d.Week == 12 })
			},
			want: []where{{cycle.RuleTestWeek, 12, no}},
		},
		{
			name: "more main days than promised",
			plant: func(p *planted) {
				p.edit(7, day.Friday, func(d *gym.DayPlan) { d.Workout = running })
				p.edit(7, day.Saturday, func(d *gym.DayPlan) {
					d.Kind, d.Main, d.Second = gym.MainDay, gym.MainLift{Lift: "yoke-walk", Reps: 1}, romanians
				})
			},
			want: []where{{cycle.RuleMainDays, 7, no}},
		},
		{
			name:  "a climb in a light week",
			plant: func(p *planted) { p.cycle.Weeks = slices.Replace(slices.Clone(p.cycle.Weeks), 10, 11, gym.LightWeek) },
			want: []where{
				{cycle.RuleLightWeek, 11, day.Monday},
				{cycle.RuleLightWeek, 11, day.Tuesday},
				{cycle.RuleLightWeek, 11, day.Thursday},
				{cycle.RuleLightWeek, 11, day.Friday},
			},
		},
		{
			name: "parts left empty",
			plant: func(p *planted) {
				p.edit(1, day.Monday, func(d *gym.DayPlan) { d.WarmUp = nil })
				p.edit(1, day.Tuesday, func(d *gym.DayPlan) { d.Second = gym.SecondLift{} })
				p.edit(1, day.Thursday, func(d *gym.DayPlan) { d.Workout = gym.Workout{} })
				p.edit(1, day.Friday, func(d *gym.DayPlan) { d.Main = gym.MainLift{}; d.Finisher = nil })
				p.edit(1, day.Saturday, func(d *gym.DayPlan) { d.WarmUp, d.Workout = nil, gym.Workout{} })
			},
			want: []where{
				{cycle.RuleEmptyPart, 1, day.Monday},
				{cycle.RuleEmptyPart, 1, day.Tuesday},
				{cycle.RuleEmptyPart, 1, day.Thursday},
				{cycle.RuleEmptyPart, 1, day.Friday},
				{cycle.RuleEmptyPart, 1, day.Saturday},
			},
		},
		{
			name:  "a title twice in a week",
			plant: func(p *planted) { p.edit(1, day.Friday, func(d *gym.DayPlan) { d.Title = "Squat" }) },
			want:  []where{{cycle.RuleTitle, 1, day.Friday}},
		},
		{
			name:  "no title",
			plant: func(p *planted) { p.edit(1, day.Friday, func(d *gym.DayPlan) { d.Title = "" }) },
			want:  []where{{cycle.RuleTitle, 1, day.Friday}},
		},
		{
			name: "two plans for one day, and one outside the cycle",
			plant: func(p *planted) {
				days := slices.Clone(p.plan().Days)
				again, beyond := days[0], days[1]
				again.Title, beyond.Week = "Again", 13
				p.plan().Days = append(days, again, beyond)
			},
			want: []where{{cycle.RulePlace, 1, day.Monday}, {cycle.RulePlace, 13, day.Tuesday}},
		},
		{
			name: "names that the catalogue does not have",
			plant: func(p *planted) {
				p.edit(3, day.Monday, func(d *gym.DayPlan) {
					d.WarmUp[0].Drill, d.Finisher[0].Finisher, d.Workout.Items[0].Movement = "no-drill", "no-finisher", "no-movement"
				})
			},
			want: []where{{cycle.RuleUnknown, 3, day.Monday}},
		},
		{
			name:  "a lift that lost its region",
			plant: func(p *planted) { p.lift("paused-squat", func(l *gym.Lift) { l.Region = "" }) },
			want: []where{
				{cycle.RuleNoRegion, 4, day.Monday}, {cycle.RuleNoRegion, 5, day.Monday}, {cycle.RuleNoRegion, 6, day.Monday},
			},
		},
		{
			name:  "a rep count without a record",
			plant: func(p *planted) { p.edit(1, day.Monday, func(d *gym.DayPlan) { d.Main.Reps = 4 }) },
			want:  []where{{cycle.RuleNotRecorded, 1, day.Monday}},
		},
		{
			name: "numbers that nobody can do",
			plant: func(p *planted) {
				p.edit(1, day.Monday, func(d *gym.DayPlan) { d.Main.Reps = 0; d.Second.Percent = 180 })
				p.edit(1, day.Tuesday, func(d *gym.DayPlan) { d.Second.OfReps = 0 })
				p.edit(1, day.Thursday, func(d *gym.DayPlan) { d.Main.Scheme = []gym.Sets{{Percent: 70, Sets: 0, Reps: 5}} })
			},
			want: []where{
				{cycle.RuleNotRecorded, 1, day.Monday},
				{cycle.RuleNumber, 1, day.Monday},
				{cycle.RuleNumber, 1, day.Monday},
				{cycle.RuleNumber, 1, day.Tuesday},
				{cycle.RuleNumber, 1, day.Thursday},
			},
		},
		{
			name: "percentages outside Prilepin's table", track: "weightlifting",
			plant: func(p *planted) {
				p.edit(1, day.Monday, func(d *gym.DayPlan) { d.Main.Scheme = []gym.Sets{{Percent: 75, Sets: 10, Reps: 3}} })
			},
			want: []where{{cycle.RulePrilepin, 1, day.Monday}},
		},
		{
			name:  "a start that is not the gym's first weekday",
			plant: func(p *planted) { p.book.Settings.FirstDay = day.Sunday },
			want:  []where{{cycle.RuleFirstDay, 0, no}},
		},
		{
			name: "two cycles of one track at once",
			plant: func(p *planted) {
				other := p.cycle
				other.ID, other.Name, other.Start = "other", "Summer", p.cycle.End().Add(-6)
				p.book.Cycles = []gym.Cycle{p.cycle, other}
			},
			want: []where{{cycle.RuleOverlap, 0, no}},
		},
		{
			name: "one cycle after the other",
			plant: func(p *planted) {
				other := p.cycle
				other.ID, other.Name, other.Start = "other", "Summer", p.cycle.End().Add(1)
				p.book.Cycles = []gym.Cycle{p.cycle, other}
			},
		},
		{
			name:  "too short",
			plant: func(p *planted) { p.cycle.Weeks = []gym.WeekKind{gym.TestWeek}; p.plan().Days = nil },
			want:  []where{{cycle.RuleLength, 0, no}, {cycle.RuleTestWeek, 1, no}},
		},
	} {
		t.Run(test.name, func(t *testing.T) {
			p := &planted{t: t, book: builtInBook(t), track: test.track}
			if p.track == "" {
				p.track = "powerlifting"
			}
			p.cycle = makeCycle(t, p.book, 12, gym.RollingWave, string(p.track))
			require.Empty(t, told(cycle.Check(p.cycle, p.book)))
			test.plant(p)
			found := cycle.Check(p.cycle, p.book)
			rulesOf(t, found) // each says why and how to mend
			var got []where
			for _, f := range found {
				got = append(got, where{f.Rule, f.Week, f.Weekday})
			}
			assert.Equal(t, test.want, got, "%q", told(found))
		})
	}
}

// Rows of Prilepin's table, from second-hand copies of it, at both edges of every
// half-open band.
func TestBandsArePrilepins(t *testing.T) {
	for _, row := range []struct {
		percent                         float64
		least, most, low, optimal, high int
	}{
		{55, 3, 6, 18, 24, 30},
		{65, 3, 6, 18, 24, 30},
		{69.9, 3, 6, 18, 24, 30},
		{70, 3, 6, 12, 18, 24},
		{75, 3, 6, 12, 18, 24},
		{79.9, 3, 6, 12, 18, 24},
		{80, 2, 4, 10, 15, 20},
		{85, 2, 4, 10, 15, 20},
		{89.9, 2, 4, 10, 15, 20},
		{90, 1, 2, 4, 7, 10},
		{100, 1, 2, 4, 7, 10},
	} {
		b := cycle.BandOf(row.percent)
		assert.Equal(t, []int{row.least, row.most, row.low, row.optimal, row.high},
			[]int{b.LeastReps, b.MostReps, b.LeastTotal, b.Optimal, b.MostTotal}, "%g %%", row.percent)
		assert.True(t, b.From <= row.percent && row.percent < b.Below)
	}
	bands := cycle.Bands()
	for i := 1; i < len(bands); i++ {
		assert.Equal(t, bands[i-1].Below, bands[i].From, "no percentage falls between two bands")
	}
}

// Sessions of a snatch, judged by the table: first in one band, where its totals
// hold as printed, then over several, where their shares are added.
func TestCheckPrilepin(t *testing.T) {
	sets := func(percent float64, sets, reps int) gym.Sets {
		return gym.Sets{Percent: percent, Sets: sets, Reps: reps}
	}
	for _, test := range []struct {
		name   string
		scheme []gym.Sets
		ok     bool
	}{
		{"12 reps in the 70s are the least", []gym.Sets{sets(70, 4, 3)}, true},
		{"24 are the most", []gym.Sets{sets(79, 4, 6)}, true},
		{"9 are too few", []gym.Sets{sets(70, 3, 3)}, false},
		{"27 are too many", []gym.Sets{sets(75, 9, 3)}, false},
		{"sets of 2 are too short", []gym.Sets{sets(75, 6, 2)}, false},
		{"but not at 80", []gym.Sets{sets(80, 6, 2)}, true},
		{"sets of 5 at 85 are too long", []gym.Sets{sets(85, 2, 5)}, false},
		{"22 in the 80s are too many", []gym.Sets{sets(85, 11, 2)}, false},
		{"singles over 90", []gym.Sets{sets(92, 7, 1)}, true},
		{"11 singles", []gym.Sets{sets(92, 11, 1)}, false},
		{"3 singles", []gym.Sets{sets(95, 3, 1)}, false},
		{"triples over 90", []gym.Sets{sets(90, 2, 3)}, false},
		{"half of the 70s and half of the 80s", []gym.Sets{sets(75, 4, 3), sets(82, 5, 2)}, true},
		{"nearly all of both", []gym.Sets{sets(75, 7, 3), sets(82, 9, 2)}, false},
		{"a way up that adds up", []gym.Sets{sets(70, 2, 3), sets(80, 2, 2), sets(90, 1, 1)}, true},
		{"a way up that does not", []gym.Sets{sets(70, 1, 3), sets(80, 1, 2), sets(90, 1, 1)}, false},
	} {
		t.Run(test.name, func(t *testing.T) {
			p := &planted{t: t, book: builtInBook(t), track: "weightlifting"}
			p.cycle = makeCycle(t, p.book, 12, gym.RollingWave, "weightlifting")
			p.edit(1, day.Monday, func(d *gym.DayPlan) { d.Main.Scheme = test.scheme })
			found := cycle.Check(p.cycle, p.book)
			assert.Equal(t, test.ok, len(found) == 0, "%q", told(found))
		})
	}
}

// Rules that come from a book name it.
func TestRulesNameTheirSources(t *testing.T) {
	assert.Contains(t, cycle.RulePrilepin.Source(), "Prilepin")
	assert.Contains(t, cycle.RuleFrequency.Source(), "Essentials of Strength Training and Conditioning")
	assert.Contains(t, cycle.RuleRecovery.Source(), "48 h")
	assert.Contains(t, cycle.RuleRecovery.Source(), "72 h")
	assert.Equal(t, "common practice, no source", cycle.RuleNeighbours.Source())
}
