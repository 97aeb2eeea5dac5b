package kit_test

import (
	"flag"
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"

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
				w := uitest.OpenAs(t, p, fyne.NewSize(1440, 900), page(t))
				uitest.Snapshot(t, w, filepath.Join(*gallery, name+"-"+palette+".png"))
			})
		}
	}
}

var pages = map[string]func(*testing.T) fyne.CanvasObject{
	"controls": controlsPage,
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
