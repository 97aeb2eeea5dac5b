package desk

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"windlass/internal/gym"
)

// KeepSettings keeps the coach's choices for the whole gym.
func (d *Desk) KeepSettings(s gym.Settings) error {
	if err := s.Valid(); err != nil {
		return err
	}
	return d.do("change settings", gym.PutSettings{Settings: s})
}

// ChangeSettings keeps the settings as change leaves them. An error of change
// keeps nothing.
func (d *Desk) ChangeSettings(change func(*gym.Settings) error) error {
	s := d.book.Settings
	s.DayReps = slices.Clone(s.DayReps)
	if err := change(&s); err != nil {
		return err
	}
	return d.KeepSettings(s)
}

// ConfidenceText writes the confidence of suggestions as a coach reads it: "75 %".
func ConfidenceText(s gym.Settings) string { return number(100*s.Confidence) + " %" }

// ReadConfidence reads a percentage such as "75" or "75 %".
func ReadConfidence(text string) (float64, error) {
	percent, err := readNumber("confidence", strings.TrimSuffix(strings.TrimSpace(text), "%"), "75 %")
	return percent / 100, err
}

// ViewerText writes how far from the wall its farthest reader is: "8 m".
func ViewerText(s gym.Settings) string { return number(s.Viewer) + " m" }

// ReadViewer reads metres, such as "8", "8.5 m" or "8,5".
func ReadViewer(text string) (float64, error) {
	return readNumber("distance", strings.TrimSuffix(strings.ToLower(strings.TrimSpace(text)), "m"), "8 m")
}

// DayRepsText writes the rep counts of main days as "5, 3, 1".
func DayRepsText(s gym.Settings) string { return repsText(s.DayReps) }

// ReadDayReps reads rep counts with commas, semicolons or spaces between them.
// Whether they make sense is for [gym.Settings.Valid] to say.
func ReadDayReps(text string) ([]int, error) { return readReps(text, "5, 3, 1") }

// LiftRepsText writes the rep counts that a lift records as "1, 3, 5".
func LiftRepsText(l gym.Lift) string { return repsText(l.Reps) }

// ReadLiftReps reads rep counts as [ReadDayReps] does and puts them in the order
// in which a lift has them, each once.
func ReadLiftReps(text string) ([]int, error) {
	reps, err := readReps(text, "1, 3, 5")
	slices.Sort(reps)
	return slices.Compact(reps), err
}

// ReadSeconds reads a time such as "2.5" or "2,5 s".
func ReadSeconds(text string) (float64, error) {
	return readNumber("seconds", strings.TrimSuffix(strings.TrimSpace(text), "s"), "2.5")
}

func repsText(reps []int) string {
	texts := make([]string, len(reps))
	for i, n := range reps {
		texts[i] = strconv.Itoa(n)
	}
	return strings.Join(texts, ", ")
}

func readReps(text, like string) ([]int, error) {
	var reps []int
	for part := range strings.FieldsFuncSeq(text, func(r rune) bool { return r == ',' || r == ';' || r == ' ' }) {
		n, err := strconv.Atoi(part)
		if err != nil {
			return nil, fmt.Errorf("read rep counts %q: %q is not a whole number; write some like %s", text, part, like)
		}
		reps = append(reps, n)
	}
	return reps, nil
}

// ReadCount reads how many there are of something.
func ReadCount(text string) (int, error) {
	n, err := strconv.Atoi(strings.TrimSpace(text))
	if err != nil {
		return 0, fmt.Errorf("read number %q: it is not a whole number; write one like 4", text)
	}
	return n, nil
}

// number writes a figure to a tenth, which is as fine as a coach sets one.
func number(x float64) string { return strconv.FormatFloat(math.Round(10*x)/10, 'f', -1, 64) }

// readNumber takes plain decimals only, with a point or a comma.
func readNumber(what, text, like string) (float64, error) {
	plain := strings.Replace(strings.TrimSpace(text), ",", ".", 1)
	x, err := strconv.ParseFloat(plain, 64)
	if err != nil || strings.Trim(plain, "-0123456789.") != "" {
		return 0, fmt.Errorf("read %s %q: it is not a number; write one like %s", what, text, like)
	}
	return x, nil
}

// NearestStep returns the index of the step that comes nearest to a value, the
// first of two equally near.
func NearestStep(steps []float64, value float64) int {
	best := 0
	for i, s := range steps {
		if math.Abs(s-value) < math.Abs(steps[best]-value) {
			best = i
		}
	}
	return best
}
