package gym_test

import (
	"fmt"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"

	"windlass/internal/gym"
)

// Many voids at once make of a book what the same ones make one by one, and their
// inverse is the same: also of rows that the same changes add, of rows that are
// void already, and of rows that there are not.
func TestManyVoidsAreTheSameAsOneByOne(t *testing.T) {
	id := func(i int) gym.ID { return gym.ID(fmt.Sprintf("row-%03d", i)) }
	start := func() gym.Book {
		var b gym.Book
		for i := range 200 {
			b.Apply(gym.AddResult{Result: gym.Result{ID: id(i), Reps: 1 + i%20}}, gym.AddBout{Bout: gym.Bout{ID: id(i), Reps: i}})
		}
		b.Apply(gym.VoidResult{ID: id(7), Void: gym.Void{Reason: "first"}})
		return b
	}
	changes := []gym.Change{gym.AddResult{Result: gym.Result{ID: id(200)}}, gym.AddBout{Bout: gym.Bout{ID: id(200)}}}
	for i := 205; i >= 0; i-- { // 201 to 205 are no rows
		changes = append(changes, gym.VoidResult{ID: id(i), Void: gym.Void{Reason: "all"}}, gym.VoidBout{ID: id(i), Void: gym.Void{Reason: "all"}})
	}
	at, byOne := start(), start()
	at.Apply(changes...)
	for _, c := range changes {
		byOne.Apply(c)
	}
	assert.Equal(t, byOne, at)
	assert.Equal(t, "first", at.Results[7].Void.Reason, "the first void of a row stands")
	assert.Equal(t, "all", at.Results[200].Void.Reason)

	inverse := func(changes []gym.Change) []gym.Change {
		b, n := start(), 0
		newID := func() gym.ID { n++; return gym.ID(fmt.Sprintf("again-%03d", n)) }
		back, _ := b.Inverse(changes, newID, gym.Void{At: time.Time{}, Reason: "undone"})
		return back
	}
	var few []gym.Change
	for _, c := range changes[2:] {
		few = append(inverse([]gym.Change{c}), few...)
	}
	assert.Len(t, inverse(changes[2:]), len(few))
	assert.Len(t, few, 399, "200 results but one that was void, and 200 bouts")
}
