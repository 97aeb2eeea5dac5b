package kit

import (
	"image/color"
	"math"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"windlass/internal/mass"
	"windlass/ui/look"
)

// PlateDisc is one disc on a bar's sleeve, as a picture shows it.
type PlateDisc struct {
	Label    string
	Diameter float32     // in shares of the largest disc there is, 0 … 1
	Width    float32     // in the same shares
	Colour   color.NRGBA // without opacity it is the theme's own
	New      bool        // to be put on, the last lifter's plates being there
}

// DiscOf returns the disc of a mass in the unit that is printed on it. Full is
// one of full diameter, 450 mm. With sport it has the colour that weightlifting's
// rules give its mass, if they give it one.
//
// Diameters and widths under the full ones are a guide for the eye, fitted to
// common plates; common practice, no source.
func DiscOf(m mass.Mass, unit mass.Unit, full, sport bool) PlateDisc {
	share := float32(math.Sqrt(min(m.Kilograms(), 25) / 25))
	d := PlateDisc{Label: m.Digits(unit), Diameter: 0.26 + 0.64*share, Width: 0.04 + 0.10*share*share}
	if full {
		d.Diameter = 1
	}
	if sport {
		d.Colour = sportColour(m)
	}
	return d
}

// sportColours are those of the International Weightlifting Federation's rules
// (Technical and Competition Rules and Regulations, 3.3.4): a heavy and a light
// disc share each, so size and label must differ, too.
var sportColours = map[mass.Mass]uint32{
	25 * mass.Kilogram: 0xC8202F, 2500 * mass.Gram: 0xC8202F, 20 * mass.Kilogram: 0x1F4E9E, 2 * mass.Kilogram: 0x1F4E9E,
	15 * mass.Kilogram: 0xE9B824, 1500 * mass.Gram: 0xE9B824, 10 * mass.Kilogram: 0x1E7F43, mass.Kilogram: 0x1E7F43,
	5 * mass.Kilogram: 0xF2F2EE, 500 * mass.Gram: 0xF2F2EE,
}

func sportColour(m mass.Mass) color.NRGBA {
	hex, ok := sportColours[m]
	if !ok {
		return color.NRGBA{}
	}
	return color.NRGBA{R: uint8(hex >> 16), G: uint8(hex >> 8), B: uint8(hex), A: 0xFF}
}

// PlatePicture draws one end of a loaded bar: the sleeve with its discs, the
// first on the inside, each with its mass printed on it. Shape and number say
// everything; colour is an extra. No label is smaller than can be read: where the
// sleeve is short, equal discs close up and one says how many they are.
type PlatePicture struct {
	widget.BaseWidget
	bar    string
	discs  []PlateDisc
	least  fyne.Size
	drawn  []*discFace
	shaft  *canvas.Rectangle
	collar *canvas.Rectangle
	sleeve *canvas.Rectangle
	words  *canvas.Text
	made   *drawing
}

// discFace is the drawing of one disc.
type discFace struct {
	disc *canvas.Rectangle
	text *canvas.Text
	plus *glyph
}

// NewPlatePicture returns an empty sleeve of at least a size, in units.
func NewPlatePicture(width, height float32) *PlatePicture {
	p := &PlatePicture{least: fyne.NewSize(width, height)}
	p.ExtendBaseWidget(p)
	return p
}

// Set shows a bar, such as "20 kg", and the discs on one side of it.
func (p *PlatePicture) Set(bar string, discs []PlateDisc) {
	p.bar, p.discs = bar, discs
	p.Refresh()
}

// Label implements [Labelled]: "20 kg: 25 + 10 + 2.5 a side".
func (p *PlatePicture) Label() string {
	if len(p.discs) == 0 {
		return p.bar
	}
	var labels []string
	for _, d := range p.discs {
		labels = append(labels, d.Label)
	}
	return p.bar + ": " + strings.Join(labels, " + ") + " a side"
}

// Needs returns the width in which every label of the picture can be read at a
// height.
func (p *PlatePicture) Needs(height float32) float32 {
	size := leastLabel
	return p.sleeveAt(height) + widthOfRuns(sizedRuns(p.discs, true, height, size)) + look.Gap2
}

