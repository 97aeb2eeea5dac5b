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

// Full wraps an object that stands in a [Row] as wide as it needs, but over the
// whole height, such as a card beside a list.
func Full(object fyne.CanvasObject) *fyne.Container { return container.New(fullLayout{}, object) }

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

// Centre keeps an object in the middle of the width, no wider than a width.
func Centre(most float32, object fyne.CanvasObject) *fyne.Container {
	return container.New(centreLayout(most), object)
}

// Scroll shows an object that may be taller than its room.
func Scroll(object fyne.CanvasObject) *container.Scroll { return container.NewVScroll(object) }

// Room is the frame of every room: a title, what can be done beside it, and the
// content below, with the room's margins.
func Room(title string, content fyne.CanvasObject, actions ...fyne.CanvasObject) *fyne.Container {
	top := Row(look.Gap2, append([]fyne.CanvasObject{NewTitle(title), Fill()}, actions...)...)
	return Pad(look.Gap6, Column(look.Gap4, Tall(look.ControlHeight, top), Fill(content)))
}
