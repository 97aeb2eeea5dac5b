package record_test

import (
	"path/filepath"
	"slices"
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/tier"
	"windlass/ui/look"
	"windlass/ui/record"
	"windlass/ui/room"
	"windlass/ui/uitest"
)

const swing gym.MovementKey = "kettlebell-swing"

// swinger shows the conditioning of an athlete who held 16 kg and was stopped with
// 24 kg since.
func swinger(t *testing.T) (*uitest.Host, gym.Athlete) {
	t.Helper()
	now, n := uitest.Morning, byte(0)
	book, err := desk.Starter("Test Gym", func() gym.ID { n++; return gym.NewID(now, [10]byte{n}) })
	require.NoError(t, err)
	a := gym.Athlete{ID: "018e0000-0000-7000-8000-000000000777", Name: "Ada Brook", Standard: gym.StandardM, Status: gym.Active, Unit: mass.KG}
	book.Athletes = append(book.Athletes, a)
	d := uitest.DeskOn(t, book, &now)
	for i, went := range []struct {
		kg      float64
		outcome gym.Outcome
	}{{16, gym.Held}, {16, gym.Held}, {24, gym.Stopped}} {
		book.Bouts = append(book.Bouts, gym.Bout{
			ID: gym.NewID(now, [10]byte{200, byte(i)}), Athlete: a.ID, Movement: swing, Load: mass.Of(went.kg, mass.KG), Unit: mass.KG, Reps: 40,
			Outcome: went.outcome, On: d.Today().Add(7*i - 28), Workout: "AMRAP 12 min: Kettlebell swing", Score: "5+12", Made: now,
		})
	}
	d = uitest.DeskOn(t, book, &now)
	var r *record.Record
	h := uitest.Stage(t, d, look.Dark(), fyne.NewSize(1000, 812), func(h room.Host) room.Room {
		r = record.New(h, func() {}, func(rune) bool { return false })
		return alone{r}
	})
	r.Show(a.ID)
	h.Press(t, "F6")
	return h, a
}

func snapshot(t *testing.T, h *uitest.Host, name string) {
	t.Helper()
	if *pictures != "" {
		uitest.Snapshot(t, h.On, filepath.Join(*pictures, name+".png"))
	}
}

func advice(t *testing.T, h *uitest.Host, a gym.Athlete) desk.Advice {
	t.Helper()
	found, err := h.Desk().Advise(a.ID, swing, 0)
	require.NoError(t, err)
	return found
}

// heavier is the implement over a load.
func heavier(t *testing.T, a desk.Advice, load mass.Mass) string {
	t.Helper()
	i := slices.Index(a.Rack.Owned, load)
	require.True(t, i >= 0 && i+1 < len(a.Rack.Owned))
	return a.Rack.Owned[i+1].In(a.Unit)
}

// The question opens at the suggestion: Enter alone keeps no other load.
func TestDecidingBeginsAtTheSuggestion(t *testing.T) {
	h, a := swinger(t)
	suggested := advice(t, h, a).Decision.Suggestion.Load
	h.Press(t, "Ctrl+E")
	uitest.See(t, h.On, "Suggested for a usual bout of ")
	uitest.Key(t, h.On, fyne.KeyEscape)
	h.Press(t, "Ctrl+E")
	uitest.Fill(t, h.On, "Why", "keep it there")
	uitest.Key(t, h.On, fyne.KeyReturn)
	kept := h.Desk().Overrides(a.ID)
	require.Len(t, kept, 1)
	assert.Equal(t, suggested, kept[0].Load)
}

