package climb_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/climb"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// A five that nobody has tested, found from 40 kg in steps of 2.5 kg; 15, 7 and
// 3 % are common practice, no source.
func TestFindingClimb(t *testing.T) {
	for _, row := range []struct{ calls, path, outcome string }{
		{"", "40x5 45x5/42.5x5/40x5 ", "pending"}, // 46, 42.8 and 41.2 kg; 42.5 is 6.25 % up, over twice 3 %
		{"easy", "40x5+ 45x5 52.5x5/47.5x5/47.5x5 ", "pending"},
		{"easy,hard", "40x5+ 45x5+ 47.5x5 55x5/50x5/50x5 ", "pending"},
		{"easy,easy,easy,easy,easy,easy,easy,easy", "40x5+ 45x5+ 52.5x5+ 60x5+ 70x5+ 80x5+ 92.5x5+ 107.5x5+ 122.5x5", "pending"},
		{"easy,easy,easy,easy,easy,easy,easy,easy,hard", "40x5+ 45x5+ 52.5x5+ 60x5+ 70x5+ 80x5+ 92.5x5+ 107.5x5+ 122.5x5+", "122.5x5 in rung 9"},
		{"easy,missed", "40x5+ 45x5- off off off off off off off", "40x5 in rung 1"},
		{"missed", "40x5- off off off off off off off off", "nothing"},
		{"easy,fair,settle", "40x5+ 45x5+ 47.5x5+ off off off off off off", "47.5x5 in rung 3"},
		{"easy,fair,missed", "40x5+ 45x5+ 47.5x5- off", "45x5 in rung 2"},
		{"climb", "40x5+ 42.5x5 50x5/45x5/45x5 ", "pending"}, // no more than "go on" counts as fair
	} {
		t.Run(row.calls, func(t *testing.T) {
			l := gym.Lifter{Reps: 5, Start: kg(41)}
			kinds, err := climb.ParseCalls(row.calls)
			require.NoError(t, err)
			l.Calls, err = climb.Place(nine(), l, kinds)
			require.NoError(t, err)
			p := build(t, nine(), l, rig(steps(2.5)))
			assert.True(t, p.Finding)
			assert.Contains(t, line(p), row.path)
			assert.Equal(t, row.outcome, outcome(p.Outcome))
			assert.Nil(t, p.Attempt)
			assert.Zero(t, p.Lines)
		})
	}
}

// A lifter whose calls do not come stays at the load: the next call goes on in the
// window of then, and nothing that nobody called counts. The trade's rule that a
// load rises only from a set that moved: common practice, no source.
func TestFindingWithoutACallStays(t *testing.T) {
	all := "45x5/42.5x5/40x5 "
	for _, row := range []struct {
		name, path, outcome string
		calls               []gym.Call
	}{
		{"four windows late", "skipped skipped skipped 40x5+ 45x5 52.5x5/47.5x5/47.5x5 ", "pending", []gym.Call{{Rung: 3, Kind: gym.EasyCall}}},
		{"a gap of two", "40x5+ skipped skipped 45x5+ 47.5x5 55x5/50x5/50x5 ", "pending", []gym.Call{{Rung: 0, Kind: gym.EasyCall}, {Rung: 3, Kind: gym.FairCall}}},
		{"missed after a gap", "40x5+ skipped skipped 45x5- off off off off off", "40x5 in rung 1", []gym.Call{{Rung: 0, Kind: gym.EasyCall}, {Rung: 3, Kind: gym.MissedCall}}},
		{"the first set missed, said late", "skipped skipped 40x5- off", "nothing", []gym.Call{{Rung: 2, Kind: gym.MissedCall}}},
		{"said at the very end", "skipped skipped skipped skipped skipped skipped skipped skipped 40x5+", "40x5 in rung 9", []gym.Call{{Rung: 8, Kind: gym.FairCall}}},
		{"never", "40x5 " + all + all + all + all + all + all + all + "45x5/42.5x5/40x5", "pending", nil},
	} {
		t.Run(row.name, func(t *testing.T) {
			p := build(t, nine(), gym.Lifter{Reps: 5, Start: kg(41), Calls: row.calls}, rig(steps(2.5)))
			assert.Contains(t, line(p)+" ", strings.TrimSuffix(row.path, " ")+" ")
			assert.Equal(t, row.outcome, outcome(p.Outcome))
		})
	}
}

