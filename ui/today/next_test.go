package today

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"windlass/internal/desk"
)

// The mark of the key and the key itself ask the same place, so that Enter never
// opens another class than the one that shows it.
func TestTheClassOnTheFloorComesBeforeOneThatIsToCome(t *testing.T) {
	for _, c := range []struct {
		name   string
		states []desk.MeetingState
		want   int
	}{
		{"none today", nil, -1},
		{"the first to come", []desk.MeetingState{desk.Done, desk.Missed, desk.ToCome, desk.ToCome}, 2},
		{"one that runs early", []desk.MeetingState{desk.ToCome, desk.OnFloor}, 1},
		{"all over", []desk.MeetingState{desk.Done, desk.Missed}, -1},
	} {
		today := Today{}
		for _, s := range c.states {
			today.meetings = append(today.meetings, desk.Meeting{State: s})
		}
		assert.Equal(t, c.want, today.next(), c.name)
	}
}
