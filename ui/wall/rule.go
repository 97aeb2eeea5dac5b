package wall

import "math"

// Angles that letters must span at the eye of the farthest reader, in minutes of
// arc. ISO 9241 (part 3, now 303) wants at least 16 and prefers 20 to 22; for
// displays read by a group NUREG-0700 repeats the 16 and goes up to 45.
const (
	LeastArc = 16.0
	ReadArc  = 20.0
	MostArc  = 45.0
)

// capShare is the height of a capital or figure in shares of the text size; a
// test measures it on the typeface.
const capShare = 0.75

// LetterHeight is how high a letter is, in millimetres, that spans an angle in
// minutes of arc at a distance in metres: h = 2 d tan(a/2).
func LetterHeight(metres, arc float64) float64 {
	return 2 * metres * 1000 * math.Tan(arc/60*math.Pi/180/2)
}

// Screen is where the wall is shown.
type Screen struct {
	Height float64 // millimetres of the whole picture
	Viewer float64 // metres to the farthest reader
}

// UsualHeight is the height of a 27-inch screen of 16:9, in millimetres, for one
// that does not say how large it is.
const UsualHeight = 27 * 25.4 * 9 / 18.3575597506858

// Least and most believable heights of a screen, in millimetres: monitors
// without a panel of their own, such as projectors, report odd ones.
const (
	leastHeight = 100
	mostHeight  = 4000
)

// believed is the screen with a usual height where its own cannot be.
func (s Screen) believed() Screen {
	if !(s.Height >= leastHeight && s.Height <= mostHeight) {
		s.Height = UsualHeight
	}
	if !(s.Viewer >= 1) {
		s.Viewer = 8
	}
	return s
}

// textSize is the size of a text, in units of a picture so many units high, the
// capitals of which span an angle.
func (s Screen) textSize(arc float64, units float32) float32 {
	return float32(LetterHeight(s.Viewer, arc) / s.Height * float64(units) / capShare)
}