func TestFindingOwesTheCallOfThePresentWindow(t *testing.T) {
	p := build(t, nine(), gym.Lifter{Reps: 5, Start: kg(41), Calls: []gym.Call{{Rung: 0, Kind: gym.EasyCall}}}, rig(steps(2.5)))
	for _, row := range []struct{ at, rung int }{{1, 1}, {2, 1}, {3, 2}, {8, 7}} {
		rung, _, ok := p.Owes(row.at)
		require.True(t, ok, "at rung %d", row.at+1)
		assert.Equal(t, row.rung, rung, "at rung %d", row.at+1)
		assert.Equal(t, 1, p.Asked(rung), "the last load that is known")
	}
	_, _, ok := p.Owes(0)
	assert.False(t, ok, "it was called")
}

func TestFindingClimbForALateComer(t *testing.T) {
	l := gym.Lifter{Reps: 3, Start: kg(60), Joined: 7, Calls: []gym.Call{{Rung: 2, Kind: gym.EasyCall}, {Rung: 7, Kind: gym.FairCall}}}
	p := build(t, nine(), l, rig(steps(2.5)))
	assert.Equal(t, "skipped skipped skipped skipped skipped skipped skipped 60x3+ 65x3", line(p))
	l.Calls = append(l.Calls, gym.Call{Rung: 8, Kind: gym.MissedCall})
	assert.Equal(t, "60x3 in rung 8", outcome(build(t, nine(), l, rig(steps(2.5))).Outcome))
}

func TestFindingClimbStartsAtTheBar(t *testing.T) {
	p := build(t, nine(), gym.Lifter{Reps: 5, Start: kg(12)}, rig(steps(2.5)))
	assert.Equal(t, kg(20), p.Steps[0].Load)
	assert.True(t, p.Steps[0].Under)
}

func TestFindingClimbStopsAtTheHeaviest(t *testing.T) {
	l := gym.Lifter{Reps: 1, Start: kg(290), Calls: []gym.Call{{Rung: 0, Kind: gym.EasyCall}, {Rung: 1, Kind: gym.EasyCall}}}
	p := build(t, nine(), l, rig(steps(2.5)))
	assert.Equal(t, []mass.Mass{kg(290), kg(300), kg(300)}, []mass.Mass{p.Steps[0].Load, p.Steps[1].Load, p.Steps[2].Load})
	assert.True(t, p.Steps[1].Short)
}

func TestCalls(t *testing.T) {
	kinds, err := climb.ParseCalls(" Climb, settle ,MISSED")
	require.NoError(t, err)
	assert.Equal(t, []gym.CallKind{gym.ClimbCall, gym.SettleCall, gym.MissedCall}, kinds)
	kinds, err = climb.ParseCalls("  ")
	require.NoError(t, err)
	assert.Empty(t, kinds)
	for _, text := range []string{"jump", "climb,", ",", "climb settle"} {
		_, err = climb.ParseCalls(text)
		assert.ErrorIs(t, err, climb.ErrCall, "%q", text)
	}
}

func TestPlaceCalls(t *testing.T) {
	kinds := []gym.CallKind{gym.ClimbCall, gym.SettleCall}
	based, finding := gym.Lifter{Base: kg(100)}, gym.Lifter{Start: kg(20)}
	for _, row := range []struct {
		lifter gym.Lifter
		joined int
		want   []int
	}{
		{based, 0, []int{5, 6}},
		{based, 6, []int{6, 7}},
		{finding, 0, []int{0, 1}},
		{finding, 3, []int{3, 4}},
	} {
		row.lifter.Joined = row.joined
		calls, err := climb.Place(nine(), row.lifter, kinds)
		require.NoError(t, err)
		require.Len(t, calls, 2)
		assert.Equal(t, row.want, []int{calls[0].Rung, calls[1].Rung})
	}
	based.Joined = 8
	_, err := climb.Place(nine(), based, kinds)
	require.ErrorIs(t, err, climb.ErrCall)
	assert.ErrorContains(t, err, `"settle"`)
}
