package demo_test

import (
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/demo"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/repmax"
	"windlass/internal/store"
)

// monday is any Monday.
var monday = day.Of(2026, 11, 23)

func made(t require.TestingT, seed uint64, today day.Date) gym.Book {
	b, err := demo.Book(seed, today)
	require.NoError(t, err)
	return b
}

func TestSameSeedSameGym(t *testing.T) {
	assert.Equal(t, made(t, 7, monday), made(t, 7, monday))
	assert.NotEqual(t, made(t, 7, monday).Results, made(t, 8, monday).Results, "another seed, another gym")
}

func TestNoRoomForThePast(t *testing.T) {
	_, err := demo.Book(1, day.Of(1970, 3, 1))
	assert.ErrorContains(t, err, `make demo gym on "1970-03-01"`)
}

// Every noun passes its own rule, whatever the seed and the weekday.
func TestEveryRowIsValid(t *testing.T) {
	for i := range 7 {
		b := made(t, uint64(i*i), monday.Add(53*i))
		require.NoError(t, b.Settings.Valid())
		require.NoError(t, b.Equipment.Stock.Valid())
		for _, a := range b.Athletes {
			require.NoError(t, a.Valid())
		}
		for _, r := range b.Results {
			require.NoError(t, r.Valid())
		}
		for _, r := range b.Bouts {
			require.NoError(t, r.Valid())
		}
		for _, o := range b.Overrides {
			require.NoError(t, o.Valid())
		}
		for _, r := range b.Restrictions {
			require.NoError(t, r.Valid())
		}
		for _, s := range b.Slots {
			require.NoError(t, s.Valid())
		}
		for _, c := range b.Closures {
			require.NoError(t, c.Valid())
		}
		recordsFit(t, b)
	}
}

// recordsFit: who lifts a load five times has lifted it three times, so a 5RM is
// under the 3RM and that under the 1RM.
func recordsFit(t require.TestingT, b gym.Book) {
	records := repmax.NewRecords(b.Results, b.Lifts)
	for _, a := range b.Athletes {
		for _, l := range b.Lifts {
			known := records.Known(a.ID, l.Key)
			for i := 1; i < len(known); i++ {
				require.Less(t, known[i].Load, known[i-1].Load, "%s, %s: %d and %d reps", a.Name, l.Name, known[i].Reps, known[i-1].Reps)
			}
		}
	}
}

func TestFileKeepsTheGym(t *testing.T) {
	ctx := t.Context()
	f, err := store.Create(ctx, filepath.Join(t.TempDir(), "gym.windlass"))
	require.NoError(t, err)
	defer func() { require.NoError(t, f.Close()) }()
	want := made(t, 1, monday.Add(3))
	require.NoError(t, f.Write(ctx, want.Changes()...))
	got, err := f.Load(ctx)
	require.NoError(t, err)
	assert.Equal(t, want, got)
}

// The shape of the gym as the project's plan asks for it.
func TestShape(t *testing.T) {
	b := made(t, 1, monday)
	assert.Len(t, b.Athletes, 36)
	assert.Len(t, b.Tracks, 3)
	assert.Len(t, b.Equipment.Stations, 8)
	assert.GreaterOrEqual(t, len(b.Results), 1000)
	assert.GreaterOrEqual(t, len(b.Bouts), 600)
	require.Len(t, b.Cycles, 1)
	c := b.Cycles[0]
	assert.Len(t, c.Weeks, 12)
	assert.Equal(t, 6, c.WeekOf(monday), "five weeks are trained")
	assert.Empty(t, cycle.Check(c, &b), "the plan keeps the rules")

	pounds, untracked, back := 0, 0, 0
	calendar := cycle.NewCalendar(&b)
	for _, a := range b.Athletes {
		if a.Unit == mass.LB {
			pounds++
		}
		if a.Status == gym.Active && calendar.TrackOf(a.ID, monday) == "" {
			untracked++
		}
		if a.BackOn != day.None {
			back++
		}
	}
	assert.Equal(t, []int{1, 1, 1}, []int{pounds, untracked, back})
}

// Today has classes whatever the weekday, with about 28 expected in the evening
// of a day on which everybody's track lifts.
func TestTodayHasClasses(t *testing.T) {
	for i := range 7 {
		today := monday.Add(i)
		b := made(t, 1, today)
		calendar := cycle.NewCalendar(&b)
		classes, most := 0, 0
		for _, s := range b.Slots {
			if s.Weekday == today.Weekday() {
				classes++
				most = max(most, len(calendar.Expected(s, today)))
			}
		}
		assert.GreaterOrEqual(t, classes, 2, today.Long())
		if today.Weekday() != day.Sunday {
			assert.GreaterOrEqual(t, most, 24, today.Long())
			assert.LessOrEqual(t, most, 32, today.Long())
		}
		for _, c := range b.Classes {
			require.Less(t, c.On, today, "nothing of today is done yet")
			require.Equal(t, gym.Finished, c.Stage)
		}
	}
}

// Strength grows believably: over five weeks most of those who climb raise some
// record, few loads are missed, and nobody grows by a tenth.
func TestGrowthIsBelievable(t *testing.T) {
	b := made(t, 1, monday)
	first, best := map[string]mass.Mass{}, map[string]mass.Mass{}
	for _, r := range b.Results {
		key := string(r.Athlete) + string(r.Lift) + string(rune('0'+r.Reps))
		if r.Void != nil {
			continue
		}
		if first[key] == 0 {
			first[key] = r.Load
		}
		best[key] = max(best[key], r.Load)
	}
	raised, much := 0, 0
	for key := range best {
		if best[key] > first[key] {
			raised++
		}
		if best[key].Ratio(first[key]) > 1.12 {
			much++
		}
	}
	assert.Greater(t, raised, 60)
	assert.Less(t, much, 15)

	held := 0
	for _, r := range b.Bouts {
		if r.Outcome == gym.Held {
			held++
		}
	}
	assert.InDelta(t, 0.78, float64(held)/float64(len(b.Bouts)), 0.1)
}
