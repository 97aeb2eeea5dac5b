package kit

import (
	"strings"
	"time"

	"fyne.io/fyne/v2"
)

// Option is one thing that can be chosen.
type Option struct {
	Key  string // what the program knows it by
	Text string // what the coach reads and types
	Note string // a quiet word beside it; may be empty
}

// Choice is a field that chooses one from a list by typing a part of its name.
// The list needs a [Shell] around the window's content to be drawn on.
type Choice struct {
	Field
	options []Option
	chosen  Option
	heard   func(Option)
	drop    *dropList
	passes  bool // Escape goes on to the question, also from an open list
	acts    bool // to choose is to do something
	refused bool // what stands in the field is no choice
}

// NewChoice returns a field that chooses one of the options; heard, if not nil,
// hears of every choice that a coach makes.
func NewChoice(label string, options []Option, heard func(Option)) *Choice {
	c := &Choice{options: options, heard: heard}
	c.init(c, label)
	c.drop = newDropList(c.pick, c.settleUnlessTyping)
	c.entry.all = true
	c.entry.onKey = c.key
	c.changed = func(string) {
		c.refused = false
		c.open()
	}
	c.entry.onFocus = c.onFocus
	return c
}

// Hint shows a quiet example while the field is empty.
func (c *Choice) Hint(text string) *Choice {
	c.Field.Hint(text)
	return c
}

// Least sets the least width in units.
func (c *Choice) Least(width float32) *Choice {
	c.Field.Least(width)
	return c
}

// PassEscape lets one Escape leave the question that the choice is in; else the
// first closes the list.
func (c *Choice) PassEscape() *Choice {
	c.passes = true
	return c
}

// Acts is for a choice that does something at once: only Enter and the pointer
// choose, and leaving the field chooses nothing.
func (c *Choice) Acts() *Choice {
	c.acts = true
	return c
}

// SetOptions changes what there is to choose from. A choice that is not among
// them any more stays until another is made.
func (c *Choice) SetOptions(options []Option) { c.options = options }

// Set chooses by key without telling anybody; a key that is none empties the
// field.
func (c *Choice) Set(key string) {
	c.chosen = Option{}
	for _, o := range c.options {
		if o.Key == key {
			c.chosen = o
		}
	}
	c.back()
}

// back shows the choice again in place of what was typed.
func (c *Choice) back() {
	if c.refused {
		c.refused = false
		c.SetFault("")
	}
	c.write(c.chosen.Text)
}

// Chosen returns the choice, and whether there is one: none while the field shows a
// text that it refuses.
func (c *Choice) Chosen() (Option, bool) {
	if c.refused {
		return Option{}, false
	}
	return c.chosen, c.chosen.Key != ""
}

// write shows a text without opening the list.
func (c *Choice) write(text string) {
	heard := c.changed
	c.changed = nil
	c.SetText(text)
	c.changed = heard
}

func (c *Choice) onFocus(focused bool) {
	c.focused = focused
	c.Refresh()
	switch {
	case focused && c.refused:
		c.open()
	case focused:
		c.openAll()
	case !c.drop.hovered:
		c.settle()
	}
}

// settleUnlessTyping ends a choice that was begun with the keyboard and left with
// the pointer.
func (c *Choice) settleUnlessTyping() {
	if !c.focused {
		c.settle()
	}
}

// openAll shows every option, with the chosen one marked.
func (c *Choice) openAll() {
	at := 0
	for i, o := range c.options {
		if o.Key == c.chosen.Key {
			at = i
		}
	}
	c.drop.set(c.options, at)
	c.show()
}

// open shows the options that match what was typed.
func (c *Choice) open() {
	found := matching(c.options, c.Text())
	c.drop.set(found, 0)
	if len(found) == 0 && c.below() > 0 { // said under the field, not over what comes next
		c.close()
		c.refuse(unknown)
		return
	}
	c.show()
}

// What is said of a text that no option has, and of one that several have.
const (
	unknown = "Nothing here is called that. Type a part of the name."
	unclear = "More than one is called that. Type more, or choose."
)

// refuse says why the text is no choice.
func (c *Choice) refuse(why string) {
	c.refused = true
	c.SetFault(why)
}

func (c *Choice) show() {
	f := floaterOf(c.entry)
	if f == nil || !c.focused {
		return
	}
	at := f.floats().under(c.sheet, c.drop.MinSize().Height)
	f.floats().show(c.drop, at, fyne.NewSize(max(c.Size().Width, dropWidth), c.drop.MinSize().Height))
	shown(c.drop, drawn(c.sheet))
	if c.drop.Hidden {
		c.showLater()
	}
}

// untilDrawn is longer than it takes a window to draw what was just opened.
const untilDrawn = 60 * time.Millisecond

// drawn reports whether the driver knows where an object stands, which it does
// once it drew it.
func drawn(o fyne.CanvasObject) bool { return fyne.CurrentApp().Driver().CanvasForObject(o) != nil }

// showLater shows the list of a field that had the keyboard before it was drawn, as
// the first field of a question has. Until then it answers keys, unseen.
func (c *Choice) showLater() {
	time.AfterFunc(untilDrawn, func() {
		fyne.Do(func() {
			if c.isOpen() {
				c.show()
			}
		})
	})
}

func (c *Choice) close() {
	c.drop.hovered = false
	if f := floaterOf(c.entry); f != nil {
		f.floats().drop(c.drop)
	}
}

func (c *Choice) isOpen() bool {
	f := floaterOf(c.entry)
	return f != nil && f.floats().has(c.drop)
}

// pick takes an option and closes the list.
func (c *Choice) pick(o Option) {
	c.close()
	c.refused = false
	c.SetFault("")
	c.write(o.Text)
	if o.Key == c.chosen.Key {
		return
	}
	c.chosen = o
	if c.heard != nil {
		c.heard(o)
	}
}

// settle ends the typing: a text that names one option chooses it, any other is
// refused and stays to be mended. An emptied field shows its choice again.
func (c *Choice) settle() {
	c.close()
	text := strings.TrimSpace(c.Text())
	if text == "" || c.acts || strings.EqualFold(text, c.chosen.Text) {
		c.back()
		return
	}
	switch named := named(c.options, text); len(named) {
	case 0:
		c.refuse(unknown)
	case 1:
		c.pick(named[0])
	default:
		c.refuse(unclear)
	}
}

// key works the list while the keyboard is in the field.
func (c *Choice) key(key *fyne.KeyEvent) bool {
	switch key.Name {
	case fyne.KeyDown, fyne.KeyUp:
		if !c.isOpen() {
			c.openAll()
		} else if key.Name == fyne.KeyDown {
			c.drop.move(1)
		} else {
			c.drop.move(-1)
		}
	case fyne.KeyPageDown:
		c.drop.move(dropRows)
	case fyne.KeyPageUp:
		c.drop.move(-dropRows)
	case fyne.KeyReturn, fyne.KeyEnter:
		return c.enter()
	case fyne.KeyEscape:
		if !c.isOpen() && !c.refused {
			return false
		}
		c.close()
		c.back()
		return !c.passes
	default:
		return false
	}
	return true
}

// enter takes the marked option of an open list.
func (c *Choice) enter() bool {
	if !c.isOpen() {
		return c.refused // what was chosen before is no answer to it
	}
	if o, ok := c.drop.marked(); ok {
		c.pick(o)
	} else {
		c.refuse(unknown)
	}
	return true
}
