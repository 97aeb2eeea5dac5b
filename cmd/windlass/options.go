package main

import (
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"time"

	"windlass/internal/store"
)

// options are what the command line asks for.
type options struct {
	db    string        // the gym's file
	demo  bool          // make the demo gym there when there is no file
	wall  bool          // be the wall of the desk that has the file open
	tour  string        // folder for the tour's pictures
	light bool          // every window in the light look, whatever the gym has chosen
	size  string        // of a wall that is a plain window, see checkSize
	pace  pace          // a clock that runs faster, for the tour
	late  time.Duration // how long to measure the clock's lateness; 0 is not
}

func parseOptions(args []string, out io.Writer) (options, error) {
	var o options
	var paced string
	flags := flag.NewFlagSet("windlass", flag.ContinueOnError)
	flags.SetOutput(out)
	flags.StringVar(&o.db, "db", "", "the gym's `file`; without it, the one in your own data folder")
	flags.BoolVar(&o.demo, "demo", false, "open the demo gym, and make it first when the file does not exist")
	flags.BoolVar(&o.wall, "wall", false, "show the wall of the class that runs at the desk")
	flags.StringVar(&o.tour, "tour", "", "walk through every room of the demo gym and keep pictures in a `folder`")
	flags.BoolVar(&o.light, "light", false, "show every window, and take the tour, in the light look")
	flags.StringVar(&o.size, "size", "", "show the wall as a window of a size, `WxH` or WxH@INCHES, for pictures")
	flags.DurationVar(&o.late, "lateness", 0, "run a class of the demo gym for so long, bring a large sheet in meanwhile, and report how late the seconds come")
	flags.StringVar(&paced, "pace", "", "run the clock of the tour: `start,real,speed`")
	if err := flags.Parse(args); err != nil {
		return o, err
	}
	if flags.NArg() > 0 {
		return o, fmt.Errorf("open windlass: %q is not an option; the file goes behind -db", flags.Arg(0))
	}
	var err error
	if o.pace, err = parsePace(paced); err != nil {
		return o, err
	}
	if err := checkSize(o.size); err != nil {
		return o, err
	}
	return o.complete()
}

// complete fills in where the file lies.
func (o options) complete() (options, error) {
	switch {
	case o.db != "":
	case o.late > 0:
		o.db = filepath.Join(os.TempDir(), "windlass-lateness.windlass")
	case o.tour != "":
		o.db = filepath.Join(o.tour, "tour.windlass")
	case o.demo:
		o.db = filepath.Join(os.TempDir(), "windlass-demo.windlass")
	default:
		path, err := store.DefaultPath()
		if err != nil {
			return o, err
		}
		o.db = path
	}
	return o, nil
}

func exists(path string) bool {
	_, err := os.Stat(path)
	return !errors.Is(err, os.ErrNotExist)
}
