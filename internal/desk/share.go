package desk

import (
	"cmp"
	"fmt"
	"slices"

	"windlass/internal/mass"
	"windlass/internal/plates"
)

// heap is the part of the gym's plates that a station loads from, so that no two
// stations count on the same pair.
type heap struct {
	key   string // what is remembered of it goes by this
	stock plates.Stock
}

// heaps shares the stock among the stations that have lifters: everybody the same,
// and what does not come out even to the stations that lift most.
func (bs *Boards) heaps(stations []BoardStation) map[int]heap {
	var used []BoardStation
	for _, s := range stations {
		if len(s.Lifters) > 0 && s.Lifters[0].Bar != "" {
			used = append(used, s)
		}
	}
	slices.SortStableFunc(used, func(a, b BoardStation) int { return cmp.Compare(heaviest(b.Lifters), heaviest(a.Lifters)) })
	heaps := map[int]heap{}
	for rank, s := range used {
		h := heap{stock: bs.book.Equipment.Stock}
		h.stock.Plates = nil
		for _, p := range bs.book.Equipment.Stock.Plates {
			p.Pairs = (p.Pairs + len(used) - 1 - rank) / len(used)
			if p.Pairs > 0 {
				h.stock.Plates = append(h.stock.Plates, p)
			}
			h.key += fmt.Sprint(p.Pairs, " ")
		}
		heaps[s.Index] = h
	}
	return heaps
}

func heaviest(lifters []BoardLifter) mass.Mass {
	var most mass.Mass
	for _, l := range lifters {
		for _, set := range l.Sets {
			most = max(most, set.Likely())
		}
	}
	return most
}

// from returns the loads of a bar with a station's own heap, where they make every
// target; else those with the whole stock, and [Boards.Clashes] tells what runs out.
func (bs *Boards) from(bar string, h heap, targets []mass.Mass) (*plates.Loads, string, error) {
	whole, err := bs.loadsOf(loadKey{bar: bar})
	if err != nil || len(h.stock.Plates) == 0 {
		return whole, "", err
	}
	key := loadKey{bar: bar, heap: h.key}
	own, ok := bs.loads[key]
	if !ok {
		if own, err = plates.NewLoads(whole.Bar(), h.stock); err != nil {
			return nil, "", err
		}
		bs.loads[key] = own
	}
	for _, target := range targets {
		if l, ok := own.AtMost(target); !ok || l.Total != target {
			return whole, "", nil
		}
	}
	return own, h.key, nil
}
