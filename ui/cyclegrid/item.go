package cyclegrid

import (
	"fmt"
	"slices"

	"fyne.io/fyne/v2"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// itemRow is one movement of the conditioning: how much of it, and its three
// loads for each load standard. The last row is empty and adds one.
type itemRow struct {
	workout  *workoutPart
	at       int
	movement *kit.Choice
	amount   *input
	up       *kit.Button
	drop     *kit.Button
	loads    map[gym.Standard]*input
	second   *fyne.Container
	all      fyne.CanvasObject
}

func newItemRow(w *workoutPart, at int) *itemRow {
	r := &itemRow{workout: w, at: at, loads: map[gym.Standard]*input{}}
	r.movement = kit.NewChoice("", nil, r.takeMovement).Hint("Add a movement").Least(120)
	r.movement.Called(fmt.Sprintf("Movement %d", at+1))
	r.amount = w.editor.newInput("", r.takeAmount).called(fmt.Sprintf("Movement %d, how much", at+1)).least(72)
	r.up = kit.NewButton("", r.raise).Mark(kit.Up).Plain().Tip(fmt.Sprintf("Do movement %d before the one above it", at+1))
	r.drop = dropButton("Take the movement out", r.remove)
	var cells []fyne.CanvasObject
	for _, standard := range []gym.Standard{gym.StandardM, gym.StandardW} {
		r.loads[standard] = w.editor.newInput("", r.takeLoads(standard)).hint("full/mid/light").least(80)
		r.loads[standard].called(fmt.Sprintf("Movement %d, loads %s", at+1, standard))
		cells = append(cells, kit.Fill(kit.Row(look.Gap1, kit.NewCaption(string(standard)), kit.Fill(r.loads[standard].field))))
	}
	r.second = kit.Row(look.Gap3, cells...)
	r.all = kit.Column(look.Gap1, kit.Row(look.Gap1, kit.Fill(r.movement), r.amount.field, r.up, r.drop), r.second)
	return r
}

func (r *itemRow) show(w gym.Workout, item gym.Item, options []kit.Option) {
	r.movement.SetOptions(options)
	there := r.at < len(w.Items)
	r.movement.Set(string(item.Movement))
	if there && item.Movement == "" {
		r.movement.Set(rest)
	}
	r.drop.Hidden, r.up.Hidden = !there, !there || r.at == 0
	r.amount.field.Hidden = !there || len(w.Reps) > 0 || item.Movement == ""
	r.amount.show("")
	m, _ := r.workout.editor.room.desk().Movement(item.Movement)
	r.amount.show(desk.ItemAmountText(item.Amount, m.Measure))
	r.amount.hint(string(m.Measure))
	r.second.Hidden = len(m.Loads) == 0
	for standard, i := range r.loads {
		i.show(r.workout.editor.room.desk().TiersText(item, standard))
	}
}

func (r *itemRow) takeMovement(o kit.Option) {
	e := r.workout.editor
	if o.Key == rest {
		o.Key = ""
	}
	r.workout.keep(e.room.desk().WithMovement(e.draft().Workout, r.at, gym.MovementKey(o.Key)), o.Text+" is in the conditioning.")
}

// change keeps the workout with this item changed.
func (r *itemRow) change(edit func(*gym.Item) error) error {
	x := r.workout.editor.draft().Workout
	if r.at >= len(x.Items) {
		return nil
	}
	if err := edit(&x.Items[r.at]); err != nil {
		return err
	}
	r.workout.keep(x, "The conditioning is changed.")
	return nil
}

func (r *itemRow) takeAmount(text string) error {
	return r.change(func(item *gym.Item) (err error) {
		if text == "" {
			item.Amount = 0
			return nil
		}
		m, _ := r.workout.editor.room.desk().Movement(item.Movement)
		item.Amount, err = desk.ReadAmount(text, m.Measure)
		return err
	})
}

func (r *itemRow) takeLoads(standard gym.Standard) func(string) error {
	return func(text string) error {
		return r.change(func(item *gym.Item) (err error) {
			*item, err = r.workout.editor.room.desk().WithTiers(*item, standard, text)
			return err
		})
	}
}

// raise changes places with the movement above.
func (r *itemRow) raise() {
	x := r.workout.editor.draft().Workout
	if r.at == 0 || r.at >= len(x.Items) {
		return
	}
	x.Items[r.at-1], x.Items[r.at] = x.Items[r.at], x.Items[r.at-1]
	r.workout.keep(x, "The order of the movements is changed.")
}

func (r *itemRow) remove() {
	x := r.workout.editor.draft().Workout
	if r.at < len(x.Items) {
		x.Items = slices.Delete(x.Items, r.at, r.at+1)
		r.workout.keep(x, "The movement is out of the conditioning.")
	}
}
