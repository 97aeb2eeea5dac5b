package desk

import (
	"fmt"
	"slices"
	"strings"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// Athlete returns the athlete with an ID.
func (d *Desk) Athlete(id gym.ID) (gym.Athlete, bool) {
	i, ok := d.index.athletes[id]
	if !ok {
		return gym.Athlete{}, false
	}
	return d.book.Athletes[i], true
}

// TrackOn returns the track that an athlete is on that day; the zero track means
// none.
func (d *Desk) TrackOn(athlete gym.ID, on day.Date) gym.Track {
	rows := d.index.moves[athlete]
	moves := make([]gym.TrackMove, len(rows))
	for i, row := range rows {
		moves[i] = d.book.Moves[row]
	}
	return d.Track(gym.TrackOn(moves, on))
}

// Track returns the track with an ID; the zero track means none.
func (d *Desk) Track(id gym.ID) gym.Track {
	for _, t := range d.book.Tracks {
		if t.ID == id {
			return t
		}
	}
	return gym.Track{}
}

// Tracks returns the gym's tracks in the coach's order.
func (d *Desk) Tracks() []gym.Track {
	tracks := slices.Clone(d.book.Tracks)
	slices.SortStableFunc(tracks, func(a, b gym.Track) int { return a.Position - b.Position })
	return tracks
}

// LastCame returns the day of the last class an athlete was in, or day.None.
func (d *Desk) LastCame(athlete gym.ID) day.Date { return d.index.came[athlete] }

// Restrictions returns what holds for an athlete on a day, in the order noted.
func (d *Desk) Restrictions(athlete gym.ID, on day.Date) []gym.Restriction {
	var held []gym.Restriction
	for _, r := range d.book.Restrictions {
		if r.Athlete == athlete && r.Holds(on) {
			held = append(held, r)
		}
	}
	return held
}

// NewAthlete returns an athlete with the gym's usual choices and a new ID.
func (d *Desk) NewAthlete(name string) gym.Athlete {
	return gym.Athlete{
		ID: d.NewID(), Name: strings.TrimSpace(name), Standard: gym.StandardM, Status: gym.Active,
		Unit: d.book.Settings.Unit, Joined: d.Today(), Show: gym.WallName,
	}
}

// AddAthlete keeps a new athlete, on a track from today unless track is empty.
func (d *Desk) AddAthlete(a gym.Athlete, track gym.ID) error {
	if err := d.checkAthlete(a); err != nil {
		return err
	}
	changes := []gym.Change{gym.PutAthlete{Athlete: a}}
	if track != "" {
		changes = append(changes, d.move(a.ID, track, d.Today()))
	}
	return d.do("add "+a.Name, changes...)
}

// KeepAthlete keeps a changed athlete.
func (d *Desk) KeepAthlete(a gym.Athlete) error {
	if err := d.checkAthlete(a); err != nil {
		return err
	}
	return d.do("change "+a.Name, gym.PutAthlete{Athlete: a})
}

func (d *Desk) checkAthlete(a gym.Athlete) error {
	if err := a.Valid(); err != nil {
		return err
	}
	for _, other := range d.book.Athletes {
		if other.ID != a.ID && strings.EqualFold(other.Name, a.Name) {
			return fmt.Errorf("keep athlete %q: another athlete has that name; add a letter or a year to tell them apart", a.Name)
		}
	}
	return nil
}

// SetStatus makes athletes active, paused or archived. Athletes who come back
// from a pause carry the day of coming back, which makes their bases stale.
func (d *Desk) SetStatus(status gym.Status, athletes ...gym.ID) error {
	var changes []gym.Change
	var changed []gym.ID
	for _, id := range athletes {
		a, ok := d.Athlete(id)
		if !ok || a.Status == status {
			continue
		}
		changed = append(changed, id)
		if status == gym.Active {
			a.BackOn = d.Today()
		}
		a.Status = status
		changes = append(changes, gym.PutAthlete{Athlete: a})
	}
	if len(changes) == 0 {
		return nil
	}
	return d.do(d.whoseMany("set", changed)+" to "+string(status), changes...)
}

// MoveTrack puts athletes on a track from a day on; an empty track takes them off.
func (d *Desk) MoveTrack(track gym.ID, from day.Date, athletes ...gym.ID) error {
	if from == day.None {
		return fmt.Errorf("move to a track: there is no day to begin on; choose one")
	}
	if track != "" && d.Track(track).ID == "" {
		return fmt.Errorf("move to a track: the gym has no such track")
	}
	var changes []gym.Change
	var moved []gym.ID
	for _, id := range athletes {
		if d.TrackOn(id, from).ID != track {
			moved = append(moved, id)
			changes = append(changes, d.move(id, track, from))
		}
	}
	if len(changes) == 0 {
		return nil
	}
	return d.do(d.whoseMany("move", moved), changes...)
}

func (d *Desk) move(athlete, track gym.ID, from day.Date) gym.Change {
	return gym.PutMove{Move: gym.TrackMove{ID: d.NewID(), Athlete: athlete, Track: track, From: from, Made: d.now()}}
}

// KeepRestriction notes a restriction or a change of one.
func (d *Desk) KeepRestriction(r gym.Restriction) error {
	if err := r.Valid(); err != nil {
		return err
	}
	return d.do(d.whose("note restriction of", r.Athlete), gym.PutRestriction{Restriction: r})
}

// LiftRestriction takes a restriction away.
func (d *Desk) LiftRestriction(id gym.ID) error {
	label := "lift restriction"
	if i := slices.IndexFunc(d.book.Restrictions, func(r gym.Restriction) bool { return r.ID == id }); i >= 0 {
		label = d.whose(label+" of", d.book.Restrictions[i].Athlete)
	}
	return d.do(label, gym.DropRestriction{ID: id})
}
