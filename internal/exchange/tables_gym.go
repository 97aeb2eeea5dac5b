package exchange

import (
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"

	"windlass/internal/gym"
	"windlass/internal/mass"
)

func liftTable(b *gym.Book, n naming) Table {
	header := "Key, Lift, Also written, Region, Pattern, Bar, From the floor, Measure, Reps recorded, Related lift, Ratio low, Ratio high, Ratio source, Usual 1RM M, Usual 1RM W, Own, Hidden"
	return table("lifts", header, b.Lifts, func(l gym.Lift) []any {
		return []any{
			string(l.Key), l.Name, strings.Join(l.Aliases, "; "), string(l.Region), string(l.Pattern), l.Bar, yes(l.Floor), string(l.Measure),
			joined(l.Reps, strconv.Itoa), n.lifts[l.Related], some(l.RatioLow), some(l.RatioHigh), l.Source,
			writeLoad(l.Reference[gym.StandardM], mass.KG), writeLoad(l.Reference[gym.StandardW], mass.KG), yes(l.Own), yes(l.Hidden),
		}
	})
}

func movementTable(b *gym.Book, n naming) Table {
	header := "Key, Movement, Region, Pattern, Measure, Implement, Pair, Linked lift, Reference reps, Seconds each, M full, M mid, M light, W full, W mid, W light, Own, Hidden"
	return table("movements", header, b.Movements, func(m gym.Movement) []any {
		row := []any{
			string(m.Key), m.Name, string(m.Region), string(m.Pattern), string(m.Measure), m.Implement, yes(m.Pair), n.lifts[m.Linked],
			some(m.ReferenceReps), some(m.Seconds),
		}
		for _, s := range []gym.Standard{gym.StandardM, gym.StandardW} {
			for _, tier := range []gym.Tier{gym.Full, gym.Mid, gym.Light} {
				row = append(row, writeLoad(m.Loads[s].Of(tier), mass.KG))
			}
		}
		return append(row, yes(m.Own), yes(m.Hidden))
	})
}

func finisherTable(b *gym.Book) Table {
	return table("finishers", "Key, Finisher, Muscle, Region, Spares, Own, Hidden", b.Finishers, func(f gym.Finisher) []any {
		return []any{f.Key, f.Name, f.Muscle, string(f.Region), f.Spares, yes(f.Own), yes(f.Hidden)}
	})
}

func drillTable(b *gym.Book) Table {
	return table("warm-ups", "Key, Drill, Pattern, Dose, Own, Hidden", b.Drills, func(d gym.Drill) []any {
		return []any{d.Key, d.Name, string(d.Pattern), d.Dose, yes(d.Own), yes(d.Hidden)}
	})
}

func barTable(b *gym.Book) Table {
	t := Table{Name: "bars", Header: []string{"Key", "Bar", "Mass", "Kind", "Count"}}
	for _, bar := range b.Equipment.Bars {
		t.Rows = append(t.Rows, []any{bar.Key, bar.Name, writeLoad(bar.Mass, bar.Unit), bar.Kind, bar.Count})
	}
	return t
}

func plateTable(b *gym.Book) Table {
	t := Table{Name: "plates", Header: []string{"Mass", "Pairs", "Full diameter"}}
	for _, p := range b.Equipment.Stock.Plates {
		t.Rows = append(t.Rows, []any{writeLoad(p.Mass, p.Unit), p.Pairs, yes(p.Full)})
	}
	return t
}

// implementTable writes the masses as the catalogue's own table has them, with
// how many there are where somebody counted.
func implementTable(b *gym.Book) Table {
	return table("implements", "Kind, Masses, Count", b.Equipment.Implements, func(i gym.Implement) []any {
		pieces := joined(i.Masses, func(m mass.Mass) string {
			load := writeLoad(m, i.Unit)
			if n := i.Each[m]; n > 0 {
				load += " × " + strconv.Itoa(n)
			}
			return load
		})
		return []any{i.Kind, pieces, some(i.Total)}
	})
}

func stationTable(b *gym.Book) Table {
	return table("stations", "Station, Bar", b.Equipment.Stations, func(s gym.Station) []any {
		return []any{s.Name, s.Bar}
	})
}

func settingsTable(b *gym.Book) Table {
	s, by := b.Settings, b.Settings.ComposeBy()
	t := Table{Name: "settings", Header: []string{"Setting", "Value"}, Rows: [][]any{
		{"Name", s.Name},
		{"Town", s.Town},
		{"Unit", string(s.Unit)},
		{"First day of the week", s.FirstDay.String()},
		{"Rounding", string(s.Rounding)},
		{"Confidence", s.Confidence},
		{"Reps of main days", joined(s.DayReps, strconv.Itoa)},
		{"Metres to the farthest reader", s.Viewer},
		{"Plates under a kilogram on top rungs only", yes(!s.SmallAll)},
		{"Collar", writeLoad(b.Equipment.Stock.Collar, mass.KG)},
		{"Conditioning, shortest in minutes", float64(by.Shortest) / 60},
		{"Conditioning, longest in minutes", float64(by.Longest) / 60},
		{"Conditioning, days until a movement comes again", by.Apart},
	}}
	for _, reps := range slices.Backward(slices.Sorted(maps.Keys(by.Formats))) {
		formats := joined(by.Formats[reps], func(f gym.Format) string { return string(f) })
		t.Rows = append(t.Rows, []any{fmt.Sprintf("Conditioning on days of %d", reps), formats})
	}
	return t
}
