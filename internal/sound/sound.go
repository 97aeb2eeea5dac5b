// Package sound makes the short cues of a class's clock and plays them.
//
// Most callers need [New], with [Open] for the machine's speakers, and
// [Engine.Play]. The package promises that playing a cue never waits: no device, a
// busy one or one that was pulled out costs nobody a millisecond, is tried again
// later and is told once ([Engine.Trouble]). For a chosen device that is not there
// the machine's usual one stands in ([Engine.Choose]). Cues are synthesised ([Samples]); no
// sound file is needed. It does not decide when something is to be heard; see
// package clock. Without cgo it builds and stays silent.
package sound

import "math"

// Cue names a sound by what it tells.
type Cue string

// The cues.
const (
	Start  Cue = "start"
	Tick   Cue = "tick"   // one of the last three seconds
	Change Cue = "change" // the next rung or part begins
	Finish Cue = "finish"
	Record Cue = "record"
)

// Rate is the number of samples a second; there is one channel.
const Rate = 48000

// tone is a stretch of one pitch, or of silence for a pitch of 0.
type tone struct {
	hertz, seconds float64
}

// scores are the cues as tones. Low and short for what is near, high and long for
// what begins; a fifth up for a change, a rising triad for a record. The pitches
// are those of equal temperament around A = 440 Hz.
var scores = map[Cue][]tone{
	Tick:   {{587.33, 0.09}},
	Start:  {{880, 0.55}},
	Change: {{587.33, 0.12}, {880, 0.38}},
	Finish: {{880, 0.22}, {0, 0.06}, {880, 0.22}, {0, 0.06}, {587.33, 0.75}},
	Record: {{587.33, 0.1}, {739.99, 0.1}, {880, 0.1}, {1174.66, 0.35}},
}

// Samples returns a cue at full volume, and none for a cue that is unknown. Every
// tone fades in and out, so that nothing clicks.
func Samples(c Cue) []int16 {
	var out []int16
	for _, t := range scores[c] {
		out = append(out, t.samples()...)
	}
	return out
}

// Level and fades of a tone: loud enough for a hall through any amplifier, with
// headroom for two at once.
const (
	level   = 0.45
	fadeIn  = 0.006
	fadeOut = 0.05
)

// samples is a sine with its octave and twelfth, which small speakers carry
// better than a sine alone.
func (t tone) samples() []int16 {
	out := make([]int16, int(math.Round(t.seconds*Rate)))
	for i := range out {
		at := float64(i) / Rate
		phase := 2 * math.Pi * t.hertz * at
		wave := (math.Sin(phase) + 0.35*math.Sin(2*phase) + 0.15*math.Sin(3*phase)) / 1.5
		fade := min(1, at/fadeIn, (t.seconds-at)/fadeOut)
		out[i] = int16(math.Round(wave * fade * level * math.MaxInt16))
	}
	return out
}

// louder scales samples by a volume of 0 to 1.
func louder(samples []int16, volume float64) []int16 {
	out := make([]int16, len(samples))
	for i, s := range samples {
		out[i] = int16(math.Round(float64(s) * volume))
	}
	return out
}
