package desk_test

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/climb"
	"windlass/internal/clock"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
)

// hall is a starter gym, of eight stations with a 20 kg bar and six 15 kg bars,
// with an open class on the climb of twenty minutes.
func hall(t *testing.T) (*bench, gym.Class) {
	t.Helper()
	b := newBench(t)
	n := byte(0)
	starter, err := desk.Starter("Hall", func() gym.ID { n++; return gym.NewID(monday, [10]byte{n}) })
	require.NoError(t, err)
	require.NoError(t, b.KeepEquipment(starter.Equipment))
	plan, err := climb.Generate(20)
	require.NoError(t, err)
	c, err := b.OpenFreeClass()
	require.NoError(t, err)
	require.NoError(t, b.KeepClimb(c.ID, plan))
	return b, c
}

// come checks somebody in with a record.
func (b *bench) come(class gym.ID, name string, standard gym.Standard, lift gym.LiftKey, text string) gym.Athlete {
	b.t.Helper()
	a := b.NewAthlete(name)
	a.Standard = standard
	require.NoError(b.t, b.AddAthlete(a, powerlifting))
	if text != "" {
		b.log(a, lift, text)
	}
	require.NoError(b.t, b.CheckIn(class, a.ID))
	return a
}

func (b *bench) lifts(class gym.ID, lift gym.LiftKey, reps int) {
	b.t.Helper()
	require.NoError(b.t, b.KeepPiece(class, gym.Piece{Track: powerlifting, Lift: lift, Reps: reps}))
}

func (b *bench) seatOf(class gym.ID, a gym.Athlete) gym.Lifter {
	b.t.Helper()
	c := mustClass(b.t, b.Desk, class)
	for _, l := range c.Lifters {
		if l.Athlete == a.ID {
			return l
		}
	}
	require.Fail(b.t, "not checked in", a.Name)
	return gym.Lifter{}
}

// The lighter bar of the Olympic lifts is lent to an empty station (IWF TCRR
// 3.3.3: women lift a 15 kg bar); no station of the starter has it by itself.
func TestLighterBarsAreLentToEmptyStations(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "clean", 1)
	m := b.come(c.ID, "Ola Berg", gym.StandardM, "clean", "1x100")
	w := b.come(c.ID, "Una Dahl", gym.StandardW, "clean", "1x70")
	assert.Equal(t, "bar-20", b.seatOf(c.ID, m).Bar)
	assert.Equal(t, "bar-15", b.seatOf(c.ID, w).Bar)
	assert.GreaterOrEqual(t, b.seatOf(c.ID, w).Station, 0)
	assert.NotEqual(t, b.seatOf(c.ID, m).Station, b.seatOf(c.ID, w).Station, "two bars, two stations")
	board := b.Boards().Board(mustClass(t, b.Desk, c.ID))
	assert.Equal(t, "15 kg bar", board.Stations[b.seatOf(c.ID, w).Station].Bar)
}

func TestLiftersAreMovedByHand(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "clean", 1)
	m := b.come(c.ID, "Ola Berg", gym.StandardM, "clean", "1x100")
	w := b.come(c.ID, "Una Dahl", gym.StandardW, "clean", "1x70")
	there := b.seatOf(c.ID, m).Station
	require.NoError(t, b.MoveLifter(c.ID, w.ID, there))
	assert.Equal(t, there, b.seatOf(c.ID, w).Station)
	assert.Equal(t, "bar-20", b.seatOf(c.ID, w).Bar, "at a shared bar everybody lifts that bar")
	assert.Less(t, b.seatOf(c.ID, w).Place, b.seatOf(c.ID, m).Place, "the lighter lifts first")

	b.lifts(c.ID, "back-squat", 3)
	s := b.come(c.ID, "Siv Moen", gym.StandardW, "back-squat", "3x90")
	b.log(m, "deadlift", "5x150")
	strongman := b.NewID()
	require.NoError(t, b.file.Write(t.Context(), gym.PutTrack{Track: gym.Track{ID: strongman, Name: "Strongman", Position: 2}}))
	b.Desk = b.open()
	require.NoError(t, b.KeepPiece(c.ID, gym.Piece{Track: strongman, Lift: "deadlift", Reps: 5}))
	require.NoError(t, b.ChangeTrack(c.ID, m.ID, strongman))
	require.GreaterOrEqual(t, b.seatOf(c.ID, m).Station, 0, "another lift, another station")
	err := b.MoveLifter(c.ID, s.ID, b.seatOf(c.ID, m).Station)
	require.ErrorContains(t, err, "two lifts do not share a bar")
	require.ErrorContains(t, b.MoveLifter(c.ID, s.ID, 99), "the gym has 8 stations")
	require.NoError(t, b.MoveLifter(c.ID, s.ID, -1))
	assert.Equal(t, -1, b.seatOf(c.ID, s).Station)
	notes := b.Sharing(mustClass(t, b.Desk, c.ID)).Notes
	require.NotEmpty(t, notes)
	assert.Contains(t, notes[0].Text, "Siv Moen has no station")
}

