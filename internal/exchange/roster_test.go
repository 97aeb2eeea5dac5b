package exchange

import (
	"context"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// The example of the README: a mark of the encoding, semicolons, decimal commas, a
// name in two cells, a unit in a heading, accents, blank cells.
func TestRosterAsCoachesHaveThem(t *testing.T) {
	sheet := utf8Mark + "Last name;First name;Back Squat 1RM;bench press 5 rm (lb);Joined;Standard\r\n" +
		"Ångström;Émilie;102,5;185;2025-11-03;W\r\n" +
		"O'Daly;Seán;;225,5;;m\r\n" +
		"Ash;Ann;142,5 kg;;;\r\n"
	book := smallGym()
	p := roster(t, book, options(), sheet)
	assert.Equal(t, [5]int{3, 2, 1, 0, 0}, counts(p))
	got := after(book, p)

	emilie := find(t, got, "Émilie Ångström")
	assert.Equal(t, gym.StandardW, emilie.Standard)
	assert.Equal(t, day.Of(2025, 11, 3), emilie.Joined)
	load, unit := best(got, emilie.ID, "back-squat", 1)
	assert.Equal(t, "102.5 kg", load.In(unit))
	load, unit = best(got, emilie.ID, "bench-press", 5)
	assert.Equal(t, lb(185), load, "185 lb stays 185 lb, exactly")
	assert.Equal(t, "185 lb", load.In(unit))

	sean := find(t, got, "Seán O'Daly")
	load, _ = best(got, sean.ID, "back-squat", 1)
	assert.Zero(t, load, "a blank cell is unknown, never zero")
	load, unit = best(got, sean.ID, "bench-press", 5)
	assert.Equal(t, "225.5 lb", load.In(unit))
	assert.Equal(t, day.None, sean.Joined)

	ann := find(t, got, "Ann Ash")
	assert.Equal(t, gym.ID("ann"), ann.ID, "she was known")
	assert.Equal(t, gym.StandardM, ann.Standard, "a blank cell leaves what is known")
	for _, c := range p.Changes {
		if r, ok := c.(gym.AddResult); ok {
			assert.Equal(t, gym.Reported, r.Result.Source)
			assert.Equal(t, today, r.Result.On)
			assert.NoError(t, r.Result.Valid())
		}
	}
}

func TestHeadingsOfRepMaxes(t *testing.T) {
	for _, c := range []struct {
		heading string
		lift    gym.LiftKey
		reps    int
		unit    mass.Unit // of a cell that says 100
	}{
		{"Back Squat 1RM", "back-squat", 1, mass.KG},
		{"back squat 1 rm (lb)", "back-squat", 1, mass.LB},
		{"BS 1RM", "back-squat", 1, mass.KG},
		{"bs5rm", "back-squat", 5, mass.KG},
		{"3RM Bench Press [LBS]", "bench-press", 3, mass.LB},
		{"Bench_press_5_rep_max_kg", "bench-press", 5, mass.KG},
		{"  BACK-SQUAT  RM3 ", "back-squat", 3, mass.KG},
		{"C&J 1RM", "clean-and-jerk", 1, mass.KG},
		{"clean + jerk", "clean-and-jerk", 1, mass.KG}, // no reps: one
		{"Squat", "back-squat", 1, mass.KG},
		{"Squat max", "back-squat", 1, mass.KG},
		{"Squat PR (pounds)", "back-squat", 1, mass.LB},
		{"Max log 1RM", "max-log", 1, mass.KG}, // a lift whose own name has such a word
		{"Bench x 5", "bench-press", 5, mass.KG},
	} {
		t.Run(c.heading, func(t *testing.T) {
			p := roster(t, smallGym(), options(), "Name;"+c.heading+"\nCleo Cedar;100\n")
			require.Empty(t, p.Rejected)
			require.Empty(t, p.Ignored)
			got := after(smallGym(), p)
			load, unit := best(got, find(t, got, "Cleo Cedar").ID, c.lift, c.reps)
			assert.Equal(t, 100*c.unit.One(), load)
			assert.Equal(t, c.unit, unit)
		})
	}
}

func TestUnitsOfCells(t *testing.T) {
	read := func(o Options, heading, cell, rest string) string {
		p := roster(t, smallGym(), o, "Name;"+heading+";Unit\nCleo Cedar;"+cell+";"+rest+"\n")
		require.Empty(t, p.Rejected)
		got := after(smallGym(), p)
		load, unit := best(got, find(t, got, "Cleo Cedar").ID, "back-squat", 1)
		return load.In(unit)
	}
	inPounds := options()
	inPounds.Unit = mass.LB
	assert.Equal(t, "100 kg", read(options(), "Squat", "100", ""), "the gym's")
	assert.Equal(t, "100 lb", read(inPounds, "Squat", "100", ""), "the sheet's")
	assert.Equal(t, "100 lb", read(options(), "Squat", "100", "lb"), "the row's goes before")
	assert.Equal(t, "100 kg", read(inPounds, "Squat (kg)", "100", "lb"), "the heading's goes before")
	assert.Equal(t, "100 lb", read(options(), "Squat (kg)", "100 lbs", ""), "the cell's goes before all")
	assert.Equal(t, "225 lb", read(options(), "Squat", "1x225lb", ""), "reps and load in one cell")
}

func TestRosterFields(t *testing.T) {
	book := smallGym()
	p := roster(t, book, options(), "Athlete,Sex,Status,Track,Training days,Days per week,Nickname,On the wall,Units,Phone,Notes\n"+
		"ann ash,female,paused,strongman,Mon/Wed/Fri,3,Annie,initials,lb,555,likes mornings\n")
	assert.Equal(t, [5]int{1, 0, 1, 0, 0}, counts(p))
	assert.Equal(t, []string{"Phone"}, p.Ignored)
	ann := athlete("ann", "Ann Ash")
	ann.Standard, ann.Status, ann.Want, ann.Display, ann.Show, ann.Unit = gym.StandardW, gym.Paused, 3, "Annie", gym.WallInitials, mass.LB
	ann.Free, ann.Notes = day.WeekdaysOf(day.Monday, day.Wednesday, day.Friday), "likes mornings"
	move := gym.TrackMove{ID: "00000000-0000-7000-8000-000000000001", Athlete: "ann", Track: "t2", From: today, Made: now}
	assert.Equal(t, []gym.Change{gym.PutAthlete{Athlete: ann}, gym.PutMove{Move: move}}, p.Changes)
}

// Reading the same sheet again changes nothing.
func TestRosterTwiceIsTheSame(t *testing.T) {
	sheet := "Name,Track,Squat 1RM,Bench 5RM,Yoke run\nCleo Cedar,Powerlifting,100,80,31.5\nAnn Ash,,140,,\n"
	book := smallGym()
	first := roster(t, book, options(), sheet)
	assert.Equal(t, [5]int{2, 1, 0, 1, 0}, counts(first))
	second := roster(t, after(book, first), options(), sheet)
	assert.Equal(t, [5]int{2, 0, 0, 2, 0}, counts(second))
	assert.Empty(t, second.Changes)
}

func TestRosterRaisesRecordsOnly(t *testing.T) {
	book := smallGym()
	p := roster(t, book, options(), "Name,Squat 1RM,Squat 3RM\nAnn Ash,135,130\n")
	assert.Equal(t, [5]int{1, 0, 1, 0, 0}, counts(p))
	require.Len(t, p.Changes, 1)
	assert.Equal(t, 3, p.Changes[0].(gym.AddResult).Result.Reps)
	assert.Equal(t, []string{"line 2: Ann Ash: Squat 1RM of 135 kg does not beat the record of 140 kg, which stays"}, p.Notes)
}

// For a time the smaller is better, for a hold the larger.
func TestRosterOfOtherMeasures(t *testing.T) {
	book := smallGym()
	book.Results = append(book.Results,
		gym.Result{Athlete: "ann", Lift: "yoke-run", Reps: 1, Amount: 62},
		gym.Result{Athlete: "ann", Lift: "dead-hang", Reps: 1, Amount: 62})
	p := roster(t, book, options(), "Name,Yoke run,Dead hang\nAnn Ash,1:01.5,61 s\n")
	require.Len(t, p.Changes, 1)
	r := p.Changes[0].(gym.AddResult).Result
	assert.Equal(t, gym.LiftKey("yoke-run"), r.Lift)
	assert.InDelta(t, 61.5, r.Amount, 1e-9)
}

func TestRowsThatAreRejected(t *testing.T) {
	for _, c := range []struct {
		name, sheet string
		line        int
		column      string
		reason      string
	}{
		{"no name", "Name,Squat\n,100\n", 2, "Name", "there is no name; write one"},
		{"a load that is none", "Name,Squat\nCleo,heavy\n", 2, "Squat", "not a mass"},
		{"no load at all", "Name,Squat\nCleo,0\n", 2, "Squat", "leave the cell blank"},
		{"an error of a spreadsheet", "Name,Squat\nCleo,#REF!\n", 2, "Squat", "not a mass"},
		{"a load over belief", "Name,Squat\nCleo,1500\n", 2, "Squat", "over 1000 kg"},
		{"a negative load", "Name,Squat\nCleo,-5\n", 2, "Squat", "not a mass"},
		{"the same athlete twice", "Name,Squat\nAnn Ash,150\n\n ANN  ash ,160\n", 4, "Name", "line 2 is about the same athlete"},
		{"a new athlete twice", "Name,Squat\nCleo,150\ncleo,160\n", 3, "Name", "line 2 is about the same athlete"},
		{"an unknown track", "Name,Track\nAnn Ash,Powerlifing\n", 2, "Track", "nearest: Powerlifting"},
		{"an unknown standard", "Name,Standard\nCleo,X\n", 2, "Standard", `"X" is not the load standard M or W`},
		{"a date in two ways", "Name,Joined\nCleo,03/04/2026\n", 2, "Joined", "can be read in two ways"},
		{"too many days", "Name,Days a week\nCleo,8\n", 2, "Days a week", "from 0 to 7"},
		{"a weekday that is none", "Name,Days\nCleo,Mon Xday\n", 2, "Days", `"Xday"`},
		{"two faults at once", "Name,Squat,Bench\nCleo,heavy,light\n", 2, "Squat", `and column "Bench": read load "light"`},
		{"a rep max of an unknown lift", "Name,Bak squat 1RM\nCleo,100\n", 1, "Bak squat 1RM", "nearest: Back squat"},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := roster(t, smallGym(), options(), c.sheet)
			require.Len(t, p.Rejected, 1)
			assert.Equal(t, c.line, p.Rejected[0].Line)
			assert.Equal(t, c.column, p.Rejected[0].Column)
			assert.Contains(t, p.Rejected[0].Reason, c.reason)
		})
	}
}

