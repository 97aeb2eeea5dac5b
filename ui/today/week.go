package today

import (
	"strings"

	"fyne.io/fyne/v2"

	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// weekStrip shows what each track does on the seven days around today: a row a
// track, a column a day.
type weekStrip struct {
	content *fyne.Container
	days    [7]*kit.Text
	tracks  []*stripRow
}

type stripRow struct {
	row  *fyne.Container
	name *kit.Text
	days [7]*kit.Text
}

// stripTracks is how many tracks the strip has room for.
const stripTracks = 4

func newWeekStrip() *weekStrip {
	w := &weekStrip{}
	for i := range w.days {
		w.days[i] = kit.NewCaption("").Shrinks(40)
	}
	rows := []fyne.CanvasObject{stripLine(kit.NewCaption("Track"), w.days)}
	for range stripTracks {
		r := &stripRow{name: kit.NewStrong("").Shrinks(60)}
		for i := range r.days {
			r.days[i] = kit.NewBody("").Shrinks(40)
		}
		r.row = stripLine(r.name, r.days)
		w.tracks = append(w.tracks, r)
		rows = append(rows, r.row)
	}
	w.content = kit.Column(look.Gap2, rows...)
	return w
}

func stripLine(name *kit.Text, days [7]*kit.Text) *fyne.Container {
	columns := make([]fyne.CanvasObject, len(days))
	for i, d := range days {
		columns[i] = d
	}
	return kit.Row(look.Gap3, kit.Wide(128, kit.Fill(name)), kit.Fill(kit.Equal(look.Gap3, columns...)))
}

func (w *weekStrip) show(d *desk.Desk, today day.Date) {
	first := today.Add(-(int(today.Weekday()-d.Settings().FirstDay) + 7) % 7)
	tracks := d.Tracks()
	for i := range w.days {
		w.days[i].Say(heading(first.Add(i), today))
	}
	for at, r := range w.tracks {
		r.row.Hidden = at >= len(tracks)
		if r.row.Hidden {
			continue
		}
		r.name.SetText(tracks[at].Name)
		for i, text := range r.days {
			text.Say(dayLine(d, tracks[at].ID, first.Add(i)))
		}
	}
	w.content.Refresh()
}

func heading(on, today day.Date) (string, look.Meaning) {
	if on == today {
		return on.Weekday().Short() + " " + on.Short() + ", today", look.Accent
	}
	return on.Weekday().Short() + " " + on.Short(), look.Muted
}

func dayLine(d *desk.Desk, track gym.ID, on day.Date) (string, look.Meaning) {
	plan := d.PlanOn(track, on)
	if lift, ok := d.Lift(plan.Main.Lift); ok {
		return lift.Name, look.Text
	}
	if plan.Kind == gym.RestDay {
		return "rest", look.Muted
	}
	return strings.ToLower(plan.Title), look.Muted
}
