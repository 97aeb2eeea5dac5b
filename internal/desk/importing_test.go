package desk_test

import (
	"context"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/desk"
	"windlass/internal/gym"
)

func (b *bench) read(kind desk.ImportKind, sheet string) *desk.Import {
	b.t.Helper()
	i := b.NewImport("sheet.csv", desk.ImportAs{Kind: kind})
	require.NoError(b.t, i.Read(context.Background(), strings.NewReader(sheet), nil))
	return i
}

const mixedRoster = "Name;Track;Back squat 5RM (lb);Deadlift 1RM\n" +
	"Ada Brook;Powerlifting;185;\n" +
	"Bo Quist;Powerlifting;;102,5\n" +
	"Carl Dell;Powerlifting;heavy;\n"

func TestImportIsLookedAtBeforeItIsAccepted(t *testing.T) {
	b := newBench(t)
	i := b.read(desk.RosterSheet, mixedRoster)
	assert.Equal(t, "3 rows read: 2 new, 0 changed, 0 known already, 1 refused.", i.Says())
	assert.Empty(t, b.Book().Athletes, "reading changes nothing")
	assert.Equal(t, []desk.ImportLine{
		{New: true, Name: "Ada Brook", What: "Back squat 5RM 185 lb"}, {New: true, Name: "Bo Quist", What: "Deadlift 1RM 102.5 kg"},
	}, i.Lines())
	require.ErrorContains(t, b.AcceptImport(i, false), "1 row was refused")
	assert.Empty(t, b.Book().Athletes, "nor does an import with bad rows")
	require.NoError(t, b.AcceptImport(i, true))
	assert.Equal(t, []string{"Ada Brook", "Bo Quist"}, b.names(desk.RosterFilter{Track: powerlifting}))
	ada := b.Book().Athletes[0]
	r, ok := b.Record(ada.ID, "back-squat", 5)
	require.True(t, ok)
	assert.Equal(t, "185 lb", r.Load.In(r.Unit))
	again := b.read(desk.RosterSheet, mixedRoster)
	assert.Equal(t, 2, again.Proposal.Same, "what is known already changes nothing")
	_, err := b.Undo()
	require.NoError(t, err)
	assert.Empty(t, b.names(desk.RosterFilter{Track: desk.AnyTrack, Status: gym.Active}), "all of it is one step")
}

func TestImportOfResultsAndBouts(t *testing.T) {
	b := newBench(t)
	a := b.join("Ada Brook")
	results := b.read(desk.ResultSheet, "Athlete,Lift,Reps,Load,Date\nAda Brook,Back squat,5,100 kg,2026-02-01\n")
	require.NoError(t, b.AcceptImport(results, false))
	assert.Len(t, b.Results(a.ID), 1)
	assert.Equal(t, []desk.ImportLine{{Name: "Ada Brook", What: "Back squat 5RM 100 kg"}}, results.Lines())
	bouts := b.read(desk.BoutSheet, "Athlete,Movement,Load,Reps,Outcome,Date\nAda Brook,Kettlebell swing,16 kg,30,held,2026-02-01\n")
	require.NoError(t, b.AcceptImport(bouts, false))
	assert.Len(t, b.Bouts(a.ID), 1)
}

// Of an athlete with many results a line tells the first.
func TestALineOfAnImportIsShort(t *testing.T) {
	b := newBench(t)
	b.join("Ada Brook")
	b.join("Bo Quist")
	i := b.read(desk.ResultSheet, resultSheet(0, 20))
	assert.Equal(t, []desk.ImportLine{
		{Name: "Ada Brook", What: "Back squat 5RM 40 kg, Back squat 5RM 42 kg, Back squat 5RM 44 kg, Back squat 5RM 46 kg, and 6 more"},
		{Name: "Bo Quist", What: "Back squat 5RM 41 kg, Back squat 5RM 43 kg, Back squat 5RM 45 kg, Back squat 5RM 47 kg, and 6 more"},
	}, i.Lines())
}

func TestImportEndsWhenCancelled(t *testing.T) {
	b := newBench(t)
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	i := b.NewImport("sheet.csv", desk.ImportAs{})
	require.ErrorIs(t, i.Read(ctx, strings.NewReader(mixedRoster), nil), context.Canceled)
	require.NoError(t, b.AcceptImport(i, false), "nothing was read, so nothing is made")
	assert.Empty(t, b.Book().Athletes)
}

func TestOutcomeIsKeptAsCSV(t *testing.T) {
	b := newBench(t)
	i := b.read(desk.RosterSheet, mixedRoster)
	require.NoError(t, b.AcceptImport(i, true))
	name, err := i.KeepOutcome(context.Background(), t.TempDir())
	require.NoError(t, err)
	text, err := os.ReadFile(name)
	require.NoError(t, err)
	for _, want := range []string{"new,,,Ada Brook", "Back squat, 5 × 185 lb", "refused,4,Back squat 5RM (lb)"} {
		assert.Contains(t, string(text), want)
	}
}