// Six lifters on one of two stations cannot keep rungs of one minute; the mend
// lengthens the rungs until it can.
func TestSharingOffersAMendThatWorks(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "back-squat", 3)
	var all []gym.Athlete
	for i := range 6 {
		all = append(all, b.come(c.ID, fmt.Sprint("Lifter ", i), gym.StandardM, "back-squat", fmt.Sprintf("3x%d", 100+10*i)))
	}
	for _, a := range all {
		require.NoError(t, b.MoveLifter(c.ID, a.ID, 0))
	}
	before := mustClass(t, b.Desk, c.ID)
	notes := b.Sharing(before).Notes
	require.NotEmpty(t, notes)
	assert.Contains(t, notes[0].Text, "The clock cannot be kept")
	assert.Contains(t, notes[0].Text, "at Rack 1")
	require.NotEmpty(t, notes[0].Mend)
	require.NoError(t, notes[0].Do(c.ID))
	after := mustClass(t, b.Desk, c.ID)
	assert.Empty(t, climb.Check(after.Climb), "the longer climb is still a climb")
	for _, n := range b.Sharing(after).Notes {
		assert.NotContains(t, n.Text, "cannot be kept")
	}
	_, err := b.Undo()
	require.NoError(t, err)
	assert.Equal(t, before.Climb, mustClass(t, b.Desk, c.ID).Climb, "and can be undone")
}

// Whatever the class, no two stations count on the same pair of plates while each
// has loads of its own heap; where the stock is short, the board says so.
func TestStationsNeverCountOnTheSamePlates(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		book := smallGym(t)
		for i := range book.Equipment.Stock.Plates {
			book.Equipment.Stock.Plates[i].Pairs = rapid.IntRange(1, 8).Draw(rt, "pairs")
		}
		book.Equipment.Stations = nil
		for i := range rapid.IntRange(1, 5).Draw(rt, "stations") {
			book.Equipment.Stations = append(book.Equipment.Stations, gym.Station{Name: fmt.Sprint("Rack ", i+1), Bar: "bar-20"})
		}
		plan, err := climb.Generate(20)
		require.NoError(rt, err)
		c := gym.Class{Climb: plan}
		for i := range rapid.IntRange(1, 9).Draw(rt, "lifters") {
			c.Lifters = append(c.Lifters, gym.Lifter{
				Athlete: gym.ID(fmt.Sprint(i)), Lift: "back-squat", Reps: 3, Bar: "bar-20", Place: i, Station: i % len(book.Equipment.Stations),
				Base: mass.Of(float64(rapid.IntRange(30, 200).Draw(rt, "base")), mass.KG),
			})
		}
		boards := desk.NewBoards(&book)
		board := boards.Board(c)
		told := boards.Clashes(board)
		for _, disc := range wanted(board, book.Equipment.Stock) {
			assert.NotEmpty(rt, told, "%s runs out and nobody says so", disc)
		}
	})
}

