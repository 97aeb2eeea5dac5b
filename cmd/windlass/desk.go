package main

import (
	"context"
	"crypto/rand"
	"errors"
	"os"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/app"

	"windlass/internal/desk"
	"windlass/internal/sound"
	"windlass/internal/store"
	"windlass/ui"
	"windlass/ui/look"
	"windlass/ui/room"
)

// console is a desk with its file and its windows.
type console struct {
	options options
	app     fyne.App
	window  fyne.Window
	file    *store.File
	release func()
	wall    *wallProcess
	letGo   func() // of what the wall asks the desk through
	engine  *sound.Engine
	main    *ui.Window
	stop    func() // the ticker, and what has hold of the file
}

func runDesk(o options) error {
	c := &console{options: o, app: newApp()}
	c.window = c.app.NewWindow("Windlass")
	c.window.Resize(ui.Size)
	var refused error
	if o.demo || exists(o.db) {
		if refused = c.open(); refused != nil {
			c.window.Resize(ui.RefusedSize)
			c.window.SetContent(ui.Refused(c.window, refusal(refused), refused, c.window.Close))
		}
	} else {
		c.window.SetContent(ui.FirstRun(c.window, c.begin))
	}
	c.window.ShowAndRun()
	c.close() // here: what Fyne is to call when it stops, it may drop with the rest of its queue
	return refused
}

// refusal is the heading of why the gym's file cannot be opened.
func refusal(err error) string {
	if errors.Is(err, store.ErrLocked) {
		return "This gym is open in another window"
	}
	return "This gym cannot be opened"
}

// newApp returns Fyne's application in our own look. Fyne complains on the
// terminal about a locale without a language, so it gets one.
func newApp() fyne.App {
	if l := os.Getenv("LANG"); l == "" || l == "C" || l == "C.UTF-8" || l == "POSIX" {
		_ = os.Setenv("LANG", "en_GB.UTF-8")
	}
	a := app.NewWithID("org.windlass.console")
	a.Settings().SetTheme(look.New(look.Dark()))
	return a
}

// begin opens the console after the first run's choice. demoGym makes the demo
// gym, otherwise an empty one under the given name.
func (c *console) begin(choice ui.First) error {
	c.options.demo = choice.Demo
	if !choice.Demo {
		if err := createEmpty(context.Background(), c.options, choice.Name); err != nil {
			return err
		}
	}
	if err := c.open(); err != nil {
		return err
	}
	if choice.Roster {
		c.main.Open(room.Roster, "")
		c.main.Press("Ctrl+O")
	}
	return nil
}

// open claims the file, reads it and fills the window.
func (c *console) open() error {
	release, err := store.Claim(c.options.db)
	if err != nil {
		return err
	}
	d, file, err := openDesk(c.options)
	if err != nil {
		release()
		return err
	}
	c.release, c.file = release, file
	c.show(d)
	return nil
}

// openDesk reads the gym's file, and makes the demo gym first where it was asked
// for and there is none.
func openDesk(o options) (*desk.Desk, *store.File, error) {
	ctx := context.Background()
	if o.demo && !exists(o.db) {
		if err := createDemo(ctx, o); err != nil {
			return nil, nil, err
		}
	}
	file, err := store.Open(ctx, o.db)
	if err != nil {
		return nil, nil, err
	}
	d, err := desk.Open(ctx, file, o.pace.now, rand.Reader)
	if err != nil {
		_ = file.Close()
		return nil, nil, err
	}
	return d, file, nil
}

func (c *console) show(d *desk.Desk) {
	c.relook(d)
	c.wall = newWallProcess(c.options)
	c.wall.died = func(err error) { fyne.Do(func() { c.main.Fail(err) }) }
	c.engine = sound.New(sound.Open, time.Now)
	c.letGo = c.heedWall()
	c.engine.Choose(recall(speakerKept))
	c.main = ui.NewWindow(c.window, d, ui.Options{
		Speed:   c.options.pace.speed,
		Wall:    c.nextWall,
		Look:    func() { c.relook(d) },
		Keeper:  keeper{c},
		Machine: machine{c},
	})
	ctx, stop := context.WithCancel(context.Background())
	main, ticked := c.main, make(chan struct{})
	c.stop = func() { stop(); <-ticked; main.End() }
	go func() { defer close(ticked); main.Run(ctx) }()
	go c.listen(ctx, c.engine)
}

// relook draws every window in the look that the gym has chosen, or in the light one
// that the command line asks for.
func (c *console) relook(d *desk.Desk) {
	palette := look.Light()
	if d.Settings().Dark && !c.options.light {
		palette = look.Dark()
	}
	c.app.Settings().SetTheme(look.New(palette))
}

// close stops what works with the file before it closes it: a tick must not find it
// closed, and a long step that still holds it would keep its log beside it.
func (c *console) close() {
	if c.stop != nil {
		c.stop()
	}
	if c.wall != nil && !c.running() {
		_ = c.wall.close() // without an answer it goes on, as after a crash
	}
	if c.letGo != nil {
		c.letGo()
	}
	if c.file != nil {
		_ = c.file.Close()
	}
	if c.release != nil {
		c.release()
	}
}

// listen lets the class's clock be heard. Without a device it is silent, and the
// coach is told once.
func (c *console) listen(ctx context.Context, engine *sound.Engine) {
	say := func(sentence string) { fyne.Do(func() { c.main.Warn(sentence) }) }
	if err := hear(ctx, c.options, engine, say); err != nil {
		fyne.Do(func() { c.main.Fail(err) })
	}
}

// running reports whether a class's clock runs: then the wall goes on without its
// desk.
func (c *console) running() bool {
	if c.main == nil {
		return false
	}
	class, ok := c.main.Desk().LiveClass()
	return ok && (class.Clock.Running || class.Workout.Running)
}
