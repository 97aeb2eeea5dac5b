package cyclegrid

import (
	"fmt"
	"slices"

	"fyne.io/fyne/v2"

	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// line is one exercise of a warm-up or a finisher, and how much of it.
type line struct{ key, dose string }

// lineList edits the lines of a warm-up or a finisher. Its last row is empty and
// adds one.
type lineList struct {
	editor  *editor
	name    string
	options func() []kit.Option
	read    func(gym.DayPlan) []line
	write   func(*gym.DayPlan, []line)
	rows    []*lineRow
	box     *fyne.Container
	all     fyne.CanvasObject
}

func newWarmUp(e *editor) *lineList {
	return newLineList(e, "Warm-up", func() []kit.Option {
		var options []kit.Option
		for _, d := range e.room.desk().Book().Drills {
			if !d.Hidden {
				options = append(options, kit.Option{Key: d.Key, Text: d.Name, Note: string(d.Pattern)})
			}
		}
		return options
	}, func(p gym.DayPlan) (lines []line) {
		for _, l := range p.WarmUp {
			lines = append(lines, line{l.Drill, l.Dose})
		}
		return lines
	}, func(p *gym.DayPlan, lines []line) {
		p.WarmUp = nil
		for _, l := range lines {
			p.WarmUp = append(p.WarmUp, gym.DrillLine{Drill: l.key, Dose: l.dose})
		}
	})
}

func newFinisher(e *editor) *lineList {
	return newLineList(e, "Finisher", func() []kit.Option {
		var options []kit.Option
		for _, f := range e.room.desk().Book().Finishers {
			if !f.Hidden {
				options = append(options, kit.Option{Key: f.Key, Text: f.Name, Note: f.Muscle})
			}
		}
		return options
	}, func(p gym.DayPlan) (lines []line) {
		for _, l := range p.Finisher {
			lines = append(lines, line{l.Finisher, l.Dose})
		}
		return lines
	}, func(p *gym.DayPlan, lines []line) {
		p.Finisher = nil
		for _, l := range lines {
			p.Finisher = append(p.Finisher, gym.FinisherLine{Finisher: l.key, Dose: l.dose})
		}
	})
}

func newLineList(e *editor, name string, options func() []kit.Option, read func(gym.DayPlan) []line, write func(*gym.DayPlan, []line)) *lineList {
	l := &lineList{editor: e, name: name, options: options, read: read, write: write, box: kit.Column(look.Gap1)}
	l.all = kit.Column(look.Gap2, kit.NewStrong(name), l.box)
	return l
}

func (l *lineList) refresh() {
	lines, options := l.read(l.editor.plan), l.options()
	for len(l.rows) < len(lines)+1 {
		l.rows = append(l.rows, newLineRow(l, len(l.rows)))
	}
	if len(l.box.Objects) != len(lines)+1 {
		l.box.Objects = nil
		for _, r := range l.rows[:len(lines)+1] {
			l.box.Objects = append(l.box.Objects, r.all)
		}
		l.box.Refresh()
	}
	for i, r := range l.rows[:len(lines)+1] {
		x := line{}
		if i < len(lines) {
			x = lines[i]
		}
		r.show(x, options)
	}
}

// change keeps the lines with one of them changed, added or taken away.
func (l *lineList) change(edit func([]line) []line) {
	p := l.editor.draft()
	l.write(&p, edit(l.read(p)))
	l.editor.keep(p, l.name+" changed.")
}

// lineRow is one row of a list.
type lineRow struct {
	list   *lineList
	at     int
	choice *kit.Choice
	dose   *input
	drop   *kit.Button
	all    fyne.CanvasObject
}

func newLineRow(l *lineList, at int) *lineRow {
	r := &lineRow{list: l, at: at}
	r.choice = kit.NewChoice("", nil, r.choose).Hint("Add an exercise").Least(120)
	r.choice.Called(fmt.Sprintf("%s %d", l.name, at+1))
	r.dose = l.editor.newInput("", r.takeDose).called(fmt.Sprintf("%s %d, how much", l.name, at+1)).hint("2 × 10").least(118)
	r.drop = kit.NewButton("", r.remove).Mark(kit.Cross).Plain().Tip("Take " + l.name + " line out")
	r.all = kit.Row(look.Gap1, kit.Fill(r.choice), r.dose.field, r.drop)
	return r
}

func (r *lineRow) show(x line, options []kit.Option) {
	r.choice.SetOptions(options)
	r.choice.Set(x.key)
	r.dose.show(x.dose)
	r.dose.field.Hidden = x.key == ""
	r.drop.Hidden = x.key == ""
}

func (r *lineRow) choose(o kit.Option) {
	r.list.change(func(lines []line) []line {
		if r.at < len(lines) {
			lines[r.at].key = o.Key
			return lines
		}
		return append(lines, line{o.Key, r.list.editor.room.desk().UsualDose(o.Key)})
	})
}

func (r *lineRow) takeDose(text string) error {
	r.list.change(func(lines []line) []line {
		if r.at < len(lines) {
			lines[r.at].dose = text
		}
		return lines
	})
	return nil
}

func (r *lineRow) remove() {
	r.list.change(func(lines []line) []line {
		if r.at < len(lines) {
			return slices.Delete(lines, r.at, r.at+1)
		}
		return lines
	})
}
