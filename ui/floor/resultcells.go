package floor

import (
	"fmt"

	"windlass/internal/climb"
	"windlass/internal/desk"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// outcomeWords is what the path proposes.
func outcomeWords(p desk.Proposal, l desk.BoardLifter) string {
	switch p.Outcome.Kind {
	case climb.Counts:
		return fmt.Sprintf("%d × %s", p.Outcome.Reps, p.Outcome.Load.In(l.Unit))
	case climb.Pending:
		return "calls are open"
	}
	return "nothing"
}

func loggedCell(p desk.Proposal) kit.Cell {
	switch {
	case p.Lifter.Missed:
		return kit.Cell{Text: "Nothing", Shape: kit.Cross, Mark: look.Bad}
	case p.Logged.ID != "":
		return kit.Cell{Text: fmt.Sprintf("%d × %s", p.Logged.Reps, p.Logged.Load.In(p.Logged.Unit)), Bold: true, Shape: kit.Tick, Mark: look.Good}
	}
	return kit.Cell{Text: "open", Tone: look.Muted}
}

func verdictCell(p desk.Proposal) kit.Cell {
	if p.Text == "" || p.Lifter.Missed {
		return kit.Cell{Text: "–", Tone: look.Muted}
	}
	v := p.Verdict
	percent := ""
	if v.Percent > 0 {
		percent = fmt.Sprintf("%.1f %%, ", v.Percent)
	}
	switch {
	case v.Raises:
		return kit.Cell{Text: percent + "record", Shape: kit.Up, Mark: look.Good}
	case v.Grade == climb.Under:
		return kit.Cell{Text: percent + "under the line", Shape: kit.Down, Mark: look.Warn}
	}
	return kit.Cell{Text: percent + "heavy day", Shape: kit.Disc, Mark: look.ZoneTop}
}
