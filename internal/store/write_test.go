package store

import (
	"context"
	"encoding/json"
	"go/ast"
	"go/parser"
	"go/token"
	"path/filepath"
	"reflect"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/gym"
)

// draws has one entry for every change of package gym. A draw returns nil when
// the book has nothing to make the change of.
var draws = map[string]func(*artist) gym.Change{
	"PutSettings":    func(a *artist) gym.Change { return gym.PutSettings{Settings: fill[gym.Settings](a)} },
	"PutEquipment":   func(a *artist) gym.Change { return gym.PutEquipment{Equipment: fill[gym.Equipment](a)} },
	"PutLift":        func(a *artist) gym.Change { return gym.PutLift{Lift: a.lift()} },
	"DropLift":       func(a *artist) gym.Change { return gym.DropLift{Key: pick(a, a.book.Lifts, liftKey)} },
	"PutMovement":    func(a *artist) gym.Change { return gym.PutMovement{Movement: a.movement()} },
	"DropMovement":   func(a *artist) gym.Change { return gym.DropMovement{Key: pick(a, a.book.Movements, movementKey)} },
	"PutFinisher":    func(a *artist) gym.Change { return gym.PutFinisher{Finisher: a.finisher()} },
	"DropFinisher":   func(a *artist) gym.Change { return gym.DropFinisher{Key: pick(a, a.book.Finishers, finisherKey)} },
	"PutDrill":       func(a *artist) gym.Change { return gym.PutDrill{Drill: a.drill()} },
	"DropDrill":      func(a *artist) gym.Change { return gym.DropDrill{Key: pick(a, a.book.Drills, drillKey)} },
	"PutTrack":       func(a *artist) gym.Change { return gym.PutTrack{Track: a.track()} },
	"DropTrack":      func(a *artist) gym.Change { return gym.DropTrack{ID: pick(a, a.book.Tracks, trackID)} },
	"PutAthlete":     func(a *artist) gym.Change { return gym.PutAthlete{Athlete: a.athlete()} },
	"DropAthlete":    func(a *artist) gym.Change { return gym.DropAthlete{ID: pick(a, a.book.Athletes, athleteID)} },
	"PutMove":        needAthlete(func(a *artist) gym.Change { return gym.PutMove{Move: a.move()} }),
	"DropMove":       func(a *artist) gym.Change { return gym.DropMove{ID: pick(a, a.book.Moves, moveID)} },
	"PutRestriction": needAthlete(func(a *artist) gym.Change { return gym.PutRestriction{Restriction: a.restriction()} }),
	"DropRestriction": func(a *artist) gym.Change {
		return gym.DropRestriction{ID: pick(a, a.book.Restrictions, restrictionID)}
	},
	"AddResult": needBoth(func(a *artist) gym.Change { return gym.AddResult{Result: a.result()} }),
	"VoidResult": func(a *artist) gym.Change {
		return gym.VoidResult{ID: pick(a, a.book.Results, resultID), Void: fill[gym.Void](a)}
	},
	"AddBout": needBoth(func(a *artist) gym.Change { return gym.AddBout{Bout: a.bout()} }),
	"VoidBout": func(a *artist) gym.Change {
		return gym.VoidBout{ID: pick(a, a.book.Bouts, boutID), Void: fill[gym.Void](a)}
	},
	"AddOverride": needAthlete(func(a *artist) gym.Change { return gym.AddOverride{Override: a.override()} }),
	"VoidOverride": func(a *artist) gym.Change {
		return gym.VoidOverride{ID: pick(a, a.book.Overrides, overrideID), Void: fill[gym.Void](a)}
	},
	"PutClimb":    func(a *artist) gym.Change { return gym.PutClimb{Climb: a.climb()} },
	"DropClimb":   func(a *artist) gym.Change { return gym.DropClimb{ID: pick(a, a.book.Climbs, climbID)} },
	"PutSlot":     func(a *artist) gym.Change { return gym.PutSlot{Slot: a.slot()} },
	"DropSlot":    func(a *artist) gym.Change { return gym.DropSlot{ID: pick(a, a.book.Slots, slotID)} },
	"PutClosure":  func(a *artist) gym.Change { return gym.PutClosure{Closure: a.closure()} },
	"DropClosure": func(a *artist) gym.Change { return gym.DropClosure{ID: pick(a, a.book.Closures, closureID)} },
	"PutCycle":    func(a *artist) gym.Change { return gym.PutCycle{Cycle: a.cycle()} },
	"DropCycle":   func(a *artist) gym.Change { return gym.DropCycle{ID: pick(a, a.book.Cycles, cycleID)} },
	"PutClass":    func(a *artist) gym.Change { return gym.PutClass{Class: a.class()} },
	"DropClass":   func(a *artist) gym.Change { return gym.DropClass{ID: pick(a, a.book.Classes, classID)} },
}

func needAthlete(draw func(*artist) gym.Change) func(*artist) gym.Change {
	return func(a *artist) gym.Change {
		if len(a.book.Athletes) == 0 {
			return nil
		}
		return draw(a)
	}
}

func needBoth(draw func(*artist) gym.Change) func(*artist) gym.Change {
	return needAthlete(func(a *artist) gym.Change {
		if len(a.book.Lifts) == 0 || len(a.book.Movements) == 0 {
			return nil
		}
		return draw(a)
	})
}

// A change that package gym learns must be drawn here, or the property below
// would pass over it.
func TestEveryChangeIsDrawn(t *testing.T) {
	file, err := parser.ParseFile(token.NewFileSet(), "../gym/book.go", nil, 0)
	require.NoError(t, err)
	var changes []string
	ast.Inspect(file, func(n ast.Node) bool {
		if f, ok := n.(*ast.FuncDecl); ok && f.Name.Name == "apply" {
			changes = append(changes, f.Recv.List[0].Type.(*ast.Ident).Name)
		}
		return true
	})
	require.NotEmpty(t, changes)
	var drawn []string
	for name := range draws {
		drawn = append(drawn, name)
	}
	assert.ElementsMatch(t, changes, drawn)
}

