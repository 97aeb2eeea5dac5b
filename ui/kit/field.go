package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"windlass/ui/look"
)

// Field is a labelled line to write in. What is wrong with it stands under it, in
// words; the room for them is kept, so that nothing jumps. A field without a
// label keeps no such room and shows its fault by its outline and a tip.
type Field struct {
	widget.BaseWidget
	name    string
	label   *Text
	entry   *entry
	line    fyne.CanvasObject // the entry as it is drawn
	idle    *Text             // stands for the entry while the field is off
	message *Text
	fault   string
	note    string
	least   float32
	search  bool
	focused bool
	typed   bool // since the owner last wrote
	sheet   *canvas.Rectangle
	glyph   *glyph
	changed func(string)
	left    func()
}

// fieldWidth is the least width of a field unless another is set.
const fieldWidth = 120

// NewField returns an empty line with a label above it.
func NewField(label string) *Field {
	f := &Field{}
	f.init(f, label)
	return f
}

// NewSearch returns a line to search with: a hint instead of a label. Escape empties
// it, and leaves it when it is empty, so that the window's single keys are heard.
func NewSearch(hint string) *Field {
	f := &Field{search: true}
	f.init(f, "")
	f.name = hint
	f.entry.SetPlaceHolder(hint)
	f.OnKey(nil)
	return f
}

// init prepares a field for the widget that is one.
func (f *Field) init(w fyne.Widget, label string) {
	f.name, f.least = label, fieldWidth
	f.label, f.message = NewCaption(label), NewCaption("").Shrinks(0)
	f.entry, f.idle = newEntry(), NewBody("").Tone(look.Muted).Shrinks(0)
	f.entry.OnChanged = func(text string) {
		f.typed = true
		f.SetFault("")
		if f.changed != nil {
			f.changed(text)
		}
	}
	f.entry.onFocus = func(focused bool) {
		f.focused = focused
		f.Refresh()
		f.tellFault()
		if !focused && f.left != nil {
			f.left()
		}
	}
	f.ExtendBaseWidget(w)
}

// escape empties a search, or leaves an empty one to the question or the window
// around it.
func (f *Field) escape(key *fyne.KeyEvent) (used bool) {
	if !f.search || key.Name != fyne.KeyEscape {
		return false
	}
	if f.entry.Text != "" {
		f.entry.SetText("")
		return true
	}
	if c := canvasOf(f.entry); c != nil && c.Overlays().Top() == nil {
		c.Unfocus()
	}
	return false
}

// Hint shows a quiet example while the field is empty.
func (f *Field) Hint(text string) *Field {
	f.entry.SetPlaceHolder(text)
	return f
}

// Called names a field without a label of its own, for tests and for whoever cannot
// see what is beside it.
func (f *Field) Called(name string) *Field {
	f.name = name
	return f
}

// Least sets the least width in units.
func (f *Field) Least(width float32) *Field {
	f.least = width
	return f
}

// Lines makes it a field of several lines, n of them in sight.
func (f *Field) Lines(n int) *Field {
	f.entry.MultiLine = true
	f.entry.Wrapping = fyne.TextWrapWord
	f.entry.SetMinRowsVisible(n)
	return f
}

// Secret hides what is typed.
func (f *Field) Secret() *Field {
	f.entry.Password = true
	return f
}

// OnChange hears of every change of the text.
func (f *Field) OnChange(do func(text string)) *Field {
	f.changed = do
	return f
}

// OnEnter hears the Return key; without it, Return goes to the window.
func (f *Field) OnEnter(do func(text string)) *Field {
	f.entry.onEnter = func() { do(f.entry.Text) }
	return f
}

// OnLeave hears that the keyboard went elsewhere.
func (f *Field) OnLeave(do func()) *Field {
	f.left = do
	return f
}

// OnKey is offered every key before the text is; it returns whether it used it.
func (f *Field) OnKey(do func(*fyne.KeyEvent) (used bool)) *Field {
	f.entry.onKey = func(key *fyne.KeyEvent) bool { return do != nil && do(key) || f.escape(key) }
	return f
}

// Text returns what stands in the field.
func (f *Field) Text() string { return f.entry.Text }

// SetText changes what stands in the field. It is then what the owner has, so that
// Ctrl+Z in it takes back the owner's last change and not the typing before it.
func (f *Field) SetText(text string) {
	if f.entry.Text != text || f.typed {
		f.entry.SetText(text) // which forgets the typing
	}
	f.typed = false
}

