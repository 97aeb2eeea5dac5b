package wall

import (
	"fmt"
	"strings"
	"time"

	"windlass/internal/clock"
	"windlass/internal/desk"
	"windlass/internal/gym"
)

// Work is the wall of a class at its conditioning: a panel for each workout.
type Work struct {
	Panels []Panel
	Unit   string // of every load; empty where they say their own
}

// Panel is one workout and the tracks that do it.
type Panel struct {
	Tracks string // that do it; empty where everybody does
	Head   string // "AMRAP 12:00"
	Round  string // "minute 3 of 12", "usual pace: set 2 of 5"
	Rest   bool   // nobody works just now
	Held   bool   // its clock stands still
	Items  []Item
	Loads  bool // some item has loads
}

// Item is one movement of a workout.
type Item struct {
	Text    string    // "12 kettlebell swing"
	Loads   [3]string // of the full, mid and light tier; for both standards where they differ
	Present bool      // its turn
	Next    bool      // its turn comes next
	Usual   bool      // a usual athlete is about here
}

func (s State) work(now time.Time) (Work, []Face) {
	var w Work
	var faces []Face
	for _, bw := range s.Board.Workouts {
		m := bw.At(s.Board.Class.Workout, now)
		p, face := panelOf(bw, m), workFace(m)
		p.Held, face.Bright = face.Tone == Held, p.Rest
		w.Panels, faces = append(w.Panels, p), append(faces, face)
	}
	if len(w.Panels) == 1 {
		w.Panels[0].Tracks = ""
	}
	w.shareUnit()
	return w, faces
}

// shareUnit takes the unit off the loads where all have the same.
func (w *Work) shareUnit() {
	unit := ""
	for _, l := range w.loads() {
		of := (*l)[strings.LastIndex(*l, " ")+1:]
		if unit != "" && of != unit || strings.Count(*l, of) > 1 {
			return
		}
		unit = of
	}
	for _, l := range w.loads() {
		*l = strings.TrimSuffix(*l, " "+unit)
	}
	w.Unit = unit
}

// loads lists every load that is said.
func (w *Work) loads() []*string {
	var all []*string
	for _, p := range w.Panels {
		for i := range p.Items {
			for t := range p.Items[i].Loads {
				if l := &p.Items[i].Loads[t]; *l != "" {
					all = append(all, l)
				}
			}
		}
	}
	return all
}

func workFace(m clock.WorkoutMoment) Face {
	f := Face{Text: m.Face(), Tone: Going}
	if whole := m.Elapsed + m.Left; whole > 0 && !m.Open {
		f.Done = wholeSeconds(m.Elapsed, whole)
	}
	switch {
	case m.Phase == clock.Ready:
		f.Tone = Waiting
	case m.Phase == clock.Over:
		f.Tone, f.Done = Waiting, 1
	case !m.Running:
		f.Tone = Held
	case m.Warning > 0:
		f.Tone = Soon
	}
	return f
}

func panelOf(w desk.BoardWorkout, m clock.WorkoutMoment) Panel {
	p := Panel{Tracks: strings.Join(w.Tracks, ", "), Head: w.Title, Rest: m.Phase == clock.Resting, Round: roundOf(w.Workout, m)}
	usual := w.UsualAt(m)
	if p.Round == "" {
		p.Round = w.UsualText(m)
	}
	for i, it := range w.Items {
		item := itemOf(it)
		item.Present, item.Next = m.Item == i && m.Phase == clock.Working, m.Next == i && m.Item != i
		item.Usual = w.Workout.Format == gym.Chipper && usual == i
		p.Loads = p.Loads || item.Loads[0] != ""
		p.Items = append(p.Items, item)
	}
	return p
}

// roundOf says how far a workout is where its clock can tell.
func roundOf(w gym.Workout, m clock.WorkoutMoment) string {
	switch {
	case m.Phase == clock.Ready:
		return "ready"
	case m.Phase == clock.CountedIn:
		return "begins"
	case m.Phase == clock.Over:
		return "over"
	case m.Round == 0:
		return ""
	case w.Format == gym.EMOM:
		return fmt.Sprintf("minute %d of %d", m.Round, m.Rounds)
	case m.Phase == clock.Resting:
		return fmt.Sprintf("then round %d of %d", m.Round+1, m.Rounds)
	}
	return fmt.Sprintf("work: round %d of %d", m.Round, m.Rounds)
}

func itemOf(it desk.BoardItem) Item {
	item := Item{Text: it.Name}
	if it.Amount != "" {
		item.Text = it.Amount + " " + it.Name
	}
	for _, t := range it.Loads {
		for i, load := range []string{t.Full, t.Mid, t.Light} {
			item.Loads[i] = joined(item.Loads[i], load)
		}
	}
	return item
}

// joined sets the load of standard M before that of W: "24 / 16 kg"; equal ones
// are said once.
func joined(first, second string) string {
	if first == "" || first == second {
		return second
	}
	before, unit, _ := strings.Cut(first, " ")
	if strings.HasSuffix(second, " "+unit) {
		first = before
	}
	return first + " / " + second
}
