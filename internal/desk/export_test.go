package desk

import (
	"reflect"

	"windlass/internal/clock"
)

// Mind is [Desk.MindClock] with both clocks of the machine in the test's hand.
func (d *Desk) Mind(is clock.Instant) (string, error) {
	if d.watch.opened.IsZero() {
		d.watch = watch{opened: is.Wall, last: is}
		return "", nil
	}
	return d.mind(is)
}

// LongFrom makes steps of so many changes long, so that a test needs no sheet of
// hundreds of rows.
func (d *Desk) LongFrom(changes int) { d.longFrom = changes }

// IndexIsTrue reports whether the index is the one that a desk opened now would make.
func (d *Desk) IndexIsTrue() bool { return reflect.DeepEqual(d.index, newIndex(&d.book)) }
