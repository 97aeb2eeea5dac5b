package kit_test

import (
	"image/color"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"windlass/ui/kit"
)

// block is a plain object of a least size.
func block(w, h float32) *canvas.Rectangle {
	r := canvas.NewRectangle(color.Black)
	r.SetMinSize(fyne.NewSize(w, h))
	return r
}

func TestRowCentresAndFills(t *testing.T) {
	a, b, c := block(20, 10), block(5, 5), block(30, 40)
	row := kit.Row(8, a, kit.Fill(b), c)
	assert.Equal(t, fyne.NewSize(20+8+5+8+30, 40), row.MinSize())
	row.Resize(fyne.NewSize(200, 50))
	assert.Equal(t, fyne.NewPos(0, 20), a.Position(), "in the middle of the height")
	assert.Equal(t, fyne.NewSize(20, 10), a.Size(), "no taller than it needs")
	assert.Equal(t, fyne.NewSize(200-20-30-16, 50), b.Size(), "all that is left")
	assert.Equal(t, float32(170), c.Position().X)
}

func TestHiddenObjectsTakeNoRoom(t *testing.T) {
	a, b, c := block(20, 10), block(40, 10), block(30, 10)
	row := kit.Row(8, a, b, c)
	b.Hide()
	assert.Equal(t, float32(20+8+30), row.MinSize().Width)
	row.Resize(row.MinSize())
	assert.Equal(t, float32(28), c.Position().X)
	even := kit.Equal(10, a, b, c)
	even.Resize(fyne.NewSize(110, 10))
	assert.Equal(t, float32(50), a.Size().Width)
}

func TestFullIsAsWideAsItNeedsOverTheWholeHeight(t *testing.T) {
	side := block(80, 10)
	kit.Row(8, kit.Fill(block(5, 5)), kit.Full(side)).Resize(fyne.NewSize(300, 200))
	assert.Equal(t, fyne.NewSize(80, 200), side.Size())
}

func TestCentreIsNoWiderThanItMayBe(t *testing.T) {
	o := block(50, 10)
	box := kit.Centre(100, o)
	box.Resize(fyne.NewSize(300, 20))
	assert.Equal(t, fyne.NewSize(100, 20), o.Size())
	assert.Equal(t, float32(100), o.Position().X)
	box.Resize(fyne.NewSize(80, 20))
	assert.Equal(t, float32(80), o.Size().Width)
}

// In any row and column with room to spare, objects keep their least sizes and
// the gap, none overlap, and a filling one takes the rest exactly.
func TestLinesAreExact(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		gap := rapid.Float32Range(0, 20).Draw(r, "gap")
		sizes := rapid.SliceOfN(rapid.Float32Range(0, 60), 1, 8).Draw(r, "sizes")
		fills := rapid.IntRange(0, len(sizes)-1).Draw(r, "which fills")
		down := rapid.Bool().Draw(r, "down")
		var inner, placed []fyne.CanvasObject
		for i, s := range sizes {
			o := fyne.CanvasObject(block(s, s))
			inner = append(inner, o)
			if i == fills {
				o = kit.Fill(o)
			}
			placed = append(placed, o)
		}
		box, along := kit.Row(gap, placed...), func(p fyne.Position) float32 { return p.X }
		if down {
			box, along = kit.Column(gap, placed...), func(p fyne.Position) float32 { return p.Y }
		}
		box.Resize(fyne.NewSize(900, 900))
		at := float32(0)
		for i, o := range placed {
			length := along(fyne.NewPos(o.Size().Width, o.Size().Height))
			if d := along(o.Position()) - at; d > 0.01 || d < -0.01 {
				r.Fatalf("object %d begins at %v, not %v", i, along(o.Position()), at)
			}
			if least := along(fyne.NewPos(inner[i].MinSize().Width, inner[i].MinSize().Height)); i != fills && length != least {
				r.Fatalf("object %d is %v long, not %v", i, length, least)
			}
			at += length + gap
		}
		if end := at - gap; end < 899.9 || end > 900.1 {
			r.Fatalf("the line ends at %v", end)
		}
	})
}
