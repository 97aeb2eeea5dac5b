package arch

import "slices"

// Groups of packages, for the table.
var (
	nouns  = []string{"internal/mass", "internal/day", "internal/plates", "internal/gym"}
	domain = slices.Concat(nouns, []string{
		"internal/repmax", "internal/strength", "internal/climb", "internal/station", "internal/cycle",
		"internal/conditioning", "internal/tier", "internal/clock", "internal/progress",
	})
	behind = slices.Concat(domain, []string{"internal/desk", "internal/exchange", "internal/handout"})
	drawn  = []string{"ui/kit", "ui/look", "ui/room"}
	rooms  = []string{"ui/today", "ui/roster", "ui/record", "ui/cyclegrid", "ui/floor", "ui/handouts", "ui/gymroom"}
)

// ours says for every package of the house which others it may import. What is not
// in the table is not in the house.
var ours = map[string][]string{
	"assets":                nil,
	"assets/drawicon":       nil,
	"data":                  nil,
	"cmd/dev":               nil,
	"cmd/windlass":          {everything},
	"cmd/windlassctl":       slices.Concat(behind, []string{"data", "internal/store", "internal/demo"}),
	"internal/arch":         nil,
	"internal/mass":         nil,
	"internal/day":          nil,
	"internal/plates":       {"internal/mass"},
	"internal/gym":          {"internal/mass", "internal/day", "internal/plates"},
	"internal/repmax":       nouns,
	"internal/strength":     slices.Concat(nouns, []string{"internal/repmax"}),
	"internal/climb":        slices.Concat(nouns, []string{"internal/repmax"}),
	"internal/station":      {"internal/mass", "internal/plates", "internal/climb"},
	"internal/cycle":        {"internal/gym", "internal/day"},
	"internal/conditioning": {"internal/gym", "internal/mass"},
	"internal/tier":         {"internal/gym", "internal/mass", "internal/day"},
	"internal/clock":        {"internal/climb", "internal/conditioning", "internal/gym"},
	"internal/progress":     slices.Concat(nouns, []string{"internal/strength", "internal/repmax", "internal/tier", "internal/cycle"}),
	"internal/desk":         slices.Concat(domain, []string{"data", "internal/exchange", "internal/handout"}),
	"internal/store":        nouns,
	"internal/exchange":     slices.Concat(nouns, []string{"internal/repmax", "internal/conditioning"}),
	"internal/handout":      domain,
	"internal/demo":         slices.Concat(domain, []string{"internal/desk"}), // for the starter's catalogue
	"internal/sound":        nil,
	"ui":                    slices.Concat(behind, drawn, rooms, []string{"assets", "ui/wall", "internal/sound"}),
	"ui/look":               {"assets"},
	"ui/kit":                slices.Concat(nouns, []string{"ui/look"}),
	"ui/room":               slices.Concat(behind, []string{"ui/kit", "ui/look"}),
	"ui/today":              slices.Concat(behind, drawn),
	"ui/roster":             slices.Concat(behind, drawn, []string{"ui/record"}), // the record stands beside the roster
	"ui/record":             slices.Concat(behind, drawn),
	"ui/cyclegrid":          slices.Concat(behind, drawn),
	"ui/floor":              slices.Concat(behind, drawn, []string{"internal/sound"}),
	"ui/wall":               slices.Concat(behind, drawn, []string{"internal/sound"}),
	"ui/handouts":           slices.Concat(behind, drawn),
	"ui/gymroom":            slices.Concat(behind, drawn, []string{"internal/sound"}),
	"ui/uitest":             slices.Concat(behind, drawn, []string{"internal/store", "internal/demo"}), // for tests only
}

const everything = "*"

// theirs says who may import what is not ours; the standard library is free to all
// but the domain. An import counts by its longest line here.
var theirs = map[string][]string{
	"fyne.io/fyne/v2":             {"cmd/windlass", "ui", "ui/*"},
	"fyne.io/fyne/v2/app":         {"cmd/windlass"}, // all else builds without cgo
	"fyne.io/fyne/v2/test":        {"ui/uitest"},
	"github.com/gen2brain/malgo":  {"internal/sound"},
	"github.com/jezek/xgb":        {"cmd/windlass"},
	"github.com/stretchr/testify": {"ui/uitest"},
	"github.com/xuri/excelize/v2": {"internal/exchange"},
	"golang.org/x/text":           {"internal/desk", "internal/exchange", "internal/gym"},
	"gonum.org/v1/gonum":          {"internal/strength", "internal/progress"},
	"modernc.org/sqlite":          {"internal/store"},
}

// pure packages are functions of what is handed in: no clock, no goroutine, no
// file, no database, no randomness of their own.
var pure = domain

// closed are parts of the standard library that a pure package has no use for.
var closed = []string{"crypto/rand", "database/sql", "log", "log/slog", "math/rand", "net", "net/http", "os", "os/exec", "syscall", "unsafe"}

// impure are calls that a pure package does not make. A seeded generator of
// math/rand/v2 is fine; its functions that share one are not.
var impure = map[string][]string{
	"time":         {"Now", "Since", "Until", "Sleep", "After", "AfterFunc", "Tick", "NewTimer", "NewTicker"},
	"math/rand/v2": {"Int", "IntN", "Int32", "Int32N", "Int64", "Int64N", "Uint", "UintN", "Uint32", "Uint32N", "Uint64", "Uint64N", "N", "Float32", "Float64", "NormFloat64", "ExpFloat64", "Perm", "Shuffle"},
}

// nameless are folders that say nothing about what is in them.
var nameless = []string{"util", "utils", "common", "helper", "helpers", "manager", "managers", "service", "services", "misc", "shared"}
