package main

import (
	"context"
	"flag"
	"fmt"
	"strconv"
	"strings"
	"text/tabwriter"

	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/repmax"
)

// repmaxLine is a line of what repmax answers. Loads are not rounded to plates.
type repmaxLine struct {
	Reps     int     `json:"reps"`
	Load     string  `json:"load"`
	Fraction float64 `json:"fraction"` // of the 1RM
}

func repmaxCommand(f *flag.FlagSet) run {
	from := f.String("from", "", "what is known, as `REPSxLOAD`, such as 5x140kg")
	to := f.String("to", "1,3,5", "the rep counts wanted, as a `LIST`")
	curve := f.String("curve", repmax.Handbook().Key, "`NAME` of the curve: "+curveKeys())
	return func(_ context.Context, a *App, _ []string) error {
		if *from == "" {
			return misuse("run windlassctl repmax: say what is known with -from, such as -from 5x140kg")
		}
		lines, err := repmaxes(*from, *to, *curve)
		if err != nil {
			return err
		}
		return a.print(lines, func() {
			a.table(func(w *tabwriter.Writer) {
				for _, l := range lines {
					line(w, strconv.Itoa(l.Reps)+"RM", l.Load, fmt.Sprintf("%.1f %% of the 1RM", 100*l.Fraction))
				}
			})
		})
	}
}

func curveKeys() string {
	var keys []string
	for _, c := range repmax.Curves() {
		keys = append(keys, c.Key)
	}
	return strings.Join(keys, ", ")
}

func repmaxes(from, to, name string) ([]repmaxLine, error) {
	known, err := gym.ParseEffort(strings.TrimSpace(from), mass.KG)
	if err != nil {
		return nil, err
	}
	curve, err := repmax.Named(name)
	if err != nil {
		return nil, err
	}
	wanted, err := repCounts(to)
	if err != nil {
		return nil, err
	}
	var lines []repmaxLine
	for _, reps := range wanted {
		load, err := repmax.Convert(known.Reps, known.Load, reps, curve)
		if err != nil {
			return nil, err
		}
		fraction, err := curve.Fraction(reps)
		if err != nil {
			return nil, err
		}
		lines = append(lines, repmaxLine{reps, load.In(known.Unit), fraction})
	}
	return lines, nil
}

// repCounts reads a list such as "1,3,5".
func repCounts(text string) ([]int, error) {
	var counts []int
	for part := range strings.SplitSeq(text, ",") {
		n, err := strconv.Atoi(strings.TrimSpace(part))
		if err != nil || n < 1 || n > gym.MaxReps {
			return nil, fmt.Errorf("read reps %q: %q is no rep count; write 1 to %d, with commas between", text, strings.TrimSpace(part), gym.MaxReps)
		}
		counts = append(counts, n)
	}
	return counts, nil
}