// wanted is a count by brute force of the discs that run out, all stations loading
// their first lifters at once, then their second.
func wanted(b desk.Board, stock plates.Stock) (short []plates.Disc) {
	on := map[int][]plates.Disc{}
	most := 0
	for _, s := range b.Stations {
		most = max(most, len(s.Lifters))
	}
	for rung := range b.Class.Climb.Rungs {
		for turn := range most {
			need := map[plates.Disc]int{}
			for i, s := range b.Stations {
				if turn < len(s.Lifters) && s.Lifters[turn].Sets[rung].Likely() > 0 {
					on[i] = s.Lifters[turn].Sets[rung].Discs
				}
				for _, d := range on[i] {
					need[d]++
				}
			}
			for _, p := range stock.Plates {
				if need[p.Disc()] > p.Pairs {
					short = append(short, p.Disc())
				}
			}
		}
	}
	return short
}

func TestBoardLoadsAreOnTheBars(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "deadlift", 5)
	for i := range 8 {
		b.come(c.ID, fmt.Sprint("Lifter ", i), gym.StandardM, "deadlift", fmt.Sprintf("5x%d", 60+20*i))
	}
	board := b.Boards().Board(mustClass(t, b.Desk, c.ID))
	for _, l := range board.Lifters() {
		for i, s := range l.Sets {
			total := 20 * mass.Kilogram
			for _, d := range s.Discs {
				total += 2 * d.Mass
			}
			if s.Likely() > 0 {
				assert.Equal(t, s.Likely(), total, "%s at rung %d", l.Name, i+1)
			}
		}
	}
}

func TestQueueAsksLateCallsFirst(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "back-squat", 3)
	first := b.come(c.ID, "Ada Lund", gym.StandardM, "back-squat", "3x100")
	second := b.come(c.ID, "Bo Ito", gym.StandardM, "back-squat", "3x140")
	require.NoError(t, b.StartClock(c.ID))
	at := func(minutes float64) (desk.Board, clock.Moment) {
		b.now = monday.Add(time.Duration(minutes * float64(time.Minute)))
		board := b.Boards().Board(mustClass(t, b.Desk, c.ID))
		return board, board.At(b.now)
	}
	board, m := at(10)
	assert.Empty(t, board.Queue(m), "no call is owed under the top rungs")
	board, m = at(13)
	require.Len(t, board.Queue(m), 2)
	begin, _ := board.NextCall(m, "")
	assert.Equal(t, first.ID, begin)
	require.NoError(t, b.Call(c.ID, first.ID, gym.ClimbCall))
	board, m = at(13.5)
	next, ok := board.NextCall(m, first.ID)
	require.True(t, ok)
	assert.Equal(t, second.ID, next)
	board, m = at(14.5)
	queue := board.Queue(m)
	require.Len(t, queue, 2)
	assert.Equal(t, second.ID, queue[0].Lifter.Athlete)
	assert.True(t, queue[0].Late)
	assert.Equal(t, 7, queue[0].Rung, "the eighth rung's call is honoured in the ninth")
	assert.False(t, queue[1].Late)
	row, _ := board.Lifter(second.ID)
	assert.Len(t, row.Shown(m).Now.Either, 2, "both numbers stand while the call is open")
	require.NoError(t, b.Call(c.ID, second.ID, gym.SettleCall))
	board, m = at(15)
	row, _ = board.Lifter(second.ID)
	assert.Equal(t, climb.Settle, row.Shown(m).Now.State)
	_, ok = board.NextCall(m, "")
	assert.True(t, ok)
}

func TestFinderOwesTheFirstAnswerThatIsMissing(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "back-squat", 3)
	a := b.come(c.ID, "Ines Bergh", gym.StandardM, "back-squat", "")
	require.ErrorContains(t, b.StartClock(c.ID), "type a first load")
	require.NoError(t, b.StartWith(c.ID, a.ID, gym.Effort{Load: 40 * mass.Kilogram}))
	assert.GreaterOrEqual(t, b.seatOf(c.ID, a).Station, 0, "whoever has a number has a station")
	require.NoError(t, b.StartClock(c.ID))
	b.now = b.now.Add(4 * time.Minute) // the fourth rung, and no answer yet
	require.NoError(t, b.Call(c.ID, a.ID, gym.EasyCall))
	calls := b.seatOf(c.ID, a).Calls
	require.Len(t, calls, 1)
	assert.Equal(t, 0, calls[0].Rung)
}

