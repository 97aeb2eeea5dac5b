package kit

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"windlass/ui/look"
)

// keycap is the small drawn key that tells which key does the same.
type keycap struct {
	ground *canvas.Rectangle
	text   *canvas.Text
}

// capHeight is the height of a drawn key.
const capHeight = look.Gap5

func newKeycap() *keycap {
	k := &keycap{ground: box(4), text: words(look.CaptionSize, false)}
	k.text.Alignment = fyne.TextAlignCenter
	return k
}

// width is how wide the key is drawn; nothing without a name.
func (k *keycap) width(name string) float32 {
	if name == "" {
		return 0
	}
	return max(capHeight, widthOf(name, look.CaptionSize, false)+2*5)
}

// put draws the key around a height.
func (k *keycap) put(x, middle, width float32) {
	put(k.ground, x, middle-capHeight/2, width, capHeight)
	put(k.text, x, middle-capHeight/2, width, capHeight)
}

// set names the key and draws it in the colour of the words beside it.
func (k *keycap) set(name string, ink color.NRGBA) {
	say(k.text, name, ink)
	ink.A = 0x90
	outline(k.ground, color.Transparent, ink, look.Hairline)
	shown(k.ground, name != "")
	shown(k.text, name != "")
}
