package roster

import (
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/storage"

	"windlass/internal/desk"
	"windlass/internal/exchange"
	"windlass/internal/mass"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// orders are the ways to read a date of three numbers, in the order of the
// segments.
var orders = []exchange.DateOrder{exchange.NoOrder, exchange.DayFirst, exchange.MonthFirst}

// askFile asks for a file and what it is about.
func (r *Roster) askFile() { r.askFileAt("") }

// askFileAt is askFile with a path filled in, such as that of a dropped file.
func (r *Roster) askFileAt(path string) {
	file := kit.NewField("File, CSV or XLSX; you can also drop it on the window").Hint("/home/coach/roster.csv")
	file.SetText(path)
	kinds := []string{}
	for _, k := range desk.ImportKinds() {
		kinds = append(kinds, k.String())
	}
	kind := kit.NewSegmented(kinds, 0, nil)
	unit := kit.NewSegmented([]string{"kg", "lb"}, 0, nil)
	if r.host.Desk().Settings().Unit == mass.LB {
		unit.Set(1)
	}
	dates := kit.NewSegmented([]string{"2026-03-09 only", "day first", "month first"}, 0, nil)
	browse := kit.NewButton("Browse", func() { r.browse(file) })
	labelled := func(words string, o fyne.CanvasObject) fyne.CanvasObject {
		return kit.Column(look.Gap1, kit.NewCaption(words), kit.Row(0, o, kit.Fill()))
	}
	var sheet *kit.Modal
	sheet = kit.Ask(r.host.Window().Canvas(), kit.Question{
		Title: "Bring a file in", Text: "You see what it would change before anything is kept.", Width: 560,
		Body: kit.Column(look.Gap3, kit.Row(look.Gap2, kit.Fill(file), browse), labelled("It is a list of", kind),
			kit.Row(look.Gap6, labelled("Loads without a unit are in", unit), labelled("Dates are written", dates))),
		First: file.Keyboard(),
		Actions: []kit.Action{{Label: "Look at it", Do: func() bool {
			if strings.TrimSpace(file.Text()) == "" {
				file.SetFault("Write the path of the file, or browse for it.")
				return false
			}
			as := desk.ImportAs{Kind: desk.ImportKinds()[kind.Chosen()], Unit: []mass.Unit{mass.KG, mass.LB}[unit.Chosen()], Dates: orders[dates.Chosen()]}
			r.readFile(strings.TrimSpace(file.Text()), as, func(err error) {
				if file.SetFault(kit.Sentence(err)); err == nil {
					sheet.Close()
				}
			})
			return false
		}}},
	})
}

// browse lets the coach find the file.
func (r *Roster) browse(file *kit.Field) {
	open := dialog.NewFileOpen(func(found fyne.URIReadCloser, err error) {
		if !r.host.Fail(err) || found == nil {
			return
		}
		file.SetText(found.URI().Path())
		r.host.Fail(found.Close())
	}, r.host.Window())
	open.SetFilter(storage.NewExtensionFileFilter([]string{".csv", ".txt", ".tsv", ".xlsx"}))
	open.Show()
}

// dropped takes a file that was dropped on the window.
func (r *Roster) dropped(_ fyne.Position, files []fyne.URI) {
	if len(files) == 0 {
		return
	}
	r.host.Open(room.Roster, "")
	r.askFileAt(files[0].Path())
}

// readFile reads beside the desk and then shows what the file would change. ended
// hears first how it went, so that what is wrong can stand in the question.
func (r *Roster) readFile(path string, as desk.ImportAs, ended func(error)) {
	i := r.host.Desk().NewImport(filepath.Base(path), as)
	r.host.Long("Reading "+i.Name, func(job *room.Job) error { return readInto(job.Context(), i, path, job.Progress) },
		func(err error) {
			if ended(err); err == nil {
				r.preview(i, filepath.Dir(path))
			}
		})
}

func readInto(ctx context.Context, i *desk.Import, path string, progress func(done, of int)) (err error) {
	file, err := os.Open(path)
	if err != nil {
		return fmt.Errorf("read %q: %w", path, err)
	}
	defer file.Close() // it was only read
	return i.Read(ctx, file, progress)
}

// preview shows what a file would change, and asks whether to keep it.
func (r *Roster) preview(i *desk.Import, folder string) {
	p := i.Proposal
	skip := kit.NewToggle(fmt.Sprintf("Skip the %d refused, and bring the rest in", len(p.Rejected)), false, nil)
	keep := kit.NewToggle("Write a CSV of what came in and what was refused, beside the file", false, nil)
	stays := kit.NewProse("", 400).Tone(look.Bad) // why nothing came in
	body := []fyne.CanvasObject{kit.Equal(look.Gap3,
		figure("new", p.Added), figure("changed", p.Updated), figure("known already", p.Same), figure("refused", len(p.Rejected)))}
	if lines := i.Lines(); len(lines) > 0 {
		body = append(body, arrivals(lines))
	}
	if len(p.Rejected) > 0 {
		body = append(body, rejections(p.Rejected), skip)
	}
	if list := remarks(p); list != nil {
		body = append(body, list)
	}
	kit.Ask(r.host.Window().Canvas(), kit.Question{
		Title: i.Name, Text: i.Says() + " Nothing is kept yet.", Width: 760, Body: kit.Column(look.Gap3, append(body, keep, stays)...),
		Actions: []kit.Action{{Label: "Bring it in", Do: func() bool { return r.accept(i, skip.On(), keep.On(), folder, stays) }}},
	})
}

// accept brings a file in. While rows are refused and not to be skipped it stays
// in question, and stays says so there.
func (r *Roster) accept(i *desk.Import, skip, keep bool, folder string, stays *kit.Prose) bool {
	step, err := r.host.Desk().BeginImport(i, skip)
	stays.SetText(kit.Sentence(err))
	if err != nil {
		return false
	}
	r.host.Carry(step, func(err error) {
		switch {
		case !r.host.Fail(err):
		case keep:
			r.keepOutcome(i, folder)
		default:
			r.host.Say(i.Says(), true)
		}
	})
	return true
}

// keepOutcome writes what came in and what was refused beside the file.
func (r *Roster) keepOutcome(i *desk.Import, folder string) {
	var name string
	r.host.Long("Writing what came in", func(job *room.Job) (err error) {
		name, err = i.KeepOutcome(job.Context(), folder)
		return err
	}, func(err error) {
		if r.host.Fail(err) {
			r.host.Say(i.Says()+" Written to "+name+".", true)
		}
	})
}

func figure(caption string, n int) fyne.CanvasObject {
	return kit.Column(0, kit.NewNumber(fmt.Sprint(n)), kit.NewCaption(caption))
}

// arrivals lists whom a file is about and what would be known of them.
func arrivals(all []desk.ImportLine) fyne.CanvasObject {
	list := kit.NewDataList([]kit.ListColumn{
		{Title: "", Width: 80}, {Title: "Athlete", Width: 176}, {Title: "What comes in", Width: 300, Grow: 1},
	}, kit.Rows{Len: func() int { return len(all) }, Cell: func(row, column int) kit.Cell {
		switch line := all[row]; {
		case column == 1:
			return kit.Cell{Text: line.Name, Bold: line.New}
		case column == 2:
			return kit.Cell{Text: line.What}
		case line.New:
			return kit.Cell{Text: "new"}
		}
		return kit.Cell{Text: "changed", Tone: look.Muted}
	}})
	passReturn(list)
	return kit.Tall(136, kit.Fill(kit.NewPanel(kit.Fill(list))))
}

// passReturn gives Enter to the question, as there is nothing to open in a list.
func passReturn(list *kit.DataList) {
	list.OnKey = func(key *fyne.KeyEvent) bool {
		if key.Name == fyne.KeyReturn || key.Name == fyne.KeyEnter {
			kit.PassKey(list, key)
			return true
		}
		return false
	}
}

// why is a row's reason as a coach reads it.
func why(x exchange.Rejection) string { return kit.Sentence(errors.New(x.Reason)) }

// rejections lists every refused row with its place, and the whole reason of the
// one under the cursor.
func rejections(all []exchange.Rejection) fyne.CanvasObject {
	whole := kit.NewProse(why(all[0]), 400)
	list := kit.NewDataList([]kit.ListColumn{
		{Title: "Line", Width: 56, End: true}, {Title: "Column", Width: 176}, {Title: "Why, and what would mend it", Width: 300, Grow: 1},
	}, kit.Rows{Len: func() int { return len(all) }, Cell: func(row, column int) kit.Cell {
		switch column {
		case 0:
			return kit.Cell{Text: fmt.Sprint(all[row].Line)}
		case 1:
			return kit.Cell{Text: all[row].Column}
		}
		return kit.Cell{Text: why(all[row])}
	}})
	passReturn(list)
	list.OnCursor = func(row int) { whole.SetText(why(all[row])) }
	return kit.Column(look.Gap2, kit.Tall(136, kit.Fill(kit.NewPanel(kit.Fill(list)))), kit.Tall(44, kit.Fill(whole)))
}

// remarksTold is how many remarks of a reading are shown: a list of widgets has its
// end, and so has a coach's patience.
const remarksTold = 100

// remarks lists what is kept and worth a look, and what was not understood, a line
// each.
func remarks(p exchange.Proposal) fyne.CanvasObject {
	lines := []fyne.CanvasObject{}
	add := func(text string) {
		lines = append(lines, kit.Row(look.Gap2, kit.NewMark(kit.Disc, look.Muted, 6), kit.Fill(kit.NewProse(text, 400).Small())))
	}
	if len(p.Ignored) > 0 {
		add("Columns that mean nothing to the program: " + strings.Join(p.Ignored, ", ") + ".")
	}
	for _, note := range p.Notes[:min(len(p.Notes), remarksTold)] {
		add(strings.ToUpper(note[:1]) + note[1:] + ".")
	}
	if more := len(p.Notes) - remarksTold; more > 0 {
		add(fmt.Sprintf("And %d more.", more))
	}
	if len(lines) == 0 {
		return nil
	}
	return kit.Column(look.Gap1, kit.NewCaption("Worth a look"), kit.Tall(72, kit.Fill(kit.Scroll(kit.Column(look.Gap1, lines...)))))
}
