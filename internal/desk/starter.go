package desk

import (
	"windlass/data"
	"windlass/internal/climb"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
)

// Starter returns what a new gym begins with: the built-in catalogue and climbs,
// three tracks, and equipment to be corrected, with nobody in it.
func Starter(name string, newID func() gym.ID) (gym.Book, error) {
	catalogue, err := gym.ReadCatalogue(data.Files())
	if err != nil {
		return gym.Book{}, err
	}
	b := gym.Book{
		Settings: gym.DefaultSettings(), Equipment: starterEquipment(),
		Lifts: catalogue.Lifts, Movements: catalogue.Movements, Finishers: catalogue.Finishers, Drills: catalogue.Drills,
	}
	b.Settings.Name = name
	b.Equipment.Implements = catalogue.Implements
	for i, track := range []string{"Powerlifting", "Weightlifting", "Strongman"} {
		b.Tracks = append(b.Tracks, gym.Track{ID: newID(), Name: track, Position: i + 1})
	}
	for _, c := range climb.BuiltIns() {
		c.ID = newID()
		b.Climbs = append(b.Climbs, c)
	}
	return b, nil
}

// starterEquipment is what a mid-sized group gym may own (common practice, no
// source): eight stations and enough plates for all of them.
func starterEquipment() gym.Equipment {
	e := gym.Equipment{
		Bars: []plates.Bar{
			{Key: "bar-20", Name: "20 kg bar", Mass: 20 * mass.Kilogram, Unit: mass.KG, Kind: plates.Barbell, Count: 8},
			{Key: "bar-15", Name: "15 kg bar", Mass: 15 * mass.Kilogram, Unit: mass.KG, Kind: plates.LightBarbell, Count: 6},
			{Key: "bar-10", Name: "10 kg training bar", Mass: 10 * mass.Kilogram, Unit: mass.KG, Kind: plates.Technique, Count: 2},
			{Key: "axle", Name: "Axle", Mass: 12 * mass.Kilogram, Unit: mass.KG, Kind: "axle", Count: 2},
			{Key: "log", Name: "Log", Mass: 30 * mass.Kilogram, Unit: mass.KG, Kind: "log", Count: 2},
		},
		Stock: plates.Stock{Plates: []plates.Plate{
			{Mass: 25 * mass.Kilogram, Unit: mass.KG, Pairs: 12, Full: true},
			{Mass: 20 * mass.Kilogram, Unit: mass.KG, Pairs: 12, Full: true},
			{Mass: 15 * mass.Kilogram, Unit: mass.KG, Pairs: 8, Full: true},
			{Mass: 10 * mass.Kilogram, Unit: mass.KG, Pairs: 16, Full: true},
			{Mass: 5 * mass.Kilogram, Unit: mass.KG, Pairs: 12},
			{Mass: 2500 * mass.Gram, Unit: mass.KG, Pairs: 12},
			{Mass: 1250 * mass.Gram, Unit: mass.KG, Pairs: 12},
			{Mass: 500 * mass.Gram, Unit: mass.KG, Pairs: 4},
		}},
	}
	for _, name := range []string{"Rack 1", "Rack 2", "Rack 3", "Rack 4", "Rack 5", "Rack 6", "Rack 7", "Rack 8"} {
		e.Stations = append(e.Stations, gym.Station{Name: name, Bar: "bar-20"})
	}
	return e
}
