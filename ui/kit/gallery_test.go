package kit_test

import (
	"errors"
	"flag"
	"fmt"
	"math"
	"path/filepath"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"

	"windlass/internal/mass"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

var gallery = flag.String("gallery", "", "folder to write pictures of every widget to")

// The gallery shows every widget in both palettes. No text may be too wide for its
// place; how it looks is for a person to judge:
//
//	go test ./ui/kit -run Gallery -gallery /tmp/gallery
func TestGallery(t *testing.T) {
	for palette, p := range map[string]look.Palette{"dark": look.Dark(), "light": look.Light()} {
		for name, page := range pages {
			t.Run(name+"-"+palette, func(t *testing.T) {
				uitest.App(t, p)
				w := uitest.OpenAs(t, p, fyne.NewSize(1440, 900), page.content(t))
				if page.then != nil {
					page.then(t, w)
				}
				assert.Empty(t, uitest.Overflows(w))
				if *gallery != "" {
					uitest.Snapshot(t, w, filepath.Join(*gallery, name+"-"+palette+".png"))
				}
			})
		}
	}
}

// page is one picture: what is shown, and what is done before it is taken.
type page struct {
	content func(*testing.T) fyne.CanvasObject
	then    func(*testing.T, *uitest.Window)
}

var pages = map[string]page{
	"controls": {content: controlsPage},
	"fields": {content: fieldsPage, then: func(t *testing.T, w *uitest.Window) {
		uitest.Fill(t, w, "Lift", "squ")
		uitest.Hover(t, w, "Add athlete")
	}},
	"list": {content: listPage, then: func(t *testing.T, w *uitest.Window) {
		uitest.Tap(t, w, "Ines Halvorsen")
		uitest.Hover(t, w, "Cleo Ito")
	}},
	"floor": {content: floorPage},
	"weeks": {content: weeksPage, then: func(t *testing.T, w *uitest.Window) {
		uitest.Tap(t, w, "Log press")
		uitest.HoverAt(w, fyne.NewPos(590, 520))
	}},
	"charts": {content: chartsPage, then: func(t *testing.T, w *uitest.Window) {
		uitest.HoverAt(w, fyne.NewPos(300, 300))
	}},
	"question": {content: fieldsPage, then: func(t *testing.T, w *uitest.Window) {
		kit.Ask(w.Canvas(), kit.Question{
			Title: "Void this result?", Text: "The result stays in the history and is marked void. Records that rested on it fall back to the result before.",
			Body:    kit.NewField("Reason"),
			Actions: []kit.Action{{Label: "Void it", Danger: true}},
		})
	}},
}

func fieldsPage(*testing.T) fyne.CanvasObject {
	name, bad, off := kit.NewField("Name"), kit.NewMassField("Load", mass.KG), kit.NewField("Switched off")
	name.SetText("Ada Lund")
	name.SetNote("As it stands on the wall.")
	bad.SetText("12x")
	bad.SetFault("Could not read load \"12x\": the unit is not kg or lb.")
	off.SetText("cannot be changed")
	off.Able(false)
	notice, failed := kit.NewNotice(), kit.NewNotice()
	notice.Say("Back squat 5 × 142.5 kg for Ada Lund: a record, 102.5 %.", func() {})
	failed.Fail(errors.New("open roster: the file has no column for names; rename one, or choose it below"))
	bar := kit.NewProgress()
	bar.Set(3400, 10000)
	rail := kit.Column(0)
	for i, room := range []string{"Today", "Roster", "Cycle", "Floor", "Handouts", "Gym"} {
		item := kit.NewRailItem(room, fmt.Sprint("Ctrl+", i+1), nil)
		item.Here(i == 1)
		rail.Add(item)
	}
	form := kit.Column(look.Gap2, kit.Equal(look.Gap4, name, bad), kit.Equal(look.Gap4, kit.NewChoice("Lift", lifts(), nil), off),
		kit.NewField("Notes").Lines(3), kit.NewSearch("Find an athlete, a day, an action"))
	content := kit.Equal(look.Gap6,
		kit.Column(look.Gap6, kit.NewCard("Fields", form), kit.NewCard("Progress", bar),
			kit.NewPanel(kit.Column(0, notice, kit.NewRule(), failed))),
		kit.NewPanel(kit.NewEmpty("No athletes yet", "Bring a roster file as you have it, or add the first athlete by hand. Nothing leaves this computer.",
			kit.NewButton("Import a roster", nil).Primary(), kit.NewButton("Add athlete", nil).Tip("Add one athlete by hand (A)"))))
	return kit.Row(0, kit.Fill(kit.Row(0, kit.Fill(kit.Wide(0, kit.NewPanel(rail))), kit.Wide(1220, kit.Room("Fields", content)))))
}

func controlsPage(*testing.T) fyne.CanvasObject {
	clock := kit.NewDigits(96)
	clock.Set("12:34", look.Text)
	off := kit.NewButton("Switched off", nil)
	off.Disable()
	buttons := kit.Column(look.Gap3,
		kit.Row(look.Gap2, kit.NewButton("Start the clock", nil).Primary().Key("S"),
			kit.NewButton("Next rung", nil).Key("N"), kit.NewButton("Hold", nil).Key("Space")),
		kit.Row(look.Gap2, kit.NewButton("Void this result", nil).Danger(), off,
			kit.NewButton("Add", nil).Mark(kit.Plus), kit.NewButton("Undo", nil).Plain().Key("Ctrl+Z")),
		kit.Row(look.Gap2, kit.NewChip("Powerlifting", kit.NoShape, look.Text),
			kit.NewChip("Estimate", kit.Diamond, look.Muted), kit.NewChip("Record", kit.Up, look.Good),
			kit.NewChip("Over the ceiling", kit.Warning, look.Warn), kit.NewChip("Missed", kit.Cross, look.Bad)),
		kit.Row(look.Gap4, kit.NewSegmented([]string{"kg", "lb"}, 0, nil),
			kit.NewSegmented([]string{"Powerlifting", "Strongman", "Weightlifting"}, 1, nil)),
		kit.Row(look.Gap4, kit.NewToggle("Show names on the wall", true, nil), kit.NewToggle("Sport colours", false, nil)),
	)
	var shapes []fyne.CanvasObject
	for s := kit.Ring; s <= kit.Chevron; s++ {
		shapes = append(shapes, kit.Column(4, kit.NewMark(s, look.Accent, 24), kit.NewCaption(s.String()).Align(fyne.TextAlignCenter)))
	}
	prose := kit.NewProse("Training advice is general. Screen people before they start, use spotters and safety arms, and stop on pain. Defer to a doctor, to licensed practice and to local rules.", 200)
	left := kit.Column(look.Gap6,
		kit.NewCard("Clock", kit.Tall(160, clock), kit.NewChip("Rung 5 of 9", kit.Half, look.ZoneWorking)),
		kit.NewCard("Buttons, chips, choices", buttons, kit.NewButton("More", nil).Plain()),
		kit.NewCard("Shapes", kit.Row(look.Gap4, shapes...)),
	)
	right := kit.Column(look.Gap6,
		kit.NewCard("Text", kit.Column(look.Gap2, kit.NewNumber("142.5 kg"), kit.NewBody("Body text: back squat, five reps"),
			kit.NewStrong("Strong text"), kit.NewCaption("Caption: from 3 March, estimate"), kit.NewRule(), prose)),
	)
	return kit.Room("Gallery", kit.Row(look.Gap6, kit.Fill(left), kit.Fill(right)),
		kit.NewButton("Import", nil), kit.NewButton("Add athlete", nil).Primary().Key("A"))
}

// names and tracks are invented.
var (
	given  = []string{"Ada", "Bo", "Cleo", "Dov", "Ines", "Jun", "Kofi", "Lena", "Maximiliane", "Noor", "Øyvind", "Zoë"}
	family = []string{"Lund", "Halvorsen", "Ito", "Moreau", "van den Bergh-Castellanos", "Okafor", "Petrov", "Quist"}
	tracks = []string{"Powerlifting", "Strongman", "Weightlifting"}
)

func listPage(*testing.T) fyne.CanvasObject {
	marked := map[int]bool{1: true, 2: true}
	l := kit.NewDataList([]kit.ListColumn{
		{Title: "Name", Width: 160, Grow: 2, Sorts: true},
		{Title: "Track", Width: 120, Grow: 1, Sorts: true},
		{Title: "Days", Width: 120},
		{Title: "Status", Width: 140},
		{Title: "Last came", Width: 110, Sorts: true},
		{Title: "Squat 1RM", Width: 110, End: true, Sorts: true},
		{Title: "Records known", Width: 120, End: true},
	}, kit.Rows{Len: func() int { return 20000 }, Cell: rosterCell})
	l.Marked = func(row int) bool { return marked[row] }
	l.OnMark = func([]int, bool) {}
	l.Sorted(0, false)
	none := kit.NewDataList([]kit.ListColumn{{Title: "Lift", Width: 100, Grow: 1}, {Title: "Load", Width: 90, End: true}},
		kit.Rows{Len: func() int { return 0 }, Cell: nil})
	none.Empty = "No results yet. Type 5x142.5 above and press Enter to keep the first."
	side := kit.Wide(320, kit.NewCard("Results", kit.Tall(240, kit.NewPanel(none))))
	body := kit.Row(look.Gap4, kit.Fill(kit.NewPanel(l)), kit.Full(side))
	return kit.Room("Roster", kit.Column(look.Gap3, kit.Row(look.Gap2, kit.Wide(320, kit.NewSearch("Find by name")),
		kit.NewSegmented(append([]string{"All"}, tracks...), 0, nil)), kit.Fill(body)),
		kit.NewButton("Import", nil), kit.NewButton("Add athlete", nil).Primary().Key("A"))
}

func rosterCell(row, col int) kit.Cell {
	switch col {
	case 0:
		return kit.Cell{Text: given[row%len(given)] + " " + family[(row*5+row/12)%len(family)], Bold: true}
	case 1:
		return kit.Cell{Text: tracks[row%3]}
	case 2:
		return kit.Cell{Text: "Mon Wed Fri", Tone: look.Muted}
	case 3:
		if row%5 == 3 {
			return kit.Cell{Text: "Paused", Shape: kit.Dash, Tone: look.Muted}
		}
		return kit.Cell{Text: "Active", Shape: kit.Tick, Mark: look.Good}
	case 4:
		return kit.Cell{Text: fmt.Sprintf("%d March", 1+row%28), Tone: look.Muted}
	case 5:
		if row%4 == 1 {
			return kit.Cell{Text: fmt.Sprintf("%d kg", 90+row%80), Shape: kit.Diamond, Tone: look.Muted}
		}
		return kit.Cell{Text: fmt.Sprintf("%d.5 kg", 90+row%80)}
	}
	return kit.Cell{Text: fmt.Sprintf("%d of 12", row%13)}
}

// climb is a climb of nine rungs in twenty minutes, common practice.
func climb() []kit.Rung {
	minute := func(m float64) time.Duration { return time.Duration(m * float64(time.Minute)) }
	r := func(from, to float64, percent, reps string, z kit.Zone) kit.Rung {
		return kit.Rung{Start: minute(from), End: minute(to), Percent: percent, Reps: reps, Zone: z}
	}
	return []kit.Rung{
		r(0, 1, "30 %", "× 5", kit.Light), r(1, 2, "50 %", "× 3", kit.Light), r(2, 4, "60 %", "× 5", kit.Working),
		r(4, 6, "70 %", "× 5", kit.Working), r(6, 8, "80 %", "× 2", kit.Working), r(8, 11, "90 %", "× 1", kit.Top),
		r(11, 14, "95 %", "× 1", kit.Top), r(14, 17, "98 %", "× 1", kit.Top), r(17, 20, "102 %", "× 5", kit.Top),
	}
}

func discs(sport bool, kg ...float64) (all []kit.PlateDisc) {
	for _, m := range kg {
		all = append(all, kit.DiscOf(mass.Of(m, mass.KG), mass.KG, m >= 10, sport))
	}
	return all
}

func floorPage(*testing.T) fyne.CanvasObject {
	strip := func(now time.Duration) *kit.RungStrip {
		s := kit.NewRungStrip()
		s.Set(climb())
		s.SetNow(now)
		return s
	}
	picture := func(w, h float32, sport bool, kg ...float64) fyne.CanvasObject {
		p := kit.NewPlatePicture(w, h)
		d := discs(sport, kg...)
		if len(d) > 1 && !sport {
			d[len(d)-1].New = true
		}
		p.Set("20 kg", d)
		return p
	}
	big := kit.NewDigits(120)
	big.Set("09:12", look.Text)
	left := kit.Column(look.Gap4,
		kit.NewCard("Before the start", strip(-1)),
		kit.NewCard("In the ninth minute", kit.Column(look.Gap4, kit.Tall(150, big), kit.Tall(180, strip(552*time.Second)))),
	)
	right := kit.Column(look.Gap4,
		kit.NewCard("Sport colours", picture(400, 160, true, 25, 25, 20, 15, 10, 5, 2.5, 1, 0.5)),
		kit.NewCard("The theme's own", picture(400, 160, false, 25, 20, 2.5, 1.25)),
		kit.NewCard("In a row", kit.Column(look.Gap2, picture(240, 44, false, 25, 25, 10, 2.5), picture(240, 44, true, 20, 5, 1.25),
			picture(120, 44, false, 25, 25, 25, 25, 20, 10, 5, 2.5, 1.25), picture(240, 44, false))),
	)
	return kit.Room("Floor", kit.Row(look.Gap6, kit.Fill(left), kit.Full(kit.Wide(480, right))))
}

var weekdays = []string{"Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"}

// planned is an invented plan: four main days over lifts that rotate.
func planned(s kit.Spot) kit.WeekCell {
	lifts := map[int][2]string{0: {"Back squat", "Bench press"}, 1: {"Bench press", "Log press"}, 3: {"Deadlift", "Yoke"}, 4: {"Shoulder press", "Axle press"}}
	reps := []string{"5RM", "3RM", "1RM"}[(s.Week+s.Day)%3]
	switch pair, main := lifts[s.Day]; {
	case s.Week == 5 && s.Day == 1:
		return kit.WeekCell{Title: "Log press", Count: "3RM", Sub: "For time, cap 9 min", Kind: kit.MainDay, Shape: kit.Up, Tone: look.Accent}
	case main:
		c := kit.WeekCell{Title: pair[0], Count: reps, Sub: []string{"EMOM 12 min", "AMRAP 10 min", "3 rounds for time"}[(s.Week+s.Day)%3], Kind: kit.MainDay, Shape: kit.Down, Tone: look.ZoneLight, Done: s.Week < 3}
		if s.Day == 1 || s.Day == 4 {
			c.Shape, c.Tone = kit.Up, look.Accent
		}
		if s.Week == 6 && s.Day == 3 {
			c.Breach = "Lower body on neighbouring days: move it to Friday, or swap it with Wednesday."
		}
		return c
	case s.Day == 2:
		return kit.WeekCell{Title: "Recovery", Sub: "Easy row 20 min", Kind: kit.RecoveryDay, Shape: kit.Ring}
	}
	return kit.WeekCell{}
}

func weeksPage(*testing.T) fyne.CanvasObject {
	grid := func(weeks int) *kit.WeekGrid {
		g := kit.NewWeekGrid(weekdays, planned)
		var titles []kit.WeekTitle
		for i := range weeks {
			titles = append(titles, kit.WeekTitle{Title: fmt.Sprint("Week ", i+1), Sub: []string{"2 March", "9 March", "16 March"}[i%3], Now: i == 3})
		}
		g.SetWeeks(titles)
		g.OnMove = func(kit.Spot, kit.Spot, bool) {}
		return g
	}
	side := kit.NewCard("Friday of week 4", kit.NewProse("The five parts of the day stand here, with type-ahead on lifts and movements.", 200))
	return kit.Room("Cycle", kit.Row(look.Gap4, kit.Fill(kit.NewPanel(kit.Pad(look.Gap2, grid(12)))), kit.Full(kit.Wide(340, side))),
		kit.NewSegmented(tracks, 1, nil), kit.NewButton("Check", nil).Key("F5"), kit.NewButton("Hand out", nil).Primary())
}

// trend is an invented season: results, a trend with a band, and a forecast.
func trend() kit.Plot {
	p := kit.Plot{
		Unit: "kg", From: 84, Empty: "No results yet. The first one begins the trend.",
		FormatX: func(x float64) string { return fmt.Sprintf("day %.0f", x) },
		Marks:   []kit.PlotTick{{X: 84, Label: "Today"}, {X: 119, Label: "Test day"}},
	}
	for x := 0.0; x <= 119; x += 7 {
		y := 120 + 0.22*x - 0.0006*x*x
		wide := 2.0 + math.Max(0, x-84)*0.12
		p.Trend = append(p.Trend, kit.TrendPoint{X: x, Y: y, Low: y - wide, High: y + wide})
		p.Ticks = append(p.Ticks, kit.PlotTick{X: x, Label: fmt.Sprint("Week ", int(x/7)+1)})
	}
	shapes := []kit.Shape{kit.Disc, kit.Half, kit.Ring, kit.Cross}
	for i, y := range []float64{119, 123.5, 124, 128, 129.5, 127.5, 134, 133.5, 136} {
		pt := kit.PlotPoint{X: float64(i * 10), Y: y, Shape: shapes[i%4], Label: fmt.Sprintf("%d RM: %.1f kg, day %d", []int{1, 3, 5, 1}[i%4], y, i*10)}
		if pt.Shape == kit.Cross {
			pt.Mark = look.Bad
		}
		p.Points = append(p.Points, pt)
	}
	return p
}

func chartsPage(*testing.T) fyne.CanvasObject {
	big, small, none := kit.NewChart(400, 320), kit.NewChart(300, 180), kit.NewChart(300, 180)
	big.Set(trend())
	few := kit.Plot{
		Unit: "kg", Points: []kit.PlotPoint{{X: 1, Y: 16, Shape: kit.Tick, Mark: look.Good}, {X: 9, Y: 20, Shape: kit.Dash, Mark: look.Warn}, {X: 15, Y: 20, Shape: kit.Tick, Mark: look.Good}, {X: 22, Y: 24, Shape: kit.Cross, Mark: look.Bad}},
		Ticks: []kit.PlotTick{{X: 1, Label: "1 March"}, {X: 15, Label: "15 March"}, {X: 22, Label: "22 March"}},
	}
	small.Set(few)
	none.Set(kit.Plot{Empty: "No results yet. The first one begins the trend."})
	return kit.Room("Charts", kit.Column(look.Gap4, kit.NewCard("Back squat, 1RM", kit.Tall(380, big)),
		kit.Equal(look.Gap4, kit.NewCard("Kettlebell swing", kit.Tall(220, small)), kit.NewCard("Deadlift", kit.Tall(220, none)))))
}
