package wall

import (
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

var full = fyne.NewSize(1920, 1080)

// scene is what the wall says now.
func (h *hall) scene() (Scene, Face) {
	scene, faces := h.state().At(h.now)
	return scene, faces[0]
}

// row finds a lifter's row by what the wall calls them.
func (h *hall) row(name string) Row {
	h.t.Helper()
	scene, _ := h.scene()
	require.NotNil(h.t, scene.Climb)
	for _, s := range scene.Climb.Stations {
		for _, r := range s.Rows {
			if r.Name == name {
				return r
			}
		}
	}
	require.Fail(h.t, "nobody is called so on the wall", name)
	return Row{}
}

func TestNothingRuns(t *testing.T) {
	h := newHall(t, 0)
	slots := []gym.Slot{
		{Weekday: day.Monday, At: day.ClockOf(18, 0), Minutes: 60, Name: "Evening bar"},
		{Weekday: day.Monday, At: day.ClockOf(6, 30), Minutes: 60, Name: "Early bar"},
		{Weekday: day.Wednesday, At: day.ClockOf(7, 0), Minutes: 60, Name: "Midweek"},
	}
	at := func(d, hour, minute int) time.Time { return time.Date(2026, 3, d, hour, minute, 0, 0, time.UTC) }
	holiday := []gym.Closure{{From: day.Of(2026, 3, 11), Until: day.Of(2026, 3, 15), Name: "Holiday"}}
	for _, row := range []struct {
		now      time.Time
		slots    []gym.Slot
		closures []gym.Closure
		want     Idle
	}{
		{at(9, 6, 0), slots, nil, Idle{"06:30", "Early bar", "today"}},
		{at(9, 6, 30), slots, nil, Idle{"18:00", "Evening bar", "today"}}, // it should have begun
		{at(10, 12, 0), slots, nil, Idle{"07:00", "Midweek", "tomorrow"}},
		{at(9, 20, 0), slots, nil, Idle{"07:00", "Midweek", "Wednesday"}},
		{at(10, 12, 0), slots, holiday, Idle{"06:30", "Early bar", "Monday"}},
		{at(9, 6, 0), nil, nil, Idle{}},
	} {
		s := h.state()
		s.Book.Slots, s.Book.Closures = row.slots, row.closures
		scene, faces := s.At(row.now)
		require.NotNil(t, scene.Idle)
		assert.Equal(t, row.want, *scene.Idle, "at %s", row.now)
		assert.Empty(t, faces)
	}
}

// A wall without a class is black in either look, but for what comes next.
func TestIdleIsBlack(t *testing.T) {
	for name, p := range map[string]look.Palette{"dark": look.Dark(), "light": look.Light()} {
		h := newHall(t, 0)
		v, w := h.show(p, fyne.NewSize(640, 360), inch65)
		s := h.state()
		s.Book.Slots = []gym.Slot{{Weekday: day.Monday, At: day.ClockOf(18, 0), Minutes: 60, Name: "Evening bar"}}
		v.Show(s, h.now)
		uitest.See(t, w, "18:00", "Evening bar", "Next class today")
		h.look(w, "idle-"+name)
		img, lit := w.Canvas().Capture(), 0
		for y := range img.Bounds().Dy() {
			for x := range img.Bounds().Dx() {
				if r, g, b, _ := img.At(x, y).RGBA(); r+g+b > 0 {
					lit++
				}
			}
		}
		assert.Less(t, float64(lit)/float64(640*360), 0.12, "share of the screen that is lit")
		assert.Positive(t, lit)
	}
}

func TestSetUpShowsWhoLiftsWhereAndTheWholeTime(t *testing.T) {
	h := newHall(t, 6)
	scene, face := h.scene()
	require.NotNil(t, scene.Climb)
	assert.Equal(t, Face{Text: "20:00", Tone: Waiting}, face)
	assert.NotEmpty(t, h.row("Ada").Now.Text)
	assert.NotEmpty(t, h.row("Ada").Discs)
}

// The clock of the wall is the desk's, to the second.
func TestFaceFollowsTheClock(t *testing.T) {
	h := newHall(t, 6)
	for _, row := range []struct {
		shown time.Duration
		text  string
		tone  Tone
	}{
		{0, "01:00", Going},
		{20 * time.Second, "00:40", Going},
		{58 * time.Second, "00:02", Soon},
		{time.Minute, "01:00", Going},
	} {
		h.until(row.shown)
		_, face := h.scene()
		assert.Equal(t, row.text, face.Text, "at %s", row.shown)
		assert.Equal(t, row.tone, face.Tone, "at %s", row.shown)
	}
	require.NoError(t, h.HoldClock(h.class))
	h.now = h.now.Add(time.Hour)
	_, face := h.scene()
	assert.Equal(t, Held, face.Tone)
	assert.Equal(t, "01:00", face.Text)
}

// What rows say are the board's loads; both numbers while the call is open.
func TestRowsSayTheBoard(t *testing.T) {
	h := newHall(t, 6)
	h.until(13 * time.Minute)
	board := h.state().Board
	m := board.At(h.now)
	open := 0
	for _, l := range board.Lifters() {
		row := h.row(l.Wall)
		if set := l.Sets[m.Next]; len(set.Options) > 1 {
			open++
			assert.Equal(t, set.Options[0].Load.Digits(l.Unit), row.Next.Text)
			assert.Equal(t, set.Options[len(set.Options)-1].Load.Digits(l.Unit), row.Next.Or)
			assert.Equal(t, row.Next.Or+" / "+row.Next.Text, row.Next.String(), "the lighter first, as on the desk")
			assert.Less(t, set.Options[len(set.Options)-1].Load, set.Options[0].Load)
		}
		assert.Equal(t, l.Sets[m.Rung].Likely().Digits(l.Unit), row.Now.Text)
		require.Len(t, row.Discs, len(l.Sets[m.Rung].Discs))
		for i, d := range row.Discs {
			assert.Equal(t, l.Sets[m.Rung].Discs[i].Mass.Digits(l.Unit), d.Label)
		}
	}
	assert.Positive(t, open, "some call is open before a top rung")
}

func (h *hall) athlete(first string) gym.ID {
	for _, a := range h.Book().Athletes {
		if strings.HasPrefix(a.Name, first+" ") {
			return a.ID
		}
	}
	return ""
}

// A name stands on the wall as its owner chose; notes and restrictions never do.
func TestPrivacy(t *testing.T) {
	h := newHall(t, 6)
	for first, show := range map[string]gym.WallShow{"Ada": gym.WallInitials, "Bo": gym.WallNothing} {
		a, _ := h.Athlete(h.athlete(first))
		a.Show = show
		require.NoError(t, h.KeepAthlete(a))
	}
	require.NoError(t, h.KeepRestriction(gym.Restriction{
		ID: h.NewID(), Athlete: h.athlete("Cleo"), Text: "tender shoulder", Region: gym.Upper, From: day.From(h.now),
	}))
	h.until(time.Second)
	v, w := h.show(look.Dark(), full, inch65)
	var said []string
	for range len(v.fit.pages) {
		said = append(said, uitest.Read(w)...)
		h.now = h.now.Add(v.stands(v.drawn.scene)[v.drawn.turn])
		v.Tick(h.now)
	}
	all := strings.Join(said, "\n")
	assert.Contains(t, said, "AL", "initials")
	assert.Contains(t, said, "Cleo")
	for _, secret := range []string{"Ada", "Bo", "BH", "Lund", "Halvorsen", "Ito", "whispered", "note", "tender", "shoulder"} {
		assert.NotContains(t, all, secret)
	}
}

// A picture that has not changed is not drawn again, and pages leave no objects
// behind.
func TestNothingIsDrawnTwice(t *testing.T) {
	h := newHall(t, 18)
	h.until(90 * time.Second)
	require.NoError(t, h.HoldClock(h.class))
	v, _ := h.show(look.Dark(), full, inch65)
	var most int
	for round := range 3 {
		for range v.fit.pages {
			h.now = h.now.Add(v.stands(v.drawn.scene)[v.drawn.turn])
			v.drawn.scene.Climb.Present = -2 // draw anew
			v.Tick(h.now)
		}
		count := len(v.sheet.lines.all) + len(v.sheet.boxes.all) + len(v.sheet.marks.all)
		if round == 0 {
			most = count
		}
		assert.Equal(t, most, count)
	}
}

// One picture holds how the wall looks.
func TestLook(t *testing.T) {
	h := newHall(t, 6)
	h.until(13 * time.Minute)
	_, w := h.show(look.Dark(), fyne.NewSize(512, 288), inch65)
	uitest.Golden(t, w, "climb-dark")
}

// A held clock has a sign of its own beside its colour, in the climb and after it.
func TestAHeldClockHasASign(t *testing.T) {
	h := newHall(t, 6)
	h.until(90 * time.Second)
	bars := func() int {
		v, w := h.show(look.Dark(), fyne.NewSize(640, 360), inch65)
		h.look(w, "held")
		return v.sheet.boxes.used
	}
	before := bars()
	require.NoError(t, h.HoldClock(h.class))
	scene, _ := h.scene()
	assert.True(t, scene.Climb.Held)
	assert.Equal(t, before+2, bars(), "two bars")
	h = conditioningHall(t)
	before = bars()
	require.NoError(t, h.HoldClock(h.class))
	scene, _ = h.scene()
	assert.True(t, scene.Work.Panels[0].Held)
	assert.Equal(t, before+2, bars())
}