func TestTwoAthletesOfOneName(t *testing.T) {
	book := smallGym()
	book.Athletes = append(book.Athletes, athlete("ann2", "ann  ash"))
	p := roster(t, book, options(), "Name,Squat\nAnn Ash,150\n")
	require.Len(t, p.Rejected, 1)
	assert.Contains(t, p.Rejected[0].Reason, `2 athletes are called "Ann Ash"`)
	p = roster(t, book, options(), "ID,Name,Squat\nann2,Ann Ash,150\n")
	require.Empty(t, p.Rejected)
	assert.Equal(t, gym.ID("ann2"), p.Changes[0].(gym.AddResult).Result.Athlete)
}

func TestNamesInASheet(t *testing.T) {
	for _, c := range []struct{ sheet, want string }{
		{"Name;Squat\n\"Cedar, Cleo\";100\n", "Cleo Cedar"}, // turned round
		{"Name;Squat\n  Cleo \u00a0 Cedar ;100\n", "Cleo Cedar"},
		{"Name;Squat\n\"Cleo\nCedar\";100\n", "Cleo Cedar"}, // a line break in quotes
		{"First;Last;Squat\nCleo;;100\n", "Cleo"},
		{"First;Last;Squat\nNa;Cedar;100\n", "Na Cedar"}, // a name, not "not available"
		{"Surname;Forename;Squat\nde la Cruz;María José;100\n", "María José de la Cruz"},
	} {
		got := after(smallGym(), roster(t, smallGym(), options(), c.sheet))
		find(t, got, c.want)
		assert.Len(t, got.Athletes, 3)
	}
}

