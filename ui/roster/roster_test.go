package roster_test

import (
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/look"
	"windlass/ui/roster"
	"windlass/ui/uitest"
)

var pictures = flag.String("pictures", "", "keep pictures of the room in a folder")

// stage is what the window leaves a room of 1440 × 900.
var stage = fyne.NewSize(1240, 860)

func open(t *testing.T, p look.Palette) *uitest.Host {
	t.Helper()
	d, _ := uitest.DemoDesk(t)
	return uitest.Stage(t, d, p, stage, roster.New)
}

func snapshot(t *testing.T, h *uitest.Host, name string) {
	t.Helper()
	if *pictures != "" {
		uitest.Snapshot(t, h.On, filepath.Join(*pictures, "roster-"+name+".png"))
	}
}

func TestRosterShowsEverybodyAndTheChosenRecord(t *testing.T) {
	for name, p := range map[string]look.Palette{"dark": look.Dark(), "light": look.Light()} {
		h := open(t, p)
		uitest.See(t, h.On, "Ansa Kivelo", "Powerlifting", "Active 34", "5 rep max")
		snapshot(t, h, name)
	}
}

func TestNothingIsCutOffOnALargeScreen(t *testing.T) {
	d, _ := uitest.DemoDesk(t)
	h := uitest.Stage(t, d, look.Light(), fyne.NewSize(1720, 1040), roster.New)
	one(t, h, "Matteo Ferrandi")
	uitest.See(t, h.On, " lb")
	snapshot(t, h, "large")
	h.Press(t, "F6")
	snapshot(t, h, "large-conditioning")
}

func TestAnEmptyGymIsToldWhatToDoFirst(t *testing.T) {
	now := uitest.Morning
	var n byte
	book, err := desk.Starter("Empty Gym", func() gym.ID { n++; return gym.NewID(now, [10]byte{n}) })
	require.NoError(t, err)
	h := uitest.Stage(t, uitest.DeskOn(t, book, &now), look.Dark(), stage, roster.New)
	uitest.See(t, h.On, "Nobody trains here yet.", "Nobody chosen")
	snapshot(t, h, "empty")
}

func TestTypingSearches(t *testing.T) {
	h := open(t, look.Dark())
	uitest.Type(t, h.On, "wen")
	assert.Equal(t, 3, strings.Count(strings.Join(uitest.Read(h.On), "|"), "Wen Liangshu"), "in the table, under it and over the record")
	uitest.NotSee(t, h.On, "Ansa Kivelo")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.Type(t, h.On, "x")
	uitest.See(t, h.On, "Nobody fits.")
	uitest.Key(t, h.On, fyne.KeyEscape)
	uitest.See(t, h.On, "Ansa Kivelo")
}

func TestResultIsReadThenLoggedThenTakenBack(t *testing.T) {
	h := open(t, look.Dark())
	a := one(t, h, "Bram Oostling")
	before, _ := h.Desk().Record(a.ID, "back-squat", 5)
	h.Press(t, "F2")
	uitest.Type(t, h.On, "5x160")
	uitest.See(t, h.On, "5 × 160 kg: a new 5RM")
	snapshot(t, h, "entry")
	uitest.Key(t, h.On, fyne.KeyReturn)
	after, _ := h.Desk().Record(a.ID, "back-squat", 5)
	assert.Equal(t, "160 kg", after.Load.String())
	assert.Contains(t, h.Said[len(h.Said)-1], "Bram Oostling, Back squat 5 × 160 kg: a new 5RM")
	uitest.See(t, h.On, "160 kg", "is proof for")
	uitest.Tap(t, h.On, "Raise it")
	three, _ := h.Desk().Record(a.ID, "back-squat", 3)
	assert.Equal(t, "160 kg", three.Load.String())
	for range 2 {
		_, err := h.Desk().Undo()
		require.NoError(t, err)
	}
	back, _ := h.Desk().Record(a.ID, "back-squat", 5)
	assert.Equal(t, before.Load, back.Load)
	uitest.NotSee(t, h.On, "is proof for")
}

func TestNonsenseIsRefusedInPlace(t *testing.T) {
	h := open(t, look.Dark())
	a := one(t, h, "Bram Oostling")
	n := len(h.Desk().Results(a.ID))
	h.Press(t, "F2")
	uitest.Type(t, h.On, "lots")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "Not logged.", `Could not read "lots"`, "Write")
	assert.Len(t, h.Desk().Results(a.ID), n)
}

func TestResultIsVoidedWithAReason(t *testing.T) {
	h := open(t, look.Dark())
	a := one(t, h, "Bram Oostling")
	h.Press(t, "F9")
	h.Press(t, "Del")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "Write a word or two")
	uitest.Fill(t, h.On, "Why", "wrong bar")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "void: wrong bar")
	voided := h.Desk().History(a.ID, "back-squat")[0]
	require.NotNil(t, voided.Void)
	assert.Equal(t, "wrong bar", voided.Void.Reason)
	snapshot(t, h, "history")
}

