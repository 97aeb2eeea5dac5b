package main

import (
	"fmt"
	"slices"
	"time"

	"windlass/internal/clock"
	"windlass/internal/gym"
)

// climbOn lets the climb run to its end, with a call for every lifter at every
// top rung, and keeps the desk and the wall on the way. The clock is held while
// calls are made: at this speed a rung is over in three seconds.
func climbOn(t *tour) error {
	class := t.live()
	called := map[int]bool{}
	for end := time.Now().Add(4 * time.Minute); time.Now().Before(end); time.Sleep(keyGap) {
		m := clock.Climb(class.Climb, t.live().Clock, t.options.pace.now())
		if m.Finished {
			return nil
		}
		if m.Rung < 2 || called[m.Rung] {
			continue
		}
		called[m.Rung] = true
		if err := t.callRung(class, m.Rung, len(called) == 1); err != nil {
			return err
		}
	}
	return fmt.Errorf("the climb did not come to its end")
}

// callRung makes the calls of a top rung, and of the first that is seen: everybody
// climbs, but for one who settles and one who misses at the first top rung. Who finds
// the rep max says how it moved.
func (t *tour) callRung(class gym.Class, rung int, first bool) error {
	top := class.Climb.Rungs[rung].Zone == gym.TopZone
	if !top && !first {
		return nil
	}
	t.press("Space")
	if err := t.both(fmt.Sprintf("climb-rung-%d", rung+1)); err != nil {
		return err
	}
	if top && class.Climb.Rungs[rung-1].Zone != gym.TopZone {
		t.press("S", "M")
	}
	for range 2 * len(class.Lifters) {
		key, owed := t.owed()
		if owed == 0 {
			break
		}
		t.press(key)
	}
	t.press("Space")
	return nil
}

// owed counts the calls that are owed, and says which key answers the first.
func (t *tour) owed() (key string, n int) {
	onThread(func() bool {
		d := t.main.Desk()
		class, _ := d.LiveClass()
		board := d.Boards().Board(class)
		queue := board.Queue(board.At(d.Now()))
		key, n = "C", len(queue)
		if n > 0 && !slices.Contains(queue[0].Kinds, gym.ClimbCall) {
			key = "F"
		}
		return true
	})
	return key, n
}
