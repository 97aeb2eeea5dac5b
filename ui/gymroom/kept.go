package gymroom

import (
	"strings"

	"windlass/ui/kit"
)

// kept is a line that saves itself when the coach presses Return or goes on. What
// is refused stays as it was typed, with the reason under it.
type kept struct {
	*kit.Field
	read  func() string
	write func(text string) error
	last  string // what the line showed when nobody had typed
}

// keep makes a line save itself. read says what the desk has now.
func keep(f *kit.Field, read func() string, write func(text string) error) *kept {
	k := &kept{Field: f, read: read, write: write}
	f.OnEnter(func(string) { k.save() })
	f.OnLeave(k.save)
	return k
}

func (k *kept) save() {
	text := strings.TrimSpace(k.Text())
	if text == k.last {
		k.SetText(k.last)
		k.SetFault("")
		return
	}
	if err := k.write(text); err != nil {
		k.SetFault(kit.Sentence(err))
		return
	}
	k.show()
}

// refresh shows what the desk has now, unless it is what stood here already: a
// line that a coach is writing in is left alone.
func (k *kept) refresh() {
	if k.read() != k.last {
		k.show()
	}
}

// show puts what the desk has into the line, whatever was typed.
func (k *kept) show() {
	k.last = k.read()
	k.SetText(k.last)
	k.SetFault("")
}
