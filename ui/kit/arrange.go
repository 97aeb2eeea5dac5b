package kit

import "fyne.io/fyne/v2"

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
	case isFill(o), isFull(o):
		put(o, at, 0, length, size.Height)
	default:
		height := min(o.MinSize().Height, size.Height)
		put(o, at, (size.Height-height)/2, length, height)
	}
}

func isFill(o fyne.CanvasObject) bool { return hasLayout[fillLayout](o) }

func isFull(o fyne.CanvasObject) bool { return hasLayout[fullLayout](o) }

func hasLayout[L fyne.Layout](o fyne.CanvasObject) bool {
	c, ok := o.(*fyne.Container)
	if !ok {
		return false
	}
	_, ok = c.Layout.(L)
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

// fullLayout is fillLayout that takes no more width than it needs.
type fullLayout struct{ fillLayout }

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

type centreLayout float32

func (centreLayout) MinSize(objects []fyne.CanvasObject) fyne.Size { return leastOf(objects) }

func (c centreLayout) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	width := min(float32(c), size.Width)
	for _, o := range objects {
		put(o, (size.Width-width)/2, 0, width, size.Height)
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