func TestNotesOnNewAthletes(t *testing.T) {
	p := roster(t, smallGym(), options(), "Name,Squat\nAnne Ash,100\n")
	require.Equal(t, 1, p.Added)
	assert.Equal(t, []string{
		"line 2: Anne Ash has no load standard and starts from W, the lighter; change it in the roster",
		"line 2: Anne Ash is new to the gym; Ann Ash is there already: the same person?",
	}, p.Notes)
	assert.Equal(t, gym.StandardW, p.Changes[0].(gym.PutAthlete).Athlete.Standard)
}

func TestHeadingsUnderATitle(t *testing.T) {
	p := roster(t, smallGym(), options(), "Harbour Gym roster;;\n;;\nSpring 2026;;\nName;Squat;\nCleo Cedar;100;\n;;\n")
	assert.Equal(t, [5]int{1, 1, 0, 0, 0}, counts(p))
}

// A title may look like a heading; the row that says more is the one.
func TestATitleIsNoHeading(t *testing.T) {
	p := roster(t, smallGym(), options(), "Athletes;;\nName;Squat;Track\nCleo Cedar;100;\n")
	assert.Equal(t, [5]int{1, 1, 0, 0, 0}, counts(p))
}

// What a refused row said is forgotten.
func TestARefusedRowLeavesNothing(t *testing.T) {
	p := roster(t, smallGym(), options(), "Name,Squat,Bench\nAnn Ash,150,heavy\nAnn Ash,150,100\n")
	assert.Equal(t, [5]int{2, 0, 1, 0, 1}, counts(p))
	assert.Len(t, p.Changes, 2)
}

