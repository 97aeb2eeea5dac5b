package desk_test

import (
	"context"
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/desk"
	"windlass/internal/gym"
)

// A result that the coach logs and an athlete who is checked in while a sheet comes
// in are on the disk at once, and stand before the sheet's rows in the file and in
// the book.
func TestVerbsGoBeforeALongStep(t *testing.T) {
	h := newInlet(t)
	long, cancel, ended := h.begin(desk.ResultSheet, resultSheet(0, longRows))
	defer cancel()
	<-h.gate.at
	h.gate.on <- struct{}{}
	require.Equal(t, 512, <-h.gate.at, "half way in")
	assert.True(t, long.Alone())
	logged := h.log(h.ada, "back-squat", "5x170")
	require.NoError(t, h.CheckIn(h.class.ID, h.ada.ID))
	assert.False(t, long.Alone())
	assert.Len(t, h.Book().Results, 1, "nothing of the sheet is known before all of it is")
	h.same()
	require.NoError(t, h.letOn(ended))
	h.Land(long)
	require.Len(t, h.Book().Results, 1+longRows)
	assert.Equal(t, logged.Result.ID, h.Book().Results[0].ID)
	h.same()
	assert.Equal(t, "bring sheet.csv in", h.CanUndo(), "what ended last is taken back first")
}

// A verb that finds a long step written, but not taken up, takes it up: the book has
// the rows in the order of the file.
func TestAVerbTakesUpWhatIsWritten(t *testing.T) {
	h := newInlet(t)
	long, cancel, ended := h.begin(desk.ResultSheet, resultSheet(0, longRows))
	defer cancel()
	require.NoError(t, h.letOn(ended))
	assert.Empty(t, h.Book().Results, "it was not taken up yet")
	logged := h.log(h.ada, "back-squat", "5x170")
	require.Len(t, h.Book().Results, longRows+1)
	assert.Equal(t, logged.Result.ID, h.Book().Results[longRows].ID)
	h.Land(long)
	assert.Len(t, h.Book().Results, longRows+1, "once")
	h.same()
	_, err := h.Undo()
	require.NoError(t, err)
	assert.Equal(t, "bring sheet.csv in", h.CanUndo())
}

func TestALongStepThatIsCalledOffLeavesNothing(t *testing.T) {
	h := newInlet(t)
	before, step := *h.open().Book(), h.CanUndo()
	for _, after := range []int{0, 512} {
		long, cancel, ended := h.begin(desk.ResultSheet, resultSheet(0, longRows))
		for at := <-h.gate.at; at < after; at = <-h.gate.at {
			h.gate.on <- struct{}{}
		}
		cancel()
		require.ErrorIs(t, h.letOn(ended), context.Canceled)
		h.Land(long)
		assert.Empty(t, differing(before, *h.Book()), "after %d", after)
		assert.Equal(t, step, h.CanUndo())
		h.same()
	}
	long, cancel, ended := h.begin(desk.ResultSheet, resultSheet(0, longRows))
	defer cancel()
	require.NoError(t, h.letOn(ended))
	h.Land(long)
	assert.Len(t, h.Book().Results, longRows, "the way is free again")
}

// What the coach changes while a sheet comes in stays as the coach left it.
func TestALongStepGivesWayToAChangeOfItsRows(t *testing.T) {
	for name, change := range map[string]func(h *inlet) error{
		"an athlete of the sheet": func(h *inlet) error {
			a, _ := h.Athlete(h.ada.ID)
			a.Notes = "left knee"
			return h.KeepAthlete(a)
		},
		"a new athlete whom the sheet has too": func(h *inlet) error { return h.AddAthlete(h.NewAthlete("person aaa"), powerlifting) },
	} {
		h := newInlet(t)
		sheet := strings.Replace(rosterSheet(longRows), "Person Aab;Powerlifting", "Ada Brook;", 1) // off the track
		sheet = strings.Replace(sheet, "Name;", "Status;Name;", 1)
		sheet = strings.ReplaceAll(strings.ReplaceAll(sheet, "\nPerson", "\nactive;Person"), "\nAda", "\npaused;Ada")
		long, cancel, ended := h.begin(desk.RosterSheet, sheet)
		<-h.gate.at
		require.NoError(t, change(h), name)
		require.ErrorContains(t, h.letOn(ended), "changed meanwhile", name)
		h.Land(long)
		assert.LessOrEqual(t, len(h.Book().Athletes), 3, name)
		h.same()
		cancel()
	}
}

