package kit_test

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/assert"

	"windlass/internal/mass"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

func TestFieldTellsWhatIsTyped(t *testing.T) {
	uitest.App(t, look.Dark())
	var changes []string
	entered := ""
	f := kit.NewField("Name").OnChange(func(s string) { changes = append(changes, s) }).
		OnEnter(func(s string) { entered = s })
	w := uitest.Open(t, kit.Column(8, f))
	uitest.Fill(t, w, "Name", "Ada")
	uitest.Key(t, w, fyne.KeyReturn)
	assert.Equal(t, []string{"A", "Ad", "Ada"}, changes)
	assert.Equal(t, "Ada", entered)

	f.SetFault("There is an Ada already.")
	uitest.See(t, w, "There is an Ada already.")
	uitest.Type(t, w, "m")
	uitest.NotSee(t, w, "There is an Ada already.")
}

func TestFieldKeepsItsHeightWithAFault(t *testing.T) {
	uitest.App(t, look.Dark())
	f := kit.NewField("Name")
	before := f.MinSize()
	f.SetFault("Too long a sentence for so narrow a field, which must not make it wider either.")
	assert.Equal(t, before, f.MinSize())
}

func TestSearchEmptiesOnEscapeAndThenLetsItThrough(t *testing.T) {
	uitest.App(t, look.Dark())
	f := kit.NewSearch("Find an athlete")
	w := uitest.Open(t, kit.Column(8, f))
	escaped := 0
	w.Canvas().SetOnTypedKey(func(k *fyne.KeyEvent) { escaped++ })
	uitest.Fill(t, w, "Find an athlete", "lund")
	uitest.Key(t, w, fyne.KeyEscape)
	assert.Empty(t, f.Text())
	assert.Zero(t, escaped)
	uitest.Key(t, w, fyne.KeyEscape, fyne.KeyF1)
	assert.Equal(t, 2, escaped)
}

// With the keyboard, a field has one ring, its own: Fyne's would stand inside it,
// over the edge of a search's icon.
func TestAFieldHasOneRing(t *testing.T) {
	uitest.App(t, look.Dark())
	f := kit.NewSearch("Find an athlete")
	w := uitest.Open(t, kit.Column(8, f))
	f.Focus()
	rings := 0
	for _, o := range test.LaidOutObjects(w.Canvas().Content()) {
		if r, ok := o.(*canvas.Rectangle); ok && r.Visible() && r.StrokeWidth > 0 && r.StrokeColor == look.Color(look.Focus) {
			rings++
		}
	}
	assert.Equal(t, 1, rings)
}

// Writing in a field keeps letters to itself and lets the window's shortcuts by.
func TestFieldPassesShortcutsOn(t *testing.T) {
	uitest.App(t, look.Dark())
	f := kit.NewField("Name")
	w := uitest.Open(t, kit.Column(8, f))
	found := 0
	ctrlK := &desktop.CustomShortcut{KeyName: fyne.KeyK, Modifier: fyne.KeyModifierControl}
	w.Canvas().AddShortcut(ctrlK, func(fyne.Shortcut) { found++ })
	uitest.Fill(t, w, "Name", "two words")
	uitest.Shortcut(t, w, ctrlK)
	uitest.Shortcut(t, w, &desktop.CustomShortcut{KeyName: fyne.KeyLeft, Modifier: fyne.KeyModifierControl})
	uitest.Type(t, w, "X")
	assert.Equal(t, 1, found)
	assert.Equal(t, "two Xwords", f.Text(), "Ctrl+Left still belongs to the text")
}

// Undo takes writing back first; with nothing written it reaches the records, so
// that Ctrl+Z works right after Enter has emptied the field.
func TestFieldPassesUndoOnWhenNothingIsWritten(t *testing.T) {
	uitest.App(t, look.Dark())
	f := kit.NewField("New result")
	w := uitest.Open(t, kit.Column(8, f))
	heard := ""
	w.Canvas().AddShortcut(&fyne.ShortcutUndo{}, func(fyne.Shortcut) { heard += "undo " })
	w.Canvas().AddShortcut(&fyne.ShortcutRedo{}, func(fyne.Shortcut) { heard += "redo " })
	uitest.Fill(t, w, "New result", "5")
	uitest.Shortcut(t, w, &fyne.ShortcutUndo{})
	assert.Empty(t, f.Text())
	uitest.Shortcut(t, w, &fyne.ShortcutRedo{})
	assert.Equal(t, "5", f.Text())
	assert.Empty(t, heard, "the text had its own to take back")

	f.SetText("")
	uitest.Shortcut(t, w, &fyne.ShortcutUndo{})
	uitest.Shortcut(t, w, &fyne.ShortcutRedo{})
	assert.Equal(t, "undo redo ", heard)
	assert.Empty(t, f.Text())
}

