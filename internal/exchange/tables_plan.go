package exchange

import (
	"fmt"
	"strconv"

	"windlass/internal/day"
	"windlass/internal/gym"
)

func cycleTable(b *gym.Book) Table {
	return table("cycles", "ID, Cycle, Goal, Start, End, Weeks", b.Cycles, func(c gym.Cycle) []any {
		weeks := joined(c.Weeks, func(w gym.WeekKind) string { return string(w) })
		return []any{string(c.ID), c.Name, c.Goal, c.Start.String(), c.End().String(), weeks}
	})
}

// planned is a day plan with where it stands.
type planned struct {
	gym.DayPlan
	cycle gym.Cycle
	track gym.ID
}

func (p planned) date() day.Date {
	return p.cycle.Start.Add(7*(p.Week-1) + (int(p.Weekday)-int(p.cycle.Start.Weekday())+7)%7)
}

func dayPlanTable(b *gym.Book, n naming) Table {
	var all []planned
	for _, c := range b.Cycles {
		for _, p := range c.Tracks {
			for _, d := range p.Days {
				all = append(all, planned{d, c, p.Track})
			}
		}
	}
	header := "Cycle, Track, Week, Weekday, Date, Kind, Title, Warm-up, Main lift, Main reps, Climb, Scheme, Second lift, Conditioning, Movements, Finisher"
	return table("day plans", header, all, func(p planned) []any {
		return []any{
			p.cycle.Name, n.tracks[p.track], p.Week, p.Weekday.String(), p.date().String(), string(p.Kind), p.Title,
			joined(p.WarmUp, func(l gym.DrillLine) string { return l.Drill + " " + l.Dose }),
			n.lifts[p.Main.Lift], some(p.Main.Reps), p.Main.Climb, joined(p.Main.Scheme, writeSets), n.second(p.Second),
			writeWorkout(p.Workout), joined(p.Workout.Items, n.item),
			joined(p.Finisher, func(l gym.FinisherLine) string { return l.Finisher + " " + l.Dose }),
		}
	})
}

func writeSets(s gym.Sets) string { return fmt.Sprintf("%d × %d at %g %%", s.Sets, s.Reps, s.Percent) }

func (n naming) second(s gym.SecondLift) string {
	if s.Empty() {
		return ""
	}
	text := fmt.Sprintf("%s %d × %d at %g %% of the %dRM", n.lifts[s.Lift], s.Sets, s.Reps, s.Percent, s.OfReps)
	if s.OfLift != "" {
		text += " of " + n.lifts[s.OfLift]
	}
	return text
}

func writeWorkout(w gym.Workout) string {
	if w.Empty() {
		return ""
	}
	text := string(w.Format)
	for _, part := range []struct {
		n    int
		what string
	}{{w.Seconds, "s"}, {w.Cap, "s cap"}, {w.Rounds, "rounds"}, {w.Work, "s work"}, {w.Rest, "s rest"}} {
		if part.n > 0 {
			text += fmt.Sprintf(", %d %s", part.n, part.what)
		}
	}
	if len(w.Reps) > 0 {
		text += ", reps " + joined(w.Reps, strconv.Itoa)
	}
	return text
}

func (n naming) item(i gym.Item) string {
	if i.Amount == 0 {
		return n.movements[i.Movement]
	}
	return fmt.Sprintf("%d %s", i.Amount, n.movements[i.Movement])
}

func classTable(b *gym.Book, n naming) Table {
	return table("classes", "ID, Date, At, Class, Stage, Lifts, Athletes", b.Classes, func(c gym.Class) []any {
		lifts := joined(c.Pieces, func(p gym.Piece) string {
			return fmt.Sprintf("%s: %s %dRM", n.tracks[p.Track], n.lifts[p.Lift], p.Reps)
		})
		return []any{string(c.ID), c.On.String(), c.At.String(), c.Name, string(c.Stage), lifts, len(c.Lifters)}
	})
}

// attended is an athlete in a class.
type attended struct {
	gym.Lifter
	class gym.Class
}

func lifterTable(b *gym.Book, n naming) Table {
	var all []attended
	for _, c := range b.Classes {
		for _, l := range c.Lifters {
			all = append(all, attended{l, c})
		}
	}
	return table("attendance", "Class ID, Date, Athlete, Track, Lift, Reps, Base, Base source, Result ID, Missed, Score", all, func(l attended) []any {
		return []any{
			string(l.class.ID), l.class.On.String(), n.athletes[l.Athlete], n.tracks[l.Track], n.lifts[l.Lift], some(l.Reps),
			writeLoad(l.Base, "kg"), string(l.Source), string(l.Result), yes(l.Missed), l.Score,
		}
	})
}

func slotTable(b *gym.Book, n naming) Table {
	return table("timetable", "ID, Weekday, At, Minutes, Class, Tracks", b.Slots, func(s gym.Slot) []any {
		tracks := joined(s.Tracks, func(id gym.ID) string { return n.tracks[id] })
		return []any{string(s.ID), s.Weekday.String(), s.At.String(), s.Minutes, s.Name, tracks}
	})
}

func closureTable(b *gym.Book) Table {
	return table("closed days", "ID, From, Until, Why", b.Closures, func(c gym.Closure) []any {
		return []any{string(c.ID), c.From.String(), c.Until.String(), c.Name}
	})
}

// rungOf is a rung with its climb.
type rungOf struct {
	gym.Rung
	climb gym.ClimbPlan
}

func climbTable(b *gym.Book) Table {
	var all []rungOf
	for _, c := range b.Climbs {
		for _, r := range c.Rungs {
			all = append(all, rungOf{r, c})
		}
	}
	return table("climbs", "Climb, Heavy line, Ceiling, Strict, At, Until, Percent, Reps, Zone", all, func(r rungOf) []any {
		return []any{
			r.climb.Name, r.climb.HeavyLine, r.climb.Ceiling, yes(r.climb.Strict), clock(r.At), clock(r.Until), r.Percent, some(r.Reps), string(r.Zone),
		}
	})
}

func clock(seconds int) string { return fmt.Sprintf("%02d:%02d", seconds/60, seconds%60) }
