package main

import (
	"context"
	"fmt"
	"sync/atomic"
	"time"

	"fyne.io/fyne/v2"

	"windlass/internal/clock"
	"windlass/internal/gym"
	"windlass/ui/look"
	"windlass/ui/wall"
)

// wallTitle is the title of the wall's window.
const wallTitle = "Windlass wall"

// wallPoll is how often the wall asks whether the file has changed.
const wallPoll = 100 * time.Millisecond

// wallWindow is the process on the wall: its window, and the file it follows.
type wallWindow struct {
	options options
	app     fyne.App
	window  fyne.Window
	view    *wall.View
	place   *placing
	shows   atomic.Pointer[string]     // how much of the class is shown at once
	says    atomic.Pointer[wall.State] // what the file said since the last drawing
	queued  atomic.Bool                // a drawing waits for Fyne's thread
	settled bool                       // who gives the window the keyboard is the coach
	clicked bool                       // the coach has clicked it, and nothing else since
}

// runWall shows the wall until its window is closed or the desk asks for that.
// The desk may hang or die: nothing but the file passes between the two.
func runWall(o options) error {
	mail, err := listenForDesk(o.db)
	if err != nil {
		return err
	}
	defer mail.Close()
	file, err := follow(context.Background(), o.db)
	if err != nil {
		return fmt.Errorf("show the wall: %w", err)
	}
	w := &wallWindow{options: o, app: newApp(), view: wall.New()}
	w.window = w.app.NewWindow(wallTitle)
	w.window.SetPadded(false)
	w.window.SetContent(newClickable(w.view.Content(), func() { w.clicked = true }))
	size, millimetres := o.wallSize()
	w.window.Resize(size)
	w.view.SetHeight(millimetres)
	if o.pace.speed > 0 {
		w.view.SetSpeed(o.pace.speed)
	}
	w.place = newPlacing(w.window, w.view)
	w.takeKeys()
	w.settle()
	ctx, stop := context.WithCancel(context.Background())
	done := make(chan struct{})
	w.app.Lifecycle().SetOnStarted(func() {
		w.app.Driver().SetDisableScreenBlanking(true)
		go func() { defer close(done); w.run(ctx, file) }()
		go serve(mail, map[string]func() string{
			askNext:    func() string { fyne.Do(w.next); return "" },
			askClose:   func() string { fyne.Do(w.app.Quit); return "" },
			askReading: w.reading,
		})
		if o.plain() {
			time.AfterFunc(arriveAfter, func() { fyne.Do(w.stepAside) })
			return
		}
		go w.place.run(ctx)
	})
	w.window.ShowAndRun()
	stop()
	<-done
	return nil
}

// besideDesk is the right edge of the desk's window where that begins at the left of
// the screen, with its frame.
const besideDesk = 1460

// stepAside leaves the desk in sight; where a window cannot be placed it stays where
// it is.
func (w *wallWindow) stepAside() { _ = moveTo(w.window, besideDesk, 0) }

// run draws every change of the file and every second of its clock.
func (w *wallWindow) run(ctx context.Context, file *follower) {
	defer file.close()
	var reader wall.Reader
	var class gym.Class // as the file said it last
	for ctx.Err() == nil {
		book, changed, err := file.look(ctx)
		if changed {
			state := reader.Read(book)
			class = state.Board.Class
			w.says.Store(&state)
		}
		notice := ""
		if err != nil {
			notice = "The gym's file cannot be read; the clock goes on from what it said last."
		}
		if w.queued.CompareAndSwap(false, true) { // a slow screen shows the present, not a queue
			fyne.Do(func() { w.draw(notice) })
		}
		select {
		case <-ctx.Done():
		case <-time.After(w.untilNext(class)):
		}
	}
}

// untilNext is the time to the next look at the file or, when it is nearer, to
// the next second of the clock that runs.
func (w *wallWindow) untilNext(class gym.Class) time.Duration {
	left := clock.ToSecond(class, w.options.pace.now())
	if speed := w.options.pace.speed; speed > 0 {
		left = time.Duration(float64(left) / speed)
	}
	return min(wallPoll, max(left, 33*time.Millisecond))
}

// show draws what the file says, in the look that the gym has chosen.
func (w *wallWindow) show(s wall.State) {
	palette := look.Dark()
	if w.options.light || !s.Book.Settings.Dark {
		palette = look.Light()
	}
	if look.Current() != palette {
		w.app.Settings().SetTheme(look.New(palette))
	}
	w.view.Show(s, w.options.pace.now())
}

// draw shows what the file said last, and the present second.
func (w *wallWindow) draw(notice string) {
	w.queued.Store(false)
	if state := w.says.Swap(nil); state != nil {
		w.show(*state)
	}
	if notice == "" {
		notice = w.place.notice
	}
	w.view.Notice(notice)
	w.view.Tick(w.options.pace.now())
	reading := w.view.Reading()
	w.shows.Store(&reading)
}

// reading tells what the wall showed last; a wall whose window hangs still answers.
func (w *wallWindow) reading() string {
	if s := w.shows.Load(); s != nil {
		return *s
	}
	return ""
}
