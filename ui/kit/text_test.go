package kit_test

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

// drawn are the texts that a widget puts on the screen.
func drawn(w fyne.Widget) (all []*canvas.Text) {
	for _, o := range test.WidgetRenderer(w).Objects() {
		if t, ok := o.(*canvas.Text); ok && t.Visible() {
			all = append(all, t)
		}
	}
	return all
}

func TestTextIsCutWithAnEllipsis(t *testing.T) {
	uitest.App(t, look.Dark())
	name := kit.NewBody("Maximiliane Vandenberghe").Shrinks(40)
	for width := float32(40); width < 220; width += 7 {
		name.Resize(fyne.NewSize(width, 20))
		got := drawn(name)[0]
		assert.LessOrEqual(t, got.MinSize().Width, width+0.5, "%q at %v", got.Text, width)
		if got.Text != name.Label() {
			assert.True(t, strings.HasSuffix(got.Text, "…"), got.Text)
		}
	}
	assert.Equal(t, "Maximiliane Vandenberghe", name.Label(), "it still reads whole")
}

func TestTextHasAShorterFormBeforeItIsCut(t *testing.T) {
	uitest.App(t, look.Dark())
	name := kit.NewBody("Maximiliane Vandenberghe").Shrinks(40).Or("Maximiliane V.")
	for width, want := range map[float32]string{240: "Maximiliane Vandenberghe", 120: "Maximiliane V."} {
		name.Resize(fyne.NewSize(width, 20))
		assert.Equal(t, want, drawn(name)[0].Text, "at %v", width)
	}
	name.Resize(fyne.NewSize(60, 20))
	assert.True(t, strings.HasSuffix(drawn(name)[0].Text, "…"))
	assert.Equal(t, "Maximiliane Vandenberghe", name.Label(), "it still reads whole")
}

func TestProseBreaksAtSpaces(t *testing.T) {
	uitest.App(t, look.Dark())
	p := kit.NewProse("one two three four five six seven\nnew paragraph", 60)
	p.Resize(fyne.NewSize(120, 200))
	var lines []string
	for _, line := range drawn(p) {
		assert.LessOrEqual(t, line.MinSize().Width, float32(120))
		lines = append(lines, line.Text)
	}
	assert.Greater(t, len(lines), 2)
	assert.Equal(t, "one two three four five six seven new paragraph", strings.Join(lines, " "))
	assert.GreaterOrEqual(t, p.MinSize().Height, float32(len(lines))*look.BodySize)
}

func TestDigitsKeepTheirCells(t *testing.T) {
	uitest.App(t, look.Dark())
	d := kit.NewDigits(40)
	d.Set("11:11", look.Text)
	d.Resize(fyne.NewSize(400, 100))
	before := drawn(d)
	require.Len(t, before, 5)
	at := before[4].Position()
	d.Set("08:08", look.Text)
	after := drawn(d)
	assert.Equal(t, at, after[4].Position(), "figures do not move when they change")
	assert.Same(t, before[0], after[0], "no new objects")
	assert.Equal(t, "08:08", d.Label())
	d.Set("1:02:03", look.Text)
	assert.Len(t, drawn(d), 7)
}

func TestColumnMakesRoomForProse(t *testing.T) {
	uitest.App(t, look.Dark())
	long := kit.NewProse(strings.Repeat("word ", 40), 100)
	last := kit.NewBody("below")
	kit.Column(8, long, last).Resize(fyne.NewSize(200, 600))
	assert.Equal(t, long.Size().Height+8, last.Position().Y)
	assert.Greater(t, long.Size().Height, 5*look.BodySize)
}
