package gym

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"windlass/internal/day"
	"windlass/internal/mass"
)

// Standard is the column of standard conditioning loads an athlete starts from.
type Standard string

// The two load standards.
const (
	StandardM Standard = "M"
	StandardW Standard = "W"
)

// Status says whether an athlete trains at present.
type Status string

// An athlete trains, is away for a while, or has left; nobody is ever deleted.
const (
	Active   Status = "active"
	Paused   Status = "paused"
	Archived Status = "archived"
)

// WallShow is what the wall shows of an athlete's name.
type WallShow string

// The athlete chooses among a display name, initials and nothing.
const (
	WallName     WallShow = "name"
	WallInitials WallShow = "initials"
	WallNothing  WallShow = "nothing"
)

// Athlete is one who trains.
type Athlete struct {
	ID       ID           `json:"id"`
	Name     string       `json:"name"`
	Standard Standard     `json:"standard"`
	Status   Status       `json:"status"`
	Unit     mass.Unit    `json:"unit"` // in which this athlete reads loads
	Joined   day.Date     `json:"joined"`
	Show     WallShow     `json:"show"`    // empty means the name
	Display  string       `json:"display"` // name for the wall; empty means the first name
	Free     day.Weekdays `json:"free"`    // weekdays on which the athlete can come
	Want     int          `json:"want"`    // training days wanted a week, 0 when not said
	Hand     []HandDay    `json:"hand"`    // days of the own week that the coach set by hand
	BackOn   day.Date     `json:"backOn"`  // the day of coming back from the last break
	Notes    string       `json:"notes"`   // never leaves the desk
}

// HandDay is a coach's own choice in an athlete's week: the track's day plan of
// one weekday done on another.
type HandDay struct {
	Plan day.Weekday `json:"plan"`
	On   day.Weekday `json:"on"`
}

// Valid says what keeps a from being kept.
func (a Athlete) Valid() error {
	switch {
	case strings.TrimSpace(a.Name) == "":
		return fmt.Errorf("keep athlete: the name is empty; write one")
	case a.Standard != StandardM && a.Standard != StandardW:
		return fmt.Errorf("keep athlete %q: the load standard %q is not M or W", a.Name, a.Standard)
	case a.Status != Active && a.Status != Paused && a.Status != Archived:
		return fmt.Errorf("keep athlete %q: the status %q is not active, paused or archived", a.Name, a.Status)
	case !a.Unit.Valid():
		return fmt.Errorf("keep athlete %q: the unit %q is not kg or lb", a.Name, a.Unit)
	case a.Show != "" && a.Show != WallName && a.Show != WallInitials && a.Show != WallNothing:
		return fmt.Errorf("keep athlete %q: %q on the wall is not name, initials or nothing", a.Name, a.Show)
	case a.Want < 0 || a.Want > 7:
		return fmt.Errorf("keep athlete %q: %d training days do not fit a week; write 0 to 7", a.Name, a.Want)
	}
	return nil
}

// OnWall returns what the wall may show of a's name.
func (a Athlete) OnWall() string {
	switch {
	case a.Show == WallNothing:
		return ""
	case a.Show == WallInitials:
		return initials(a.Name)
	case a.Display != "":
		return a.Display
	}
	first, _, _ := strings.Cut(strings.TrimSpace(a.Name), " ")
	return first
}

func initials(name string) string {
	var b strings.Builder
	for part := range strings.FieldsSeq(name) {
		b.WriteRune([]rune(part)[0])
	}
	return strings.ToUpper(b.String())
}

// Track is one programme that runs through the gym's cycles.
type Track struct {
	ID       ID     `json:"id"`
	Name     string `json:"name"`
	Position int    `json:"position"` // order on the screen
}

// TrackMove puts an athlete on a track from a day on. The latest move on or
// before a day tells the track of that day; an empty Track takes them off.
type TrackMove struct {
	ID      ID        `json:"id"`
	Athlete ID        `json:"athlete"`
	Track   ID        `json:"track"`
	From    day.Date  `json:"from"`
	Made    time.Time `json:"made"`
}

// TrackOn returns an athlete's track of a day by the athlete's moves in any order:
// that of the latest on or before it, and of two from one day that of the one made
// later. It is empty without a move.
func TrackOn(moves []TrackMove, on day.Date) ID {
	var latest TrackMove
	for _, m := range moves {
		later := m.From > latest.From || m.From == latest.From && !m.Made.Before(latest.Made)
		if m.From <= on && (latest.From == day.None || later) {
			latest = m
		}
	}
	return latest.Track
}

// Restriction is something an athlete must not or should not do for a while.
// It stands beside the name on the desk and never leaves it.
type Restriction struct {
	ID      ID       `json:"id"`
	Athlete ID       `json:"athlete"`
	Text    string   `json:"text"`
	Region  Region   `json:"region"` // empty means every region
	From    day.Date `json:"from"`
	Until   day.Date `json:"until"` // the last day; day.None means until it is lifted
}

// Valid says what keeps r from being kept.
func (r Restriction) Valid() error {
	switch {
	case r.Athlete == "":
		return fmt.Errorf("keep restriction: it names no athlete")
	case strings.TrimSpace(r.Text) == "":
		return fmt.Errorf("keep restriction: the text is empty; write what to avoid")
	case r.Region != "" && !slices.Contains(Regions(), r.Region):
		return fmt.Errorf("keep restriction %q: the region %q is not lower, upper, trunk or whole", r.Text, r.Region)
	case r.From == day.None:
		return fmt.Errorf("keep restriction %q: it has no first day", r.Text)
	case r.Until != day.None && r.Until < r.From:
		return fmt.Errorf("keep restriction %q: its last day %s is before its first, %s", r.Text, r.Until, r.From)
	}
	return nil
}

// Holds reports whether r holds on a day.
func (r Restriction) Holds(on day.Date) bool {
	return r.From <= on && (r.Until == day.None || on <= r.Until)
}

// Touches reports whether r holds on a day for a region of the body.
func (r Restriction) Touches(on day.Date, region Region) bool {
	return r.Holds(on) && (r.Region == "" || region == WholeBody || r.Region == region)
}
