package gym_test

import (
	"fmt"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/gym"
)

// shelf is one list of a book, seen through a key and a mark that tells two
// values with the same key apart.
type shelf struct {
	put  func(key, mark string) gym.Change
	drop func(key string) gym.Change
	read func(*gym.Book) []string // "key=mark", in order
}

func written[T any](rows []T, of func(T) (key, mark string)) []string {
	var texts []string
	for _, r := range rows {
		key, mark := of(r)
		texts = append(texts, key+"="+mark)
	}
	return texts
}

// shelves has every list whose rows are put and dropped.
var shelves = map[string]shelf{
	"lifts": {
		func(k, m string) gym.Change { return gym.PutLift{Lift: gym.Lift{Key: gym.LiftKey(k), Name: m}} },
		func(k string) gym.Change { return gym.DropLift{Key: gym.LiftKey(k)} },
		func(b *gym.Book) []string {
			return written(b.Lifts, func(v gym.Lift) (string, string) { return string(v.Key), v.Name })
		},
	},
	"movements": {
		func(k, m string) gym.Change {
			return gym.PutMovement{Movement: gym.Movement{Key: gym.MovementKey(k), Name: m}}
		},
		func(k string) gym.Change { return gym.DropMovement{Key: gym.MovementKey(k)} },
		func(b *gym.Book) []string {
			return written(b.Movements, func(v gym.Movement) (string, string) { return string(v.Key), v.Name })
		},
	},
	"finishers": {
		func(k, m string) gym.Change { return gym.PutFinisher{Finisher: gym.Finisher{Key: k, Name: m}} },
		func(k string) gym.Change { return gym.DropFinisher{Key: k} },
		func(b *gym.Book) []string {
			return written(b.Finishers, func(v gym.Finisher) (string, string) { return v.Key, v.Name })
		},
	},
	"drills": {
		func(k, m string) gym.Change { return gym.PutDrill{Drill: gym.Drill{Key: k, Name: m}} },
		func(k string) gym.Change { return gym.DropDrill{Key: k} },
		func(b *gym.Book) []string {
			return written(b.Drills, func(v gym.Drill) (string, string) { return v.Key, v.Name })
		},
	},
	"tracks": {
		func(k, m string) gym.Change { return gym.PutTrack{Track: gym.Track{ID: gym.ID(k), Name: m}} },
		func(k string) gym.Change { return gym.DropTrack{ID: gym.ID(k)} },
		func(b *gym.Book) []string {
			return written(b.Tracks, func(v gym.Track) (string, string) { return string(v.ID), v.Name })
		},
	},
	"athletes": {
		func(k, m string) gym.Change { return gym.PutAthlete{Athlete: gym.Athlete{ID: gym.ID(k), Name: m}} },
		func(k string) gym.Change { return gym.DropAthlete{ID: gym.ID(k)} },
		func(b *gym.Book) []string {
			return written(b.Athletes, func(v gym.Athlete) (string, string) { return string(v.ID), v.Name })
		},
	},
	"moves": {
		func(k, m string) gym.Change { return gym.PutMove{Move: gym.TrackMove{ID: gym.ID(k), Track: gym.ID(m)}} },
		func(k string) gym.Change { return gym.DropMove{ID: gym.ID(k)} },
		func(b *gym.Book) []string {
			return written(b.Moves, func(v gym.TrackMove) (string, string) { return string(v.ID), string(v.Track) })
		},
	},
	"restrictions": {
		func(k, m string) gym.Change {
			return gym.PutRestriction{Restriction: gym.Restriction{ID: gym.ID(k), Text: m}}
		},
		func(k string) gym.Change { return gym.DropRestriction{ID: gym.ID(k)} },
		func(b *gym.Book) []string {
			return written(b.Restrictions, func(v gym.Restriction) (string, string) { return string(v.ID), v.Text })
		},
	},
	"climbs": {
		func(k, m string) gym.Change { return gym.PutClimb{Climb: gym.ClimbPlan{ID: gym.ID(k), Name: m}} },
		func(k string) gym.Change { return gym.DropClimb{ID: gym.ID(k)} },
		func(b *gym.Book) []string {
			return written(b.Climbs, func(v gym.ClimbPlan) (string, string) { return string(v.ID), v.Name })
		},
	},
	"slots": {
		func(k, m string) gym.Change { return gym.PutSlot{Slot: gym.Slot{ID: gym.ID(k), Name: m}} },
		func(k string) gym.Change { return gym.DropSlot{ID: gym.ID(k)} },
		func(b *gym.Book) []string {
			return written(b.Slots, func(v gym.Slot) (string, string) { return string(v.ID), v.Name })
		},
	},
	"closures": {
		func(k, m string) gym.Change { return gym.PutClosure{Closure: gym.Closure{ID: gym.ID(k), Name: m}} },
		func(k string) gym.Change { return gym.DropClosure{ID: gym.ID(k)} },
		func(b *gym.Book) []string {
			return written(b.Closures, func(v gym.Closure) (string, string) { return string(v.ID), v.Name })
		},
	},
	"cycles": {
		func(k, m string) gym.Change { return gym.PutCycle{Cycle: gym.Cycle{ID: gym.ID(k), Name: m}} },
		func(k string) gym.Change { return gym.DropCycle{ID: gym.ID(k)} },
		func(b *gym.Book) []string {
			return written(b.Cycles, func(v gym.Cycle) (string, string) { return string(v.ID), v.Name })
		},
	},
	"classes": {
		func(k, m string) gym.Change { return gym.PutClass{Class: gym.Class{ID: gym.ID(k), Name: m}} },
		func(k string) gym.Change { return gym.DropClass{ID: gym.ID(k)} },
		func(b *gym.Book) []string {
			return written(b.Classes, func(v gym.Class) (string, string) { return string(v.ID), v.Name })
		},
	},
}

