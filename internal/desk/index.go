package desk

import (
	"windlass/internal/day"
	"windlass/internal/gym"
)

// index finds in the book what rooms ask for on every frame. It holds positions,
// not copies, so it never disagrees with the book.
type index struct {
	athletes  map[gym.ID]int
	lifts     map[gym.LiftKey]int
	movements map[gym.MovementKey]int
	moves     map[gym.ID][]int // by athlete
	results   map[gym.ID][]int // by athlete, voided ones too
	bouts     map[gym.ID][]int // by athlete, voided ones too
	overrides map[gym.ID]int   // how many, by athlete
	came      map[gym.ID]day.Date
}

func newIndex(b *gym.Book) index {
	var x index
	x.readRoster(b)
	x.readCatalogue(b)
	x.readResults(b)
	x.readBouts(b)
	x.readOverrides(b)
	x.readClasses(b)
	return x
}

// update reads again what the changes touched. Of the logs, which are long, it looks
// up the rows that were added alone: they are only ever added to, and a class adds
// hundreds.
func (x *index) update(b *gym.Book, changes []gym.Change) {
	x.add(b, changes)
	t := topicOf(changes)
	if t&AboutRoster != 0 {
		x.readRoster(b)
	}
	if t&AboutCatalogue != 0 {
		x.readCatalogue(b)
	}
	if t&AboutBouts != 0 {
		x.readOverrides(b)
	}
	if t&AboutClass != 0 {
		x.readClasses(b)
	}
}

func (x *index) add(b *gym.Book, changes []gym.Change) {
	result, bout := len(b.Results), len(b.Bouts)
	for _, c := range changes {
		switch c.(type) {
		case gym.AddResult:
			result--
		case gym.AddBout:
			bout--
		}
	}
	for _, c := range changes {
		switch add := c.(type) {
		case gym.AddResult:
			x.results[add.Result.Athlete] = append(x.results[add.Result.Athlete], result)
			result++
		case gym.AddBout:
			x.bouts[add.Bout.Athlete] = append(x.bouts[add.Bout.Athlete], bout)
			bout++
		}
	}
}

func (x *index) readRoster(b *gym.Book) {
	x.athletes = positions(b.Athletes, func(a gym.Athlete) gym.ID { return a.ID })
	x.moves = groups(b.Moves, func(m gym.TrackMove) gym.ID { return m.Athlete })
}

func (x *index) readCatalogue(b *gym.Book) {
	x.lifts = positions(b.Lifts, func(l gym.Lift) gym.LiftKey { return l.Key })
	x.movements = positions(b.Movements, func(m gym.Movement) gym.MovementKey { return m.Key })
}

func (x *index) readResults(b *gym.Book) {
	x.results = groups(b.Results, func(r gym.Result) gym.ID { return r.Athlete })
}

func (x *index) readBouts(b *gym.Book) {
	x.bouts = groups(b.Bouts, func(r gym.Bout) gym.ID { return r.Athlete })
}

func (x *index) readOverrides(b *gym.Book) {
	x.overrides = map[gym.ID]int{}
	for _, o := range b.Overrides {
		x.overrides[o.Athlete]++
	}
}

func (x *index) readClasses(b *gym.Book) {
	x.came = map[gym.ID]day.Date{}
	for _, c := range b.Classes {
		for _, l := range c.Lifters {
			x.came[l.Athlete] = max(x.came[l.Athlete], c.On)
		}
	}
}

func positions[T any, K comparable](rows []T, key func(T) K) map[K]int {
	at := make(map[K]int, len(rows))
	for i, r := range rows {
		at[key(r)] = i
	}
	return at
}

func groups[T any, K comparable](rows []T, key func(T) K) map[K][]int {
	at := map[K][]int{}
	for i, r := range rows {
		at[key(r)] = append(at[key(r)], i)
	}
	return at
}
