package sound

import (
	"fmt"
	"sync"
	"time"
)

// Output is a device that plays samples.
type Output interface {
	// Play begins to play over what plays already, and does not wait for it. The
	// error says that the device is lost.
	Play(samples []int16) error
	Close()
}

// Engine plays cues on a goroutine of its own. Its methods may be called from any
// goroutine and never wait.
type Engine struct {
	open  func() (Output, error)
	now   func() time.Time
	cues  chan Cue
	done  chan struct{}
	ended chan struct{}

	mu      sync.Mutex
	on      bool
	volume  float64
	trouble string // not told yet
	told    bool   // since a cue was last heard
}

// queue is how many cues may wait for a device that is slow to open; later ones
// are dropped, since a cue that comes late is wrong.
const queue = 4

// retryAfter is how long a device that failed is left alone.
const retryAfter = 10 * time.Second

// New starts an engine that plays through what open returns. It is on at full
// volume.
func New(open func() (Output, error), now func() time.Time) *Engine {
	e := &Engine{
		open: open, now: now, on: true, volume: 1,
		cues: make(chan Cue, queue), done: make(chan struct{}), ended: make(chan struct{}),
	}
	go e.run()
	return e
}

// Play lets a cue be heard, unless the engine is mute.
func (e *Engine) Play(c Cue) {
	if on, volume := e.setting(); !on || volume == 0 {
		return
	}
	select {
	case e.cues <- c:
	default:
	}
}

// Set switches the engine on or off and sets its volume, 0 to 1.
func (e *Engine) Set(on bool, volume float64) {
	e.mu.Lock()
	defer e.mu.Unlock()
	e.on, e.volume = on, min(1, max(0, volume))
}

func (e *Engine) setting() (on bool, volume float64) {
	e.mu.Lock()
	defer e.mu.Unlock()
	return e.on, e.volume
}

// Trouble returns, once, why nothing can be heard; it is empty while all is well
// and after it was told.
func (e *Engine) Trouble() string {
	e.mu.Lock()
	defer e.mu.Unlock()
	text := e.trouble
	e.trouble = ""
	return text
}

// Close ends the engine and gives the device back.
func (e *Engine) Close() {
	close(e.done)
	<-e.ended
}

// run owns the device.
func (e *Engine) run() {
	defer close(e.ended)
	d := device{engine: e}
	defer d.close()
	for {
		select {
		case <-e.done:
			return
		case c := <-e.cues:
			_, volume := e.setting()
			d.play(louder(Samples(c), volume))
		}
	}
}

// device is the output of an engine, opened when it is needed.
type device struct {
	engine *Engine
	out    Output
	failed time.Time
}

// play plays through the device; one that was lost is opened again at once, and
// one that cannot be opened is left alone for a while.
func (d *device) play(samples []int16) {
	for range 2 {
		if !d.ready() {
			return
		}
		err := d.out.Play(samples)
		if err == nil {
			d.engine.heard()
			return
		}
		d.close()
		d.engine.fail(err)
	}
}

func (d *device) ready() bool {
	now := d.engine.now()
	if d.out != nil {
		return true
	}
	if !d.failed.IsZero() && now.Sub(d.failed) < retryAfter {
		return false
	}
	out, err := d.engine.open()
	if err != nil {
		d.failed = now
		d.engine.fail(err)
		return false
	}
	d.out, d.failed = out, time.Time{}
	return true
}

func (d *device) close() {
	if d.out != nil {
		d.out.Close()
		d.out = nil
	}
}

// fail keeps what is wrong, to be told once until something is heard again.
func (e *Engine) fail(err error) {
	e.mu.Lock()
	defer e.mu.Unlock()
	if !e.told {
		e.told = true
		e.trouble = fmt.Sprintf("No sound: %v. The clock goes on; connect a speaker, and the next cue is heard.", err)
	}
}

func (e *Engine) heard() {
	e.mu.Lock()
	defer e.mu.Unlock()
	e.told, e.trouble = false, ""
}
