package gymroom

// shared are the keys that mean the same in every section that knows them; do
// reports whether the section in front does. no is said where it does not.
var shared = []struct {
	press, does, no string
	do              func(section) bool
}{
	{"Ctrl+N", "Add a new one here", "There is nothing to add here.", func(s section) bool {
		return tell(s, func(s interface{ add() }) { s.add() })
	}},
	{"Ctrl+D", "Copy what the cursor is on", "There is nothing to copy here.", func(s section) bool {
		return tell(s, func(s interface{ copy() }) { s.copy() })
	}},
	{"Ctrl+S", "Save the climb", "Everything here is saved already.", func(s section) bool {
		return tell(s, func(s interface{ save() }) { s.save() })
	}},
	{"Ctrl+R", "Add a rung after this one", "There are no rungs here.", func(s section) bool {
		return tell(s, func(c *climbs) { c.editor.insert() })
	}},
	{"Ctrl+T", "Take this rung out", "There are no rungs here.", func(s section) bool {
		return tell(s, func(c *climbs) { c.editor.remove() })
	}},
	{"Ctrl+I", "Import a climb", "Climbs are imported: go there with F6.", func(s section) bool {
		return tell(s, func(c *climbs) { c.askImport() })
	}},
	{"Ctrl+E", "Export the climb", "Climbs are exported: go there with F6.", func(s section) bool {
		return tell(s, func(c *climbs) { c.askExport() })
	}},
	{"Ctrl+F", "Search the catalogue", "The catalogue can be searched: go there with F7.", func(s section) bool {
		return tell(s, func(s interface{ search() }) { s.search() })
	}},
}

// tell does something with a section that can, and reports whether it could.
func tell[S any](s section, do func(S)) bool {
	can, ok := s.(S)
	if ok {
		do(can)
	}
	return ok
}
