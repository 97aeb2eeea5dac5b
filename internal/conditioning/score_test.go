package conditioning

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/gym"
	"windlass/internal/mass"
)

func TestKindOf(t *testing.T) {
	for format, want := range map[gym.Format]Kind{
		gym.AMRAP: ByRounds, gym.ForTime: ByTime, gym.Chipper: ByTime, gym.EMOM: ByReps, gym.Intervals: ByReps, gym.PlainSets: ByLoad,
	} {
		assert.Equal(t, want, KindOf(format))
	}
}

func TestParseScore(t *testing.T) {
	for _, row := range []struct {
		text string
		kind Kind
		want Score
	}{
		{"12:34", ByTime, Score{Kind: ByTime, Seconds: 754}},
		{" 1:02:03 ", ByTime, Score{Kind: ByTime, Seconds: 3723}},
		{"75:00", ByTime, Score{Kind: ByTime, Seconds: 4500}},
		{"cap 85", ByTime, Score{Kind: ByTime, Capped: true, Reps: 85}},
		{"CAP+85", ByTime, Score{Kind: ByTime, Capped: true, Reps: 85}},
		{"cap 0", ByTime, Score{Kind: ByTime, Capped: true}},
		{"5+12", ByRounds, Score{Kind: ByRounds, Rounds: 5, Reps: 12}},
		{"5 + 0", ByRounds, Score{Kind: ByRounds, Rounds: 5}},
		{"143", ByReps, Score{Kind: ByReps, Reps: 143}},
		{"143 reps", ByReps, Score{Kind: ByReps, Reps: 143}},
		{"0", ByReps, Score{Kind: ByReps}},
		{"102,5 kg", ByLoad, Score{Kind: ByLoad, Load: kg(102.5)}},
		{"225lb", ByLoad, Score{Kind: ByLoad, Load: 225 * mass.Pound}},
	} {
		got, err := ParseScore(row.text, row.kind)
		require.NoError(t, err, row.text)
		assert.Equal(t, row.want, got, row.text)
	}
}

func TestParseScoreRefuses(t *testing.T) {
	for _, row := range []struct {
		text string
		kind Kind
		want error
	}{
		{"", ByTime, ErrScore},
		{"fast", ByTime, ErrScore},
		{"12:60", ByTime, ErrScore},
		{"0:00", ByTime, ErrScore},
		{"-5", ByReps, ErrScore},
		{"5+", ByRounds, ErrScore},
		{"+5", ByRounds, ErrScore},
		{"5+-1", ByRounds, ErrScore},
		{"1e3", ByReps, ErrScore},
		{"0 kg", ByLoad, ErrScore},
		{"5+12", ByTime, ErrKind},
		{"12:34", ByRounds, ErrKind},
		{"5", ByRounds, ErrKind},
		{"143", ByLoad, ErrKind}, // a load wants its unit
		{"100 kg", ByReps, ErrKind},
	} {
		_, err := ParseScore(row.text, row.kind)
		assert.ErrorIs(t, err, row.want, row.text)
		assert.ErrorContains(t, err, row.text)
	}
}

func TestCompare(t *testing.T) {
	// Best first within each kind.
	for _, best := range [][]Score{
		{{Kind: ByTime, Seconds: 500}, {Kind: ByTime, Seconds: 501}, {Kind: ByTime, Capped: true, Reps: 90}, {Kind: ByTime, Capped: true, Reps: 12}},
		{{Kind: ByRounds, Rounds: 6}, {Kind: ByRounds, Rounds: 5, Reps: 29}, {Kind: ByRounds, Rounds: 5, Reps: 3}},
		{{Kind: ByReps, Reps: 20}, {Kind: ByReps, Reps: 19}},
		{{Kind: ByLoad, Load: kg(60)}, {Kind: ByLoad, Load: kg(59.5)}},
	} {
		for i, a := range best {
			for j, b := range best {
				better, err := a.Better(b)
				require.NoError(t, err)
				assert.Equal(t, i < j, better)
			}
		}
	}
	_, err := Score{Kind: ByTime}.Better(Score{Kind: ByReps})
	assert.ErrorIs(t, err, ErrKind)
}

func drawScore(t *rapid.T) Score {
	n := func(from int, label string) int { return rapid.IntRange(from, 9999).Draw(t, label) }
	switch rapid.IntRange(0, 4).Draw(t, "kind") {
	case 0:
		return Score{Kind: ByTime, Seconds: n(1, "seconds")}
	case 1:
		return Score{Kind: ByTime, Capped: true, Reps: n(0, "reps")}
	case 2:
		return Score{Kind: ByRounds, Rounds: n(0, "rounds"), Reps: n(0, "reps")}
	case 3:
		return Score{Kind: ByReps, Reps: n(0, "reps")}
	}
	return Score{Kind: ByLoad, Load: mass.Kilogram / 4 * mass.Mass(rapid.IntRange(1, 2000).Draw(t, "load"))}
}

func TestScoreRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawScore(t)
		back, err := ParseScore(s.Text(mass.KG), s.Kind)
		require.NoError(t, err)
		assert.Equal(t, s, back)
	})
}

func FuzzParseScore(f *testing.F) {
	for _, text := range []string{"12:34", "cap 85", "5+12", "143 reps", "100 kg", "cap+", "1:00:00", "000+0"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		for _, kind := range []Kind{ByTime, ByRounds, ByReps, ByLoad} {
			s, err := ParseScore(text, kind)
			if err != nil {
				continue
			}
			require.Equal(t, kind, s.Kind)
			if kind == ByLoad { // two decimals need not give a mass back
				continue
			}
			back, err := ParseScore(s.Text(mass.KG), kind)
			require.NoError(t, err)
			require.Equal(t, s, back)
		}
	})
}
