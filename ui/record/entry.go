package record

import (
	"strings"

	"fyne.io/fyne/v2"

	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// readingHeight is that of the two lines that a fault and its mend may need.
const readingHeight = 44

// entry is the line that logs a result, with what it would mean under it.
type entry struct {
	of      *lifts
	content fyne.CanvasObject
	effort  *kit.Field
	source  *kit.Segmented
	on      *kit.Field
	log     *kit.Button
	reading *kit.Prose
	athlete gym.Athlete
	lift    gym.Lift
	today   string // as it was last filled in
}

func newEntry(l *lifts) *entry {
	e := &entry{of: l, reading: kit.NewProse("", 80)}
	e.effort = kit.NewField("New result").Hint("5x142.5").Least(132)
	e.effort.OnChange(func(string) { e.read() }).OnEnter(func(string) { e.confirm() })
	e.source = kit.NewSegmented([]string{"tested", "reported"}, 0, nil)
	e.on = kit.NewField("On").Least(112)
	e.on.OnChange(func(string) { e.read() }).OnEnter(func(string) { e.confirm() })
	e.log = kit.NewButton("Log", e.confirm).Key("Enter")
	e.content = kit.Column(0,
		kit.Row(look.Gap2, kit.Fill(e.effort), e.source, e.on, e.log),
		kit.Tall(readingHeight, kit.Fill(e.reading)))
	return e
}

func (e *entry) focus() { e.effort.Focus() }

func (e *entry) clear() {
	e.effort.SetText("")
	e.on.SetText("")
}

func (e *entry) show(a gym.Athlete, l gym.Lift) {
	e.athlete, e.lift = a, l
	today := e.of.of.host.Desk().Today().String()
	if on := strings.TrimSpace(e.on.Text()); on == "" || on == e.today {
		e.on.SetText(today)
	}
	e.today = today
	e.effort.Hint(example(l))
	e.log.Able(l.Key != "")
	e.read()
}

// example is how a result of a lift may be written.
func example(l gym.Lift) string {
	examples := map[gym.Measure]string{gym.ByTime: "1:02.5", gym.ByHold: "45 s", gym.ByDistance: "60 m", gym.ByReps: "31"}
	return orText(examples[l.Measure], "5x142.5")
}

func how(l gym.Lift) string {
	if by, ok := countedBy[l.Measure]; ok {
		return "This lift is counted by " + by + ": write it as in " + example(l) + "."
	}
	return "Write reps and load, as in 5x142.5 or 3x225lb; F2 brings you here."
}

// asked is the entry as it stands in the fields.
func (e *entry) asked() (desk.Entry, error) {
	on, err := day.Parse(strings.TrimSpace(e.on.Text()))
	sources := []gym.Source{gym.Tested, gym.Reported}
	return desk.Entry{Athlete: e.athlete.ID, Lift: e.lift.Key, Text: e.effort.Text(), On: on, Source: sources[e.source.Chosen()]}, err
}

// read says what the entry would mean, without logging it.
func (e *entry) read() {
	if strings.TrimSpace(e.effort.Text()) == "" {
		e.say(how(e.lift), look.Muted)
		return
	}
	asked, err := e.asked()
	if err != nil {
		e.say(kit.Sentence(err), look.Warn)
		return
	}
	r, err := e.of.of.host.Desk().ReadEntry(asked)
	switch {
	case err != nil:
		e.say(kit.Sentence(err), look.Warn)
	case r.Doubt != "":
		e.say(r.Doubt, look.Warn)
	case r.Raises:
		e.say(r.Says, look.Good)
	default:
		e.say(r.Says, look.Text)
	}
}

func (e *entry) say(text string, tone look.Meaning) {
	e.reading.Tone(tone).SetText(text)
}

// confirm logs the entry, after a question about an improbable one.
func (e *entry) confirm() {
	asked, err := e.asked()
	var read desk.Reading
	if err == nil {
		read, err = e.of.of.host.Desk().ReadEntry(asked)
	}
	switch {
	case err != nil:
		e.refuse(err)
	case read.Doubt != "":
		kit.Ask(e.of.of.host.Window().Canvas(), kit.Doubted("Log this for "+e.athlete.Name+"?", read.Doubt, e.focus, func() { e.keep(asked, read) }))
	default:
		e.keep(asked, read)
	}
}

func (e *entry) refuse(err error) {
	e.effort.SetFault("Not logged.")
	e.say(kit.Sentence(err), look.Bad)
}

// keep logs what was asked for as it was read.
func (e *entry) keep(asked desk.Entry, read desk.Reading) {
	if _, err := e.of.of.host.Desk().EnterResult(asked); err != nil {
		e.refuse(err)
		return
	}
	e.effort.SetText("")
	e.of.of.host.Say(e.athlete.Name+", "+e.lift.Name+" "+read.Says, true)
	e.effort.Focus()
}
