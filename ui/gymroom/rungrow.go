package gymroom

import (
	"strconv"

	"fyne.io/fyne/v2"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// rungRow is the line of one rung in the table.
type rungRow struct {
	of      *climbEditor
	at      int
	line    *fyne.Container
	warning *kit.Mark
	from    *kit.Field
	until   *kit.Field
	percent *kit.Field
	reps    *kit.Field
	zone    *kit.Segmented
}

// zones are the segments of a rung's zone.
var zones = []gym.Zone{gym.LightZone, gym.WorkingZone, gym.TopZone}

// rungWidths are those of the number and of the four fields.
const (
	rungNumber float32 = 52
	rungField  float32 = 88
)

func newRungRow(e *climbEditor, at int) *rungRow {
	r := &rungRow{of: e, at: at, warning: kit.NewMark(kit.NoShape, look.Bad, 14)}
	r.from = r.field("from", func(d *desk.RungDraft, text string) { d.At = text }, func(o *rungRow) *kit.Field { return o.from })
	r.until = r.field("until", func(d *desk.RungDraft, text string) { d.Until = text }, func(o *rungRow) *kit.Field { return o.until })
	r.percent = r.field("percent", func(d *desk.RungDraft, text string) { d.Percent = text }, func(o *rungRow) *kit.Field { return o.percent })
	r.reps = r.field("reps", func(d *desk.RungDraft, text string) { d.Reps = text }, func(o *rungRow) *kit.Field { return o.reps })
	r.zone = kit.NewSegmented([]string{"Light", "Working", "Top"}, 0, func(i int) {
		e.write(func() { e.rung(at).Zone = zones[i] })
	})
	number := kit.NewStrong(strconv.Itoa(at + 1)).Align(fyne.TextAlignTrailing)
	r.line = kit.Row(look.Gap2, kit.Wide(20, number), kit.Wide(20, r.warning),
		kit.Wide(rungField, r.from), kit.Wide(rungField, r.until), kit.Wide(rungField, r.percent), kit.Wide(rungField, r.reps), r.zone)
	return r
}

// rungHeads are the titles over the lines.
func rungHeads() fyne.CanvasObject {
	head := []fyne.CanvasObject{kit.Wide(rungNumber, kit.NewCaption("Rung"))}
	for _, title := range []string{"From", "Until", "Per cent", "Reps"} {
		head = append(head, kit.Wide(rungField, kit.NewCaption(title)))
	}
	return kit.Row(look.Gap2, append(head, kit.NewCaption("Zone"))...)
}

// field is one figure of the rung. Up and Down lead to the same figure of the
// rung above or below.
func (r *rungRow) field(name string, set func(*desk.RungDraft, string), same func(*rungRow) *kit.Field) *kit.Field {
	f := kit.NewField("").Called("Rung " + strconv.Itoa(r.at+1) + " " + name).Least(rungField)
	f.OnChange(func(text string) { r.of.write(func() { set(r.of.rung(r.at), text) }) })
	f.OnKey(func(key *fyne.KeyEvent) bool {
		to := r.at
		switch key.Name {
		case fyne.KeyDown, fyne.KeyReturn, fyne.KeyEnter:
			to++
		case fyne.KeyUp:
			to--
		default:
			return false
		}
		if to >= 0 && to < len(r.of.draft.Rungs) {
			same(r.of.rows[to]).Focus()
			r.of.reveal(to)
		}
		return true
	})
	return f
}

// rung is a line of the draft, made the draft's own: a draft that is kept must
// not change with another.
func (e *climbEditor) rung(at int) *desk.RungDraft {
	e.draft.Rungs = append([]desk.RungDraft(nil), e.draft.Rungs...)
	return &e.draft.Rungs[at]
}

func (r *rungRow) fill(d desk.RungDraft) {
	r.from.SetText(d.At)
	r.until.SetText(d.Until)
	r.percent.SetText(d.Percent)
	r.reps.SetText(d.Reps)
	r.zone.Set(indexOf(zones, d.Zone))
}

// mark shows that something is wrong with the rung; the fields tell it to a
// pointer.
func (r *rungRow) mark(fault string) {
	shape := kit.NoShape
	if fault != "" {
		shape = kit.Warning
	}
	r.warning.Set(shape, look.Bad)
	for _, f := range r.fields() {
		f.SetFault(fault)
	}
}

func (r *rungRow) fields() []*kit.Field { return []*kit.Field{r.from, r.until, r.percent, r.reps} }

// has reports whether what has the keyboard is in the line.
func (r *rungRow) has(focused fyne.Focusable) bool {
	for _, f := range r.fields() {
		if f.Keyboard() == focused {
			return true
		}
	}
	return focused == fyne.Focusable(r.zone)
}
