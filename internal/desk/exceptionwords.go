package desk

import (
	"cmp"
	"fmt"
	"slices"

	"windlass/internal/gym"
)

// exceptionLines says what the exceptions of a class change, in the order of the
// rungs: a line for every load, and one for each who lifts last.
func (d *Desk) exceptionLines(before, after gym.Class) (texts []string) {
	type line struct {
		rung int
		text string
	}
	var lines []line
	was := d.Boards().Board(before)
	for i, l := range after.Lifters {
		row, _ := was.Lifter(l.Athlete)
		var last []int
		for _, e := range fresh(before.Lifters[i], l) {
			if e.Load > 0 && e.Load != before.Lifters[i].Exception(e.Rung).Load && e.Rung < len(row.Sets) {
				lines = append(lines, line{e.Rung, fmt.Sprintf("Rung %d, %s: %s in place of %s.",
					e.Rung+1, row.Name, e.Load.In(row.Unit), row.Sets[e.Rung].Likely().In(row.Unit))})
			}
			if e.Last {
				last = append(last, e.Rung+1)
			}
		}
		if len(last) > 0 {
			slices.Sort(last)
			lines = append(lines, line{last[0] - 1, fmt.Sprintf("%s, %s: lifts when all others have.", rungWords(last), row.Name)})
		}
	}
	slices.SortStableFunc(lines, func(a, b line) int { return cmp.Compare(a.rung, b.rung) })
	for _, l := range lines {
		texts = append(texts, l.text)
	}
	return texts
}

// fresh are the exceptions of a lifter that were not there before.
func fresh(before, after gym.Lifter) (all []gym.Exception) {
	for _, e := range after.Exceptions {
		if before.Exception(e.Rung) != e {
			all = append(all, e)
		}
	}
	return all
}
