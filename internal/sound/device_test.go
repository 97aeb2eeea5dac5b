package sound

import (
	"errors"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// hall is a machine with devices of several names; the usual one has none.
type hall struct {
	mu    sync.Mutex
	there map[string]bool
	lost  map[string]int // how often each was pulled out
	heard chan string    // the device of every cue
}

func newHall(names ...string) *hall {
	h := &hall{there: map[string]bool{}, lost: map[string]int{}, heard: make(chan string, 20)}
	for _, n := range names {
		h.there[n] = true
	}
	return h
}

func (h *hall) plug(name string, in bool) {
	h.mu.Lock()
	defer h.mu.Unlock()
	h.there[name] = in
	if !in {
		h.lost[name]++
	}
}

func (h *hall) open(name string) (Output, error) {
	h.mu.Lock()
	defer h.mu.Unlock()
	if !h.there[name] {
		return nil, errors.New("the speaker is not connected")
	}
	return &box{h, name, h.lost[name], false}, nil
}

// box is one device of a hall.
type box struct {
	hall   *hall
	name   string
	lost   int // of its name when it was opened: one that was pulled out stays lost
	closed bool
}

func (b *box) Play([]int16) error {
	b.hall.mu.Lock()
	defer b.hall.mu.Unlock()
	if b.closed || b.lost != b.hall.lost[b.name] {
		return errors.New("the speaker was disconnected")
	}
	b.hall.heard <- b.name
	return nil
}

func (b *box) Close() { b.closed = true }

// trouble waits for what an engine has to tell.
func trouble(t *testing.T, e *Engine) string {
	t.Helper()
	var said string
	require.Eventually(t, func() bool { said = e.Trouble(); return said != "" }, time.Minute, time.Millisecond)
	return said
}

// The chosen device is used while it is there; the usual one stands in for it, which
// is told once, and gives way when it is back. No cue is lost on the way.
func TestTheUsualDeviceStandsInForTheChosenOne(t *testing.T) {
	h, clock := newHall("", "Hall"), &ticks{at: time.Date(2026, 3, 9, 6, 0, 0, 0, time.UTC)}
	e := New(h.open, clock.now)
	defer e.Close()
	play := func() string { e.Play(Tick); return <-h.heard }
	assert.Empty(t, play())
	e.Choose("Hall")
	assert.Equal(t, "Hall", play())
	h.plug("Hall", false)
	assert.Empty(t, play(), "the cue that finds the device gone")
	assert.Contains(t, trouble(t, e), `"Hall" cannot be used`)
	for range 5 {
		assert.Empty(t, play())
	}
	assert.Empty(t, e.Trouble(), "told once")
	h.plug("Hall", true)
	assert.Empty(t, play(), "not looked for at every cue")
	clock.add(retryAfter)
	if first := play(); first == "" { // looked for after a cue, so that none is delayed
		assert.Equal(t, "Hall", play())
	}
	assert.Empty(t, e.Trouble())
	e.Choose("")
	assert.Empty(t, play())
}

func TestAChosenDeviceThatIsMissingIsNamed(t *testing.T) {
	h := newHall("")
	e := New(h.open, time.Now)
	defer e.Close()
	e.Choose("Hall")
	e.Play(Start)
	assert.Empty(t, <-h.heard)
	assert.Contains(t, trouble(t, e), `"Hall" cannot be used`)
}

// A usual device that stands in may be lost as well: it is opened again within the
// cue, and where it is gone the coach hears that there is no sound any more.
func TestAStandInMayBeLostToo(t *testing.T) {
	h, clock := newHall(""), &ticks{at: time.Date(2026, 3, 9, 6, 0, 0, 0, time.UTC)}
	e := New(h.open, clock.now)
	defer e.Close()
	e.Choose("Hall")
	play := func() string { e.Play(Tick); return <-h.heard }
	assert.Empty(t, play())
	assert.Contains(t, trouble(t, e), `"Hall" cannot be used`)
	h.plug("", false)
	h.plug("", true)
	assert.Empty(t, play())
	assert.Empty(t, e.Trouble(), "nothing that was not told")
	h.plug("", false)
	e.Play(Tick)
	assert.Contains(t, trouble(t, e), "No sound")
}

// A test is heard from a mute engine, and tells again what is wrong.
func TestTheSoundCanBeTested(t *testing.T) {
	h := newHall("")
	e := New(h.open, time.Now)
	defer e.Close()
	e.Set(false, 1)
	e.Test()
	assert.Empty(t, <-h.heard)
	e.Choose("Hall")
	for range 2 {
		e.Test()
		assert.Empty(t, <-h.heard)
		assert.Contains(t, trouble(t, e), "Hall")
		e.Choose("Hall")
	}
}
