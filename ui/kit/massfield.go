package kit

import (
	"windlass/internal/mass"
)

// MassField is a field for a load. It reads a load in either unit as a coach
// writes it, and says what is wrong when it is none.
type MassField struct {
	Field
	unit  mass.Unit
	heard func(mass.Mass, mass.Unit)
	last  string // the text that was last told, so that nothing is told twice
}

// NewMassField returns an empty field for a load; a load without a unit counts in
// the given one.
func NewMassField(label string, unit mass.Unit) *MassField {
	m := &MassField{unit: unit}
	m.init(m, label)
	m.entry.all = true
	m.entry.onEnter = m.tell
	m.left = m.tell
	m.Hint("0 " + string(unit))
	return m
}

// Least sets the least width in units.
func (m *MassField) Least(width float32) *MassField {
	m.Field.Least(width)
	return m
}

// OnMass hears of every new load, when the coach presses Return or goes on. It is
// not told of a text that is no load.
func (m *MassField) OnMass(do func(mass.Mass, mass.Unit)) *MassField {
	m.heard = do
	return m
}

// Mass returns the load in the field and the unit it is written in. An empty
// field is an error that wraps mass.ErrNotMass, too.
func (m *MassField) Mass() (mass.Mass, mass.Unit, error) { return mass.Parse(m.Text(), m.unit) }

// SetMass shows a load in a unit, which becomes the field's own.
func (m *MassField) SetMass(load mass.Mass, unit mass.Unit) {
	m.unit = unit
	m.last = load.In(unit)
	m.SetText(m.last)
}

// tell checks what was written and hands it on once.
func (m *MassField) tell() {
	text := m.Text()
	if text == m.last {
		return
	}
	if text == "" {
		m.last = ""
		return
	}
	load, unit, err := m.Mass()
	if err != nil {
		m.SetFault(Sentence(err))
		return
	}
	m.last = text
	if m.heard != nil {
		m.heard(load, unit)
	}
}
