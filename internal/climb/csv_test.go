package climb_test

import (
	"errors"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/climb"
	"windlass/internal/gym"
)

const nineText = `at,until,percent,reps,zone
00:00,01:00,30,5,light
01:00,02:00,50,3,light
02:00,04:00,60,day,working
04:00,06:00,70,day,working
06:00,08:00,80,2,working
08:00,11:00,90,1,top
11:00,14:00,95,1,top
14:00,17:00,98,1,top
17:00,20:00,102,day,top
`

func TestCSVBothWays(t *testing.T) {
	plan, err := climb.ReadCSV("nine rungs", strings.NewReader(nineText))
	require.NoError(t, err)
	assert.Equal(t, nine(), plan)
	var b strings.Builder
	require.NoError(t, climb.WriteCSV(&b, plan))
	assert.Equal(t, nineText, b.String())
}

func TestReadCSVAsCoachesWriteIt(t *testing.T) {
	want := []gym.Rung{
		{At: 0, Until: 90, Percent: 62.5, Reps: 5, Zone: gym.LightZone},
		{At: 90, Until: 5400, Percent: 105, Reps: 0, Zone: gym.TopZone},
	}
	for name, text := range map[string]string{
		"plain":                     "at,until,percent,reps,zone\n0:00,1:30,62.5,5,light\n1:30,90:00,105,day,top\n",
		"a mark, spaces, capitals":  "\ufeff At , Until,PERCENT, Reps ,Zone\r\n 0:00, 1:30 , 62.5 %,5, Light\r\n\r\n1:30,90:00,105%,Day,TOP",
		"semicolons, decimal comma": "at;until;percent;reps;zone\n00:00;01:30;62,5;5;light\n;;;;\n01:30;90:00;105,0;;top\n",
		"tabs, another order":       "zone\tat\tuntil\treps\tpercent\nlight\t00:00\t01:30\t5\t62,50\ntop\t01:30\t90:00\t\t105\n",
		"whole seconds":             "at,until,percent,reps,zone\n0,90,62.5,05,light\n90,5400,105,day,top\n",
		"quotes":                    "\"at\",until,percent,reps,zone\n\"0:00\",1:30,62.5,5,light\n1:30,90:00,105,\"day\",top\n",
	} {
		plan, err := climb.ReadCSV("own", strings.NewReader(text))
		require.NoError(t, err, name)
		assert.Equal(t, want, plan.Rungs, name)
		assert.InDelta(t, 105, plan.Ceiling, 0, "the ceiling makes room for what was typed: %s", name)
	}
}

func TestReadCSVRefuses(t *testing.T) {
	const head = "at,until,percent,reps,zone\n"
	for _, row := range []struct{ name, text, says string }{
		{"empty", "", "header cannot be read"},
		{"no rungs", head, "no rungs"},
		{"a column short", "at,until,percent,reps\n", `no column "zone"`},
		{"a column too many", "at,until,percent,reps,zone,note\n", "6 columns"},
		{"a column twice", "at,at,until,percent,reps,zone\n", "6 columns"},
		{"a field short", head + "0:00,1:00,50,5\n", "line 2 has 4 fields"},
		{"quote", head + "0:00,1:00,50,5,\"light\n", "line"},
		{"time", head + "0:00,1:60,50,5,light\n", `line 2: not a climb: time "1:60"`},
		{"short seconds", head + "0:00,1:5,50,5,light\n", `time "1:5"`},
		{"negative time", head + "-1:00,1:00,50,5,light\n", `time "-1:00"`},
		{"part of a second", head + "0:00,1:00.5,50,5,light\n", `time "1:00.5"`},
		{"no time", head + ",1:00,50,5,light\n", `time ""`},
		{"percentage", head + "0:00,1:00,1e2,5,light\n", `percentage "1e2"`},
		{"percentage NaN", head + "0:00,1:00,NaN,5,light\n", `percentage "NaN"`},
		{"percentage without end", head + "0:00,1:00,50.,5,light\n", `percentage "50."`},
		{"percentage negative", head + "0:00,1:00,-50,5,light\n", `percentage "-50"`},
		{"reps of none", head + "0:00,1:00,50,0,light\n", `reps "0"`},
		{"reps of many", head + "0:00,1:00,50,21,light\n", "rung 1 asks for 21 reps"},
		{"reps in words", head + "0:00,1:00,50,five,light\n", `reps "five"`},
		{"zone", head + "0:00,1:00,50,5,warm\n", `zone "warm"`},
		{"gap, and a falling percentage", head + "0:00,1:00,50,5,light\n1:01,2:00,40,5,light\n", "rung 2 begins at 01:01 and leaves a gap of 1 s after 01:00; begin it at 01:00. rung 2 falls"},
		{"far over the record", head + "0:00,1:00,150,5,top\n", "over the ceiling of 120 %"},
		{"another kind of file", "%PDF-1.7\n%\xe2\xe3\n", "no UTF-8 text"},
		{"wide characters", "\xff\xfea\x00t\x00,\x00", "no UTF-8 text"},
		{"zero bytes", "a\x00t\x00,\x00", "no UTF-8 text"},
		{"far too long", head + strings.Repeat("\n", 1<<20), "over 1048576 bytes"},
	} {
		_, err := climb.ReadCSV("own", strings.NewReader(row.text))
		require.ErrorIs(t, err, climb.ErrPlan, row.name)
		assert.ErrorContains(t, err, row.says, row.name)
		assert.ErrorContains(t, err, `"own"`, row.name)
	}
}

type broken struct{}

var errBroken = errors.New("disk gone")

func (broken) Read([]byte) (int, error)  { return 0, errBroken }
func (broken) Write([]byte) (int, error) { return 0, errBroken }

func TestCSVPassesOnErrors(t *testing.T) {
	_, err := climb.ReadCSV("own", broken{})
	require.ErrorIs(t, err, errBroken)
	assert.ErrorIs(t, climb.WriteCSV(broken{}, nine()), errBroken)
}

// Whatever is read can be written and read again to the same climb, and the
// second writing is the first to the byte.
func FuzzReadCSV(f *testing.F) {
	f.Add(nineText)
	f.Add("zone;at;until;reps;percent\nlight;0;60;5;62,5\n")
	f.Add("\ufeffat\tuntil\tpercent\treps\tzone\n\"0\"\t1:00\t50 %\tday\ttop")
	f.Fuzz(func(t *testing.T, text string) {
		plan, err := climb.ReadCSV("fuzzed", strings.NewReader(text))
		if err != nil {
			require.ErrorIs(t, err, climb.ErrPlan)
			return
		}
		require.NoError(t, climb.Valid(plan))
		var first, second strings.Builder
		require.NoError(t, climb.WriteCSV(&first, plan))
		again, err := climb.ReadCSV("fuzzed", strings.NewReader(first.String()))
		require.NoError(t, err)
		require.Equal(t, plan, again)
		require.NoError(t, climb.WriteCSV(&second, again))
		require.Equal(t, first.String(), second.String())
	})
}

func TestFuzzSeedsAreThere(t *testing.T) {
	seeds, err := os.ReadDir("testdata/fuzz/FuzzReadCSV")
	require.NoError(t, err)
	assert.NotEmpty(t, seeds)
}
