package record

import (
	"strings"

	"fyne.io/fyne/v2"

	"windlass/internal/repmax"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// raiseRow offers to lift a record that another has overtaken.
type raiseRow struct {
	of      *lifts
	content *fyne.Container
	why     *kit.Text
	offered []repmax.Raise
}

func newRaiseRow(l *lifts) *raiseRow {
	r := &raiseRow{of: l, why: kit.NewBody("").Shrinks(80)}
	r.content = kit.Row(look.Gap2, kit.NewMark(kit.Warning, look.Warn, 14), kit.Fill(r.why), kit.NewButton("Raise it", r.take).Key("F10"))
	return r
}

func (r *raiseRow) show(offered []repmax.Raise) {
	r.offered = offered
	r.content.Hidden = len(offered) == 0
	if len(offered) > 0 {
		r.why.SetText(raiseText(offered))
	}
}

// raiseText tells what does not fit: "The 5RM of 110 kg is proof for the 3RM of 100
// kg and the 1RM of 105 kg."
func raiseText(offered []repmax.Raise) string {
	var lower []string
	for _, o := range offered {
		lower = append(lower, "the "+rm(o.Record.Reps)+" of "+o.Record.Load.In(o.Record.Unit))
	}
	proof := offered[0].Proof
	return "The " + rm(proof.Reps) + " of " + proof.Load.In(proof.Unit) + " is proof for " + strings.Join(lower, " and ") + "."
}

func (r *raiseRow) take() {
	if len(r.offered) > 0 {
		r.of.of.done(r.of.of.host.Desk().Raise(r.offered...), "Raised to what was proven.")
	}
}
