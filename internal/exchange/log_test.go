package exchange

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

func TestResults(t *testing.T) {
	p := results(t, smallGym(), options(), "Weight (lb)\tReps\tExercise\tWho\tTested\tHow\n"+
		"185\t5\tbench\tann ash\t2026-02-28\ttested\n"+
		"102,5 kg\t1RM\tBack-squat\tBEN BIRCH\t1 March 2026\t\n")
	require.Empty(t, p.Rejected)
	assert.Equal(t, [5]int{2, 2, 0, 0, 0}, counts(p))
	assert.Equal(t, []gym.Change{
		gym.AddResult{Result: gym.Result{
			ID: "00000000-0000-7000-8000-000000000001", Athlete: "ann", Lift: "bench-press", Reps: 5, Load: lb(185), Unit: mass.LB,
			On: day.Of(2026, 2, 28), Source: gym.Tested, Made: now,
		}},
		gym.AddResult{Result: gym.Result{
			ID: "00000000-0000-7000-8000-000000000002", Athlete: "ben", Lift: "back-squat", Reps: 1, Load: kg(102.5), Unit: mass.KG,
			On: day.Of(2026, 3, 1), Source: gym.Reported, Made: now,
		}},
	}, p.Changes)
}

func TestResultsInOtherShapes(t *testing.T) {
	for _, c := range []struct {
		sheet string
		reps  int
		load  string
	}{
		{"Date,Athlete,Lift,5RM\n2026-03-01,Ann Ash,squat,120\n", 5, "120 kg"},
		{"Date,Athlete,Lift,Set\n2026-03-01,Ann Ash,squat,3x130\n", 3, "130 kg"},
		{"Date,Athlete,Lift,Reps,kg\n2026-03-01,Ann Ash,squat,2,130\n", 2, "130 kg"},
		{"Date,Athlete,Lift,Reps,lb\n2026-03-01,Ann Ash,squat,2,130\n", 2, "130 lb"},
		{"Date,Athlete,Lift,Reps,Load,Unit\n2026-03-01,Ann Ash,squat,2,130,lbs\n", 2, "130 lb"},
	} {
		p := results(t, smallGym(), options(), c.sheet)
		require.Empty(t, p.Rejected, c.sheet)
		r := p.Changes[0].(gym.AddResult).Result
		assert.Equal(t, c.reps, r.Reps)
		assert.Equal(t, c.load, r.Load.In(r.Unit))
	}
	p := results(t, smallGym(), options(), "Date,Athlete,Lift,Load\n2026-03-01,Ann Ash,yoke run,1:02\n")
	require.Empty(t, p.Rejected)
	assert.InDelta(t, 62, p.Changes[0].(gym.AddResult).Result.Amount, 1e-9)
}

func TestResultsThatAreKnown(t *testing.T) {
	sheet := "Date,Athlete,Lift,Reps,Load\n2026-03-02,Ann Ash,Back squat,1,140\n" // r1 of the small gym
	assert.Equal(t, [5]int{1, 0, 0, 1, 0}, counts(results(t, smallGym(), options(), sheet)))
	book := smallGym()
	book.Results[0].Void = &gym.Void{Reason: "wrong bar"}
	assert.Equal(t, [5]int{1, 1, 0, 0, 0}, counts(results(t, book, options(), sheet)), "a void row does not stand")
}