// What an owner has taken and shows again is no writing any more: Ctrl+Z reaches
// the records, and what was typed since comes first.
func TestFieldPassesUndoOnOfWhatWasTaken(t *testing.T) {
	uitest.App(t, look.Dark())
	f := kit.NewField("Reps")
	w := uitest.Open(t, kit.Column(8, f))
	undone := 0
	w.Canvas().AddShortcut(&fyne.ShortcutUndo{}, func(fyne.Shortcut) { undone++ })
	uitest.Fill(t, w, "Reps", "21-15-9")
	f.SetText("21-15-9") // taken
	uitest.Shortcut(t, w, &fyne.ShortcutUndo{})
	assert.Equal(t, "21-15-9", f.Text())
	assert.Equal(t, 1, undone)
	uitest.Type(t, w, "x")
	uitest.Shortcut(t, w, &fyne.ShortcutUndo{})
	assert.Equal(t, "21-15-9", f.Text())
	assert.Equal(t, 1, undone)
}

func TestMassField(t *testing.T) {
	type told struct {
		load mass.Mass
		unit mass.Unit
	}
	for _, c := range []struct {
		name, text string
		want       []told
		fault      string
	}{
		{name: "the field's own unit", text: "102,5", want: []told{{102_500 * mass.Gram, mass.KG}}},
		{name: "the other unit", text: "225 lb", want: []told{{225 * mass.Pound, mass.LB}}},
		{name: "nothing", text: ""},
		{name: "no load", text: "heavy", fault: "not a mass"},
	} {
		t.Run(c.name, func(t *testing.T) {
			uitest.App(t, look.Dark())
			var heard []told
			f := kit.NewMassField("Load", mass.KG).OnMass(func(m mass.Mass, u mass.Unit) { heard = append(heard, told{m, u}) })
			w := uitest.Open(t, kit.Column(8, f))
			uitest.Fill(t, w, "Load", c.text)
			uitest.Key(t, w, fyne.KeyReturn, fyne.KeyReturn)
			w.Canvas().Unfocus()
			assert.Equal(t, c.want, heard, "told once")
			assert.Contains(t, f.Fault(), c.fault)
		})
	}
}

func TestMassFieldShowsALoadAsItWasEntered(t *testing.T) {
	uitest.App(t, look.Dark())
	f := kit.NewMassField("Load", mass.KG)
	f.SetMass(185*mass.Pound, mass.LB)
	assert.Equal(t, "185 lb", f.Text())
	got, unit, err := f.Mass()
	assert.NoError(t, err)
	assert.Equal(t, 185*mass.Pound, got)
	assert.Equal(t, mass.LB, unit)
}

func lifts() []kit.Option {
	return []kit.Option{
		{Key: "bs", Text: "Back squat", Note: "squat"},
		{Key: "fs", Text: "Front squat", Note: "squat"},
		{Key: "bp", Text: "Bench press", Note: "press"},
		{Key: "dl", Text: "Deadlift", Note: "hinge"},
	}
}

func TestChoiceByTypingAPart(t *testing.T) {
	for _, c := range []struct {
		name, typed string
		keys        []fyne.KeyName
		want        string
	}{
		{"the first that matches", "squ", []fyne.KeyName{fyne.KeyReturn}, "bs"},
		{"the second that matches", "squ", []fyne.KeyName{fyne.KeyDown, fyne.KeyReturn}, "fs"},
		{"words in any order", "sq fr", []fyne.KeyName{fyne.KeyReturn}, "fs"},
		{"by the note", "hinge", []fyne.KeyName{fyne.KeyReturn}, "dl"},
		{"a whole name, by going on", "deadlift", []fyne.KeyName{fyne.KeyTab}, "dl"},
		{"half a name that only one has, by going on", "dead", []fyne.KeyName{fyne.KeyTab}, "dl"},
		{"Escape takes it back", "squ", []fyne.KeyName{fyne.KeyEscape}, ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			uitest.App(t, look.Dark())
			heard := ""
			ch := kit.NewChoice("Lift", lifts(), func(o kit.Option) { heard = o.Key })
			w := uitest.Open(t, kit.Column(8, ch, kit.NewField("Next")))
			uitest.Fill(t, w, "Lift", c.typed)
			uitest.Key(t, w, c.keys...)
			got, chosen := ch.Chosen()
			assert.Equal(t, c.want, got.Key)
			assert.Equal(t, c.want, heard)
			assert.Equal(t, c.want != "", chosen)
			assert.Equal(t, got.Text, ch.Text(), "the field shows what is chosen")
		})
	}
}

func TestChoiceByPointer(t *testing.T) {
	uitest.App(t, look.Dark())
	ch := kit.NewChoice("Lift", lifts(), nil)
	w := uitest.Open(t, kit.Column(8, ch))
	ch.Focus()
	uitest.See(t, w, "Back squat", "Front squat", "Deadlift")
	uitest.Tap(t, w, "Front squat")
	got, _ := ch.Chosen()
	assert.Equal(t, "fs", got.Key)
	uitest.NotSee(t, w, "Deadlift")
}

