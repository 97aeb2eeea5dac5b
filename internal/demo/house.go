package demo

import (
	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
)

// Hours of the gym.
var (
	opening = day.ClockOf(6, 0)
	early   = day.ClockOf(6, 30)
	noon    = day.ClockOf(12, 15)
	evening = day.ClockOf(18, 0)
)

// trackKeys are the built-in tracks in the order of the gym's own.
var trackKeys = []string{"powerlifting", "weightlifting", "strongman"}

// furnish adds to a new gym's equipment what the Ropewalk has collected. All of
// its plates are in kilograms: with pounds on the same heap no load of a class
// would be a round one.
func furnish(e *gym.Equipment) {
	e.Bars = append(e.Bars,
		plates.Bar{Key: "bar-45lb", Name: "45 lb bar", Mass: 45 * mass.Pound, Unit: mass.LB, Kind: plates.Barbell, Count: 1},
		plates.Bar{Key: "safety-bar", Name: "Safety bar", Mass: 25 * mass.Kilogram, Unit: mass.KG, Kind: "safety-bar", Count: 1},
		plates.Bar{Key: "trap-bar", Name: "Trap bar", Mass: 25 * mass.Kilogram, Unit: mass.KG, Kind: "trap-bar", Count: 1},
	)
	for i := range e.Stock.Plates {
		if p := &e.Stock.Plates[i]; p.Mass == 500*mass.Gram {
			p.Pairs = 2 * len(e.Stations) // for those whose record is small
		}
	}
	names := []string{"Harbour wall", "Capstan", "Keel", "Lantern", "Mast", "Anchor", "Slipway", "Crow's nest"}
	for i := range e.Stations {
		e.Stations[i].Name = names[i%len(names)]
	}
}

// timetable gives every weekday a class in the morning and one in the evening.
func (w *world) timetable() {
	weightlifting, strongman := w.book.Tracks[1].ID, w.book.Tracks[2].ID
	for d := day.Monday; d <= day.Friday; d++ {
		w.slot(d, early, 75, "Early bar", weightlifting)
		if d != day.Wednesday {
			w.slot(d, noon, 75, "Noon strong", strongman)
		}
		w.slot(d, evening, 90, "Evening class")
	}
	w.slot(day.Saturday, day.ClockOf(9, 0), 90, "Saturday class")
	w.slot(day.Saturday, day.ClockOf(17, 0), 75, "Late Saturday")
	w.slot(day.Sunday, day.ClockOf(10, 0), 90, "Sunday class")
	w.slot(day.Sunday, day.ClockOf(17, 0), 75, "Late Sunday")

	fair := w.start.Add(7*2 + 2) // a Wednesday of the past
	w.closed(fair, fair, "Herring fair")
	storm := w.start.Add(7*8 + 3)
	w.closed(storm, storm.Add(1), "Floor is relaid")
}

func (w *world) slot(on day.Weekday, at day.Clock, minutes int, name string, tracks ...gym.ID) {
	id := w.id(w.start.Add(-daysKnown), opening)
	w.book.Slots = append(w.book.Slots, gym.Slot{ID: id, Weekday: on, At: at, Minutes: minutes, Name: name, Tracks: tracks})
}

func (w *world) closed(from, until day.Date, name string) {
	w.book.Closures = append(w.book.Closures, gym.Closure{ID: w.id(w.start.Add(-30), opening), From: from, Until: until, Name: name})
}
