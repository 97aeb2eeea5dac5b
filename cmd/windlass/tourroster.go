package main

import (
	"os"
	"path/filepath"
	"strings"

	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/room"
)

// roster is a sheet as coaches have it: a byte order mark, semicolons, decimal
// commas, the name in two columns, pounds in one header, accents, blank cells
// and one row that cannot be.
const roster = "\ufeffSurname;First name;Track;Back Squat 1RM (lb);BP 5RM;Deadlift 3 RM\r\n" +
	"Åkerlund;Maja;Powerlifting;185;52,5;102,5\r\n" +
	"Nuñez;Íñigo;Powerlifting;315;;\r\n" +
	"Brandt;Ottilie;Strongman;;47,5 kg;97,5\r\n" +
	"Feld;Joris;Powerlifting;heavy;60;120\r\n"

// newcomers are those of the roster who come in.
var newcomers = []string{"Maja Åkerlund", "Íñigo Nuñez", "Ottilie Brandt"}

func bringRoster(t *tour) error {
	path := filepath.Join(t.folder, "roster.csv")
	if err := os.WriteFile(path, []byte(roster), 0o644); err != nil {
		return err
	}
	if err := shows(room.Roster, "roster")(t); err != nil {
		return err
	}
	t.press("Ctrl+O")
	t.write(path)
	t.press("Return")
	if err := t.desk("import-preview"); err != nil {
		return err
	}
	return t.skipBadRows()
}

// skipBadRows chooses to skip what is refused and brings the rest in.
func (t *tour) skipBadRows() error {
	for range 9 {
		if onThread(t.onToggle) {
			break
		}
		t.press("Tab")
	}
	t.press("Space")
	if err := t.desk("import-skip"); err != nil {
		return err
	}
	for range 4 {
		if onThread(func() bool { return t.known(newcomers[0]) }) {
			break
		}
		t.press("Return")
	}
	err := t.until("the new athletes are on the roster", func() bool { return t.known(newcomers...) })
	t.press("Escape")
	return err
}

// onToggle reports whether the keyboard has come to something to tick.
func (t *tour) onToggle() bool {
	_, ok := t.window.Canvas().Focused().(*kit.Toggle)
	return ok
}

func (t *tour) known(names ...string) bool {
	for _, name := range names {
		if _, ok := t.named(name); !ok {
			return false
		}
	}
	return true
}

func (t *tour) named(name string) (gym.Athlete, bool) {
	for _, a := range t.main.Desk().Book().Athletes {
		if strings.EqualFold(a.Name, name) {
			return a, true
		}
	}
	return gym.Athlete{}, false
}