func TestLateComerJoinsAtThePresentRung(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "back-squat", 3)
	b.come(c.ID, "Ada Lund", gym.StandardM, "back-squat", "3x100")
	require.NoError(t, b.StartClock(c.ID))
	b.now = b.now.Add(6 * time.Minute)
	late := b.come(c.ID, "Bo Ito", gym.StandardM, "back-squat", "3x100")
	assert.Equal(t, 4, b.seatOf(c.ID, late).Joined)
}

func TestArrivals(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "back-squat", 3)
	ada := b.come(c.ID, "Ada Lund", gym.StandardM, "back-squat", "3x100")
	bo := b.join("Bo Ito")
	gone := b.join("Cleo Ash")
	require.NoError(t, b.SetStatus(gym.Archived, gone.ID))
	require.NoError(t, b.KeepRestriction(gym.Restriction{ID: b.NewID(), Athlete: bo.ID, Text: "sore knee", Region: gym.Lower, From: b.Today()}))
	open := mustClass(t, b.Desk, c.ID)
	rows := b.Arrivals(open, b.ExpectedIn(open))
	require.Len(t, rows, 2, "who has left is not listed")
	assert.True(t, rows[0].Here)
	assert.Equal(t, "Ada Lund", rows[0].Athlete.Name)
	assert.Equal(t, "sore knee", rows[1].Note)
	rows = desk.Matching(rows, "it bo")
	require.Len(t, rows, 1)
	assert.Equal(t, bo.ID, rows[0].Athlete.ID)
	id, err := b.WalkIn(c.ID, "Dov Quist")
	require.NoError(t, err)
	assert.Equal(t, gym.LiftKey("back-squat"), b.seatOf(c.ID, gym.Athlete{ID: id, Name: "Dov"}).Lift)
	_, err = b.WalkIn(c.ID, "ada lund")
	require.ErrorContains(t, err, "another athlete has that name")
	require.NoError(t, b.CheckOut(c.ID, ada.ID))
}

// Sixteen weeks and five per cent are common practice, no source.
func TestStaleBaseIsLoweredOnlyWhenTheCoachSays(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "back-squat", 3)
	a := b.join("Ada Lund")
	_, err := b.EnterResult(desk.Entry{Athlete: a.ID, Lift: "back-squat", Text: "3x100", On: b.Today().Add(-7 * 20), Source: gym.Tested})
	require.NoError(t, err)
	require.NoError(t, b.CheckIn(c.ID, a.ID))
	s, ok := b.Standing(mustClass(t, b.Desk, c.ID), a.ID)
	require.True(t, ok)
	assert.Equal(t, "From 100 kg, the record", s.Number)
	assert.Equal(t, "It is 20 weeks old: climb from 95 kg, 5 % less?", s.Offer)
	require.NoError(t, b.LowerBase(c.ID, a.ID))
	s, _ = b.Standing(mustClass(t, b.Desk, c.ID), a.ID)
	assert.Equal(t, "95 kg", s.Lifter.Base.String())
	assert.Empty(t, s.Offer, "an offer that was taken is not made again")
	require.NoError(t, b.CountFrom(c.ID, a.ID, gym.Effort{Load: 97500 * mass.Gram}))
	s, _ = b.Standing(mustClass(t, b.Desk, c.ID), a.ID)
	assert.Equal(t, "From 97.5 kg, as reported", s.Number)
}

// What cannot work is said before the class, with the mend: a station without a
// bar, loads under the bar, a gym without stations.
func TestSharingNamesWhatIsMissing(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "back-squat", 3)
	b.come(c.ID, "Ada Lund", gym.StandardW, "back-squat", "3x40")
	notes := b.Sharing(mustClass(t, b.Desk, c.ID)).Notes
	require.Len(t, notes, 1)
	assert.Equal(t, "Ada Lund begins under the bar: the bar alone is the lightest load.", notes[0].Text, "35 % of 40 kg is 14 kg")
	assert.True(t, notes[0].Aside)

	e := b.Book().Equipment
	e.Stations = nil
	require.NoError(t, b.KeepEquipment(e))
	notes = b.Sharing(mustClass(t, b.Desk, c.ID)).Notes
	require.NotEmpty(t, notes)
	require.ErrorContains(t, notes[0].Err, "there is no station; add one to the gym")
}

