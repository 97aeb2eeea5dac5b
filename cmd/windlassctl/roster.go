package main

import (
	"cmp"
	"context"
	"flag"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"text/tabwriter"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/repmax"
)

// athleteLine is a line of what athletes answers.
type athleteLine struct {
	ID       gym.ID       `json:"id"`
	Name     string       `json:"name"`
	Track    string       `json:"track"`
	Status   gym.Status   `json:"status"`
	Standard gym.Standard `json:"standard"`
}

func athletesCommand(f *flag.FlagSet) run {
	trackName := f.String("track", "", "only those of track `T`")
	status := f.String("status", "", "only those that are `active|paused|archived`")
	return func(ctx context.Context, a *App, _ []string) error {
		return a.reading(ctx, func(d *desk.Desk) error {
			lines, err := rosterLines(d, *trackName, *status)
			if err != nil {
				return err
			}
			return a.print(lines, func() {
				a.table(func(w *tabwriter.Writer) {
					for _, l := range lines {
						line(w, l.Name, l.Track, string(l.Status), string(l.Standard))
					}
				})
			})
		})
	}
}

func rosterLines(d *desk.Desk, trackName, status string) ([]athleteLine, error) {
	only := gym.Track{}
	if trackName != "" {
		var err error
		if only, err = track(d, trackName); err != nil {
			return nil, err
		}
	}
	wanted := gym.Status(strings.ToLower(strings.TrimSpace(status)))
	if wanted != "" && !slices.Contains([]gym.Status{gym.Active, gym.Paused, gym.Archived}, wanted) {
		return nil, fmt.Errorf("list athletes: the status %q is not one; write active, paused or archived", status)
	}
	lines := []athleteLine{}
	for _, a := range d.Book().Athletes {
		t := d.TrackOn(a.ID, d.Today())
		if (only.ID == "" || t.ID == only.ID) && (wanted == "" || a.Status == wanted) {
			lines = append(lines, athleteLine{a.ID, a.Name, t.Name, a.Status, a.Standard})
		}
	}
	slices.SortStableFunc(lines, func(a, b athleteLine) int { return cmp.Compare(gym.FoldName(a.Name), gym.FoldName(b.Name)) })
	return lines, nil
}

// card is what record answers.
type card struct {
	Name  string     `json:"name"`
	Lifts []cardLine `json:"lifts"`
}

type cardLine struct {
	Lift   string     `json:"lift"`
	Reps   int        `json:"reps"`
	Load   string     `json:"load"`
	Source gym.Source `json:"source"`
	Date   string     `json:"date"` // of an estimate: that of the result it rests on
}

func recordCommand(*flag.FlagSet) run {
	return func(ctx context.Context, a *App, names []string) error {
		return a.reading(ctx, func(d *desk.Desk) error {
			who, err := athlete(d, strings.Join(names, " "))
			if err != nil {
				return err
			}
			c := cardOf(d, who)
			return a.print(c, func() { a.table(c.write) })
		})
	}
}

// cardOf gives every rep max that is known or estimated, the lifts of the track
// first. A lift that is not counted by its load has no rep max.
func cardOf(d *desk.Desk, who gym.Athlete) card {
	c := card{Name: who.Name, Lifts: []cardLine{}}
	for _, l := range d.RecordCard(who.ID).Lifts {
		var entries []repmax.Entry
		for _, cell := range l.Cells {
			if cell.Known() && (cell.Kept || cell.Source != gym.Estimate) {
				entries = append(entries, cell.Entry)
			}
		}
		entries = append(entries, l.Other...)
		slices.SortStableFunc(entries, func(a, b repmax.Entry) int { return b.Reps - a.Reps })
		for _, e := range entries {
			c.Lifts = append(c.Lifts, cardLine{l.Lift.Name, e.Reps, e.Load.In(e.Unit), e.Source, e.On.String()})
		}
	}
	return c
}

func (c card) write(w *tabwriter.Writer) {
	line(w, c.Name)
	for _, l := range c.Lifts {
		line(w, "  "+l.Lift, strconv.Itoa(l.Reps)+"RM", l.Load, string(l.Source), l.Date)
	}
}
