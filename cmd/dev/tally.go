package main

import (
	"cmp"
	"encoding/json"
	"fmt"
	"maps"
	"slices"
	"strings"
)

// An event is one line of `go test -json`.
type event struct {
	Action      string
	Package     string
	ImportPath  string // names the package in build events
	Test        string
	Elapsed     float64
	Output      string
	FailedBuild string
}

// A testID names a test, or with an empty test what a package did outside any.
type testID struct{ pkg, test string }

type outcome int

// In order of weight: a test that fails in one of several runs has failed.
const (
	skipped outcome = iota + 1
	passed
	failed
)

// A tally counts the tests of one run, and by add those of more: the same test
// in two runs, plain and with the race detector, counts once.
type tally struct {
	outcomes map[testID]outcome
	output   map[testID]*strings.Builder // of tests that still run or have failed
	builds   map[string]*strings.Builder // what the compiler said, by package
}

func newTally() *tally {
	return &tally{
		outcomes: map[testID]outcome{},
		output:   map[testID]*strings.Builder{},
		builds:   map[string]*strings.Builder{},
	}
}

// read takes one line of output. A line that is no event comes from the go
// command itself and is returned for showing; so is news of a finished package.
func (t *tally) read(line []byte) (news string) {
	var e event
	if err := json.Unmarshal(line, &e); err != nil || e.Action == "" {
		return string(line)
	}
	id := testID{e.Package, e.Test}
	switch e.Action {
	case "output":
		write(t.output, id, e.Output)
	case "build-output":
		write(t.builds, e.ImportPath, e.Output)
	case "pass", "skip", "fail":
		return t.finish(id, e)
	}
	return ""
}

func write[K comparable](to map[K]*strings.Builder, key K, text string) {
	if to[key] == nil {
		to[key] = &strings.Builder{}
	}
	to[key].WriteString(text)
}

func (t *tally) finish(id testID, e event) (news string) {
	if id.test == "" {
		return t.finishPackage(id, e)
	}
	got := map[string]outcome{"pass": passed, "skip": skipped, "fail": failed}[e.Action]
	t.record(id, got)
	return ""
}

func (t *tally) record(id testID, got outcome) {
	t.outcomes[id] = got
	if got != failed {
		delete(t.output, id)
	}
}

// finishPackage counts a package that failed without any test failing, as one
// that does not build or ends half-way, as one failure.
func (t *tally) finishPackage(id testID, e event) (news string) {
	switch e.Action {
	case "fail":
		if !t.hasFailure(id.pkg) {
			t.outcomes[id] = failed
			t.adoptBuild(id, e.FailedBuild)
			t.adoptUnfinished(id)
		}
		news = "FAIL"
	case "skip":
		news = "no tests"
	default:
		news = "ok"
	}
	if t.outcomes[id] != failed {
		delete(t.output, id)
	}
	return fmt.Sprintf("%-8s %s %.1fs", news, id.pkg, e.Elapsed)
}

func (t *tally) adoptBuild(id testID, importPath string) {
	if said := t.builds[importPath]; said != nil {
		write(t.output, id, said.String())
	}
}

// adoptUnfinished gives a package the words of its tests that neither passed nor
// failed, since one of them ended the program.
func (t *tally) adoptUnfinished(id testID) {
	for _, other := range sortedIDs(t.output) {
		if other.pkg == id.pkg && other.test != "" && t.outcomes[other] == 0 {
			write(t.output, id, t.output[other].String())
		}
	}
}

// add takes the counts of one run in, with the words of the first failure.
func (t *tally) add(run *tally) {
	for id, got := range run.outcomes {
		if got == failed && t.outcomes[id] != failed {
			t.output[id] = run.output[id]
		}
		t.outcomes[id] = max(t.outcomes[id], got)
	}
}

func (t *tally) hasFailure(pkg string) bool {
	for id, got := range t.outcomes {
		if id.pkg == pkg && got == failed {
			return true
		}
	}
	return false
}

func (t *tally) count(want outcome) (n int) {
	for _, got := range t.outcomes {
		if got == want {
			n++
		}
	}
	return n
}

// String is the plain closing line that readers of logs look for.
func (t *tally) String() string {
	return fmt.Sprintf("%d passed, %d failed, %d skipped", t.count(passed), t.count(failed), t.count(skipped))
}

// failures lists what failed with its output. A test of which only a subtest
// failed says nothing new and is left out.
func (t *tally) failures() []string {
	var list []string
	for _, id := range sortedIDs(t.outcomes) {
		if t.outcomes[id] != failed {
			continue
		}
		said := t.said(id)
		if said == "" && t.hasFailedSubtest(id) {
			continue
		}
		list = append(list, strings.TrimSpace("--- FAIL "+id.pkg+" "+id.test)+said)
	}
	return list
}

// said is what a test printed, without the lines that only frame it.
func (t *tally) said(id testID) (text string) {
	if t.output[id] == nil {
		return ""
	}
	for line := range strings.Lines(t.output[id].String()) {
		if !framing(line) {
			text += "\n" + strings.TrimRight(line, "\n")
		}
	}
	return text
}

func framing(line string) bool {
	return strings.HasPrefix(line, "=== ") || strings.HasPrefix(strings.TrimLeft(line, " "), "--- FAIL: ")
}

func (t *tally) hasFailedSubtest(id testID) bool {
	for other, got := range t.outcomes {
		if got == failed && other.pkg == id.pkg && strings.HasPrefix(other.test, id.test+"/") {
			return true
		}
	}
	return false
}

func sortedIDs[V any](m map[testID]V) []testID {
	return slices.SortedFunc(maps.Keys(m), func(a, b testID) int {
		return cmp.Or(cmp.Compare(a.pkg, b.pkg), cmp.Compare(a.test, b.test))
	})
}
