package today

import (
	"fmt"
	"slices"
	"strings"

	"fyne.io/fyne/v2"

	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// classCard is one class of the day. It is drawn once and changed in place.
type classCard struct {
	hour, name, people *kit.Text
	state              *kit.Chip
	tracks             []*kit.Text
	open               *kit.Button
	card               *kit.Card
}

// mostTracks is how many tracks one card can show.
const mostTracks = 6

func (t *Today) newClassCard(at int) *classCard {
	c := &classCard{
		hour: kit.NewNumber(""), name: kit.NewHeading(""), people: kit.NewCaption("").Shrinks(120),
		state: kit.NewChip("", kit.Ring, look.Muted),
	}
	c.open = kit.NewButton("Open", func() { t.open(t.meetings[at]) }).Tip("Opens this class on the floor.")
	lines := kit.Column(look.Gap1, kit.Row(look.Gap3, c.name, c.state, kit.Fill()))
	for range mostTracks {
		text := kit.NewBody("").Shrinks(120)
		c.tracks = append(c.tracks, text)
		lines.Add(text)
	}
	lines.Add(c.people)
	c.card = kit.NewPanel(kit.Pad(look.Gap4, kit.Row(look.Gap4, kit.Wide(104, c.hour), kit.Fill(lines), c.open)))
	return c
}

// drawClasses shows the meetings, or what to do on a day without any.
func (t *Today) drawClasses() {
	for len(t.cards) < len(t.meetings) {
		t.cards = append(t.cards, t.newClassCard(len(t.cards)))
	}
	t.classes.Objects = nil
	next := t.next()
	for i, m := range t.meetings {
		t.cards[i].show(m, i == next, t.shown)
		t.classes.Objects = append(t.classes.Objects, t.cards[i].card)
	}
	if len(t.meetings) == 0 {
		t.classes.Objects = []fyne.CanvasObject{t.noClasses()}
	}
	t.classes.Refresh()
}

// next is the place of the class that Enter opens: the one on the floor, or else
// the first to come; -1 when the day has neither.
func (t *Today) next() int {
	for _, state := range []desk.MeetingState{desk.OnFloor, desk.ToCome} {
		in := func(m desk.Meeting) bool { return m.State == state }
		if i := slices.IndexFunc(t.meetings, in); i >= 0 {
			return i
		}
	}
	return -1
}

func (t *Today) noClasses() fyne.CanvasObject {
	d := t.host.Desk()
	if name, closed := d.ClosedOn(t.shown); closed {
		return kit.NewEmpty("Closed today", name+". The days of this week stand where the closed days leave room.")
	}
	if len(d.Book().Slots) == 0 {
		return kit.NewEmpty("No timetable yet", "Lay out the week's classes in the Gym room, or open a class now.")
	}
	return kit.NewEmpty("No class today", "The timetable has none on this weekday. You can open one now.")
}

var states = map[desk.MeetingState]struct {
	shape kit.Shape
	tone  look.Meaning
}{
	desk.ToCome: {kit.Ring, look.Muted}, desk.OnFloor: {kit.Disc, look.Accent},
	desk.Done: {kit.Tick, look.Good}, desk.Missed: {kit.Dash, look.Muted},
}

// show fills the card in. The next class is the one that Enter opens.
func (c *classCard) show(m desk.Meeting, next bool, today day.Date) {
	c.hour.SetText(m.Slot.At.String())
	c.name.SetText(m.Slot.Name)
	s := states[m.State]
	c.state.Set(string(m.State), s.shape, s.tone)
	for i, text := range c.tracks {
		text.Hide()
		if i < len(m.Tracks) {
			text.SetText(trackLine(m.Tracks[i]))
			text.Show()
		}
	}
	c.tellPeople(m, today)
	c.button(m, next)
	c.card.Refresh()
}

func (c *classCard) button(m desk.Meeting, next bool) {
	c.open.SetLabel(map[desk.MeetingState]string{
		desk.ToCome: "Open", desk.OnFloor: "Go on", desk.Done: "Look", desk.Missed: "Open late",
	}[m.State])
	c.open.Key("")
	c.open.Quiet()
	if next {
		c.open.Key("Enter")
		c.open.Primary()
	}
}

func trackLine(t desk.TrackDay) string {
	line := t.Track.Name + ":  "
	switch {
	case t.Lift != "":
		line += t.Work()
	case t.Plan.Kind == gym.RestDay:
		line += "rest day"
	default:
		line += strings.ToLower(t.Plan.Title)
	}
	return line
}

func people(m desk.Meeting) string {
	if n := len(m.Class.Lifters); n > 0 {
		return fmt.Sprintf("%d came, %d expected", n, len(m.Expected))
	}
	return fmt.Sprintf("%d expected", len(m.Expected))
}

// tellPeople says who came, and of which day a class is that is still open today.
func (c *classCard) tellPeople(m desk.Meeting, today day.Date) {
	text, short := people(m), ""
	if m.Class.ID != "" && m.Class.On != today {
		short = text + ", open since " + m.Class.On.Short()
		text += ", opened on " + m.Class.On.Long() + " and not finished"
	}
	c.people.SetText(text)
	c.people.Or(short)
}

// summary is the line under the date.
func (t *Today) summary() string {
	expected := 0
	for _, m := range t.meetings {
		expected += len(m.Expected)
	}
	return fmt.Sprintf("%s, %s expected, %s to settle.", desk.Count(len(t.meetings), "class"),
		desk.Count(expected, "athlete"), desk.Count(len(t.rows), "thing"))
}
