package store

import (
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

func copyFile(t require.TestingT, from, to string) {
	bytes, err := os.ReadFile(from)
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(to, bytes, 0o600))
}

// smallGym is a gym in which everything has a row.
func smallGym() []gym.Change {
	made := time.Date(2026, 3, 9, 17, 30, 0, 0, time.UTC)
	on := day.Of(2026, 3, 9)
	settings := gym.DefaultSettings()
	settings.Name = "Harbour Gym"
	settings.Composing = gym.UsualComposing()
	bells := gym.Implement{
		Kind: "kettlebell", Unit: mass.KG, Masses: []mass.Mass{16 * mass.Kilogram, 24 * mass.Kilogram},
		Each: map[mass.Mass]int{16 * mass.Kilogram: 4},
	}
	return []gym.Change{
		gym.PutSettings{Settings: settings},
		gym.PutEquipment{Equipment: gym.Equipment{
			Stations:   []gym.Station{{Name: "Rack 1", Bar: "20"}},
			Implements: []gym.Implement{bells, {Kind: "rower", Unit: mass.KG, Total: 5}},
		}},
		gym.PutLift{Lift: gym.Lift{Key: "back-squat", Name: "Back squat", Measure: gym.ByLoad, Reps: []int{5, 3, 1}}},
		gym.PutLift{Lift: gym.Lift{Key: "sprint", Name: "Sprint", Measure: gym.ByTime, Reps: []int{1}, Related: "back-squat"}},
		gym.PutMovement{Movement: gym.Movement{Key: "swing", Name: "Swing", Implement: "kettlebell", Pair: true, Linked: "back-squat"}},
		gym.PutFinisher{Finisher: gym.Finisher{Key: "curl", Name: "Curl"}},
		gym.PutDrill{Drill: gym.Drill{Key: "leg-swing", Name: "Leg swing"}},
		gym.PutTrack{Track: gym.Track{ID: "track", Name: "Strength"}},
		gym.PutAthlete{Athlete: athlete("ann", "Ann Ash")},
		gym.PutAthlete{Athlete: athlete("ben", "Ben Birch")},
		gym.PutMove{Move: gym.TrackMove{ID: "move", Athlete: "ann", Track: "track", From: on, Made: made}},
		gym.PutRestriction{Restriction: gym.Restriction{ID: "restriction", Athlete: "ann", Text: "no jumping", From: on}},
		gym.PutClimb{Climb: gym.ClimbPlan{ID: "climb", Name: "Twelve minutes"}},
		gym.PutSlot{Slot: gym.Slot{ID: "slot", Minutes: 60, Tracks: []gym.ID{"track"}}},
		gym.PutClosure{Closure: gym.Closure{ID: "closure", From: on, Until: on.Add(1), Name: "Holiday"}},
		gym.PutCycle{Cycle: cycle()},
		gym.PutClass{Class: gym.Class{ID: "class", On: on, Stage: gym.SetUp, Lifters: []gym.Lifter{{Athlete: "ann", Track: "track", Lift: "back-squat"}}}},
		gym.AddResult{Result: result("result", "ann", 140, on)},
		gym.AddBout{Bout: gym.Bout{ID: "bout", Athlete: "ann", Movement: "swing", Load: 24 * mass.Kilogram, Unit: mass.KG, Reps: 20, Outcome: gym.Held, On: on, Made: made}},
		gym.AddOverride{Override: gym.Override{ID: "override", Athlete: "ann", Movement: "swing", Tier: gym.Mid, From: on, Reason: "elbow", Made: made}},
	}
}

func athlete(id gym.ID, name string) gym.Athlete {
	return gym.Athlete{ID: id, Name: name, Standard: gym.StandardW, Status: gym.Active, Unit: mass.KG}
}

func result(id, who gym.ID, kg int, on day.Date) gym.Result {
	return gym.Result{ID: id, Athlete: who, Lift: "back-squat", Reps: 1, Load: mass.Mass(kg) * mass.Kilogram, Unit: mass.KG, On: on, Source: gym.Tested}
}

func cycle() gym.Cycle {
	d := gym.DayPlan{
		Week: 1, Kind: gym.MainDay, Title: "Squat",
		WarmUp:   []gym.DrillLine{{Drill: "leg-swing"}},
		Main:     gym.MainLift{Lift: "back-squat", Reps: 5, Climb: "Twelve minutes"},
		Workout:  gym.Workout{Items: []gym.Item{{Movement: "swing"}}},
		Finisher: []gym.FinisherLine{{Finisher: "curl"}},
	}
	return gym.Cycle{ID: "cycle", Name: "Spring", Start: day.Of(2026, 3, 9), Tracks: []gym.TrackPlan{{Track: "track", Days: []gym.DayPlan{d}}}}
}

// newFile is a small gym on disk, closed at the end of the test.
func newFile(t *testing.T) *File {
	t.Helper()
	f, err := Create(t.Context(), filepath.Join(t.TempDir(), "gym.windlass"))
	require.NoError(t, err)
	t.Cleanup(func() { require.NoError(t, f.Close()) })
	require.NoError(t, f.Write(t.Context(), smallGym()...))
	return f
}

// savedFile is the path of a small gym that nobody has open.
func savedFile(t *testing.T) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "gym.windlass")
	f, err := Create(t.Context(), path)
	require.NoError(t, err)
	require.NoError(t, f.Write(t.Context(), smallGym()...))
	require.NoError(t, f.Close())
	return path
}

func load(t *testing.T, f *File) gym.Book {
	t.Helper()
	b, err := f.Load(t.Context())
	require.NoError(t, err)
	return b
}
