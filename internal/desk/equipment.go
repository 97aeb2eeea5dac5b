package desk

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
)

// KeepEquipment keeps what the gym owns. A stock, bar or implement that cannot
// be is refused, and so is a station whose bar the gym does not own, and a name
// that two things would share. Without bars there may be no plates.
func (d *Desk) KeepEquipment(e gym.Equipment) error {
	if len(e.Bars)+len(e.Stock.Plates) > 0 {
		if err := e.Stock.Valid(); err != nil {
			return err
		}
	}
	for _, check := range []func(gym.Equipment) error{checkBars, checkStations, checkImplements} {
		if err := check(e); err != nil {
			return err
		}
	}
	return d.do("change equipment", gym.PutEquipment{Equipment: e})
}

func checkBars(e gym.Equipment) error {
	names := taken{}
	for _, b := range e.Bars {
		if err := names.take("bar", b.Name, b.Key); err != nil {
			return err
		}
		if err := b.Valid(); err != nil {
			return err
		}
	}
	return nil
}

func checkStations(e gym.Equipment) error {
	names := taken{}
	for _, s := range e.Stations {
		if err := names.take("station", s.Name, s.Name); err != nil {
			return err
		}
		if _, ok := e.Bar(s.Bar); !ok {
			return fmt.Errorf("keep station %q: the gym has no bar %q; choose one of its bars", s.Name, s.Bar)
		}
	}
	return nil
}

func checkImplements(e gym.Equipment) error {
	kinds := taken{}
	for _, i := range e.Implements {
		if err := kinds.take("implement", i.Kind, i.Kind); err != nil {
			return err
		}
		if err := i.Valid(); err != nil {
			return err
		}
	}
	return nil
}

// taken is the names and keys that are in use, in small letters.
type taken map[string]bool

func (t taken) take(noun, name, key string) error {
	name = strings.ToLower(strings.TrimSpace(name))
	switch {
	case name == "" || key == "":
		return fmt.Errorf("keep %s: it has no name; write one", noun)
	case t["name "+name] || t["key "+key]:
		return fmt.Errorf("keep %s %q: another has that name already; write a different one", noun, name)
	}
	t["name "+name], t["key "+key] = true, true
	return nil
}

// changeEquipment keeps the equipment as change leaves a copy of it.
func (d *Desk) changeEquipment(change func(*gym.Equipment) error) error {
	e := d.book.Equipment
	e.Bars, e.Stations, e.Implements = slices.Clone(e.Bars), slices.Clone(e.Stations), slices.Clone(e.Implements)
	e.Stock.Plates = slices.Clone(e.Stock.Plates)
	if err := change(&e); err != nil {
		return err
	}
	return d.KeepEquipment(e)
}

// KeepBar keeps a bar in the place of the one with its key. One without a key is
// new, and gets a key made from its name. It returns the key.
func (d *Desk) KeepBar(b plates.Bar) (string, error) {
	b.Name = strings.TrimSpace(b.Name)
	err := d.changeEquipment(func(e *gym.Equipment) error {
		i := slices.IndexFunc(e.Bars, func(other plates.Bar) bool { return other.Key == b.Key })
		if i >= 0 {
			e.Bars[i] = b
			return nil
		}
		b.Key = freeKey(b.Name, func(key string) bool { _, used := e.Bar(key); return used })
		e.Bars = append(e.Bars, b)
		return nil
	})
	return b.Key, err
}

// DropBar takes a bar out. One that stands at a station, or is used in the class
// on the floor, is refused.
func (d *Desk) DropBar(key string) error {
	bar, _ := d.book.Equipment.Bar(key)
	var stands []string
	for _, s := range d.book.Equipment.Stations {
		if s.Bar == key {
			stands = append(stands, s.Name)
		}
	}
	if len(stands) > 0 {
		return fmt.Errorf("remove %s: it stands at %s; give those stations another bar first", bar.Name, strings.Join(stands, ", "))
	}
	if class, ok := d.LiveClass(); ok && slices.ContainsFunc(class.Lifters, func(l gym.Lifter) bool { return l.Bar == key }) {
		return fmt.Errorf("remove %s: the class on the floor uses it; finish the class first", bar.Name)
	}
	return d.changeEquipment(func(e *gym.Equipment) error {
		e.Bars = slices.DeleteFunc(e.Bars, func(b plates.Bar) bool { return b.Key == key })
		return nil
	})
}

// KeepPlates keeps a sort of plates in the place of the one with that number, or
// as a new one where there is none. The stock stands from heavy to light; it
// returns where the plates stand then.
func (d *Desk) KeepPlates(at int, p plates.Plate) (int, error) {
	if err := p.Valid(); err != nil {
		return at, err
	}
	err := d.changeEquipment(func(e *gym.Equipment) error {
		for i, other := range e.Stock.Plates {
			if i != at && other.Disc() == p.Disc() {
				return fmt.Errorf("keep plates: %s plates of that diameter are in the stock already; change how many there are", p.Disc())
			}
		}
		if at >= 0 && at < len(e.Stock.Plates) {
			e.Stock.Plates[at] = p
		} else {
			e.Stock.Plates = append(e.Stock.Plates, p)
		}
		slices.SortStableFunc(e.Stock.Plates, heavyFirst)
		at = slices.IndexFunc(e.Stock.Plates, func(o plates.Plate) bool { return o.Disc() == p.Disc() })
		return nil
	})
	return at, err
}

// heavyFirst orders plates as they hang on a rack: heavy before light, then full
// diameter before small.
func heavyFirst(a, b plates.Plate) int {
	if by := cmp.Compare(b.Mass, a.Mass); by != 0 || a.Full == b.Full {
		return by
	}
	if a.Full {
		return -1
	}
	return 1
}

// DropPlates takes a sort of plates out of the stock.
func (d *Desk) DropPlates(at int) error {
	return d.changeEquipment(func(e *gym.Equipment) error {
		if at < 0 || at >= len(e.Stock.Plates) {
			return fmt.Errorf("remove plates: the stock has none of that number")
		}
		e.Stock.Plates = slices.Delete(e.Stock.Plates, at, at+1)
		return nil
	})
}

// KeepCollar keeps what one collar weighs; two are on the bar whenever it is
// lifted.
func (d *Desk) KeepCollar(m mass.Mass) error {
	return d.changeEquipment(func(e *gym.Equipment) error {
		e.Stock.Collar = m
		return nil
	})
}

// KeepStation keeps a station in the place of the one with that number, or as a
// new one at the end. It returns its number.
func (d *Desk) KeepStation(at int, s gym.Station) (int, error) {
	s.Name = strings.TrimSpace(s.Name)
	err := d.changeEquipment(func(e *gym.Equipment) error {
		if at >= 0 && at < len(e.Stations) {
			e.Stations[at] = s
			return nil
		}
		at = len(e.Stations)
		e.Stations = append(e.Stations, s)
		return nil
	})
	return at, err
}

// DropStation takes a station out. While a class is on the floor none can go:
// its lifters are seated by the stations' numbers.
func (d *Desk) DropStation(at int) error {
	if _, live := d.LiveClass(); live {
		return fmt.Errorf("remove station: a class is on the floor and its lifters have places; finish the class first")
	}
	return d.changeEquipment(func(e *gym.Equipment) error {
		if at < 0 || at >= len(e.Stations) {
			return fmt.Errorf("remove station: there is none of that number")
		}
		e.Stations = slices.Delete(e.Stations, at, at+1)
		return nil
	})
}
