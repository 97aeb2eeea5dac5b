package main

import (
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// Bad input: each names the input, the fault and the mend, exits 1 and writes
// nothing.
func TestBadInput(t *testing.T) {
	db := gymFile(t)
	gaps := file(t, "gaps.csv", "at,until,percent,reps,zone\n00:00,01:00,40,5,light\n02:00,05:00,102,day,top\n")
	overlap := file(t, "overlap.csv", "at,until,percent,reps,zone\n00:00,02:00,40,5,light\n01:00,05:00,102,day,top\n")
	falling := file(t, "falling.csv", "at,until,percent,reps,zone\n00:00,02:00,80,5,light\n02:00,05:00,60,day,top\n")
	picture := file(t, "picture.csv", "\x89PNG\r\n\x1a\n\x00\x00\x00\rIHDR")
	empty := file(t, "empty.csv", "")
	nobody := file(t, "nobody.csv", "Name,Back squat 1RM\n")
	notOurs := file(t, "other.windlass", "this is no gym")
	nowhere := filepath.Join(t.TempDir(), "nowhere.windlass")
	tests := []struct {
		args string
		want []string
	}{
		{"demo", []string{"gym.windlass", "exists already", "another name"}},
		{"demo -today 26.11.2026", []string{`"26.11.2026"`, "not a day", "2026-03-09"}},
		{"-db " + nowhere + " athletes", []string{"nowhere.windlass", "no such file", "-db"}},
		{"-db " + nowhere + " import roster " + gaps, []string{"nowhere.windlass", "no such file", "-db"}},
		{"-db " + notOurs + " athletes", []string{"other.windlass", "not a gym's file", "restore a backup"}},
		{"import roster missing.csv", []string{`"missing.csv"`, "no such file", "check the name"}},
		{"import roster " + t.TempDir(), []string{"folder", "name a file"}},
		{"import roster " + picture, []string{"picture.csv", "not a CSV or XLSX table"}},
		{"import roster " + empty, []string{"empty.csv"}},
		{"import roster " + nobody, []string{"nobody.csv"}},
		{"import roster -unit stone " + gaps, []string{`"stone"`, "kg or lb"}},
		{"import roster -date-order soon " + gaps, []string{`"soon"`, "day-first"}},
		{"import bouts " + gaps, []string{"gaps.csv", "column"}},
		{"export -xlsx " + gaps, []string{"gaps.csv", "exists", "another name"}},
		{"athletes -track Juggling", []string{`"Juggling"`, "nothing has that name"}},
		{"athletes -status asleep", []string{`"asleep"`, "active, paused or archived"}},
		{"record Bram_Ostling", []string{`"Bram Ostling"`, "nearest: Bram Oostling"}},
		{"repmax -from 140kg", []string{`"140kg"`, "5x142.5"}},
		{"repmax -from 21x140kg", []string{`"21"`, "1 to 20"}},
		{"repmax -from 5x140kg -to 0", []string{`"0"`, "1 to 20"}},
		{"repmax -from 5x140kg -to 12", []string{"12 reps", "1 to 10"}},
		{"repmax -from 5x140kg -curve bendy", []string{`"bendy"`, "no such curve", "epley"}},
		{"plates -target heavy", []string{`"heavy"`, "not a mass", "102.5 kg"}},
		{"plates -target -5kg", []string{`"-5kg"`, "not a mass"}},
		{"plates -target 15kg", []string{"15 kg", "lighter than the bar", "lighter bar"}},
		{"plates -target 1001kg", []string{`"1001kg"`, "1000 kg"}},
		{"plates -target 100kg -bar stick", []string{`"stick"`, "not a mass"}},
		{"plates -target 100kg -pairs 25kg", []string{`"25kg"`, "25kg*4"}},
		{"plates -target 100kg -pairs 25kg*0", []string{"no pair of plates", "add at least one"}},
		{"plates -target 100kg -pairs=", []string{`read pairs ""`, "25kg*4"}},
		{"plates -target 100kg -round sideways", []string{`"sideways"`, "nearest, down or up"}},
		{"plates -target 100kg -stock gym -bar 17kg", []string{`"17kg"`, "no such bar", "20 kg bar"}},
		{"sequence -targets 60kg,10kg", []string{"set 2", "lighter than the bar"}},
		{"sequence -targets 60kg,", []string{`""`, "not a mass"}},
		{"climb -record 0kg", []string{`"0kg"`, "over 0"}},
		{"climb -record 100kg -reps 0", []string{"0 reps", "1 to 20"}},
		{"climb -record 100kg -reps 21", []string{"21 reps", "1 to 20"}},
		{"climb -record 100kg -climb endless", []string{`"endless"`, "20 minutes"}},
		{"climb -record 100kg -calls jump", []string{`"jump"`, "not a call", "settle"}},
		{"climb -record 100kg -calls easy", []string{`"easy"`, "a record leads the way", "settle"}},
		{"climb -record 100kg -unit stone", []string{`"stone"`, "kg or lb"}},
		{"climb -record 100kg -template missing.csv", []string{`"missing.csv"`, "check the name"}},
		{"climb -record 100kg -template " + gaps, []string{"gaps.csv", "rung 2", "01:00"}},
		{"climb -record 100kg -template " + overlap, []string{"overlap.csv", "rung 2", "02:00"}},
		{"climb -record 100kg -template " + falling, []string{"falling.csv", "rung 2"}},
		{"climb -athlete Bram_Oostling -lift juggling", []string{`"juggling"`, "nothing has that name"}},
		{"climb -athlete Bram_Oostling -lift dead_hang", []string{`"Dead hang"`, "not in load", "another lift"}},
		{"climb -athlete Alasdair_Pennick -lift snatch", []string{`"snatch"`, "nothing to start from", "-record"}},
		{"climb -athlete Bram_Oostling -lift squat -reps 0", []string{"0 reps", "1 to 20"}},
		{"arrange -track Powerlifting -days someday", []string{`"someday"`, "mon"}},
		{"arrange -track Powerlifting -want 8", []string{"8 training days", "1 to 7"}},
		{"arrange -athlete Hana_Okazumi", []string{`"Hana Okazumi"`, "no track", "-track"}},
		{"check -cycle Winter", []string{`"Winter"`, "there is none", "Harbour cycle"}},
		{"tier -athlete Bram_Oostling -movement juggling", []string{`"juggling"`, "nothing has that name"}},
		{"tier -athlete Bram_Oostling -movement burpee", []string{`"Burpee"`, "no loads", "catalogue"}},
		{"tier -athlete Bram_Oostling -on tomorrow", []string{`"tomorrow"`, "2026-03-09"}},
		{"tier -athlete Bram_Oostling -reps -1", []string{"-1 reps", "1 to 10000"}},
		{"hold -athlete Bram_Oostling -loads 16kg,none", []string{`"none"`, "not a mass"}},
		{"hold -athlete Bram_Oostling -loads 0kg", []string{`"0kg"`, "nothing"}},
		{"backup -out " + gaps, []string{"gaps.csv", "exists already", "another name"}},
		{"restore missing.windlass", []string{`"missing.windlass"`, "no such file"}},
		{"verify missing.windlass", []string{`"missing.windlass"`, "no such file", "check the name"}},
		{"verify -", []string{"standard input", "it is empty"}},
		{"restore " + notOurs, []string{"other.windlass", "not a gym's file"}},
		{"verify " + notOurs, []string{"other.windlass", "not a gym's file"}},
	}
	before := state(t, filepath.Dir(db))
	for _, tt := range tests {
		args := strings.Fields(tt.args)
		for i := range args {
			if !strings.Contains(args[i], string(filepath.Separator)) {
				args[i] = strings.ReplaceAll(args[i], "_", " ")
			}
		}
		if args[0] != "-db" {
			args = append([]string{"-db", db}, args...)
		}
		a := ask(t, "", args...)
		assert.Equal(t, refused, a.status, tt.args)
		assert.Empty(t, a.out, tt.args)
		assert.NotContains(t, a.err, ".part", "%s: a scratch name says nothing to anybody", tt.args)
		oneLine(t, a, tt.args, tt.want)
	}
	assert.Equal(t, before, state(t, filepath.Dir(db)))
	assert.NoFileExists(t, nowhere)
	assert.NoFileExists(t, nowhere+".desk")
}
