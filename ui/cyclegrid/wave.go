package cyclegrid

import (
	"fmt"
	"strings"

	"fyne.io/fyne/v2"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

var (
	waves     = []gym.WaveKind{gym.BlockWave, gym.RollingWave, gym.StepWave}
	waveNames = []string{"Block", "Rolling", "Step"}
)

// waveAsk is the question which wave to run from which week, with what it would do.
type waveAsk struct {
	room    *Cycle
	kind    *kit.Segmented
	from    *kit.Field
	about   *kit.Prose
	preview *kit.Prose
}

// wave asks which wave to run through the track in front.
func (r *Cycle) wave() {
	if !r.ready() || r.trackID() == "" {
		return
	}
	w := &waveAsk{room: r, about: kit.NewProse("", 300).Tone(look.Muted), preview: kit.NewProse("", 300)}
	w.kind = kit.NewSegmented(waveNames, 1, func(int) { w.show() })
	w.from = kit.NewField("From week").OnChange(func(string) { w.show() })
	w.from.SetText(fmt.Sprint(r.desk().OpenWeek(r.view.Cycle, r.trackID())))
	w.show()
	kit.Ask(r.host.Window().Canvas(), kit.Question{
		Title: "Run a wave through " + r.view.Tracks[r.track].Name,
		Text:  "A wave writes the rep counts of the main lifts, week after week. Lifts, titles and the other parts of the days stay.",
		Body: kit.Column(look.Gap3, kit.Row(0, w.kind, kit.Fill()), w.about, w.from,
			kit.Tall(190, kit.Column(0, w.preview))),
		Width:   620,
		Actions: []kit.Action{{Label: "Run it", Do: w.run}},
		First:   w.from.Keyboard(),
	})
}

// show tells what the wave would do.
func (w *waveAsk) show() {
	w.about.SetText(desk.WaveText(waves[w.kind.Chosen()]))
	n, err := desk.ParseCount(w.from.Text(), len(w.room.view.Weeks))
	var lines []string
	if err == nil {
		lines, err = w.room.desk().WavePreview(w.room.id, w.room.trackID(), waves[w.kind.Chosen()], n)
	}
	w.preview.Tone(look.Text)
	w.preview.SetText(strings.Join(lines, "\n"))
	if err != nil {
		w.preview.SetText(kit.Sentence(err))
		w.preview.Tone(look.Warn)
	}
}

func (w *waveAsk) run() bool {
	n, err := desk.ParseCount(w.from.Text(), len(w.room.view.Weeks))
	if err == nil {
		err = w.room.desk().RunWave(w.room.id, w.room.trackID(), waves[w.kind.Chosen()], n)
	}
	if err != nil {
		w.from.SetFault(kit.Sentence(err))
		return false
	}
	w.room.host.Say(fmt.Sprintf("The %s wave runs from week %d on.", strings.ToLower(waveNames[w.kind.Chosen()]), n), true)
	return true
}

// next asks for the name and the first day of the cycle after this one.
func (r *Cycle) next() {
	if !r.ready() {
		return
	}
	c := r.view.Cycle
	name, start := kit.NewField("Name"), kit.NewField("First day")
	name.SetText(r.desk().NextName(c.Name))
	start.SetText(r.desk().NextStart(c.End()).String())
	start.SetNote(r.desk().NextStart(c.End()).Long())
	start.OnChange(func(text string) {
		on, err := r.desk().ReadStart(text)
		start.SetNote("")
		if err == nil {
			start.SetNote(on.Long())
		}
	})
	kit.Ask(r.host.Window().Canvas(), kit.Question{
		Title: "Start the next cycle from " + c.Name,
		Text:  "It begins with the same weeks, tracks and plans, all of which you can change. Write its goal when you have made it.",
		Body:  kit.Column(look.Gap2, name, start), Width: 560,
		Actions: []kit.Action{{Label: "Start it", Do: func() bool { return r.startNext(name, start) }}},
	})
}

func (r *Cycle) startNext(name, start *kit.Field) bool {
	on, err := r.desk().ReadStart(start.Text())
	if err != nil {
		start.SetFault(kit.Sentence(err))
		return false
	}
	c, err := r.desk().NextCycle(r.id, strings.TrimSpace(name.Text()), on)
	if err != nil {
		start.SetFault(kit.Sentence(err))
		return false
	}
	r.take(c.ID)
	r.host.Say(c.Name+" is made. Every day of it can be changed.", true)
	return true
}

// steps of the way to a new cycle, as the coach reads them.
var steps = []string{"1  Name and dates", "2  Tracks", "3  Waves", "4  Review"}

// step is one step of the way: what it shows, what it does when it comes to the
// front, and what keeps the coach from going on.
type step struct {
	all  fyne.CanvasObject
	show func()
	done func() bool
}
