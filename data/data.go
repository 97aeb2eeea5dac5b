// Package data holds the built-in catalogue as tables that a coach can read:
// lifts, conditioning movements, finishers, warm-up drills and implements.
//
// Most callers need [Files], handed to gym.ReadCatalogue, which also says how
// the tables are written. The package promises that its tables are read without
// an error. Figures without a source in the table are common practice: a place
// to start from, for each gym to change. It keeps nothing that a gym has changed.
package data

import (
	"embed"
	"io/fs"
)

//go:embed *.csv
var files embed.FS

// Files returns the folder with lifts.csv, movements.csv, finishers.csv,
// warmups.csv and implements.csv.
func Files() fs.FS { return files }