// CreateRenderer implements fyne.Widget.
func (p *PlatePicture) CreateRenderer() fyne.WidgetRenderer {
	p.shaft, p.collar, p.sleeve, p.words = box(2), box(2), box(2), words(look.CaptionSize, false)
	p.drawn = nil
	p.made = &drawing{of: p, place: p.place, measure: func() fyne.Size { return p.least }}
	p.place(p.Size())
	return p.made
}

// place draws the bar at the height of the discs' middle. The label of the bar
// stands on the shaft's left.
func (p *PlatePicture) place(size fyne.Size) {
	left := p.placeShaft(size)
	p.made.objects = append(p.made.objects[:0], p.shaft, p.sleeve, p.collar, p.words)
	runs, label := fitRuns(p.discs, size.Width-left-look.Gap2, size.Height)
	x, next := left, 0
	for _, r := range runs {
		tall := min(size.Height, max(r.Diameter*size.Height, lineOf(label)*0.95))
		high := area{x, (size.Height - tall) / 2, 2 * runEdge, tall}
		for range r.edges {
			p.face(next).show(PlateDisc{Colour: r.Colour}, high, label)
			high.x, next = high.x+runEdge, next+1
		}
		high.w = r.width
		p.face(next).show(r.PlateDisc, high, label)
		x, next = high.x+r.width+discGap, next+1
	}
}

// face is a drawing of a disc, which is shown from now on.
func (p *PlatePicture) face(i int) *discFace {
	for len(p.drawn) <= i {
		p.drawn = append(p.drawn, &discFace{disc: box(3), text: words(look.CaptionSize, true), plus: newGlyph()})
	}
	f := p.drawn[i]
	p.made.objects = append(p.made.objects, f.disc, f.text)
	p.made.objects = append(p.made.objects, f.plus.objects...)
	return f
}

// sleeveAt is where the first disc stands at a height.
func (p *PlatePicture) sleeveAt(height float32) float32 {
	return widthOf(p.bar, labelAt(height)*0.9, false) + look.Gap2 + flangeAt(height) + discGap
}

func flangeAt(height float32) float32 { return max(4, height*0.05) }

// placeShaft draws the bar and returns where the first disc stands.
func (p *PlatePicture) placeShaft(size fyne.Size) float32 {
	pal, h, text := look.Current(), size.Height, labelAt(size.Height)
	p.words.TextSize = text * 0.9
	say(p.words, p.bar, pal[look.Muted])
	label := widthOf(p.bar, text*0.9, false)
	thin, thick := max(3, h*0.06), max(5, h*0.11)
	put(p.words, 0, (h-thin)/2-lineOf(text), label, lineOf(text))
	shaft := label + look.Gap2
	put(p.shaft, 0, (h-thin)/2, shaft, thin)
	put(p.sleeve, shaft, (h-thick)/2, max(0, size.Width-shaft), thick)
	put(p.collar, shaft, (h-2.2*thick)/2, flangeAt(h), 2.2*thick)
	fill(p.shaft, pal[look.Edge])
	outline(p.sleeve, pal[look.Line], pal[look.Edge], look.Hairline)
	fill(p.collar, pal[look.Edge])
	return p.sleeveAt(h)
}

func (f *discFace) show(d PlateDisc, a area, size float32) {
	p := look.Current()
	ground := d.Colour
	if ground.A == 0 {
		ground = mix(p[look.Raised], p[look.Edge], 0.35)
	}
	put(f.disc, a.x, a.y, a.w, a.h)
	outline(f.disc, ground, p[look.Text], look.Hairline)
	f.text.TextSize, f.text.Alignment = size, fyne.TextAlignCenter
	label := d.Label
	if widthOf(label, size, true) > a.w {
		label = ""
	}
	say(f.text, label, look.InkOn(ground))
	put(f.text, a.x, a.y, a.w, a.h)
	f.showPlus(d, a, size, p, ground)
}

// showPlus marks a disc that is to be put on: above it, or on it where it reaches
// the top.
func (f *discFace) showPlus(d PlateDisc, a area, size float32, p look.Palette, ground color.NRGBA) {
	if !d.New {
		f.plus.set(NoShape, p[look.Accent])
		return
	}
	mark := max(7, size*0.6)
	y, ink := a.y-mark-3, p[look.Accent]
	if y < 0 {
		y, ink = a.y+4, look.InkOn(ground)
	}
	f.plus.set(Plus, ink)
	f.plus.put(a.x+(a.w-mark)/2, y, mark)
}