// A click into the field marks what stands there, so that typing replaces it; the
// next one puts the cursor between two letters.
func TestClickingIntoAChoiceMarksItsText(t *testing.T) {
	uitest.App(t, look.Dark())
	ch := kit.NewChoice("Lift", lifts(), nil)
	ch.Set("dl")
	w := uitest.Open(t, kit.Column(8, ch))
	line := ch.Keyboard().(fyne.CanvasObject)
	at := fyne.CurrentApp().Driver().AbsolutePositionForObject(line).AddXY(20, line.Size().Height/2)
	uitest.TapAt(w, at)
	uitest.Type(t, w, "back")
	assert.Equal(t, "back", ch.Text())
	uitest.TapAt(w, at)
	uitest.Type(t, w, "s")
	assert.Len(t, ch.Text(), len("backs"))
}

// Leaving the list with the pointer, after the keyboard went elsewhere, ends it.
func TestChoiceLeftWithThePointer(t *testing.T) {
	uitest.App(t, look.Dark())
	ch := kit.NewChoice("Lift", lifts(), nil)
	ch.Set("dl")
	w := uitest.Open(t, kit.Column(8, ch))
	uitest.Fill(t, w, "Lift", "squ")
	uitest.Hover(t, w, "Back squat")
	w.Canvas().Unfocus()
	uitest.See(t, w, "Front squat")
	uitest.Leave(w)
	uitest.NotSee(t, w, "Front squat")
	assert.Equal(t, "squ", ch.Text())
	assert.Contains(t, ch.Fault(), "More than one")
	_, chosen := ch.Chosen()
	assert.False(t, chosen)
}

// A field that is left takes a text that names one choice, and keeps any other to be
// mended: what is decided is what can be read in it.
func TestChoiceThatIsLeft(t *testing.T) {
	for _, c := range []struct {
		name, typed, want, fault string
	}{
		{"the bare number of a load", "50", "50 kg", ""},
		{"a number that another one begins with", "5", "5 kg", ""},
		{"without its space", "50KG", "50 kg", ""},
		{"a number that is a part of one only", "0", "", "Nothing"},
		{"a load that nobody owns", "63", "", "Nothing"},
		{"the chance beside a load", "97", "", "Nothing"},
		{"what all are called", "kg", "", "More than one"},
		{"nothing at all", "", "60 kg", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			uitest.App(t, look.Dark())
			ch := kit.NewChoice("Load", []kit.Option{{Key: "1", Text: "5 kg"}, {Key: "2", Text: "50 kg", Note: "mid, 97 %"}, {Key: "3", Text: "60 kg"}}, nil)
			ch.Set("3")
			w := uitest.Open(t, kit.Column(8, ch, kit.NewField("Next")))
			uitest.Fill(t, w, "Load", c.typed)
			uitest.Key(t, w, fyne.KeyTab)
			got, chosen := ch.Chosen()
			assert.Equal(t, c.want, got.Text)
			assert.Equal(t, c.fault == "", chosen)
			if c.fault == "" {
				assert.Empty(t, ch.Fault())
				assert.Equal(t, c.want, ch.Text())
				return
			}
			assert.Contains(t, ch.Fault(), c.fault)
			assert.Equal(t, c.typed, ch.Text(), "it can be mended")
			ch.SetFault("Choose one.")
			_, chosen = ch.Chosen()
			assert.False(t, chosen, "whatever is said of it")
			ch.Set("3")
			assert.Empty(t, ch.Fault())
			assert.Equal(t, "60 kg", ch.Text())
		})
	}
}

func TestFieldHidesASecret(t *testing.T) {
	uitest.App(t, look.Dark())
	f := kit.NewField("Passcode").Secret()
	w := uitest.Open(t, kit.Column(8, f))
	uitest.Fill(t, w, "Passcode", "4711")
	uitest.NotSee(t, w, "4711")
	assert.Equal(t, "4711", f.Text())
}

func TestChoiceSaysWhenNothingMatches(t *testing.T) {
	uitest.App(t, look.Dark())
	ch := kit.NewChoice("Lift", lifts(), nil)
	ch.Set("dl")
	w := uitest.Open(t, kit.Column(8, ch))
	uitest.Fill(t, w, "Lift", "rowing")
	uitest.See(t, w, "Nothing here is called that.")
	uitest.NotSee(t, w, "Front squat", "Nothing is called that")
	uitest.Key(t, w, fyne.KeyReturn)
	assert.NotEmpty(t, ch.Fault())
	w.Canvas().Unfocus()
	assert.Equal(t, "rowing", ch.Text())
	uitest.Fill(t, w, "Lift", "")
	w.Canvas().Unfocus()
	assert.Equal(t, "Deadlift", ch.Text())
	assert.Empty(t, ch.Fault())
}
