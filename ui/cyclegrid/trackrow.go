package cyclegrid

import (
	"slices"
	"strings"

	"fyne.io/fyne/v2"

	"windlass/internal/cycle"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// trackRow is one of the gym's tracks on the way to a new cycle: whether it runs,
// what it begins with, and its wave.
type trackRow struct {
	maker    *maker
	track    gym.Track
	in       *kit.Toggle
	template *kit.Choice
	about    *kit.Prose
	wrong    *kit.Prose
	wave     *kit.Segmented
	waveText *kit.Prose
	preview  *kit.Prose
	all      fyne.CanvasObject
	waves    fyne.CanvasObject
}

// alone is the option of a track that the coach writes alone.
const alone = "alone"

func newTrackRow(m *maker, t gym.Track) *trackRow {
	r := &trackRow{maker: m, track: t, about: kit.NewProse("", 300).Small().Tone(look.Muted), wrong: kit.NewProse("", 300).Small().Tone(look.Warn)}
	r.in = kit.NewToggle(t.Name, true, func(bool) { m.trackNote.SetText("") })
	r.template = kit.NewChoice("", templateOptions(), func(kit.Option) { r.tell() }).Least(220)
	r.template.Set(usualTemplate(t.Name))
	r.tell()
	r.all = kit.Column(look.Gap1, kit.Row(look.Gap3, kit.Wide(220, r.in), kit.Fill(r.template)), r.about, r.wrong)
	r.waveText, r.preview = kit.NewProse("", 300).Small().Tone(look.Muted), kit.NewProse("", 300)
	r.wave = kit.NewSegmented(waveNames, 1, func(int) { r.drawWave(); m.drawWaves() })
	r.drawWave()
	r.waves = kit.Column(look.Gap2, kit.Row(look.Gap3, kit.Wide(160, kit.NewStrong(t.Name)), r.wave, kit.Fill()), r.waveText, r.preview)
	return r
}

func templateOptions() []kit.Option {
	var options []kit.Option
	for _, t := range cycle.Templates() {
		options = append(options, kit.Option{Key: t.Key, Text: t.Name, Note: "built in, ready to run"})
	}
	return append(options, kit.Option{Key: alone, Text: "Empty weeks", Note: "you write them"})
}

// usualTemplate is the built-in track of a track's own name, or empty weeks.
func usualTemplate(name string) string {
	templates := cycle.Templates()
	i := slices.IndexFunc(templates, func(t cycle.Template) bool { return strings.EqualFold(t.Name, name) })
	if i < 0 {
		return alone
	}
	return templates[i].Key
}

// tell says what the track begins with.
func (r *trackRow) tell() {
	o, _ := r.template.Chosen()
	if t, ok := cycle.TemplateOf(o.Key); ok {
		r.about.SetText(t.About)
		return
	}
	r.about.SetText("The weeks begin empty. Write one week, and repeat its days through the others.")
}

// clash shows which other cycle claims the track; such a track is left out.
func (r *trackRow) clash(why string) {
	r.wrong.SetText(why)
	r.wrong.Hidden = why == ""
	if why != "" {
		r.in.Set(false)
	}
}

func (r *trackRow) drawWave() { r.waveText.SetText(desk.WaveText(waves[r.wave.Chosen()])) }

func (r *trackRow) spec() cycle.TrackSpec {
	o, _ := r.template.Chosen()
	s := cycle.TrackSpec{Track: r.track.ID, Template: o.Key, Wave: waves[r.wave.Chosen()]}
	if o.Key == alone {
		s.Template = ""
	}
	return s
}
