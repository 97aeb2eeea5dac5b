package tier_test

import (
	"context"
	"flag"
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/tier"
)

// More clubs than a test run has time for:
//
//	go test ./internal/tier -run TestClubs -v -clubs 4 -club-seed 100
var (
	clubSeeds = flag.Int("clubs", 1, "how many clubs of each kind to judge")
	clubFirst = flag.Uint64("club-seed", 1, "the seed of the first")
)

// clubs are the kinds that the model was made with.
var clubs = []club{
	clubLike("usual", func(*club) {}),
	clubLike("deep breaks", func(c *club) { c.breaks, c.longest, c.loss = 2, 20, 0.02 }),
	clubLike("ladder coach", func(c *club) { c.coach = []string{"ladder"} }),
	clubLike("careful coach", func(c *club) { c.coach = []string{"careful"} }),
	clubLike("tiers", func(c *club) { c.coach = []string{"tiers"} }),
	clubLike("standards off", func(c *club) { c.offM, c.offW, c.coach = 0.9, 1.15, []string{"ladder"} }),
	clubLike("no records", func(c *club) { c.tested, c.unlinked = 0, 0.6 }),
	clubLike("tails and slips", func(c *club) { c.normal, c.wrong = false, 0.04 }),
	clubLike("eight athletes", func(c *club) { c.athletes = 8 }),
	clubLike("two hundred", func(c *club) { c.athletes, c.weeks = 200, 16 }),
	clubLike("little written", func(c *club) { c.logged = 0.3 }),
	clubLike("odd ladders", func(c *club) { c.ladders = odd }),
	clubLike("plateaus", func(c *club) { c.plateaus, c.gain, c.pace = 0.9, 0.25, 25 }),
}

// heldOut are kinds that nothing was tried on while the model was made. What it did in
// "never slowed" and "novices" then led to mends of how scale and growth are learnt, so
// those two are held out no longer.
var heldOut = []club{
	clubLike("one load for all", func(c *club) { c.coach = []string{"same"} }),
	clubLike("mixed coaches", func(c *club) {
		c.coach, c.breaks, c.wrong = []string{"eye", "ladder", "tiers", "same", "careful"}, 1.2, 0.03
	}),
	clubLike("never slowed", func(c *club) { c.binary, c.noise = 0.9, 0.07 }),
	clubLike("three sandbags", func(c *club) { c.ladders, c.coach = sparse, []string{"eye", "tiers"} }),
	clubLike("novices", func(c *club) { c.gain, c.pace, c.skill, c.coach = 0.35, 20, 0.15, []string{"ladder", "eye"} }),
	clubLike("two years, seldom", func(c *club) { c.weeks, c.visits, c.breaks, c.athletes = 104, 0.7, 1.5, 40 }),
}

// The aims in clubs (the project's own): off by no more than 0.65 of the rule of
// thumb, overloaded in no more than 0.03, chances within 0.05 of the truth.
const (
	clubOff        = 0.65 // mean steps off over that of the rule of thumb, with what the one step costs taken from both
	clubOverloaded = 0.03 // over all clubs
)

// The limits in a single kind of club are wider than the aims, and were set after
// seeing what the model does: they keep it from getting worse, and say nothing of
// its being good enough. Where nearly everything that is handed out is held, the log
// says little of heavier loads and their chances are told too high: there the aim of
// calibration is missed by far, by 0.04 to 0.08.
const (
	clubOneOverload = 0.055 // aim 0.03
	clubCalibration = 0.07  // aim 0.05
	clubBlind       = 0.14  // the same where nearly all is held
)

func TestClubs(t *testing.T) {
	var all verdict
	for _, c := range slices.Concat(clubs, heldOut) {
		t.Run(c.name, func(t *testing.T) {
			var v verdict
			for k := range *clubSeeds {
				v.judge(t, open(c, *clubFirst+uint64(k)))
			}
			v.log(t)
			all.add(&v)
			most := clubCalibration
			if v.heldShare() > 0.85 {
				most = clubBlind
			}
			assert.LessOrEqual(t, v.calibration(), most)
			assert.LessOrEqual(t, v.off-v.step, clubOff*v.rule)
			assert.LessOrEqual(t, v.over/v.n, clubOneOverload)
		})
	}
	all.log(t)
	assert.LessOrEqual(t, all.over/all.n, clubOverloaded)
}

