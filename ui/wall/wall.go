// Package wall draws the class for the athletes: the clock, who lifts what where,
// the conditioning, and black with the next class when nothing runs.
//
// Most callers need [New] and then [View.Show], for what the file says, and
// [View.Tick], for the second. Letters are sized for the farthest reader by the
// rule of ISO 9241 (see [LetterHeight]), never under 16 minutes of arc where the
// screen has room for one lifter; what does not fit turns its pages, which
// [View.Reading] tells the coach. The package shows the names that athletes chose and
// nothing of their notes or restrictions, which it is not even handed. It reads no
// file, keeps no time and plays no sound.
package wall

import (
	"fmt"
	"image/color"
	"reflect"
	"slices"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"

	"windlass/internal/desk"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// View is the picture of the wall. It belongs to Fyne's thread.
type View struct {
	state  State
	height float64 // of the screen in millimetres
	notice string
	now    time.Time
	size   fyne.Size
	first  time.Time // when the first page of the present round came
	speed  float64   // of the clock

	measured measured
	fit      fit
	work     []workPage
	standing []time.Duration // of the pages of the work
	reading  string          // for the coach
	drawn    drawn
	shown    Face
	ground   *canvas.Rectangle
	sheet    *sheet
	clock    *kit.Digits
	progress *canvas.Rectangle
	content  *fyne.Container
}

// drawn is what the picture shows; an equal one needs no drawing.
type drawn struct {
	scene  Scene
	turn   int
	notice string
	size   fyne.Size
	screen Screen
	pal    look.Palette
}

// New returns a wall on which nothing runs.
func New() *View {
	v := &View{
		ground: canvas.NewRectangle(color.Black), sheet: newSheet(),
		clock: kit.NewDigits(1), progress: canvas.NewRectangle(color.Transparent), speed: 1,
	}
	v.content = container.New(v)
	v.content.Add(v.ground)
	for _, layer := range v.sheet.layers {
		v.content.Add(layer)
	}
	v.content.Add(v.progress)
	v.content.Add(v.clock)
	return v
}

// Content returns the canvas object to show, always the same one.
func (v *View) Content() fyne.CanvasObject { return v.content }

// Show draws what the file says.
func (v *View) Show(s State, now time.Time) {
	v.state = s
	v.Tick(now)
}

// SetHeight tells how high the whole picture is, in millimetres; 0 where nobody
// knows.
func (v *View) SetHeight(millimetres float64) {
	v.height = millimetres
	v.Tick(v.now)
}

// SetSpeed tells how much faster the clock runs than the time in which people read,
// for demonstrations; it is 1 otherwise.
func (v *View) SetSpeed(speed float64) { v.speed = speed }

// Notice shows a sentence for the coach in place of the line of small text, from
// the next tick on; "" takes it away.
func (v *View) Notice(sentence string) { v.notice = sentence }

// Tick draws the present second; what did not change is not touched.
func (v *View) Tick(now time.Time) {
	v.now = now
	if v.size.IsZero() {
		return
	}
	scene, faces := v.state.At(now)
	if v.size != v.drawn.size || v.screen() != v.drawn.screen || !reflect.DeepEqual(scene, v.drawn.scene) {
		v.lay(scene)
	}
	d := drawn{scene, turnAt(v.stands(scene), v.real(now.Sub(v.first))), v.notice, v.size, v.screen(), look.Current()}
	face := v.faceOf(d, faces)
	if same := reflect.DeepEqual(d, v.drawn); same && face == v.shown {
		return
	} else if !same {
		v.drawn = d
		v.paint()
	}
	v.shown = face
	v.face(face)
}

// MinSize implements fyne.Layout: the wall takes what it is given.
func (v *View) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSquareSize(1) }

// Layout implements fyne.Layout.
func (v *View) Layout(_ []fyne.CanvasObject, size fyne.Size) {
	if v.size == size {
		return
	}
	v.size = size
	v.ground.Resize(size)
	for _, layer := range v.sheet.layers {
		layer.Resize(size)
	}
	v.Tick(v.now)
}

