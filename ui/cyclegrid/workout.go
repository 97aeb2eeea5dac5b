package cyclegrid

import (
	"strings"

	"fyne.io/fyne/v2"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// formats are those of conditioning in the order in which a coach reads them.
var formats = []kit.Option{
	{Key: string(gym.ForTime), Text: "For time", Note: "rounds or a rep list, as fast as it goes"},
	{Key: string(gym.AMRAP), Text: "AMRAP", Note: "as many rounds as possible"},
	{Key: string(gym.EMOM), Text: "EMOM", Note: "every minute on the minute"},
	{Key: string(gym.Intervals), Text: "Intervals", Note: "work and rest in turn"},
	{Key: string(gym.Chipper), Text: "Chipper", Note: "a long list, once through"},
	{Key: string(gym.PlainSets), Text: "Sets", Note: "against no clock"},
}

// workoutPart edits the conditioning: its format, its movements with their loads,
// and how long it takes; and it proposes one.
type workoutPart struct {
	editor   *editor
	format   *kit.Choice
	fields   *fyne.Container
	inputs   map[desk.FieldKind]*input
	shown    gym.Format
	drafts   desk.WorkoutDrafts // of the day under the cursor
	items    []*itemRow
	box      *fyne.Container
	lengths  *fyne.Container
	times    [3]*kit.Text
	note     *kit.Prose
	sharing  *kit.Prose // whether the implements suffice for the day's class
	tiers    *kit.Prose
	head     *fyne.Container
	own      *fyne.Container // all but the proposal
	composer *composer
	drop     *kit.Button
	all      fyne.CanvasObject
}

func newWorkoutPart(e *editor) *workoutPart {
	w := &workoutPart{editor: e, inputs: map[desk.FieldKind]*input{}, drafts: desk.WorkoutDrafts{}, box: kit.Column(look.Gap2), note: kit.NewProse("", 200).Small().Tone(look.Muted)}
	w.format = kit.NewChoice("", formats, w.takeFormat).Hint("No conditioning yet").Least(150)
	w.format.Called("Format")
	w.drop = dropButton("Take the conditioning out", func() { w.keep(gym.Workout{}, "The day has no conditioning now.") })
	w.fields = kit.Equal(look.Gap2)
	var columns []fyne.CanvasObject
	for i, name := range []string{"Fast athlete", "Usual", "Slow"} {
		w.times[i] = kit.NewStrong("").Shrinks(40)
		columns = append(columns, kit.Column(0, kit.NewCaption(name), w.times[i]))
	}
	w.lengths = kit.Equal(look.Gap2, columns...)
	w.sharing = kit.NewProse("", 200).Small()
	w.composer = newComposer(w)
	w.head = kit.Row(look.Gap2, kit.NewStrong("Conditioning"), kit.Fill(), kit.NewButton("Compose", w.compose).Key("C").Tip("Proposes a workout for this day, with its reasons."))
	w.tiers = kit.NewProse("Loads are full, mid and light, for the load standards M and W, in "+string(e.room.desk().Settings().Unit)+".", 200).Small().Tone(look.Muted)
	w.own = kit.Column(look.Gap2, kit.Row(look.Gap1, kit.Fill(w.format), w.drop), w.fields, w.box, w.tiers, kit.NewRule(), w.lengths, w.note, w.sharing)
	w.all = kit.Column(look.Gap2, w.head, w.composer.all, w.own)
	return w
}

func (w *workoutPart) refresh() {
	x := w.editor.plan.Workout
	w.drafts.Keep(x)
	w.format.Set(string(x.Format))
	w.drop.Hidden = x.Format == ""
	w.drawFields(x)
	w.drawItems(x)
	w.drawLengths(x)
	w.drawSharing(x)
	w.composer.refresh()
}

// drawFields shows what is to be said about the format.
func (w *workoutPart) drawFields(x gym.Workout) {
	kinds := desk.WorkoutFields(x.Format)
	if w.shown != x.Format {
		w.shown = x.Format
		w.fields.Objects = nil
		for _, k := range kinds {
			w.fields.Objects = append(w.fields.Objects, w.input(k).field)
		}
		w.fields.Refresh()
	}
	w.fields.Hidden = len(kinds) == 0
	for _, k := range kinds {
		w.input(k).show(k.Text(x))
	}
}

func (w *workoutPart) input(k desk.FieldKind) *input {
	if i, ok := w.inputs[k]; ok {
		return i
	}
	i := w.editor.newInput(string(k), func(text string) error {
		before := w.editor.draft().Workout
		x, err := k.Read(before, text)
		if err == nil {
			if len(before.Reps) > 0 {
				x = w.drafts.WithAmounts(x)
			}
			w.keep(x, "The conditioning is changed.")
		}
		return err
	}).hint(k.Hint()).least(80)
	w.inputs[k] = i
	return i
}

func (w *workoutPart) drawItems(x gym.Workout) {
	options := movementOptions(w.editor.room.desk(), x.Format)
	for len(w.items) < len(x.Items)+1 {
		w.items = append(w.items, newItemRow(w, len(w.items)))
	}
	if len(w.box.Objects) != len(x.Items)+1 {
		w.box.Objects = nil
		for _, r := range w.items[:len(x.Items)+1] {
			w.box.Objects = append(w.box.Objects, r.all)
		}
		w.box.Refresh()
	}
	for i, r := range w.items[:len(x.Items)+1] {
		item := gym.Item{}
		if i < len(x.Items) {
			item = x.Items[i]
		}
		r.show(x, item, options)
	}
	w.tiers.Hidden = len(x.Items) == 0
}

// rest is the option of a minute without a movement.
const rest = "rest"

func movementOptions(d *desk.Desk, f gym.Format) []kit.Option {
	var options []kit.Option
	if f == gym.EMOM {
		options = append(options, kit.Option{Key: rest, Text: "Rest", Note: "a minute off"})
	}
	for _, m := range d.Book().Movements {
		if !m.Hidden {
			options = append(options, kit.Option{Key: string(m.Key), Text: m.Name, Note: string(m.Region)})
		}
	}
	return options
}

// drawLengths tells how long it takes, or what keeps that from being told.
func (w *workoutPart) drawLengths(x gym.Workout) {
	l := w.editor.room.desk().WorkoutLengths(x)
	w.lengths.Hidden = x.Empty() || l.Fault != nil
	for i, text := range []string{l.Fast, l.Usual, l.Slow} {
		w.times[i].SetText(text)
	}
	w.note.Hidden = x.Format == ""
	if fault := w.editor.room.desk().WorkoutFault(x); fault != nil {
		w.note.SetText(kit.Sentence(fault))
		w.note.Tone(look.Warn)
		return
	}
	w.note.SetText(strings.TrimSpace(l.Turns + " " + l.Note))
	w.note.Tone(look.Muted)
	if l.Long {
		w.note.Tone(look.Warn)
	}
}

// drawSharing tells whether the gym has enough for the class to do it at once.
func (w *workoutPart) drawSharing(x gym.Workout) {
	e := w.editor
	sharing := e.room.desk().WorkoutSharing(x, e.at.Track, e.at.Date(e.room.view.Cycle))
	w.sharing.Hidden = sharing.Text == ""
	w.sharing.SetText(sharing.Text)
	w.sharing.Tone(look.Muted)
	if sharing.Short {
		w.sharing.Tone(look.Warn)
	}
}

func (w *workoutPart) keep(x gym.Workout, sentence string) {
	p := w.editor.draft()
	p.Workout = x
	w.editor.keep(p, sentence)
}

func (w *workoutPart) takeFormat(o kit.Option) {
	w.keep(w.drafts.WithFormat(w.editor.room.desk(), w.editor.draft().Workout, gym.Format(o.Key)), "The conditioning is "+o.Text+" now.")
}

// forget drops a proposal and what was tried on another day.
func (w *workoutPart) forget() {
	w.composer.forget()
	w.drafts = desk.WorkoutDrafts{}
}

func (w *workoutPart) compose() { w.composer.another() }