// Over 100 kg and up to 102 a gym whose smallest pair is 1.25 kg loads nothing.
func TestAnAttemptOverTheCeilingIsSaidBefore(t *testing.T) {
	b := newBench(t)
	plan, err := climb.Generate(20)
	require.NoError(t, err)
	c, err := b.OpenFreeClass()
	require.NoError(t, err)
	require.NoError(t, b.KeepClimb(c.ID, plan))
	b.lifts(c.ID, "back-squat", 3)
	a := b.come(c.ID, "Ada Lund", gym.StandardM, "back-squat", "3x100")
	s, _ := b.Standing(mustClass(t, b.Desk, c.ID), a.ID)
	assert.Equal(t, "The lightest load over the record is 102.5 kg, over the ceiling by 0.5 %. A pair of 1 kg would mend it.", s.Attempt)
}

func TestFractionalPlatesAreForRecords(t *testing.T) {
	b, c := hall(t) // the starter owns pairs of 0.5 kg
	b.lifts(c.ID, "back-squat", 3)
	a := b.come(c.ID, "Ada Lund", gym.StandardM, "back-squat", "3x101")
	row, ok := b.Boards().Board(mustClass(t, b.Desk, c.ID)).Lifter(a.ID)
	require.True(t, ok)
	last := len(row.Sets) - 1
	for i, s := range row.Sets[:last] {
		assert.Zero(t, s.Likely()%(2500*mass.Gram), "rung %d: %s", i+1, s.Likely())
	}
	assert.Equal(t, "103 kg", row.Sets[last].Likely().String(), "over 101 kg and within 102 %, 103.02 kg")
}

// 70 % of a 5RM of 100 kg is 70 kg.
func TestSecondLoads(t *testing.T) {
	b, c := hall(t)
	require.NoError(t, b.KeepPiece(c.ID, gym.Piece{
		Track: powerlifting, Lift: "back-squat", Reps: 3,
		Second: gym.SecondLift{Lift: "front-squat", Sets: 4, Reps: 6, Percent: 70, OfReps: 5, OfLift: "back-squat"},
	}))
	b.come(c.ID, "Ada Lund", gym.StandardM, "back-squat", "5x100")
	b.come(c.ID, "Bo Ito", gym.StandardM, "back-squat", "")
	rows := b.SecondLoads(mustClass(t, b.Desk, c.ID))
	require.Len(t, rows, 2)
	assert.Equal(t, desk.SecondLoad{Athlete: rows[0].Athlete, Name: "Ada Lund", Lift: "Front squat", Work: "4 × 6", Load: "70 kg", Why: "70 % of the 5RM, 100 kg"}, rows[0])
	assert.Empty(t, rows[1].Load)
	assert.Equal(t, "no 5RM of Back squat is known", rows[1].Why)
}

func TestWeighingWritesNothing(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "back-squat", 3)
	a := b.come(c.ID, "Ada Lund", gym.StandardM, "back-squat", "3x100")
	before := len(b.Book().Results)
	v, err := b.Weigh(c.ID, a.ID, "102.5")
	require.NoError(t, err)
	assert.Equal(t, "102.5 kg is 102.5 % of the record of 100 kg: the record rises.", v.Why)
	_, err = b.Weigh(c.ID, a.ID, "5x120")
	require.ErrorContains(t, err, "3 reps")
	assert.Len(t, b.Book().Results, before)
}

