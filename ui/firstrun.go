package ui

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"

	"windlass/assets"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// First is what the coach chose on the first run.
type First struct {
	Demo   bool   // open the demo gym
	Name   string // of the new gym otherwise
	Roster bool   // go on to bring a roster file
}

// caution stands on the first run, on paper and in the README.
const caution = "Windlass gives general training advice. Screen people before they start, use spotters " +
	"and safety arms, and stop on pain. Defer to a doctor, to licensed practice and to local rules. " +
	"Minors and pregnant athletes need advice of their own."

// FirstRun returns what a window shows while there is no gym: the caution and
// three ways to begin. begin opens the console or says why it cannot.
func FirstRun(in fyne.Window, begin func(First) error) fyne.CanvasObject {
	in.SetPadded(false)
	fault := kit.NewProse("", 320)
	fault.Tone(look.Bad)
	try := func(f First) {
		if err := begin(f); err != nil {
			fault.SetText(kit.Sentence(err))
		}
	}
	named := func(roster bool) func() {
		return func() { askName(in, func(name string) { try(First{Name: name, Roster: roster}) }) }
	}
	ways := kit.Equal(look.Gap6,
		way("Look around first", "A made-up gym with 36 athletes, three tracks and five weeks of training behind it.",
			kit.NewButton("Open the demo gym", func() { try(First{Demo: true}) }).Primary()),
		way("Bring your athletes", "A roster as you have it, CSV or XLSX: names, and any rep maxes you know.",
			kit.NewButton("Bring a roster file", named(true))),
		way("Start from nothing", "An empty gym with our catalogue of lifts and movements.",
			kit.NewButton("Start an empty gym", named(false))),
	)
	mark := canvas.NewImageFromResource(fyne.NewStaticResource("icon.png", assets.Icon()))
	mark.SetMinSize(fyne.NewSize(72, 72))
	head := kit.Row(look.Gap4, mark, kit.Column(look.Gap1, kit.NewNumber("Windlass"),
		kit.NewBody("Plan a cycle, run a class on the clock, keep every record.")), kit.Fill())
	page := kit.Column(look.Gap6, head, ways, kit.NewCard("Before you start", kit.NewProse(caution, 600)), fault)
	return kit.NewShell(container.NewCenter(kit.Wide(1080, kit.Fill(page))))
}

func way(title, text string, do *kit.Button) fyne.CanvasObject {
	return kit.NewCard(title, kit.Column(look.Gap4, kit.Tall(64, kit.Fill(kit.NewProse(text, 240))), kit.Row(0, do, kit.Fill())))
}

func askName(in fyne.Window, then func(string)) {
	name := kit.NewField("Name of your gym")
	kit.Ask(in.Canvas(), kit.Question{
		Title: "What is your gym called?", Body: name, First: name.Keyboard(),
		Actions: []kit.Action{{Label: "Begin", Do: func() bool {
			if strings.TrimSpace(name.Text()) == "" {
				name.SetFault("A gym wants a name. You can change it later.")
				return false
			}
			then(strings.TrimSpace(name.Text()))
			return true
		}}},
	})
}
