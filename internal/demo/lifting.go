package demo

import (
	"windlass/internal/climb"
	"windlass/internal/cycle"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/repmax"
)

// lifts takes somebody through a class's climb and logs what came of it.
func (w *world) lifts(c *gym.Class, d cycle.Due) (gym.Lifter, error) {
	p := w.person(d.Athlete)
	l := gym.Lifter{Athlete: p.ID, Track: d.Track, Station: -1}
	lift, ok := w.racks.lift(d.Plan.Main.Lift)
	if !ok || len(d.Plan.Main.Scheme) > 0 || d.Plan.Main.Reps == 0 {
		return l, nil // a day without a climb
	}
	l.Lift, l.Reps = lift.Key, d.Plan.Main.Reps
	rack, bar, err := w.racks.of(lift, p.Standard)
	if err != nil {
		return l, err
	}
	l.Bar = bar
	rig := climb.Rig{Rack: rack, Rounding: w.book.Settings.Rounding, Unit: w.book.Settings.Unit}
	w.base(&l, p, lift, rig)
	path, err := w.calls(c.Climb, &l, rig, w.onTheDay(p, lift, l.Reps, c.On))
	if err != nil {
		return l, err
	}
	over, under := w.kept.room(p.ID, lift.Key, l.Reps)
	if path.Outcome.Kind != climb.Counts || path.Outcome.Load <= over || path.Outcome.Load >= under {
		l.Missed = true
		return l, nil
	}
	l.Result = w.log(p, lift, l.Reps, path.Outcome.Load, c.On, gym.Tested, c.ID).ID
	return l, nil
}

// base gives a lifter the record, the estimate or a first load to count from.
func (w *world) base(l *gym.Lifter, p *person, lift gym.Lift, rig climb.Rig) {
	down := func(limit mass.Mass) (mass.Mass, bool) {
		load, ok := rig.Rack.AtMost(limit)
		return load.Total, ok
	}
	card := repmax.NewCard(w.kept.known(p.ID, lift.Key), []int{l.Reps}, repmax.Handbook(), down)
	e := card.Entry(l.Reps)
	l.Base, l.Source = e.Load, e.Source
	if e.Known() {
		return
	}
	lightest, _ := rig.Rack.AtLeast(0)
	l.Start = lightest.Total
	related := repmax.NewCard(w.kept.known(p.ID, lift.Related), []int{1}, repmax.Handbook(), down)
	if g, ok := repmax.NewGuide(lift, related.Entry(1).Load); ok {
		l.Start = g.Start(down, lightest.Total)
	}
}

// calls makes the calls of somebody who can lift so much today, and feels it
// nearly right.
func (w *world) calls(plan gym.ClimbPlan, l *gym.Lifter, rig climb.Rig, able mass.Mass) (climb.Path, error) {
	feels := able.Scale(w.chance.around(1, 0.012))
	path, err := climb.Build(plan, *l, rig)
	for i := 0; err == nil && i < len(plan.Rungs); i++ {
		rung, kinds, asked := path.Owes(i)
		if !asked || rung != i {
			continue
		}
		call := answer(path, i, able, feels)
		if kinds[0] == gym.EasyCall {
			call = effort(path.Steps[i].Load, able)
		}
		l.Calls = append(l.Calls, gym.Call{Rung: i, Kind: call})
		path, err = climb.Build(plan, *l, rig)
	}
	return path, err
}

// answer is the call after a rung: on, as long as the next load seems possible.
func answer(p climb.Path, i int, able, feels mass.Mass) gym.CallKind {
	s := p.Steps[i]
	switch {
	case s.Load > able && (s.State == climb.Settle || i == len(p.Steps)-1):
		return gym.MissedCall
	case i == len(p.Steps)-1 || s.State == climb.Settle:
		return gym.ClimbCall
	case nextLoad(p, i) > feels:
		return gym.SettleCall
	}
	return gym.ClimbCall
}

// nextLoad is what climbing on would bring.
func nextLoad(p climb.Path, i int) mass.Mass {
	next := p.Steps[i+1]
	if len(next.Options) > 0 {
		return next.Options[0].Load
	}
	return next.Load
}

// effort is the answer in a climb that finds the rep max.
func effort(load, able mass.Mass) gym.CallKind {
	switch r := load.Ratio(able); {
	case r > 1:
		return gym.MissedCall
	case r > 0.92:
		return gym.HardCall
	case r > 0.78:
		return gym.FairCall
	}
	return gym.EasyCall
}
