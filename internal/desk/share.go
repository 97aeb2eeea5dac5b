package desk

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

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

// BoardClash is a plate that runs out, when all stations load at once.
type BoardClash struct {
	Rungs    []int // from 1
	Disc     plates.Disc
	Need     int // pairs, where most are wanted
	Have     int
	Restack  bool     // other plates make the same loads
	Stations []string // that change their load, or wait; empty for a restack
	Wait     bool
}

// Clashes tells which plates run out where all stations of a board load as it
// says, their first lifters at once, then their second, and so on.
func (bs *Boards) Clashes(b Board) []BoardClash {
	queues, rungs, names := bs.queues(b)
	var all []BoardClash
	for _, c := range plates.Check(queues) {
		at := slices.IndexFunc(all, func(x BoardClash) bool { return x.Disc == c.Disc && x.Restack == c.Loadable() })
		if at < 0 {
			at = len(all)
			all = append(all, newClash(c, names))
		}
		x := &all[at]
		x.Need = max(x.Need, c.Need)
		if rung := rungs[c.Set]; !slices.Contains(x.Rungs, rung) {
			x.Rungs = append(x.Rungs, rung)
		}
	}
	return all
}

func newClash(c plates.Clash, names []string) BoardClash {
	x := BoardClash{Disc: c.Disc, Have: c.Have, Restack: c.Loadable(), Wait: c.Ways[0].Out == plates.Wait}
	if !x.Restack {
		for _, i := range c.Ways[0].Bars {
			x.Stations = append(x.Stations, names[i])
		}
	}
	return x
}

// queues lays the bars of all stations side by side, turn by turn; a bar whose
// lifter rests keeps what it carried.
func (bs *Boards) queues(b Board) (queues []plates.Queue, rungs []int, names []string) {
	for _, s := range b.Stations {
		if len(s.Lifters) == 0 || s.Lifters[0].Bar == "" {
			continue
		}
		loads, err := bs.loadsOf(loadKey{bar: s.Lifters[0].Bar})
		if err != nil {
			continue
		}
		q := plates.Queue{Loads: loads}
		var on plates.Loading
		rungs = nil
		for rung := range b.Class.Climb.Rungs {
			for turn := range turns(b) {
				if turn < len(s.Lifters) && rung < len(s.Lifters[turn].Sets) {
					if set := s.Lifters[turn].Sets[rung]; set.Likely() > 0 {
						on = plates.Loading{Bar: loads.Bar(), Total: set.Likely(), PerSide: set.Discs}
					}
				}
				q.Sets = append(q.Sets, on)
				rungs = append(rungs, rung+1)
			}
		}
		queues, names = append(queues, q), append(names, s.Name)
	}
	return queues, rungs, names
}

// turns is how many lifters the fullest station has.
func turns(b Board) (most int) {
	for _, s := range b.Stations {
		most = max(most, len(s.Lifters))
	}
	return most
}

// Text says what runs out and what to do.
func (c BoardClash) Text() string {
	text := fmt.Sprintf("%s: all stations together want %d pairs of %s, the gym has %d.", rungWords(c.Rungs), c.Need, c.Disc, c.Have)
	switch {
	case c.Restack:
		return text + " Other plates make the same loads."
	case c.Wait:
		return text + " To wait until the others have lifted: " + strings.Join(c.Stations, ", ") + "."
	}
	return text + " To load the nearest that is left: " + strings.Join(c.Stations, ", ") + "."
}

func rungWords(rungs []int) string {
	if len(rungs) == 1 {
		return fmt.Sprintf("Rung %d", rungs[0])
	}
	return fmt.Sprintf("Rungs %d to %d", rungs[0], rungs[len(rungs)-1])
}
