// Command windlass is the console of a gym's head strength coach: a window at
// the desk and, as a process of its own, one on the wall.
//
// It wires what the packages offer: where the file lies, the real clock, a
// single desk for each file, and what is left behind after a crash.
package main

import (
	"errors"
	"flag"
	"fmt"
	"os"
)

// gaveUp is the code with which the program ends after it said why on the terminal.
const gaveUp = 1

func main() {
	o, err := parseOptions(os.Args[1:], os.Stderr)
	if errors.Is(err, flag.ErrHelp) {
		return
	}
	if err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(2)
	}
	if err := run(o); err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(gaveUp)
	}
}

func run(o options) error {
	keepCrash(o.db)
	switch {
	case o.wall:
		return runWall(o)
	case o.late > 0:
		return runLateness(o)
	case o.tour != "":
		return runTour(o)
	}
	return runDesk(o)
}
