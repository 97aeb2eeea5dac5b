package desk_test

import (
	"context"
	"errors"
	"fmt"
	"math/rand/v2"
	"reflect"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
)

// gate is a store whose long lists stop at every word of how far they are, until
// they are let on, called off, or torn.
type gate struct {
	desk.Store
	at   chan int // how far one is
	on   chan struct{}
	torn bool
}

var errTorn = errors.New("the disk was pulled out")

func (g *gate) WriteMany(ctx context.Context, changes []gym.Change, written func(int)) error {
	ctx, cancel := context.WithCancelCause(ctx)
	defer cancel(nil)
	err := g.Store.WriteMany(ctx, changes, func(n int) {
		written(n)
		if g.torn {
			cancel(errTorn)
			return
		}
		select {
		case g.at <- n:
		case <-ctx.Done():
			return
		}
		select {
		case <-g.on:
		case <-ctx.Done():
		}
	})
	if errors.Is(context.Cause(ctx), errTorn) {
		return errTorn
	}
	return err
}

// inlet is a desk over a gate, with two athletes and a class whose clock runs.
type inlet struct {
	*bench
	gate  *gate
	ada   gym.Athlete
	class gym.Class
}

func newInlet(t *testing.T) *inlet {
	h := &inlet{bench: newBench(t)}
	h.gate = &gate{Store: h.file, at: make(chan int), on: make(chan struct{})}
	d, err := desk.Open(t.Context(), h.gate, func() time.Time { return h.now }, rand.NewChaCha8([32]byte{2}))
	require.NoError(t, err)
	h.Desk = d
	h.ada = h.join("Ada Brook")
	h.join("Bo Quist")
	h.class, err = h.OpenFreeClass()
	require.NoError(t, err)
	return h
}

// resultSheet has a result a day from so many days on.
func resultSheet(from, rows int) string {
	var s strings.Builder
	s.WriteString("Athlete,Lift,Reps,Load,Date\n")
	for i := range rows {
		on := day.Of(2010, 1, 1).Add(from + i)
		fmt.Fprintf(&s, "%s,Back squat,5,%d kg,%s\n", []string{"Ada Brook", "Bo Quist"}[i%2], 40+i%100, on)
	}
	return s.String()
}

func rosterSheet(rows int) string {
	var s strings.Builder
	s.WriteString("Name;Track;Back squat 5RM\n")
	for i := range rows {
		fmt.Fprintf(&s, "Person %c%c%c;Powerlifting;%d\n", 'A'+i/676%26, 'a'+i/26%26, 'a'+i%26, 60+i%90)
	}
	return s.String()
}

// longRows are of a sheet that tells twice how far it is.
const longRows = 600

// begin begins to bring a sheet in and writes it beside the desk.
func (h *inlet) begin(kind desk.ImportKind, sheet string) (*desk.LongStep, context.CancelFunc, <-chan error) {
	h.t.Helper()
	long, err := h.BeginImport(h.read(kind, sheet), false)
	require.NoError(h.t, err)
	require.NotNil(h.t, long)
	cancel, ended := h.beside(long)
	return long, cancel, ended
}

func (h *inlet) beside(long *desk.LongStep) (context.CancelFunc, <-chan error) {
	ctx, cancel := context.WithCancel(h.t.Context())
	ended := make(chan error, 1)
	go func() { ended <- long.Write(ctx, func(int, int) {}) }()
	return cancel, ended
}

// letOn lets a long step on until it ends.
func (h *inlet) letOn(ended <-chan error) error {
	for {
		if over, err := h.oneWord(ended); over {
			return err
		}
	}
}

// oneWord lets a long step on to its next word of how far it is.
func (h *inlet) oneWord(ended <-chan error) (over bool, err error) {
	select {
	case <-h.gate.at:
	case err := <-ended:
		return true, err
	}
	select {
	case h.gate.on <- struct{}{}:
		return false, nil
	case err := <-ended: // it was called off in that moment
		return true, err
	}
}

// same tells that the book says what a program that starts now reads.
func (h *inlet) same() {
	h.t.Helper()
	assert.Empty(h.t, differing(*h.open().Book(), *h.Book()))
	assert.True(h.t, h.IndexIsTrue())
}

// differing names the lists in which two books differ.
func differing(a, b gym.Book) (lists []string) {
	x, y := reflect.ValueOf(a), reflect.ValueOf(b)
	for i := range x.NumField() {
		one, other := x.Field(i), y.Field(i)
		if one.Kind() == reflect.Slice && one.Len() == 0 && other.Len() == 0 {
			continue // a book in memory may hold either kind of nothing
		}
		if !assert.ObjectsAreEqual(one.Interface(), other.Interface()) {
			lists = append(lists, x.Type().Field(i).Name)
		}
	}
	return lists
}

// letOnTo lets a long step on so many times, or to its end.
func (h *inlet) letOnTo(ended <-chan error, words int) <-chan error {
	for range words {
		if over, err := h.oneWord(ended); over {
			kept := make(chan error, 1)
			kept <- err
			return kept
		}
	}
	return ended
}
