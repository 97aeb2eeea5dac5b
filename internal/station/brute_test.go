package station

import (
	"fmt"
	"math/rand/v2"
	"slices"

	"github.com/stretchr/testify/require"

	"windlass/internal/mass"
	"windlass/internal/plates"
)

func kg(x float64) mass.Mass { return mass.Mass(x*1000) * mass.Gram }
func lb(x float64) mass.Mass { return mass.Mass(x*1000) * (mass.Pound / 1000) }

func plate(m mass.Mass, u mass.Unit, pairs int) plates.Plate {
	return plates.Plate{Mass: m, Unit: u, Pairs: pairs}
}

func bar(key string, m mass.Mass, u mass.Unit) plates.Bar {
	return plates.Bar{Key: key, Name: key, Mass: m, Unit: u, Kind: plates.Barbell, Count: 4}
}

func newLoads(t require.TestingT, b plates.Bar, p ...plates.Plate) *plates.Loads {
	loads, err := plates.NewLoads(b, plates.Stock{Plates: p})
	require.NoError(t, err)
	return loads
}

func smallLoads(t require.TestingT) *plates.Loads {
	return newLoads(t, bar("20", kg(20), mass.KG), plate(kg(20), mass.KG, 2), plate(kg(10), mass.KG, 1), plate(kg(5), mass.KG, 1), plate(kg(2.5), mass.KG, 1))
}

// brute tries every seat for everybody. It knows nothing of groups as bits, of
// orders kept or of trades, and takes its moves from the exact sequence.
type brute struct {
	stations []Station
	windows  []int
	pace     Pace
	lifters  []Lifter
	known    map[string]cost
}

func (b *brute) least(t require.TestingT) cost {
	best, found := cost{}, false
	seats, fixed := make([]int, len(b.lifters)), b.fixed(t)
	for {
		if c, ok := b.cost(t, seats); ok && b.keeps(seats, fixed) && (!found || c.below(best)) {
			best, found = c, true
		}
		i := 0
		for ; i < len(seats); i++ {
			if seats[i]++; seats[i] <= len(b.stations) {
				break
			}
			seats[i] = 0
		}
		if i == len(seats) {
			require.True(t, found)
			return best
		}
	}
}

// fixed says where the coach's choices end up, first come first served.
func (b *brute) fixed(t require.TestingT) []int {
	seats := slices.Repeat([]int{len(b.stations)}, len(b.lifters))
	for i, l := range b.lifters {
		if l.Fixed {
			seats[i] = l.Seat
			if _, ok := b.cost(t, seats); !ok {
				seats[i] = len(b.stations)
			}
		}
	}
	return seats
}

func (b *brute) keeps(seats, fixed []int) bool {
	for i, l := range b.lifters {
		if l.Fixed && seats[i] != fixed[i] {
			return false
		}
	}
	return true
}

// cost takes the seat after the last station for standing.
func (b *brute) cost(t require.TestingT, seats []int) (total cost, ok bool) {
	for at, station := range b.stations {
		var who []int
		for i, seat := range seats {
			l := b.lifters[i]
			if seat == at {
				if l.Bar != station.Loads.Bar().Key || len(who) > 0 && l.Lift != b.lifters[who[0]].Lift {
					return cost{}, false
				}
				who = append(who, i)
			}
		}
		if len(who) > station.Places {
			return cost{}, false
		}
		total = total.plus(b.station(t, at, who))
	}
	for _, seat := range seats {
		if seat == len(b.stations) {
			total.standing++
		}
	}
	return total, true
}

