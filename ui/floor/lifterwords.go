package floor

import (
	"strings"

	"windlass/internal/clock"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/plates"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// changeWords say what to do at the bar since the lifter before: "−1.25 +5 +2.5".
func changeWords(s desk.BoardSet, l desk.BoardLifter) string {
	var words []string
	for _, d := range s.Off {
		words = append(words, "−"+desk.Plates([]plates.Disc{d}, l.Unit))
	}
	for _, d := range s.On {
		words = append(words, "+"+desk.Plates([]plates.Disc{d}, l.Unit))
	}
	if s.Blocks {
		words = append(words, "blocks")
	}
	if len(words) == 0 && l.Bar != "" {
		return "bar stays"
	}
	return strings.Join(words, " ")
}

// others lists, lightest first, the loads beside the likely one that an open
// window may bring.
func others(l desk.BoardLifter, s desk.BoardSet, between string) string {
	var words []string
	for i := len(s.Options) - 1; i > 0; i-- {
		words = append(words, s.Options[i].Load.Digits(l.Unit))
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
