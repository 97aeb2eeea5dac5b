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
	"windlass/ui/room"
)

// summary is the end of a class: who came, what rose, what is still open.
type summary struct {
	floor   *Floor
	figures [4]*kit.Text
	records *kit.Prose
	open    *kit.Prose
	missed  *kit.Prose
	finish  *kit.Button
	again   *kit.Button
	all     fyne.CanvasObject
}

var figureNames = [4]string{"came", "records", "heavy days", "under the heavy line"}

func newSummary(f *Floor) *summary {
	s := &summary{floor: f}
	var figures []fyne.CanvasObject
	for i, name := range figureNames {
		s.figures[i] = kit.NewNumber("")
		figures = append(figures, kit.NewCard("", kit.Column(0, s.figures[i], kit.NewCaption(name))))
	}
	s.records, s.open, s.missed = kit.NewProse("", 300), kit.NewProse("", 300), kit.NewProse("", 300)
	s.finish = kit.NewButton("Finish the class", s.end).Primary().Key("F5")
	s.again = kit.NewButton("Open it again", s.reopen).Key("A")
	told := kit.Column(look.Gap4, kit.NewCard("Records", s.records), kit.NewCard("Nothing counted", s.missed), kit.NewCard("Still open", s.open))
	rows := kit.Column(look.Gap4, kit.Equal(look.Gap3, figures...),
		kit.Fill(kit.Scroll(kit.Pad(look.Gap1, told))), // a full class breaks many records
		kit.Row(look.Gap2, s.finish, s.again, kit.Fill()))
	s.all = kit.Column(0, kit.Fill(kit.Centre(960, rows)))
	return s
}

func (s *summary) content() fyne.CanvasObject { return s.all }

func (s *summary) tick(clock.Moment) {}

func (s *summary) show() {}

func (s *summary) refresh() {
	sum := s.floor.desk().Summary(s.floor.class)
	for i, n := range []int{sum.Came, len(sum.Records), sum.Heavy, sum.Under} {
		s.figures[i].SetText(fmt.Sprint(n))
	}
	s.records.SetText(lines(sum.Records, "No record rose today."))
	s.missed.SetText(lines(sum.Missed, "Nobody: every result counted."))
	s.open.SetText(openWords(sum))
	done := s.floor.class.Stage == gym.Finished
	show(s.finish, !done)
	show(s.again, done)
}

func lines(all []string, none string) string {
	if len(all) == 0 {
		return none
	}
	return strings.Join(all, "\n")
}

func openWords(sum desk.Summary) string {
	if len(sum.Open) == 0 {
		return "Nothing: every lifter has a result."
	}
	return "No result yet for " + strings.Join(sum.Open, ", ") + ". A class can be finished all the same."
}

func (s *summary) end() {
	f := s.floor
	if f.class.Stage == gym.Finished || !f.host.Fail(f.desk().FinishClass(f.id)) {
		return
	}
	f.host.Say(f.class.Name+" is finished. Everything is saved.", false)
	f.leave()
	f.host.Open(room.Today, "")
}

func (s *summary) reopen() {
	if s.floor.class.Stage == gym.Finished {
		s.floor.host.Fail(s.floor.desk().ReopenClass(s.floor.id))
	}
}

func (s *summary) keys() []room.Key {
	return []room.Key{
		{Press: "F5", Does: "Finish the class", Do: s.end},
		{Press: "A", Does: "Open a finished class again", Do: s.reopen},
	}
}
