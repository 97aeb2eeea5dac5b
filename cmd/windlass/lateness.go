package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"time"

	"fyne.io/fyne/v2"

	"windlass/internal/day"
	"windlass/ui/room"
)

// lateness runs a class of the demo gym in the real window at the real speed and
// measures how late every second of its clock is in the widgets of the room in
// front. Half-way a sheet of a hundred thousand results is brought in by the keys
// that a coach presses, and later taken back, while results of the class are logged
// all the time. What the screen adds, one more frame, is not measured.
type lateness struct {
	*tour
	phase  string // what goes on beside the class
	late   map[string][]time.Duration
	missed int // seconds that were never shown
	verbs  []time.Duration
}

// The phases, in the order of the report.
const (
	classAlone  = "class alone"
	sheetRead   = "sheet is read"
	sheetComes  = "sheet comes in"
	sheetLearnt = "log is learnt anew"
	sheetBack   = "sheet is taken back"
)

// sheetRows are the rows of the large sheet.
const sheetRows = 100_000

// Results of the class are logged in bursts, as calls come when a rung ends: so many,
// one after the other, and then a while of nothing.
const (
	burst     = 8
	logEvery  = 2 * time.Second
	betweenIt = 12 * time.Second
)

// sheetPatience is how long the sheet may take: every result that is logged goes
// first, and the sheet begins again.
const sheetPatience = 3 * time.Minute

func runLateness(o options) error {
	if err := forget(o.db); err != nil {
		return fmt.Errorf("measure the lateness: %w", err)
	}
	o.demo, o.pace = true, mondayPace(time.Now(), 1)
	l := &lateness{tour: &tour{console: &console{options: o, app: newApp()}}, phase: classAlone, late: map[string][]time.Duration{}}
	return l.run(l.measure)
}

func (l *lateness) measure() error {
	sheet := filepath.Join(os.TempDir(), "windlass-lateness.csv")
	names, err := l.openClass()
	if err != nil {
		return err
	}
	if err := os.WriteFile(sheet, []byte(largeSheet(names)), 0o600); err != nil {
		return err
	}
	began, load := time.Now(), loadOfMachine()
	onThread(func() bool { l.main.Watch(l.hear); return true })
	ended := make(chan struct{})
	go l.logResults(ended)
	time.Sleep(l.options.late / 2)
	if err := l.bringIn(sheet); err != nil {
		return err
	}
	time.Sleep(l.options.late / 4)
	if err := l.takeBack(); err != nil {
		return err
	}
	time.Sleep(l.options.late - time.Since(began))
	close(ended)
	onThread(func() bool { l.main.Watch(nil); return true })
	l.report(len(names), drift(began), load+" "+loadOfMachine())
	return nil
}

// openClass opens the evening's class, checks everybody in and starts the clock.
func (l *lateness) openClass() ([]string, error) {
	if err := l.goTo(room.Today); err != nil {
		return nil, err
	}
	l.press("Return")
	if err := l.until("a class is on the floor", func() bool { return l.main.Front() == room.Floor }); err != nil {
		return nil, err
	}
	names := l.guests()[2:] // the first two are of the tour's own roster
	for _, name := range names {
		l.intoField("F")
		l.write(name)
		l.press("Return")
	}
	l.press("Escape", "F6")
	return names, l.startClock()
}

// largeSheet is a sheet of results of some athletes.
func largeSheet(names []string) string {
	var s strings.Builder
	s.WriteString("Athlete,Lift,Reps,Load,Date\n")
	lifts := []string{"Back squat", "Deadlift", "Bench press", "Front squat", "Shoulder press"}
	for i := range sheetRows {
		who, rest := names[i%len(names)], i/len(names)
		lift, on := lifts[rest%len(lifts)], day.Of(2000, 1, 1).Add(rest/len(lifts))
		fmt.Fprintf(&s, "%s,%s,%d,%d kg,%s\n", who, lift, 1+2*(i%3), 40+i%80, on)
	}
	return s.String()
}

// hear notes a second.
func (l *lateness) hear(due, drawn time.Time) {
	late := drawn.Sub(due)
	l.late[l.phase] = append(l.late[l.phase], late)
	l.missed += int(late / time.Second)
}

// logResults logs one lifter's result after the other until it is over.
func (l *lateness) logResults(ended <-chan struct{}) {
	for i := 0; ; i++ {
		wait := logEvery
		if i > 0 && i%burst == 0 {
			wait = betweenIt
		}
		select {
		case <-ended:
			return
		case <-time.After(wait):
		}
		fyne.Do(func() {
			class, _ := l.main.Desk().LiveClass()
			if len(class.Lifters) == 0 {
				return // the class is over; what waits for its results says so
			}
			lifter := class.Lifters[i%len(class.Lifters)]
			began := time.Now()
			_, err := l.main.Desk().LogResult(class.ID, lifter.Athlete, fmt.Sprintf("%d kg", 40+i%40))
			if l.main.Fail(err) {
				l.verbs = append(l.verbs, time.Since(began))
			}
		})
	}
}

// turn begins a phase.
func (l *lateness) turn(phase string) { onThread(func() bool { l.phase = phase; return true }) }

// bringIn brings the sheet in as a coach does, and goes back to the floor while it
// comes.
func (l *lateness) bringIn(sheet string) error {
	before := onThread(l.results)
	if err := l.goTo(room.Roster); err != nil {
		return err
	}
	l.turn(sheetRead)
	l.press("Ctrl+O")
	l.write(sheet)
	l.press("Tab", "Tab", "Right", "Return") // past Browse to what the sheet is about
	questions := func() bool { return len(l.window.Canvas().Overlays().List()) == 1 }
	if err := l.within(sheetPatience, "the sheet is read", questions); err != nil {
		return err
	}
	l.turn(sheetComes)
	l.press("Return")
	if err := l.goTo(room.Floor); err != nil {
		return err
	}
	err := l.within(sheetPatience, "the sheet is in", func() bool { return l.results() >= before+sheetRows })
	l.turn(sheetLearnt)
	time.Sleep(5 * time.Second)
	l.turn(classAlone)
	return err
}

// takeBack takes results back until the sheet is.
func (l *lateness) takeBack() error {
	l.turn(sheetBack)
	label := func() string { return l.main.Desk().CanUndo() }
	for !strings.HasPrefix(onThread(label), "bring ") {
		l.press("Ctrl+Z")
	}
	l.press("Ctrl+Z")
	err := l.within(sheetPatience, "the sheet is taken back", func() bool { return strings.HasPrefix(l.main.Desk().CanRedo(), "bring ") })
	l.turn(classAlone)
	return err
}

func (l *lateness) results() int { return len(l.main.Desk().Book().Results) }