// The file says what the book says after any lists of changes; a list that is
// refused has changed nothing. Whether a change must be refused is told by brute
// force over the book written out as text.
func TestFileEqualsBook(t *testing.T) {
	template := newTemplate(t)
	rapid.Check(t, func(rt *rapid.T) {
		f := openTemplate(rt, t, template)
		defer func() { require.NoError(rt, f.Close()) }()
		book, err := f.Load(t.Context())
		require.NoError(rt, err)
		a := &artist{t: rt, book: &book}
		for range rapid.IntRange(1, 12).Draw(rt, "lists") {
			next, changes, refused := a.list()
			err := f.Write(t.Context(), changes...)
			if refused != nil {
				require.ErrorIs(rt, err, refused, "%#v", changes)
			} else {
				require.NoError(rt, err, "%#v", changes)
				book = next
			}
			got, err := f.Load(t.Context())
			require.NoError(rt, err)
			require.Equal(rt, tidy(book), tidy(got))
		}
		s, err := Verify(t.Context(), f.Path())
		require.NoError(rt, err)
		require.Equal(rt, len(book.Results), s.Results)
	})
}

// list draws some changes, the book that they would make, and the sentinel with
// which the file must refuse them, if any.
func (a *artist) list() (next gym.Book, changes []gym.Change, refused error) {
	before := a.book
	defer func() { a.book = before }()
	next = clone(*before)
	a.book = &next
	names := sortedKeys(draws)
	for range rapid.IntRange(1, 6).Draw(a.t, "changes") {
		c := draws[rapid.SampledFrom(names).Draw(a.t, "change")](a)
		if c == nil {
			continue
		}
		if refused == nil {
			refused = refusal(next, c)
		}
		changes = append(changes, c)
		if refused != nil {
			return next, changes, refused
		}
		next.Apply(c)
	}
	return next, changes, refused
}

// refusal is the oracle: what a change must be refused with, or nil.
func refusal(b gym.Book, change gym.Change) error {
	standing := func(void *gym.Void, found bool) error {
		if !found || void != nil {
			return ErrConstraint
		}
		return nil
	}
	switch c := change.(type) {
	case gym.VoidResult:
		r, ok := find(b.Results, resultID, c.ID)
		return standing(r.Void, ok)
	case gym.VoidBout:
		r, ok := find(b.Bouts, boutID, c.ID)
		return standing(r.Void, ok)
	case gym.VoidOverride:
		r, ok := find(b.Overrides, overrideID, c.ID)
		return standing(r.Void, ok)
	case gym.DropClass:
		if r, ok := find(b.Classes, classID, c.ID); ok && r.Stage != gym.SetUp {
			return ErrInUse
		}
	}
	return inUse(b, change)
}

// inUse looks for the key of a dropped row in the text of the rest of the book.
func inUse(b gym.Book, change gym.Change) error {
	v := reflect.ValueOf(change)
	if !strings.HasPrefix(v.Type().Name(), "Drop") {
		return nil
	}
	key := v.Field(0).String()
	if climb, ok := change.(gym.DropClimb); ok {
		found, _ := find(b.Climbs, climbID, climb.ID)
		key = found.Name // a day plan names a climb by its name
	}
	rest := clone(b)
	rest.Apply(change)
	for i := range rest.Classes { // copies, which bind nothing
		rest.Classes[i].Slot, rest.Classes[i].Climb = "", gym.ClimbPlan{}
	}
	text, err := json.Marshal(rest)
	if err != nil {
		return err
	}
	if key != "" && strings.Contains(string(text), `"`+key+`"`) {
		return ErrInUse
	}
	return nil
}

func find[T any, K comparable](rows []T, of func(T) K, key K) (T, bool) {
	for _, r := range rows {
		if of(r) == key {
			return r, true
		}
	}
	var none T
	return none, false
}

// clone copies every list of the book, so that applying changes leaves b alone.
func clone(b gym.Book) gym.Book {
	return mapLists(b, func(list reflect.Value) reflect.Value {
		return reflect.AppendSlice(reflect.MakeSlice(list.Type(), 0, list.Len()), list)
	})
}

// tidy makes a list without rows nil: a book in memory may hold either.
func tidy(b gym.Book) gym.Book {
	return mapLists(b, func(list reflect.Value) reflect.Value {
		if list.Len() == 0 {
			return reflect.Zero(list.Type())
		}
		return list
	})
}

func mapLists(b gym.Book, f func(reflect.Value) reflect.Value) gym.Book {
	v := reflect.ValueOf(&b).Elem()
	for i := range v.NumField() {
		if v.Field(i).Kind() == reflect.Slice {
			v.Field(i).Set(f(v.Field(i)))
		}
	}
	return b
}

func sortedKeys[V any](m map[string]V) []string {
	var keys []string
	for k := range m {
		keys = append(keys, k)
	}
	slices.Sort(keys)
	return keys
}

// newTemplate makes an empty file; copying it is quicker than making many.
func newTemplate(t *testing.T) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "template")
	f, err := Create(t.Context(), path)
	require.NoError(t, err)
	require.NoError(t, f.Close())
	return path
}

func openTemplate(rt require.TestingT, t *testing.T, template string) *File {
	path := filepath.Join(t.TempDir(), "gym.windlass")
	copyFile(rt, template, path)
	f, err := Open(context.Background(), path)
	require.NoError(rt, err)
	return f
}
