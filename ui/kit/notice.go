package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"windlass/ui/look"
)

// Notice is the one line at a window's foot that says what just happened. It
// stays until the next thing happens; nothing on it is in a hurry.
type Notice struct {
	widget.BaseWidget
	mark  *Mark
	text  *Text
	undo  *Button
	close *Button
	line  *fyne.Container
	step  func()
	fails int  // complaints made so far
	stood bool // the line is a complaint
}

// NewNotice returns an empty line.
func NewNotice() *Notice {
	n := &Notice{mark: NewMark(NoShape, look.Muted, 12), text: NewBody("").Shrinks(120)}
	n.undo = NewButton("Undo", n.takeBack).Plain().Key("Ctrl+Z")
	n.close = NewButton("", n.Clear).Plain().Mark(Cross).Tip("Clear this line")
	n.line = Row(look.Gap2, n.mark, Fill(n.text), n.undo, n.close)
	n.Clear()
	n.ExtendBaseWidget(n)
	return n
}

// Say shows a sentence. One with undo, which is offered as a button, tells what was
// done and has the tick; another only tells how things stand.
func (n *Notice) Say(sentence string, undo func()) {
	if undo == nil {
		n.say(sentence, Ring, look.Muted, nil)
		return
	}
	n.say(sentence, Tick, look.Good, undo)
}

// Warn shows a sentence that a coach should not miss.
func (n *Notice) Warn(sentence string) { n.say(sentence, Warning, look.Warn, nil) }

// Fail shows why something did not happen. It does nothing for no error, so a
// call cannot show an empty complaint.
func (n *Notice) Fail(err error) {
	if err == nil {
		return
	}
	n.say(Sentence(err), Cross, look.Bad, nil)
	n.fails, n.stood = n.fails+1, true
}

// Complaint returns the number of the complaint that stands on the line, and 0 for
// none; [Notice.Forget] takes it.
func (n *Notice) Complaint() int {
	if !n.stood {
		return 0
	}
	return n.fails
}

// Forget takes a complaint away if it still stands and was not made again.
func (n *Notice) Forget(complaint int) {
	if n.stood && complaint == n.fails {
		n.Clear()
	}
}

// Clear empties the line.
func (n *Notice) Clear() { n.say("", NoShape, look.Muted, nil) }

func (n *Notice) say(sentence string, s Shape, tone look.Meaning, undo func()) {
	n.step, n.stood = undo, false
	n.mark.Set(s, tone)
	n.text.SetText(sentence)
	shown(n.undo, undo != nil)
	shown(n.close, sentence != "")
	n.line.Refresh()
}

// takeBack forgets the step before taking it back, so it cannot go back twice.
func (n *Notice) takeBack() {
	step := n.step
	n.Clear()
	if step != nil {
		step()
	}
}

// CreateRenderer implements fyne.Widget.
func (n *Notice) CreateRenderer() fyne.WidgetRenderer {
	return (&drawing{
		of: n, objects: []fyne.CanvasObject{n.line},
		place: func(size fyne.Size) {
			put(n.line, look.Gap4, 0, size.Width-look.Gap4-look.Gap2, size.Height)
		},
		measure: func() fyne.Size {
			return fyne.NewSize(n.line.MinSize().Width+look.Gap4+look.Gap2, look.ControlHeight)
		},
	}).start()
}
