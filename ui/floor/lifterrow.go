package floor

import (
	"image/color"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"windlass/internal/climb"
	"windlass/internal/clock"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// lifterRow is one lifter at a station while the climb runs: the load now with
// its plates, what to change on the bar, and what comes next.
type lifterRow struct {
	widget.BaseWidget
	athlete gym.ID
	signs   signs
	choose  func(gym.ID)
	ground  *canvas.Rectangle
	stroke  *canvas.Rectangle
	name    *kit.Text
	warning *kit.Mark
	call    *kit.Mark
	load    *kit.Text
	small   *kit.Text // the load where the row is low
	reps    *kit.Text
	picture *kit.PlatePicture
	stack   *kit.Text // the picture in words, where the row is low
	change  *kit.Text
	next    *kit.Text
	other   *kit.Text // the other load of an open window
	shown   string    // all the row's words, which its layout follows
	inner   *fyne.Container
	drawn   string
	plates  bool // there are plates to picture
}

// signs is what marks a row beside the lifter's loads.
type signs struct {
	warning string
	unit    mass.Unit // the gym's
	sport   bool      // discs in the sport's colours
	chosen  bool
	late    bool // a call is late
}

func newLifterRow(choose func(gym.ID)) *lifterRow {
	r := &lifterRow{choose: choose, ground: canvas.NewRectangle(color.Transparent), stroke: canvas.NewRectangle(color.Transparent)}
	r.ground.CornerRadius = look.Radius
	r.name, r.warning = kit.NewStrong("").Shrinks(40), kit.NewMark(kit.NoShape, look.Warn, 12)
	r.call = kit.NewMark(kit.NoShape, look.Muted, 12)
	r.load, r.small, r.reps = kit.NewTitle(""), kit.NewHeading(""), kit.NewCaption("")
	r.picture, r.change = kit.NewPlatePicture(leastPicture, pictureLine), kit.NewCaption("").Shrinks(20)
	r.stack = kit.NewCaption("").Tone(look.Text).Shrinks(40)
	r.next, r.other = kit.NewCaption("").Tone(look.Text), kit.NewCaption("").Tone(look.Warn)
	r.inner = container.New(rowLines{r}, r.warning, r.name, r.call, r.load, r.small, r.reps, r.picture, r.stack, r.change, r.next, r.other)
	r.ExtendBaseWidget(r)
	return r
}

// CreateRenderer implements fyne.Widget.
func (r *lifterRow) CreateRenderer() fyne.WidgetRenderer {
	line := container.NewBorder(nil, nil, container.NewGridWrap(fyne.NewSize(3, 40), r.stroke), nil)
	line.Layout = strokeLayout{}
	line.Objects = []fyne.CanvasObject{r.stroke}
	return widget.NewSimpleRenderer(container.NewStack(r.ground, line, container.New(insetLayout{}, r.inner)))
}

// Refresh draws the row's own ground; its texts refresh themselves.
func (r *lifterRow) Refresh() {
	r.ground.FillColor, r.stroke.FillColor = color.Transparent, color.Transparent
	if r.signs.chosen {
		r.ground.FillColor = look.Color(look.Selection)
		r.stroke.FillColor = look.Color(look.Accent)
	} else if r.signs.late {
		r.stroke.FillColor = look.Color(look.Warn)
	}
	r.ground.Refresh()
	r.stroke.Refresh()
	r.BaseWidget.Refresh()
}

// Tapped implements fyne.Tappable.
func (r *lifterRow) Tapped(*fyne.PointEvent) { r.choose(r.athlete) }

// Cursor implements desktop.Cursorable.
func (r *lifterRow) Cursor() desktop.Cursor { return desktop.PointerCursor }

// set shows a lifter at a moment.
func (r *lifterRow) set(l desk.BoardLifter, m clock.Moment, by signs) {
	before := r.signs
	r.athlete, r.signs = l.Athlete, by
	r.name.SetText(l.Name)
	r.name.Or(l.Short)
	r.warning.Set(shapeIf(by.warning != "", kit.Warning), look.Warn)
	show(r.warning, by.warning != "")
	s := l.Shown(m)
	r.call.Set(callMark(s.Call))
	r.sayLoad(l, s, m)
	r.sayNext(l, s)
	r.arrange()
	if before.chosen != by.chosen || before.late != by.late {
		r.Refresh()
	}
}

func (r *lifterRow) say(load string, tone look.Meaning) {
	r.load.Say(load, tone)
	r.small.Say(load, tone)
}

func (r *lifterRow) sayLoad(l desk.BoardLifter, s desk.Shown, m clock.Moment) {
	switch {
	case l.Fault != nil:
		r.say("–", look.Warn)
		r.reps.SetText("")
		r.draw("", nil)
		r.change.SetText("no load")
	case !s.HasNow:
		r.say(restWord(l, m), look.Muted)
		r.reps.SetText("")
		r.draw("", nil)
		r.change.SetText("")
	default:
		tone := look.Text
		if s.Now.State == climb.Open {
			tone = look.Warn
		}
		r.say(s.Now.Likely().Digits(l.Unit), tone)
		r.reps.SetText(r.unit(l) + times(s.Now.Reps))
		r.draw(l.Bar, s.Now.Discs)
		r.stack.SetText(stackWords(s.Now, l))
		r.stack.Or(strings.ReplaceAll(r.stack.Label(), " ", ""))
		r.change.SetText(changeWords(s.Now, l))
		r.change.Or(strings.ReplaceAll(r.change.Label(), " ", ""))
	}
}

// unit names the unit of a lifter who reads another one than the gym.
func (r *lifterRow) unit(l desk.BoardLifter) string {
	if l.Unit == r.signs.unit {
		return ""
	}
	return string(l.Unit) + " "
}

// draw changes the picture only when the plates change.
func (r *lifterRow) draw(bar string, discs []plates.Disc) {
	var drawn []kit.PlateDisc
	key := bar
	for _, d := range discs {
		p := kit.DiscOf(d.Mass, d.Unit, d.Full, r.signs.sport)
		drawn = append(drawn, p)
		key += " " + p.Label
	}
	if key != r.drawn {
		r.drawn = key
		r.picture.Set("", drawn)
	}
	r.plates = bar != ""
	if !r.plates {
		r.stack.SetText("")
	}
}

func (r *lifterRow) sayNext(l desk.BoardLifter, s desk.Shown) {
	other, next := "", ""
	if s.HasNow && s.Now.State == climb.Open {
		if other = others(l, s.Now, " or "); other != "" {
			other = "or " + other
		}
	}
	switch {
	case other != "" || !s.HasNext:
	case s.Next.State == climb.Open && l.Path.Finding:
		next = "next " + eachCall(l, s.Next)
	case s.Next.State == climb.Open:
		next = "next "
		if also := others(l, s.Next, " / "); also != "" {
			next += also + " / "
		}
		next += s.Next.Likely().Digits(l.Unit)
	default:
		next = "next " + s.Next.Likely().Digits(l.Unit)
	}
	r.other.SetText(other)
	r.next.SetText(next)
}

// arrange lays the row out anew when its words have changed.
func (r *lifterRow) arrange() {
	words := strings.Join([]string{r.name.Label(), r.load.Label(), r.reps.Label(), r.stack.Label(), r.change.Label(), r.next.Label(), r.other.Label(), r.warning.Label(), r.call.Label()}, "|")
	if words != r.shown {
		r.shown = words
		r.inner.Refresh()
	}
}

// strokeLayout keeps the mark of the chosen row at its left edge.
type strokeLayout struct{}

func (strokeLayout) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(3, 0) }

func (strokeLayout) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	for _, o := range objects {
		o.Move(fyne.NewPos(0, 2))
		o.Resize(fyne.NewSize(3, size.Height-4))
	}
}

// insetLayout keeps a row's words off its edges.
type insetLayout struct{}

func (insetLayout) MinSize(objects []fyne.CanvasObject) fyne.Size {
	return objects[0].MinSize().AddWidthHeight(look.Gap3+look.Gap2, look.Gap1)
}

func (insetLayout) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	objects[0].Move(fyne.NewPos(look.Gap3, 2))
	objects[0].Resize(size.SubtractWidthHeight(look.Gap3+look.Gap2, look.Gap1))
}
