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
	open  func(name string) (Output, error)
	now   func() time.Time
	cues  chan Cue
	done  chan struct{}
	ended chan struct{}

	mu      sync.Mutex
	on      bool
	volume  float64
	chosen  string // name of the device; empty for the machine's usual one
	trouble string // not told yet
	told    string // the last sentence, until a cue is heard as it was to be
}

// queue is how many cues may wait for a device that is slow to open; later ones
// are dropped, since a cue that comes late is wrong.
const queue = 4

// retryAfter is how long a device that failed is left alone.
const retryAfter = 10 * time.Second

// New starts an engine that plays through what open returns for the name of a device,
// which is empty for the machine's usual one. It is on at full volume.
func New(open func(name string) (Output, error), now func() time.Time) *Engine {
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
	e.push(c)
}

func (e *Engine) push(c Cue) {
	select {
	case e.cues <- c:
	default:
	}
}

// Test lets a cue be heard even from a mute engine, and tells anew what keeps it
// from being heard.
func (e *Engine) Test() {
	e.mu.Lock()
	e.told, e.trouble = "", ""
	e.mu.Unlock()
	e.push(Start)
}

// Choose names the device that is to be played through from the next cue on; empty
// is the machine's usual one. While the chosen one is not there the usual one stands
// in for it.
func (e *Engine) Choose(name string) {
	e.mu.Lock()
	defer e.mu.Unlock()
	e.chosen, e.told, e.trouble = name, "", ""
}

func (e *Engine) choice() string {
	e.mu.Lock()
	defer e.mu.Unlock()
	return e.chosen
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
			d.back()
		}
	}
}

// say keeps a sentence, to be told once until all is well again or something else is
// wrong.
func (e *Engine) say(sentence string) {
	e.mu.Lock()
	defer e.mu.Unlock()
	if e.told != sentence {
		e.told, e.trouble = sentence, sentence
	}
}

func (e *Engine) fail(err error) {
	e.say(fmt.Sprintf("No sound: %v. The clock goes on; connect a speaker, and the next cue is heard.", err))
}

// heard notes that a cue was heard through the device that was chosen.
func (e *Engine) heard() {
	e.mu.Lock()
	defer e.mu.Unlock()
	e.told, e.trouble = "", ""
}
