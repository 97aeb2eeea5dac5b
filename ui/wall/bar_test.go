package wall

import (
	"fmt"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Who loads what the wall draws on the bar that the wall names, or on the one that
// stands at the station, has the load that the wall says.
func TestPlatesAndBarMakeTheLoad(t *testing.T) {
	number := func(text string) float64 {
		n, err := strconv.ParseFloat(text, 64)
		require.NoError(t, err, text)
		return n
	}
	others := 0
	for _, n := range []int{6, 18, 36} {
		h := newHall(t, n)
		h.until(15 * time.Minute)
		scene, _ := h.scene()
		for _, s := range scene.Climb.Stations {
			for _, r := range s.Rows {
				if s.Number == 0 || !r.Bare && len(r.Discs) == 0 {
					continue
				}
				e := h.state().Book.Equipment
				usual, ok := e.Bar(e.Stations[s.Number-1].Bar)
				require.True(t, ok)
				sum := usual.Mass.Kilograms()
				if r.Bar != "" {
					others++
					sum = number(strings.TrimPrefix(r.Bar, "bar "))
				}
				for _, d := range r.Discs {
					sum += 2 * number(d.Label)
				}
				assert.InDelta(t, number(r.Now.Text), sum, 1e-9, fmt.Sprintf("%s at %s: %+v", r.Name, s.Name, r))
			}
		}
	}
	assert.Positive(t, others, "some bar is not the station's own")
}
