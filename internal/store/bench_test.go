package store

import (
	"fmt"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// bigFile is a gym of 300 athletes after some years.
func bigFile(b *testing.B, bouts, results int) *File {
	b.Helper()
	f, err := Create(b.Context(), filepath.Join(b.TempDir(), "gym.windlass"))
	require.NoError(b, err)
	b.Cleanup(func() { require.NoError(b, f.Close()) })
	require.NoError(b, f.Write(b.Context(), smallGym()...))
	var changes []gym.Change
	for i := range 300 {
		changes = append(changes, gym.PutAthlete{Athlete: athlete(athleteNumber(i), fmt.Sprint("Athlete ", i))})
	}
	changes = append(changes, manyBouts(bouts)...)
	require.NoError(b, f.Write(b.Context(), append(changes, manyResults(results)...)...))
	return f
}

func athleteNumber(i int) gym.ID { return numbered('a', i%300) }

// numbered names a row as the program would, a millisecond after the one before.
func numbered(kind byte, i int) gym.ID {
	return gym.NewID(time.UnixMilli(1_700_000_000_000+int64(i)), [10]byte{kind, byte(i), byte(i >> 8)})
}

func manyBouts(n int) []gym.Change {
	out := make([]gym.Change, n)
	for i := range out {
		on := day.Of(2024, 1, 1).Add(i / 400)
		out[i] = gym.AddBout{Bout: gym.Bout{
			ID: numbered('b', i), Athlete: athleteNumber(i), Movement: "swing", Load: mass.Mass(8+i%40) * mass.Kilogram, Unit: mass.KG,
			Reps: 30, Outcome: gym.Held, On: on, Workout: "Wednesday", Score: "5 rounds", Made: on.Time(),
		}}
	}
	return out
}

func manyResults(n int) []gym.Change {
	out := make([]gym.Change, n)
	for i := range out {
		on := day.Of(2024, 1, 1).Add(i / 200)
		r := result(numbered('r', i), athleteNumber(i), 60+i%140, on)
		r.Made = on.Time()
		out[i] = gym.AddResult{Result: r}
	}
	return out
}

func BenchmarkOpen(b *testing.B) {
	f := bigFile(b, 200_000, 20_000)
	for b.Loop() {
		again, err := Open(b.Context(), f.Path())
		require.NoError(b, err)
		require.NoError(b, again.Close())
	}
}

func BenchmarkLoad200000Bouts(b *testing.B) {
	f := bigFile(b, 200_000, 20_000)
	b.ReportAllocs()
	for b.Loop() {
		book, err := f.Load(b.Context())
		require.NoError(b, err)
		require.Len(b, book.Bouts, 200_001)
	}
}

func BenchmarkLoadClass(b *testing.B) {
	f := bigFile(b, 200_000, 20_000)
	for b.Loop() {
		_, err := f.LoadClass(b.Context())
		require.NoError(b, err)
	}
}

func BenchmarkWrite100000Results(b *testing.B) {
	changes := manyResults(100_000)
	for b.Loop() {
		b.StopTimer()
		f := bigFile(b, 0, 0)
		b.StartTimer()
		require.NoError(b, f.Write(b.Context(), changes...))
	}
}

func BenchmarkWriteOneResult(b *testing.B) {
	f := bigFile(b, 0, 0)
	changes := manyResults(100_000)
	i := 0
	for b.Loop() {
		require.NoError(b, f.Write(b.Context(), changes[i]))
		i++
	}
}

func BenchmarkVerify(b *testing.B) {
	f := bigFile(b, 200_000, 20_000)
	for b.Loop() {
		_, err := Verify(b.Context(), f.Path())
		require.NoError(b, err)
	}
}
