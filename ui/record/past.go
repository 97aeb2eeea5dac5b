package record

import (
	"fmt"
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// past is what came before in the chosen lift: a chart, or the log.
type past struct {
	of      *lifts
	content *fyne.Container
	athlete gym.Athlete
	lift    gym.Lift
	chart   *kit.Chart
	list    *kit.DataList
	rows    []gym.Result
	which   *kit.Button
	logged  bool // the history is in front, not the trend
	legend  fyne.CanvasObject
	remove  *kit.Button
	note    *kit.Text
	stage   *fyne.Container
}

// pastHeight is that of the chart and of the log.
const pastHeight = 152

func newPast(l *lifts) *past {
	p := &past{of: l, chart: kit.NewChart(200, pastHeight), stage: container.NewStack(), note: kit.NewCaption("").Shrinks(40)}
	p.list = kit.NewDataList([]kit.ListColumn{
		{Title: "Day", Width: 116}, {Title: "Result", Width: 120}, {Title: "Source", Width: 96}, {Title: "", Width: 100, Grow: 1},
	}, kit.Rows{Len: func() int { return len(p.rows) }, Cell: p.cell})
	p.list.Empty = "Nothing is logged for this lift yet."
	p.list.OnRune = l.of.typed
	p.list.OnCursor = func(int) { p.offer() }
	p.which = kit.NewButton("", p.flip).Key("F9")
	p.legend = newLegend([]legendMark{{kit.Ring, look.Text, "5RM"}, {kit.Half, look.Text, "3RM"}, {kit.Disc, look.Text, "1RM"}, {kit.Square, look.Text, "other"}})
	p.remove = kit.NewButton("Void", p.void).Key("Del").Tip("Take the chosen result out of every computation; it stays readable")
	p.content = kit.Column(look.Gap2, kit.Row(look.Gap3, p.which, kit.Fill(p.note), p.legend, p.remove), kit.Tall(pastHeight, kit.Fill(p.stage)))
	p.turn(false)
	return p
}

// turn brings the trend or the history to the front.
func (p *past) turn(logged bool) {
	p.logged = logged
	p.stage.Objects = []fyne.CanvasObject{p.chart}
	p.which.SetLabel("History")
	if logged {
		p.stage.Objects = []fyne.CanvasObject{kit.NewPanel(kit.Fill(p.list))}
		p.which.SetLabel("Trend")
	}
	p.remove.Hidden, p.legend.(*fyne.Container).Hidden, p.note.Hidden = !logged, logged, logged
	p.offer()
	p.content.Refresh()
}

// flip goes from the trend to the history and back, and gives it the keyboard.
func (p *past) flip() {
	p.turn(!p.logged)
	if p.logged {
		p.of.of.host.Window().Canvas().Focus(p.list) // it was never drawn, so it knows no canvas
	}
}

func (p *past) show(a gym.Athlete, l gym.Lift) {
	d := p.of.of.host.Desk()
	p.athlete, p.lift = a, l
	p.rows = nil
	if l.Key != "" {
		p.rows = d.History(a.ID, l.Key)
	}
	p.list.Refresh()
	trend := d.Trend(a.ID, l.Key)
	p.chart.Set(p.plot(trend, a.Unit))
	p.note.SetText(trendNote(trend))
	p.offer()
}

func trendNote(t desk.Trend) string {
	if len(t.Best) == 0 {
		return ""
	}
	return "line: record of " + rm(t.Reps)
}

func rm(reps int) string { return strconv.Itoa(reps) + "RM" }

// offer says whether there is something to void.
func (p *past) offer() {
	r, ok := p.chosen()
	p.remove.Able(ok && r.Void == nil)
}

func (p *past) chosen() (gym.Result, bool) {
	if at := p.list.Cursor(); at >= 0 {
		return p.rows[at], true
	}
	return gym.Result{}, false
}

func (p *past) cell(row, column int) kit.Cell {
	r := p.rows[row]
	c := kit.Cell{}
	if r.Void != nil {
		c.Tone, c.Void = look.Muted, column < 3
	}
	switch column {
	case 0:
		c.Text = r.On.Time().Format("2 Jan 2006")
	case 1:
		c.Text, c.Bold = desk.ResultText(r, p.lift.Measure), r.Void == nil
	case 2:
		c.Text = string(r.Source)
		c.Shape, c.Mark = sourceMark(r.Source)
	default:
		if r.Void != nil {
			c.Text, c.Shape = "void: "+r.Void.Reason, kit.Cross
		}
	}
	return c
}

// void asks why a result is to be void, and voids it.
func (p *past) void() {
	r, ok := p.chosen()
	if !ok || !p.logged {
		p.of.of.host.Say("Choose a result in the history first (F9).", false)
		return
	}
	if r.Void != nil {
		p.of.of.host.Say("That result is void already.", false)
		return
	}
	askReason(p.of.of, "Void "+desk.ResultText(r, p.lift.Measure)+"?", "It counts for nothing any more and stays readable in the history.", func(reason string) error {
		return p.of.of.host.Desk().VoidResult(r.ID, reason)
	}, desk.ResultText(r, p.lift.Measure)+" is void.")
}

// askReason asks for a reason and does something with it.
func askReason(r *Record, title, text string, do func(reason string) error, sentence string) {
	why := kit.NewField("Why").Hint("wrong bar, slip of the hand")
	r.ask(kit.Question{
		Title: title, Text: text, Body: why, First: why.Keyboard(),
		Actions: []kit.Action{{Label: "Void it", Danger: true, Do: func() bool {
			if strings.TrimSpace(why.Text()) == "" {
				why.SetFault("Write a word or two, for whoever reads it later.")
				return false
			}
			return r.done(do(strings.TrimSpace(why.Text())), sentence)
		}}},
	})
}

// repShapes tell rep counts apart on the chart.
var repShapes = map[int]kit.Shape{1: kit.Disc, 3: kit.Half, 5: kit.Ring}

// plot is the trend as the chart draws it, in the athlete's unit.
func (p *past) plot(t desk.Trend, u mass.Unit) kit.Plot {
	in := func(m mass.Mass) float64 { return m.Ratio(u.One()) }
	drawn := kit.Plot{
		Unit: string(u), Empty: "Points appear here once results are logged.",
		FormatX: func(x float64) string { return day.Date(x).Time().Format("2 January 2006") },
		FormatY: func(y float64) string { return fmt.Sprintf("%.4g", y) },
	}
	for _, r := range t.Results {
		shape, ok := repShapes[r.Reps]
		if !ok {
			shape = kit.Square
		}
		drawn.Points = append(drawn.Points, kit.PlotPoint{
			X: float64(r.On), Y: in(r.Load), Shape: shape, Label: desk.ResultText(r, p.lift.Measure) + ", " + r.On.Time().Format("2 January"),
		})
	}
	drawn.Trend = steps(t, in)
	if n := len(t.Results); n > 0 {
		drawn.Ticks = kit.DateTicks(t.Results[0].On, t.Results[n-1].On)
	}
	return drawn
}

// steps draws a record as a stair: it stands until it is beaten.
func steps(t desk.Trend, in func(mass.Mass) float64) []kit.TrendPoint {
	at := func(on day.Date, load mass.Mass) kit.TrendPoint {
		y := in(load)
		return kit.TrendPoint{X: float64(on), Y: y, Low: y, High: y}
	}
	var line []kit.TrendPoint
	for i, s := range t.Best {
		if i > 0 {
			line = append(line, at(s.On, t.Best[i-1].Load))
		}
		line = append(line, at(s.On, s.Load))
	}
	if n := len(t.Best); n > 0 {
		line = append(line, at(t.Results[len(t.Results)-1].On, t.Best[n-1].Load))
	}
	return line
}
