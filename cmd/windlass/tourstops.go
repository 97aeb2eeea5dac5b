package main

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"windlass/internal/clock"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/room"
)

// tourStops are the stops in the order in which a coach's day goes: the class first,
// since the hour of the last one passes at 60 times the speed; then the planning.
func tourStops() []stop {
	return []stop{
		{"the morning", shows(room.Today, "today")},
		{"a roster comes in", bringRoster},
		{"a record", lookAtRecord},
		{"set-up", setUpClass},
		{"the climb", climbOn},
		{"results", logResults},
		{"conditioning", condition},
		{"a clock of each format", clockOfEachFormat},
		{"the end of the class", finish},
		{"the cycle", lookAtCycle},
		{"a day's conditioning", composeDay},
		{"a new cycle", makeCycle},
		{"a load decided", decideLoad},
		{"an own week", arrangeWeek},
		{"another track", moveAthlete},
		{"handouts", shows(room.Handouts, "handouts")},
		{"the gym", lookAtGym},
		{"what the keys do", keysAndFinder},
	}
}

// shows goes to a room with its key and keeps a picture.
func shows(name, picture string) func(*tour) error {
	return func(t *tour) error {
		if err := t.goTo(name); err != nil {
			return err
		}
		return t.desk(picture)
	}
}

// goTo presses the key of a room.
func (t *tour) goTo(name string) error {
	at := onThread(func() int { return t.main.Place(name) })
	if at < 0 {
		return fmt.Errorf("the window has no room %q", name)
	}
	t.press(fmt.Sprintf("Ctrl+%d", at+1))
	return t.until("the room "+name+" is in front", func() bool { return t.main.Front() == name })
}

// desk keeps a picture of the desk window.
func (t *tour) desk(name string) error { return t.picture("Windlass", name) }

// roster is a sheet as coaches have it: a byte order mark, semicolons, decimal
// commas, the name in two columns, pounds in one header, accents, blank cells
// and one row that cannot be.
const roster = "\ufeffSurname;First name;Track;Back Squat 1RM (lb);BP 5RM;Deadlift 3 RM\r\n" +
	"Åkerlund;Maja;Powerlifting;185;52,5;102,5\r\n" +
	"Nuñez;Íñigo;Powerlifting;315;;\r\n" +
	"Brandt;Ottilie;Strongman;;47,5 kg;97,5\r\n" +
	"Feld;Joris;Powerlifting;heavy;60;120\r\n"

// newcomers are those of the roster who come in.
var newcomers = []string{"Maja Åkerlund", "Íñigo Nuñez", "Ottilie Brandt"}

func bringRoster(t *tour) error {
	path := filepath.Join(t.folder, "roster.csv")
	if err := os.WriteFile(path, []byte(roster), 0o644); err != nil {
		return err
	}
	if err := shows(room.Roster, "roster")(t); err != nil {
		return err
	}
	t.press("Ctrl+O")
	t.write(path)
	t.press("Return")
	if err := t.desk("import-preview"); err != nil {
		return err
	}
	return t.skipBadRows()
}

// skipBadRows chooses to skip what is refused and brings the rest in.
func (t *tour) skipBadRows() error {
	for range 9 {
		if onThread(t.onToggle) {
			break
		}
		t.press("Tab")
	}
	t.press("Space")
	if err := t.desk("import-skip"); err != nil {
		return err
	}
	for range 4 {
		if onThread(func() bool { return t.known(newcomers[0]) }) {
			break
		}
		t.press("Return")
	}
	err := t.until("the new athletes are on the roster", func() bool { return t.known(newcomers...) })
	t.press("Escape")
	return err
}

// onToggle reports whether the keyboard has come to something to tick.
func (t *tour) onToggle() bool {
	_, ok := t.window.Canvas().Focused().(*kit.Toggle)
	return ok
}

func (t *tour) known(names ...string) bool {
	for _, name := range names {
		if _, ok := t.named(name); !ok {
			return false
		}
	}
	return true
}

func (t *tour) named(name string) (gym.Athlete, bool) {
	for _, a := range t.main.Desk().Book().Athletes {
		if strings.EqualFold(a.Name, name) {
			return a, true
		}
	}
	return gym.Athlete{}, false
}

