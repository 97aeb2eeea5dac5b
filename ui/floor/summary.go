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
	names   [4]*kit.Text // what each figure counts
	records *kit.Prose
	open    *kit.Prose
	missed  *kit.Prose
	finish  *kit.Button
	again   *kit.Button
	all     fyne.CanvasObject
}

// figureNames say what each figure counts: of one, and of several or none.
var figureNames = [4][2]string{
	{"came", "came"}, {"record", "records"}, {"heavy day", "heavy days"}, {"under the heavy line", "under the heavy line"},
}

func newSummary(f *Floor) *summary {
	s := &summary{floor: f}
	var figures []fyne.CanvasObject
	for i := range figureNames {
		s.figures[i], s.names[i] = kit.NewNumber(""), kit.NewCaption("")
		figures = append(figures, kit.NewCard("", kit.Column(0, s.figures[i], s.names[i])))
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
		s.names[i].SetText(figureNames[i][several(n)])
	}
	s.records.SetText(lines(sum.Records, "No record rose today."))
	s.missed.SetText(lines(sum.Missed, "Nobody so far."))
	done := s.floor.class.Stage == gym.Finished
	s.open.SetText(openWords(sum.Open, s.floor.desk().OpenBouts(s.floor.class), done))
	show(s.finish, !done)
	show(s.again, done)
}

func lines(all []string, none string) string {
	if len(all) == 0 {
		return none
	}
	return strings.Join(all, "\n")
}

// several is 0 for one thing and 1 for any other number.
func several(n int) int {
	if n == 1 {
		return 0
	}
	return 1
}

// openWords say whose results and how many bouts are still to be entered.
func openWords(names []string, bouts int, done bool) string {
	var text []string
	if len(names) > 0 {
		text = append(text, "No result yet for "+strings.Join(names, ", ")+".")
	}
	if bouts > 0 {
		text = append(text, desk.Count(bouts, "bout")+" of the conditioning "+[2]string{"is", "are"}[several(bouts)]+" not logged.")
	}
	switch {
	case len(text) == 0:
		return "Nothing: every result and every bout is entered."
	case !done:
		text = append(text, "A class can be finished all the same.")
	}
	return strings.Join(text, "\n")
}

// end finishes the class, and asks first while something is still to be entered.
func (s *summary) end() {
	f := s.floor
	if f.class.Stage == gym.Finished {
		return
	}
	missing := missingWords(len(f.desk().Summary(f.class).Open), f.desk().OpenBouts(f.class))
	if missing == "" {
		s.finishNow()
		return
	}
	kit.Ask(f.host.Window().Canvas(), kit.Question{
		Title:   "Finish with " + missing + " open?",
		Text:    "What is not entered counts for nobody. The class can be opened again later.",
		Actions: []kit.Action{{Label: "Finish all the same", Do: func() bool { s.finishNow(); return true }}},
		Cancel:  "Go on with the class",
	})
}

// missingWords count what is still to be entered; empty for nothing.
func missingWords(results, bouts int) string {
	var words []string
	if results > 0 {
		words = append(words, desk.Count(results, "result"))
	}
	if bouts > 0 {
		words = append(words, desk.Count(bouts, "bout"))
	}
	return strings.Join(words, " and ")
}

func (s *summary) finishNow() {
	f := s.floor
	if !f.host.Fail(f.desk().FinishClass(f.id)) {
		return
	}
	f.host.Say(f.class.Name+" is finished. Everything is saved.", true)
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