func TestResultsThatAreRejected(t *testing.T) {
	const head = "Date,Athlete,Lift,Reps,Load,Source\n"
	for _, c := range []struct{ name, row, column, reason string }{
		{"an unknown athlete", "2026-03-01,Anne Ash,squat,1,100,", "Athlete", "nearest: Ann Ash"},
		{"nobody", "2026-03-01,,squat,1,100,", "Athlete", "there is no name"},
		{"an unknown lift", "2026-03-01,Ann Ash,skwat,1,100,", "Lift", "nothing has that name"},
		{"no lift", "2026-03-01,Ann Ash,,1,100,", "Lift", "there is no lift"},
		{"no date", ",Ann Ash,squat,1,100,", "Date", "there is no date"},
		{"a day that no calendar has", "2026-02-30,Ann Ash,squat,1,100,", "Date", "is not a date"},
		{"a year that is a slip", "2062-02-01,Ann Ash,squat,1,100,", "Date", "more than a year from now"},
		{"no reps", "2026-03-01,Ann Ash,squat,,100,", "Reps", "there is no rep count"},
		{"reps of no rep max", "2026-03-01,Ann Ash,squat,21,100,", "Reps", "from 1 to 20"},
		{"reps that are text", "2026-03-01,Ann Ash,squat,few,100,", "Reps", "from 1 to 20"},
		{"no load", "2026-03-01,Ann Ash,squat,1,,", "Load", "there is no load"},
		{"an estimate", "2026-03-01,Ann Ash,squat,1,100,estimate", "Source", "an estimate is no result"},
		{"the row before", "2026-03-01,Ann Ash,squat,1,100,\n2026-03-01,ann ash,BS,1,100 kg,", "Lift", "the same as line 2"},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := results(t, smallGym(), options(), head+c.row+"\n")
			require.Len(t, p.Rejected, 1)
			assert.Equal(t, c.column, p.Rejected[0].Column)
			assert.Contains(t, p.Rejected[0].Reason, c.reason)
			assert.Equal(t, p.Read, p.Added+p.Same+len(p.Rejected))
			assert.Len(t, p.Changes, p.Added)
		})
	}
}

// A row with an ID of ours must say what the gym says.
func TestLoggedRowsAreNotEdited(t *testing.T) {
	p := results(t, smallGym(), options(), "ID,Date,Athlete,Lift,Reps,Load\nr1,2026-03-02,Ann Ash,squat,1,145\n")
	require.Len(t, p.Rejected, 1)
	assert.Contains(t, p.Rejected[0].Reason, "void it in the gym and add a new one")
	p = bouts(t, smallGym(), options(), "ID,Date,Athlete,Movement,Load,Reps,Outcome,Workout\nb1,2026-03-02,Ann Ash,swing,24,31,held,Monday\n")
	require.Len(t, p.Rejected, 1)
	assert.Contains(t, p.Rejected[0].Reason, "void it in the gym and add a new one")
}

// An ID that the gym does not know may stand once in a sheet.
func TestOneIDTwiceInASheet(t *testing.T) {
	const id = "01963c1e-0000-7000-8000-000000000001"
	const head = "ID,Date,Athlete,Lift,Reps,Load,Void\n"
	for _, second := range []string{"2026-03-01,Ann Ash,squat,1,101,", "2026-03-01,Ann Ash,squat,1,101,missed", "2026-03-01,Ann Ash,squat,1,100,"} {
		p := results(t, smallGym(), options(), head+id+",2026-03-01,Ann Ash,squat,1,100,\n"+id+","+second+"\n")
		assert.Equal(t, [5]int{2, 1, 0, 0, 1}, counts(p), second)
		assert.Equal(t, gym.ID(id), p.Changes[0].(gym.AddResult).Result.ID)
	}
}

func TestBouts(t *testing.T) {
	p := bouts(t, smallGym(), options(), "date;athlete;movement;load;reps;outcome;workout;score\n"+
		"2026-03-02;Ann Ash;Kettlebell swing;24 kg;30;held;Monday;\n"+ // b1 of the small gym
		"2026-03-04;Ben Birch;kettlebell-swing;53 lb;45;S;Wednesday;5+12\n"+
		"2026-03-04;Ben Birch;Wall ball;9;60;x;Wednesday;5+12\n")
	require.Empty(t, p.Rejected)
	assert.Equal(t, [5]int{3, 2, 0, 1, 0}, counts(p))
	assert.Equal(t, gym.Bout{
		ID: "00000000-0000-7000-8000-000000000001", Athlete: "ben", Movement: "swing", Load: lb(53), Unit: mass.LB, Reps: 45,
		Outcome: gym.Slowed, On: day.Of(2026, 3, 4), Workout: "Wednesday", Score: "5+12", Made: now,
	}, p.Changes[0].(gym.AddBout).Bout)
	assert.Equal(t, []string{"line 3: the gym owns no kettlebell of 53 lb; the bout is kept with that load"}, p.Notes)
}

