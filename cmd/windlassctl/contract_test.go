package main

import (
	"bytes"
	"context"
	"io"
	"math/rand/v2"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The commands and the names of their fields are a contract: scripts rely on them.
// The rows are those of the contract, typed in from it.
func TestFieldsOfTheContract(t *testing.T) {
	db := gymFile(t)
	folder := t.TempDir()
	kept := []string{"athletes", "bouts", "file", "ok", "results"}
	imported := []string{"added", "read", "rejected[]", "rejected[].column", "rejected[].line", "rejected[].reason", "same", "updated"}
	bad := file(t, "bad.csv", "Name;Back squat 1RM\nZed Nova;120\nBad Row;abc\n")
	results := file(t, "results.csv", "Date,Athlete,Lift,Reps,Load,Source\n2026-11-20,Bram Oostling,Deadlift,x,100 kg,tested\n")
	bouts := file(t, "bouts.csv", "Date,Athlete,Movement,Load,Reps,Outcome\n2026-11-20,Bram Oostling,Kettlebell swing,16 kg,40,flew\n")
	tests := []struct {
		args string
		want []string
	}{
		{"demo", []string{"athletes", "bouts", "results"}},
		{"import roster -dry-run " + bad, imported},
		{"import results -dry-run " + results, imported},
		{"import bouts -dry-run " + bouts, imported},
		{"export -out " + filepath.Join(folder, "tables"), []string{"files[]"}},
		{"export -xlsx " + filepath.Join(folder, "all.xlsx"), []string{"files[]"}},
		{"catalogue", []string{
			"lifts[]", "lifts[].lift", "lifts[].pattern", "lifts[].region",
			"movements[]", "movements[].implements[]", "movements[].linked_lift",
			"movements[].loads.M.full", "movements[].loads.M.light", "movements[].loads.M.mid",
			"movements[].loads.W.full", "movements[].loads.W.light", "movements[].loads.W.mid",
			"movements[].movement", "movements[].reference_reps",
		}},
		{"athletes", []string{"[]", "[].id", "[].name", "[].standard", "[].status", "[].track"}},
		{"record Bram Oostling", []string{"lifts[]", "lifts[].date", "lifts[].lift", "lifts[].load", "lifts[].reps", "lifts[].source", "name"}},
		{"repmax -from 5x140kg", []string{"[]", "[].fraction", "[].load", "[].reps"}},
		{"plates -target 100kg", []string{"load", "per_side[]", "short"}},
		{"sequence -targets 60kg,100kg", []string{"moves", "steps[]", "steps[].load", "steps[].per_side[]"}},
		{"climb -record 140kg", []string{
			"base", "base_source",
			"rungs[]", "rungs[].at", "rungs[].load", "rungs[].load_percent", "rungs[].per_side[]", "rungs[].percent",
			"rungs[].reps", "rungs[].until", "rungs[].zone",
			"verdict_lines.ceiling", "verdict_lines.heavy", "verdict_lines.record",
		}},
		{"arrange -track Powerlifting -want 3", []string{"days[]", "days[].region", "days[].session", "days[].weekday", "dropped[]", "why"}},
		{"tier -athlete Bram_Oostling", []string{"[]", "[].athlete", "[].hold", "[].load", "[].movement", "[].tier", "[].why"}},
		{"hold -athlete Bram_Oostling -movement kettlebell-swing", []string{"[]", "[].athlete", "[].hold", "[].load", "[].movement"}},
		{"backup -out " + filepath.Join(folder, "copy.windlass"), kept},
		{"restore " + filepath.Join(folder, "copy.windlass"), kept},
		{"verify", kept},
	}
	covered := []string{"check"} // has a test of its own: the demo gym breaks no rule
	for _, tt := range tests {
		t.Run(tt.args, func(t *testing.T) {
			file := db
			if tt.args == "demo" {
				file = filepath.Join(t.TempDir(), "new.windlass")
			}
			args := strings.Fields(tt.args)
			for i := range args {
				args[i] = strings.ReplaceAll(args[i], "_", " ")
			}
			a := ask(t, "", append([]string{"-db", file, "-json"}, args...)...)
			require.Equal(t, done, a.status, a.err)
			assert.Equal(t, tt.want, fields(t, a.out))
		})
		c, _, err := find(strings.Fields(tt.args))
		require.NoError(t, err)
		covered = append(covered, c.name)
	}
	for _, c := range commands() {
		assert.Contains(t, covered, c.name, "every command of the table is pinned")
	}
}

func TestEveryCommandExplainsItself(t *testing.T) {
	overview := do(t, "-h")
	for _, c := range commands() {
		assert.Contains(t, overview, c.name)
		for _, flag := range []string{"-h", "--help"} {
			help := do(t, append(strings.Fields(c.name), flag)...)
			assert.Contains(t, help, "usage: windlassctl [-db FILE] [-json] "+c.name)
		}
	}
	assert.Contains(t, do(t, "climb", "-h"), "-template FILE.csv")
	assert.Contains(t, do(t, "import", "-h"), "import bouts FILE")
	for _, later := range []string{"forecast", "card ", "week ", "calendar "} {
		assert.NotContains(t, overview, "  "+later, "what cannot be done yet is not promised")
	}
}

func TestWrongUse(t *testing.T) {
	db := gymFile(t)
	tests := []struct {
		args string
		want []string // what was asked, what is wrong, what would mend it
	}{
		{"", []string{"no command is named", "-h"}},
		{"clmb", []string{"clmb", "no such command", "nearest: climb"}},
		{"import", []string{"say what the file holds", "import roster"}},
		{"import pictures x.png", []string{"import pictures x.png", "import bouts"}},
		{"import roster", []string{"it wants a file"}},
		{"import roster a.csv b.csv", []string{`"b.csv"`, "no place"}},
		{"verify a b", []string{`"b"`, "no place"}},
		{"athletes Bram", []string{`"Bram"`, "no place"}},
		{"record", []string{"it wants a name"}},
		{"athletes -json", []string{"-json", "before the command"}},
		{"athletes -colour red", []string{"-colour", "windlassctl athletes -h"}},
		{"climb -record 100kg -reps many", []string{`"many"`, "-reps", "windlassctl climb -h"}},
		{"-verbose athletes", []string{"-verbose", "-h"}},
		{"-db= athletes", []string{"-db", "it names no file", "leave -db out"}}, // a script's unset variable
		{"export", []string{"-out DIR", "-xlsx FILE"}},
		{"export -out -", []string{"-xlsx -"}},
		{"repmax", []string{"-from"}},
		{"plates", []string{"-target"}},
		{"plates -target 100kg -stock shop", []string{`"shop"`, "gym"}},
		{"plates -target 100kg -stock gym -pairs 25kg*1", []string{"leave one out"}},
		{"sequence", []string{"-targets"}},
		{"climb", []string{"-record MASS", "-athlete NAME"}},
		{"climb -record 100kg -athlete Bram", []string{"-record MASS"}},
		{"climb -athlete Bram", []string{"-lift go together"}},
		{"climb -record 100kg -climb x -template y", []string{"leave one out"}},
		{"climb -athlete Bram -lift x -bar 15kg", []string{"leave -bar"}},
		{"arrange", []string{"-track T", "-athlete NAME"}},
		{"tier", []string{"-athlete NAME", "-all"}},
		{"tier -all -athlete Bram", []string{"one of them"}},
		{"hold", []string{"windlassctl hold", "-all"}},
		{"backup", []string{"-out FILE"}},
	}
	before := state(t, filepath.Dir(db))
	for _, tt := range tests {
		a := ask(t, "", append([]string{"-db", db}, strings.Fields(tt.args)...)...)
		assert.Equal(t, misused, a.status, tt.args)
		oneLine(t, a, tt.args, tt.want)
	}
	assert.Equal(t, before, state(t, filepath.Dir(db)))
}

// Whoever stops the program hears what became of the gym.
func TestInterrupted(t *testing.T) {
	db, sheet := gymFile(t), file(t, "roster.csv", "Name,Back squat 1RM\nZed Nova,120 kg\n")
	before := state(t, filepath.Dir(db))
	ctx, cancel := context.WithCancel(t.Context())
	cancel()
	for _, args := range []string{"import roster " + sheet, "tier -all", "export -out " + filepath.Join(t.TempDir(), "out")} {
		var errs bytes.Buffer
		app := App{Out: io.Discard, Err: &errs, Now: func() time.Time { return now }, Random: rand.NewChaCha8([32]byte{1})}
		assert.Equal(t, refused, app.Run(ctx, append([]string{"-db", db}, strings.Fields(args)...)), args)
		oneLine(t, answer{refused, "", errs.String()}, args, []string{args, "interrupted", "nothing was changed", "run it again"})
	}
	assert.Equal(t, before, state(t, filepath.Dir(db)))
}

// oneLine holds a complaint to its form.
func oneLine(t *testing.T, a answer, args string, want []string) {
	t.Helper()
	assert.Equal(t, 1, strings.Count(a.err, "\n"), "%s: one line: %q", args, a.err)
	for _, w := range want {
		assert.Contains(t, a.err, w, args)
	}
	if a.status == misused {
		assert.Empty(t, a.out, args)
	}
}

// Flags may stand before, between and after names; after "--" there are none.
func TestFlagsStandAnywhere(t *testing.T) {
	db, sheet := gymFile(t), file(t, "roster.csv", "Name,Back squat 1RM\nZed Nova,120 kg\n")
	want := do(t, "-db", db, "import", "roster", "-dry-run", sheet)
	assert.Equal(t, want, do(t, "-db", db, "import", "roster", sheet, "-dry-run"))
	assert.Contains(t, want, "1 rows read: 1 added")
	assert.Contains(t, do(t, "-db", db, "record", "--", "bram", "oostling"), "Bram Oostling")
	a := ask(t, "", "-db", db, "record", "--", "-h")
	assert.Equal(t, refused, a.status)
	assert.Contains(t, a.err, `"-h"`)
}

func TestCommandsAreInTheOrderOfTheContract(t *testing.T) {
	var names []string
	for _, c := range commands() {
		names = append(names, c.name)
	}
	assert.Equal(t, []string{
		"demo", "import roster", "import results", "import bouts", "export", "catalogue", "athletes", "record", "repmax",
		"plates", "sequence", "climb", "arrange", "check", "tier", "hold", "backup", "restore", "verify",
	}, names)
	assert.Len(t, slices.Compact(slices.Sorted(slices.Values(names))), len(names), "no name twice")
}
