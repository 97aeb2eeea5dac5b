package floor

import (
	"image/color"
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// seatBoard is who stands at which station; a name is dragged to another one, or
// moved there by the station's number.
type seatBoard struct {
	setUp *setUp
	tiles []*seatTile
	grid  *fyne.Container
	moves *kit.Text
	small *kit.Toggle
	key   fyne.CanvasObject // what the mark of an estimate means
	all   fyne.CanvasObject
}

// seatTile is one station.
type seatTile struct {
	name, what *kit.Text
	seats      []*seat
	list       *fyne.Container
	station    int
	all        fyne.CanvasObject
}

func newSeatBoard(s *setUp) *seatBoard {
	b := &seatBoard{setUp: s, moves: kit.NewCaption("")}
	b.grid = container.New(tileLayout{})
	share := kit.NewButton("Share anew", s.share).Key("F6")
	b.small = kit.NewToggle("Plates under 1 kg on top rungs only (F11)", false, func(yes bool) { s.floor.keepSmall(yes) })
	b.key = kit.Row(look.Gap2, kit.NewMark(kit.Diamond, look.Muted, 12), kit.Fill(kit.NewCaption("counted from an estimate, until there is a result").Shrinks(80)))
	besideBar := kit.Wide(look.Gap3, kit.Column(0)) // no tile lies under the scroll bar
	b.all = kit.NewCard("Stations", kit.Column(look.Gap2, kit.Fill(kit.Scroll(kit.Row(0, kit.Fill(b.grid), besideBar))), b.key, b.small), b.moves, share)
	return b
}

func (b *seatBoard) refresh() {
	f := b.setUp.floor
	show(b.small, f.desk().SmallPlates())
	b.small.Set(!f.desk().Settings().SmallAll)
	show(b.key, slices.ContainsFunc(f.board.Lifters(), func(l desk.BoardLifter) bool { return l.Source == gym.Estimate }))
	stations := f.board.Stations
	n := len(stations) + 1
	for len(b.tiles) < n {
		b.tiles = append(b.tiles, newSeatTile())
	}
	if len(b.grid.Objects) != n {
		b.grid.Objects = nil
		for _, t := range b.tiles[:n] {
			b.grid.Objects = append(b.grid.Objects, t.all)
		}
	}
	b.tiles[0].set(b, -1, "0  No station", "", f.board.Bench)
	show(b.tiles[0].all, len(f.board.Bench) > 0)
	for i, s := range stations {
		b.tiles[i+1].set(b, i, itoa(i+1)+"  "+s.Name, b.purpose(s), s.Lifters)
	}
	b.grid.Refresh()
}

// purpose is what is lifted at a station, with the bar where it is not the
// station's own.
func (b *seatBoard) purpose(s desk.BoardStation) string {
	if len(s.Lifters) == 0 {
		return s.Bar
	}
	e := b.setUp.floor.desk().Book().Equipment
	if own, _ := e.Bar(e.Stations[s.Index].Bar); own.Name == s.Bar {
		return s.Lifters[0].Lift
	}
	return s.Lifters[0].Lift + " · " + s.Bar
}

func newSeatTile() *seatTile {
	t := &seatTile{name: kit.NewStrong("").Shrinks(40), what: kit.NewCaption("").Shrinks(40), list: kit.Column(0)}
	head := kit.Column(0, t.name, t.what)
	t.all = kit.NewPanel(kit.Column(0, kit.Pad(look.Gap2-2, head), kit.NewRule(), t.list, kit.Fill()))
	return t
}

func (t *seatTile) set(b *seatBoard, station int, name, what string, lifters []desk.BoardLifter) {
	t.station = station
	t.name.SetText(name)
	t.what.SetText(what)
	for len(t.seats) < len(lifters) {
		t.seats = append(t.seats, newSeat(b))
	}
	if len(t.list.Objects) != len(lifters) {
		t.list.Objects = nil
		for i := range lifters {
			t.list.Objects = append(t.list.Objects, t.seats[i])
		}
	}
	for i, l := range lifters {
		t.seats[i].set(l, l.Athlete == b.setUp.chosen)
	}
	t.list.Refresh()
}

// drop moves a lifter to the station under a place of the window.
func (b *seatBoard) drop(athlete gym.ID, at fyne.Position) {
	driver := fyne.CurrentApp().Driver()
	for _, t := range b.tiles {
		from := driver.AbsolutePositionForObject(t.all)
		to := from.Add(t.all.Size())
		if t.all.Visible() && at.X >= from.X && at.Y >= from.Y && at.X < to.X && at.Y < to.Y {
			b.setUp.move(athlete, t.station)
			return
		}
	}
}

// seat is a lifter's name at a station.
type seat struct {
	widget.BaseWidget
	board   *seatBoard
	athlete gym.ID
	chosen  bool
	at      fyne.Position // of the pointer while the name is dragged
	drags   bool
	ground  *canvas.Rectangle
	name    *kit.Text
	load    *kit.Text
	mark    *kit.Mark
}

func newSeat(b *seatBoard) *seat {
	s := &seat{board: b, ground: canvas.NewRectangle(color.Transparent), name: kit.NewBody("").Shrinks(40), load: kit.NewCaption("")}
	s.mark = kit.NewMark(kit.NoShape, look.Warn, 12)
	s.ground.CornerRadius = look.Radius
	s.ExtendBaseWidget(s)
	return s
}

// CreateRenderer implements fyne.Widget.
func (s *seat) CreateRenderer() fyne.WidgetRenderer {
	words := kit.Row(look.Gap1, kit.Fill(kit.Column(0, kit.Fill(), s.name, kit.Fill())), s.mark, s.load)
	return widget.NewSimpleRenderer(container.NewStack(s.ground, container.New(insetLayout{}, words)))
}

// Refresh implements fyne.Widget.
func (s *seat) Refresh() {
	s.ground.FillColor = color.Transparent
	if s.chosen || s.drags {
		s.ground.FillColor = look.Color(look.Selection)
	}
	s.ground.Refresh()
	s.BaseWidget.Refresh()
}

func (s *seat) set(l desk.BoardLifter, chosen bool) {
	s.athlete = l.Athlete
	s.name.SetText(l.Name)
	s.name.Or(l.Short)
	s.mark.Set(seatMark(l))
	show(s.mark, l.Fault != nil || l.Source == gym.Estimate)
	s.load.Say(baseWords(l), toneIf(l.Fault != nil, look.Warn, look.Muted))
	if s.chosen != chosen {
		s.chosen = chosen
		s.Refresh()
	}
}

// seatMark warns of a lifter without loads, and tells an estimate from a record.
func seatMark(l desk.BoardLifter) (kit.Shape, look.Meaning) {
	if l.Fault != nil {
		return kit.Warning, look.Warn
	}
	return shapeIf(l.Source == gym.Estimate, kit.Diamond), look.Muted
}

// baseWords is what a lifter's climb is counted from, short.
func baseWords(l desk.BoardLifter) string {
	switch {
	case l.Lift == "":
		return "no lift"
	case l.Base > 0:
		return l.Base.In(l.Unit)
	case l.Start > 0:
		return "from " + l.Start.In(l.Unit)
	}
	return "no number"
}

// Tapped implements fyne.Tappable.
func (s *seat) Tapped(*fyne.PointEvent) { s.board.setUp.choose(s.athlete) }

// Cursor implements desktop.Cursorable.
func (s *seat) Cursor() desktop.Cursor { return desktop.PointerCursor }

// Dragged implements fyne.Draggable.
func (s *seat) Dragged(e *fyne.DragEvent) {
	s.at = e.AbsolutePosition
	if !s.drags {
		s.drags = true
		s.Refresh()
	}
}

// DragEnd implements fyne.Draggable.
func (s *seat) DragEnd() {
	s.drags = false
	s.Refresh()
	s.board.drop(s.athlete, s.at)
}

// tileLayout sets tiles in two columns, each as tall as it needs and no less than
// its neighbour.
type tileLayout struct{}

func (tileLayout) MinSize(objects []fyne.CanvasObject) fyne.Size {
	height := float32(0)
	eachPair(objects, func(_, _ fyne.CanvasObject, tall float32) { height += tall + look.Gap2 })
	return fyne.NewSize(360, max(0, height-look.Gap2))
}

func (tileLayout) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	width, y := (size.Width-look.Gap2)/2, float32(0)
	eachPair(objects, func(a, b fyne.CanvasObject, tall float32) {
		a.Move(fyne.NewPos(0, y))
		a.Resize(fyne.NewSize(width, tall))
		if b != nil {
			b.Move(fyne.NewPos(width+look.Gap2, y))
			b.Resize(fyne.NewSize(width, tall))
		}
		y += tall + look.Gap2
	})
}

// leastTile keeps an empty station large enough to drop a name on.
const leastTile = 104

func eachPair(objects []fyne.CanvasObject, do func(a, b fyne.CanvasObject, tall float32)) {
	var seen []fyne.CanvasObject
	for _, o := range objects {
		if o.Visible() {
			seen = append(seen, o)
		}
	}
	for i := 0; i < len(seen); i += 2 {
		a, tall := seen[i], max(leastTile, seen[i].MinSize().Height)
		var b fyne.CanvasObject
		if i+1 < len(seen) {
			b = seen[i+1]
			tall = max(tall, b.MinSize().Height)
		}
		do(a, b, tall)
	}
}
