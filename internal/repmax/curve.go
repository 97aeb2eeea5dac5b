package repmax

import (
	"errors"
	"fmt"
	"math"
	"strings"

	"windlass/internal/gym"
	"windlass/internal/mass"
)

// Errors that callers tell apart.
var (
	ErrCurve = errors.New("no such curve")
	ErrReps  = errors.New("outside the curve's range")
	ErrLoad  = errors.New("not a load that can be converted")
)

// Curve says what fraction of the 1RM is the load for so many reps.
type Curve struct {
	Key     string // short and lasting: "handbook", "epley"
	Name    string // as a coach reads it
	Formula string // w is the load for r reps
	Source  string
	MaxReps int // the highest rep count for which it is given

	fraction func(reps int) float64 // of the 1RM, asked for 2 to MaxReps
}

// Fraction returns the load for reps as a fraction of the 1RM, over 0 and at
// most 1. One rep is the 1RM itself on every curve, although five of the
// equations say otherwise. The error wraps [ErrReps] outside 1 to MaxReps.
func (c Curve) Fraction(reps int) (float64, error) {
	switch {
	case c.fraction == nil:
		return 0, fmt.Errorf("read curve: %w: it has no numbers; take one from Curves", ErrCurve)
	case reps < 1 || reps > c.MaxReps:
		return 0, fmt.Errorf("read curve %q at %d reps: %w, which is 1 to %d; take another curve or a result nearer to it",
			c.Key, reps, ErrReps, c.MaxReps)
	case reps == 1:
		return 1, nil
	}
	return c.fraction(reps), nil
}

// Ranges. The linear equations and those linear in the percentage are kept to
// ten reps: Reynolds, Gordon and Robergs, J Strength Cond Res 2006;20(3):584-592.
// The others bend with the reps and come with no limit in print, so they end
// where rep maxes end in this program.
const (
	linearReps = 10
	bentReps   = gym.MaxReps
)

// handbook is the table "percent of the 1RM and repetitions allowed" for 1 to 10
// reps, in hundredths.
var handbook = [...]int{1: 100, 2: 95, 3: 93, 4: 90, 5: 87, 6: 85, 7: 83, 8: 80, 9: 77, 10: 75}

// Handbook returns the table of the trade's handbook, the default.
func Handbook() Curve {
	return Curve{
		Key: "handbook", Name: "Handbook table", Formula: "a table",
		Source:   "Sheppard and Triplett in Haff and Triplett (eds), Essentials of Strength Training and Conditioning, 4th ed., 2016, chapter 17",
		MaxReps:  len(handbook) - 1,
		fraction: func(reps int) float64 { return float64(handbook[reps]) / 100 },
	}
}

// Curves returns every curve, the default first.
func Curves() []Curve {
	return []Curve{
		Handbook(),
		{
			"brzycki", "Brzycki", "1RM = w × 36 / (37 − r)",
			"Brzycki, J Phys Educ Recreat Dance 1993;64(1):88-90", linearReps,
			func(reps int) float64 { return (37 - float64(reps)) / 36 },
		},
		{
			"epley", "Epley", "1RM = w × (1 + r / 30)",
			"Epley, Poundage Chart, Boyd Epley Workout, 1985", linearReps,
			func(reps int) float64 { return 1 / (1 + float64(reps)/30) },
		},
		{
			"lander", "Lander", "1RM = 100 w / (101.3 − 2.67123 r)",
			"Lander, NSCA J 1984;6(6):60-61", linearReps,
			func(reps int) float64 { return (101.3 - 2.67123*float64(reps)) / 100 },
		},
		{
			"lombardi", "Lombardi", "1RM = w × r^0.10",
			"Lombardi, Beginning Weight Training, 1989", bentReps,
			func(reps int) float64 { return math.Pow(float64(reps), -0.10) },
		},
		{
			"mayhew", "Mayhew et al.", "1RM = 100 w / (52.2 + 41.9 e^(−0.055 r))",
			"Mayhew, Ball, Arnold and Bowen, J Appl Sport Sci Res 1992;6(4):200-206", bentReps,
			func(reps int) float64 { return (52.2 + 41.9*math.Exp(-0.055*float64(reps))) / 100 },
		},
		{
			"oconner", "O'Conner et al.", "1RM = w × (1 + 0.025 r)",
			"O'Conner, Simmons and O'Shea, Weight Training Today, 1989", linearReps,
			func(reps int) float64 { return 1 / (1 + 0.025*float64(reps)) },
		},
		{
			"wathen", "Wathen", "1RM = 100 w / (48.8 + 53.8 e^(−0.075 r))",
			"Wathen in Baechle (ed), Essentials of Strength Training and Conditioning, 1st ed., 1994", bentReps,
			func(reps int) float64 { return (48.8 + 53.8*math.Exp(-0.075*float64(reps))) / 100 },
		},
	}
}

// otherSpellings are those of two authors' names that are met as often.
var otherSpellings = map[string]string{"wathan": "wathen", "oconnor": "oconner"}

// Named finds a curve by its key or its name, without regard to case, spaces
// and marks. The error wraps [ErrCurve] and lists the keys.
func Named(name string) (Curve, error) {
	var keys []string
	for _, c := range Curves() {
		if wanted := bare(name); wanted == c.Key || wanted == bare(c.Name) || otherSpellings[wanted] == c.Key {
			return c, nil
		}
		keys = append(keys, c.Key)
	}
	return Curve{}, fmt.Errorf("find curve %q: %w; take one of %s", name, ErrCurve, strings.Join(keys, ", "))
}

// bare keeps the letters of a name, in lower case.
func bare(name string) string {
	return strings.Map(func(r rune) rune {
		if r < 'a' || r > 'z' {
			return -1
		}
		return r
	}, strings.ToLower(name))
}

// Convert estimates the rep max for to reps from the one for from reps, not
// rounded to any plate. The same rep count gives the load back. The error wraps
// [ErrReps] when the curve does not reach a rep count, and [ErrLoad] for a load
// or an estimate that is nothing or over [mass.Max].
func Convert(from int, load mass.Mass, to int, c Curve) (mass.Mass, error) {
	known, err := c.Fraction(from)
	if err != nil {
		return 0, err
	}
	wanted, err := c.Fraction(to)
	if err != nil {
		return 0, err
	}
	if load <= 0 || load > mass.Max {
		return 0, fmt.Errorf("convert %dRM of %s: %w: write a load over 0 and at most %s", from, load, ErrLoad, mass.Max)
	}
	if from == to {
		return load, nil
	}
	estimate := load.Scale(wanted / known)
	if estimate == 0 {
		return 0, fmt.Errorf("convert %dRM of %s to a %dRM: %w: it comes out over %s; check the load", from, load, to, ErrLoad, mass.Max)
	}
	return estimate, nil
}
