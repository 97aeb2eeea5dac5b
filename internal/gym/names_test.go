package gym

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestAthleteNames(t *testing.T) {
	n := AthleteNames([]Athlete{
		{ID: "a", Name: "Ann Ash"},
		{ID: "b", Name: "Ben Birch"},
		{ID: "c", Name: "ben  birch"},
		{ID: "d", Name: "Éva O'Daly"},
		{ID: "e", Name: "Ben Beech"},
	})
	for _, c := range []struct {
		name string
		want ID
	}{
		{"Ann Ash", "a"},
		{"  ANN\tash ", "a"},  // case and spaces
		{"Ann\u00a0Ash", "a"}, // the no-break space of a spreadsheet
		{"éva o’daly", "d"},   // a typographic apostrophe, accents in capitals
		{"b", "b"},            // an ID is a name
	} {
		got, err := n.Find(c.name)
		require.NoError(t, err, c.name)
		assert.Equal(t, c.want, got, c.name)
	}
	_, err := n.Find("Ben Birch")
	require.ErrorIs(t, err, ErrAmbiguousName)
	assert.EqualError(t, err, `find athlete "Ben Birch": the name could mean several: b, c; write one of these instead`)
	_, err = n.Find("Anne Ash")
	require.ErrorIs(t, err, ErrUnknownName)
	assert.EqualError(t, err, `find athlete "Anne Ash": nothing has that name; nearest: Ann Ash`)
	_, err = n.Find("Zebedee Quill")
	assert.EqualError(t, err, `find athlete "Zebedee Quill": nothing has that name; there are Ann Ash, Ben Birch, ben  birch, Éva O'Daly, Ben Beech`)
	_, err = AthleteNames(nil).Find("Ann Ash")
	assert.EqualError(t, err, `find athlete "Ann Ash": nothing has that name; there is no athlete yet`)
	many := make([]Athlete, few+1)
	for i := range many {
		many[i] = Athlete{ID: ID(rune('a' + i)), Name: "Ann Ash"}
	}
	_, err = AthleteNames(many).Find("Zebedee Quill")
	assert.EqualError(t, err, `find athlete "Zebedee Quill": nothing has that name; check how it is spelt`)
	_, err = n.Find(" ")
	assert.ErrorIs(t, err, ErrUnknownName)
}

func TestLiftNames(t *testing.T) {
	n := LiftNames([]Lift{
		{Key: "back-squat", Name: "Back squat", Aliases: []string{"BS", "squat"}},
		{Key: "clean-and-jerk", Name: "Clean and jerk", Aliases: []string{"C&J"}},
		{Key: "squat-jump", Name: "Squat"}, // a gym's own, with a name that is an alias too
	})
	for _, c := range []struct {
		name string
		want LiftKey
	}{
		{"back squat", "back-squat"},
		{"Back-Squat", "back-squat"},
		{"BACKSQUAT", "back-squat"},
		{"bs", "back-squat"},
		{"clean & jerk", "clean-and-jerk"},
		{"c & j", "clean-and-jerk"},
		{"squat", "squat-jump"}, // a name goes before an alias
	} {
		got, err := n.Find(c.name)
		require.NoError(t, err, c.name)
		assert.Equal(t, c.want, got, c.name)
	}
	n.Add("BACK SQUAT", "my-squat") // spelt like another: the keys still tell them apart
	_, err := n.Find("Back squat")
	require.ErrorIs(t, err, ErrAmbiguousName)
	got, err := n.Find("back-squat")
	require.NoError(t, err)
	assert.Equal(t, LiftKey("back-squat"), got)
	_, err = n.Find("bak squat")
	assert.ErrorContains(t, err, "nearest: Back squat")
}

func TestNearest(t *testing.T) {
	names := []string{"Ann Ash", "Anna Ash", "Ben Birch", "Bea Birch", "Cleo Cedar", "Ann Ash"}
	for _, c := range []struct {
		name string
		want []string
	}{
		{"Ann Ash", []string{"Ann Ash", "Anna Ash"}},
		{"Nan Ash", []string{"Ann Ash", "Anna Ash"}}, // neighbours changed
		{"ben brich", []string{"Ben Birch", "Bea Birch"}},
		{"birch", []string{"Ben Birch", "Bea Birch"}}, // a word of it
		{"cl", []string{"Cleo Cedar"}},                // its beginning
		{"birhc", []string{"Ben Birch", "Bea Birch"}}, // a slip in a word of it
		{"Cedar, Cleo", []string{"Cleo Cedar"}},       // turned round
		{"Xaver Yew", nil},
		{"xyz", nil}, // a short word is near to too many
		{"", nil},
	} {
		got := Nearest(c.name, names, 2)
		assert.Equal(t, c.want, got, c.name)
	}
}

// The distance against its definition: the fewest slips over all ways to begin.
func TestSlipsAgainstItsDefinition(t *testing.T) {
	letters := rapid.SliceOfN(rapid.SampledFrom([]rune("abé")), 0, 7)
	rapid.Check(t, func(rt *rapid.T) {
		a, b := letters.Draw(rt, "a"), letters.Draw(rt, "b")
		allowed := rapid.IntRange(0, 7).Draw(rt, "allowed")
		want := slipsByDefinition(a, b)
		if got := slips(a, b, allowed); want <= allowed {
			require.Equal(rt, want, got)
		} else {
			require.Greater(rt, got, allowed)
		}
	})
}

func slipsByDefinition(a, b []rune) int {
	if len(a) == 0 || len(b) == 0 {
		return len(a) + len(b)
	}
	best := min(slipsByDefinition(a[1:], b)+1, slipsByDefinition(a, b[1:])+1, slipsByDefinition(a[1:], b[1:])+differ(a[0], b[0]))
	if len(a) > 1 && len(b) > 1 && a[0] == b[1] && a[1] == b[0] {
		best = min(best, slipsByDefinition(a[2:], b[2:])+1)
	}
	return best
}

func BenchmarkNearestOf10000(b *testing.B) {
	var names []string
	for i := range 10_000 {
		names = append(names, string(rune('A'+i%26))+"nna Lindqv"+string(rune('a'+i/26%26))+"st "+string(rune('a'+i/676)))
	}
	for b.Loop() {
		Nearest("Anna Lindquist b", names, 3)
	}
}
