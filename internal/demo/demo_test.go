package demo_test

import (
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/data"
	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/demo"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
	"windlass/internal/repmax"
	"windlass/internal/store"
)

// monday is any Monday.
var monday = day.Of(2026, 11, 23)

// week is a gym for every weekday, each of another seed.
func week(t require.TestingT) []gym.Book {
	books := make([]gym.Book, 7)
	for i := range books {
		books[i] = made(t, uint64(i*i), monday.Add(i))
	}
	return books
}

func made(t require.TestingT, seed uint64, today day.Date) gym.Book {
	b, err := demo.Book(seed, today)
	require.NoError(t, err)
	return b
}

func TestSameSeedSameGym(t *testing.T) {
	assert.Equal(t, made(t, 7, monday), made(t, 7, monday))
	assert.NotEqual(t, made(t, 7, monday).Results, made(t, 8, monday).Results, "another seed, another gym")
}

func TestNoRoomForPastOrFuture(t *testing.T) {
	_, err := demo.Book(1, day.Of(1970, 3, 1))
	require.ErrorContains(t, err, `make demo gym on "1970-03-01"`)
	_, err = demo.Book(1, day.Of(9999, 1, 1))
	assert.ErrorContains(t, err, "no room for its future")
}

// On every weekday and for every seed: rows are valid, records fit together, what
// was lifted could be loaded, and today has classes.
func TestEveryWeekday(t *testing.T) {
	for i, b := range week(t) {
		today := monday.Add(i)
		t.Run(today.Weekday().String(), func(t *testing.T) {
			rowsAreValid(t, b)
			recordsFit(t, b)
			loadsCanBeMade(t, b)
			todayHasClasses(t, b, today)
		})
	}
}

// Counting changes no mass of the catalogue, and all but what the demo leaves to
// the coach is counted.
func TestImplementsAreCounted(t *testing.T) {
	catalogue, err := gym.ReadCatalogue(data.Files())
	require.NoError(t, err)
	e := made(t, 1, monday).Equipment
	var uncounted []string
	for _, i := range catalogue.Implements {
		assert.Equal(t, i.Masses, e.Implement(i.Kind), i.Kind)
		if _, counted := e.Pieces(e.Pool(i.Kind, append(i.Masses, 0)[0])); !counted {
			uncounted = append(uncounted, i.Kind)
		}
	}
	assert.Equal(t, []string{"plate", "skipping-rope"}, uncounted)
}

func rowsAreValid(t *testing.T, b gym.Book) {
	require.NoError(t, b.Settings.Valid())
	require.NoError(t, b.Equipment.Stock.Valid())
	valid(t, b.Equipment.Implements)
	valid(t, b.Athletes)
	valid(t, b.Results)
	valid(t, b.Bouts)
	valid(t, b.Overrides)
	valid(t, b.Restrictions)
	valid(t, b.Slots)
	valid(t, b.Closures)
}

func valid[T interface{ Valid() error }](t *testing.T, rows []T) {
	t.Helper()
	require.NotEmpty(t, rows)
	for _, r := range rows {
		require.NoError(t, r.Valid())
	}
}

// recordsFit: who lifts a load five times has lifted it three times, so a 5RM is
// under the 3RM and that under the 1RM.
func recordsFit(t *testing.T, b gym.Book) {
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

// loadsCanBeMade: what a class lifted on a bar is a load of that bar with the
// gym's plates, and never a light bar's for a lift that the track does on another.
func loadsCanBeMade(t *testing.T, b gym.Book) {
	loads := map[string]*plates.Loads{}
	for _, bar := range b.Equipment.Bars {
		l, err := plates.NewLoads(bar, b.Equipment.Stock)
		require.NoError(t, err)
		loads[bar.Key] = l
	}
	results := map[gym.ID]gym.Result{}
	for _, r := range b.Results {
		results[r.ID] = r
	}
	for _, c := range b.Classes {
		for _, l := range c.Lifters {
			if l.Result == "" || l.Bar == "" {
				continue
			}
			r := results[l.Result]
			require.Equal(t, c.ID, r.Class)
			require.Equal(t, []any{l.Athlete, l.Lift, l.Reps}, []any{r.Athlete, r.Lift, r.Reps})
			made, err := loads[l.Bar].Loadable(r.Load, plates.Nearest)
			require.NoError(t, err)
			require.Equal(t, made.Total, r.Load, "%s on %s", l.Lift, l.Bar)
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

// todayHasClasses, none of them done yet, with about 28 expected in the busiest of
// a day on which the tracks train.
func todayHasClasses(t *testing.T, b gym.Book, today day.Date) {
	calendar := cycle.NewCalendar(&b)
	classes, most := 0, 0
	for _, s := range b.Slots {
		if s.Weekday == today.Weekday() {
			classes++
			most = max(most, len(calendar.Expected(s, today)))
		}
	}
	assert.GreaterOrEqual(t, classes, 2)
	if today.Weekday() != day.Sunday {
		assert.GreaterOrEqual(t, most, 24)
		assert.LessOrEqual(t, most, 32)
	}
	for _, c := range b.Classes {
		require.Less(t, c.On, today)
		require.Equal(t, gym.Finished, c.Stage)
	}
}

// Strength grows believably: of the climbs of five weeks between a quarter and a
// half raise a record, few come to nothing, and hardly a record grows by a tenth;
// of the bouts most are held. The bounds are the project's own.
func TestGrowthIsBelievable(t *testing.T) {
	b := made(t, 1, monday)
	climbs, missed := 0, 0
	for _, c := range b.Classes {
		for _, l := range c.Lifters {
			if l.Lift != "" {
				climbs++
			}
			if l.Missed {
				missed++
			}
		}
	}
	raised, much := raises(b)
	assert.InDelta(t, 0.4, float64(raised)/float64(climbs), 0.12)
	assert.Less(t, float64(missed)/float64(climbs), 0.15)
	assert.Less(t, float64(much)/float64(raised), 0.1)
	assert.Positive(t, missed)

	held := 0
	for _, r := range b.Bouts {
		if r.Outcome == gym.Held {
			held++
		}
	}
	assert.InDelta(t, 0.78, float64(held)/float64(len(b.Bouts)), 0.1)
}

// raises counts the records raised in classes, and those by more than a tenth.
func raises(b gym.Book) (raised, much int) {
	type key struct {
		athlete gym.ID
		lift    gym.LiftKey
		reps    int
	}
	best := map[key]mass.Mass{}
	for _, r := range b.Results {
		k := key{r.Athlete, r.Lift, r.Reps}
		if r.Void != nil || r.Load <= best[k] {
			continue
		}
		if r.Class != "" && best[k] > 0 {
			raised++
			if r.Load.Ratio(best[k]) > 1.1 {
				much++
			}
		}
		best[k] = r.Load
	}
	return raised, much
}

func BenchmarkBook(b *testing.B) {
	for b.Loop() {
		made(b, 1, monday)
	}
}
