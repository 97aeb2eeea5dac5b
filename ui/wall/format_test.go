package wall

import (
	"fmt"
	"image"
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/clock"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

var chipper = []gym.Item{
	{Movement: "row-metres", Amount: 500}, {Movement: "kettlebell-swing", Amount: 50}, {Movement: "kettlebell-goblet-squat", Amount: 40}, {Movement: "dumbbell-snatch", Amount: 30},
}

// formats are a workout of every format at an instant of its clock, the count-in not
// counted: what stands beside the clock, whether that says rest, and which movements
// have their turn now and next, from 0.
var formats = []struct {
	workout   gym.Workout
	at        time.Duration
	round     string
	rest      bool
	now, next int
}{
	{gym.Workout{Format: gym.AMRAP, Seconds: 720, Items: workouts[0].Items}, 90 * time.Second, "usual pace: round 1", false, -1, -1},
	{gym.Workout{Format: gym.ForTime, Reps: []int{21, 15, 9}, Cap: 600, Items: workouts[2].Items}, 90 * time.Second, "usual pace: the 21s", false, -1, -1},
	{gym.Workout{Format: gym.Chipper, Cap: 1800, Items: chipper}, 4 * time.Minute, "usual pace: 3 of 4", false, -1, -1},
	{gym.Workout{Format: gym.EMOM, Seconds: 900, Items: slots}, 30 * time.Second, "minute 1 of 15", false, 0, 1},
	{gym.Workout{Format: gym.EMOM, Seconds: 900, Items: slots}, 150 * time.Second, "minute 3 of 15", true, -1, 0},
	{gym.Workout{Format: gym.Intervals, Rounds: 8, Work: 60, Rest: 45, Items: turns}, 20 * time.Second, "work: round 1 of 8", false, 0, 1},
	{gym.Workout{Format: gym.Intervals, Rounds: 8, Work: 60, Rest: 45, Items: turns}, 70 * time.Second, "then round 2 of 8", true, -1, 1},
	{gym.Workout{Format: gym.PlainSets, Rounds: 5, Rest: 90, Items: []gym.Item{{Movement: "kettlebell-goblet-squat", Amount: 12}, {Movement: "dumbbell-snatch", Amount: 8}}}, 2 * time.Minute, "usual pace: set 2 of 5", false, -1, -1},
}

var (
	slots = []gym.Item{{Movement: "kettlebell-swing", Amount: 12}, {Movement: "kettlebell-goblet-squat", Amount: 10}, {}}
	turns = []gym.Item{{Movement: "row-metres"}, {Movement: "kettlebell-swing"}}
)

// conditioningHall brings the hall to its conditioning, with the clock running.
func conditioningHall(t *testing.T) *hall {
	h := newHall(t, 6)
	h.until(20*time.Minute + time.Second)
	require.NoError(t, h.StartConditioning(h.class))
	require.NoError(t, h.StartClock(h.class))
	return h
}

// everybodyDoes gives every track one workout and sets its clock.
func (h *hall) everybodyDoes(w gym.Workout, at time.Duration) {
	h.t.Helper()
	c, _ := h.Class(h.class)
	for _, p := range c.Pieces {
		p.Workout = w
		require.NoError(h.t, h.KeepPiece(h.class, p))
	}
	require.NoError(h.t, h.SetClock(h.class, clock.CountIn+at))
}

// In every format the athletes see how far they are and, with the loads of all three
// tiers, every movement that may come next.
func TestEveryFormatCanBeRead(t *testing.T) {
	h := conditioningHall(t)
	for _, f := range formats {
		h.everybodyDoes(f.workout, f.at)
		name := fmt.Sprintf("%s at %s", f.workout.Format, f.at)
		scene, face := h.scene()
		panel := scene.Work.Panels[0]
		assert.Equal(t, f.round, panel.Round, name)
		assert.Equal(t, f.rest, panel.Rest, name)
		assert.Equal(t, f.rest, face.Bright, name)
		for i, item := range panel.Items {
			assert.Equal(t, i == f.now, item.Present, "%s: %s", name, item.Text)
			assert.Equal(t, i == f.next, item.Next, "%s: %s", name, item.Text)
			h.saysLoads(f.workout.Items[i].Movement, item, name)
		}
		for look, p := range map[string]look.Palette{"dark": look.Dark(), "light": look.Light()} {
			v, w := h.show(p, full, inch65)
			h.everyPanelReads(v, w)
			h.look(w, fmt.Sprintf("format-%s-%s-%s", f.workout.Format, f.at, look))
			assert.Len(t, v.work, 1, "%s: nobody waits for what comes next", name)
		}
	}
}

// saysLoads compares an item with the catalogue's loads of both standards.
func (h *hall) saysLoads(movement gym.MovementKey, item Item, name string) {
	h.t.Helper()
	m, _ := h.Movement(movement)
	men, women := m.Loads[gym.StandardM], m.Loads[gym.StandardW]
	for i, pair := range [][2]mass.Mass{{men.Full, women.Full}, {men.Mid, women.Mid}, {men.Light, women.Light}} {
		want := ""
		if pair[0] > 0 {
			want = pair[0].Digits(mass.KG) + " / " + pair[1].Digits(mass.KG)
		}
		assert.Equal(h.t, want, item.Loads[i], "%s: %s", name, item.Text)
	}
}

// A long list whose movements take turns shows those that count now.
func TestALongListShowsWhoseTurnItIs(t *testing.T) {
	h := conditioningHall(t)
	var many []gym.Item
	for _, m := range []gym.MovementKey{"kettlebell-swing", "kettlebell-goblet-squat", "dumbbell-snatch", "row-metres", "kettlebell-swing", "kettlebell-goblet-squat", "dumbbell-snatch", "row-metres"} {
		many = append(many, gym.Item{Movement: m, Amount: 11 + len(many)})
	}
	h.everybodyDoes(gym.Workout{Format: gym.EMOM, Seconds: 1440, Items: many}, 150*time.Second)
	v, w := h.show(look.Dark(), full, inch65)
	h.everyPanelReads(v, w)
	require.Len(t, v.work, 1)
	require.Len(t, v.work[0].panel.Items, 2)
	assert.Contains(t, v.work[0].panel.Items[0].Text, "13 ")
	assert.Contains(t, v.work[0].panel.Items[1].Text, "14 ")
}

// Rest is told from work without colours and without reading: the head of the wall
// changes between dark and bright.
func TestRestIsUnmistakable(t *testing.T) {
	h := conditioningHall(t)
	for name, p := range map[string]look.Palette{"dark": look.Dark(), "light": look.Light()} {
		bright := map[bool]float64{}
		for _, f := range formats {
			if f.workout.Format != gym.Intervals {
				continue
			}
			h.everybodyDoes(f.workout, f.at)
			v, w := h.show(p, fyne.NewSize(640, 360), inch65)
			bright[f.rest] = brightness(w.Canvas().Capture(), int(v.work[0].fit.band.height*0.8))
			if f.rest {
				uitest.See(t, w, restWord)
			}
		}
		assert.InDelta(t, 0.5, max(bright[true]-bright[false], bright[false]-bright[true]), 0.2, "%s: share of white", name)
	}
}

// brightness is the mean of the green of the upper rows, 0 to 1.
func brightness(img image.Image, rows int) float64 {
	sum, n := 0.0, 0
	for y := range rows {
		for x := range img.Bounds().Dx() {
			_, g, _, _ := img.At(x, y).RGBA()
			sum, n = sum+float64(g)/0xffff, n+1
		}
	}
	return sum / float64(n)
}

// Tracks with workouts of their own have pages of their own, and beside each its own
// clock.
func TestEveryWorkoutHasItsClock(t *testing.T) {
	h := conditioningHall(t)
	require.NoError(t, h.SetClock(h.class, clock.CountIn+65*time.Second))
	v, w := h.show(look.Dark(), full, inch65)
	seen := map[string]string{}
	for range v.work {
		page := v.work[v.drawn.turn]
		seen[page.panel.Tracks] = v.shown.Text
		uitest.See(t, w, page.panel.Tracks, page.panel.Round)
		h.look(w, "tracks-"+page.panel.Tracks)
		h.now = h.now.Add(v.standing[v.drawn.turn])
		require.NoError(t, h.SetClock(h.class, clock.CountIn+65*time.Second))
		v.Show(h.state(), h.now)
	}
	// AMRAP of 12 minutes and for time, up to 65 s; the second minute of an EMOM.
	assert.Equal(t, map[string]string{"Powerlifting": "10:55", "Weightlifting": "00:55", "Strongman": "01:05"}, seen)
}

func TestConditioning(t *testing.T) {
	h := newHall(t, 6)
	h.until(20*time.Minute + time.Second)
	require.NoError(t, h.StartConditioning(h.class))
	scene, face := h.scene()
	require.NotNil(t, scene.Work)
	assert.Equal(t, "00:10", face.Text, "the count-in")
	require.Len(t, scene.Work.Panels, 3)
	assert.True(t, strings.HasPrefix(scene.Work.Panels[0].Head, "AMRAP 12"))
	require.NoError(t, h.StartClock(h.class))
	h.now = h.now.Add(clock.CountIn + 65*time.Second)
	scene, face = h.scene()
	assert.Equal(t, "10:55", face.Text)
	emom := scene.Work.Panels[1]
	assert.Equal(t, "minute 2 of 10", emom.Round)
	assert.True(t, emom.Rest)
	assert.False(t, emom.Items[0].Present, "the second minute is rest")
	assert.True(t, emom.Items[0].Next)
	swing := h.swing()
	assert.Contains(t, emom.Items[0].Loads[0], swing.Loads[gym.StandardM].Full.Digits(mass.KG))
	assert.Contains(t, emom.Items[0].Loads[2], swing.Loads[gym.StandardW].Light.Digits(mass.KG))
	for name, p := range map[string]look.Palette{"dark": look.Dark(), "light": look.Light()} {
		v, w := h.show(p, full, inch65)
		h.everyPanelReads(v, w)
		h.look(w, "work-"+name)
	}
	for i := range h.Tracks() {
		c, _ := h.Class(h.class)
		p := c.Pieces[i]
		p.Workout = workouts[0]
		require.NoError(t, h.KeepPiece(h.class, p))
	}
	v, w := h.show(look.Dark(), full, inch65)
	h.everyPanelReads(v, w)
	h.look(w, "work-one")
}

func (h *hall) swing() gym.Movement {
	m, _ := h.Movement("kettlebell-swing")
	return m
}

func (h *hall) everyPanelReads(v *View, w *uitest.Window) {
	h.t.Helper()
	for _, page := range v.work {
		require.GreaterOrEqual(h.t, page.fit.arc, LeastArc)
		assert.Empty(h.t, uitest.Overflows(w))
		small := 0
		for _, line := range v.sheet.lines.all {
			if line.Visible() && line.Text != "" && arcOf(line.TextSize*capShare, v.size.Height, inch65, 8) < LeastArc-1e-3 {
				small++
			}
		}
		assert.LessOrEqual(h.t, small, 1)
		h.now = h.now.Add(v.stands(v.drawn.scene)[v.drawn.turn])
		v.Tick(h.now)
	}
}