func TestWorkoutTitles(t *testing.T) {
	for _, row := range []struct {
		w    gym.Workout
		want string
	}{
		{gym.Workout{Format: gym.AMRAP, Seconds: 720}, "AMRAP 12 min"},
		{gym.Workout{Format: gym.EMOM, Seconds: 600}, "EMOM 10 min"},
		{gym.Workout{Format: gym.ForTime, Rounds: 3, Cap: 540}, "For time, 3 rounds, cap 9 min"},
		{gym.Workout{Format: gym.ForTime, Rounds: 1}, "For time, 1 round"},
		{gym.Workout{Format: gym.ForTime, Reps: []int{21, 15, 9}}, "For time, 21-15-9"},
		{gym.Workout{Format: gym.Chipper, Cap: 1200}, "Chipper, cap 20 min"},
		{gym.Workout{Format: gym.Intervals, Rounds: 8, Work: 40, Rest: 20}, "8 × 40 s work, 20 s rest"},
		{gym.Workout{Format: gym.PlainSets, Rounds: 5, Rest: 90}, "5 sets, 90 s rest"},
		{gym.Workout{Format: gym.Intervals, Rounds: 4, Work: 150, Rest: 60}, "4 × 2:30 min work, 1 min rest"},
	} {
		assert.Equal(t, row.want, desk.WorkoutTitle(row.w))
	}
}

func TestTracksThatDoTheSameShareAWorkout(t *testing.T) {
	book := smallGym(t)
	book.Tracks = append(book.Tracks, gym.Track{ID: "b", Name: "Strongman"}, gym.Track{ID: "c", Name: "Weightlifting"})
	swings := gym.Workout{Format: gym.ForTime, Reps: []int{21, 15, 9}, Items: []gym.Item{{Movement: "kettlebell-swing"}}}
	other := gym.Workout{Format: gym.EMOM, Seconds: 600, Items: []gym.Item{{Movement: "wall-ball", Amount: 15}, {}}}
	board := desk.NewBoards(&book).Board(gym.Class{Pieces: []gym.Piece{{Track: powerlifting, Workout: swings}, {Track: "b", Workout: swings}, {Track: "c", Workout: other}}})
	require.Len(t, board.Workouts, 2)
	assert.Equal(t, []string{"Powerlifting", "Strongman"}, board.Workouts[0].Tracks)
	assert.Equal(t, []desk.BoardItem{{Name: "Kettlebell swing", Amount: "21-15-9", Loads: []desk.BoardTiers{
		{Standard: gym.StandardM, Full: "24 kg", Mid: "20 kg", Light: "16 kg"}, {Standard: gym.StandardW, Full: "16 kg", Mid: "12 kg", Light: "8 kg"},
	}}}, board.Workouts[0].Items)
	assert.Equal(t, "Rest", board.Workouts[1].Items[1].Name)
}

// withWorkout is a class of one with a conditioning part.
func withWorkout(t *testing.T, w gym.Workout) (*bench, gym.Class, gym.Athlete) {
	t.Helper()
	b, c := hall(t)
	require.NoError(t, b.KeepPiece(c.ID, gym.Piece{Track: powerlifting, Lift: "back-squat", Reps: 3, Workout: w}))
	a := b.come(c.ID, "Ada Lund", gym.StandardM, "back-squat", "3x100")
	return b, mustClass(t, b.Desk, c.ID), a
}

func TestBoutsAreLoggedAndCorrected(t *testing.T) {
	b, c, a := withWorkout(t, gym.Workout{Format: gym.ForTime, Reps: []int{21, 15, 9}, Items: []gym.Item{{Movement: "kettlebell-swing"}, {Movement: "burpee"}}})
	rows := b.BoutSheet(c)
	require.Len(t, rows, 1, "a movement without a load has no bout")
	assert.Equal(t, 45, rows[0].Reps, "21 + 15 + 9")
	assert.Positive(t, rows[0].Load)
	assert.NotEmpty(t, rows[0].Why)
	at, more := desk.NextBout(rows, -1)
	assert.True(t, more)
	assert.Equal(t, 0, at)

	require.NoError(t, b.LogBout(c.ID, a.ID, "kettlebell-swing", 24*mass.Kilogram, gym.Stopped))
	require.NoError(t, b.LogBout(c.ID, a.ID, "kettlebell-swing", 24*mass.Kilogram, gym.Held))
	rows = b.BoutSheet(c)
	assert.Equal(t, gym.Held, rows[0].Logged.Outcome)
	assert.Equal(t, gym.Full, rows[0].Tier)
	_, more = desk.NextBout(rows, 0)
	assert.False(t, more)
	standing := 0
	for _, bout := range b.Bouts(a.ID) {
		if bout.Void == nil {
			standing++
		}
	}
	assert.Equal(t, 1, standing, "the bout entered again voids the one before")
	_, err := b.Undo()
	require.NoError(t, err)
	assert.Equal(t, gym.Stopped, b.BoutSheet(c)[0].Logged.Outcome)
	require.Error(t, b.LogBout(c.ID, a.ID, "kettlebell-swing", 0, gym.Held))
	require.Error(t, b.LogBout(c.ID, a.ID, "kettlebell-swing", 24*mass.Kilogram, "flew"))
}

