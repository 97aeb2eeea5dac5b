package floor

import (
	"fmt"
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// pieceList is what each track lifts today.
type pieceList struct {
	setUp *setUp
	rows  []*pieceRow
	box   *fyne.Container
	sight *container.Scroll
	all   fyne.CanvasObject
}

// fewTracks is the height of three tracks; more are scrolled.
const fewTracks = 204

// ringRoom keeps the mark of the keyboard around a widget from being cut off where
// what scrolls ends.
const ringRoom = look.Gap1

// pieceRow is one track: its lift and its rep count.
type pieceRow struct {
	list  *pieceList
	piece gym.Piece
	track *kit.Text
	count *kit.Text
	lift  *kit.Choice
	reps  *kit.Segmented
	nums  []int      // 0 is the day's percentages
	plan  []gym.Sets // those of the plan, to go back to
	all   fyne.CanvasObject
}

func newPieceList(s *setUp) *pieceList {
	p := &pieceList{setUp: s, box: kit.Column(look.Gap3)}
	p.sight = kit.Scroll(kit.Pad(ringRoom, p.box))
	p.all = kit.NewCard("What each track lifts", p.sight)
	return p
}

func (p *pieceList) refresh() {
	f := p.setUp.floor
	for len(p.rows) < len(f.class.Pieces) {
		p.rows = append(p.rows, newPieceRow(p))
	}
	if len(p.box.Objects) != len(f.class.Pieces) {
		p.box.Objects = nil
		for i := range f.class.Pieces {
			p.box.Objects = append(p.box.Objects, p.rows[i].all)
		}
		p.box.Refresh()
		p.sight.SetMinSize(fyne.NewSize(0, min(p.box.MinSize().Height, fewTracks)+2*ringRoom))
	}
	for i, piece := range f.class.Pieces {
		p.rows[i].set(piece)
	}
}

func newPieceRow(p *pieceList) *pieceRow {
	r := &pieceRow{list: p, track: kit.NewStrong(""), count: kit.NewCaption("")}
	r.lift = kit.NewChoice("", nil, r.take).Hint("No main lift today").Least(142)
	r.reps = kit.NewSegmented([]string{"5RM"}, 0, r.turn)
	head := kit.Row(look.Gap2, kit.Fill(r.track), r.count)
	r.all = kit.Column(look.Gap1, head, kit.Row(look.Gap2, kit.Fill(r.lift), r.reps))
	return r
}

func (r *pieceRow) set(piece gym.Piece) {
	f := r.list.setUp.floor
	here := 0
	for _, l := range f.class.Lifters {
		if l.Track == piece.Track {
			here++
		}
	}
	r.piece = piece
	r.track.SetText(f.desk().Track(piece.Track).Name)
	r.count.SetText(fmt.Sprintf("%d here", here))
	r.lift.SetOptions(liftOptions(f.desk().Book().Lifts))
	r.lift.Set(string(piece.Lift))
	r.number(f.desk().Settings().DayReps)
}

// number offers the rep counts of the gym's main days, and today's if it is
// another one.
func (r *pieceRow) number(dayReps []int) {
	r.nums = slices.Clone(dayReps)
	if len(r.piece.Scheme) > 0 {
		r.plan = r.piece.Scheme
	}
	if len(r.plan) > 0 {
		r.nums = append([]int{byPercent}, r.nums...)
	} else if r.piece.Reps > 0 && !slices.Contains(r.nums, r.piece.Reps) {
		r.nums = append([]int{r.piece.Reps}, r.nums...)
	}
	var labels []string
	for _, n := range r.nums {
		labels = append(labels, repsLabel(n))
	}
	at := slices.Index(r.nums, r.piece.Reps)
	if len(r.piece.Scheme) > 0 {
		at = 0
	}
	r.reps.SetLabels(labels, at)
}

// byPercent stands for the day's sets by percentages among the rep counts.
const byPercent = 0

func repsLabel(n int) string {
	if n == byPercent {
		return "By %"
	}
	return itoa(n) + "RM"
}

func liftOptions(lifts []gym.Lift) []kit.Option {
	var options []kit.Option
	for _, l := range lifts {
		if !l.Hidden && l.Measure == gym.ByLoad {
			options = append(options, kit.Option{Key: string(l.Key), Text: l.Name, Note: string(l.Region)})
		}
	}
	return options
}

func (r *pieceRow) take(o kit.Option) {
	r.piece.Lift = gym.LiftKey(o.Key)
	if r.piece.Reps == 0 && len(r.nums) > 0 {
		r.piece.Reps = r.nums[0]
	}
	r.keep()
}

func (r *pieceRow) turn(i int) {
	r.piece.Scheme = nil
	if r.nums[i] == byPercent {
		r.piece.Scheme = r.plan
	} else {
		r.piece.Reps = r.nums[i]
	}
	r.keep()
}

func (r *pieceRow) keep() {
	f := r.list.setUp.floor
	lift, _ := f.desk().Lift(r.piece.Lift)
	what := repMax(lift.Name, r.piece.Reps)
	if len(r.piece.Scheme) > 0 {
		what = lift.Name + " by percentages"
	}
	f.did(f.desk().KeepPiece(f.id, r.piece), f.desk().Track(r.piece.Track).Name+" lifts "+what+" today.")
}

// climbCard is the choice of the climb, with its rungs.
type climbCard struct {
	setUp  *setUp
	choice *kit.Choice
	strip  *kit.RungStrip
	start  *kit.Button
	all    fyne.CanvasObject
}

func newClimbCard(s *setUp) *climbCard {
	c := &climbCard{setUp: s, strip: kit.NewRungStrip()}
	c.choice = kit.NewChoice("Climb", nil, c.take).Hint("Choose a climb").Least(190)
	c.start = kit.NewButton("Start the clock", s.start).Primary().Key("F5")
	side := kit.Column(look.Gap2, c.choice, c.start, kit.Fill())
	c.all = kit.NewCard("", kit.Row(look.Gap4, kit.Full(kit.Wide(200, side)), kit.Fill(kit.Tall(104, c.strip))))
	return c
}

func (c *climbCard) refresh() {
	f := c.setUp.floor
	var options []kit.Option
	for _, p := range f.desk().Climbs() {
		options = append(options, kit.Option{Key: p.Name, Text: p.Name, Note: minutes(p)})
	}
	if own := f.class.Climb; !slices.ContainsFunc(options, func(o kit.Option) bool { return o.Key == own.Name }) {
		options = append(options, kit.Option{Key: own.Name, Text: own.Name, Note: minutes(own)})
	}
	c.choice.SetOptions(options)
	c.choice.Set(f.class.Climb.Name)
	c.strip.Set(rungsOf(f.class))
	if f.moment().Started {
		c.start.SetLabel("Back to the clock")
	} else {
		c.start.SetLabel("Start the clock")
	}
}

func (c *climbCard) take(o kit.Option) {
	f := c.setUp.floor
	plan, ok := f.desk().ClimbNamed(o.Key)
	if ok && !f.did(f.desk().KeepClimb(f.id, plan), "The class climbs by "+plan.Name+".") {
		c.choice.Set(f.class.Climb.Name)
	}
}
