// Package kit is the program's own set of drawn widgets: text, buttons, fields,
// lists, and the instruments of the trade such as the rung strip, the plate
// picture and the week grid.
//
// Most rooms need [Column], [NewCard] and [NewDataList]; a window starts with
// [NewShell]. Every widget takes plain values and callbacks, takes its colours
// from package look by meaning, shows where the keyboard is, and hands keys that
// it has no use for to the window. A widget may be changed only on Fyne's
// thread; none starts work of its own, except that a tip waits a moment.
//
// The package knows nothing of athletes, loads in a gym's stock or the clock of
// a class. It decides nothing: what a widget shows was computed elsewhere.
package kit

// Labelled is a widget that reads as one text, whatever it is drawn with. Tests
// and assistive tools find a widget by what it says.
type Labelled interface {
	// Label returns the words that a coach reads on the widget.
	Label() string
}
