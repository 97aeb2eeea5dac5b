package cycle_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/gym"
)

// sixTracks is the largest cycle that the room must show: 26 weeks of 6 tracks.
func sixTracks(b *testing.B, book *gym.Book) gym.Cycle {
	s := cycle.Spec{ID: "c", Name: "Year", Start: aMonday, Weeks: cycle.MaxWeeks}
	for i := range 6 {
		s.Tracks = append(s.Tracks, cycle.TrackSpec{
			Track: gym.ID(fmt.Sprint(i)), Template: builtIn[i%3], Wave: everyWave[i%3],
		})
	}
	c, err := cycle.Make(s, book)
	require.NoError(b, err)
	return c
}

func BenchmarkCheck26Weeks6Tracks(b *testing.B) {
	book := builtInBook(b)
	c := sixTracks(b, book)
	b.ReportAllocs()
	for b.Loop() {
		cycle.Check(c, book)
	}
}

func BenchmarkPutOneDay26Weeks6Tracks(b *testing.B) {
	c := sixTracks(b, builtInBook(b))
	at := cycle.At{Track: "3", Week: 13, Weekday: day.Monday}
	for b.Loop() {
		_, err := cycle.Put(c, at.Track, cycle.Copy(c, at), nil)
		require.NoError(b, err)
	}
}

func BenchmarkArrange(b *testing.B) {
	for _, bench := range []struct {
		name string
		ask  cycle.Ask
	}{
		{"usual", cycle.Ask{Sessions: fourDays(), Free: 0b0111111, Want: 3}},
		{"5040 cases", cycle.Ask{Sessions: sevenDays(""), Free: 0b1111111}},
		{"seven days for one region", cycle.Ask{Sessions: sevenDays(gym.Lower), Free: 0b1111111}},
	} {
		b.Run(bench.name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				cycle.Arrange(bench.ask)
			}
		})
	}
}

func sevenDays(region gym.Region) []cycle.Session {
	var list []cycle.Session
	for on := day.Monday; on <= day.Sunday; on++ {
		list = append(list, session(on, on.Short(), region))
	}
	return list
}

func BenchmarkExpected500Athletes(b *testing.B) {
	book := runningGym(b)
	for i := range 500 {
		a := gym.Athlete{ID: gym.ID(fmt.Sprint(i)), Status: gym.Active, Free: day.Weekdays(i % 128), Want: i % 5}
		book.Athletes = append(book.Athletes, a)
		book.Moves = append(book.Moves, gym.TrackMove{Athlete: a.ID, Track: gym.ID(builtIn[i%3]), From: aMonday})
	}
	k := cycle.NewCalendar(book)
	b.ReportAllocs()
	for b.Loop() {
		k.Expected(gym.Slot{Weekday: day.Thursday}, aMonday.Add(10))
	}
}
