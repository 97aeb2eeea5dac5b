package demo

import (
	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// daysKnown is how long before the cycle the first athlete joined.
const daysKnown = 400

// row is an athlete as the roster tells: who, and what sets them apart.
type row struct {
	name     string
	standard gym.Standard
	track    int          // of trackKeys; -1 is none
	free     day.Weekdays // 0 follows the track
	want     int
	note     string
}

// roster is the Ropewalk's: a harbour town's trades, none of them anybody's.
func roster() []row {
	const m, w, power, olympic, strong = gym.StandardM, gym.StandardW, 0, 1, 2
	only := day.WeekdaysOf
	return []row{
		{"Ansa Kivelo", w, power, 0, 0, "Pilots the chain ferry; off every other Sunday."},
		{"Bram Oostling", m, power, 0, 0, "Net maker. Wants a 200 kg deadlift."},
		{"Chidera Anoruo", w, power, 0, 0, "School nurse."},
		{"Darius Fenwright", m, power, only(day.Monday, day.Tuesday, day.Thursday, day.Friday), 4, "Boat builder; long days before the regatta."},
		{"Elodie Marquand", w, power, only(day.Tuesday, day.Thursday, day.Saturday, day.Sunday), 4, "Bakes from three in the morning: evenings are short."},
		{"Faisal Raheemi", m, power, 0, 0, "Crane driver, came from the rowing club."},
		{"Greta Sollheim", w, power, only(day.Monday, day.Wednesday, day.Friday), 3, "Harbour office."},
		{"Hamish Dunlorne", m, power, 0, 0, "Retired diver, trains for his grandchildren."},
		{"Ines Cabralho", w, power, 0, 0, "Back from three weeks at sea."},
		{"Jorun Askevik", w, power, only(day.Monday, day.Tuesday, day.Thursday, day.Saturday), 4, "Shift work at the cold store."},
		{"Kofi Mensarh", m, power, 0, 0, "Teaches chemistry."},
		{"Lucia Benavente", w, power, 0, 0, "Sail loft. First year with a bar."},
		{"Matteo Ferrandi", m, power, 0, 0, "Cook on the night boat, reads loads in pounds."},
		{"Nadia Petrovska", w, olympic, 0, 0, "Sprinted at school."},
		{"Oren Talmidge", m, olympic, 0, 0, "Organ tuner. Careful with both wrists."},
		{"Priya Venkatar", w, olympic, 0, 0, "Marine surveyor, away some Fridays."},
		{"Quentin Lasalle", m, olympic, only(day.Monday, day.Tuesday, day.Thursday), 3, "Lock keeper."},
		{"Rosa Iturbiel", w, olympic, only(day.Wednesday, day.Friday, day.Sunday), 3, "Physics student."},
		{"Sione Tavakilo", m, olympic, 0, 0, "Came over from powerlifting this cycle."},
		{"Thandi Mokwera", w, olympic, 0, 0, "Customs officer."},
		{"Umar Sadiqeen", m, olympic, 0, 0, "Paints ships."},
		{"Vera Hollander", w, olympic, only(day.Tuesday, day.Thursday, day.Saturday, day.Sunday), 4, "Weekends and two evenings."},
		{"Wen Liangshu", m, olympic, 0, 0, "Clockmaker; counts everything."},
		{"Xanthe Kyriaki", w, strong, 0, 0, "Quarry office."},
		{"Yusuf Demirkol", m, strong, 0, 0, "Loads the fish market."},
		{"Zofia Wrzesna", w, strong, only(day.Monday, day.Thursday, day.Friday, day.Sunday), 4, "Vet for the hill farms."},
		{"Alasdair Pennick", m, strong, 0, 0, "Timber yard."},
		{"Birgit Nordvall", w, strong, only(day.Monday, day.Tuesday, day.Friday), 3, "Tug mate."},
		{"Cormac Tierneigh", m, strong, only(day.Tuesday, day.Thursday, day.Sunday), 3, "Plays prop on Saturdays in winter."},
		{"Dalia Abensour", w, strong, 0, 0, "Stonemason."},
		{"Emeka Obiorah", m, strong, 0, 0, "Fire brigade."},
		{"Freya Lindqvere", w, strong, 0, 0, "Lighthouse trust; two hours' drive."},
		{"Goran Matovich", m, strong, 0, 0, "Diesel fitter."},
		{"Hana Okazumi", w, -1, 0, 0, "New this week: has lifted elsewhere, choose a track with her."},
		{"Idris Callowan", m, power, 0, 0, "On paternity leave until the spring."},
		{"Juno Whitlaw", w, power, 0, 0, "Moved to the capital."},
	}
}

// Those of the roster with a story of their own.
const (
	away      = "Ines Cabralho"
	inPounds  = "Matteo Ferrandi"
	mover     = "Sione Tavakilo"
	newcomer  = "Hana Okazumi"
	onLeave   = "Idris Callowan"
	gone      = "Juno Whitlaw"
	beginner  = "Lucia Benavente"
	wrists    = "Oren Talmidge"
	shoulder  = "Emeka Obiorah"
	knee      = "Hamish Dunlorne"
	shy       = "Greta Sollheim"
	initialed = "Wen Liangshu"
)

// person is an athlete with what only the generator knows.
type person struct {
	gym.Athlete
	track int
	level float64                 // log of strength against a usual member
	gain  float64                 // of it, a week trained
	slope float64                 // how much reps cost against the handbook's curve
	knack map[gym.LiftKey]float64 // log, at each lift
	fit   float64                 // log capacity in conditioning
	comes float64                 // chance to come when due
	early bool
	skill map[gym.MovementKey]float64 // log, at each movement
}

// enrol makes the athletes, with their tracks.
func (w *world) enrol() {
	for i, r := range roster() {
		joined := w.start.Add(-w.chance.between(160, daysKnown-10))
		if r.name == newcomer {
			joined = w.today.Add(-2)
		}
		p := &person{Athlete: w.athlete(r, joined), track: r.track, knack: map[gym.LiftKey]float64{}, skill: map[gym.MovementKey]float64{}}
		p.level = w.chance.around(0.04, 0.15)
		p.gain = max(0.0008, w.chance.around(0.0032, 0.0013))
		p.slope = w.chance.around(1, 0.1)
		p.fit = w.chance.around(0, 0.12)
		p.comes = min(0.97, w.chance.around(0.89, 0.05))
		p.early = i%3 == 1
		if r.name == beginner {
			p.level, p.gain = -0.3, 0.011
		}
		w.people = append(w.people, p)
		w.book.Athletes = append(w.book.Athletes, p.Athlete)
		w.assign(r, p)
	}
}

func (w *world) athlete(r row, joined day.Date) gym.Athlete {
	a := gym.Athlete{
		ID: w.id(joined, evening), Name: r.name, Standard: r.standard, Status: gym.Active, Unit: mass.KG,
		Joined: joined, Show: gym.WallName, Free: r.free, Want: r.want, Notes: r.note,
	}
	switch r.name {
	case inPounds:
		a.Unit = mass.LB
	case away:
		a.BackOn = w.start.Add(29)
	case onLeave:
		a.Status = gym.Paused
	case gone:
		a.Status = gym.Archived
	case shy:
		a.Show = gym.WallNothing
	case initialed:
		a.Show = gym.WallInitials
	}
	return a
}

func (w *world) assign(r row, p *person) {
	if r.track < 0 {
		return
	}
	if r.name != mover {
		w.move(p, r.track, p.Joined)
		return
	}
	w.move(p, 0, p.Joined)
	w.move(p, r.track, w.start.Add(14))
}

func (w *world) move(p *person, track int, from day.Date) {
	w.book.Moves = append(w.book.Moves, gym.TrackMove{
		ID: w.id(from, evening), Athlete: p.ID, Track: w.book.Tracks[track].ID, From: from, Made: instant(from, evening),
	})
}
