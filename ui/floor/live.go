package floor

import (
	"fmt"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"windlass/internal/clock"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// live is the climb on the clock: the rungs, every station, and the call of the
// chosen lifter.
type live struct {
	floor    *Floor
	chosen   gym.ID
	warnings map[gym.ID]string
	sport    bool
	unit     mass.Unit
	shown    clock.Moment

	clock *clockPanel
	strip *kit.RungStrip
	cards []*stationCard
	notes *noteBar
	grid  *fyne.Container
	calls *callBar
	all   *fyne.Container
}

func newLive(f *Floor) *live {
	l := &live{floor: f, strip: kit.NewRungStrip(), warnings: map[gym.ID]string{}}
	l.clock = newClockPanel()
	l.calls, l.notes = newCallBar(l), newNoteBar(l)
	l.grid = container.New(&gridLayout{})
	top := kit.Row(look.Gap3, kit.Full(l.clock.all), kit.Fill(kit.NewCard("", l.strip)))
	l.all = kit.Column(look.Gap3, kit.Tall(136, kit.Fill(top)), l.notes.all, kit.Fill(l.grid), l.calls.all)
	return l
}

func (l *live) content() fyne.CanvasObject { return l.all }

func (l *live) show() {}

// refresh reads the board anew.
func (l *live) refresh() {
	settings := l.floor.desk().Settings()
	l.sport, l.unit = settings.SportDiscs, settings.Unit
	l.strip.Set(rungsOf(l.floor.class))
	for _, a := range l.floor.class.Lifters {
		if s, ok := l.floor.desk().Standing(l.floor.class, a.Athlete); ok {
			l.warnings[a.Athlete] = s.Warning
		}
	}
	l.notes.refresh()
	l.draw(l.floor.moment())
	l.all.Refresh()
}

// tick moves the clock; the stations change only with the rung.
func (l *live) tick(m clock.Moment) {
	l.clock.set(l.floor.class.Climb, m)
	l.strip.SetNow(elapsedOf(m))
	if m.Rung != l.shown.Rung || m.Finished != l.shown.Finished {
		l.notes.refresh()
		l.all.Refresh()
	}
	if m.Rung != l.shown.Rung || m.Started != l.shown.Started || m.Finished != l.shown.Finished || m.Running != l.shown.Running {
		l.draw(m)
	}
}

func elapsedOf(m clock.Moment) time.Duration {
	if !m.Started {
		return -1
	}
	return m.Elapsed
}

// draw shows a moment, with the call that is wanted next.
func (l *live) draw(m clock.Moment) {
	l.shown = m
	l.follow(m)
	l.paint(m)
}

// paint shows the stations that have lifters, and those who have none.
func (l *live) paint(m clock.Moment) {
	board, n := l.floor.board, 0
	for _, s := range board.Stations {
		if len(s.Lifters) > 0 {
			l.card(n).set(l, s.Name, s.Lifters[0].Lift+" · "+s.Bar, s.Lifters, m)
			n++
		}
	}
	if len(board.Bench) > 0 {
		l.card(n).set(l, "Without a station", "", board.Bench, m)
		n++
	}
	if len(l.grid.Objects) != n {
		l.grid.Objects = nil
		for _, c := range l.cards[:n] {
			l.grid.Objects = append(l.grid.Objects, c.all)
		}
		l.grid.Refresh()
	}
	l.calls.set(m)
}

func (l *live) card(i int) *stationCard {
	for len(l.cards) <= i {
		l.cards = append(l.cards, newStationCard(l.choose))
	}
	return l.cards[i]
}

// follow chooses the next lifter who owes a call while the chosen one owes none;
// a late call comes before one that still has time.
func (l *live) follow(m clock.Moment) {
	queue := l.floor.board.Queue(m)
	if row, ok := l.floor.board.Lifter(l.chosen); ok {
		owed, owes := l.floor.board.Owes(row, m)
		if len(queue) == 0 || owes && owed.Late == queue[0].Late {
			return
		}
	}
	if next, ok := l.floor.board.NextCall(m, l.chosen); ok {
		l.chosen = next
	} else if all := l.floor.board.Lifters(); len(all) > 0 {
		l.chosen = all[0].Athlete
	}
}

// choose takes a lifter, whoever owes a call.
func (l *live) choose(athlete gym.ID) {
	l.chosen = athlete
	l.paint(l.floor.moment())
}

// step moves the choice along the board.
func (l *live) step(by int) {
	all := l.floor.board.Lifters()
	for i, row := range all {
		if row.Athlete == l.chosen {
			l.choose(all[(i+by+len(all))%len(all)].Athlete)
			return
		}
	}
	if len(all) > 0 {
		l.choose(all[0].Athlete)
	}
}

// call makes the chosen lifter's call; the next one who owes one is chosen.
func (l *live) call(kind gym.CallKind) {
	row, ok := l.floor.board.Lifter(l.chosen)
	if !ok {
		return
	}
	if l.floor.did(l.floor.desk().Call(l.floor.id, row.Athlete, kind), row.Name+": "+l.after(row.Athlete, kind)) {
		return
	}
	l.calls.set(l.floor.moment())
}

// after says what a call brings.
func (l *live) after(athlete gym.ID, kind gym.CallKind) string {
	row, _ := l.floor.board.Lifter(athlete)
	m := l.floor.moment()
	s := row.Shown(m)
	switch {
	case s.HasNow && s.Now.State != "" && m.Rung < len(row.Sets) && isLate(row, m):
		return fmt.Sprintf("%s, %s %s now.", callWords[kind], times(s.Now.Reps), s.Now.Likely().In(row.Unit))
	case s.HasNext:
		return fmt.Sprintf("%s, next %s %s.", callWords[kind], times(s.Next.Reps), s.Next.Likely().In(row.Unit))
	}
	return callWords[kind] + "."
}

func isLate(l desk.BoardLifter, m clock.Moment) bool {
	n := len(l.Calls)
	return n > 0 && l.Calls[n-1].Rung < m.Rung
}

var callWords = map[gym.CallKind]string{
	gym.ClimbCall: "climbs", gym.SettleCall: "settles", gym.MissedCall: "missed",
	gym.EasyCall: "easy", gym.FairCall: "fair", gym.HardCall: "hard",
}

// toggle starts the clock or holds it; a strict climb asks first.
func (l *live) toggle() {
	if stage := l.floor.class.Stage; stage == gym.Conditioning || stage == gym.Finished {
		l.floor.host.Say("The climb of this class is over. Its conditioning has a clock of its own, a step further (F4).", false)
		return
	}
	if !l.floor.moment().Running {
		l.floor.begin()
		return
	}
	hold := func() { l.floor.host.Fail(l.floor.desk().HoldClock(l.floor.id)) }
	if !l.floor.class.Climb.Strict {
		hold()
		return
	}
	kit.Ask(l.floor.host.Window().Canvas(), kit.Question{
		Title: "Hold a strict climb?", Text: "This climb is meant to run through. Everybody waits while it is held.",
		Actions: []kit.Action{{Label: "Hold the clock", Do: func() bool { hold(); return true }}}, Cancel: "Let it run",
	})
}

func (l *live) next() { l.floor.host.Fail(l.floor.desk().NextRung(l.floor.id)) }

func (l *live) before() { l.floor.host.Fail(l.floor.desk().RungBefore(l.floor.id)) }

func (l *live) keys() []room.Key {
	say := func(kind gym.CallKind) func() { return func() { l.call(kind) } }
	step := func(by int) func() { return func() { l.step(by) } }
	return []room.Key{
		{Press: "C", Does: "Call: climbs", Do: say(gym.ClimbCall)},
		{Press: "S", Does: "Call: settles", Do: say(gym.SettleCall)},
		{Press: "M", Does: "Call: missed", Do: say(gym.MissedCall)},
		{Press: "E", Does: "Finding the rep max: easy", Do: say(gym.EasyCall)},
		{Press: "F", Does: "Finding the rep max: fair", Do: say(gym.FairCall)},
		{Press: "H", Does: "Finding the rep max: hard", Do: say(gym.HardCall)},
		{Press: "Down", Does: "Choose the next lifter", Do: step(1)},
		{Press: "Up", Does: "Choose the lifter before", Do: step(-1)},
		{Press: "Space", Does: "Start, hold or go on", Do: l.toggle},
		{Press: "N", Does: "Go to the next rung", Do: l.next},
		{Press: "B", Does: "Go back a rung", Do: l.before},
		{Press: "F8", Does: "Do the mend that is offered", Do: l.notes.do},
		{Press: "F9", Does: "Leave what will not work out as it is", Do: l.notes.leave},
		{Press: "R", Does: "Enter the results", Do: func() { l.floor.turn(stepResults) }},
	}
}
