package exchange

import (
	"fmt"
	"reflect"
	"strings"

	"windlass/internal/day"
	"windlass/internal/gym"
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
	if name := l.name(); name != "" && gym.FoldName(name) != gym.FoldName(a.Name) {
		a.Name = name // only possible for a row with an ID
	}
	set(l, colStandard, &a.Standard, standards, "the load standard M or W")
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
	if text := l.cell(colDays); text != "" {
		days, err := day.ParseWeekdays(strings.NewReplacer("/", ",", "+", ",", ".", ",", "&", ",").Replace(text))
		l.faults.add(l.columns.heading(colDays), err)
		a.Free = days
	}
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

// maxes reads the row's rep maxes. Those under the record come back as sentences.
func (r *rosterReader) maxes(l *line, a gym.Athlete) (results []gym.Change, under []string) {
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
		if !l.effort(m, text, &result) {
			continue
		}
		before, raised := r.best.raise(result, m.lift.Measure)
		switch {
		case raised:
			result.ID = r.o.NewID()
			results = append(results, gym.AddResult{Result: result})
		case shown(before) != shown(result):
			under = append(under, fmt.Sprintf("%s of %s does not beat the record of %s, which stays", l.columns.headings[m.index], shown(result), shown(before)))
		}
	}
	return results, under
}

// effort reads a rep max into a result and reports whether it could.
func (l *line) effort(m maxColumn, text string, r *gym.Result) bool {
	heading := strings.TrimSpace(l.columns.headings[m.index])
	before := len(l.faults.all)
	switch {
	case m.lift.Measure != gym.ByLoad && m.lift.Measure != "":
		amount, err := parseAmount(text)
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
