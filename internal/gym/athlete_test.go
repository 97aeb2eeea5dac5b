package gym_test

import (
	"slices"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// refusal is a change to a valid value and the words that refuse it; no words
// mean that it stays valid.
type refusal[T any] struct {
	why    string
	change func(*T)
}

func checkRefusals[T interface{ Valid() error }](t *testing.T, valid T, tests []refusal[T]) {
	t.Helper()
	require.NoError(t, valid.Valid())
	for _, tt := range tests {
		v := valid
		tt.change(&v)
		if tt.why == "" {
			assert.NoError(t, v.Valid())
			continue
		}
		assert.ErrorContains(t, v.Valid(), tt.why)
	}
}

func on(text string) day.Date {
	d, err := day.Parse(text)
	if err != nil {
		panic(err) // a slip in the test itself
	}
	return d
}

func anAthlete() gym.Athlete {
	return gym.Athlete{
		ID: "a", Name: "Ines Okafor-Lund", Standard: gym.StandardW, Status: gym.Active,
		Unit: mass.KG, Show: gym.WallName, Joined: on("2025-09-01"),
	}
}

func TestAthleteValid(t *testing.T) {
	checkRefusals(t, anAthlete(), []refusal[gym.Athlete]{
		{"the name is empty", func(a *gym.Athlete) { a.Name = " \t" }},
		{`load standard "X" is not M or W`, func(a *gym.Athlete) { a.Standard = "X" }},
		{`status "gone" is not active, paused or archived`, func(a *gym.Athlete) { a.Status = "gone" }},
		{`unit "" is not kg or lb`, func(a *gym.Athlete) { a.Unit = "" }},
		{`"face" on the wall is not name, initials or nothing`, func(a *gym.Athlete) { a.Show = "face" }},
		{"-1 training days do not fit a week", func(a *gym.Athlete) { a.Want = -1 }},
		{"8 training days do not fit a week", func(a *gym.Athlete) { a.Want = 8 }},
		{"", func(a *gym.Athlete) { a.Want = 7 }},
		{"", func(a *gym.Athlete) { a.Show = "" }},
		{"", func(a *gym.Athlete) { a.Joined = day.None }},
	})
}

func TestWallShowsNoMoreThanTheAthleteChose(t *testing.T) {
	tests := []struct {
		name, display string
		show          gym.WallShow
		want          string
	}{
		{"Ines Okafor-Lund", "", gym.WallName, "Ines"},       // the first name
		{"Ines Okafor-Lund", "Inky", gym.WallName, "Inky"},   // a chosen one
		{"Ines Okafor-Lund", "Inky", gym.WallInitials, "IO"}, // initials go before it
		{"Ines Okafor-Lund", "Inky", gym.WallNothing, ""},    // and nothing before all
		{"  Ines  Okafor", "", gym.WallName, "Ines"},         // spaces in front
		{"  émile   östberg ", "", gym.WallInitials, "ÉÖ"},   // letters with marks
		{"Ines", "", gym.WallInitials, "I"},                  // one name
		{"", "", gym.WallInitials, ""},                       // none
		{"Ines Okafor-Lund", "", "", "Ines"},                 // not said
	}
	for _, tt := range tests {
		a := gym.Athlete{Name: tt.name, Display: tt.display, Show: tt.show}
		assert.Equal(t, tt.want, a.OnWall(), "%q as %q", tt.name, tt.show)
	}
}

func aRestriction() gym.Restriction {
	return gym.Restriction{
		ID: "r", Athlete: "a", Text: "no pressing overhead", Region: gym.Upper,
		From: on("2026-03-02"), Until: on("2026-03-15"),
	}
}

func TestRestrictionValid(t *testing.T) {
	checkRefusals(t, aRestriction(), []refusal[gym.Restriction]{
		{"names no athlete", func(r *gym.Restriction) { r.Athlete = "" }},
		{"the text is empty", func(r *gym.Restriction) { r.Text = " " }},
		{`region "arm" is not`, func(r *gym.Restriction) { r.Region = "arm" }},
		{"it has no first day", func(r *gym.Restriction) { r.From = day.None }},
		{"last day 2026-03-01 is before its first, 2026-03-02", func(r *gym.Restriction) { r.Until = r.From.Add(-1) }},
		{"", func(r *gym.Restriction) { r.Until = day.None }},
		{"", func(r *gym.Restriction) { r.Region = "" }},
	})
}

func TestRestrictionTouches(t *testing.T) {
	tests := []struct {
		day    string
		region gym.Region
		held   gym.Region
		want   bool
	}{
		{"2026-03-01", gym.Upper, gym.Upper, false},    // the day before
		{"2026-03-02", gym.Upper, gym.Upper, true},     // the first day
		{"2026-03-15", gym.Upper, gym.Upper, true},     // the last day
		{"2026-03-16", gym.Upper, gym.Upper, false},    // the day after
		{"2026-03-09", gym.Lower, gym.Upper, false},    // another region
		{"2026-03-09", gym.WholeBody, gym.Upper, true}, // the whole body holds it
		{"2026-03-09", gym.Lower, "", true},            // every region
	}
	for _, tt := range tests {
		r := aRestriction()
		r.Region = tt.held
		assert.Equal(t, tt.want, r.Touches(on(tt.day), tt.region), "%+v", tt)
	}
	open := aRestriction()
	open.Until = day.None
	assert.True(t, open.Touches(on("2036-01-01"), gym.Upper), "until it is lifted")
}

func TestTrackOn(t *testing.T) {
	early, late := on("2026-03-02"), on("2026-03-16")
	made := time.Date(2026, time.March, 1, 9, 0, 0, 0, time.UTC)
	moves := []gym.TrackMove{
		{Track: "off", From: late, Made: made},
		{Track: "first", From: early, Made: made},
		{Track: "second", From: early, Made: made.Add(time.Minute)}, // put right on the same day
		{Track: "", From: late.Add(7), Made: made},
	}
	for _, row := range []struct {
		on   day.Date
		want gym.ID
	}{
		{early.Add(-1), ""}, {early, "second"}, {late.Add(-1), "second"}, {late, "off"}, {late.Add(7), ""},
	} {
		assert.Equal(t, row.want, gym.TrackOn(moves, row.on), row.on)
		slices.Reverse(moves)
	}
	assert.Empty(t, gym.TrackOn(nil, early))
}
