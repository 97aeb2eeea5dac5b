package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"windlass/ui/look"
)

// Column stacks objects downwards with a gap between them, each as wide as the
// column. An object wrapped in [Fill] takes the height that is left.
func Column(gap float32, objects ...fyne.CanvasObject) *fyne.Container {
	return container.New(line{gap: gap, down: true}, objects...)
}

// Row sets objects side by side with a gap between them, each as wide as it
// needs and in the middle of the row's height. An object wrapped in [Fill] takes
// the width that is left, and the whole height.
func Row(gap float32, objects ...fyne.CanvasObject) *fyne.Container {
	return container.New(line{gap: gap}, objects...)
}

// Fill wraps an object that takes the room its [Row] or [Column] has left. Two
// of them share it. Fill() alone is an empty stretch.
func Fill(object ...fyne.CanvasObject) *fyne.Container { return container.New(fillLayout{}, object...) }

// Equal sets objects side by side, all of the same width and height.
func Equal(gap float32, objects ...fyne.CanvasObject) *fyne.Container {
	return container.New(equalLayout(gap), objects...)
}

// Pad keeps a margin around an object.
func Pad(margin float32, object fyne.CanvasObject) *fyne.Container {
	return container.New(padLayout(margin), object)
}

// Wide gives an object at least a width, in units.
func Wide(width float32, object fyne.CanvasObject) *fyne.Container {
	return container.New(leastLayout{Width: width}, object)
}

// Tall gives an object at least a height, in units.
func Tall(height float32, object fyne.CanvasObject) *fyne.Container {
	return container.New(leastLayout{Height: height}, object)
}

// Scroll shows an object that may be taller than its room.
func Scroll(object fyne.CanvasObject) *container.Scroll { return container.NewVScroll(object) }

// Room is the frame of every room: a title, what can be done beside it, and the
// content below, with the room's margins.
func Room(title string, content fyne.CanvasObject, actions ...fyne.CanvasObject) *fyne.Container {
	top := Row(look.Gap2, append([]fyne.CanvasObject{NewTitle(title), Fill()}, actions...)...)
	return Pad(look.Gap6, Column(look.Gap4, Tall(look.ControlHeight, top), Fill(content)))
}

// line is the layout of rows and columns.
type line struct {
	gap  float32
	down bool
}

// along and across turn a size into this line's own directions and back.
func (l line) along(s fyne.Size) float32 {
	if l.down {
		return s.Height
	}
	return s.Width
}

func (l line) across(s fyne.Size) float32 {
	if l.down {
		return s.Width
	}
	return s.Height
}

// MinSize implements fyne.Layout.
func (l line) MinSize(objects []fyne.CanvasObject) fyne.Size {
	var along, across float32
	for _, o := range objects {
		if !o.Visible() {
			continue
		}
		least := o.MinSize()
		along += l.along(least)
		across = max(across, l.across(least))
	}
	along += l.gap * float32(max(visible(objects)-1, 0))
	if l.down {
		return fyne.NewSize(across, along)
	}
	return fyne.NewSize(along, across)
}

// Layout implements fyne.Layout.
func (l line) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	if l.down {
		widen(objects, size.Width)
	}
	share := l.share(objects, size)
	at := float32(0)
	for _, o := range objects {
		if !o.Visible() {
			continue
		}
		length := l.along(o.MinSize())
		if isFill(o) {
			length += share
		}
		l.set(o, at, length, size)
		at += length + l.gap
	}
}

// widen gives a column's objects their width before they are measured: prose
// knows its height only once it knows its width.
func widen(objects []fyne.CanvasObject, width float32) {
	for _, o := range objects {
		if o.Visible() && !isFill(o) && o.Size().Width != width {
			o.Resize(fyne.NewSize(width, o.MinSize().Height))
		}
	}
}

// share is what each filling object gets beyond its least size.
func (l line) share(objects []fyne.CanvasObject, size fyne.Size) float32 {
	n := 0
	for _, o := range objects {
		if o.Visible() && isFill(o) {
			n++
		}
	}
	if n == 0 {
		return 0
	}
	return max(0, (l.along(size)-l.along(l.MinSize(objects)))/float32(n))
}

// set places one object. In a row it stands in the middle of the height.
func (l line) set(o fyne.CanvasObject, at, length float32, size fyne.Size) {
	switch {
	case l.down:
		put(o, 0, at, size.Width, length)
	case isFill(o):
		put(o, at, 0, length, size.Height)
	default:
		height := min(o.MinSize().Height, size.Height)
		put(o, at, (size.Height-height)/2, length, height)
	}
}

func isFill(o fyne.CanvasObject) bool {
	c, ok := o.(*fyne.Container)
	if !ok {
		return false
	}
	_, ok = c.Layout.(fillLayout)
	return ok
}

// fillLayout gives its only object all the room.
type fillLayout struct{}

func (fillLayout) MinSize(objects []fyne.CanvasObject) fyne.Size { return leastOf(objects) }

func (fillLayout) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	for _, o := range objects {
		put(o, 0, 0, size.Width, size.Height)
	}
}

// equalLayout divides the width; hidden objects take none.
type equalLayout float32

func (e equalLayout) MinSize(objects []fyne.CanvasObject) fyne.Size {
	least, n := leastOf(objects), float32(visible(objects))
	return fyne.NewSize(least.Width*n+float32(e)*max(n-1, 0), least.Height)
}

func (e equalLayout) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	n := float32(visible(objects))
	width := (size.Width - float32(e)*(n-1)) / n
	at := float32(0)
	for _, o := range objects {
		if o.Visible() {
			put(o, at, 0, width, size.Height)
			at += width + float32(e)
		}
	}
}

func visible(objects []fyne.CanvasObject) (n int) {
	for _, o := range objects {
		if o.Visible() {
			n++
		}
	}
	return n
}

type padLayout float32

func (p padLayout) MinSize(objects []fyne.CanvasObject) fyne.Size {
	return leastOf(objects).AddWidthHeight(2*float32(p), 2*float32(p))
}

func (p padLayout) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	m := float32(p)
	for _, o := range objects {
		put(o, m, m, size.Width-2*m, size.Height-2*m)
	}
}

type leastLayout fyne.Size

func (l leastLayout) MinSize(objects []fyne.CanvasObject) fyne.Size {
	return leastOf(objects).Max(fyne.Size(l))
}

func (leastLayout) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	fillLayout{}.Layout(objects, size)
}

func leastOf(objects []fyne.CanvasObject) (least fyne.Size) {
	for _, o := range objects {
		if o.Visible() {
			least = least.Max(o.MinSize())
		}
	}
	return least
}