func (b *brute) station(t require.TestingT, at int, who []int) (c cost) {
	key := fmt.Sprint(at, who)
	if c, ok := b.known[key]; ok {
		return c
	}
	slices.SortStableFunc(who, func(i, j int) int { return int(b.lifters[i].heaviest()/mass.Gram - b.lifters[j].heaviest()/mass.Gram) })
	var targets []mass.Mass
	for w, given := range b.windows {
		seconds := 0
		for _, i := range who {
			if set := b.lifters[i].Sets[w]; set.Load > 0 {
				targets = append(targets, max(set.Load, b.stations[at].Loads.Lightest()))
				seconds += set.Reps*b.pace.Rep + b.pace.ChangeOver
			}
		}
		c.over += max(seconds-given, 0)
	}
	seq, err := b.stations[at].Loads.Sequence(targets, plates.Nearest)
	require.NoError(t, err)
	c.moves = seq.Moves
	b.known[key] = c
	return c
}

// randomClass makes lifters whose windows depend on reps and heads only, so that
// the brute force need not guess which of several equal sequences is shown.
func randomClass(t require.TestingT, seed uint64, lifters, stations, windows int) *brute {
	r := rand.New(rand.NewPCG(seed, 6))
	loads := []*plates.Loads{
		smallLoads(t),
		newLoads(t, bar("20", kg(20), mass.KG), plate(lb(45), mass.LB, 2), plate(lb(25), mass.LB, 1), plate(lb(10), mass.LB, 1), plate(kg(5), mass.KG, 1)),
		newLoads(t, bar("15", kg(15), mass.KG), plate(kg(15), mass.KG, 2), plate(kg(5), mass.KG, 2)),
	}
	b := &brute{pace: Pace{Rep: 3, ChangeOver: 8}, known: map[string]cost{}}
	for i := range stations {
		b.stations = append(b.stations, Station{Name: fmt.Sprint(i), Loads: loads[r.IntN(len(loads))], Places: 1 + r.IntN(4)})
	}
	for range windows {
		b.windows = append(b.windows, 20+r.IntN(60))
	}
	for i := range lifters {
		b.lifters = append(b.lifters, randomLifter(r, i, windows))
		if r.IntN(8) == 0 {
			b.lifters[i].Seat, b.lifters[i].Fixed = r.IntN(stations), true
		}
	}
	return b
}

func randomLifter(r *rand.Rand, i, windows int) Lifter {
	l := Lifter{Name: fmt.Sprint(i), Seat: None, Bar: "20", Lift: "squat"}
	if r.IntN(4) == 0 {
		l.Bar = "15"
	}
	if r.IntN(4) == 0 {
		l.Lift = "press"
	}
	top := 30 + r.Float64()*80
	late := r.IntN(5) == 0
	for w := range windows {
		set := Set{Load: mass.Of(top*float64(w+2)/float64(windows+1), mass.KG), Reps: 1 + r.IntN(5)}
		if late && w == 0 {
			set = Set{}
		}
		l.Sets = append(l.Sets, set)
	}
	return l
}

func (b *brute) solver(t require.TestingT) *Solver {
	s, err := New(b.stations, b.windows, b.pace)
	require.NoError(t, err)
	return s
}

func planCost(p Plan) cost { return cost{len(p.Standing), p.Over, p.Moves} }

// checkPlan holds a plan against its own promises.
func checkPlan(t require.TestingT, b *brute, p Plan) {
	seats := slices.Clone(p.Seats)
	for i, seat := range seats {
		if seat == None {
			seats[i] = len(b.stations)
		}
	}
	want, ok := b.cost(t, seats)
	require.True(t, ok, "nobody sits where they may not")
	require.True(t, b.keeps(seats, b.fixed(t)), "who has a fixed seat is there")
	require.Equal(t, want, planCost(p))
	for at, g := range p.Groups {
		moves, sets := 0, 0
		for _, i := range g.Lifters {
			require.Equal(t, at, p.Seats[i])
			for _, set := range b.lifters[i].Sets {
				if set.Load > 0 {
					sets++
				}
			}
		}
		for _, turn := range g.Turns {
			moves += turn.Moves
			require.Contains(t, g.Lifters, turn.Lifter)
		}
		require.Equal(t, g.Moves, moves)
		require.Len(t, g.Turns, sets)
	}
}
