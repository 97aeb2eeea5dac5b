package exchange

import (
	"reflect"
	"strings"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/repmax"
)

var (
	standards = map[string]gym.Standard{
		"m": gym.StandardM, "male": gym.StandardM, "man": gym.StandardM, "men": gym.StandardM,
		"w": gym.StandardW, "f": gym.StandardW, "female": gym.StandardW, "woman": gym.StandardW, "women": gym.StandardW,
	}
	statuses = map[string]gym.Status{
		"active": gym.Active, "paused": gym.Paused, "pause": gym.Paused, "archived": gym.Archived, "left": gym.Archived,
	}
	shows = map[string]gym.WallShow{"name": gym.WallName, "initials": gym.WallInitials, "nothing": gym.WallNothing}
)

// fields returns the athlete with what the row says about them.
func (r *rosterReader) fields(l *line, a gym.Athlete) gym.Athlete {
	// Only a row with the athlete's ID can say that the name has changed.
	if name := l.name(); l.id(has(r.byID)) == a.ID && name != "" && gym.FoldName(name) != gym.FoldName(a.Name) {
		a.Name = name
	}
	if l.standard(&a.Standard); a.Standard == "" {
		a.Standard = gym.StandardW // too light does no harm
		l.note("%s has no load standard and starts from W, the lighter; change it in the roster", a.Name)
	}
	set(l, colStatus, &a.Status, statuses, "active, paused or archived")
	set(l, colShow, &a.Show, shows, "name, initials or nothing")
	if unit := l.ownUnit(); unit != "" {
		a.Unit = unit
	}
	if d := l.date(colJoined); d != day.None {
		a.Joined = d
	}
	if d := l.date(colBackOn); d != day.None {
		a.BackOn = d
	}
	l.days(&a)
	if l.cell(colWant) != "" {
		a.Want = l.whole(colWant, 0, 7)
	}
	if text := l.cell(colDisplay); text != "" {
		a.Display = text
	}
	if text := l.cell(colNotes); text != "" {
		a.Notes = text
	}
	return a
}

// standard takes a column of sexes as a hint, and passes over what is no hint.
func (l *line) standard(to *gym.Standard) {
	switch readHeading(l.columns.heading(colStandard)).key() {
	case "sex", "gender":
		if s, hint := standards[strings.ToLower(l.cell(colStandard))]; hint {
			*to = s
		}
	default:
		set(l, colStandard, to, standards, "the load standard M or W")
	}
}

// days reads weekdays, or how many days a week are wanted where a number stands.
func (l *line) days(a *gym.Athlete) {
	text := l.cell(colDays)
	if n := number(text); n >= 0 && n <= 7 {
		a.Want = n
		return
	}
	if text != "" {
		days, err := day.ParseWeekdays(betweenDays.Replace(text))
		l.faults.add(l.columns.heading(colDays), err)
		a.Free = days
	}
}

var betweenDays = strings.NewReplacer("/", ",", "+", ",", ".", ",", "&", ",")

// set reads a cell that says one of a few words.
func set[T ~string](l *line, c column, to *T, known map[string]T, choices string) {
	text := l.cell(c)
	if text == "" {
		return
	}
	w, err := word(text, known, choices)
	l.faults.add(l.columns.heading(c), err)
	*to = w
}

func differs(a, b gym.Athlete) bool { return !reflect.DeepEqual(a, b) }

// track moves the athlete from today on, if the row says another track.
func (r *rosterReader) track(l *line, athlete gym.ID) []gym.Change {
	text := l.cell(colTrack)
	if text == "" {
		return nil
	}
	track, err := r.tracks.find(text)
	if err != nil {
		l.faults.add(l.columns.heading(colTrack), err)
		return nil
	}
	if r.on[athlete] == track {
		return nil
	}
	return []gym.Change{gym.PutMove{Move: gym.TrackMove{
		ID: r.o.NewID(), Athlete: athlete, Track: track, From: r.o.Today, Made: r.o.Now,
	}}}
}

// maxes are the rep maxes of one row against the records.
type maxes struct {
	changes []gym.Change
	raised  records // those that the changes make
}

func (r *rosterReader) maxes(l *line, a gym.Athlete) maxes {
	found := maxes{raised: records{}}
	on := l.date(colDate)
	if on == day.None {
		on = r.o.Today
	}
	for _, m := range r.columns.maxes {
		text := l.at(m.index)
		if text == "" {
			continue
		}
		result := gym.Result{Athlete: a.ID, Lift: m.lift.Key, Reps: m.reps, Unit: a.Unit, On: on, Source: gym.Reported, Made: r.o.Now}
		if l.effort(m, text, &result) {
			r.compare(l, &found, m, result)
		}
	}
	return found
}

// compare keeps a rep max that beats the record, and notes one that is under it.
func (r *rosterReader) compare(l *line, found *maxes, m maxColumn, result gym.Result) {
	record, known := found.raised.or(r.best, result)
	switch by := m.lift.Measure; {
	case !known || repmax.Better(result, record, by):
		result.ID = r.o.NewID()
		found.raised[keyOfRecord(result)] = result
		found.changes = append(found.changes, gym.AddResult{Result: result})
	case repmax.Better(record, result, by):
		l.note("%s: %s of %s does not beat the record of %s, which stays", l.name(), l.columns.headings[m.index], shown(result), shown(record))
	}
}

// effort reads a rep max into a result and reports whether it could.
func (l *line) effort(m maxColumn, text string, r *gym.Result) bool {
	heading := strings.TrimSpace(l.columns.headings[m.index])
	before := len(l.faults.all)
	switch {
	case m.lift.Measure != gym.ByLoad && m.lift.Measure != "":
		amount, err := parseAmount(text, m.lift.Measure)
		l.faults.add(heading, err)
		r.Amount = amount
	case !m.given && strings.ContainsAny(strings.ToLower(text), "x×*@"):
		e, err := gym.ParseEffort(text, l.unit(m.index))
		l.faults.add(heading, err)
		r.Reps, r.Load, r.Unit = e.Reps, e.Load, e.Unit
	default:
		r.Load, r.Unit = l.load(m.index, text, l.unit(m.index))
	}
	if len(l.faults.all) == before {
		l.faults.add(heading, r.Valid())
	}
	return len(l.faults.all) == before
}
