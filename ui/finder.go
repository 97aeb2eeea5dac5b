package ui

import (
	"strconv"

	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/ui/kit"
)

// find asks for a name and goes there: an athlete, a day, or anything a key does.
func (w *Window) find() {
	goes := map[string]func(){}
	var options []kit.Option
	add := func(name, detail string, do func()) {
		key := strconv.Itoa(len(options))
		goes[key] = do
		options = append(options, kit.Option{Key: key, Text: name, Note: detail})
	}
	for _, p := range w.desk.Places() {
		add(p.Name, p.Kind, func() { w.goTo(p) })
	}
	for _, k := range append(w.rooms[w.front].Keys(), w.keys()...) {
		if k.Do != nil {
			add(k.Does, k.Press, k.Do)
		}
	}
	w.askPlace(options, goes)
}

// dated is a room that can show a day.
type dated interface{ ShowDay(on day.Date) }

func (w *Window) goTo(p desk.Place) {
	w.Open(p.Room, p.ID)
	if r, ok := w.rooms[w.front].(dated); ok && p.On != day.None {
		r.ShowDay(p.On)
	}
}

func (w *Window) askPlace(options []kit.Option, goes map[string]func()) {
	var sheet *kit.Modal
	search := kit.NewChoice("Athlete, day or action", options, func(o kit.Option) {
		sheet.Close()
		goes[o.Key]()
	})
	search.PassEscape().Acts()
	sheet = kit.Ask(w.window.Canvas(), kit.Question{
		Title: "Find anything", Body: kit.Tall(320, kit.Column(0, search)), Width: 560,
		First: search.Keyboard(), Cancel: "Close",
	})
}
