package desk

import (
	"fmt"
	"strings"

	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/gym"
)

// CycleView is a cycle as its grid shows it: weeks downwards, days across, a grid
// a track. It is worked out whole, so that moving through it costs nothing.
type CycleView struct {
	Cycle    gym.Cycle
	Weeks    []ViewWeek
	Tracks   []ViewTrack
	Breaches []ViewBreach
}

// ViewWeek names a week.
type ViewWeek struct {
	Title string // "Week 3", "Week 4, light", "Week 12, test"
	Sub   string // "16 Mar"
	Now   bool
}

// ViewTrack is one track's grid.
type ViewTrack struct {
	ID       gym.ID
	Name     string
	Used     [7]bool // whether a column has any training day
	Breaches int
	days     []ViewDay // seven a week
}

// ViewDay is one cell of a grid.
type ViewDay struct {
	Title  string // the main lift, or what the day is called
	Count  string // "5RM", "by per cent"
	Sub    string // the conditioning in a few words
	Kind   gym.DayKind
	Region gym.Region // of the main lift
	Breach string     // what is wrong, in sentences; empty is nothing
	Done   bool       // trained: it stays as it is
}

// ViewBreach is a breach with its place in the view.
type ViewBreach struct {
	cycle.Breach
	Where  string // "Week 3 Tue, Powerlifting"
	Track  int    // index of the track; 0 where the whole cycle is meant
	Week   int    // from 1; 1 where no week is meant
	Column int    // 0 where no day is meant
}

// Day returns a cell of a track's grid; the week counts from 1.
func (t ViewTrack) Day(week, column int) ViewDay {
	if i := 7*(week-1) + column; week >= 1 && column >= 0 && column < 7 && i < len(t.days) {
		return t.days[i]
	}
	return ViewDay{Kind: gym.RestDay}
}

// ViewCycle reads a cycle for its grid, with every breach of the rules.
func (d *Desk) ViewCycle(id gym.ID) (CycleView, bool) {
	c, ok := d.Cycle(id)
	if !ok {
		return CycleView{}, false
	}
	return d.viewOf(c, d.Trained(c)), true
}

func (d *Desk) viewOf(c gym.Cycle, trained cycle.Trained) CycleView {
	v := CycleView{Cycle: c}
	for w, kind := range c.Weeks {
		v.Weeks = append(v.Weeks, ViewWeek{
			Title: weekTitle(w+1, kind), Sub: c.Start.Add(7 * w).Short(), Now: c.WeekOf(d.Today()) == w+1,
		})
	}
	for _, p := range c.Tracks {
		v.Tracks = append(v.Tracks, d.viewTrack(c, p, trained))
	}
	for _, b := range cycle.Check(c, &d.book) {
		v.addBreach(b)
	}
	return v
}

func weekTitle(n int, kind gym.WeekKind) string {
	if kind == gym.TrainingWeek {
		return fmt.Sprintf("Week %d", n)
	}
	return fmt.Sprintf("%d, %s", n, kind)
}

func (d *Desk) viewTrack(c gym.Cycle, p gym.TrackPlan, trained cycle.Trained) ViewTrack {
	t := ViewTrack{ID: p.Track, Name: d.Track(p.Track).Name, days: make([]ViewDay, 7*len(c.Weeks))}
	for i := range t.days {
		at := AtColumn(c, p.Track, i/7+1, i%7)
		t.days[i] = ViewDay{Kind: gym.RestDay, Done: trained(p.Track, at.Week, at.Weekday)}
	}
	for _, plan := range p.Days {
		column := columnOf(c, plan.Weekday)
		if i := 7*(plan.Week-1) + column; i >= 0 && i < len(t.days) {
			done := t.days[i].Done
			t.days[i] = d.viewDay(plan)
			t.days[i].Done = done
			t.Used[column] = t.Used[column] || plan.Kind != gym.RestDay
		}
	}
	return t
}

func columnOf(c gym.Cycle, on day.Weekday) int { return int(on-c.Start.Weekday()+7) % 7 }

func (d *Desk) viewDay(p gym.DayPlan) ViewDay {
	v := ViewDay{Title: p.Title, Kind: p.Kind, Sub: shortWorkout(p.Workout)}
	if lift, ok := d.Lift(p.Main.Lift); ok {
		v.Title, v.Region = lift.Name, lift.Region
		v.Count = shortMain(p.Main)
	}
	if p.Kind == gym.RestDay && v.Title == "Rest" {
		v.Title = ""
	}
	return v
}

func shortMain(m gym.MainLift) string {
	switch {
	case len(m.Scheme) > 0:
		top := m.Scheme[len(m.Scheme)-1]
		return fmt.Sprintf("%d × %d, %g %%", top.Sets, top.Reps, top.Percent)
	case m.Reps > 0:
		return fmt.Sprintf("%dRM", m.Reps)
	}
	return ""
}