// lay sizes everything for what is shown.
func (v *View) lay(scene Scene) {
	switch {
	case scene.Climb != nil:
		m := measure(*scene.Climb, v.state.words())
		if was := v.drawn.scene.Climb; was != nil && was.Present == scene.Climb.Present {
			m = m.wider(v.measured)
		}
		v.measured = m
		wait := waitIn(scene.Climb.Lasts)
		v.relay(fitClimb(m, v.screen(), v.size, wait))
		v.reading = readingOf(m, v.fit, v.screen(), wait)
	case scene.Work != nil:
		was := v.standing
		v.work, v.standing = fitWork(*scene.Work, v.screen(), v.size)
		if v.drawn.scene.Work == nil || !slices.Equal(was, v.standing) {
			v.first = v.now
		}
		v.reading = fmt.Sprintf("The conditioning takes %s.", desk.Count(len(v.work), "page"))
	default:
		v.reading = "No class runs on the wall."
	}
}

// relay takes a new layout. Where its pages are others, the round goes on with the
// page of whoever stood first on the one that was shown: nobody's turn is skipped
// when a rung ends.
func (v *View) relay(f fit) {
	was := v.fit
	v.fit = f
	if reflect.DeepEqual(was.pages, f.pages) && slices.Equal(was.stands, f.stands) {
		return
	}
	page := 0
	if turn := v.drawn.turn; v.drawn.scene.Climb != nil && turn < len(was.pages) && len(was.pages[turn]) > 0 {
		head := was.pages[turn][0][0]
		page = f.pageOf(head.station, head.from)
	}
	v.first = v.now.Add(-time.Duration(float64(sum(f.stands[:page])) * v.speed))
}

// real is a time of the clock as it passes for who reads.
func (v *View) real(passed time.Duration) time.Duration {
	return time.Duration(float64(passed) / v.speed)
}

func (v *View) screen() Screen {
	return Screen{Height: v.height, Viewer: v.state.Book.Settings.Viewer}
}

// stands is how long each page of a scene stands.
func (v *View) stands(s Scene) []time.Duration {
	switch {
	case s.Climb != nil:
		return v.fit.stands
	case s.Work != nil:
		return v.standing
	}
	return nil
}

func (v *View) paint() {
	p := painter{v.sheet, v.drawn.pal}
	p.begin()
	v.ground.FillColor = p.pal[look.Ground]
	switch s := v.drawn.scene; {
	case s.Climb != nil && len(v.fit.pages) > 0:
		p.climb(*s.Climb, v.fit, v.drawn.turn, v.notice)
	case s.Work != nil && len(v.work) > 0:
		p.work(*s.Work, v.work[v.drawn.turn], v.drawn.turn, len(v.work), v.notice)
	case s.Idle != nil:
		v.ground.FillColor = color.Black
		p.idle(*s.Idle, v.screen().believed(), v.size, v.notice)
	}
	v.ground.Refresh()
	p.end()
}

// faceOf is the clock of what is shown.
func (v *View) faceOf(d drawn, faces []Face) Face {
	at := 0
	if d.scene.Work != nil && d.turn < len(v.work) {
		at = v.work[d.turn].index
	}
	if at < len(faces) {
		return faces[at]
	}
	return Face{}
}

// face shows the clock and how far it has come.
func (v *View) face(f Face) {
	frame := v.fit.frame
	if v.drawn.scene.Work != nil && len(v.work) > 0 {
		frame = v.work[v.drawn.turn].fit.frame
	}
	b, margin := frame.band, frame.margin
	if f.Text == "" || b.clock == 0 {
		v.clock.Hide()
		v.progress.Hide()
		return
	}
	area{margin, margin, clockWidth * b.clock, clockHeight * b.clock}.put(v.clock)
	tone := tones[f.Tone]
	if f.Bright {
		tone = look.Ground
	}
	v.clock.Set(f.Text, tone)
	v.clock.Show()
	done := area{margin, margin + clockHeight*b.clock + b.strip*1.25, (v.size.Width - 2*margin) * float32(f.Done), max(2, b.strip*0.25)}
	done.put(v.progress)
	v.progress.FillColor = look.Color(look.Accent)
	v.progress.Show()
	v.progress.Refresh()
}

// tones are the meanings of a clock's colours.
var tones = map[Tone]look.Meaning{Waiting: look.Muted, Going: look.Text, Soon: look.Accent, Held: look.Warn}

// words are the lines that stand beside the clock in the course of a climb.
func (s State) words() []string {
	words := []string{isOver}
	for rung := range s.Board.Class.Climb.Rungs {
		words = append(words, lineOf(s.Board.Class, rung).Text)
	}
	return words
}