// setUpClass opens the evening's class from Today and checks everybody in who is
// expected, and two of the newcomers, by typing their names.
func setUpClass(t *tour) error {
	if err := t.goTo(room.Today); err != nil {
		return err
	}
	t.press("Return")
	if err := t.until("a class is on the floor", func() bool { return t.main.Front() == room.Floor }); err != nil {
		return err
	}
	for _, name := range t.guests() {
		t.press("F")
		t.write(name)
		t.press("Return")
	}
	if err := t.until("two dozen are checked in", func() bool { c, _ := t.main.Desk().LiveClass(); return len(c.Lifters) >= 18 }); err != nil {
		return err
	}
	t.press("Escape", "F6")
	if err := t.desk("set-up"); err != nil {
		return err
	}
	if err := t.openWall(); err != nil { // before the clock, which does not wait for it
		return err
	}
	return t.startClock()
}

// guests are those who come tonight: whoever is expected, and two of the newcomers.
func (t *tour) guests() []string {
	return onThread(func() []string {
		d := t.main.Desk()
		names := slices.Clone(newcomers[:2])
		for _, m := range d.Meetings(d.Today()) {
			if m.State != desk.OnFloor {
				continue
			}
			for _, due := range m.Expected {
				if a, ok := d.Athlete(due.Athlete); ok && !slices.Contains(names, a.Name) {
					names = append(names, a.Name)
				}
			}
		}
		return names
	})
}

// startClock starts it; where lifters have no number yet, it gives them a first
// load, as the room asks for.
func (t *tour) startClock() error {
	onThread(func() bool { t.firstLoads(); return true })
	t.press("F5")
	return t.until("the clock runs", func() bool { c, _ := t.main.Desk().LiveClass(); return c.Clock.Running })
}

func (t *tour) firstLoads() {
	d := t.main.Desk()
	class, _ := d.LiveClass()
	for _, l := range class.Lifters {
		if l.Lift != "" && l.Base == 0 && l.Start == 0 {
			_ = d.StartWith(class.ID, l.Athlete, gym.Effort{Load: 40e12, Unit: "kg"})
		}
	}
}

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

// both keeps the desk and the wall.
func (t *tour) both(name string) error {
	if err := t.desk(name); err != nil {
		return err
	}
	return t.picture(wallTitle, "wall-"+name)
}

func logResults(t *tour) error {
	t.press("R")
	for range 3 {
		t.press("Return")
	}
	if err := t.until("a result is logged", func() bool {
		c, _ := t.main.Desk().LiveClass()
		for _, l := range c.Lifters {
			if l.Result != "" {
				return true
			}
		}
		return false
	}); err != nil {
		return err
	}
	if err := t.desk("results"); err != nil {
		return err
	}
	for range 40 {
		t.press("Return")
	}
	return nil
}

func condition(t *tour) error {
	t.press("K")
	if err := t.until("the conditioning is on", func() bool {
		c, _ := t.main.Desk().LiveClass()
		return c.Stage == gym.Conditioning
	}); err != nil {
		return err
	}
	t.press("Space")
	time.Sleep(time.Second)
	for range 6 {
		t.press("H")
	}
	return t.both("conditioning")
}

func finish(t *tour) error {
	t.press("Q")
	if err := t.desk("summary"); err != nil {
		return err
	}
	t.press("F5")
	if onThread(func() bool { return t.window.Canvas().Overlays().Top() != nil }) {
		t.press("Return") // not every bout was logged: finish all the same
	}
	if err := t.until("the class is finished", func() bool { _, live := t.main.Desk().LiveClass(); return !live }); err != nil {
		return err
	}
	time.Sleep(time.Second)
	return t.picture(wallTitle, "wall-after")
}

// lookAtGym goes through the sections that a coach sets up first.
func lookAtGym(t *tour) error {
	if err := shows(room.Gym, "gym")(t); err != nil {
		return err
	}
	for _, section := range []struct{ key, picture string }{{"F3", "gym-timetable"}, {"F4", "gym-plates"}, {"F6", "gym-climbs"}} {
		t.press(section.key)
		if err := t.desk(section.picture); err != nil {
			return err
		}
	}
	return nil
}

func keysAndFinder(t *tour) error {
	t.press("F1")
	if err := t.desk("keys"); err != nil {
		return err
	}
	t.press("Escape", "Ctrl+K")
	t.write("ma")
	if err := t.desk("finder"); err != nil {
		return err
	}
	t.press("Escape", "Escape")
	return nil
}