// A load over the suggestion, or one that the athlete was stopped with, is kept
// only after that was said.
func TestAHeavierLoadIsKeptOnlyKnowingly(t *testing.T) {
	h, a := swinger(t)
	s := advice(t, h, a)
	over := heavier(t, s, 24*mass.Kilogram)
	h.Press(t, "Ctrl+E")
	uitest.Fill(t, h.On, "Load", over)
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, over+" is heavier than the "+s.Decision.Suggestion.Load.In(mass.KG)+" suggested", "24 kg stopped them on ")
	uitest.Fill(t, h.On, "Why", "asked for it")
	snapshot(t, h, "decide-heavier")
	uitest.Key(t, h.On, fyne.KeyReturn)
	require.Empty(t, h.Desk().Overrides(a.ID))
	uitest.See(t, h.On, "Decide again to keep it all the same.")
	uitest.Key(t, h.On, fyne.KeyReturn)
	require.Len(t, h.Desk().Overrides(a.ID), 1)
}

// A tier for all says what it does before it is kept.
func TestATierForAllSaysWhatItDoes(t *testing.T) {
	h, a := swinger(t)
	h.Press(t, "Ctrl+T")
	uitest.See(t, h.On, "Today it makes none of 1 movement lighter, and none heavier.")
	snapshot(t, h, "decide-all")
	before := advice(t, h, a).Decision.Load
	uitest.Tap(t, h.On, "Full")
	uitest.Fill(t, h.On, "Why", "strong week")
	uitest.Key(t, h.On, fyne.KeyReturn)
	require.Len(t, h.Desk().Overrides(a.ID), 1)
	assert.Equal(t, before, advice(t, h, a).Decision.Load)
}

// The cuts of a comeback are proposed and can be changed, and so can its length;
// it is taken back whole, from a list that says what is taken back.
func TestAComebackIsSetAndTakenBack(t *testing.T) {
	h, a := swinger(t)
	h.Press(t, "Ctrl+G")
	uitest.See(t, h.On, "50, 30")
	uitest.Fill(t, h.On, "For how many weeks", "3")
	uitest.See(t, h.On, "50, 30, 20")
	uitest.Fill(t, h.On, "Lighter by how many per cent: one number, or one for each week", "40, 20, 20")
	uitest.See(t, h.On, "That is heavier than proposed in week 1 (proposed: 50 % lighter), in week 2 (proposed: 30 % lighter).")
	snapshot(t, h, "comeback")
	uitest.Key(t, h.On, fyne.KeyReturn)
	require.Len(t, h.Desk().Overrides(a.ID), 2, "weeks 2 and 3 are one")
	uitest.See(t, h.On, "You decided 40 % lighter for every movement until ")
	h.Press(t, "Ctrl+U")
	uitest.See(t, h.On, "40 %, then 20 % lighter", "every movement", "in force", "Taking it back takes back all of it that is left.")
	snapshot(t, h, "decisions")
	uitest.Key(t, h.On, fyne.KeyReturn)
	assert.Empty(t, h.Desk().Overrides(a.ID))
	h.Press(t, "Ctrl+U")
	uitest.See(t, h.On, "taken back")
}

// Any bout can be voided from the log, and stays there.
func TestAnyBoutIsVoidedFromTheLog(t *testing.T) {
	h, a := swinger(t)
	h.Press(t, "F3")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "24 kg", "stopped", "40 reps", "5+12", "outside a class")
	uitest.Key(t, h.On, fyne.KeyDown, fyne.KeyReturn)
	uitest.Type(t, h.On, "another athlete's row")
	uitest.Key(t, h.On, fyne.KeyReturn)
	log := h.Desk().BoutLog(a.ID, swing)
	require.Len(t, log, 3)
	require.NotNil(t, log[1].Void, "the second from above")
	assert.Nil(t, log[0].Void)
	assert.Nil(t, log[2].Void)
	uitest.See(t, h.On, "void: another", "It counts for nothing.")
	snapshot(t, h, "bouts")
	uitest.Fill(t, h.On, "Why the chosen one is to be void", "again")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "That bout is void already.")
}

// The chances of the table never read higher than they are.
func TestTheTableRoundsChancesDown(t *testing.T) {
	h, a := swinger(t)
	uitest.See(t, h.On, tier.Percent(advice(t, h, a).Hold))
	snapshot(t, h, "conditioning")
}