func shelfNames() []string {
	var names []string
	for name := range shelves {
		names = append(names, name)
	}
	slices.Sort(names)
	return names
}

// plain does what Apply promises in the slowest and plainest way.
type plain map[string][]string

func (p plain) put(shelf, key, mark string) {
	for i, text := range p[shelf] {
		if text[:len(key)+1] == key+"=" {
			p[shelf][i] = key + "=" + mark
			return
		}
	}
	p[shelf] = append(p[shelf], key+"="+mark)
}

func (p plain) drop(shelf, key string) {
	var left []string
	for _, text := range p[shelf] {
		if text[:len(key)+1] != key+"=" {
			left = append(left, text)
		}
	}
	p[shelf] = left
}

// drawChange makes one change of the book's lists, and the same in plain.
func drawChange(t *rapid.T, p plain) gym.Change {
	name := rapid.SampledFrom(shelfNames()).Draw(t, "shelf")
	key := rapid.SampledFrom([]string{"a", "b", "c"}).Draw(t, "key")
	if rapid.Bool().Draw(t, "drop") {
		p.drop(name, key)
		return shelves[name].drop(key)
	}
	mark := rapid.StringMatching(`[x-z]{1,3}`).Draw(t, "mark")
	p.put(name, key, mark)
	return shelves[name].put(key, mark)
}

func TestApplyPutsAndDrops(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var b gym.Book
		p := plain{}
		for range rapid.IntRange(0, 60).Draw(t, "changes") {
			b.Apply(drawChange(t, p))
			for name, s := range shelves {
				if got := s.read(&b); !slices.Equal(got, p[name]) {
					t.Fatalf("%s are %v, not %v", name, got, p[name])
				}
			}
		}
		var copied gym.Book
		copied.Apply(b.Changes()...)
		for name, s := range shelves {
			if got := s.read(&copied); !slices.Equal(got, p[name]) {
				t.Fatalf("after Changes %s are %v, not %v", name, got, p[name])
			}
		}
	})
}

// What is taken back says what it said before; only the order may differ, for a
// dropped row comes back at the end.
func TestInverseTakesBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var b gym.Book
		p := plain{}
		for range rapid.IntRange(0, 30).Draw(t, "before") {
			b.Apply(drawChange(t, p))
		}
		before := map[string][]string{}
		for name, s := range shelves {
			before[name] = slices.Sorted(slices.Values(s.read(&b)))
		}
		var changes []gym.Change
		for range rapid.IntRange(0, 10).Draw(t, "changes") {
			changes = append(changes, drawChange(t, p))
		}
		back, _ := b.Inverse(changes, func() gym.ID { return "new" }, gym.Void{})
		b.Apply(changes...)
		b.Apply(back...)
		for name, s := range shelves {
			if got := slices.Sorted(slices.Values(s.read(&b))); !slices.Equal(got, before[name]) {
				t.Fatalf("%s are %v, not %v", name, got, before[name])
			}
		}
	})
}

func TestApplyKeepsSettingsAndEquipment(t *testing.T) {
	var b gym.Book
	s := gym.DefaultSettings()
	s.Name = "The Boathouse"
	e := gym.Equipment{Stations: []gym.Station{{Name: "1", Bar: "long"}}}
	b.Apply(gym.PutSettings{Settings: s}, gym.PutEquipment{Equipment: e})
	assert.Equal(t, s, b.Settings)
	assert.Equal(t, e, b.Equipment)
}

func TestLogIsOnlyAddedToAndVoidedOnce(t *testing.T) {
	first, second := gym.Void{At: six, Reason: "wrong bar"}, gym.Void{At: six, Reason: "again"}
	var b gym.Book
	for i := range 3 {
		id := gym.ID(fmt.Sprint(i))
		b.Apply(gym.AddResult{Result: gym.Result{ID: id}}, gym.AddBout{Bout: gym.Bout{ID: id}}, gym.AddOverride{Override: gym.Override{ID: id}})
	}
	b.Apply(
		gym.VoidResult{ID: "1", Void: first}, gym.VoidBout{ID: "1", Void: first}, gym.VoidOverride{ID: "1", Void: first},
		gym.VoidResult{ID: "1", Void: second}, gym.VoidBout{ID: "1", Void: second}, gym.VoidOverride{ID: "1", Void: second},
		gym.VoidResult{ID: "9", Void: first}, gym.VoidBout{ID: "9", Void: first}, gym.VoidOverride{ID: "9", Void: first},
	)
	var copied gym.Book
	copied.Apply(b.Changes()...)
	for _, kept := range []gym.Book{b, copied} {
		require.Len(t, kept.Results, 3)
		require.Len(t, kept.Bouts, 3)
		require.Len(t, kept.Overrides, 3)
		for i := range 3 {
			want := map[bool]*gym.Void{true: &first}[i == 1]
			assert.Equal(t, want, kept.Results[i].Void, i)
			assert.Equal(t, want, kept.Bouts[i].Void, i)
			assert.Equal(t, want, kept.Overrides[i].Void, i)
			assert.Equal(t, gym.ID(fmt.Sprint(i)), kept.Results[i].ID)
		}
	}
}