// verdict is how the suggestions for some clubs did.
type verdict struct {
	n, off, rule, over   float64
	step                 float64 // steps off that the rule of the one step costs
	first, offAt, overAt float64 // pairs without a bout
	bouts, held          float64
	asked                float64
	told, came           [10]float64
}

func (v *verdict) add(o *verdict) {
	v.n, v.off, v.rule, v.over, v.step = v.n+o.n, v.off+o.off, v.rule+o.rule, v.over+o.over, v.step+o.step
	v.first, v.offAt, v.overAt = v.first+o.first, v.offAt+o.offAt, v.overAt+o.overAt
	v.bouts, v.held, v.asked = v.bouts+o.bouts, v.held+o.held, v.asked+o.asked
	for b := range v.told {
		v.told[b], v.came[b] = v.told[b]+o.told[b], v.came[b]+o.came[b]
	}
}

func (v *verdict) log(t *testing.T) {
	t.Logf("%5.0f pairs: off %.3f, rule %.3f, ratio %.2f (%.2f for the one step); overloaded %.3f; calibration %.3f; held %.2f; %4.0f first goes: off %.2f, overloaded %.3f",
		v.n, v.off/v.n, v.rule/v.n, v.off/v.rule, v.step/v.rule, v.over/v.n, v.calibration(), v.heldShare(), v.first, v.offAt/v.first, v.overAt/v.first)
}

func (v *verdict) heldShare() float64 { return v.held / v.bouts }

func (v *verdict) judge(t *testing.T, h *hall) {
	standing, err := tier.Learn(context.Background(), h.book, h.strength)
	require.NoError(t, err)
	for _, b := range h.book.Bouts {
		v.bouts++
		if b.Outcome == gym.Held {
			v.held++
		}
	}
	for _, m := range h.members {
		for j := range h.things {
			v.pair(t, h, standing, m, j)
		}
	}
}

func (v *verdict) pair(t *testing.T, h *hall, standing *tier.Standing, m *member, j int) {
	thing := h.things[j]
	reps := thing.ReferenceReps
	truth := make([]float64, len(thing.owned))
	best := 0
	for i := range truth {
		truth[i] = h.chance(m, j, i, reps)
		if truth[i] >= 0.75 {
			best = i
		}
	}
	model, err := standing.Model(m.id, thing.Key, h.end)
	require.NoError(t, err)
	s, err := model.Suggest(tier.Ask{Reps: reps, On: h.end, Unit: mass.KG})
	require.NoError(t, err)
	got := thing.closest(s.Load.Kilograms())
	off, over := math.Abs(float64(got-best)), 0.0
	if truth[got] < 0.5 {
		over = 1
	}
	if m.last[j] < 0 {
		v.first, v.offAt, v.overAt = v.first+1, v.offAt+off, v.overAt+over
		return
	}
	v.n, v.off, v.over, v.rule = v.n+1, v.off+off, v.over+over, v.rule+math.Abs(float64(m.rule(j, len(truth))-best))
	v.step += max(0, float64(best-thing.oneStep(model.Bouts())))
	for i, chance := range truth {
		v.forecast(model.Hold(mass.Of(thing.owned[i], mass.KG), reps), chance)
	}
}

// rule is the rule of thumb: the last load, a step more when it was held, a step
// less when it was stopped.
func (m *member) rule(j, owned int) int {
	i := m.last[j]
	switch m.went[j] {
	case gym.Held:
		i++
	case gym.Stopped:
		i--
	}
	return min(max(i, 0), owned-1)
}

// oneStep is the heaviest that may be suggested: one implement over the heaviest
// held, or anything.
func (t *thing) oneStep(bouts []gym.Bout) int {
	top := len(t.owned) - 1
	var held mass.Mass
	for _, b := range bouts {
		if b.Outcome == gym.Held {
			held = max(held, b.Load)
		}
	}
	if held == 0 {
		return top
	}
	return min(top, t.closest(held.Kilograms())+1)
}

// forecast bins a chance; near-certain ones would only flatter the mean.
func (v *verdict) forecast(told, came float64) {
	if told > 0.02 && told < 0.98 {
		b := int(told * 10)
		v.told[b], v.came[b], v.asked = v.told[b]+told, v.came[b]+came, v.asked+1
	}
}

func (v *verdict) calibration() float64 {
	sum := 0.0
	for b := range v.told {
		sum += math.Abs(v.told[b] - v.came[b])
	}
	return sum / v.asked
}
