package sound

import (
	"errors"
	"math"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

var all = []Cue{Start, Tick, Change, Finish, Record}

// power is how much of a frequency is in samples (Goertzel, "An algorithm for the
// evaluation of finite trigonometric series", 1958).
func power(samples []int16, hertz float64) float64 {
	c := 2 * math.Cos(2*math.Pi*hertz/Rate)
	var a, b float64
	for _, s := range samples {
		a, b = float64(s)+c*a-b, a
	}
	return a*a + b*b - c*a*b
}

func TestCuesAreShortSoftEndedAndUnlike(t *testing.T) {
	for _, c := range all {
		s := Samples(c)
		require.NotEmpty(t, s, c)
		assert.LessOrEqual(t, len(s), 2*Rate, "%s is short", c)
		assert.LessOrEqual(t, math.Abs(float64(s[0])), 300.0, "%s begins without a click", c)
		assert.LessOrEqual(t, math.Abs(float64(s[len(s)-1])), 300.0, "%s ends without a click", c)
		for i := 1; i < len(s); i++ {
			require.Less(t, math.Abs(float64(s[i])-float64(s[i-1])), 0.25*math.MaxInt16, "%s clicks at %d", c, i)
		}
	}
	assert.Less(t, len(Samples(Tick)), len(Samples(Change)))
	assert.Less(t, len(Samples(Change)), len(Samples(Finish)))
	assert.Empty(t, Samples("whistle"))
}

// ISO 16:1975 sets A at 440 Hz; an octave over it is 880, and equal temperament
// puts D a fifth below that.
func TestPitches(t *testing.T) {
	fifth := 880 / math.Pow(2, 7.0/12)
	for c, hertz := range map[Cue]float64{Start: 880, Tick: fifth} {
		s := Samples(c)
		for _, off := range []float64{0.9, 0.95, 1.05, 1.1} {
			assert.Greater(t, power(s, hertz), 3*power(s, off*hertz), "%s", c)
		}
	}
}

func TestMixerAddsUpAndLosesNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		voices := rapid.SliceOfN(rapid.SliceOfN(rapid.Int16(), 0, 40), 0, 4).Draw(t, "voices")
		size := 2 * rapid.IntRange(1, 30).Draw(t, "samples a call")
		var m mixer
		longest := 0
		for _, v := range voices {
			m.add(v)
			longest = max(longest, len(v))
		}
		var out []byte
		for len(out) < 2*longest+2*size {
			piece := make([]byte, size)
			m.fill(piece)
			out = append(out, piece...)
		}
		for i := range len(out) / 2 {
			want := 0
			for _, v := range voices {
				if i < len(v) {
					want += int(v[i])
				}
			}
			want = min(math.MaxInt16, max(math.MinInt16, want))
			require.Equal(t, int16(want), int16(uint16(out[2*i])|uint16(out[2*i+1])<<8), "sample %d", i)
		}
		assert.Empty(t, m.voices)
	})
}

// rack is a stand-in for the machine's sound: it can be missing, slow or lost.
type rack struct {
	mu     sync.Mutex
	played chan []int16
	err    error         // of opening
	wait   chan struct{} // opening waits for it
	lost   bool          // the next Play finds the device gone
	opened int
}

func newRack() *rack { return &rack{played: make(chan []int16, 20)} }

func (r *rack) open(string) (Output, error) {
	if r.wait != nil {
		<-r.wait
	}
	r.mu.Lock()
	defer r.mu.Unlock()
	r.opened++
	return r, r.err
}

func (r *rack) Play(s []int16) error {
	r.mu.Lock()
	defer r.mu.Unlock()
	if r.lost {
		r.lost = false
		return errors.New("the speaker was disconnected")
	}
	r.played <- s
	return nil
}

func (r *rack) Close() {}

func (r *rack) set(change func()) {
	r.mu.Lock()
	defer r.mu.Unlock()
	change()
}

// ticks is a clock that the test moves.
type ticks struct {
	mu sync.Mutex
	at time.Time
}

func (t *ticks) now() time.Time {
	t.mu.Lock()
	defer t.mu.Unlock()
	return t.at
}

func (t *ticks) add(d time.Duration) {
	t.mu.Lock()
	defer t.mu.Unlock()
	t.at = t.at.Add(d)
}

func started(t *testing.T, r *rack) (*Engine, *ticks) {
	t.Helper()
	clock := &ticks{at: time.Date(2026, 3, 9, 6, 0, 0, 0, time.UTC)}
	e := New(r.open, clock.now)
	t.Cleanup(e.Close)
	return e, clock
}

func TestEnginePlaysAtItsVolume(t *testing.T) {
	r := newRack()
	e, _ := started(t, r)
	e.Set(true, 0.5)
	e.Play(Start)
	assert.Equal(t, louder(Samples(Start), 0.5), <-r.played)
	e.Set(false, 0.5)
	e.Play(Start)
	e.Set(true, 1)
	e.Play(Tick)
	assert.Equal(t, Samples(Tick), <-r.played, "what was played while mute is not heard")
	assert.Empty(t, e.Trouble())
}

// A device that does not answer holds nobody up, and late cues are dropped.
func TestBusyDeviceDelaysNobody(t *testing.T) {
	r := newRack()
	r.wait = make(chan struct{})
	e, _ := started(t, r)
	for range 100 {
		e.Play(Tick)
	}
	close(r.wait)
	<-r.played
	assert.LessOrEqual(t, len(e.cues)+len(r.played), queue, "the rest was dropped")
}

func TestNoDeviceIsToldOnceAndTriedAgain(t *testing.T) {
	r := newRack()
	r.err = errors.New("this machine has no speaker")
	e, clock := started(t, r)
	e.Play(Tick)
	require.Eventually(t, func() bool { return e.Trouble() != "" }, time.Minute, time.Millisecond)
	e.Play(Tick)
	clock.add(retryAfter)
	r.set(func() { r.err = nil })
	// The cue before may still be on its way, so this one is played until heard.
	require.Eventually(t, func() bool { e.Play(Start); return len(r.played) > 0 }, time.Minute, time.Millisecond)
	assert.Empty(t, e.Trouble(), "told once")
}

func TestLostDeviceIsOpenedAgainWithinTheCue(t *testing.T) {
	r := newRack()
	e, _ := started(t, r)
	e.Play(Tick)
	<-r.played
	r.set(func() { r.lost = true })
	e.Play(Start)
	assert.Equal(t, Samples(Start), <-r.played)
	r.set(func() { assert.Equal(t, 2, r.opened) })
}

// The machine's own device: where there is none, opening says so and does not
// hang or crash.
func TestOpenAnswers(t *testing.T) {
	out, err := Open("a speaker that nobody owns")
	require.Error(t, err)
	assert.Nil(t, out)
}
