package cyclegrid

import (
	"strconv"
	"strings"

	"fyne.io/fyne/v2"

	"windlass/internal/conditioning"
	"windlass/internal/desk"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// composer proposes a workout in the place of the day's own, by what the coach
// wishes this once.
type composer struct {
	workout  *workoutPart
	seed     uint64
	wish     desk.Wish
	proposal conditioning.Proposal
	open     bool
	text     *kit.Prose
	loads    *kit.Prose
	why      *kit.Prose
	now      *kit.Prose
	take     *kit.Button
	back     *kit.Button
	from     *input
	to       *input
	apart    *input
	class    *input
	all      *fyne.Container
}

func newComposer(w *workoutPart) *composer {
	c := &composer{workout: w, text: kit.NewProse("", 200), loads: kit.NewProse("", 200).Small(), why: kit.NewProse("", 200).Small().Tone(look.Muted), now: kit.NewProse("", 200).Small().Tone(look.Muted)}
	c.take = kit.NewButton("Take it", c.accept).Primary()
	c.back = kit.NewButton("Back", c.before).Plain().Tip("Goes back to the proposal before this one.")
	buttons := kit.Row(look.Gap1, c.take, kit.NewButton("Another", c.another).Key("C"), c.back, kit.NewButton("Leave it", func() {
		c.forget()
		w.editor.fill()
	}).Plain(), kit.Fill())
	c.all = kit.Column(look.Gap3, c.wishes(), c.text, c.loads, c.why, buttons, c.now)
	c.all.Hide()
	return c
}

// wishes are the lines for what is wanted this once.
func (c *composer) wishes() fyne.CanvasObject {
	line := func(label string, take func(text string) error) *input {
		return c.workout.editor.newInput(label, func(text string) error {
			err := take(text)
			if err == nil {
				c.propose()
			}
			return err
		}).least(64)
	}
	c.from = line("Minutes, from", func(text string) (err error) {
		c.wish.Shortest, c.wish.Longest, err = c.window(text, desk.WindowText(c.wish.Longest))
		return err
	})
	c.to = line("to", func(text string) (err error) {
		c.wish.Shortest, c.wish.Longest, err = c.window(desk.WindowText(c.wish.Shortest), text)
		return err
	})
	c.apart = line("Days apart", func(text string) error { return whole(text, &c.wish.Apart) })
	c.class = line("Athletes", func(text string) error { return whole(text, &c.wish.Class) })
	return kit.Equal(look.Gap2, c.from.field, c.to.field, c.apart.field, c.class.field)
}

// window reads both ends, and leaves the wish alone where it cannot.
func (c *composer) window(from, to string) (int, int, error) {
	shortest, longest, err := desk.ReadWindow(from, to)
	if err != nil {
		return c.wish.Shortest, c.wish.Longest, err
	}
	return shortest, longest, nil
}

func whole(text string, to *int) error {
	n, err := desk.ReadCount(text)
	if err == nil {
		*to = n
	}
	return err
}

// another proposes a workout, each time another one.
func (c *composer) another() {
	e := c.workout.editor
	if !c.open {
		c.wish = e.room.desk().UsualWish(e.at, e.at.Date(e.room.view.Cycle))
	}
	c.seed++
	c.propose()
}

// before goes back to the proposal before this one.
func (c *composer) before() {
	c.seed--
	c.propose()
}

// propose draws the proposal of the seed by the wish as it stands.
func (c *composer) propose() {
	e := c.workout.editor
	p, err := e.room.desk().Compose(e.room.view.Cycle, e.at, c.wish, c.seed)
	c.open = true
	c.proposal = p
	c.text.SetText(e.room.desk().WorkoutText(p.Workout) + ".")
	c.loads.SetText(strings.Join(e.room.desk().WorkoutLoads(p.Workout), "\n"))
	c.loads.Hidden = c.loads.Label() == ""
	c.why.SetText(strings.Join(p.Why, "\n"))
	c.take.Able(err == nil)
	c.back.Able(c.seed > 1)
	if err != nil {
		c.text.SetText("Nothing is proposed.")
		c.why.SetText(kit.Sentence(err))
	}
	e.fill()
}

func (c *composer) accept() {
	c.open = false
	c.workout.keep(c.proposal.Workout, "The proposal is the day's conditioning now.")
}

func (c *composer) forget() { c.open, c.seed = false, 0 }

func (c *composer) refresh() {
	c.all.Hidden, c.workout.own.Hidden, c.workout.head.Hidden = !c.open, c.open, c.open
	c.from.show(desk.WindowText(c.wish.Shortest))
	c.to.show(desk.WindowText(c.wish.Longest))
	c.apart.show(strconv.Itoa(c.wish.Apart))
	c.class.show(strconv.Itoa(c.wish.Class))
	now := "Nothing is planned for this day yet."
	if x := c.workout.editor.plan.Workout; !x.Empty() {
		now = "Planned as it is: " + c.workout.editor.room.desk().WorkoutText(x) + "."
	}
	c.now.SetText(now)
}
