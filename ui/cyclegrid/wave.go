package cyclegrid

import (
	"fmt"
	"strings"

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
