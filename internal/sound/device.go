package sound

import (
	"fmt"
	"time"
)

// device is the output of an engine, opened when it is needed.
type device struct {
	engine  *Engine
	out     Output
	chosen  string    // what was asked for when it was opened
	standIn bool      // the usual one, because the chosen one is not there
	old     Output    // still ends its cue
	tried   time.Time // when something could not be opened
}

// play plays through the device; one that was lost is opened again at once, also
// the usual one that stood in, and one that cannot be opened is left alone for a
// while.
func (d *device) play(samples []int16) {
	var lost error
	for range 2 {
		if !d.ready() {
			return
		}
		if lost = d.out.Play(samples); lost == nil {
			d.tell()
			return
		}
		d.close()
		d.tried = time.Time{}
	}
	d.engine.fail(lost)
}

// tell notes that a cue was heard, and through what.
func (d *device) tell() {
	if !d.standIn {
		d.engine.heard()
		return
	}
	d.engine.say(fmt.Sprintf("The speaker %q cannot be used. The cues are heard through this machine's usual one until it is back.", d.chosen))
}

// ready opens what is to be played through: the chosen device or, where that cannot
// be opened, the usual one.
func (d *device) ready() bool {
	d.closeOld()
	chosen := d.engine.choice()
	if chosen != d.chosen {
		d.close()
		d.chosen, d.tried = chosen, time.Time{}
	}
	if d.out != nil {
		return true
	}
	if !d.due() {
		return false
	}
	out, err := d.engine.open(chosen)
	if d.standIn = err != nil && chosen != ""; d.standIn {
		if out, err = d.engine.open(""); err == nil {
			d.tried = d.engine.now()
		}
	}
	if err != nil {
		d.tried = d.engine.now()
		d.engine.fail(err)
		return false
	}
	d.out = out
	return true
}

// due reports whether what failed may be tried again.
func (d *device) due() bool {
	return d.tried.IsZero() || d.engine.now().Sub(d.tried) >= retryAfter
}

// back returns from a stand-in to the chosen device when that is there again. It is
// called after a cue was handed on, so that looking for the device delays none; the
// stand-in ends its cue meanwhile.
func (d *device) back() {
	if d.out == nil || !d.standIn || !d.due() {
		return
	}
	d.tried = d.engine.now()
	if out, err := d.engine.open(d.chosen); err == nil {
		d.old, d.out, d.standIn = d.out, out, false
		d.tried = time.Time{}
	}
}

func (d *device) closeOld() {
	if d.old != nil {
		d.old.Close()
		d.old = nil
	}
}

func (d *device) close() {
	d.closeOld()
	if d.out != nil {
		d.out.Close()
		d.out = nil
	}
}
