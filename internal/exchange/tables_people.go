package exchange

import (
	"time"

	"windlass/internal/day"
	"windlass/internal/gym"
)

func athleteTable(b *gym.Book, n naming, today day.Date) Table {
	on := tracksOn(b.Moves, today)
	header := "ID, Name, Load standard, Status, Unit, Track, Joined, Days, Days a week, Display name, On the wall, Back on, Moved days"
	return table("athletes", header, b.Athletes, func(a gym.Athlete) []any {
		moved := joined(a.Hand, func(h gym.HandDay) string { return h.Plan.Short() + " on " + h.On.Short() })
		return []any{
			string(a.ID), a.Name, string(a.Standard), string(a.Status), string(a.Unit), n.tracks[on[a.ID]], a.Joined.String(),
			a.Free.String(), some(a.Want), a.Display, string(a.Show), a.BackOn.String(), moved,
		}
	})
}

func moveTable(b *gym.Book, n naming) Table {
	return table("moves", "ID, Athlete, Track, From, Made", b.Moves, func(m gym.TrackMove) []any {
		return []any{string(m.ID), n.athletes[m.Athlete], n.tracks[m.Track], m.From.String(), instant(m.Made)}
	})
}

func resultTable(b *gym.Book, n naming) Table {
	return table("results", "ID, Date, Athlete, Lift, Reps, Load, Amount, Source, Made, Void, Void at", b.Results, func(r gym.Result) []any {
		reason, at := voided(r.Void)
		return []any{
			string(r.ID), r.On.String(), n.athletes[r.Athlete], n.lifts[r.Lift], r.Reps, writeLoad(r.Load, r.Unit),
			some(r.Amount), string(r.Source), instant(r.Made), reason, at,
		}
	})
}

func boutTable(b *gym.Book, n naming) Table {
	return table("bouts", "ID, Date, Athlete, Movement, Load, Reps, Outcome, Workout, Score, Made, Void, Void at", b.Bouts, func(r gym.Bout) []any {
		reason, at := voided(r.Void)
		return []any{
			string(r.ID), r.On.String(), n.athletes[r.Athlete], n.movements[r.Movement], writeLoad(r.Load, r.Unit), r.Reps,
			string(r.Outcome), r.Workout, r.Score, instant(r.Made), reason, at,
		}
	})
}

func overrideTable(b *gym.Book, n naming) Table {
	return table("overrides", "ID, Athlete, Movement, Load, Tier, Share, From, Until, Reason, Made, Void, Void at", b.Overrides, func(o gym.Override) []any {
		reason, at := voided(o.Void)
		return []any{
			string(o.ID), n.athletes[o.Athlete], n.movements[o.Movement], writeLoad(o.Load, o.Unit), string(o.Tier), some(o.Share),
			o.From.String(), o.Until.String(), o.Reason, instant(o.Made), reason, at,
		}
	})
}

func trackTable(b *gym.Book) Table {
	return table("tracks", "ID, Track, Position", b.Tracks, func(t gym.Track) []any {
		return []any{string(t.ID), t.Name, t.Position}
	})
}

func instant(t time.Time) string {
	if t.IsZero() {
		return ""
	}
	return t.UTC().Format(time.RFC3339Nano)
}

func voided(v *gym.Void) (reason, at string) {
	if v == nil {
		return "", ""
	}
	if reason = v.Reason; blank(reason) {
		reason = "void" // a blank cell would mean that the row stands
	}
	return reason, instant(v.At)
}
