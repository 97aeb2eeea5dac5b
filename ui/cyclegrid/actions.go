package cyclegrid

import (
	"fmt"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
)

func (r *Cycle) copy() {
	if !r.ready() {
		return
	}
	r.clip = r.desk().CopyDays(r.id, r.block())
	r.host.Say(fmt.Sprintf("Copied %s. Go where it belongs and press Ctrl+V.", daysText(r.clip.Days())), false)
}

func (r *Cycle) cut() {
	if !r.ready() {
		return
	}
	clip := r.desk().CopyDays(r.id, r.block())
	if r.did(r.desk().ClearDays(r.id, r.block()), fmt.Sprintf("Cut %s. Ctrl+V puts it elsewhere.", daysText(clip.Days()))) {
		r.clip = clip
	}
}

func (r *Cycle) paste() {
	if !r.ready() {
		return
	}
	s := r.grid.Cursor()
	from, _ := r.grid.Selection()
	s = kit.Spot{Week: min(s.Week, from.Week), Day: min(s.Day, from.Day)}
	r.did(r.desk().PasteDays(r.id, r.trackID(), s.Week+1, s.Day, r.clip), "Pasted "+daysText(r.clip.Days())+".")
}

func (r *Cycle) clear() {
	if r.ready() {
		r.did(r.desk().ClearDays(r.id, r.block()), "Cleared. It is a rest day now.")
	}
}

func daysText(n int) string {
	if n == 1 {
		return "one day"
	}
	return fmt.Sprintf("%d days", n)
}

// move hears a drag or Ctrl and an arrow.
func (r *Cycle) move(from, to kit.Spot, copied bool) {
	c := r.view.Cycle
	if copied {
		clip := r.desk().CopyDays(r.id, desk.Block{
			Track: r.trackID(), FromWeek: from.Week + 1, ToWeek: from.Week + 1, FromColumn: from.Day, ToColumn: from.Day,
		})
		r.did(r.desk().PasteDays(r.id, r.trackID(), to.Week+1, to.Day, clip), "Copied the day.")
		return
	}
	a, b := desk.AtColumn(c, r.trackID(), from.Week+1, from.Day), desk.AtColumn(c, r.trackID(), to.Week+1, to.Day)
	r.did(r.desk().MoveDay(r.id, a, b), fmt.Sprintf("Moved to %s.", desk.DayHeading(c, b)))
}

func (r *Cycle) insertWeek() {
	if !r.ready() {
		return
	}
	w := r.at().Week
	r.did(r.desk().InsertWeek(r.id, w), fmt.Sprintf("Week %d is new and empty; later weeks moved on.", w))
}

func (r *Cycle) removeWeek() {
	if !r.ready() {
		return
	}
	w := r.at().Week
	r.did(r.desk().RemoveWeek(r.id, w), fmt.Sprintf("Week %d is out of all tracks; later weeks closed up.", w))
}

// nextKind is what the K key makes of a week.
var nextKind = map[gym.WeekKind]gym.WeekKind{
	gym.TrainingWeek: gym.LightWeek, gym.LightWeek: gym.TestWeek, gym.TestWeek: gym.TrainingWeek,
}

func (r *Cycle) weekKind() {
	if !r.ready() {
		return
	}
	w := r.at().Week
	kind := nextKind[r.view.Cycle.Weeks[w-1]]
	r.did(r.desk().SetWeek(r.id, w, kind), fmt.Sprintf("Week %d is a %s week now. Its plans stayed as they were.", w, kind))
}

func (r *Cycle) shift(by int) {
	if !r.ready() {
		return
	}
	word := map[int]string{1: "later", -1: "earlier"}[by]
	r.did(r.desk().ShiftWeeks(r.id, r.trackID(), r.at().Week, by), fmt.Sprintf("The weeks from %d on stand a week %s.", r.at().Week, word))
}

// repeat asks how far a day is to be repeated.
func (r *Cycle) repeat() {
	if !r.ready() {
		return
	}
	at := r.at()
	last := desk.LastTraining(r.view.Cycle)
	through := kit.NewField("Up to and with week")
	through.SetText(fmt.Sprint(last))
	kit.Ask(r.host.Window().Canvas(), kit.Question{
		Title: "Repeat " + desk.DayHeading(r.view.Cycle, at),
		Text:  "The plan goes on the same weekday of every later training week. Light and test weeks keep their own, and a main lift keeps the rep count that its week has for it.",
		Body:  through,
		Actions: []kit.Action{{Label: "Repeat", Do: func() bool {
			n, err := desk.ParseCount(through.Text(), len(r.view.Weeks))
			if err == nil {
				err = r.desk().RepeatDay(r.id, at, n)
			}
			if err != nil {
				through.SetFault(kit.Sentence(err))
				return false
			}
			r.host.Say(fmt.Sprintf("Repeated up to week %d.", n), true)
			return true
		}}},
	})
}