// one brings an athlete under the cursor.
func one(t *testing.T, h *uitest.Host, name string) gym.Athlete {
	t.Helper()
	for _, a := range h.Desk().Book().Athletes {
		if a.Name == name {
			h.Room.Show(a.ID)
			uitest.See(t, h.On, name)
			return a
		}
	}
	require.Fail(t, "nobody has that name", name)
	return gym.Athlete{}
}

func TestSeveralAreMovedAndPaused(t *testing.T) {
	h := open(t, look.Dark())
	uitest.Key(t, h.On, fyne.KeySpace, fyne.KeyDown, fyne.KeySpace)
	uitest.See(t, h.On, "For the 2 marked.")
	h.Press(t, "Ctrl+M")
	uitest.Fill(t, h.On, "To the track", "Weightlifting")
	uitest.Key(t, h.On, fyne.KeyReturn, fyne.KeyReturn)
	d := h.Desk()
	uitest.NotSee(t, h.On, "For the 2 marked.")
	for _, name := range []string{"Alasdair Pennick", "Ansa Kivelo"} {
		assert.Equal(t, "Weightlifting", d.TrackOn(id(t, h, name), d.Today()).Name, name)
	}
	h.Room.Show(id(t, h, "Alasdair Pennick"))
	uitest.Key(t, h.On, fyne.KeySpace, fyne.KeyDown, fyne.KeySpace)
	h.Press(t, "Ctrl+P")
	uitest.See(t, h.On, "Paused 3")
	assert.Equal(t, "2 athletes are paused.", h.Said[len(h.Said)-1])
	_, err := d.Undo()
	require.NoError(t, err)
	uitest.See(t, h.On, "Paused 1")
}

func id(t *testing.T, h *uitest.Host, name string) gym.ID {
	t.Helper()
	for _, a := range h.Desk().Book().Athletes {
		if a.Name == name {
			return a.ID
		}
	}
	require.Fail(t, "nobody has that name", name)
	return ""
}

func TestMoveSaysWhatItDoes(t *testing.T) {
	h := open(t, look.Dark())
	one(t, h, "Bram Oostling")
	h.Press(t, "Ctrl+M")
	uitest.Fill(t, h.On, "To the track", "Strongman")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "rep maxes to find or estimate")
	snapshot(t, h, "move")
}

func TestAthleteIsAdded(t *testing.T) {
	h := open(t, look.Dark())
	h.Press(t, "Ctrl+N")
	snapshot(t, h, "add")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "the name is empty")
	uitest.Fill(t, h.On, "Name", "Leopold Arnsby")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "Active 35", "Leopold Arnsby", "Has not come to a class yet")
}

func TestFileIsLookedAtBeforeItComesIn(t *testing.T) {
	h := open(t, look.Dark())
	path := filepath.Join(t.TempDir(), "roster.csv")
	require.NoError(t, os.WriteFile(path, []byte("Name;Back squat 5RM (lb)\nLeopold Arnsby;185\nMina Roth;heavy\n"), 0o600))
	h.Press(t, "Ctrl+O")
	snapshot(t, h, "file")
	uitest.Fill(t, h.On, "File, CSV or XLSX; you can also drop it on the window", path)
	uitest.Tap(t, h.On, "Look at it")
	uitest.See(t, h.On, "2 rows read: 1 new", "Back squat 5RM (lb)", "Skip the 1 refused", "Leopold Arnsby", "Back squat 5RM 185 lb", "Could not read load")
	snapshot(t, h, "preview")
	n := len(h.Desk().Book().Athletes)
	uitest.Tap(t, h.On, "Bring it in")
	assert.Len(t, h.Desk().Book().Athletes, n, "a bad row keeps the file out")
	uitest.See(t, h.On, "1 row was refused", "choose to skip the bad rows")
	snapshot(t, h, "preview-refused")
	uitest.Tap(t, h.On, "Write a CSV of what came in and what was refused, beside the file")
	uitest.Tap(t, h.On, "Skip the 1 refused, and bring the rest in")
	uitest.Key(t, h.On, fyne.KeyReturn)
	assert.Len(t, h.Desk().Book().Athletes, n+1)
	assert.Contains(t, h.Said[len(h.Said)-1], "Written to")
	r, ok := h.Desk().Record(id(t, h, "Leopold Arnsby"), "back-squat", 5)
	require.True(t, ok)
	assert.Equal(t, "185 lb", r.Load.In(r.Unit))
}

