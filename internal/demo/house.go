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
func furnish(e *gym.Equipment) error {
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
	return count(e.Implements)
}

// shelves are how many the Ropewalk has of what is lifted whole, dumbbells one by
// one. Plates are those of the bars, and nobody has counted the skipping ropes.
var shelves = map[string]string{
	"kettlebell":     "4×2, 6×2, 8×6, 10×4, 12×8, 14×4, 16×8, 18×2, 20×6, 22×2, 24×6, 28×4, 32×4, 36×2, 40×2, 48×1",
	"dumbbell":       "2.5×4, 5×8, 7.5×8, 10×10, 12.5×10, 15×10, 17.5×8, 20×8, 22.5×8, 25×6, 27.5×4, 30×4, 32.5×4, 35×2, 37.5×2, 40×2",
	"thick-dumbbell": "20×2, 25×2, 30×2, 35×1, 40×1, 50×1, 60×1",
	"ball":           "2×2, 3×4, 4×6, 5×6, 6×8, 7×6, 8×4, 9×8, 10×4, 12×2",
	"slam-ball":      "4×2, 6×4, 8×4, 10×6, 12×4, 15×4, 20×3, 25×2, 30×2, 40×2, 50×1",
	"sandbag":        "10×2, 15×2, 20×4, 25×4, 30×4, 35×3, 40×3, 45×2, 50×3, 60×2, 70×2, 80×1, 90×1, 100×1, 120×1",
	"stone":          "30×1, 40×1, 50×1, 60×2, 70×1, 80×2, 90×1, 100×1, 110×1, 120×1, 140×1, 160×1",
	"keg":            "20×1, 30×1, 40×2, 50×2, 60×2, 70×1, 80×1, 100×1",
	"tyre":           "80×1, 120×1, 180×1, 250×1, 320×1",
	"weight-vest":    "2.5×2, 5×4, 7.5×4, 10×4",
}

// machines are how many there are of what is not lifted, or loaded with plates.
var machines = map[string]int{
	"bike": 5, "rower": 6, "ski-machine": 3, "box": 12, "pull-up-bar": 12, "rings": 8, "rope": 3,
	"farmers-handles": 6, "frame": 1, "yoke": 2, "sled": 4,
}

// count goes along the shelves of a gym and notes how many there are.
func count(implements []gym.Implement) (err error) {
	for i := range implements {
		own := &implements[i]
		own.Total = machines[own.Kind]
		if text, ok := shelves[own.Kind]; ok {
			if *own, err = own.WithMasses(text); err != nil {
				return err
			}
		}
	}
	return nil
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
