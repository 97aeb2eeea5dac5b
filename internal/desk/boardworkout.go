package desk

import (
	"fmt"
	"reflect"
	"strconv"
	"strings"
	"time"

	"windlass/internal/clock"
	"windlass/internal/conditioning"
	"windlass/internal/gym"
)

// BoardWorkout is the conditioning of the tracks that do the same.
type BoardWorkout struct {
	Tracks  []string
	Workout gym.Workout
	Title   string // "For time, 21-15-9, cap 10 min"
	Items   []BoardItem
	Course  []conditioning.Leg // where a usual athlete is by time; none where the clock tells it
	Seen    bool               // the coach has said where the class is

	ids   []gym.ID      // of the tracks
	ahead time.Duration // of the usual pace
}

// BoardItem is one movement of a workout with its loads.
type BoardItem struct {
	Name   string
	Amount string // "15", "400 m", "21-15-9"; "max" for as many as possible
	Loads  []BoardTiers
}

// BoardTiers are the three loads of a movement for one load standard.
type BoardTiers struct {
	Standard         gym.Standard
	Full, Mid, Light string // in the gym's unit
}

// At tells what the clock of a workout shows at an instant.
func (w BoardWorkout) At(run gym.Run, now time.Time) clock.WorkoutMoment {
	return clock.Workout(w.Workout, run, now)
}

// workouts lists what the tracks of a class do as conditioning, each workout once.
func (bs *Boards) workouts(c gym.Class) []BoardWorkout {
	var all []BoardWorkout
	for _, p := range c.Pieces {
		if p.Workout.Empty() {
			continue
		}
		name := bs.trackName(p.Track)
		at := -1
		for i := range all {
			if reflect.DeepEqual(all[i].Workout, p.Workout) {
				at = i
			}
		}
		if at >= 0 {
			all[at].Tracks, all[at].ids = append(all[at].Tracks, name), append(all[at].ids, p.Track)
			continue
		}
		w := BoardWorkout{Tracks: []string{name}, Workout: p.Workout, Title: WorkoutTitle(p.Workout), Course: bs.course(c, p), ids: []gym.ID{p.Track}}
		w.ahead, w.Seen = c.Ahead[p.Track]
		for _, item := range p.Workout.Items {
			w.Items = append(w.Items, bs.item(p.Workout, item))
		}
		all = append(all, w)
	}
	return all
}

func (bs *Boards) trackName(id gym.ID) string {
	for _, t := range bs.book.Tracks {
		if t.ID == id {
			return t.Name
		}
	}
	return ""
}

func (bs *Boards) item(w gym.Workout, item gym.Item) BoardItem {
	if item.Movement == "" {
		return BoardItem{Name: "Rest"}
	}
	row := BoardItem{Name: string(item.Movement), Amount: amountOf(w, item, gym.ByReps)}
	for _, m := range bs.book.Movements {
		if m.Key != item.Movement {
			continue
		}
		row.Name, row.Amount = m.Name, amountOf(w, item, m.Measure)
		for _, standard := range []gym.Standard{gym.StandardM, gym.StandardW} {
			if t := tiersOf(item, m, standard); t.Full > 0 {
				u := bs.book.Settings.Unit
				row.Loads = append(row.Loads, BoardTiers{standard, t.Full.In(u), t.Mid.In(u), t.Light.In(u)})
			}
		}
	}
	return row
}

// tiersOf are the loads of a day where they differ from the catalogue's.
func tiersOf(item gym.Item, m gym.Movement, standard gym.Standard) gym.TierLoads {
	if t, ok := item.Loads[standard]; ok {
		return t
	}
	return m.Loads[standard]
}

// amountUnits stand behind an amount; repetitions have none.
var amountUnits = map[gym.Measure]string{gym.ByDistance: " m", gym.ByCalories: " cal", gym.ByTime: " s", gym.ByHold: " s"}

// amountOf writes how much of a movement a pass asks for.
func amountOf(w gym.Workout, item gym.Item, measure gym.Measure) string {
	switch {
	case len(w.Reps) > 0:
		return repList(w.Reps)
	case item.Amount == 0:
		return "max"
	}
	return strconv.Itoa(item.Amount) + amountUnits[measure]
}

func repList(reps []int) string {
	words := make([]string, len(reps))
	for i, n := range reps {
		words[i] = strconv.Itoa(n)
	}
	return strings.Join(words, "-")
}

// WorkoutTitle writes what a workout is without its movements, as a coach says it.
func WorkoutTitle(w gym.Workout) string {
	var title string
	switch w.Format {
	case gym.AMRAP:
		return "AMRAP " + spell(w.Seconds)
	case gym.EMOM:
		return "EMOM " + spell(w.Seconds)
	case gym.Intervals:
		title = fmt.Sprintf("%d × %s work", w.Rounds, spell(w.Work))
	case gym.PlainSets:
		title = count(w.Rounds, "set")
	case gym.Chipper:
		title = "Chipper"
	default:
		title = "For time, " + count(w.Rounds, "round")
		if len(w.Reps) > 0 {
			title = "For time, " + repList(w.Reps)
		}
	}
	if w.Rest > 0 {
		title += ", " + spell(w.Rest) + " rest"
	}
	if w.Cap > 0 {
		title += ", cap " + spell(w.Cap)
	}
	return title
}

// spell writes seconds as whole minutes where they are, and as seconds else.
func spell(seconds int) string {
	switch {
	case seconds%60 == 0:
		return fmt.Sprintf("%d min", seconds/60)
	case seconds < 120:
		return fmt.Sprintf("%d s", seconds)
	}
	return fmt.Sprintf("%d:%02d min", seconds/60, seconds%60)
}
