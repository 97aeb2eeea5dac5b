package gymroom

import (
	"fyne.io/fyne/v2"

	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// entryForm changes one entry of a list of the catalogue. Entries that the gym
// did not add can be hidden but not rewritten; their lines are off.
type entryForm struct {
	of      *catalogue
	body    *fyne.Container
	lines   []*kept
	own     []*kept           // lines that only an own entry has open
	choices []*entryChoice    // likewise
	fixed   fyne.CanvasObject // says why the lines of a built-in entry are off
	also    func()
}

// entryChoice is a choice among known words.
type entryChoice struct {
	*kit.Choice
	read func() string
}

func newEntryForm(c *catalogue) *entryForm {
	return &entryForm{of: c, body: kit.Column(look.Gap2), fixed: note(builtInNote)}
}

// add sets objects below one another in the form.
func (f *entryForm) add(objects ...fyne.CanvasObject) {
	for _, o := range objects {
		f.body.Add(o)
	}
}

// line makes a line; open says whether built-in entries have it open, too.
func (f *entryForm) line(label string, open bool, read func() string, write func(string) error) *kept {
	k := keep(kit.NewField(label), func() string {
		if f.of.shown == "" {
			return ""
		}
		return read()
	}, func(text string) error {
		return f.of.saved("Saved.", write(text))
	})
	f.lines = append(f.lines, k)
	if !open {
		f.own = append(f.own, k)
	}
	return k
}

// choice makes a choice that only an own entry has open.
func (f *entryForm) choice(label string, options []kit.Option, read func() string, write func(string) error) *entryChoice {
	c := &entryChoice{read: read}
	c.Choice = kit.NewChoice(label, options, func(o kit.Option) {
		f.of.host.Fail(f.of.saved("Saved.", write(o.Key)))
		f.rest()
	})
	f.choices = append(f.choices, c)
	return c
}

func (f *entryForm) show() {
	for _, k := range f.lines {
		k.show()
	}
	f.rest()
}

func (f *entryForm) refresh() {
	if f.of.shown == "" {
		return
	}
	for _, k := range f.lines {
		k.refresh()
	}
	f.rest()
}

func (f *entryForm) rest() {
	own := f.isOwn()
	for _, c := range f.choices {
		c.Set(c.read())
		c.Able(own)
	}
	for _, k := range f.own {
		k.Able(own)
	}
	f.fixed.Hide()
	if !own {
		f.fixed.Show()
	}
	if f.also != nil {
		f.also()
	}
}

func (f *entryForm) isOwn() bool {
	for _, r := range f.of.rows {
		if r.Key == f.of.shown {
			return r.Own
		}
	}
	return false
}

// write gives the keyboard to the first line that is open.
func (f *entryForm) write() {
	for _, k := range f.lines {
		if k.Open() {
			k.Focus()
			return
		}
	}
}

// words are options for words of the trade.
func words[T ~string](all []T) []kit.Option {
	var options []kit.Option
	for _, w := range all {
		text := plain(string(w))
		if string(w) == string(gym.WholeBody) {
			text = "whole body"
		}
		options = append(options, kit.Option{Key: string(w), Text: text})
	}
	return options
}

// builtInNote says why most lines are off.
const builtInNote = "An entry of the built-in catalogue keeps its words, so that every gym means the same by them. Add your own to write another."