func TestOnlyAnIDRenames(t *testing.T) {
	p := roster(t, smallGym(), options(), "ID,Name\nann,Ann Alder\n")
	require.Len(t, p.Changes, 1)
	assert.Equal(t, "Ann Alder", p.Changes[0].(gym.PutAthlete).Athlete.Name)
	p = roster(t, smallGym(), options(), "Name\nann\n") // the ID in the place of the name
	assert.Equal(t, [5]int{1, 0, 0, 1, 0}, counts(p))
}

func TestHintsOfStandardAndDays(t *testing.T) {
	p := roster(t, smallGym(), options(), "Name,Gender,Training days\nCleo,non-binary,3\nDora,man,Tue+Thu\n")
	require.Empty(t, p.Rejected)
	cleo, dora := p.Changes[0].(gym.PutAthlete).Athlete, p.Changes[1].(gym.PutAthlete).Athlete
	assert.Equal(t, gym.StandardW, cleo.Standard)
	assert.Equal(t, 3, cleo.Want)
	assert.Equal(t, gym.StandardM, dora.Standard)
	assert.Equal(t, day.WeekdaysOf(day.Tuesday, day.Thursday), dora.Free)
}

func TestSheetsThatAreNoRoster(t *testing.T) {
	for _, c := range []struct{ sheet, want string }{
		{"Athlete no.,Squat\n7,100\n", "columns found: Athlete no., Squat"},
		{"Date,Athlete,Lift,Reps,Load\n2026-03-09,Ann Ash,Squat,1,100\n", "it looks like a list of results or bouts"},
		{"Name,Squat 1RM,BS 1RM\nCleo,100,100\n", `columns "Squat 1RM" and "BS 1RM" say the same`},
		{"Name,name\nCleo,Cleo\n", `columns "Name" and "name" say the same`},
	} {
		_, err := Roster(t.Context(), open(t, c.sheet), smallGym(), options())
		assert.ErrorContains(t, err, c.want)
	}
	p := roster(t, smallGym(), options(), "Member,Name\nyes,Cleo Cedar\n")
	assert.Equal(t, []string{"Member"}, p.Ignored, "the plainer of two headings has the names")
}

func TestRosterIsCancelled(t *testing.T) {
	f := open(t, "Name\nCleo\n")
	ctx, cancel := context.WithCancel(t.Context())
	cancel()
	p, err := Roster(ctx, f, smallGym(), options())
	require.ErrorIs(t, err, context.Canceled)
	assert.Empty(t, p.Changes)
	_, err = Open(ctx, "sheet.csv", strings.NewReader("Name\nCleo\n"))
	assert.ErrorIs(t, err, context.Canceled)
}

func TestProgressIsTold(t *testing.T) {
	o := options()
	var told []int
	o.Progress = func(rows, total int) { told = append(told, rows, total) }
	roster(t, smallGym(), o, "Name\nCleo\nDora\n")
	assert.Equal(t, []int{0, 2, 2, 2}, told)
}