func TestBoutsThatAreRejected(t *testing.T) {
	const head = "Date,Athlete,Movement,Load,Reps,Outcome\n"
	for _, c := range []struct{ name, row, column, reason string }{
		{"no movement", "2026-03-01,Ann Ash,,24,30,held", "Movement", "there is no movement"},
		{"an unknown movement", "2026-03-01,Ann Ash,Kettlebel swing,24,30,held", "Movement", "nearest: Kettlebell swing"},
		{"no load", "2026-03-01,Ann Ash,swing,,30,held", "Load", "there is no load"},
		{"no outcome", "2026-03-01,Ann Ash,swing,24,30,", "Outcome", "there is no outcome"},
		{"an unknown outcome", "2026-03-01,Ann Ash,swing,24,30,fine", "Outcome", `"fine" is not held, slowed or stopped`},
		{"no reps", "2026-03-01,Ann Ash,swing,24,,held", "Reps", "there is no number of reps"},
		{"negative reps", "2026-03-01,Ann Ash,swing,24,-3,held", "Reps", "from 1 to 10000"},
		{"absurd reps", "2026-03-01,Ann Ash,swing,24,10001,held", "Reps", "from 1 to 10000"},
		{"the row before", "2026-03-01,Ann Ash,swing,24,30,held\n2026-03-01,Ann Ash,Swing,24kg,30,h", "Movement", "the same as line 2"},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := bouts(t, smallGym(), options(), head+c.row+"\n")
			require.Len(t, p.Rejected, 1)
			assert.Equal(t, c.column, p.Rejected[0].Column)
			assert.Contains(t, p.Rejected[0].Reason, c.reason)
			assert.Len(t, p.Changes, p.Added)
		})
	}
}

func TestLogsNameTheirColumns(t *testing.T) {
	_, err := Results(t.Context(), open(t, "Athlete,Lift,Load\nAnn Ash,squat,100\n"), smallGym(), options())
	require.ErrorIs(t, err, ErrColumns)
	assert.ErrorContains(t, err, "a column for date; columns found: Athlete, Lift, Load")
	_, err = Bouts(t.Context(), open(t, "Date,Athlete,Lift,Load\n"), smallGym(), options())
	require.ErrorIs(t, err, ErrColumns)
	assert.ErrorContains(t, err, "a column for movement, reps and outcome; columns found: Date")
	_, err = Results(t.Context(), open(t, "What we ate\nsoup\n"), smallGym(), options())
	require.ErrorIs(t, err, ErrColumns)
	assert.ErrorContains(t, err, "a column for athlete, lift, load and date")
}

// A decimal comma in a table of commas must not become a smaller load.
func TestRowsLongerThanTheHeadings(t *testing.T) {
	const list = "Date,Athlete,Lift,Reps,Load\n"
	p, err := Results(t.Context(), open(t, list+"2026-03-01,Ann Ash,squat,1,142,5\n2026-03-02,Ann Ash,squat,1,141,,\n2026-03-03,Ann Ash,squat,1,\"143,5\"\n"), smallGym(), options())
	require.NoError(t, err)
	require.Len(t, p.Rejected, 1)
	assert.Equal(t, 2, p.Rejected[0].Line)
	assert.Contains(t, p.Rejected[0].Reason, "6 cells under 5 headings")
	assert.Equal(t, 2, p.Added, "cells that are blank do no harm")

	p, err = Roster(t.Context(), open(t, "Name,Squat 1RM\nCleo Cedar,102,5\n"), smallGym(), options())
	require.NoError(t, err)
	assert.Len(t, p.Rejected, 1)
	assert.Zero(t, p.Added)
}
