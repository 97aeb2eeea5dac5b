package wall

import (
	"reflect"
	"slices"
	"time"

	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
)

// State is all that the wall shows, as the file said it last.
type State struct {
	Book  gym.Book // as store.File.LoadClass reads it
	Board desk.Board
	Live  bool // there is a class
}

// Reader makes states of what the file says, and keeps what is dear to work out
// while the equipment stays the same. It belongs to one goroutine.
type Reader struct {
	book   *gym.Book
	boards *desk.Boards
}

// Read takes what the file says.
func (r *Reader) Read(book gym.Book) State {
	if r.book == nil || !reflect.DeepEqual(r.book.Equipment, book.Equipment) {
		r.book = new(gym.Book)
		r.boards = desk.NewBoards(r.book)
	}
	*r.book = book
	s := State{Book: book}
	if len(book.Classes) > 0 {
		s.Live, s.Board = true, r.boards.Board(book.Classes[0])
	}
	return s
}

// nextDays is how far the wall looks ahead for the next class.
const nextDays = 14

// nextClass is the class of the timetable that begins next.
func (s State) nextClass(now time.Time) (slot gym.Slot, on day.Date, ok bool) {
	today, minute := day.From(now), day.ClockOf(now.Hour(), now.Minute())
	for on := today; on <= today.Add(nextDays); on = on.Add(1) {
		if s.closed(on) {
			continue
		}
		found := false
		for _, c := range s.Book.Slots {
			if c.Weekday != on.Weekday() || on == today && c.At <= minute {
				continue
			}
			if !found || c.At < slot.At {
				slot, found = c, true
			}
		}
		if found {
			return slot, on, true
		}
	}
	return gym.Slot{}, day.None, false
}

func (s State) closed(on day.Date) bool {
	return slices.ContainsFunc(s.Book.Closures, func(c gym.Closure) bool { return c.Covers(on) })
}
