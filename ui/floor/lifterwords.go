package floor

import (
	"slices"
	"strings"

	"windlass/internal/clock"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// changeWords say what to do at the bar since the lifter before: "−1.25 +5 +2×0.5".
func changeWords(s desk.BoardSet, l desk.BoardLifter) string {
	words := append(grouped(s.Off, l.Unit, "−"), grouped(s.On, l.Unit, "+")...)
	if s.Blocks {
		words = append(words, "on blocks")
	}
	if len(words) == 0 && l.Bar != "" {
		words = []string{"bar stays"}
	}
	if s.Last {
		words = append([]string{"last:"}, words...)
	}
	return strings.Join(words, " ")
}

// stackWords write the plates of a side, equal ones together: "2×25 + 10 + 2.5".
func stackWords(s desk.BoardSet, l desk.BoardLifter) string {
	if len(s.Discs) == 0 {
		return "bar alone"
	}
	return strings.Join(grouped(s.Discs, l.Unit, ""), " + ")
}

// grouped writes discs with a sign, equal neighbours together.
func grouped(discs []plates.Disc, unit mass.Unit, sign string) (words []string) {
	for i := 0; i < len(discs); {
		n := 1
		for i+n < len(discs) && discs[i+n] == discs[i] {
			n++
		}
		word := desk.Plates(discs[i:i+1], unit)
		if n > 1 {
			word = itoa(n) + "×" + word
		}
		words, i = append(words, sign+word), i+n
	}
	return words
}

// eachCall lists the loads that the calls of a finding climb bring, in the order of
// the calls' buttons, equal ones once.
func eachCall(l desk.BoardLifter, s desk.BoardSet) string {
	var words []string
	for _, o := range s.Options {
		words = append(words, o.Load.Digits(l.Unit))
	}
	return strings.Join(slices.Compact(words), " / ")
}

// others lists, lightest first, the loads beside the likely one that an open
// window may bring.
func others(l desk.BoardLifter, s desk.BoardSet, between string) string {
	var words []string
	likely := s.Likely().Digits(l.Unit)
	for i := len(s.Options) - 1; i > 0; i-- {
		if word := s.Options[i].Load.Digits(l.Unit); word != likely && !slices.Contains(words, word) {
			words = append(words, word)
		}
	}
	return strings.Join(words, between)
}

func restWord(l desk.BoardLifter, m clock.Moment) string {
	switch {
	case l.Lift == "":
		return "–"
	case m.Finished || l.Done(m.Rung):
		return "done"
	case l.Path.Finding:
		return "call?" // the next load follows from it
	}
	return "waits"
}

func times(reps int) string {
	if reps < 1 {
		return ""
	}
	return "× " + itoa(reps)
}

func shapeIf(yes bool, s kit.Shape) kit.Shape {
	if yes {
		return s
	}
	return kit.NoShape
}

// callMark is the shape and colour of a call.
func callMark(k gym.CallKind) (kit.Shape, look.Meaning) {
	switch k {
	case "":
		return kit.NoShape, look.Muted
	case gym.SettleCall:
		return kit.Dash, look.Accent
	case gym.MissedCall:
		return kit.Cross, look.Bad
	}
	return kit.Up, look.Good
}
