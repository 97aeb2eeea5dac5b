package desk

import (
	"context"
	"sync"
)

// way is the one way into the file. A long step holds it for a second or more; a
// verb waits for nothing but a row and, if it comes in that moment, the commit: the
// step gives up what it has begun, and begins again after the verb.
type way struct {
	mu      sync.Mutex
	moved   *sync.Cond
	asked   bool               // a verb wants to write, or does
	stop    context.CancelFunc // gives up what the step has begun; nil when it has begun nothing
	written bool
	refused error // why the step must not begin again
}

func newWay() *way {
	w := &way{}
	w.moved = sync.NewCond(&w.mu)
	return w
}

// begin waits until no verb is in the way. The context that it returns ends when
// one comes.
func (w *way) begin(ctx context.Context) (context.Context, error) {
	w.mu.Lock()
	defer w.mu.Unlock()
	for w.asked {
		w.moved.Wait()
	}
	if w.refused != nil {
		return nil, w.refused
	}
	if err := ctx.Err(); err != nil {
		return nil, err
	}
	ctx, w.stop = context.WithCancel(ctx)
	return ctx, nil
}

// end says how what was begun has ended, and reports whether a verb is why: then
// the step begins again.
func (w *way) end(err error) (again bool) {
	w.mu.Lock()
	defer w.mu.Unlock()
	w.stop()
	w.stop, w.written = nil, err == nil
	w.moved.Broadcast()
	return w.asked && err != nil
}

// ask makes the way free for a verb, and reports whether the step is written.
func (w *way) ask() (written bool) {
	w.mu.Lock()
	defer w.mu.Unlock()
	w.asked = true
	if w.stop != nil {
		w.stop()
	}
	for w.stop != nil {
		w.moved.Wait()
	}
	return w.written
}

// leave lets the step go on after a verb.
func (w *way) leave() {
	w.mu.Lock()
	defer w.mu.Unlock()
	w.asked = false
	w.moved.Broadcast()
}

// refuse keeps the step from beginning again.
func (w *way) refuse(why error) {
	w.mu.Lock()
	defer w.mu.Unlock()
	w.refused = why
}

func (w *way) isWritten() bool {
	w.mu.Lock()
	defer w.mu.Unlock()
	return w.written
}
