// Package assets carries the files that the program shows as they are: the two
// cuts of its typeface and its icon.
//
// Most callers need [Regular] and [Bold]; the theme asks for them, nobody else
// has to. The bytes are embedded, so the program needs no font on the machine.
// The licence of each font lies beside it in fonts/. The package draws nothing
// and knows no colours.
package assets

import _ "embed" // for the go:embed lines below

//go:generate go run ./drawicon -o icon.png

var (
	//go:embed fonts/B612-Regular.otf
	regular []byte
	//go:embed fonts/B612-Bold.otf
	bold []byte
	//go:embed fonts/OFL.txt
	licence string
	//go:embed icon.png
	icon []byte
)

// Regular returns the OpenType file of the text cut, B612 Regular.
func Regular() []byte { return regular }

// Bold returns the OpenType file of the cut for clocks, loads and headings,
// B612 Bold. Its digits have the same width as those of [Regular].
func Bold() []byte { return bold }

// FontLicence returns the licence of both cuts, to be shown on request.
func FontLicence() string { return licence }

// Icon returns the program's mark as a square PNG, 512 pixels wide.
func Icon() []byte { return icon }
