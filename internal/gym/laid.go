package gym

import "windlass/internal/plates"

// Laid is what lies on the bar for a lifter's set of one rung. It is kept where the
// stations would otherwise be planned anew under a set that is being lifted.
type Laid struct {
	Rung  int           `json:"rung"` // index
	Discs []plates.Disc `json:"discs"`
}
