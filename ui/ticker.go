package ui

import (
	"context"
	"time"

	"fyne.io/fyne/v2"

	"windlass/internal/clock"
)

// leastWait keeps a fast clock from drawing more often than a screen shows.
const leastWait = 33 * time.Millisecond

// Run ticks the room in front until ctx ends: at every whole second of the class
// that runs, and otherwise of the wall clock. It is the one ticker of the window.
func (w *Window) Run(ctx context.Context) {
	next := make(chan time.Duration, 1)
	wait := leastWait
	for {
		select {
		case <-ctx.Done():
			return
		case <-time.After(wait):
		}
		fyne.Do(func() { next <- w.tick() })
		select {
		case <-ctx.Done():
			return
		case wait = <-next:
		}
	}
}

// tick draws the present second and returns how long the next one is away.
func (w *Window) tick() time.Duration {
	w.learn()
	now := w.desk.Now()
	if sentence, err := w.desk.MindClock(now); w.Fail(err) && sentence != "" {
		w.Warn(sentence)
	}
	w.rooms[w.front].Tick(now)
	if w.watch != nil && !w.due.IsZero() {
		w.watch(w.due, w.desk.Now())
	}
	class, _ := w.desk.LiveClass()
	left := clock.ToSecond(class, now)
	w.due = now.Add(left)
	return max(leastWait, time.Duration(float64(left)/w.speed))
}

// Watch lets f hear of every second, by the desk's clock: when it was due, and when
// the room in front had put it into its widgets.
func (w *Window) Watch(f func(due, drawn time.Time)) { w.watch, w.due = f, time.Time{} }

// learn begins beside Fyne's thread what the desk has to learn anew.
func (w *Window) learn() {
	lesson := w.desk.NextLesson()
	if lesson == nil {
		return
	}
	go func() {
		if err := lesson.Learn(w.life); err != nil {
			return // only the end of the window ends it early
		}
		fyne.Do(func() { w.desk.TakeLesson(lesson) })
	}()
}
