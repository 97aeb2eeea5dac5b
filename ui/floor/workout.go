package floor

import (
	"slices"
	"strings"
	"time"

	"fyne.io/fyne/v2"

	"windlass/internal/clock"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// workout is the conditioning: a clock for each workout of the class, and the
// sheet on which the bouts are logged.
type workout struct {
	floor *Floor
	cards []*workoutCard
	row   *fyne.Container
	run   *kit.Button
	reset *kit.Button
	on    *kit.Button
	whose *kit.Text // what on moves, where there are several workouts
	sheet *boutSheet
	empty *fyne.Container
	full  *fyne.Container
	all   *fyne.Container
}

func newWorkout(f *Floor) *workout {
	w := &workout{floor: f, row: kit.Equal(look.Gap3)}
	w.run = kit.NewButton("Start", w.toggle).Key("Space").Primary()
	w.reset = kit.NewButton("Clock back to 0:00", w.zero).Key("Z").Plain()
	w.on = kit.NewButton("Round on", func() { w.moveOn(false) }).Key("N").Plain().
		Tip("Most of the chosen athlete's track are a round further, or in a chipper a movement. B takes one back.")
	w.whose = kit.NewCaption("").Shrinks(0).Align(fyne.TextAlignTrailing)
	finish := kit.NewButton("Finish", f.toSummary).Key("Q")
	w.sheet = newBoutSheet(w)
	bar := kit.NewPanel(kit.Pad(look.Gap2, kit.Row(look.Gap2, w.sheet.progress, kit.Fill(kit.Column(0, kit.Fill(), w.whose, kit.Fill())), w.on, w.reset, kit.Wide(runWidth, w.run), finish)))
	w.full = kit.Column(look.Gap3, kit.Tall(212, kit.Fill(w.row)), kit.Fill(w.sheet.all), bar)
	w.empty = kit.NewEmpty("No conditioning today", "No track's plan has a conditioning part on this day. Write one in the Cycle room, or finish the class.",
		kit.NewButton("Finish", f.toSummary).Key("Q"))
	w.all = kit.Column(0, kit.Fill(w.full), kit.Fill(w.empty))
	return w
}

func (w *workout) content() fyne.CanvasObject { return w.all }

func (w *workout) show() { w.sheet.list.Focus() }

func (w *workout) refresh() {
	workouts := w.floor.board.Workouts
	show(w.all.Objects[0], len(workouts) > 0)
	show(w.all.Objects[1], len(workouts) == 0)
	for len(w.cards) < len(workouts) {
		w.cards = append(w.cards, newWorkoutCard())
	}
	if len(w.row.Objects) != len(workouts) {
		w.row.Objects = nil
		for _, c := range w.cards[:len(workouts)] {
			w.row.Objects = append(w.row.Objects, c.all)
		}
		w.row.Refresh()
	}
	for i, b := range workouts {
		w.cards[i].set(b)
	}
	w.sheet.refresh()
	w.all.Refresh()
}

// tick shows every workout's own face of the one clock.
func (w *workout) tick(clock.Moment) {
	now, run := w.floor.desk().Now(), w.floor.class.Workout
	for i, b := range w.floor.board.Workouts {
		if i < len(w.cards) {
			w.cards[i].tick(b, b.At(run, now))
		}
	}
	switch {
	case !run.Started():
		w.run.SetLabel("Start")
	case run.Running:
		w.run.SetLabel("Hold")
	default:
		w.run.SetLabel("Go on")
	}
	w.reset.Able(run.Started())
	w.offerOn(now)
}

// offerOn offers to move the chosen athlete's workout on while its round is only
// thought, and says whose that is where there are several.
func (w *workout) offerOn(now time.Time) {
	b, ok := w.chosen()
	able, whose := ok && b.At(w.floor.class.Workout, now).Phase == clock.Working && len(b.Course) > 0, ""
	if able && len(w.floor.board.Workouts) > 1 {
		whose = "Round on is for " + strings.Join(b.Tracks, ", ")
	}
	w.whose.SetText(whose)
	w.on.Able(able)
}

// chosen is the workout of the chosen athlete.
func (w *workout) chosen() (desk.BoardWorkout, bool) {
	track := w.sheet.track()
	i := slices.IndexFunc(w.floor.board.Workouts, func(b desk.BoardWorkout) bool { return b.Does(track) })
	if i < 0 {
		return desk.BoardWorkout{}, false
	}
	return w.floor.board.Workouts[i], true
}

// moveOn says where the class is, what a coach sees and no clock can, and tells
// whose round it was and where they are thought to be now.
func (w *workout) moveOn(back bool) {
	f := w.floor
	if !f.host.Fail(f.desk().MoveOn(f.id, w.sheet.track(), back)) {
		return
	}
	other := "B takes one back."
	if back {
		other = "N goes on again."
	}
	b, _ := w.chosen()
	if where := turnWords(b, b.At(f.class.Workout, f.desk().Now())); where != "" {
		f.host.Say(strings.Join(b.Tracks, ", ")+": "+where+". "+other, false)
	}
}

// toggle starts the clock or holds it, and turns the class to its conditioning
// first.
func (w *workout) toggle() {
	f := w.floor
	if f.class.Stage != gym.Conditioning && !f.host.Fail(f.desk().StartConditioning(f.id)) {
		return
	}
	verb := f.desk().StartClock
	if f.class.Workout.Running {
		verb = f.desk().HoldClock
	}
	f.host.Fail(verb(f.id))
}

func (w *workout) zero() {
	if w.floor.class.Stage == gym.Conditioning {
		w.floor.host.Fail(w.floor.desk().SetClock(w.floor.id, 0))
	}
}

func (w *workout) keys() []room.Key {
	return slices.Concat([]room.Key{
		{Press: "Space", Does: "Start, hold or go on", Do: w.toggle},
		{Press: "Z", Does: "Put the clock back to 0:00", Do: w.zero},
	}, w.sheet.keys(), []room.Key{
		{Press: "N", Does: "Most are a round further, in a chipper a movement", Do: func() { w.moveOn(false) }},
		{Press: "B", Does: "Most are a round behind", Do: func() { w.moveOn(true) }},
		{Press: "Q", Does: "Finish the class", Do: w.floor.toSummary},
	})
}
