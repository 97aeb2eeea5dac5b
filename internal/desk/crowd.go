package desk

import (
	"windlass/internal/conditioning"
	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// ClassSharing says whether the implements suffice for the class of a day to do a
// workout, and what gets it by if not. Short is whether anything is lacking.
type ClassSharing struct {
	Text  string
	Short bool
}

// WorkoutSharing looks at a workout for the class of a track on a day. It is empty
// for a workout that is not whole, and where nobody is on the track.
func (d *Desk) WorkoutSharing(w gym.Workout, track gym.ID, on day.Date) ClassSharing {
	size := len(d.dueOn(track, on))
	if w.Empty() || size == 0 || d.WorkoutFault(w) != nil {
		return ClassSharing{}
	}
	length, err := conditioning.Estimate(w, d.findMovement, d.Pace())
	if err != nil {
		return ClassSharing{}
	}
	crowd := d.crowd(track, on, size)
	sharing := crowd.Share(w, d.findMovement)
	return ClassSharing{crowd.Words(sharing, length.Usual.Seconds), len(sharing.Short) > 0}
}

// dueOn returns who of a track does its plan of a day at once: the fullest of the
// day's classes, as their own weeks and habits have it. Where no class expects
// anybody it is all of the track.
func (d *Desk) dueOn(track gym.ID, on day.Date) []gym.ID {
	var fullest []gym.ID
	for _, s := range d.book.Slots {
		var due []gym.ID
		for _, x := range d.Expected(s, on) {
			if x.Track == track && x.Plan.Weekday == on.Weekday() {
				due = append(due, x.Athlete)
			}
		}
		if len(due) > len(fullest) {
			fullest = due
		}
	}
	if len(fullest) > 0 {
		return fullest
	}
	for _, a := range d.book.Athletes {
		if a.Status == gym.Active && d.TrackOn(a.ID, on).ID == track {
			fullest = append(fullest, a.ID)
		}
	}
	return fullest
}

// crowd is a class of so many of those who train on a track that day, each with
// the load of today's suggestion or the coach's decision for a usual bout. Where
// more are asked for than there are, some stand for two; where there is nobody,
// the tiers of both load standards take turns.
func (d *Desk) crowd(track gym.ID, on day.Date, size int) conditioning.Crowd {
	class := d.dueOn(track, on)
	return conditioning.Crowd{Size: size, Owned: d.book.Equipment, Load: func(athlete int, item gym.Item) mass.Mass {
		if len(class) == 0 {
			return d.strangersLoad(athlete, item)
		}
		return d.itemLoad(class[athlete%len(class)], item)
	}}
}

// itemLoad is what an athlete takes for an item: the load of the athlete's tier
// where the day has loads of its own, else the load that is suggested or decided.
func (d *Desk) itemLoad(athlete gym.ID, item gym.Item) mass.Mass {
	advice, err := d.Advise(athlete, item.Movement, 0)
	if err != nil {
		return 0 // a movement without loads
	}
	if own := item.Loads[d.standardOf(athlete)].Of(advice.Decision.Tier); own > 0 {
		return own
	}
	return advice.Decision.Load
}

func (d *Desk) strangersLoad(athlete int, item gym.Item) mass.Mass {
	standards, tiers := gym.Standards(), []gym.Tier{gym.Full, gym.Mid, gym.Light}
	m, _ := d.Movement(item.Movement)
	loads := tiersOf(item, m, standards[athlete%len(standards)])
	return loads.Of(tiers[athlete/len(standards)%len(tiers)])
}
