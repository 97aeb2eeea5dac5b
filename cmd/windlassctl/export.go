package main

import (
	"context"
	"flag"

	"windlass/internal/desk"
	"windlass/internal/exchange"
)

// exported is what export answers.
type exported struct {
	Files []string `json:"files"`
}

func exportCommand(f *flag.FlagSet) run {
	out := f.String("out", "", "`DIR` for one CSV a table, made when it is not there")
	xlsx := f.String("xlsx", "", "`FILE` for one workbook, a sheet a table")
	return func(ctx context.Context, a *App, _ []string) error {
		if (*out == "") == (*xlsx == "") {
			return misuse("run windlassctl export: say where to with -out DIR or with -xlsx FILE, one of them")
		}
		if *out == "-" {
			return misuse("run windlassctl export -out -: many tables do not go into one output; -xlsx - writes one workbook there")
		}
		return a.reading(ctx, func(d *desk.Desk) error {
			if *xlsx == "-" {
				return exchange.WriteXLSX(ctx, a.Out, exchange.Tables(d.Book(), d.Today()))
			}
			write := d.ExportTables(*out)
			if *xlsx != "" {
				write = d.ExportWorkbook(*xlsx)
			}
			names, err := write(ctx)
			if err != nil {
				return err
			}
			return a.printFiles(names)
		})
	}
}

func (a *App) printFiles(names []string) error {
	return a.print(exported{names}, func() {
		for _, n := range names {
			a.say("%s\n", n)
		}
	})
}
