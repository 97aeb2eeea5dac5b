package floor

import (
	"fyne.io/fyne/v2"

	"windlass/internal/clock"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// workout is the conditioning: its clock and what each track does.
type workout struct {
	floor  *Floor
	digits *kit.Digits
	run    *kit.Button
	all    fyne.CanvasObject
}

func newWorkout(f *Floor) *workout {
	w := &workout{floor: f, digits: kit.NewDigits(96)}
	w.digits.Set("00:00", look.Text)
	w.run = kit.NewButton("Start", w.toggle).Key("Space").Primary()
	w.all = kit.Column(look.Gap3, kit.NewCard("Conditioning", kit.Column(look.Gap3, kit.Tall(160, w.digits), w.run)), kit.Fill())
	return w
}

func (w *workout) content() fyne.CanvasObject { return w.all }

func (w *workout) show() {}

func (w *workout) refresh() {}

func (w *workout) tick(clock.Moment) {
	w.digits.Set(clock.Up(w.floor.class.Workout.Elapsed(w.floor.desk().Now())), look.Text)
	if w.floor.class.Workout.Running {
		w.run.SetLabel("Hold")
	} else {
		w.run.SetLabel("Start")
	}
}

func (w *workout) toggle() {
	verb := w.floor.desk().StartClock
	if w.floor.class.Workout.Running {
		verb = w.floor.desk().HoldClock
	}
	w.floor.host.Fail(verb(w.floor.id))
}

func (w *workout) keys() []room.Key {
	return []room.Key{
		{Press: "Space", Does: "Start, hold or go on", Do: w.toggle},
		{Press: "Q", Does: "Finish the class", Do: func() { w.floor.toSummary() }},
	}
}
