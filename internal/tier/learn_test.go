package tier

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"

	"windlass/internal/gym"
	"windlass/internal/mass"
)

// Nobody in this gym ever says "slowed". How gradually held turns into stopped is
// learnt all the same, though the first guess of what is slowed is far off. The
// chances of the outcomes are drawn here by their formula.
func TestScaleIsLearntWhereNothingIsSlowed(t *testing.T) {
	const scale = 0.05
	r := rand.New(rand.NewPCG(7, 11))
	b := smallBook()
	b.Athletes = nil
	for i := range 60 {
		a := gym.Athlete{ID: gym.ID(fmt.Sprint("a", i)), Standard: gym.StandardM}
		b.Athletes = append(b.Athletes, a)
		capacity := math.Log(20) + 0.2*r.NormFloat64()
		for k := range 40 {
			load := bells[r.IntN(len(bells))]
			outcome := gym.Stopped
			if r.Float64() < sigmoid((capacity-logOf(load))/scale) {
				outcome = gym.Held
			}
			b.Bouts = append(b.Bouts, gym.Bout{
				ID: gym.ID(fmt.Sprint(a.ID, "-", k)), Athlete: a.ID, Movement: "swing", Load: load, Unit: mass.KG,
				Reps: 40, Outcome: outcome, On: march.Add(k),
			})
		}
	}
	h := learn(t, b, nil).Habits()
	assert.InDelta(t, scale, h.Scale, 0.02)
	assert.Less(t, h.Slow, 0.05)
}

// Nobody in these gyms grows, and everybody stays on a load chosen well below what
// they hold by a coach whose eye is rough: nearly all is held. That is not to be
// taken for growth: 0.003 a week, a step over the usual, is the most (by the forms
// alone it would be 0.004 to 0.008).
func TestHoldingALightLoadIsNotGrowth(t *testing.T) {
	for seed := range uint64(3) {
		b := lightGym(rand.New(rand.NewPCG(seed, 19)))
		assert.LessOrEqual(t, learn(t, b, nil).Habits().Growth, 0.003, "seed %d", seed)
	}
}

func lightGym(r *rand.Rand) *gym.Book {
	b := smallBook()
	b.Athletes = nil
	swing := b.Movements[0]
	b.Movements = nil
	for j := range 8 {
		swing.Key = gym.MovementKey(fmt.Sprint("swing", j))
		b.Movements = append(b.Movements, swing)
	}
	for i := range 60 {
		a := gym.Athlete{ID: gym.ID(fmt.Sprint("a", i)), Standard: gym.StandardM}
		b.Athletes = append(b.Athletes, a)
		general := 0.2 * r.NormFloat64()
		for _, m := range b.Movements {
			capacity := math.Log(22) + general + 0.1*r.NormFloat64()
			load := bells[max(0, atMost(bells, mass.Of(math.Exp(capacity-0.2+0.05*r.NormFloat64()), mass.KG)))]
			for week := range 30 {
				if r.Float64() < 0.7 {
					continue
				}
				outcome, noise := gym.Held, 0.15*r.NormFloat64()
				if margin := capacity - logOf(load) + noise; margin < -0.2 {
					outcome = gym.Stopped
				} else if margin < 0 {
					outcome = gym.Slowed
				}
				b.Bouts = append(b.Bouts, gym.Bout{
					ID: gym.ID(fmt.Sprint(a.ID, m.Key, week)), Athlete: a.ID, Movement: m.Key, Load: load, Unit: mass.KG,
					Reps: 40, Outcome: outcome, On: march.Add(7*week + r.IntN(6)),
				})
			}
		}
	}
	return b
}