func TestTakingBackAVoidAddsTheRowAnew(t *testing.T) {
	r, bout, o := aResult(), aBout(), anOverride()
	class := gym.Class{ID: "c", Lifters: []gym.Lifter{{Athlete: "a", Result: r.ID}}}
	var b gym.Book
	b.Apply(gym.AddResult{Result: r}, gym.AddBout{Bout: bout}, gym.AddOverride{Override: o}, gym.PutClass{Class: class})
	v := gym.Void{At: six, Reason: "wrong bar"}
	changes := []gym.Change{
		gym.PutClass{Class: gym.Class{ID: "c"}},
		gym.VoidResult{ID: r.ID, Void: v},
		gym.VoidBout{ID: bout.ID, Void: v},
		gym.VoidOverride{ID: o.ID, Void: v},
	}
	back, _ := b.Inverse(changes, func() gym.ID { return "new" }, gym.Void{})
	b.Apply(changes...)
	b.Apply(back...)

	assert.Equal(t, &v, b.Results[0].Void, "the void stays readable")
	assert.Equal(t, &v, b.Bouts[0].Void)
	assert.Equal(t, &v, b.Overrides[0].Void)
	r.ID, bout.ID, o.ID = "new", "new", "new"
	assert.Equal(t, []gym.Result{r}, b.Results[1:])
	assert.Equal(t, []gym.Bout{bout}, b.Bouts[1:])
	assert.Equal(t, []gym.Override{o}, b.Overrides[1:])
	assert.Equal(t, gym.ID("new"), b.Classes[0].Lifters[0].Result, "the class names the row that counts")
	again, _ := b.Inverse(changes[1:], func() gym.ID { return "newer" }, gym.Void{})
	assert.Empty(t, again, "a second void changes nothing")
}

func TestTakingBackAnAdditionVoidsIt(t *testing.T) {
	undone := gym.Void{At: six, Reason: "undone"}
	var b gym.Book
	changes := []gym.Change{gym.AddResult{Result: aResult()}, gym.AddBout{Bout: aBout()}, gym.AddOverride{Override: anOverride()}}
	back, _ := b.Inverse(changes, func() gym.ID { return "new" }, undone)
	b.Apply(changes...)
	b.Apply(back...)
	assert.Equal(t, &undone, b.Results[0].Void)
	assert.Equal(t, &undone, b.Bouts[0].Void)
	assert.Equal(t, &undone, b.Overrides[0].Void)
}

// A long list finds athletes and moves by a map; it must say what the same list
// says made one by one.
func TestALongListOfPeopleIsTheSameAsOneByOne(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var changes []gym.Change
		for i := range rapid.IntRange(64, 200).Draw(t, "changes") {
			id := gym.ID(fmt.Sprint(rapid.IntRange(0, 40).Draw(t, "row")))
			switch rapid.IntRange(0, 5).Draw(t, "kind") {
			case 0:
				changes = append(changes, gym.DropAthlete{ID: id})
			case 1:
				changes = append(changes, gym.DropMove{ID: id})
			case 2, 3:
				changes = append(changes, gym.PutAthlete{Athlete: gym.Athlete{ID: id, Want: i}})
			default:
				changes = append(changes, gym.PutMove{Move: gym.TrackMove{ID: id, From: 1, Athlete: gym.ID(fmt.Sprint(i))}})
			}
		}
		var whole, single gym.Book
		whole.Apply(changes...)
		for _, c := range changes {
			single.Apply(c)
		}
		assert.Equal(t, single.Athletes, whole.Athletes)
		assert.Equal(t, single.Moves, whole.Moves)

		var onces []gym.Change
		for _, c := range slices.Backward(changes) {
			once, _ := whole.Inverse([]gym.Change{c}, nil, gym.Void{})
			onces = append(onces, once...)
		}
		back, _ := whole.Inverse(changes, nil, gym.Void{})
		assert.Equal(t, onces, back)
	})
}

func BenchmarkApplyRosterOf100000(b *testing.B) {
	var changes []gym.Change
	for i := range 100_000 {
		id := gym.ID(fmt.Sprint(i))
		changes = append(changes, gym.PutAthlete{Athlete: gym.Athlete{ID: id}}, gym.PutMove{Move: gym.TrackMove{ID: id}})
	}
	for b.Loop() {
		var book gym.Book
		book.Apply(changes...)
	}
}