// shortWorkout is a workout in the room of a cell: "EMOM 12", "21-15-9".
func shortWorkout(w gym.Workout) string {
	switch w.Format {
	case gym.AMRAP, gym.EMOM:
		return fmt.Sprintf("%s %d", strings.ToUpper(string(w.Format)), w.Seconds/60)
	case gym.ForTime:
		if len(w.Reps) > 0 {
			return repList(w.Reps)
		}
		return count(w.Rounds, "round")
	case gym.Chipper:
		return "Chipper"
	case gym.Intervals:
		return fmt.Sprintf("%d × %s", w.Rounds, clockText(w.Work))
	case gym.PlainSets:
		return count(w.Rounds, "set")
	}
	return ""
}

// addBreach notes a breach in the list and on its cell.
func (v *CycleView) addBreach(b cycle.Breach) {
	x := ViewBreach{Breach: b, Week: max(1, b.Week)}
	name := ""
	for i := range v.Tracks {
		if v.Tracks[i].ID == b.Track {
			x.Track, name = i, v.Tracks[i].Name
			v.Tracks[i].Breaches++
		}
	}
	if b.Weekday != cycle.NoWeekday {
		x.Column = columnOf(v.Cycle, b.Weekday)
		v.mark(x)
	}
	x.Where = placeOf(b, name)
	v.Breaches = append(v.Breaches, x)
}

// placeOf says where a breach is, the week first, because a list cuts what is long.
func placeOf(b cycle.Breach, track string) string {
	var where []string
	if b.Week > 0 {
		week := fmt.Sprintf("Week %d", b.Week)
		if b.Weekday != cycle.NoWeekday {
			week += " " + b.Weekday.Short()
		}
		where = append(where, week)
	}
	if track != "" {
		where = append(where, track)
	}
	if len(where) == 0 {
		return "The whole cycle"
	}
	return strings.Join(where, ", ")
}

func (v *CycleView) mark(x ViewBreach) {
	i := 7*(x.Week-1) + x.Column
	if b := x.Breach; b.Track != "" && i < len(v.Tracks[x.Track].days) {
		cell := &v.Tracks[x.Track].days[i]
		cell.Breach = strings.TrimSpace(cell.Breach + " " + b.Why + " " + b.Mend)
	}
}

// DayHeading names a day of a cycle: "Tuesday 17 March, week 3".
func DayHeading(c gym.Cycle, at cycle.At) string {
	on := at.Date(c)
	return fmt.Sprintf("%s %s, week %d", at.Weekday, on.Short(), at.Week)
}

// DayLines tells a day's five parts in lines, for a day that stays as it is.
func (d *Desk) DayLines(p gym.DayPlan) []string {
	var lines []string
	for _, x := range p.WarmUp {
		lines = append(lines, "Warm-up: "+strings.TrimSpace(d.drillName(x.Drill)+"  "+x.Dose))
	}
	if lift, ok := d.Lift(p.Main.Lift); ok {
		lines = append(lines, "Main lift: "+lift.Name+" "+mainText(p.Main))
	}
	if lift, ok := d.Lift(p.Second.Lift); ok {
		lines = append(lines, fmt.Sprintf("Second lift: %s %d × %d at %g %% of the %dRM", lift.Name, p.Second.Sets, p.Second.Reps, p.Second.Percent, p.Second.OfReps))
	}
	if !p.Workout.Empty() {
		lines = append(lines, "Conditioning: "+d.WorkoutText(p.Workout))
	}
	for _, x := range p.Finisher {
		lines = append(lines, "Finisher: "+strings.TrimSpace(d.finisherName(x.Finisher)+"  "+x.Dose))
	}
	if p.Notes != "" {
		lines = append(lines, "Notes: "+p.Notes)
	}
	if len(lines) == 0 {
		return []string{"Nothing was planned for this day."}
	}
	return lines
}

func mainText(m gym.MainLift) string {
	if len(m.Scheme) > 0 {
		return SchemeText(m.Scheme)
	}
	return strings.TrimSpace(shortMain(m) + " " + m.Climb)
}

// WorkoutText writes a workout with its movements in one line.
func (d *Desk) WorkoutText(w gym.Workout) string {
	var items []string
	for _, item := range w.Items {
		m, ok := d.Movement(item.Movement)
		switch {
		case item.Movement == "":
			items = append(items, "rest")
		case !ok:
			items = append(items, string(item.Movement))
		case len(w.Reps) > 0:
			items = append(items, m.Name)
		default:
			items = append(items, amountOf(w, item, m.Measure)+" "+m.Name)
		}
	}
	return WorkoutTitle(w) + ": " + strings.Join(items, ", ")
}

func (d *Desk) drillName(key string) string {
	for _, x := range d.book.Drills {
		if x.Key == key {
			return x.Name
		}
	}
	return key
}

func (d *Desk) finisherName(key string) string {
	for _, x := range d.book.Finishers {
		if x.Key == key {
			return x.Name
		}
	}
	return key
}
