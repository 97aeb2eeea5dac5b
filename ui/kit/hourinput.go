package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
)

// FocusGained implements fyne.Focusable.
func (g *HourGrid) FocusGained() {
	g.focused = true
	g.Refresh()
	call(g.OnFocus)
}

// FocusLost implements fyne.Focusable.
func (g *HourGrid) FocusLost() {
	g.focused = false
	g.Refresh()
}

// TypedRune implements fyne.Focusable.
func (g *HourGrid) TypedRune(r rune) { PassRune(g, r) }

// TypedKey implements fyne.Focusable.
func (g *HourGrid) TypedKey(key *fyne.KeyEvent) {
	switch key.Name {
	case fyne.KeyUp, fyne.KeyDown, fyne.KeyLeft, fyne.KeyRight:
		g.move(g.target(key.Name))
	case fyne.KeyHome:
		g.move(0)
	case fyne.KeyEnd:
		g.move(len(g.blocks) - 1)
	case fyne.KeyReturn, fyne.KeyEnter:
		g.open(g.Cursor())
	default:
		PassKey(g, key)
	}
}

// target is the block that an arrow leads to: the one before or after on the same
// day, or the nearest hour of the next day that has one.
func (g *HourGrid) target(key fyne.KeyName) int {
	if len(g.blocks) == 0 {
		return -1
	}
	here := g.blocks[g.cursor]
	best, least := g.cursor, -1
	for i, b := range g.blocks {
		if far, ok := apartBy(key, here, b, len(g.days)); ok && i != g.cursor && (least < 0 || far < least) {
			best, least = i, far
		}
	}
	return best
}

// apartBy is how far a block lies in the direction of an arrow, in minutes; a day
// counts more than all of its hours.
func apartBy(key fyne.KeyName, from, to HourBlock, days int) (far int, ok bool) {
	const whole = 24 * 60
	by := to.Start - from.Start
	switch key {
	case fyne.KeyUp:
		return -by, to.Day == from.Day && by < 0
	case fyne.KeyDown:
		return by, to.Day == from.Day && by > 0
	case fyne.KeyLeft:
		return whole*(from.Day-to.Day) + max(by, -by), to.Day < from.Day
	}
	return whole*(to.Day-from.Day) + max(by, -by), to.Day > from.Day && to.Day < days
}

func (g *HourGrid) move(block int) {
	if block < 0 || block >= len(g.blocks) || block == g.cursor {
		return
	}
	g.cursor = block
	g.Refresh()
	if g.OnCursor != nil {
		g.OnCursor(block)
	}
}

func (g *HourGrid) open(block int) {
	if g.OnOpen != nil && block >= 0 {
		g.OnOpen(block)
	}
}

// shifts are what Ctrl and an arrow move a block by, in days and minutes.
var shifts = map[fyne.KeyName][2]int{
	fyne.KeyLeft: {-1, 0}, fyne.KeyRight: {1, 0}, fyne.KeyUp: {0, -hourStep}, fyne.KeyDown: {0, hourStep},
}

// TypedShortcut implements fyne.Shortcutable.
func (g *HourGrid) TypedShortcut(s fyne.Shortcut) {
	if custom, ok := s.(*desktop.CustomShortcut); ok && custom.Modifier == fyne.KeyModifierShortcutDefault {
		if by, known := shifts[custom.KeyName]; known {
			if g.OnShift != nil && g.Cursor() >= 0 {
				g.OnShift(g.Cursor(), by[0], by[1])
			}
			return
		}
	}
	PassShortcut(g, s)
}

// MouseDown implements desktop.Mouseable.
func (g *HourGrid) MouseDown(e *desktop.MouseEvent) {
	Focus(g)
	g.move(g.at(e.Position))
}

// MouseUp implements desktop.Mouseable.
func (g *HourGrid) MouseUp(*desktop.MouseEvent) {}

// DoubleTapped implements fyne.DoubleTappable.
func (g *HourGrid) DoubleTapped(e *fyne.PointEvent) { g.open(g.at(e.Position)) }

// MouseIn implements desktop.Hoverable.
func (g *HourGrid) MouseIn(e *desktop.MouseEvent) { g.MouseMoved(e) }

// MouseMoved implements desktop.Hoverable: a block tells in full what it is.
func (g *HourGrid) MouseMoved(e *desktop.MouseEvent) {
	over := g.at(e.Position)
	if over == g.over {
		return
	}
	HideTip(g)
	g.over = over
	g.Refresh()
	if over >= 0 {
		b := g.blocks[over]
		showTip(g.face.blocks[over].ground, hourText(b.Start)+"–"+hourText(b.Start+b.Minutes)+"  "+b.Title+", "+b.Sub)
	}
}

// MouseOut implements desktop.Hoverable.
func (g *HourGrid) MouseOut() {
	HideTip(g)
	g.over = -1
	g.Refresh()
}
