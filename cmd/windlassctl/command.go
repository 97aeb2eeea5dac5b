package main

import (
	"context"
	"flag"
	"fmt"
	"slices"
	"strings"
	"text/tabwriter"

	"windlass/internal/gym"
)

// run does a command. It prints only when it has succeeded, or what it has found
// out before it refuses.
type run func(ctx context.Context, a *App, names []string) error

// command is one line of the table.
type command struct {
	name  string // one word, or two
	args  string // names that stand outside of flags, as help shows them
	about string
	setup func(*flag.FlagSet) run
}

// commands is everything that the program can do, in the order of help.
func commands() []command {
	return []command{
		{"demo", "", "write the demo gym into a new file", demoCommand},
		{"import roster", "FILE", "athletes and their rep maxes, from CSV or XLSX", importRoster},
		{"import results", "FILE", "lift results, from CSV or XLSX", importResults},
		{"import bouts", "FILE", "a conditioning log, from CSV or XLSX", importBouts},
		{"export", "", "everything, as one CSV a table or as one XLSX", exportCommand},
		{"catalogue", "", "lifts and movements that the gym uses", catalogueCommand},
		{"athletes", "", "the roster", athletesCommand},
		{"record", "NAME", "one athlete's card", recordCommand},
		{"repmax", "", "one rep max from another; needs no gym", repmaxCommand},
		{"plates", "", "what to put on a bar; needs no gym", platesCommand},
		{"sequence", "", "stacks for a list of loads, heaviest plates inside, with the fewest plate moves", sequenceCommand},
		{"climb", "", "a timed climb for a record, or for an athlete and a lift", climbCommand},
		{"arrange", "", "an athlete's week", arrangeCommand},
		{"check", "", "what breaks a rule in a cycle's plan", checkCommand},
		{"tier", "", "suggested conditioning loads", tierCommand},
		{"hold", "", "the chance that given loads are held", holdCommand},
		{"backup", "", "copy the gym's file safely", backupCommand},
		{"restore", "FILE", "put a copy back, and keep the file that it replaces", restoreCommand},
		{"verify", "[FILE]", "check a file", verifyCommand},
	}
}

// find returns the command that the arguments begin with, and the rest of them.
func find(args []string) (command, []string, error) {
	if len(args) == 0 {
		return command{}, nil, misuse("run windlassctl: no command is named; windlassctl -h lists them")
	}
	var names []string
	for _, c := range commands() {
		words := strings.Fields(c.name)
		if len(args) >= len(words) && c.name == strings.Join(args[:len(words)], " ") {
			return c, args[len(words):], nil
		}
		names = append(names, c.name)
	}
	asked := args[0]
	if asked == "import" && slices.ContainsFunc(args, isHelp) {
		return command{}, nil, flag.ErrHelp
	}
	if asked == "import" {
		return command{}, nil, misuse("run windlassctl %s: say what the file holds: import roster, import results or import bouts", strings.Join(args, " "))
	}
	mend := "windlassctl -h lists them"
	if near := gym.Nearest(asked, names, 3); len(near) > 0 {
		mend = "nearest: " + strings.Join(near, ", ")
	}
	return command{}, nil, misuse("run windlassctl %s: there is no such command; %s", asked, mend)
}

func isHelp(arg string) bool {
	return slices.Contains([]string{"-h", "--h", "-help", "--help"}, arg)
}

// takes refuses names that the command has no use for, and wants those that it
// needs. The words of a NAME may stand apart.
func (c command) takes(names []string) error {
	switch {
	case c.args == "NAME" && len(names) > 0:
		return nil
	case len(names) == 0 && (c.args == "" || strings.HasPrefix(c.args, "[")):
		return nil
	case len(names) == 0:
		return misuse("run windlassctl %s: it wants a %s", c.name, strings.ToLower(c.args))
	case c.args == "" || len(names) > 1:
		return misuse("run windlassctl %s: there is no place for %q; windlassctl %s -h shows what it takes", c.name, names[len(names)-1], c.name)
	}
	return nil
}

func (a *App) overview(global *flag.FlagSet) {
	a.say("usage: windlassctl [-db FILE] [-json] COMMAND [flags]\n\n")
	a.table(func(w *tabwriter.Writer) {
		for _, c := range commands() {
			fmt.Fprintf(w, "  %s\t%s\n", strings.TrimSpace(c.name+" "+c.args), c.about)
		}
	})
	a.say("\n")
	a.flagList(global)
	a.say("\nwindlassctl COMMAND -h explains a command. A file named - is standard input or output.\n")
	a.say("Training advice is general: screen people first, use spotters and safety arms, stop on pain,\n")
	a.say("and defer to doctors, licensed practice and local rules.\n")
}

func (a *App) explain(c command, own *flag.FlagSet) {
	flags := ""
	own.VisitAll(func(*flag.Flag) { flags = " [flags]" })
	a.say("usage: %s%s\n\n%s.\n", strings.TrimSpace("windlassctl [-db FILE] [-json] "+c.name+" "+c.args), flags, capital(c.about))
	if flags != "" {
		a.say("\n")
		a.flagList(own)
	}
}

func (a *App) flagList(flags *flag.FlagSet) {
	a.table(func(w *tabwriter.Writer) {
		flags.VisitAll(func(f *flag.Flag) {
			kind, about := flag.UnquoteUsage(f)
			fmt.Fprintf(w, "  %s\t%s\n", strings.TrimSpace("-"+f.Name+" "+kind), about)
		})
	})
}
