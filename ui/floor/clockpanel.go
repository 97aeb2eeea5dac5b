package floor

import (
	"fmt"
	"time"

	"fyne.io/fyne/v2"

	"windlass/internal/climb"
	"windlass/internal/clock"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// clockPanel is the climb's clock: what is left of the window, large, and how far
// the climb has come.
type clockPanel struct {
	digits *kit.Digits
	left   *kit.Text
	whole  *kit.Text
	open   *kit.Text
	state  *kit.Chip
	all    fyne.CanvasObject
}

func newClockPanel() *clockPanel {
	p := &clockPanel{digits: kit.NewDigits(68), left: kit.NewCaption(""), whole: kit.NewCaption(""), open: kit.NewCaption(""), state: kit.NewChip("", kit.NoShape, look.Muted)}
	p.digits.Set("00:00", look.Text)
	words := kit.Column(look.Gap1, kit.Fill(), kit.Row(0, p.state, kit.Fill()), p.left, p.whole, p.open, kit.Fill())
	p.all = kit.NewCard("", kit.Row(look.Gap4, p.digits, kit.Full(kit.Wide(132, words))))
	return p
}

func (p *clockPanel) set(plan gym.ClimbPlan, m clock.Moment) {
	total := clock.Up(m.Elapsed + m.Left)
	switch {
	case !m.Started:
		p.digits.Set(clock.Up(m.Elapsed+m.Left), look.Muted)
		p.state.Set("Not started", kit.Dash, look.Muted)
		p.say(fmt.Sprintf("%d rungs", len(plan.Rungs)), plan.Name)
	case m.Finished:
		p.digits.Set("00:00", look.Muted)
		p.state.Set("Climb is over", kit.Tick, look.Good)
		p.say("Late calls still count", total+" in all")
	default:
		p.digits.Set(clock.Down(m.LeftIn), toneOf(m))
		if m.Running {
			p.state.Set("Running", kit.Disc, look.Accent)
		} else {
			p.state.Set("Held", kit.Square, look.Warn)
		}
		p.say(fmt.Sprintf("left of rung %d of %d", m.Rung+1, len(plan.Rungs)), fmt.Sprintf("at %s of %s", clock.Up(m.Elapsed), total))
	}
}

func (p *clockPanel) say(left, whole string) {
	p.left.SetText(left)
	p.whole.SetText(whole)
}

// count tells how many calls are open.
func (p *clockPanel) count(calls int) {
	p.open.Say(openCalls(calls), toneIf(calls > 0, look.Text, look.Muted))
}

// toneOf warns in the last seconds of a window.
func toneOf(m clock.Moment) look.Meaning {
	switch {
	case !m.Running:
		return look.Warn
	case m.Warning > 0:
		return look.Accent
	}
	return look.Text
}

// rungsOf is a class's climb as the strip draws it.
func rungsOf(c gym.Class) []kit.Rung {
	zones := map[gym.Zone]kit.Zone{gym.LightZone: kit.Light, gym.WorkingZone: kit.Working, gym.TopZone: kit.Top}
	var rungs []kit.Rung
	for _, r := range c.Climb.Rungs {
		rungs = append(rungs, kit.Rung{
			Start: time.Duration(r.At) * time.Second, End: time.Duration(r.Until) * time.Second,
			Percent: fmt.Sprintf("%g %%", r.Percent), Reps: repsOf(c, r), Zone: zones[r.Zone],
		})
	}
	return rungs
}

// repsOf writes the reps of a rung; where tracks differ in the day's rep count it
// says only that it is the rep max.
func repsOf(c gym.Class, r gym.Rung) string {
	if r.Reps > 0 {
		return times(r.Reps)
	}
	day := 0
	for _, p := range c.Pieces {
		if p.Lift == "" {
			continue
		}
		if day != 0 && day != p.Reps {
			return "× RM"
		}
		day = p.Reps
	}
	return times(day)
}

// minutes writes how long a climb is.
func minutes(plan gym.ClimbPlan) string {
	if n := len(plan.Rungs); n > 0 {
		return climb.Time(plan.Rungs[n-1].Until)
	}
	return "–"
}
