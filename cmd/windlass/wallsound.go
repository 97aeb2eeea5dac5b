package main

import (
	"context"
	"fmt"
	"time"

	"windlass/internal/clock"
	"windlass/internal/gym"
	"windlass/internal/sound"
	"windlass/ui/wall"
)

// hearing lets a class's clock be heard. It follows the file on a goroutine of its
// own, as the wall does: a window that hangs keeps no cue back.
type hearing struct {
	options options
	engine  *sound.Engine
	say     func(sentence string)
	state   wall.State
	records map[gym.ID]bool // told already
	heard   time.Time       // up to when everything was played
}

// tooLate is from when on a cue is left out: after a sleep of the machine they
// would all come at once.
const tooLate = 400 * time.Millisecond

// hear plays the cues of the gym's file through an engine until ctx ends, closes it,
// and says what keeps them from being heard, once. say is called on this goroutine.
func hear(ctx context.Context, o options, engine *sound.Engine, say func(sentence string)) error {
	return (&hearing{options: o, say: say, engine: engine}).run(ctx)
}

func (h *hearing) run(ctx context.Context) error {
	defer h.engine.Close()
	file, err := follow(ctx, h.options.db)
	if err != nil {
		return fmt.Errorf("listen to the class: %w", err)
	}
	defer file.close()
	var reader wall.Reader
	for h.heard = h.options.pace.now(); ctx.Err() == nil; {
		// A file that cannot be read now may be at the next look; until then the
		// class goes on as it was.
		if book, changed, err := file.look(ctx); err == nil && changed {
			h.take(reader.Read(book))
		}
		h.play(ctx)
		if sentence := h.engine.Trouble(); sentence != "" {
			h.say(sentence)
		}
	}
	return nil
}

// take heeds what the file says now. A record that was there when the program
// started is old; a clock that has just been started is heard from its start.
func (h *hearing) take(s wall.State) {
	h.engine.Set(s.Book.Settings.Sound, s.Book.Settings.Volume)
	was := h.state.Board.Class
	h.rewind(was.Clock, s.Board.Class.Clock)
	h.rewind(was.Workout, s.Board.Class.Workout)
	first, told := h.records == nil, h.records
	h.state, h.records = s, map[gym.ID]bool{}
	for _, athlete := range s.Records() {
		h.records[athlete] = true
		if !first && !told[athlete] {
			h.engine.Play(sound.Record)
		}
	}
}

// rewind goes back to the start of a clock that was started since the last look.
func (h *hearing) rewind(was, is gym.Run) {
	fresh := is.Running && is != was && h.options.pace.now().Sub(is.Anchor) < h.clockTime(tooLate)
	if fresh && is.Anchor.Before(h.heard) {
		h.heard = is.Anchor.Add(-1)
	}
}

// clockTime is how far the clock goes in a time.
func (h *hearing) clockTime(d time.Duration) time.Duration {
	return time.Duration(max(1, h.options.pace.speed) * float64(d))
}

// play lets be heard what is to be heard before the next look at the file, each
// cue at its instant.
func (h *hearing) play(ctx context.Context) {
	until := h.options.pace.now().Add(h.clockTime(wallPoll))
	for _, cue := range h.cues(h.heard, until) {
		h.wait(ctx, cue.At)
		if h.options.pace.now().Sub(cue.At) < h.clockTime(tooLate) {
			h.engine.Play(cues[cue.Kind])
		}
	}
	h.wait(ctx, until)
	h.heard = until
}

// wait returns when the clock shows an instant, or when ctx ends.
func (h *hearing) wait(ctx context.Context, at time.Time) {
	left := float64(at.Sub(h.options.pace.now())) / max(1, h.options.pace.speed)
	select {
	case <-ctx.Done():
	case <-time.After(time.Duration(left)):
	}
}

var cues = map[clock.CueKind]sound.Cue{
	clock.Start: sound.Start, clock.Tick: sound.Tick, clock.Change: sound.Change, clock.Finish: sound.Finish,
}

// cues lists what the class's clock lets hear after one instant and up to another.
func (h *hearing) cues(from, to time.Time) []clock.Cue {
	c := h.state.Board.Class
	switch {
	case !h.state.Live:
		return nil
	case c.Stage != gym.Conditioning:
		return clock.ClimbCues(c.Climb, c.Clock, from, to)
	case len(h.state.Board.Workouts) > 0:
		return clock.WorkoutCues(h.state.Board.Workouts[0].Workout, c.Workout, from, to)
	}
	return nil
}