// A long step is taken back and made again beside the desk as well, and a failure
// leaves it where it was among the steps.
func TestALongStepIsTakenBackBesideTheDesk(t *testing.T) {
	h := newInlet(t)
	long, cancel, ended := h.begin(desk.RosterSheet, rosterSheet(longRows))
	defer cancel()
	require.NoError(t, h.letOn(ended))
	h.Land(long)
	require.Len(t, h.Book().Athletes, 2+longRows)
	for round := range 2 {
		label, back, err := h.BeginUndo()
		require.NoError(t, err)
		assert.Equal(t, "bring sheet.csv in", label)
		cancel, ended := h.beside(back)
		<-h.gate.at
		h.log(h.ada, "back-squat", fmt.Sprintf("5x%d", 100+round))
		cancel()
		require.Error(t, h.letOn(ended))
		h.Land(back)
		_, err = h.Undo() // the result, which is the later step
		require.NoError(t, err)
		assert.Equal(t, "bring sheet.csv in", h.CanUndo(), "it is where it was")

		_, back, err = h.BeginUndo()
		require.NoError(t, err)
		cancel, ended = h.beside(back)
		require.NoError(t, h.letOn(ended))
		h.Land(back)
		cancel()
		active := 0
		for _, a := range h.Book().Athletes {
			if a.Status == gym.Active {
				active++
			}
		}
		assert.Equal(t, 2, active)
		h.same()
		_, again, err := h.BeginRedo()
		require.NoError(t, err)
		cancel, ended = h.beside(again)
		require.NoError(t, h.letOn(ended))
		h.Land(again)
		cancel()
		h.same()
	}
}

func TestOneLongStepAtATime(t *testing.T) {
	h := newInlet(t)
	i := h.read(desk.ResultSheet, resultSheet(0, longRows))
	_, err := h.BeginImport(i, false)
	require.NoError(t, err)
	_, err = h.BeginImport(i, false)
	require.ErrorIs(t, err, desk.ErrUnderWay)
}

// A sheet that was read while another came in was held against a gym without it.
func TestASheetIsReadAgainAfterALongStep(t *testing.T) {
	h := newInlet(t)
	long, cancel, ended := h.begin(desk.ResultSheet, resultSheet(0, longRows))
	defer cancel()
	early := h.read(desk.ResultSheet, resultSheet(0, longRows))
	require.NoError(t, h.letOn(ended))
	h.Land(long)
	_, err := h.BeginImport(early, false)
	require.ErrorContains(t, err, "look at the sheet again")
	assert.Zero(t, h.read(desk.ResultSheet, resultSheet(0, longRows)).Proposal.Added)
	assert.Len(t, h.Book().Results, longRows)
}

// A step that is being made again is forgotten with the others when a verb is made,
// even if it fails after that: it may no longer fit.
func TestAVerbForgetsALongStepThatIsMadeAgain(t *testing.T) {
	h := newInlet(t)
	long, cancel, ended := h.begin(desk.RosterSheet, rosterSheet(longRows))
	defer cancel()
	require.NoError(t, h.letOn(ended))
	h.Land(long)
	_, back, err := h.BeginUndo()
	require.NoError(t, err)
	cancel, ended = h.beside(back)
	defer cancel()
	require.NoError(t, h.letOn(ended))
	h.Land(back)
	require.NotEmpty(t, h.CanRedo())
	for _, verb := range []bool{false, true} {
		_, again, err := h.BeginRedo()
		require.NoError(t, err)
		cancel, ended := h.beside(again)
		<-h.gate.at
		if verb {
			h.log(h.ada, "back-squat", "5x100")
		}
		cancel()
		require.Error(t, h.letOn(ended))
		h.Land(again)
		assert.Equal(t, verb, h.CanRedo() == "")
		h.same()
	}
}

// Whatever verbs are made while long steps come in, are called off, fail and are
// taken back: the book says what the file says, and no verb is lost.
func TestBookEqualsFileWhateverComesBetween(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		h := newInlet(t)
		h.LongFrom(25)
		logged := 0
		verb := func() {
			h.log(h.ada, "bench-press", fmt.Sprintf("5x%d", 60+logged))
			logged++
		}
		for range rapid.IntRange(1, 3).Draw(rt, "steps") {
			h.gate.torn = rapid.IntRange(0, 3).Draw(rt, "torn") == 0
			long := h.anyLong(rt)
			cancel, ended := h.beside(long)
			for range rapid.IntRange(0, 2).Draw(rt, "verbs") {
				ended = h.letOnTo(ended, rapid.IntRange(0, 1).Draw(rt, "words"))
				verb()
			}
			if rapid.Bool().Draw(rt, "called off") {
				cancel()
			}
			_ = h.letOn(ended)
			if rapid.Bool().Draw(rt, "verb before it is taken up") {
				verb()
			}
			h.Land(long)
			cancel()
			require.Empty(rt, differing(*h.open().Book(), *h.Book()))
			require.True(rt, h.IndexIsTrue())
		}
		benches := 0
		for _, r := range h.Book().Results {
			if r.Lift == "bench-press" && (r.Void == nil || r.Void.Reason == "undone") {
				benches++
			}
		}
		require.Equal(rt, logged, benches, "a verb was lost")
	})
}

// anyLong begins to bring a sheet in, to take one back, or to bring it in again.
func (h *inlet) anyLong(rt *rapid.T) *desk.LongStep {
	again := rapid.IntRange(0, 2).Draw(rt, "new, back or again")
	for kind, begin := range map[int]func() (string, *desk.LongStep, error){1: h.BeginUndo, 2: h.BeginRedo} {
		last := map[int]string{1: h.CanUndo(), 2: h.CanRedo()}[kind]
		if again == kind && strings.HasPrefix(last, "bring") {
			_, long, err := begin()
			require.NoError(rt, err)
			return long
		}
	}
	long, err := h.BeginImport(h.read(desk.ResultSheet, resultSheet(len(h.Book().Results), 30)), false)
	require.NoError(rt, err)
	return long
}
