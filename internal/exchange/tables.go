package exchange

import (
	"strings"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// Table is one of the gym's lists on its way out. A cell is a string, an int, a
// float64, or nil for nothing.
type Table struct {
	Name   string // of the file without ".csv", or of the sheet
	Header []string
	Rows   [][]any
}

// Tables returns everything the gym's file says, for people and their programs to
// read, with the athletes' tracks of a day. The coach's notes and the athletes'
// restrictions are left out: they never leave the desk, and a backup has them.
func Tables(b *gym.Book, today day.Date) []Table {
	n := newNaming(b)
	return []Table{
		athleteTable(b, n, today), moveTable(b, n), resultTable(b, n), boutTable(b, n), overrideTable(b, n),
		trackTable(b), cycleTable(b), dayPlanTable(b, n), classTable(b, n), lifterTable(b, n),
		slotTable(b, n), closureTable(b), climbTable(b), liftTable(b, n), movementTable(b, n),
		finisherTable(b), drillTable(b), barTable(b), plateTable(b), implementTable(b), stationTable(b), settingsTable(b),
	}
}

// naming writes names for keys. Where two have the same name it writes the key,
// which is a name too.
type naming struct {
	athletes  map[gym.ID]string
	tracks    map[gym.ID]string
	lifts     map[gym.LiftKey]string
	movements map[gym.MovementKey]string
}

func newNaming(b *gym.Book) naming {
	return naming{
		athletes:  named(b.Athletes, gym.AthleteNames(b.Athletes), func(a gym.Athlete) (gym.ID, string) { return a.ID, a.Name }),
		tracks:    named(b.Tracks, gym.TrackNames(b.Tracks), func(t gym.Track) (gym.ID, string) { return t.ID, t.Name }),
		lifts:     named(b.Lifts, gym.LiftNames(b.Lifts), func(l gym.Lift) (gym.LiftKey, string) { return l.Key, l.Name }),
		movements: named(b.Movements, gym.MovementNames(b.Movements), func(m gym.Movement) (gym.MovementKey, string) { return m.Key, m.Name }),
	}
}

func named[T any, K ~string](rows []T, names *gym.Names[K], of func(T) (K, string)) map[K]string {
	out := make(map[K]string, len(rows))
	for _, row := range rows {
		key, name := of(row)
		if found, err := names.Find(name); err != nil || found != key {
			name = string(key)
		}
		out[key] = name
	}
	return out
}

// table makes a table of a list, a row for each.
func table[T any](name string, header string, list []T, row func(T) []any) Table {
	t := Table{Name: name, Header: strings.Split(header, ", ")}
	for _, v := range list {
		t.Rows = append(t.Rows, row(v))
	}
	return t
}

func yes(b bool) string {
	if b {
		return "yes"
	}
	return "no"
}

// some leaves a number out that means "not said".
func some[N int | float64](n N) any {
	if n == 0 {
		return nil
	}
	return n
}

func joined[T any](list []T, write func(T) string) string {
	parts := make([]string, len(list))
	for i, v := range list {
		parts[i] = write(v)
	}
	return strings.Join(parts, "; ")
}
