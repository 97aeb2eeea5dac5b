package store

import (
	"fmt"
	"reflect"
	"strings"
	"time"

	"pgregory.net/rapid"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// artist draws nouns that the rules of package gym allow, every field filled by
// reflection: a field added to a noun and forgotten in its table is drawn too,
// and then does not come back.
type artist struct {
	t    *rapid.T
	book *gym.Book // draws name only what is in it
	made int
}

func (a *artist) key(prefix string) string {
	a.made++
	return fmt.Sprintf("%s-%d", prefix, a.made)
}

func anyOf[T any](values ...T) *rapid.Generator[any] { return rapid.SampledFrom(values).AsAny() }

func typeOf[T any]() reflect.Type { return reflect.TypeFor[T]() }

var drawnTypes = map[reflect.Type]*rapid.Generator[any]{
	typeOf[gym.Standard]():    anyOf(gym.StandardM, gym.StandardW),
	typeOf[gym.Status]():      anyOf(gym.Active, gym.Paused, gym.Archived),
	typeOf[gym.WallShow]():    anyOf("", gym.WallName, gym.WallInitials, gym.WallNothing),
	typeOf[gym.Region]():      anyOf("", gym.Lower, gym.Upper, gym.Trunk, gym.WholeBody),
	typeOf[gym.Measure]():     anyOf(gym.ByLoad, gym.ByReps, gym.ByDistance, gym.ByCalories, gym.ByTime, gym.ByHold),
	typeOf[gym.Source]():      anyOf(gym.Tested, gym.Reported),
	typeOf[gym.Outcome]():     anyOf(gym.Held, gym.Slowed, gym.Stopped),
	typeOf[gym.Tier]():        anyOf(gym.Full, gym.Mid, gym.Light),
	typeOf[gym.Stage]():       anyOf(gym.SetUp, gym.Climbing, gym.Conditioning, gym.Finished),
	typeOf[mass.Unit]():       anyOf(mass.KG, mass.LB),
	typeOf[mass.Mass]():       rapid.Map(rapid.Int64Range(1, int64(mass.Max)), func(n int64) mass.Mass { return mass.Mass(n) }).AsAny(),
	typeOf[day.Weekday]():     rapid.IntRange(0, 6).AsAny(),
	typeOf[day.Weekdays]():    rapid.Uint8Range(0, 127).AsAny(),
	typeOf[day.Clock]():       rapid.IntRange(0, 1439).AsAny(),
	typeOf[day.Date]():        rapid.OneOf(rapid.Just(day.None), someDate()).AsAny(),
	typeOf[time.Time]():       rapid.OneOf(rapid.Just(time.Time{}), someTime()).AsAny(),
	typeOf[gym.LiftKey]():     rapid.Just(gym.LiftKey("")).AsAny(),
	typeOf[gym.MovementKey](): rapid.Just(gym.MovementKey("")).AsAny(),
	typeOf[gym.ID]():          rapid.Just(gym.ID("")).AsAny(),
}

func someDate() *rapid.Generator[day.Date] {
	return rapid.Map(rapid.Int32Range(1, 40_000), func(n int32) day.Date { return day.Date(n) })
}

func someTime() *rapid.Generator[time.Time] {
	return rapid.Map(rapid.Int64Range(0, 4e18), func(n int64) time.Time { return time.Unix(0, n).UTC() })
}

var drawnKinds = map[reflect.Kind]*rapid.Generator[any]{
	reflect.Float64: rapid.Float64Range(0, 1e6).AsAny(),
	reflect.String:  rapid.StringN(0, 8, -1).AsAny(),
}

// fill draws a whole noun; the caller then sets its key and what it names.
func fill[T any](a *artist) T {
	return rapid.MakeCustom[T](rapid.MakeConfig{Types: drawnTypes, Kinds: drawnKinds}).Draw(a.t, "noun")
}

// pick returns the key of a row, or nothing when there is none or one in five.
func pick[T any, K ~string](a *artist, rows []T, of func(T) K) K {
	if len(rows) == 0 || rapid.IntRange(0, 4).Draw(a.t, "none") == 0 {
		return ""
	}
	return of(rapid.SampledFrom(rows).Draw(a.t, "row"))
}

// known is pick for a reference that a noun must have.
func known[T any, K ~string](a *artist, rows []T, of func(T) K) K {
	return of(rapid.SampledFrom(rows).Draw(a.t, "row"))
}

func trackID(t gym.Track) gym.ID                    { return t.ID }
func athleteID(t gym.Athlete) gym.ID                { return t.ID }
func classID(t gym.Class) gym.ID                    { return t.ID }
func slotID(t gym.Slot) gym.ID                      { return t.ID }
func cycleID(t gym.Cycle) gym.ID                    { return t.ID }
func moveID(t gym.TrackMove) gym.ID                 { return t.ID }
func restrictionID(t gym.Restriction) gym.ID        { return t.ID }
func closureID(t gym.Closure) gym.ID                { return t.ID }
func climbID(t gym.ClimbPlan) gym.ID                { return t.ID }
func resultID(t gym.Result) gym.ID                  { return t.ID }
func boutID(t gym.Bout) gym.ID                      { return t.ID }
func overrideID(t gym.Override) gym.ID              { return t.ID }
func climbName(t gym.ClimbPlan) string              { return t.Name }
func liftKey(t gym.Lift) gym.LiftKey                { return t.Key }
func movementKey(t gym.Movement) gym.MovementKey    { return t.Key }
func finisherKey(t gym.Finisher) string             { return t.Key }
func drillKey(t gym.Drill) string                   { return t.Key }
func named(prefix, text string) string              { return prefix + strings.ReplaceAll(text, `"`, "") }
func orNew[K ~string](a *artist, old K, p string) K { return cmpOr(old, K(a.key(p))) }

func cmpOr[K ~string](k, otherwise K) K {
	if k == "" {
		return otherwise
	}
	return k
}

func (a *artist) lift() gym.Lift {
	l := fill[gym.Lift](a)
	l.Key = orNew(a, pick(a, a.book.Lifts, liftKey), "lift")
	l.Name = named("Lift ", l.Name)
	if l.Related = pick(a, a.book.Lifts, liftKey); l.Related == l.Key {
		l.Related = ""
	}
	return l
}

func (a *artist) movement() gym.Movement {
	m := fill[gym.Movement](a)
	m.Key = orNew(a, pick(a, a.book.Movements, movementKey), "movement")
	m.Name = named("Movement ", m.Name)
	m.Linked = pick(a, a.book.Lifts, liftKey)
	m.ReferenceReps &= 0xff
	return m
}

func (a *artist) finisher() gym.Finisher {
	f := fill[gym.Finisher](a)
	f.Key, f.Name = orNew(a, pick(a, a.book.Finishers, finisherKey), "finisher"), named("Finisher ", f.Name)
	return f
}

func (a *artist) drill() gym.Drill {
	d := fill[gym.Drill](a)
	d.Key, d.Name = orNew(a, pick(a, a.book.Drills, drillKey), "drill"), named("Drill ", d.Name)
	return d
}

func (a *artist) track() gym.Track {
	t := fill[gym.Track](a)
	t.ID, t.Name = orNew(a, pick(a, a.book.Tracks, trackID), "track"), named("Track ", t.Name)
	return t
}

func (a *artist) athlete() gym.Athlete {
	t := fill[gym.Athlete](a)
	t.ID, t.Name = orNew(a, pick(a, a.book.Athletes, athleteID), "athlete"), named("Athlete ", t.Name)
	t.Want &= 7
	return t
}

func (a *artist) move() gym.TrackMove {
	m := fill[gym.TrackMove](a)
	m.ID = orNew(a, pick(a, a.book.Moves, moveID), "move")
	m.Athlete, m.Track = known(a, a.book.Athletes, athleteID), pick(a, a.book.Tracks, trackID)
	m.From = someDate().Draw(a.t, "from")
	return m
}

func (a *artist) restriction() gym.Restriction {
	r := fill[gym.Restriction](a)
	r.ID, r.Athlete = orNew(a, pick(a, a.book.Restrictions, restrictionID), "restriction"), known(a, a.book.Athletes, athleteID)
	return r
}

func (a *artist) result() gym.Result {
	r := fill[gym.Result](a)
	r.ID, r.Athlete, r.Lift = gym.ID(a.key("result")), known(a, a.book.Athletes, athleteID), known(a, a.book.Lifts, liftKey)
	r.Class = pick(a, a.book.Classes, classID)
	r.Reps = rapid.IntRange(1, gym.MaxReps).Draw(a.t, "reps")
	r.Amount = rapid.Float64Range(0, 86_400).Draw(a.t, "amount")
	r.On = someDate().Draw(a.t, "on")
	return r
}

func (a *artist) bout() gym.Bout {
	b := fill[gym.Bout](a)
	b.ID, b.Athlete, b.Movement = gym.ID(a.key("bout")), known(a, a.book.Athletes, athleteID), known(a, a.book.Movements, movementKey)
	b.Class = pick(a, a.book.Classes, classID)
	b.Reps = rapid.IntRange(1, 10_000).Draw(a.t, "reps")
	b.On = someDate().Draw(a.t, "on")
	return b
}

func (a *artist) override() gym.Override {
	o := fill[gym.Override](a)
	o.ID, o.Athlete, o.Movement = gym.ID(a.key("override")), known(a, a.book.Athletes, athleteID), pick(a, a.book.Movements, movementKey)
	load, tier, share := o.Load, o.Tier, rapid.Float64Range(0.01, 0.99).Draw(a.t, "share")
	o.Load, o.Tier, o.Share = 0, "", 0
	switch kind := rapid.IntRange(0, 2).Draw(a.t, "one of three"); {
	case kind == 0 && o.Movement != "": // no load fits every movement
		o.Load = load
	case kind == 1:
		o.Tier = tier
	default:
		o.Share = share
	}
	o.Reason = named("Because ", o.Reason)
	o.From = someDate().Draw(a.t, "from")
	if o.Until != day.None {
		o.Until = o.From.Add(rapid.IntRange(0, 30).Draw(a.t, "days"))
	}
	return o
}

func (a *artist) climb() gym.ClimbPlan {
	c := fill[gym.ClimbPlan](a)
	c.ID, c.Name = orNew(a, pick(a, a.book.Climbs, climbID), "climb"), a.key("climb name")
	return c
}

func (a *artist) slot() gym.Slot {
	s := fill[gym.Slot](a)
	s.ID, s.Minutes = orNew(a, pick(a, a.book.Slots, slotID), "slot"), s.Minutes&0xff
	for i := range s.Tracks {
		s.Tracks[i] = pick(a, a.book.Tracks, trackID)
	}
	return s
}

func (a *artist) closure() gym.Closure {
	c := fill[gym.Closure](a)
	c.ID = orNew(a, pick(a, a.book.Closures, closureID), "closure")
	c.From = someDate().Draw(a.t, "from")
	c.Until = c.From.Add(rapid.IntRange(0, 30).Draw(a.t, "days"))
	return c
}

func (a *artist) cycle() gym.Cycle {
	c := gym.Cycle{
		ID: orNew(a, pick(a, a.book.Cycles, cycleID), "cycle"), Name: fill[string](a), Goal: fill[string](a),
		Start: someDate().Draw(a.t, "start"), Weeks: []gym.WeekKind{gym.TrainingWeek, gym.TestWeek},
	}
	for range rapid.IntRange(0, 2).Draw(a.t, "tracks") {
		p := gym.TrackPlan{Track: pick(a, a.book.Tracks, trackID), Wave: gym.StepWave, MainDays: 3}
		for week := range rapid.IntRange(0, 2).Draw(a.t, "days") {
			p.Days = append(p.Days, a.dayPlan(week+1))
		}
		c.Tracks = append(c.Tracks, p)
	}
	return c
}

func (a *artist) dayPlan(week int) gym.DayPlan {
	return gym.DayPlan{
		Week: week, Kind: gym.MainDay, Title: fill[string](a), Notes: fill[string](a),
		WarmUp:   []gym.DrillLine{{Drill: pick(a, a.book.Drills, drillKey), Dose: "2 × 10"}},
		Main:     gym.MainLift{Lift: pick(a, a.book.Lifts, liftKey), Reps: 5, Climb: pick(a, a.book.Climbs, climbName), Scheme: []gym.Sets{{Percent: 70, Sets: 3, Reps: 2}}},
		Second:   gym.SecondLift{Lift: pick(a, a.book.Lifts, liftKey), OfLift: pick(a, a.book.Lifts, liftKey)},
		Workout:  a.workout(),
		Finisher: []gym.FinisherLine{{Finisher: pick(a, a.book.Finishers, finisherKey)}},
	}
}

func (a *artist) workout() gym.Workout {
	w := gym.Workout{Format: gym.AMRAP, Seconds: 600, Reps: []int{21, 15, 9}}
	for range rapid.IntRange(0, 2).Draw(a.t, "items") {
		w.Items = append(w.Items, gym.Item{Movement: pick(a, a.book.Movements, movementKey), Amount: 10, Loads: fill[map[gym.Standard]gym.TierLoads](a)})
	}
	return w
}

func (a *artist) class() gym.Class {
	c := gym.Class{
		ID: orNew(a, pick(a, a.book.Classes, classID), "class"), Slot: pick(a, a.book.Slots, slotID), Name: fill[string](a),
		On: someDate().Draw(a.t, "on"), At: fill[day.Clock](a), Stage: fill[gym.Stage](a), Climb: fill[gym.ClimbPlan](a),
		Clock: fill[gym.Run](a), Workout: fill[gym.Run](a), Finished: fill[time.Time](a),
	}
	for range rapid.IntRange(0, 3).Draw(a.t, "lifters") {
		l := fill[gym.Lifter](a)
		l.Athlete, l.Track, l.Lift = pick(a, a.book.Athletes, athleteID), pick(a, a.book.Tracks, trackID), pick(a, a.book.Lifts, liftKey)
		c.Lifters = append(c.Lifters, l)
	}
	for range rapid.IntRange(0, 2).Draw(a.t, "pieces") {
		c.Pieces = append(c.Pieces, gym.Piece{Track: pick(a, a.book.Tracks, trackID), Lift: pick(a, a.book.Lifts, liftKey), Reps: 3, Workout: a.workout()})
	}
	return c
}