func TestRepsOfABout(t *testing.T) {
	for _, row := range []struct {
		name string
		w    gym.Workout
		want int
	}{
		{"three rounds of ten", gym.Workout{Format: gym.ForTime, Rounds: 3, Items: []gym.Item{{Movement: "kettlebell-swing", Amount: 10}}}, 30},
		{"every third minute of twelve", gym.Workout{Format: gym.EMOM, Seconds: 720, Items: []gym.Item{{Movement: "kettlebell-swing", Amount: 15}, {Movement: "burpee", Amount: 10}, {}}}, 60},
		{"every second interval of eight", gym.Workout{Format: gym.Intervals, Rounds: 8, Work: 30, Items: []gym.Item{{Movement: "kettlebell-swing", Amount: 12}, {Movement: "burpee", Amount: 10}}}, 48},
		{"as many as possible is a usual bout", gym.Workout{Format: gym.Intervals, Rounds: 8, Work: 30, Items: []gym.Item{{Movement: "kettlebell-swing"}}}, 40},
	} {
		b, c, _ := withWorkout(t, row.w)
		assert.Equal(t, row.want, b.BoutSheet(c)[0].Reps, row.name)
	}
}

func TestScoresAreOfTheWorkoutsKind(t *testing.T) {
	b, c, a := withWorkout(t, gym.Workout{Format: gym.ForTime, Rounds: 3, Cap: 600, Items: []gym.Item{{Movement: "kettlebell-swing", Amount: 10}}})
	require.NoError(t, b.SetScore(c.ID, a.ID, "8:45"))
	assert.Equal(t, "8:45", b.seatOf(c.ID, a).Score)
	require.ErrorContains(t, b.SetScore(c.ID, a.ID, "heavy"), "write it as minutes and seconds, 8:45")
	assert.Equal(t, "8:45", b.seatOf(c.ID, a).Score)
	require.NoError(t, b.SetScore(c.ID, a.ID, " "))
	assert.Empty(t, b.seatOf(c.ID, a).Score)
}

func TestResumedSaysTheTrueTime(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "back-squat", 3)
	b.come(c.ID, "Ada Lund", gym.StandardM, "back-squat", "3x100")
	assert.Empty(t, b.Resumed(mustClass(t, b.Desk, c.ID)))
	require.NoError(t, b.StartClock(c.ID))
	b.now = b.now.Add(8 * time.Minute)
	again := b.reopened()
	assert.Equal(t, "Open class went on while this window was closed: rung 6 runs, the clock is at 08:00.", again.Resumed(mustClass(t, again, c.ID)))
	b.now = b.now.Add(time.Hour)
	assert.Contains(t, again.Resumed(mustClass(t, again, c.ID)), "ended while this window was closed")
	require.NoError(t, b.SetClock(c.ID, 5*time.Minute))
	require.NoError(t, b.HoldClock(c.ID))
	assert.Equal(t, "Open class is held at 05:00.", b.Resumed(mustClass(t, b.Desk, c.ID)))
}

