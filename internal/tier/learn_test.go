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
