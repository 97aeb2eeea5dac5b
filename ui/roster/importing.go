package roster

import (
	"context"
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
			sheet.Close() // before the next question, which it would take along
			r.readFile(strings.TrimSpace(file.Text()), as)
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

// readFile reads beside the desk and then shows what the file would change.
func (r *Roster) readFile(path string, as desk.ImportAs) {
	i := r.host.Desk().NewImport(filepath.Base(path), as)
	r.host.Long("Reading "+i.Name, func(job *room.Job) error { return readInto(job.Context(), i, path, job.Progress) },
		func(err error) {
			if r.host.Fail(err) {
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
	body := []fyne.CanvasObject{kit.Equal(look.Gap3,
		figure("new", p.Added), figure("changed", p.Updated), figure("known already", p.Same), figure("refused", len(p.Rejected)))}
	if len(p.Rejected) > 0 {
		body = append(body, rejections(p.Rejected), skip)
	}
	if lines := remarks(p); lines != "" {
		body = append(body, kit.NewProse(lines, 400).Small().Tone(look.Muted))
	}
	kit.Ask(r.host.Window().Canvas(), kit.Question{
		Title: i.Name, Text: i.Says() + " Nothing is kept yet.", Width: 760, Body: kit.Column(look.Gap3, append(body, keep)...),
		Actions: []kit.Action{{Label: "Bring it in", Do: func() bool { return r.accept(i, skip, keep.On(), folder) }}},
	})
}

// accept brings a file in; it stays in question while rows are refused and not
// to be skipped.
func (r *Roster) accept(i *desk.Import, skip *kit.Toggle, keep bool, folder string) bool {
	if err := r.host.Desk().AcceptImport(i, skip.On()); !r.host.Fail(err) {
		return false
	}
	r.host.Say(i.Says(), true)
	if keep {
		name, err := i.KeepOutcome(context.Background(), folder)
		if r.host.Fail(err) {
			r.host.Say(i.Says()+" Written to "+name+".", true)
		}
	}
	return true
}

func figure(caption string, n int) fyne.CanvasObject {
	return kit.Column(0, kit.NewNumber(fmt.Sprint(n)), kit.NewCaption(caption))
}

// rejections lists every refused row with its place, and the whole reason of the
// one under the cursor.
func rejections(all []exchange.Rejection) fyne.CanvasObject {
	why := kit.NewProse(all[0].Reason, 400)
	list := kit.NewDataList([]kit.ListColumn{
		{Title: "Line", Width: 56, End: true}, {Title: "Column", Width: 176}, {Title: "Why, and what would mend it", Width: 300, Grow: 1},
	}, kit.Rows{Len: func() int { return len(all) }, Cell: func(row, column int) kit.Cell {
		switch column {
		case 0:
			return kit.Cell{Text: fmt.Sprint(all[row].Line)}
		case 1:
			return kit.Cell{Text: all[row].Column}
		}
		return kit.Cell{Text: all[row].Reason}
	}})
	list.OnKey = func(key *fyne.KeyEvent) bool { // Return is the question's, as there is nothing to open
		if key.Name == fyne.KeyReturn || key.Name == fyne.KeyEnter {
			kit.PassKey(list, key)
			return true
		}
		return false
	}
	list.OnCursor = func(row int) { why.SetText(all[row].Reason) }
	return kit.Column(look.Gap2, kit.Tall(168, kit.Fill(kit.NewPanel(kit.Fill(list)))), kit.Tall(44, kit.Fill(why)))
}

// remarksTold is how many remarks of a reading are shown.
const remarksTold = 4

// remarks are what is kept and worth a look, and what was not understood.
func remarks(p exchange.Proposal) string {
	lines := p.Notes[:min(len(p.Notes), remarksTold)]
	if more := len(p.Notes) - len(lines); more > 0 {
		lines = append(lines[:len(lines):len(lines)], fmt.Sprintf("and %d more remarks", more))
	}
	if len(p.Ignored) > 0 {
		lines = append(lines[:len(lines):len(lines)], "columns that mean nothing to the program: "+strings.Join(p.Ignored, ", "))
	}
	return strings.Join(lines, ". ")
}
