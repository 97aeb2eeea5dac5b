package floor

import (
	"fmt"
	"strings"

	"fyne.io/fyne/v2"

	"windlass/internal/clock"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// workoutCard is one workout with its face of the clock and its movements.
type workoutCard struct {
	title  *kit.Text
	tracks *kit.Text
	digits *kit.Digits
	phase  *kit.Chip
	round  *kit.Text
	next   *kit.Text
	items  *kit.Prose
	all    fyne.CanvasObject
}

func newWorkoutCard() *workoutCard {
	c := &workoutCard{title: kit.NewHeading("").Shrinks(80), tracks: kit.NewCaption("").Shrinks(60), digits: kit.NewDigits(60).Fixed()}
	c.digits.Set("00:00", look.Text)
	c.phase, c.round, c.next = kit.NewChip("", kit.NoShape, look.Muted), kit.NewCaption(""), kit.NewCaption("").Shrinks(80)
	c.items = kit.NewProse("", 160).Small()
	words := kit.Column(look.Gap1, kit.Fill(), kit.Row(0, c.phase, kit.Fill()), c.round, c.next, kit.Fill())
	c.all = kit.NewCard("", kit.Column(look.Gap2, kit.Column(0, c.title, c.tracks),
		kit.Row(look.Gap3, c.digits, kit.Fill(words)), kit.Fill(c.items)))
	return c
}

func (c *workoutCard) set(w desk.BoardWorkout) {
	c.title.SetText(w.Title)
	c.tracks.SetText(strings.Join(w.Tracks, ", "))
	var rows []string
	for _, item := range w.Items {
		rows = append(rows, itemWords(item))
	}
	c.items.SetText(strings.Join(rows, "\n"))
}

// itemWords is a movement with the three loads of each load standard: "21-15-9
// Kettlebell swing: M 24, 20 or 16 kg; W 16, 12 or 8 kg".
func itemWords(item desk.BoardItem) string {
	text := item.Name
	if item.Amount != "" {
		text = item.Amount + " " + item.Name
	}
	for i, l := range item.Loads {
		mark := map[bool]string{true: ": ", false: "; "}[i == 0]
		text += fmt.Sprintf("%s%s %s, %s or %s", mark, l.Standard, bare(l.Full), bare(l.Mid), l.Light)
	}
	return text
}

// bare is a load without its unit, where another one follows.
func bare(load string) string {
	digits, _, _ := strings.Cut(load, " ")
	return digits
}

func (c *workoutCard) tick(w desk.BoardWorkout, m clock.WorkoutMoment) {
	tone := look.Text
	switch {
	case m.Warning > 0 && m.Running, m.CountIn > 0 && m.Running:
		tone = look.Accent
	case m.Phase == clock.Resting, m.Phase == clock.Ready, m.Phase == clock.Over:
		tone = look.Muted
	}
	c.digits.Set(m.Face(), tone)
	c.phase.Set(phaseWords(m))
	c.round.SetText(roundWords(m))
	c.next.SetText(turnWords(w, m))
}

func phaseWords(m clock.WorkoutMoment) (string, kit.Shape, look.Meaning) {
	switch {
	case m.Phase == clock.Ready:
		return "Ready", kit.Dash, look.Muted
	case m.Phase == clock.Over:
		return "Over", kit.Tick, look.Good
	case !m.Running:
		return "Held", kit.Square, look.Warn
	case m.Phase == clock.CountedIn:
		return "Get ready", kit.Ring, look.Accent
	case m.Phase == clock.Resting:
		return "Rest", kit.Ring, look.ZoneLight
	}
	return "Work", kit.Disc, look.ZoneTop
}

func roundWords(m clock.WorkoutMoment) string {
	switch {
	case m.Rounds > 0 && m.Round > 0:
		return fmt.Sprintf("round %d of %d", m.Round, m.Rounds)
	case m.Open:
		return "until everybody is done"
	case m.Phase == clock.Working:
		return clock.Down(m.Left) + " left in all"
	}
	return ""
}

// turnWords say whose turn it is where the movements take turns, and else where the
// class is thought to be.
func turnWords(w desk.BoardWorkout, m clock.WorkoutMoment) string {
	now, next, before := m.Item, m.Next, ""
	if at := w.UsualAt(m); at != clock.None {
		if w.Workout.Format != gym.Chipper {
			return w.UsualText(m)
		}
		now, before = w.Course[at].Item, w.UsualText(m)+": "
		if next = now + 1; next == len(w.Items) {
			next = clock.None
		}
	}
	switch {
	case now == clock.None && next == clock.None:
		return ""
	case now == clock.None:
		return "next " + w.Items[next].Name
	case next == clock.None:
		return before + w.Items[now].Name
	}
	return before + w.Items[now].Name + ", next " + w.Items[next].Name
}