// SetFault says under the field what is wrong with it; "" takes that back.
func (f *Field) SetFault(sentence string) {
	if f.fault == sentence {
		return
	}
	f.fault = sentence
	f.Refresh()
	f.tellFault()
}

// tellFault shows a fault that has no room under the field whole in a tip, while
// the coach is writing there: the end of the sentence says what would mend it.
func (f *Field) tellFault() {
	HideTip(f.entry)
	if f.focused && f.faultIsCut() {
		showTip(f.entry, f.fault)
	}
}

func (f *Field) faultIsCut() bool {
	return f.label.text == "" || widthOf(f.fault, look.CaptionSize, false) > f.message.Size().Width
}

// Fault returns what the field says is wrong with it.
func (f *Field) Fault() string { return f.fault }

// SetNote says something quiet under the field while nothing is wrong.
func (f *Field) SetNote(sentence string) {
	if f.note == sentence {
		return
	}
	f.note = sentence
	f.Refresh()
}

// Able switches the field on or off. Off, its text can be read but not reached.
func (f *Field) Able(yes bool) {
	shown(f.entry, yes)
	f.Refresh()
}

// Open reports whether the field can be written in.
func (f *Field) Open() bool { return f.entry.Visible() }

// MouseIn implements desktop.Hoverable: a fault that is cut short is told whole.
func (f *Field) MouseIn(*desktop.MouseEvent) { showTip(f.entry, f.fault) }

// MouseMoved implements desktop.Hoverable.
func (f *Field) MouseMoved(*desktop.MouseEvent) {}

// MouseOut implements desktop.Hoverable.
func (f *Field) MouseOut() { HideTip(f.entry) }

// Focus gives the field the keyboard.
func (f *Field) Focus() { Focus(f.entry) }

// InputName is what the coach reads beside the field.
func (f *Field) InputName() string { return f.name }

// Keyboard is what takes the typing.
func (f *Field) Keyboard() fyne.Focusable { return f.entry }

// CreateRenderer implements fyne.Widget.
func (f *Field) CreateRenderer() fyne.WidgetRenderer {
	f.sheet, f.glyph = box(look.Radius), newGlyph()
	f.line = f.entry
	if !f.entry.MultiLine {
		f.line = container.NewThemeOverride(f.entry, barless{})
	}
	objects := append([]fyne.CanvasObject{f.label, f.sheet}, f.glyph.objects...)
	return (&drawing{
		of: f, objects: append(objects, f.line, f.idle, f.message),
		place: f.place, measure: f.measure, paint: f.paint,
	}).start()
}

// above and below are the heights of the label and of the line for faults.
func (f *Field) above() float32 {
	if f.label.text == "" {
		return 0
	}
	return lineOf(look.CaptionSize) + look.Gap1
}

func (f *Field) below() float32 { return f.above() }

func (f *Field) measure() fyne.Size {
	inner := look.ControlHeight
	if f.entry.MultiLine {
		inner = f.entry.MinSize().Height
	}
	return fyne.NewSize(max(f.least, f.label.MinSize().Width), f.above()+inner+f.below())
}

func (f *Field) place(size fyne.Size) {
	above, inner := f.above(), size.Height-f.above()-f.below()
	put(f.label, 0, 0, size.Width, above)
	put(f.sheet, 0, above, size.Width, inner)
	inset := float32(0)
	if f.search {
		inset = look.Gap6
		f.glyph.put(look.Gap3, above+(inner-14)/2, 14)
	}
	put(f.line, inset, above, size.Width-inset, inner)
	put(f.idle, inset+look.Gap2, above, size.Width-inset-2*look.Gap2, inner)
	put(f.message, 0, above+inner+look.Gap1, size.Width, lineOf(look.CaptionSize))
	shown(f.message, above > 0)
	shown(f.label, above > 0)
}

func (f *Field) paint() {
	p := look.Current()
	edge, width := p[look.Edge], look.Hairline
	switch {
	case f.fault != "":
		edge, width = p[look.Bad], look.RingWidth
	case f.focused:
		edge, width = p[look.Focus], look.RingWidth
	}
	ground := p[look.Ground]
	if !f.entry.Visible() {
		ground, edge = p[look.Surface], p[look.Line]
		f.idle.SetText(f.entry.Text)
	}
	shown(f.idle, !f.entry.Visible())
	outline(f.sheet, ground, edge, width)
	if f.search {
		f.glyph.set(Magnifier, p[look.Muted])
	}
	if f.fault != "" {
		f.message.Say(f.fault, look.Bad)
	} else {
		f.message.Say(f.note, look.Muted)
	}
}