// A machine's two clocks part when somebody sets the date and hour. Set back, the
// class's clock is put right; a jump forward may be sleep, through which the class
// went on, so it is only told.
func TestClassClockOutlivesACorrectedSystemClock(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "back-squat", 3)
	b.come(c.ID, "Ada Lund", gym.StandardM, "back-squat", "3x100")
	look := func(steady time.Duration) string {
		said, err := b.Mind(clock.Instant{Wall: b.now, Steady: steady})
		require.NoError(t, err)
		return said
	}
	shown := func() time.Duration { return mustClass(t, b.Desk, c.ID).Clock.Elapsed(b.now) }
	assert.Empty(t, look(0))
	require.NoError(t, b.StartClock(c.ID))
	b.now = b.now.Add(2 * time.Minute)
	assert.Empty(t, look(2*time.Minute), "two clocks that agree need no word")

	b.now = b.now.Add(time.Minute - time.Hour) // a minute passes, and somebody sets the clock back an hour
	assert.Equal(t, "The system clock went back by 1h0m0s; the class's clock was put right.", look(3*time.Minute))
	assert.Equal(t, 3*time.Minute, shown())
	again := b.reopened()
	assert.Equal(t, 3*time.Minute, mustClass(t, again, c.ID).Clock.Elapsed(b.now), "on the disk, too, for the wall")

	b.now = b.now.Add(30*time.Minute + time.Minute)
	assert.Contains(t, look(4*time.Minute), "30m0s")
	assert.Equal(t, 34*time.Minute, shown(), "what may have been sleep is believed")
	b.now = b.now.Add(300 * time.Millisecond)
	assert.Empty(t, look(4*time.Minute), "a third of a second is nothing to a coach")
}

// The clock of a test has no steady reading; then the wall clock is believed.
func TestMindClockWithoutASteadyReading(t *testing.T) {
	b, _ := hall(t)
	for range 3 {
		said, err := b.MindClock(b.now)
		require.NoError(t, err)
		assert.Empty(t, said)
		b.now = b.now.Add(24 * time.Hour)
	}
}

func TestNextRungAndBack(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "back-squat", 3)
	b.come(c.ID, "Ada Lund", gym.StandardM, "back-squat", "3x100")
	require.ErrorContains(t, b.NextRung(c.ID), "has not started")
	require.ErrorContains(t, b.RungBefore(c.ID), "has not started")
	require.NoError(t, b.StartClock(c.ID))
	require.NoError(t, b.NextRung(c.ID))
	assert.Equal(t, time.Minute, mustClass(t, b.Desk, c.ID).Clock.Elapsed(b.now))
	require.NoError(t, b.RungBefore(c.ID))
	assert.Zero(t, mustClass(t, b.Desk, c.ID).Clock.Elapsed(b.now))
}

func TestClashSentences(t *testing.T) {
	disc := plates.Disc{Mass: 25 * mass.Kilogram, Unit: mass.KG}
	for _, row := range []struct {
		c    desk.BoardClash
		want string
	}{
		{desk.BoardClash{Rungs: []int{6}, Disc: disc, Need: 9, Have: 8, Restack: true}, "Rung 6: all stations together want 9 pairs of 25 kg, the gym has 8. Other plates make the same loads."},
		{desk.BoardClash{Rungs: []int{6, 7}, Disc: disc, Need: 9, Have: 8, Stations: []string{"Rack 1"}, Wait: true}, "Rungs 6 to 7: all stations together want 9 pairs of 25 kg, the gym has 8. To wait until the others have lifted: Rack 1."},
		{desk.BoardClash{Rungs: []int{6}, Disc: disc, Need: 9, Have: 8, Stations: []string{"Rack 1", "Rack 2"}}, "Rung 6: all stations together want 9 pairs of 25 kg, the gym has 8. To load the nearest that is left: Rack 1, Rack 2."},
	} {
		assert.Equal(t, row.want, row.c.Text())
	}
	assert.True(t, strings.HasPrefix(desk.Plates(nil, mass.KG), "bar"))
	assert.Equal(t, "25 + 45 lb", desk.Plates([]plates.Disc{disc, {Mass: 45 * mass.Pound, Unit: mass.LB}}, mass.KG))
}
