package ui

import (
	"context"

	"fyne.io/fyne/v2"

	"windlass/internal/desk"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// cart is the place at the window's foot where a long step is seen on its way.
type cart struct {
	line   *fyne.Container
	name   *kit.Text
	bar    *kit.Progress
	step   *desk.LongStep // nil for none
	cancel context.CancelFunc
}

func newCart() *cart {
	c := &cart{name: kit.NewCaption(""), bar: kit.NewProgress()}
	stop := kit.NewButton("Stop", func() { c.cancel() }).Plain().Tip("Nothing of it is kept")
	c.line = kit.Row(look.Gap3, c.name, c.bar, stop)
	c.line.Hide()
	return c
}

func (c *cart) start(step *desk.LongStep, cancel context.CancelFunc) {
	c.step, c.cancel = step, cancel
	c.name.SetText("On its way: " + step.Label())
	c.bar.Set(0, 0)
	c.line.Show()
}

func (c *cart) arrived() {
	c.cancel()
	c.step = nil
	c.line.Hide()
}

// stop stops the step on its way and reports whether there was one that nothing
// was done after.
func (c *cart) stop() bool {
	if c.step == nil || !c.step.Alone() {
		return false
	}
	c.cancel()
	return true
}

// Carry implements room.Host.
func (w *Window) Carry(step *desk.LongStep, done func(error)) {
	if step == nil {
		done(nil)
		return
	}
	ctx, cancel := context.WithCancel(w.life)
	w.cart.start(step, cancel)
	go func() {
		err := step.Write(ctx, everyPart(func(written, of int) { fyne.Do(func() { w.cart.bar.Set(written, of) }) }))
		fyne.Do(func() {
			w.desk.Land(step)
			w.cart.arrived()
			done(err)
		})
	}()
}

// parts is how often progress is drawn: at every word of it the thread that draws
// would have no time for the clock.
const parts = 40

// everyPart hands progress on when another part is done, or when it begins again.
func everyPart(set func(done, of int)) func(done, of int) {
	last := -1
	return func(done, of int) {
		if part := done * parts / max(1, of); part != last {
			last = part
			set(done, of)
		}
	}
}
