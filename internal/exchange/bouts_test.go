package exchange

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
)

const boutHead = "Date,Athlete,Movement,Load,Reps,Outcome,Workout,Score\n"

func TestBoutsThatCannotHaveBeen(t *testing.T) {
	for _, c := range []struct{ name, row, column, reason string }{
		{"an unknown format", "2026-03-01,Ann Ash,swing,24,30,held,Foo bar 12,", "Workout", `"foo bar" with a number is none of amrap`},
		{"a format with a slip", "2026-03-01,Ann Ash,swing,24,30,held,AMRPA 12,", "Workout", "nearest: amrap"},
		{"a workout with an unknown movement", "2026-03-01,Ann Ash,swing,24,30,held,amrap 12:00: 10 flying carpet,", "Workout", `"flying carpet" is not in the catalogue`},
		{"an AMRAP by time", "2026-03-01,Ann Ash,swing,24,30,held,AMRAP 12,12:34", "Score", "counts time and the workout counts rounds, as in 5+12"},
		{"for time by rounds", "2026-03-01,Ann Ash,swing,24,30,held,For time 21-15-9,5+10", "Score", "as in 12:34"},
		{"a score past the cap", "2026-03-01,Ann Ash,swing,24,30,held,\"For time, 3 rounds, cap 9 min\",9:01", "Score", "past the cap of 9:00"},
		{"no score", "2026-03-01,Ann Ash,swing,24,30,held,AMRAP 12,fast", "Score", "not a score"},
		{"no score of a workout with a name", "2026-03-01,Ann Ash,swing,24,30,held,Monday,9:99", "Score", "write one like 12:34, 5+12"},
		{"in two years", "2028-03-10,Ann Ash,swing,24,30,held,,", "Date", "2028-03-10 is more than a year from now"},
		{"a load that nobody swings", "2026-03-01,Ann Ash,swing,500,30,held,,", "Load", "500 kg of Kettlebell swing is more than 4 times the heaviest known for it, 24 kg"},
		{"what the gym has with another outcome", "2026-03-02,Ann Ash,swing,24,30,stopped,Monday,", "Outcome", "the gym has this bout as held and the row says stopped; void the one in the gym first"},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := bouts(t, smallGym(), options(), boutHead+c.row+"\n")
			require.Len(t, p.Rejected, 1)
			assert.Equal(t, c.column, p.Rejected[0].Column)
			assert.Contains(t, p.Rejected[0].Reason, c.reason)
			assert.Empty(t, p.Changes)
			assert.Zero(t, p.Added)
		})
	}
}

func TestBoutsThatCanHaveBeen(t *testing.T) {
	p := bouts(t, smallGym(), options(), boutHead+
		"2026-03-01,Ann Ash,swing,24,30,held,AMRAP 12 min,5+12\n"+
		"2026-03-03,Ann Ash,swing,24,30,held,Week 3 day 2,5+12\n"+
		"2026-03-04,Ann Ash,swing,24,30,held,,12:34\n"+
		"2026-03-09,Ann Ash,swing,24,30,held,\"For time, 21-15-9\",cap 85\n"+
		"2026-03-05,Ann Ash,swing,24,30,held,,\n2026-03-05,Ann Ash,swing,24,30,stopped,Evening,\n"+ // two workouts of a day
		"2026-03-05,Ann Ash,Row,24,30,held,,\n"+
		"2026-03-06,Ann Ash,swing,23,30,held,,\n"+
		"2026-03-10,Ann Ash,swing,24,30,held,,\n")
	require.Empty(t, p.Rejected)
	assert.Equal(t, 9, p.Added)
	assert.Equal(t, []string{
		"line 8: Row has no loads in the catalogue; the bout is kept with 24 kg, and no load is suggested from it",
		"line 9: the gym owns no kettlebell of 23 kg; the bout is kept with that load",
		"line 10: 2026-03-10 is still to come; the bout is kept, and counts from that day on",
	}, p.Notes)
}

// Of two rows that contradict each other neither is kept, whichever comes first.
func TestBoutsThatContradict(t *testing.T) {
	p := bouts(t, smallGym(), options(), boutHead+
		"2026-03-01,Ann Ash,swing,23,30,held,,\n"+
		"2026-03-01,Ben Birch,swing,24,30,held,,\n"+
		"2026-03-01,Ann Ash,Kettlebell swing,23 kg,30,stopped,,\n"+
		"2026-03-01,nobody,swing,24,30,held,,\n")
	require.Len(t, p.Rejected, 3)
	assert.Equal(t, [5]int{4, 1, 0, 0, 3}, counts(p))
	assert.Equal(t, Rejection{2, "Outcome", "line 4 has the same bout as stopped and this one as held; keep the one that is true"}, p.Rejected[0])
	assert.Equal(t, Rejection{4, "Outcome", "line 2 has the same bout as held and this one as stopped; keep the one that is true"}, p.Rejected[1])
	assert.Equal(t, 5, p.Rejected[2].Line)
	require.Len(t, p.Changes, 1)
	assert.Equal(t, gym.ID("ben"), p.Changes[0].(gym.AddBout).Bout.Athlete)
	assert.Empty(t, p.Notes, "the note went with its row")
}

// However many rows tell of one bout and do not agree, none is kept.
func TestRowsOfOneBoutThatDoNotAgree(t *testing.T) {
	p := bouts(t, smallGym(), options(), boutHead+
		"2026-03-01,Ann Ash,swing,24,30,held,,5+1\n"+
		"2026-03-01,Ann Ash,swing,24,30,held,,5+2\n"+
		"2026-03-01,Ann Ash,swing,24,30,slowed,,\n"+
		"2026-03-01,Ann Ash,swing,24,30,held,,5+3\n")
	assert.Empty(t, p.Changes)
	assert.Len(t, p.Rejected, 4)
}

// A bout that was voided contradicts nothing.
func TestVoidBoutsContradictNothing(t *testing.T) {
	book := smallGym()
	book.Bouts[0].Void = &gym.Void{Reason: "entered again"}
	p := bouts(t, book, options(), boutHead+"2026-03-02,Ann Ash,swing,24,30,stopped,Monday,\n")
	assert.Equal(t, 1, p.Added)
}
