package record

import (
	"strconv"

	"windlass/internal/desk"
	"windlass/internal/tier"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// usualComeback is for how many weeks a comeback is proposed at first.
const usualComeback = 2

// comebackAsked is the question for how many weeks an athlete goes lighter, and by
// how much.
type comebackAsked struct {
	of          *bouts
	weeks, cuts *kit.Field
	proposed    string // what stands in the field of the cuts unless the coach wrote there
	caution     *kit.Prose
}

// comeback asks for how many weeks an athlete goes lighter.
func (b *bouts) comeback() {
	q := &comebackAsked{of: b, caution: kit.NewProse("", 420).Tone(look.Warn)}
	q.weeks = kit.NewField("For how many weeks").OnChange(func(string) { q.propose() })
	q.cuts = kit.NewField("Lighter by how many per cent: one number, or one for each week").OnChange(func(string) { q.warn() })
	q.weeks.SetText(strconv.Itoa(usualComeback))
	q.propose()
	b.of.ask(kit.Question{
		Title: b.athlete.Name + " is back from a break", Text: desk.ComebackText(), Width: 560, First: q.weeks.Keyboard(),
		Body: kit.Column(look.Gap2, q.weeks, q.cuts, kit.Tall(look.RowHeight, kit.Fill(q.caution)),
			kit.NewProse("After an injury, an illness or a birth, wait for a doctor's word. Dark urine, weakness or swelling beyond usual soreness is for a doctor at once.", 420).Tone(look.Warn)),
		Actions: []kit.Action{{Label: "Go lighter", Do: q.keep}},
	})
}

// propose writes the guidance for the weeks, unless the coach has written cuts.
func (q *comebackAsked) propose() {
	if q.cuts.Text() != q.proposed {
		q.warn()
		return
	}
	weeks, err := desk.ReadComebackWeeks(q.weeks.Text())
	if err != nil {
		return
	}
	if shares, err := tier.ComebackShares(weeks); err == nil {
		q.proposed = desk.CutsText(shares)
		q.cuts.SetText(q.proposed)
	}
}

// shares reads both fields, and shows what is wrong with one.
func (q *comebackAsked) shares(show bool) ([]float64, bool) {
	weeks, err := desk.ReadComebackWeeks(q.weeks.Text())
	if err != nil {
		if show {
			q.weeks.SetFault(kit.Sentence(err))
		}
		return nil, false
	}
	shares, err := desk.ReadCuts(q.cuts.Text(), weeks)
	if err != nil && show {
		q.cuts.SetFault(kit.Sentence(err))
	}
	return shares, err == nil
}

func (q *comebackAsked) warn() {
	shares, ok := q.shares(false)
	text := ""
	if ok {
		text = desk.ComebackCaution(shares)
	}
	q.caution.SetText(text)
}

func (q *comebackAsked) keep() bool {
	shares, ok := q.shares(true)
	if !ok {
		return false
	}
	return q.of.of.done(q.of.of.host.Desk().Comeback(q.of.athlete.ID, shares), q.of.athlete.Name+" goes lighter for "+desk.Count(len(shares), "week")+".")
}
