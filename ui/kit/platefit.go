package kit

import (
	"fmt"

	"windlass/ui/look"
)

// Sizes of a picture of plates, in units.
const (
	leastLabel float32 = 11 // of a disc's label: the smallest text that is read at a desk
	mostLabel  float32 = 28
	discGap    float32 = 2
	runEdge    float32 = 3 // of a disc of which only the edge is seen
	mostEdges          = 3 // the number says the rest
)

// labelAt is the size of labels where there is room, in a picture of a height.
func labelAt(height float32) float32 {
	return min(max(height*0.13, look.CaptionSize), mostLabel)
}

// discRun is one disc, or equal ones side by side: the inner ones show their edges,
// the outer one says how many they are.
type discRun struct {
	PlateDisc
	edges int
	width float32 // of the outer disc
}

// fitRuns finds how the discs of a side stand in a room, and the size of their
// labels: to scale where their labels fit on them, wider where not, with equal ones
// closed up where the sleeve is too short. In the last resort discs grow narrower,
// and labels that do not fit are left out: the picture's words still say them.
func fitRuns(discs []PlateDisc, room, height float32) (runs []discRun, size float32) {
	for _, closed := range []bool{false, true} {
		for size = labelAt(height); size >= leastLabel; size-- {
			if runs = sizedRuns(discs, closed, height, size); widthOfRuns(runs) <= room {
				return runs, size
			}
		}
	}
	runs = sizedRuns(discs, true, height, leastLabel)
	if whole := widthOfRuns(runs); room > 0 {
		for i := range runs {
			runs[i].width *= room / whole
		}
	}
	return runs, leastLabel
}

// sizedRuns sets out the discs with labels of a size, equal ones closed up or each
// for itself.
func sizedRuns(discs []PlateDisc, closed bool, height, size float32) (runs []discRun) {
	for i := 0; i < len(discs); {
		n := 1
		for closed && i+n < len(discs) && discs[i+n] == discs[i] {
			n++
		}
		r := discRun{PlateDisc: discs[i], edges: min(n-1, mostEdges)}
		if n > 1 {
			r.Label = fmt.Sprintf("%d×%s", n, r.Label)
		}
		r.width = max(r.Width*height, widthOf(r.Label, size, true)+size*0.5)
		runs = append(runs, r)
		i += n
	}
	return runs
}

func widthOfRuns(runs []discRun) (all float32) {
	for _, r := range runs {
		all += r.width + float32(r.edges)*runEdge + discGap
	}
	return all
}
