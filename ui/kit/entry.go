package kit

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// entry is Fyne's text entry with ears: it tells of the keyboard coming and
// going, offers every key to its owner first, and hands what no text needs to
// the window.
type entry struct {
	widget.Entry
	onFocus func(focused bool)
	onKey   func(*fyne.KeyEvent) (used bool)
	onEnter func()
	all     bool // mark everything when the keyboard comes, to be typed over
	has     bool // the keyboard
	came    bool // with the pointer that is still down
}

func newEntry() *entry {
	e := &entry{}
	e.Wrapping = fyne.TextWrap(fyne.TextTruncateClip)
	e.ExtendBaseWidget(e)
	return e
}

// CreateRenderer implements fyne.Widget. Fyne's own box and ring stay out of
// sight: the field around the entry draws them, over its icon too.
func (e *entry) CreateRenderer() fyne.WidgetRenderer {
	made := e.Entry.CreateRenderer()
	for _, o := range made.Objects() {
		if box, ok := o.(*canvas.Rectangle); ok {
			box.Hide()
		}
	}
	return made
}

// FocusGained implements fyne.Focusable.
func (e *entry) FocusGained() {
	e.Entry.FocusGained()
	e.has = true
	e.markAll()
	if e.onFocus != nil {
		e.onFocus(true)
	}
}

func (e *entry) markAll() {
	if e.all && e.Text != "" {
		e.Entry.TypedShortcut(&fyne.ShortcutSelectAll{})
	}
}

// MouseDown implements desktop.Mouseable.
func (e *entry) MouseDown(m *desktop.MouseEvent) {
	had := e.has
	e.Entry.MouseDown(m)
	e.came = !had && e.has && m.Button == desktop.MouseButtonPrimary
}

// MouseUp implements desktop.Mouseable. The click that brought the keyboard has put
// the cursor where it was, and taken the mark away.
func (e *entry) MouseUp(m *desktop.MouseEvent) {
	e.Entry.MouseUp(m)
	if e.came && e.SelectedText() == "" {
		e.markAll()
	}
	e.came = false
}

// FocusLost implements fyne.Focusable.
func (e *entry) FocusLost() {
	e.Entry.FocusLost()
	e.has = false
	if e.onFocus != nil {
		e.onFocus(false)
	}
}

// TypedKey implements fyne.Focusable.
func (e *entry) TypedKey(key *fyne.KeyEvent) {
	if e.onKey != nil && e.onKey(key) {
		return
	}
	enter := key.Name == fyne.KeyReturn || key.Name == fyne.KeyEnter
	switch {
	case enter && !e.MultiLine && e.onEnter != nil:
		e.onEnter()
	case enter && !e.MultiLine, key.Name == fyne.KeyEscape, functionKeys[key.Name]:
		PassKey(e, key)
	default:
		e.Entry.TypedKey(key)
	}
}

// AcceptsTab implements fyne.Tabbable: Tab always leads on, also out of a field of
// several lines, so that the keyboard cannot be trapped (WCAG 2.2, 2.1.2).
func (e *entry) AcceptsTab() bool { return false }

// functionKeys never write a character.
var functionKeys = map[fyne.KeyName]bool{
	fyne.KeyF1: true, fyne.KeyF2: true, fyne.KeyF3: true, fyne.KeyF4: true,
	fyne.KeyF5: true, fyne.KeyF6: true, fyne.KeyF7: true, fyne.KeyF8: true,
	fyne.KeyF9: true, fyne.KeyF10: true, fyne.KeyF11: true, fyne.KeyF12: true,
}

// TypedShortcut implements fyne.Shortcutable. Ctrl+Z and Ctrl+Y belong to what was
// written here for as long as there is some, and to the gym's records after that.
func (e *entry) TypedShortcut(s fyne.Shortcut) {
	switch s.(type) {
	case *fyne.ShortcutUndo, *fyne.ShortcutRedo:
		before := e.Text
		if e.Entry.TypedShortcut(s); e.Text == before {
			PassShortcut(e, s)
		}
		return
	}
	if custom, ok := s.(*desktop.CustomShortcut); ok && !editKeys[custom.KeyName] {
		PassShortcut(e, s)
		return
	}
	e.Entry.TypedShortcut(s)
}

// editKeys are those that, with a modifier, still belong to the text.
var editKeys = map[fyne.KeyName]bool{
	fyne.KeyLeft: true, fyne.KeyRight: true, fyne.KeyUp: true, fyne.KeyDown: true,
	fyne.KeyHome: true, fyne.KeyEnd: true, fyne.KeyBackspace: true, fyne.KeyDelete: true,
}

// barless is the theme without scroll bars: in one line to write in, a bar would lie
// across what stands there.
type barless struct{}

// now is the theme of the program, which the coach may change while it runs.
func (barless) now() fyne.Theme { return fyne.CurrentApp().Settings().Theme() }

func (b barless) Color(name fyne.ThemeColorName, v fyne.ThemeVariant) color.Color {
	return b.now().Color(name, v)
}

func (b barless) Font(style fyne.TextStyle) fyne.Resource { return b.now().Font(style) }

func (b barless) Icon(name fyne.ThemeIconName) fyne.Resource { return b.now().Icon(name) }

func (b barless) Size(name fyne.ThemeSizeName) float32 {
	switch name {
	case theme.SizeNameScrollBar, theme.SizeNameScrollBarSmall:
		return 0
	}
	return b.now().Size(name)
}
