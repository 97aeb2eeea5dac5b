package floor

import (
	"fmt"

	"fyne.io/fyne/v2"

	"windlass/internal/clock"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// setUp is what is done before the clock starts: who is here, what each track
// lifts, who shares a bar.
type setUp struct {
	floor  *Floor
	chosen gym.ID
	here   *hereList
	detail *lifterDetail
	pieces *pieceList
	climb  *climbCard
	seats  *seatBoard
	notes  *noteList
	all    fyne.CanvasObject
}

func newSetUp(f *Floor) *setUp {
	s := &setUp{floor: f}
	s.here, s.detail = newHereList(s), newLifterDetail(s)
	s.pieces, s.climb = newPieceList(s), newClimbCard(s)
	s.seats, s.notes = newSeatBoard(s), newNoteList(s)
	left := kit.Column(look.Gap3, kit.Fill(s.here.all), s.detail.all)
	middle := kit.Column(look.Gap3, s.pieces.all, kit.Fill(s.notes.all))
	below := kit.Row(look.Gap3, kit.Full(kit.Wide(340, middle)), kit.Fill(s.seats.all))
	right := kit.Column(look.Gap3, s.climb.all, kit.Fill(below))
	s.all = kit.Row(look.Gap3, kit.Full(kit.Wide(344, left)), kit.Fill(right))
	return s
}

func (s *setUp) content() fyne.CanvasObject { return s.all }

func (s *setUp) tick(clock.Moment) {}

func (s *setUp) show() {
	s.here.begin()
	s.here.search.Focus()
	s.here.follow(s.here.list.Cursor())
}

func (s *setUp) refresh() {
	s.here.refresh()
	s.detail.refresh()
	s.pieces.refresh()
	s.climb.refresh()
	s.seats.refresh()
	s.notes.refresh()
}

// choose shows one athlete's numbers and marks their seat.
func (s *setUp) choose(athlete gym.ID) {
	if s.chosen == athlete {
		return
	}
	s.chosen = athlete
	s.detail.refresh()
	s.seats.refresh()
}

// flip checks an athlete in, or out again.
func (s *setUp) flip(athlete gym.ID, here bool) {
	a, _ := s.floor.desk().Athlete(athlete)
	s.chosen = athlete
	if here {
		s.checkOut(a)
		return
	}
	if s.floor.host.Fail(s.floor.desk().CheckIn(s.floor.id, athlete)) {
		s.floor.host.Say(s.welcome(athlete), true)
	}
}

// checkOut takes an athlete out of the class, and asks first where calls would be
// lost by a slip.
func (s *setUp) checkOut(a gym.Athlete) {
	out := func() { s.floor.did(s.floor.desk().CheckOut(s.floor.id, a.ID), a.Name+" is not here.") }
	st, _ := s.floor.desk().Standing(s.floor.class, a.ID)
	if !s.floor.moment().Started && len(st.Lifter.Calls) == 0 {
		out()
		return
	}
	kit.Ask(s.floor.host.Window().Canvas(), kit.Question{
		Title:   "Take " + a.Name + " out of the class?",
		Text:    "The clock has started. The station and " + desk.Count(len(st.Lifter.Calls), "call") + " go too.",
		Actions: []kit.Action{{Label: "Take out", Do: func() bool { out(); return true }}},
		Cancel:  "Stay in the class",
	})
}

// welcome says where a lifter goes and what is counted from.
func (s *setUp) welcome(athlete gym.ID) string {
	st, ok := s.floor.desk().Standing(s.floor.class, athlete)
	if !ok {
		return ""
	}
	text := st.Name + " is here"
	if stations := s.floor.desk().Book().Equipment.Stations; st.Lifter.Station >= 0 && st.Lifter.Station < len(stations) {
		text += ", at " + stations[st.Lifter.Station].Name
	}
	if m := s.floor.moment(); m.Started && st.Lifter.Joined > 0 {
		text += fmt.Sprintf(", from rung %d on. Warm up first, with light sets beside the clock", st.Lifter.Joined+1)
	}
	return text + ". " + st.Number + "."
}

func (s *setUp) walkIn(name string) {
	s.here.due = nil // who is on a track now is expected like everybody of it
	id, err := s.floor.desk().WalkIn(s.floor.id, name)
	if s.floor.host.Fail(err) {
		s.choose(id)
		s.here.keep(id)
		s.floor.host.Say(s.welcome(id), true)
	}
}

// start begins the climb and goes there.
func (s *setUp) start() {
	if s.floor.class.Stage != gym.SetUp {
		s.floor.turn(stepClimb)
		return
	}
	s.floor.begin()
}

func (s *setUp) share() { s.floor.shareAnew() }

// small turns the rule about small plates over, where the gym has any.
func (s *setUp) small() {
	if !s.floor.desk().SmallPlates() {
		s.floor.host.Say("The gym has no plates under 1 kg.", false)
		return
	}
	s.floor.keepSmall(s.floor.desk().Settings().SmallAll)
}

// keepSmall keeps small plates for top rungs, or lets them on every rung.
func (f *Floor) keepSmall(yes bool) {
	said := "Every rung takes the nearest load, with small plates too."
	if yes {
		said = "Light and working rungs do without plates under 1 kg; top rungs have them."
	}
	f.did(f.desk().KeepSmallOnTop(yes), said)
}

func (s *setUp) move(athlete gym.ID, station int) {
	e := s.floor.desk().Book().Equipment
	if athlete == "" || station >= len(e.Stations) {
		return
	}
	a, _ := s.floor.desk().Athlete(athlete)
	to := "no station"
	if station >= 0 {
		to = e.Stations[station].Name
	}
	s.floor.did(s.floor.desk().MoveLifter(s.floor.id, athlete, station), a.Name+" goes to "+to+".")
}

func (s *setUp) keys() []room.Key {
	keys := []room.Key{
		{Press: "F5", Does: "Start the clock", Do: s.start},
		{Press: "F", Does: "Find an athlete", Do: func() { s.here.search.Focus() }},
		{Press: "Esc", Does: "Leave the search; the numbers then move the chosen lifter", Do: func() { s.floor.host.Window().Canvas().Unfocus() }},
		{Press: "F6", Does: "Share the stations anew", Do: s.share},
		{Press: "F7", Does: "Take the lower number that is offered", Do: s.detail.lower},
		{Press: "F11", Does: "Keep plates under 1 kg for top rungs, or not", Do: s.small},
		{Press: "F8", Does: "Do the first mend", Do: s.notes.press("F8")},
		{Press: "F9", Does: "Do the second mend", Do: s.notes.press("F9")},
		{Press: "F10", Does: "Do the third mend", Do: s.notes.press("F10")},
		{Press: "0", Does: "Take the chosen lifter off the stations", Do: func() { s.move(s.chosen, -1) }},
	}
	for i := range min(9, len(s.floor.desk().Book().Equipment.Stations)) {
		keys = append(keys, room.Key{
			Press: itoa(i + 1), Does: "Move the chosen lifter to " + s.floor.desk().Book().Equipment.Stations[i].Name,
			Do: func() { s.move(s.chosen, i) },
		})
	}
	return keys
}
