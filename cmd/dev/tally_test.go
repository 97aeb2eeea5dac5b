package main

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// stream is what `go test -json` prints for a package with a failing subtest, a
// skipped test, one that ends the program, and one that does not build.
const stream = `go: downloading example.org/x v1.0.0
{"Action":"run","Package":"windlass/a","Test":"TestSum"}
{"Action":"output","Package":"windlass/a","Test":"TestSum","Output":"=== RUN   TestSum\n"}
{"Action":"output","Package":"windlass/a","Test":"TestSum/short","Output":"=== RUN   TestSum/short\n"}
{"Action":"output","Package":"windlass/a","Test":"TestSum/short","Output":"    a_test.go:9: got 3\n"}
{"Action":"output","Package":"windlass/a","Test":"TestSum/short","Output":"    --- FAIL: TestSum/short (0.00s)\n"}
{"Action":"fail","Package":"windlass/a","Test":"TestSum/short","Elapsed":0}
{"Action":"output","Package":"windlass/a","Test":"TestSum","Output":"--- FAIL: TestSum (0.00s)\n"}
{"Action":"fail","Package":"windlass/a","Test":"TestSum","Elapsed":0}
{"Action":"output","Package":"windlass/a","Test":"TestFine","Output":"chatter\n"}
{"Action":"pass","Package":"windlass/a","Test":"TestFine","Elapsed":0}
{"Action":"skip","Package":"windlass/a","Test":"TestLater","Elapsed":0}
{"Action":"output","Package":"windlass/a","Output":"FAIL\n"}
{"Action":"fail","Package":"windlass/a","Elapsed":0.4}
{"Action":"output","Package":"windlass/b","Test":"TestExit","Output":"log: giving up\n"}
{"Action":"output","Package":"windlass/b","Output":"exit status 3\n"}
{"Action":"fail","Package":"windlass/b","Elapsed":0.1}
{"ImportPath":"windlass/c","Action":"build-output","Output":"c.go:1: undefined: x\n"}
{"ImportPath":"windlass/c","Action":"build-fail"}
{"Action":"fail","Package":"windlass/c","Elapsed":0,"FailedBuild":"windlass/c"}
{"Action":"skip","Package":"windlass/d","Elapsed":0}
{"Action":"pass","Package":"windlass/e","Elapsed":1.26}
`

func readAll(t *testing.T, counts *tally, text string) (news []string) {
	t.Helper()
	err := eachLine(strings.NewReader(text), func(line []byte) {
		if n := counts.read(line); n != "" {
			news = append(news, n)
		}
	})
	require.NoError(t, err)
	return news
}

func TestTallyCounts(t *testing.T) {
	counts := newTally()
	news := readAll(t, counts, stream)

	assert.Equal(t, "1 passed, 4 failed, 1 skipped", counts.String())
	assert.Equal(t, []string{
		"go: downloading example.org/x v1.0.0",
		"FAIL     windlass/a 0.4s",
		"FAIL     windlass/b 0.1s",
		"FAIL     windlass/c 0.0s",
		"no tests windlass/d 0.0s",
		"ok       windlass/e 1.3s",
	}, news)
}

func TestTallyShowsWhatFailed(t *testing.T) {
	counts := newTally()
	readAll(t, counts, stream)

	assert.Equal(t, []string{
		"--- FAIL windlass/a TestSum/short\n    a_test.go:9: got 3",
		"--- FAIL windlass/b\nexit status 3\nlog: giving up",
		"--- FAIL windlass/c\nc.go:1: undefined: x",
	}, counts.failures())
}

func TestTallyOverRuns(t *testing.T) {
	const (
		pass = `{"Action":"pass","Package":"windlass/a","Test":"TestSum"}` + "\n"
		race = `{"Action":"output","Package":"windlass/a","Test":"TestSum","Output":"WARNING: DATA RACE\n"}` + "\n" +
			`{"Action":"fail","Package":"windlass/a","Test":"TestSum"}` + "\n"
		skip = `{"Action":"skip","Package":"windlass/a","Test":"TestSum"}` + "\n"
	)
	tests := []struct {
		name string
		runs []string
		want string
	}{
		{"the same test twice counts once", []string{pass, pass}, "1 passed, 0 failed, 0 skipped"},
		{"a race outweighs the plain pass before it", []string{pass, race}, "0 passed, 1 failed, 0 skipped"},
		{"and the one after it", []string{race, pass}, "0 passed, 1 failed, 0 skipped"},
		{"a test that ran somewhere was not skipped", []string{skip, pass, skip}, "1 passed, 0 failed, 0 skipped"},
		{"no test at all", nil, "0 passed, 0 failed, 0 skipped"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			counts := newTally()
			for _, text := range tt.runs {
				run := newTally()
				readAll(t, run, text)
				counts.add(run)
			}
			assert.Equal(t, tt.want, counts.String())
			if counts.count(failed) > 0 {
				assert.Equal(t, []string{"--- FAIL windlass/a TestSum\nWARNING: DATA RACE"}, counts.failures())
			}
		})
	}
}

func TestTallyKeepsNoOutputOfWhatPassed(t *testing.T) {
	counts := newTally()
	readAll(t, counts, `{"Action":"output","Package":"windlass/a","Test":"TestFine","Output":"chatter\n"}
{"Action":"pass","Package":"windlass/a","Test":"TestFine"}
{"Action":"output","Package":"windlass/a","Output":"PASS\n"}
{"Action":"pass","Package":"windlass/a"}
`)
	assert.Empty(t, counts.output)
}
