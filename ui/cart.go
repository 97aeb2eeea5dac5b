package ui

import (
	"context"
	"sync"

	"fyne.io/fyne/v2"

	"windlass/internal/desk"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// cart is the place at the window's foot where a long step is seen on its way.
type cart struct {
	foot   *fyne.Container // the line and what stands beside it
	line   *fyne.Container
	name   *kit.Text
	bar    *kit.Progress
	step   *desk.LongStep // nil for none
	cancel context.CancelFunc
	works  sync.WaitGroup // while the step has hold of the file
}

// newCart makes the place at the end of a row, whose other thing has the rest of it.
func newCart(beside fyne.CanvasObject) *cart {
	c := &cart{name: kit.NewCaption(""), bar: kit.NewProgress()}
	stop := kit.NewButton("Stop", func() { c.cancel() }).Plain().Tip("Nothing of it is kept")
	c.line = kit.Row(look.Gap3, c.name, c.bar, stop)
	c.line.Hide()
	c.foot = kit.Row(0, kit.Fill(beside), c.line)
	return c
}

func (c *cart) start(step *desk.LongStep, cancel context.CancelFunc) {
	c.step, c.cancel = step, cancel
	c.name.SetText("On its way: " + step.Label())
	c.bar.Set(0, 0)
	c.seen(true)
}

// seen shows the place or gives its room back to what stands beside it.
func (c *cart) seen(yes bool) {
	if c.line.Hide(); yes {
		c.line.Show()
	}
	c.foot.Refresh()
}

func (c *cart) arrived() {
	c.cancel()
	c.step = nil
	c.seen(false)
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
	w.cart.works.Add(1)
	go func() {
		err := step.Write(ctx, everyPart(func(written, of int) { fyne.Do(func() { w.cart.bar.Set(written, of) }) }))
		w.cart.works.Done()
		fyne.Do(func() {
			w.desk.Land(step)
			w.cart.arrived()
			done(err)
		})
	}()
}

// End gives up what is on its way beside Fyne's thread, and returns when nothing of
// it has hold of the gym's file any more, which is to be closed after it.
func (w *Window) End() {
	w.end()
	w.cart.works.Wait()
}

// leave closes the window, and asks first while a step is on its way: its sheet has
// left the screen, and nobody would see that nothing of it was kept.
func (w *Window) leave() {
	if w.cart.step == nil {
		w.window.Close()
		return
	}
	kit.Ask(w.window.Canvas(), kit.Question{
		Title: "Close now?", Text: "This is still on its way: " + w.cart.step.Label() + ". Nothing of it is kept if you close before the end.",
		Cancel: "Let it end",
		Actions: []kit.Action{{Label: "Close all the same", Danger: true, Do: func() bool {
			w.window.Close()
			return true
		}}},
	})
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
