package desk

import (
	"context"
	"errors"
	"reflect"
	"time"

	"windlass/internal/gym"
	"windlass/internal/tier"
)

// ErrLearning is returned instead of a suggestion while the log that it rests on is
// still being read beside the desk.
var ErrLearning = errors.New("the log is still being read; wait a moment")

func learning(err error) bool { return errors.Is(err, ErrLearning) }

// Lesson is the learning of what the whole log says of conditioning loads. It takes
// seconds for a large gym, so it is done beside the desk.
type Lesson struct {
	book     gym.Book
	strength tier.Strength
	standing *tier.Standing
}

// lessons is what was learnt, and what is being learnt.
type lessons struct {
	standing *tier.Standing // nil until somebody asks, and after a change that makes it wrong
	of       gym.Book       // settings and equipment that it was learnt from
	people   map[gym.ID]gym.Standard
	due      time.Time    // of the next lesson; zero while everything is known
	beside   bool         // somebody learns beside the desk
	going    *Lesson      // nil for none
	since    []gym.Change // bouts logged and voided since that began
}

// lull is how long nothing may have been logged before the whole log is read again.
// A bout speaks of its own athlete and movement at once. What it says of all others
// waits, so that no load changes under the eyes of a coach who logs row after row.
const lull = 5 * time.Second

// NextLesson returns what is to be learnt anew beside the desk, or nil when there is
// nothing, while a lesson is on its way, and while the coach is logging. With it
// taken, the desk answers as one does that is opened on the same file. From the first call on the desk never learns by
// itself: until a lesson is taken it answers with what it has learnt before, or with
// [ErrLearning].
func (d *Desk) NextLesson() *Lesson {
	l := &d.tiers.lessons
	l.beside = true
	if l.going != nil || l.standing != nil && !l.isDue(d.now()) {
		return nil
	}
	l.due, l.since = time.Time{}, nil
	l.going = d.newLesson()
	return l.going
}

func (l *lessons) isDue(now time.Time) bool { return !l.due.IsZero() && !l.due.After(now) }

// wait asks for a lesson after the present lull, or earlier if one is due.
func (l *lessons) wait(now time.Time) {
	if !l.isDue(now) {
		l.due = now.Add(lull)
	}
}

func (d *Desk) newLesson() *Lesson {
	return &Lesson{book: snapshot(d.book, AboutBouts), strength: d.strengths()}
}

// Learn works the log through. It touches nothing of the desk.
func (l *Lesson) Learn(ctx context.Context) (err error) {
	l.standing, err = tier.Learn(ctx, &l.book, l.strength)
	return err
}

// TakeLesson takes up what a lesson has taught, with the bouts since, or forgets it
// where it has failed.
func (d *Desk) TakeLesson(l *Lesson) {
	t := &d.tiers
	if t.going != l {
		return
	}
	t.going = nil
	if l.standing == nil {
		t.due = d.now()
		return
	}
	t.take(l)
	for _, c := range t.since {
		t.follow(c)
	}
	t.since, t.advice = nil, nil
	d.tell(AboutBouts)
}

func (l *lessons) take(from *Lesson) {
	l.standing, l.of = from.standing, gym.Book{Settings: from.book.Settings, Equipment: from.book.Equipment}
	l.people = make(map[gym.ID]gym.Standard, len(from.book.Athletes))
	for _, a := range from.book.Athletes {
		l.people[a.ID] = a.Standard
	}
}

// standing returns what was learnt. Where nobody learns beside the desk, it learns.
func (d *Desk) standing() (*tier.Standing, error) {
	l := &d.tiers.lessons
	switch {
	case l.beside && l.standing == nil:
		return nil, ErrLearning
	case l.beside, l.standing != nil && l.due.IsZero():
		return l.standing, nil
	}
	lesson := d.newLesson()
	if err := lesson.Learn(context.Background()); err != nil {
		return nil, err
	}
	l.due = time.Time{}
	l.take(lesson)
	return l.standing, nil
}

// knows reports whether an athlete was learnt of.
func (l *lessons) knows(a gym.Athlete) bool {
	standard, ok := l.people[a.ID]
	return ok && standard == a.Standard
}

// heed keeps what was learnt true, and reports whether no answer given before may
// be given again. Everything that a suggestion rests on is learnt of in the next
// lesson: a long list and new athletes at once, what is logged after a lull.
func (l *lessons) heed(changes []gym.Change, now time.Time) (fell bool) {
	if len(changes) >= longFrom {
		l.due = now
		return true
	}
	for _, c := range changes {
		l.follow(c)
		if l.going != nil {
			l.since = append(l.since, c)
		}
		if l.outdated(c) { // and so would be a lesson that is on its way
			l.standing, l.going, fell = nil, nil, true
		}
		if a, ok := c.(gym.PutAthlete); ok && !l.knows(a.Athlete) {
			l.due, fell = now, true
		}
		if teaches(c) {
			l.wait(now)
			fell = fell || !l.beside // the next who asks learns it
		}
	}
	return fell
}

// teaches reports whether a change may say something of others than its own athlete
// and movement: a bout does by what the gym's athletes have in common, a result and
// a lift's reference by how strong they are.
func teaches(change gym.Change) bool {
	switch change.(type) {
	case gym.AddBout, gym.VoidBout, gym.AddResult, gym.VoidResult, gym.PutLift:
		return true
	}
	return false
}

// follow takes a single bout into account.
func (l *lessons) follow(change gym.Change) {
	if l.standing == nil {
		return
	}
	switch c := change.(type) {
	case gym.AddBout:
		l.standing.Observe(c.Bout)
	case gym.VoidBout:
		l.standing.Void(c.ID)
	}
}

// outdated reports whether a change makes what was learnt wrong.
func (l *lessons) outdated(change gym.Change) bool {
	switch c := change.(type) {
	case gym.PutMovement, gym.DropMovement:
		return true
	case gym.PutSettings:
		return c.Settings.Confidence != l.of.Settings.Confidence
	case gym.PutEquipment:
		return !reflect.DeepEqual(c.Equipment.Implements, l.of.Equipment.Implements)
	}
	return false
}
