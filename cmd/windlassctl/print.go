package main

import (
	"encoding/json"
	"fmt"
	"strings"
	"text/tabwriter"
	"unicode"

	"windlass/internal/mass"
	"windlass/internal/plates"
)

// say writes for people.
func (a *App) say(format string, values ...any) { _, _ = fmt.Fprintf(a.Out, format, values...) }

// table writes columns for people; fill parts the cells of a line with tabs.
func (a *App) table(fill func(*tabwriter.Writer)) {
	w := tabwriter.NewWriter(a.Out, 0, 8, 2, ' ', 0)
	fill(w)
	_ = w.Flush()
}

// print writes a document as JSON where that was asked for, and else the text.
func (a *App) print(document any, text func()) error {
	if !a.json {
		text()
		return nil
	}
	e := json.NewEncoder(a.Out)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	if err := e.Encode(document); err != nil {
		return fmt.Errorf("write the answer: %w", err)
	}
	return nil
}

// load writes a mass, and nothing for none.
func load(m mass.Mass, u mass.Unit) string {
	if m == 0 {
		return ""
	}
	return m.In(u)
}

// side writes the discs of one side of a bar, each in its own unit.
func side(discs []plates.Disc) []string {
	texts := make([]string, len(discs))
	for i, d := range discs {
		texts[i] = d.String()
	}
	return texts
}

// onBar says for people what is on a side.
func onBar(perSide []string) string {
	if len(perSide) == 0 {
		return "bare"
	}
	return strings.Join(perSide, " + ")
}

func capital(s string) string {
	r := []rune(s)
	r[0] = unicode.ToUpper(r[0])
	return string(r)
}

// line writes the cells of one line of a table.
func line(w *tabwriter.Writer, cells ...string) { _, _ = fmt.Fprintln(w, strings.Join(cells, "\t")) }
