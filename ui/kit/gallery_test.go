package kit_test

import (
	"errors"
	"flag"
	"fmt"
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"

	"windlass/internal/mass"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

var gallery = flag.String("gallery", "", "folder to write pictures of every widget to")

// The gallery shows every widget in both palettes, for a person to look at:
//
//	go test ./ui/kit -run Gallery -gallery /tmp/gallery
func TestGallery(t *testing.T) {
	if *gallery == "" {
		t.Skip("for looking at: run with -gallery DIR")
	}
	for palette, p := range map[string]look.Palette{"dark": look.Dark(), "light": look.Light()} {
		for name, page := range pages {
			t.Run(name+"-"+palette, func(t *testing.T) {
				uitest.App(t, p)
				w := uitest.OpenAs(t, p, fyne.NewSize(1440, 900), page.content(t))
				if page.then != nil {
					page.then(t, w)
				}
				uitest.Snapshot(t, w, filepath.Join(*gallery, name+"-"+palette+".png"))
			})
		}
	}
}

// page is one picture: what is shown, and what is done before it is taken.
type page struct {
	content func(*testing.T) fyne.CanvasObject
	then    func(*testing.T, *uitest.Window)
}

var pages = map[string]page{
	"controls": {content: controlsPage},
	"fields": {content: fieldsPage, then: func(t *testing.T, w *uitest.Window) {
		uitest.Fill(t, w, "Lift", "squ")
		uitest.Hover(t, w, "Add athlete")
	}},
	"question": {content: fieldsPage, then: func(t *testing.T, w *uitest.Window) {
		kit.Ask(w.Canvas(), kit.Question{
			Title: "Void this result?", Text: "The result stays in the history and is marked void. Records that rested on it fall back to the result before.",
			Body:    kit.NewField("Reason"),
			Actions: []kit.Action{{Label: "Void it", Danger: true}},
		})
	}},
}

func fieldsPage(*testing.T) fyne.CanvasObject {
	name, bad, off := kit.NewField("Name"), kit.NewMassField("Load", mass.KG), kit.NewField("Switched off")
	name.SetText("Ada Lund")
	name.SetNote("As it stands on the wall.")
	bad.SetText("12x")
	bad.SetFault("Could not read load \"12x\": the unit is not kg or lb.")
	off.SetText("cannot be changed")
	off.Able(false)
	notice, failed := kit.NewNotice(), kit.NewNotice()
	notice.Say("Back squat 5 × 142.5 kg for Ada Lund: a record, 102.5 %.", func() {})
	failed.Fail(errors.New("open roster: the file has no column for names; rename one, or choose it below"))
	bar := kit.NewProgress()
	bar.Set(3400, 10000)
	rail := kit.Column(0)
	for i, room := range []string{"Today", "Roster", "Cycle", "Floor", "Handouts", "Gym"} {
		item := kit.NewRailItem(room, fmt.Sprint("Ctrl+", i+1), nil)
		item.Here(i == 1)
		rail.Add(item)
	}
	form := kit.Column(look.Gap2, kit.Equal(look.Gap4, name, bad), kit.Equal(look.Gap4, kit.NewChoice("Lift", lifts(), nil), off),
		kit.NewField("Notes").Lines(3), kit.NewSearch("Find an athlete, a day, an action"))
	content := kit.Equal(look.Gap6,
		kit.Column(look.Gap6, kit.NewCard("Fields", form), kit.NewCard("Progress", bar),
			kit.NewPanel(kit.Column(0, notice, kit.NewRule(), failed))),
		kit.NewPanel(kit.NewEmpty("No athletes yet", "Bring a roster file as you have it, or add the first athlete by hand. Nothing leaves this computer.",
			kit.NewButton("Import a roster", nil).Primary(), kit.NewButton("Add athlete", nil).Tip("Add one athlete by hand (A)"))))
	return kit.Row(0, kit.Fill(kit.Row(0, kit.Fill(kit.Wide(0, kit.NewPanel(rail))), kit.Wide(1220, kit.Room("Fields", content)))))
}

func controlsPage(*testing.T) fyne.CanvasObject {
	clock := kit.NewDigits(96)
	clock.Set("12:34", look.Text)
	off := kit.NewButton("Switched off", nil)
	off.Disable()
	buttons := kit.Column(look.Gap3,
		kit.Row(look.Gap2, kit.NewButton("Start the clock", nil).Primary().Key("S"),
			kit.NewButton("Next rung", nil).Key("N"), kit.NewButton("Hold", nil).Key("Space")),
		kit.Row(look.Gap2, kit.NewButton("Void this result", nil).Danger(), off,
			kit.NewButton("Add", nil).Mark(kit.Plus), kit.NewButton("Undo", nil).Plain().Key("Ctrl+Z")),
		kit.Row(look.Gap2, kit.NewChip("Powerlifting", kit.NoShape, look.Text),
			kit.NewChip("Estimate", kit.Diamond, look.Muted), kit.NewChip("Record", kit.Up, look.Good),
			kit.NewChip("Over the ceiling", kit.Warning, look.Warn), kit.NewChip("Missed", kit.Cross, look.Bad)),
		kit.Row(look.Gap4, kit.NewSegmented([]string{"kg", "lb"}, 0, nil),
			kit.NewSegmented([]string{"Powerlifting", "Strongman", "Weightlifting"}, 1, nil)),
		kit.Row(look.Gap4, kit.NewToggle("Show names on the wall", true, nil), kit.NewToggle("Sport colours", false, nil)),
	)
	var shapes []fyne.CanvasObject
	for s := kit.Ring; s <= kit.Chevron; s++ {
		shapes = append(shapes, kit.Column(4, kit.NewMark(s, look.Accent, 24), kit.NewCaption(s.String()).Align(fyne.TextAlignCenter)))
	}
	prose := kit.NewProse("Training advice is general. Screen people before they start, use spotters and safety arms, and stop on pain. Defer to a doctor, to licensed practice and to local rules.", 200)
	left := kit.Column(look.Gap6,
		kit.NewCard("Clock", kit.Tall(160, clock), kit.NewChip("Rung 5 of 9", kit.Half, look.ZoneWorking)),
		kit.NewCard("Buttons, chips, choices", buttons, kit.NewButton("More", nil).Plain()),
		kit.NewCard("Shapes", kit.Row(look.Gap4, shapes...)),
	)
	right := kit.Column(look.Gap6,
		kit.NewCard("Text", kit.Column(look.Gap2, kit.NewNumber("142.5 kg"), kit.NewBody("Body text: back squat, five reps"),
			kit.NewStrong("Strong text"), kit.NewCaption("Caption: from 3 March, estimate"), kit.NewRule(), prose)),
	)
	return kit.Room("Gallery", kit.Row(look.Gap6, kit.Fill(left), kit.Fill(right)),
		kit.NewButton("Import", nil), kit.NewButton("Add athlete", nil).Primary().Key("A"))
}
