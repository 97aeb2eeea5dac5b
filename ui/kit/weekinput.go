package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
)

// FocusGained implements fyne.Focusable.
func (g *WeekGrid) FocusGained() {
	g.focused = true
	g.Refresh()
}

// FocusLost implements fyne.Focusable.
func (g *WeekGrid) FocusLost() {
	g.focused = false
	g.Refresh()
}

// TypedRune implements fyne.Focusable.
func (g *WeekGrid) TypedRune(r rune) { PassRune(g, r) }

// steps are the days that the arrows lead to.
var steps = map[fyne.KeyName]Spot{
	fyne.KeyUp: {-1, 0}, fyne.KeyDown: {1, 0}, fyne.KeyLeft: {0, -1}, fyne.KeyRight: {0, 1},
}

// TypedKey implements fyne.Focusable.
func (g *WeekGrid) TypedKey(key *fyne.KeyEvent) {
	if g.OnKey != nil && g.OnKey(key) {
		return
	}
	to, moves := g.target(key.Name)
	switch {
	case moves:
		g.move(to, modifiers()&fyne.KeyModifierShift != 0)
	case key.Name == fyne.KeyReturn || key.Name == fyne.KeyEnter:
		g.open(g.cursor)
	case key.Name == fyne.KeyDelete || key.Name == fyne.KeyBackspace:
		call(g.OnDelete)
	case key.Name == fyne.KeyEscape && g.anchor != g.cursor:
		g.move(g.cursor, false)
	default:
		PassKey(g, key)
	}
}

// target is the day that a key moves the cursor to.
func (g *WeekGrid) target(key fyne.KeyName) (Spot, bool) {
	c := g.cursor
	switch key {
	case fyne.KeyHome:
		return Spot{c.Week, 0}, true
	case fyne.KeyEnd:
		return Spot{c.Week, len(g.days) - 1}, true
	case fyne.KeyPageUp:
		return Spot{c.Week - g.inSight() + 1, c.Day}, true
	case fyne.KeyPageDown:
		return Spot{c.Week + g.inSight() - 1, c.Day}, true
	}
	step, ok := steps[key]
	return Spot{c.Week + step.Week, c.Day + step.Day}, ok
}

// TypedShortcut implements fyne.Shortcutable.
func (g *WeekGrid) TypedShortcut(s fyne.Shortcut) {
	switch s := s.(type) {
	case *fyne.ShortcutCopy:
		call(g.OnCopy)
	case *fyne.ShortcutCut:
		call(g.OnCut)
	case *fyne.ShortcutPaste:
		call(g.OnPaste)
	case *desktop.CustomShortcut:
		if step, ok := steps[s.KeyName]; ok && s.Modifier == fyne.KeyModifierShortcutDefault {
			g.shift(step)
			return
		}
		PassShortcut(g, s)
	default:
		PassShortcut(g, s)
	}
}

func call(f func()) {
	if f != nil {
		f()
	}
}

func (g *WeekGrid) open(s Spot) {
	if g.OnOpen != nil && len(g.weeks) > 0 {
		g.OnOpen(s)
	}
}

// MouseDown implements desktop.Mouseable.
func (g *WeekGrid) MouseDown(e *desktop.MouseEvent) {
	Focus(g)
	if s := g.at(e.Position); s != nowhere {
		g.move(s, e.Modifier&fyne.KeyModifierShift != 0)
	}
}

// MouseUp implements desktop.Mouseable.
func (g *WeekGrid) MouseUp(*desktop.MouseEvent) {}

// DoubleTapped implements fyne.DoubleTappable.
func (g *WeekGrid) DoubleTapped(e *fyne.PointEvent) {
	if s := g.at(e.Position); s != nowhere {
		g.open(s)
	}
}

// Dragged implements fyne.Draggable: the day under the cursor is taken along.
func (g *WeekGrid) Dragged(e *fyne.DragEvent) {
	if !g.pulled {
		// The press moved the cursor, unless it fell beside the days.
		start := g.at(e.Position.SubtractXY(e.Dragged.DX, e.Dragged.DY))
		if start == nowhere || g.OnMove == nil {
			return
		}
		g.pulled = true
	}
	if to := g.at(e.Position); to != g.drag {
		g.drag = to
		g.Refresh()
	}
}

// DragEnd implements fyne.Draggable.
func (g *WeekGrid) DragEnd() {
	from, to, pulled := g.cursor, g.drag, g.pulled
	g.pulled, g.drag = false, nowhere
	g.Refresh()
	if !pulled || to == nowhere || to == from {
		return
	}
	g.OnMove(from, to, modifiers()&fyne.KeyModifierShortcutDefault != 0)
	g.move(to, false)
}

// Scrolled implements fyne.Scrollable: whole weeks at a time.
func (g *WeekGrid) Scrolled(e *fyne.ScrollEvent) {
	g.rest -= e.Scrolled.DY / g.rowHeight()
	by := int(g.rest)
	g.rest -= float32(by)
	if by != 0 {
		g.top = max(0, min(g.top+by, len(g.weeks)-g.inSight()))
		g.Refresh()
	}
}

// MouseIn implements desktop.Hoverable.
func (g *WeekGrid) MouseIn(e *desktop.MouseEvent) { g.MouseMoved(e) }

// MouseMoved implements desktop.Hoverable: a day with a breach tells which.
func (g *WeekGrid) MouseMoved(e *desktop.MouseEvent) {
	s := g.at(e.Position)
	if s == g.over {
		return
	}
	HideTip(g)
	g.over = s
	g.Refresh()
	if s == nowhere {
		return
	}
	if breach := g.cell(s).Breach; breach != "" {
		showTip(g.face.at(s).ground, breach)
	}
}

// MouseOut implements desktop.Hoverable.
func (g *WeekGrid) MouseOut() {
	HideTip(g)
	g.over = nowhere
	g.Refresh()
}
