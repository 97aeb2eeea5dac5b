package gym_test

import (
	"io/fs"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/data"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// The smallest catalogue with every kind of link.
var small = map[string]string{
	"lifts.csv": `key,name,also written,region,pattern,bar,from the floor,measure,reps recorded,related lift,ratio low,ratio high,ratio source,usual 1RM M,usual 1RM W
back-squat,Back squat,BS; squat,lower,squat,barbell,no,load,1;3;5,,,,,130 kg,175 lb
front-squat,"Front squat",,lower,squat,barbell,no,load,1;3,back-squat,0.78,0.85,"a page, quoted",105 kg,
hang,Dead hang,,upper,pull,pull-up-bar,no,hold,1,,,,,,
`,
	"movements.csv": `key,name,region,pattern,measure,implement,pair,linked lift,reference reps,seconds each,M full,M mid,M light,W full,W mid,W light
goblet-squat,Goblet squat,lower,squat,reps,kettlebell,no,front-squat,40,2.5,24 kg,16 kg,35 lb,16 kg,35 lb,8 kg
run,Run,lower,engine,distance,,no,,800,0.3,,,,,,
`,
	"finishers.csv": "key,name,muscle,region,spares\ncurl,Curl,biceps,upper,spares the lower back\n",
	"warmups.csv":   "key,name,pattern,dose\nslow-squat,Slow squat,squat,2 × 10\n",
	"implements.csv": `kind,masses,count
kettlebell,8 kg;35 lb × 4;16 kg;24 kg,
pull-up-bar,,2
`,
}

func folder(texts map[string]string) fs.FS {
	files := fstest.MapFS{}
	for name, text := range texts {
		files[name] = &fstest.MapFile{Data: []byte(text)}
	}
	return files
}

// with returns the small catalogue with one text of a file replaced.
func with(t testing.TB, file, old, text string) map[string]string {
	t.Helper()
	require.Contains(t, small[file], old)
	texts := map[string]string{}
	for name, s := range small {
		texts[name] = s
	}
	texts[file] = strings.Replace(texts[file], old, text, 1)
	return texts
}

func TestReadCatalogue(t *testing.T) {
	c, err := gym.ReadCatalogue(folder(small))
	require.NoError(t, err)
	assert.Equal(t, gym.Lift{
		Key: "back-squat", Name: "Back squat", Aliases: []string{"BS", "squat"}, Region: gym.Lower, Pattern: gym.Squat,
		Bar: "barbell", Measure: gym.ByLoad, Reps: []int{1, 3, 5},
		Reference: map[gym.Standard]mass.Mass{gym.StandardM: 130 * mass.Kilogram, gym.StandardW: 175 * mass.Pound},
	}, c.Lifts[0])
	assert.Equal(t, "a page, quoted", c.Lifts[1].Source)
	assert.InDelta(t, 0.85, c.Lifts[1].RatioHigh, 0)
	assert.Equal(t, gym.TierLoads{Full: 24 * mass.Kilogram, Mid: 16 * mass.Kilogram, Light: 35 * mass.Pound},
		c.Movements[0].Loads[gym.StandardM])
	assert.Nil(t, c.Movements[1].Loads)
	assert.InDelta(t, 0.3, c.Movements[1].Seconds, 0)
	assert.Equal(t, []gym.Finisher{{Key: "curl", Name: "Curl", Muscle: "biceps", Region: gym.Upper, Spares: "spares the lower back"}}, c.Finishers)
	assert.Equal(t, []gym.Drill{{Key: "slow-squat", Name: "Slow squat", Pattern: gym.Squat, Dose: "2 × 10"}}, c.Drills)
	assert.Equal(t, []mass.Mass{8 * mass.Kilogram, 35 * mass.Pound, 16 * mass.Kilogram, 24 * mass.Kilogram}, c.Implements[0].Masses)
	assert.Equal(t, map[mass.Mass]int{35 * mass.Pound: 4}, c.Implements[0].Each, "the others were not counted")
	assert.Equal(t, gym.Implement{Kind: "pull-up-bar", Unit: mass.KG, Total: 2}, c.Implements[1])
}

// What a spreadsheet does to a file on its way must not matter.
func TestReadCatalogueAsSpreadsheetsSaveIt(t *testing.T) {
	want, err := gym.ReadCatalogue(folder(small))
	require.NoError(t, err)
	turned := with(t, "warmups.csv", small["warmups.csv"], "\ufeff Pattern ,NAME,dose,Key\r\n\r\nsquat, Slow squat ,2 × 10,slow-squat\r\n")
	got, err := gym.ReadCatalogue(folder(turned))
	require.NoError(t, err)
	assert.Equal(t, want, got)
}

func TestReadCatalogueNamesFileLineColumnAndMend(t *testing.T) {
	tests := []struct{ file, old, text, want string }{
		{"lifts.csv", "back-squat,Back", "Back Squat,Back", `read lifts.csv, line 2, column "key": "Back Squat" is not a key; write small letters, digits and hyphens, as in back-squat`},
		{"lifts.csv", "Dead hang", "", `read lifts.csv, line 4, column "name": "" has no letter or digit; write a name`},
		{"lifts.csv", "BS; squat", "BS;?", `read lifts.csv, line 2, column "also written": "?" has no letter or digit; take it out`},
		{"lifts.csv", "BS; squat", "BS;front squat", `read lifts.csv, line 3, column "name": "Front squat" could also mean back-squat; keep it with one of the two`},
		{"lifts.csv", `"Front squat",`, `FS,B.S.`, `read lifts.csv, line 3, column "also written": "B.S." could also mean back-squat; keep it with one of the two`},
		{"lifts.csv", "lower,squat", "legs,squat", `read lifts.csv, line 2, column "region": "legs" is not one of lower, upper, trunk, whole`},
		{"lifts.csv", "upper,pull", "upper,yank", `column "pattern": "yank" is not one of squat, hinge,`},
		{"lifts.csv", "barbell,no", "bar bell,no", `read lifts.csv, line 2, column "bar": "bar bell" is not a key`},
		{"lifts.csv", "barbell,no", "barbell,nope", `read lifts.csv, line 2, column "from the floor": "nope" is not yes or no`},
		{"lifts.csv", "hold,1", "grip,1", `read lifts.csv, line 4, column "measure": "grip" is not one of load, reps,`},
		{"lifts.csv", "1;3;5", "1;three", `read lifts.csv, line 2, column "reps recorded": "three" is not a whole number; write one like 5`},
		{"lifts.csv", "1;3;5", "1;5;3", `read lifts.csv, line 2, column "reps recorded": 3 does not come after 5; write them from few to many`},
		{"lifts.csv", "1;3;5", "1;25", `read lifts.csv, line 2, column "reps recorded": 25 reps are not a rep max; write 1 to 20`},
		{"lifts.csv", "1;3;5", ";", `read lifts.csv, line 2, column "reps recorded": it is empty; write the rep counts to record, as in 1;3;5`},
		{"lifts.csv", ",back-squat,", ",squat,", `read lifts.csv, line 3, column "related lift": there is no lift "squat"; write the key of one, or nothing`},
		{"lifts.csv", ",back-squat,", ",front-squat,", `read lifts.csv, line 3, column "related lift": a lift gives no guess of itself; name another`},
		{"lifts.csv", ",back-squat,", ",,", `read lifts.csv, line 3, column "related lift": there is a ratio without it; name the lift or take out the ratio`},
		{"lifts.csv", "0.78", "seven", `read lifts.csv, line 3, column "ratio low": "seven" is not a number; write one like 0.85`},
		{"lifts.csv", "0.78", "NaN", `read lifts.csv, line 3, column "ratio low": NaN is not above 0 and at most 3`},
		{"lifts.csv", "0.78", "0.9", `read lifts.csv, line 3, column "ratio high": 0.85 is not between the low ratio 0.9 and 3`},
		{"lifts.csv", `"a page, quoted"`, "", `read lifts.csv, line 3, column "ratio source": it is empty; write it`},
		{"lifts.csv", "130 kg", "130", `read lifts.csv, line 2, column "usual 1RM M": "130" has no unit; write one like 24 kg`},
		{"lifts.csv", "175 lb", "175 st", `read lifts.csv, line 2, column "usual 1RM W": read load "175 st": not a mass: the unit is not kg or lb; write one like 102.5 kg or 225 lb`},
		{"lifts.csv", "130 kg", "0 kg", `read lifts.csv, line 2, column "usual 1RM M": 0 kg is not between nothing and 1000 kg`},
		{"lifts.csv", `"a page, quoted"`, "a page, quoted", `read lifts.csv, line 3: it has 16 cells and the first line has 15; a cell with a comma wants quotes around it`},
		{"lifts.csv", `"a page, quoted"`, `"a "page" quoted"`, `read lifts.csv, line 3, character`},
		{"lifts.csv", "hang,", "back-squat,", `read lifts.csv, line 4, column "key": "back-squat" stands on line 2 already; write another`},
		{"lifts.csv", "Dead hang", "back SQUAT", `read lifts.csv, line 4, column "name": "back SQUAT" stands on line 2 already; write another`},
		{"lifts.csv", "region", "part", `read lifts.csv, line 1, column "part": it is none of key, name, also written, region,`},
		{"lifts.csv", "region,pattern", "region,region", `read lifts.csv, line 1, column "region": it stands there twice; take one out`},
		{"movements.csv", "front-squat", "goblet", `read movements.csv, line 2, column "linked lift": there is no lift "goblet"; write the key of one, or nothing`},
		{"movements.csv", "kettlebell,no,", "anvil,no,", `read movements.csv, line 2, column "implement": there is no implement "anvil"; add it to implements.csv, or write nothing`},
		{"movements.csv", "kettlebell,no,", ",no,", `read movements.csv, line 2, column "implement": there are loads without it; name the kind or take out the loads`},
		{"movements.csv", "kettlebell,no,", "kettlebell,,", `read movements.csv, line 2, column "pair": "" is not yes or no`},
		{"movements.csv", "distance,,no,", "distance,,yes,", `read movements.csv, line 3, column "pair": there is a pair of nothing; name the kind of implement or take the pair out`},
		{"movements.csv", "40,2.5", ",2.5", `read movements.csv, line 2, column "reference reps": it is empty; write how many a usual bout has`},
		{"movements.csv", "800,0.3", "-1,0.3", `read movements.csv, line 3, column "reference reps": -1 is not between 0 and 50000`},
		{"movements.csv", "800,0.3", "800,", `read movements.csv, line 3, column "seconds each": 0 is not above 0 and at most 600 seconds`},
		{"movements.csv", "800,0.3", "800,Inf", `read movements.csv, line 3, column "seconds each": +Inf is not above 0`},
		{"movements.csv", "24 kg,16 kg,35 lb", "20 kg,16 kg,35 lb", `read movements.csv, line 2, column "M full": implements.csv has no kettlebell of 20 kg; the nearest there: 16 kg and 24 kg`},
		{"movements.csv", "24 kg,16 kg,35 lb", "32 kg,16 kg,35 lb", `the nearest there: 24 kg`},
		{"movements.csv", "35 lb,16 kg,35 lb,8 kg", "4 kg,16 kg,35 lb,8 kg", `column "M light": implements.csv has no kettlebell of 4 kg; the nearest there: 8 kg`},
		{"movements.csv", "24 kg,16 kg,35 lb", "16 kg,16 kg,35 lb", `read movements.csv, line 2, column "M full": 16 kg is not over the mid load 16 kg`},
		{"movements.csv", "24 kg,16 kg,35 lb", "24 kg,8 kg,35 lb", `read movements.csv, line 2, column "M mid": 8 kg is not over the light load 15.88 kg`},
		{"movements.csv", "24 kg,16 kg,35 lb", "24 kg,,", `read movements.csv, line 2, column "M light": 0 kg is no load; write all three tiers or none`},
		{"movements.csv", "800,0.3,,", "800,0.3,5 kg,", `read movements.csv, line 3, column "implement": there are loads without it`},
		{"finishers.csv", "biceps", " ", `read finishers.csv, line 2, column "muscle": it is empty; write it`},
		{"finishers.csv", "spares the lower back", "", `read finishers.csv, line 2, column "spares": it is empty; write it`},
		{"warmups.csv", "Slow squat", "\"Slow\nsquat\"", `read warmups.csv, line 2, column "name": "Slow\nsquat" has a line break or another sign that nobody sees; take it out`},
		{"warmups.csv", "2 × 10", "", `read warmups.csv, line 2, column "dose": it is empty; write it`},
		{"warmups.csv", ",dose", ",amount", `read warmups.csv, line 1, column "amount": it is none of key, name, pattern, dose`},
		{"warmups.csv", ",dose\nslow-squat,Slow squat,squat,2 × 10", "\nslow-squat,Slow squat,squat", `read warmups.csv, line 1, column "dose": it is missing; add it`},
		{"warmups.csv", "2 × 10", "2 \xd7 10", `read warmups.csv: its letters are not in UTF-8; save it as CSV in UTF-8`},
		{"warmups.csv", small["warmups.csv"], "", `read warmups.csv: it is empty; its first line names the columns: key,name,pattern,dose`},
		{"implements.csv", "8 kg;35 lb × 4", "35 lb;8 kg", `read implements.csv, line 2, column "masses": 17.64 lb does not come after 35 lb; write them from light to heavy`},
		{"implements.csv", "8 kg;35 lb", "0 kg;35 lb", `read implements.csv, line 2, column "masses": 0 kg is not between nothing and 1000 kg`},
		{"implements.csv", "35 lb × 4", "35 lb × 0", `read implements.csv, line 2, column "masses": read masses: "0" is no count of 35 lb; write 1 to 999 behind the ×`},
		{"implements.csv", "35 lb × 4", "35 × 4", `read implements.csv, line 2, column "masses": "35 × 4" has no unit; write one like 24 kg`},
		{"implements.csv", "24 kg,\n", "24 kg,9\n", `read implements.csv, line 2, column "count": 9 in all stands beside a count of each mass; keep one of the two`},
		{"implements.csv", "pull-up-bar,,2", "pull-up-bar,,-2", `read implements.csv, line 3, column "count": -2 is not between 0, for not counted, and 999`},
		{"implements.csv", "pull-up-bar", "kettlebell", `read implements.csv, line 3, column "kind": "kettlebell" stands on line 2 already; write another`},
	}
	for _, tt := range tests {
		_, err := gym.ReadCatalogue(folder(with(t, tt.file, tt.old, tt.text)))
		assert.ErrorContains(t, err, tt.want)
	}
}

func TestReadCatalogueSaysWhichFileIsMissing(t *testing.T) {
	for name := range small {
		texts := with(t, name, "", "")
		delete(texts, name)
		_, err := gym.ReadCatalogue(folder(texts))
		assert.ErrorIs(t, err, fs.ErrNotExist)
		assert.ErrorContains(t, err, "read "+name+": ")
	}
}

func TestEntryRefusedByAFormSaysTheSameAsAFile(t *testing.T) {
	c, err := gym.ReadCatalogue(folder(small))
	require.NoError(t, err)
	l := c.Lifts[0]
	l.Region = ""
	assert.EqualError(t, l.Valid(), `keep lift "Back squat": region: "" is not one of lower, upper, trunk, whole`)
	l = c.Lifts[0]
	l.Reference = map[gym.Standard]mass.Mass{"X": mass.Kilogram}
	assert.EqualError(t, l.Valid(), `keep lift "Back squat": usual 1RM: "X" is not the load standard M or W`)
	m := c.Movements[0]
	m.Loads = map[gym.Standard]gym.TierLoads{gym.StandardM: {Full: mass.Max + 1, Mid: 2, Light: 1}}
	assert.ErrorContains(t, m.Valid(), `keep movement "Goblet squat": M full: `)
	assert.ErrorContains(t, gym.Finisher{}.Valid(), "keep finisher")
	assert.ErrorContains(t, gym.Drill{}.Valid(), "keep drill")
	assert.ErrorContains(t, gym.Implement{Kind: "box"}.Valid(), `keep implement "box": masses: the unit "" is not kg or lb`)
}

func TestLiftRecordsAndTierLoads(t *testing.T) {
	l := gym.Lift{Reps: []int{1, 3, 5}}
	assert.True(t, l.Records(3))
	assert.False(t, l.Records(2))
	loads := gym.TierLoads{Full: 3, Mid: 2, Light: 1}
	assert.Equal(t, []mass.Mass{3, 2, 1, 0},
		[]mass.Mass{loads.Of(gym.Full), loads.Of(gym.Mid), loads.Of(gym.Light), loads.Of(gym.Below)})
}

func BenchmarkReadCatalogue(b *testing.B) {
	files := data.Files()
	for b.Loop() {
		if _, err := gym.ReadCatalogue(files); err != nil {
			b.Fatal(err)
		}
	}
}
