package conditioning

import (
	"fmt"
	"strings"

	"windlass/internal/gym"
)

// reason is why a movement is left out.
type reason string

const (
	fits    reason = ""
	recent  reason = "comes too soon before or after"
	tires   reason = "would tire the next day's lift"
	missing reason = "lacks implements for the class"
	unclear reason = "cannot be timed"
)

func told(left map[reason]int) string {
	var parts []string
	for _, why := range []reason{recent, tires, missing, unclear} {
		if n := left[why]; n > 0 {
			parts = append(parts, fmt.Sprintf("%d × %s", n, why))
		}
	}
	if len(parts) == 0 {
		return "there are too few"
	}
	return strings.Join(parts, ", ")
}

// unfit returns why a movement is left out of the choice.
func (c *composer) unfit(m gym.Movement) reason {
	b := c.brief
	days, done := b.Near[m.Key]
	switch {
	case m.Hidden || m.Seconds <= 0:
		return unclear
	case done && days < b.Apart:
		return recent
	case b.Next.Key != "" && loads(m, b.Next):
		return tires
	case !c.sharable(m):
		return missing
	}
	return fits
}

// loads reports whether a movement tires a lift: it loads the same region, moves
// the same way, or loads the whole body. Machines and what is done for breath alone
// tire the whole body for no lift, and carries for none of the upper body (common
// practice, no source).
func loads(m gym.Movement, l gym.Lift) bool {
	whole := m.Region == gym.WholeBody && m.Pattern != gym.Engine &&
		(l.Region == gym.Lower || l.Region == gym.Upper && m.Pattern != gym.Carry)
	return m.Region == l.Region || m.Pattern == l.Pattern || whole
}

// sharable reports whether the implements of a movement can suffice, with the class
// in as many groups as the formats in choice allow.
func (c *composer) sharable(m gym.Movement) bool {
	crowd := c.brief.Crowd
	if m.Takes() > 0 && !crowd.Owned.Owns(m.Implement) {
		return false
	}
	groups := 1
	for _, f := range c.formats {
		groups = max(groups, mostGroups(f)*c.heats)
	}
	wanted := map[gym.Pool]int{}
	for i := range crowd.Size {
		if m.Takes() > 0 {
			wanted[crowd.Owned.Pool(m.Implement, crowd.Load(i, gym.Item{Movement: m.Key}))]++
		}
	}
	for pool, n := range wanted {
		if there, counted := crowd.Owned.Pieces(pool); counted && m.Takes()*((n+groups-1)/groups) > there {
			return false
		}
	}
	return true
}

// mostGroups is in how many groups a class can do the largest workout of a format
// in one heat.
func mostGroups(f gym.Format) int {
	w := gym.Workout{Format: f, Items: make([]gym.Item, sizes[f][1]), Work: 1, Rest: mostTurns}
	ways := waysOf(w, 1)
	return ways[len(ways)-1].groups()
}

// supports reports whether a movement trains what the day's main lift does.
func (c *composer) supports(m gym.Movement) bool {
	return c.brief.Main.Key != "" && m.Region == c.brief.Main.Region && m.Pattern != gym.Engine
}
