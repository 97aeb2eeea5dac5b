package record

import (
	"fmt"
	"strings"

	"fyne.io/fyne/v2"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/repmax"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// figures shows the chosen lift's rep maxes in large, with source and day.
type figures struct {
	content *fyne.Container
	title   *kit.Text
	note    *kit.Text
	cells   []*figure
	row     *fyne.Container
}

type figure struct {
	content fyne.CanvasObject
	caption *kit.Text
	load    *kit.Text
	mark    *kit.Mark
	source  *kit.Text
}

// mostFigures is how many rep counts stand in large.
const mostFigures = 4

func newFigures(another *kit.Button) *figures {
	f := &figures{title: kit.NewHeading(""), note: kit.NewCaption("").Shrinks(80)}
	f.row = kit.Equal(look.Gap3)
	for range mostFigures {
		c := &figure{
			caption: kit.NewCaption("").Shrinks(40), load: kit.NewTitle("").Shrinks(60),
			mark: kit.NewMark(kit.NoShape, look.Muted, 10), source: kit.NewCaption("").Shrinks(40),
		}
		c.content = kit.Column(look.Gap1, c.caption, c.load, kit.Row(look.Gap2, c.mark, kit.Fill(c.source)))
		f.cells = append(f.cells, c)
		f.row.Add(c.content)
	}
	f.content = kit.Column(look.Gap2, kit.Row(look.Gap3, f.title, kit.Fill(f.note), another), f.row)
	return f
}

func (f *figures) show(l desk.CardLift, counts []int, u mass.Unit) {
	f.title.SetText(orText(l.Lift.Name, "No lift chosen"))
	f.note.SetText(noteOf(l, u))
	for i, c := range f.cells {
		there := i < len(counts) && l.Lift.Key != ""
		c.content.(*fyne.Container).Hidden = !there
		switch {
		case !there:
		case i < len(l.Cells):
			c.show(l.Cells[i])
		default:
			c.show(desk.CardCell{Entry: repmax.Entry{Reps: counts[i]}, Kept: true})
		}
	}
	f.content.Refresh()
}

func (c *figure) show(cell desk.CardCell) {
	c.caption.SetText(fmt.Sprintf("%d rep max", cell.Reps))
	shape, tone := sourceMark(cell.Source)
	c.mark.Set(shape, tone)
	if !cell.Known() || !cell.Kept {
		c.load.Say("–", look.Muted)
		c.source.SetText(ifElse(cell.Kept, "not known", "not counted for this lift"))
		return
	}
	c.load.Say(cell.Load.In(cell.Unit), toneOf(cell.Source))
	c.source.SetText(sourceWords(cell.Entry))
}

// noteOf says what has no place in the figures.
func noteOf(l desk.CardLift, u mass.Unit) string {
	switch {
	case l.Guide != nil:
		return l.Guide.Why(u)
	case len(l.Best) > 0:
		return "Counted by " + countedBy[l.Lift.Measure] + "; best " + desk.ResultText(l.Best[0], l.Lift.Measure) + ", " + l.Best[0].On.Short()
	}
	var other []string
	for _, e := range l.Other {
		other = append(other, fmt.Sprintf("%dRM %s", e.Reps, e.Load.In(e.Unit)))
	}
	return strings.Join(other, ", ")
}

// countedBy are the measures of lifts in words.
var countedBy = map[gym.Measure]string{
	gym.ByReps: "repetitions in a time", gym.ByDistance: "distance", gym.ByTime: "time", gym.ByHold: "time held", gym.ByCalories: "calories",
}

func orText(text, other string) string {
	if text == "" {
		return other
	}
	return text
}

func ifElse(yes bool, then, otherwise string) string {
	if yes {
		return then
	}
	return otherwise
}