// Every remark has a line of its own.
func TestRemarksOnAFileAreAList(t *testing.T) {
	h := open(t, look.Dark())
	path := filepath.Join(t.TempDir(), "roster.csv")
	require.NoError(t, os.WriteFile(path, []byte("Name;Shoe size\nLeopold Arnsby;44\nMina Roth;38\n"), 0o600))
	h.Press(t, "Ctrl+O")
	uitest.Fill(t, h.On, "File, CSV or XLSX; you can also drop it on the window", path)
	uitest.Tap(t, h.On, "Look at it")
	uitest.See(t, h.On, "Worth a look", "Columns that mean nothing to the program: Shoe size.",
		"Leopold Arnsby has no load standard and starts from W, the lighter; change it in the roster.",
		"Mina Roth has no load standard and starts from W, the lighter; change it in the roster.")
	snapshot(t, h, "remarks")
}

func TestAFileThatIsNoneIsExplained(t *testing.T) {
	h := open(t, look.Dark())
	h.Press(t, "Ctrl+O")
	uitest.Fill(t, h.On, "File, CSV or XLSX; you can also drop it on the window", "/no/such/roster.csv")
	uitest.Tap(t, h.On, "Look at it")
	uitest.See(t, h.On, "Bring a file in", "There is no file or folder of that name.")
	assert.Empty(t, h.Said, "it is said under the field")
}

func TestConditioningShowsSuggestionsAndKeepsDecisions(t *testing.T) {
	h := open(t, look.Dark())
	a := one(t, h, "Bram Oostling")
	h.Press(t, "F6")
	snapshot(t, h, "conditioning")
	movement := h.Desk().Loaded(a.ID)[0]
	before, err := h.Desk().Advise(a.ID, movement, 0)
	require.NoError(t, err)
	uitest.See(t, h.On, before.Movement.Name, before.Decision.Suggestion.Load.String())
	h.Press(t, "Ctrl+E")
	lightest := before.Rack.Owned[0].String()
	uitest.Fill(t, h.On, "Load", lightest)
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.Fill(t, h.On, "Why", "sore wrist")
	snapshot(t, h, "decide")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "You decided "+lightest+" for "+before.Movement.Name+": sore wrist.")
	after, err := h.Desk().Advise(a.ID, movement, 0)
	require.NoError(t, err)
	assert.Equal(t, before.Rack.Owned[0], after.Decision.Load)
	assert.Equal(t, before.Decision.Suggestion, after.Decision.Suggestion, "the suggestion stays in sight")
	h.Press(t, "Ctrl+U")
	uitest.See(t, h.On, "Taking it back lets the suggestion stand again.")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.NotSee(t, h.On, "You decided")
}

func TestBackFromABreakNamesItsSourceAndADoctor(t *testing.T) {
	h := open(t, look.Dark())
	a := one(t, h, "Bram Oostling")
	h.Press(t, "F6")
	h.Press(t, "Ctrl+G")
	uitest.See(t, h.On, "Caterisano et al. 2019", "doctor", "50, 30, 20, 10 %")
	snapshot(t, h, "comeback")
	uitest.Tap(t, h.On, "Go lighter")
	assert.Len(t, h.Desk().Overrides(a.ID), 2)
	uitest.See(t, h.On, "back from a break, week 1 of 2")
}

func TestOwnWeekIsArrangedAndSetByHand(t *testing.T) {
	h := open(t, look.Dark())
	a := one(t, h, "Bram Oostling")
	h.Press(t, "F7")
	snapshot(t, h, "week")
	uitest.Tap(t, h.On, "Sat")
	after, _ := h.Desk().Athlete(a.ID)
	assert.False(t, after.Free.Has(day.Saturday))
	uitest.See(t, h.On, "left out")
	h.Press(t, "Right")
	after, _ = h.Desk().Athlete(a.ID)
	require.Len(t, after.Hand, 1)
	uitest.See(t, h.On, "by hand")
	snapshot(t, h, "week-by-hand")
	h.Press(t, "Ctrl+U")
	after, _ = h.Desk().Athlete(a.ID)
	assert.Empty(t, after.Hand)
}

func TestDetailsAreKeptInPlace(t *testing.T) {
	h := open(t, look.Dark())
	a := one(t, h, "Bram Oostling")
	h.Press(t, "F8")
	uitest.Tap(t, h.On, "initials")
	after, _ := h.Desk().Athlete(a.ID)
	assert.Equal(t, gym.WallInitials, after.Show)
	h.Press(t, "Ctrl+R")
	uitest.Fill(t, h.On, "What to avoid", "no jumping")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "no jumping", "everywhere", "1 restriction")
	snapshot(t, h, "details")
	h.Press(t, "Del")
	assert.Empty(t, h.Desk().Restrictions(a.ID, h.Desk().Today()))
	uitest.Fill(t, h.On, "Name", "Chidera Anoruo")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "another athlete has that name")
}
