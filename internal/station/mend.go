package station

// Remedy says how a class that does not keep its windows is mended.
type Remedy string

// The remedies, from cheap to dear.
const (
	Move   Remedy = "move"   // one lifter goes to another station
	Longer Remedy = "longer" // a window lasts longer
	Wave   Remedy = "wave"   // some lift in a second wave, after the others
)

// Mend is one thing to do. Lifters are named by their index.
type Mend struct {
	Do      Remedy
	Lifters []int // who goes or waits
	To      int   // the station to go to
	Window  int   // the window that is too short
	Seconds int   // by how much
	Over    int   // seconds still missing afterwards, in all windows of all stations
}

// Mends lists what would help lifters where they sit: the one move that helps
// most, each window that is too short, and who should wait for a second wave so
// that the others keep the clock. It lists nothing for a class that does.
func (s *Solver) Mends(lifters []Lifter) ([]Mend, error) {
	if err := s.validLifters(lifters); err != nil {
		return nil, err
	}
	q := s.ask(lifters, keepShown)
	at := q.seated()
	plan := q.plan(at)
	if plan.Keeps() {
		return nil, nil
	}
	var mends []Mend
	if m, ok := q.bestMove(at); ok {
		mends = append(mends, m)
	}
	mends = append(mends, longer(plan)...)
	if m := q.wave(at); len(m.Lifters) > 0 {
		mends = append(mends, m)
	}
	return mends, nil
}

// bestMove tries every lifter of a station that is late at every other station,
// and everybody who stands.
func (q *question) bestMove(s seats) (best Mend, found bool) {
	least := q.sum(s)
	now := least
	for from, g := range s {
		if q.cost(g, from).over == 0 && from != q.standing() {
			continue
		}
		for i := range g.each() {
			for to := range q.stations {
				if to == from || !q.fits(s[to]|one(i), to) {
					continue
				}
				c := now.minus(q.cost(g, from)).minus(q.cost(s[to], to)).
					plus(q.cost(g&^one(i), from)).plus(q.cost(s[to]|one(i), to))
				if c.below(least) && (c.standing < now.standing || c.over < now.over) {
					least, found = c, true
					best = Mend{Do: Move, Lifters: []int{q.place[i]}, To: to, Over: c.over}
				}
			}
		}
	}
	return best, found
}

// longer names each window in which some station is late.
func longer(p Plan) []Mend {
	var mends []Mend
	for w := range p.Groups[0].Windows {
		m := Mend{Do: Longer, Window: w, Over: p.Over}
		for _, g := range p.Groups {
			over := g.Windows[w].Over()
			m.Seconds = max(m.Seconds, over)
			m.Over -= over
		}
		if m.Seconds > 0 {
			mends = append(mends, m)
		}
	}
	return mends
}

// wave lets lifters of late stations wait, always the one whose absence helps
// most, until no station is late or one lifter alone is. Who stands waits as
// well. How the second wave fares is a question of its own.
func (q *question) wave(s seats) Mend {
	m := Mend{Do: Wave}
	for i := range s[q.standing()].each() {
		m.Lifters = append(m.Lifters, q.place[i])
	}
	for at := range q.stations {
		g := s[at]
		for g.size() > 1 && q.cost(g, at).over > 0 {
			i := q.burden(g, at)
			m.Lifters = append(m.Lifters, q.place[i])
			g &^= one(i)
		}
		m.Over += q.cost(g, at).over
	}
	return m
}

// burden is the lifter without whom a group costs least.
func (q *question) burden(g group, at int) int {
	best := g.first()
	for i := range g.each() {
		if q.cost(g&^one(i), at).below(q.cost(g&^one(best), at)) {
			best = i
		}
	}
	return best
}
