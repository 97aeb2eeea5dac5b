package main

import (
	"encoding/json"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const boutHead = "Date,Athlete,Movement,Load,Reps,Outcome,Workout,Score\n"

// A sheet that is refused says that nothing was written, and adds nothing.
func TestARefusedImportAddsNothing(t *testing.T) {
	db := gymFile(t)
	sheet := file(t, "bouts.csv", boutHead+
		"2026-11-20,Bram Oostling,Kettlebell swing,16 kg,41,held,,\n"+
		"2026-11-20,Bram Oostling,Kettlebell swing,500 kg,40,held,,\n"+
		"2026-11-20,Bram Oostling,Kettlebell swing,16 kg,42,held,Foo bar 12,\n")
	a := ask(t, "", "-db", db, "import", "bouts", sheet)
	assert.Equal(t, refused, a.status)
	assert.Contains(t, a.out, "3 rows read, nothing written: 1 sound, 2 rejected\n")
	assert.Contains(t, a.out, "line 3, Load: ")
	assert.Contains(t, a.out, "line 4, Workout: ")
	assert.NotContains(t, a.out, "added")

	a = ask(t, "", "-db", db, "-json", "import", "bouts", sheet)
	var got imported
	require.NoError(t, json.Unmarshal([]byte(a.out), &got))
	assert.Equal(t, []int{3, 0, 0, 2}, []int{got.Read, got.Added, got.Updated, len(got.Rejected)})

	got = read[imported](t, "-db", db, "import", "bouts", "-dry-run", sheet)
	assert.Equal(t, 1, got.Added, "a dry run says what would be done with -skip-bad")
}

// A load that no implement has is kept and marked; beside the contract's document
// the mark stands where all but data does.
func TestAStrangeLoadIsMarked(t *testing.T) {
	db := gymFile(t)
	sheet := file(t, "bouts.csv", boutHead+"2026-11-20,Bram Oostling,Kettlebell swing,17 kg,40,held,,\n")
	const mark = "line 2: the gym owns no kettlebell of 17 kg; the bout is kept with that load\n"
	assert.Contains(t, ask(t, "", "-db", db, "import", "bouts", "-dry-run", sheet).out, mark)
	a := ask(t, "", "-db", db, "-json", "import", "bouts", sheet)
	assert.Equal(t, mark, a.err)
	assert.NotContains(t, a.out, "17 kg")
	assert.Equal(t, done, a.status)
	mixed := file(t, "mixed.csv", boutHead+"2026-11-21,Bram Oostling,Kettlebell swing,17 kg,40,held,,\n2026-11-21,Bram Oostling,Kettlebell swing,500 kg,40,held,,\n")
	assert.Contains(t, ask(t, "", "-db", gymFile(t), "-json", "import", "bouts", "-skip-bad", mixed).err, mark, "also beside rows that were left out")
}
