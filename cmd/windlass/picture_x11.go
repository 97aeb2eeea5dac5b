//go:build linux

package main

import (
	"fmt"
	"image"
	"time"

	"github.com/jezek/xgb"
	"github.com/jezek/xgb/xproto"
)

// takePicture returns what a window of any program shows on the X display: what
// the coach sees, drawn by the real driver.
func takePicture(title string) (image.Image, error) {
	x, err := xgb.NewConn()
	if err != nil {
		return nil, fmt.Errorf("take a picture of %q: %w", title, err)
	}
	defer x.Close()
	window, ok := windowTitled(x, xproto.Setup(x).DefaultScreen(x).Root, title)
	if !ok {
		return nil, fmt.Errorf("take a picture of %q: no window has that title", title)
	}
	raise(x, window)
	img, err := pictureOf(x, window)
	if err != nil {
		return nil, fmt.Errorf("take a picture of %q: %w", title, err)
	}
	return img, nil
}

// windowShown reports whether a window with a title is on the display.
func windowShown(title string) bool {
	x, err := xgb.NewConn()
	if err != nil {
		return false
	}
	defer x.Close()
	_, ok := windowTitled(x, xproto.Setup(x).DefaultScreen(x).Root, title)
	return ok
}

// windowTitled looks through a window's children, the deepest first: a window
// manager puts frames of the same title around them.
func windowTitled(x *xgb.Conn, parent xproto.Window, title string) (xproto.Window, bool) {
	tree, err := xproto.QueryTree(x, parent).Reply()
	if err != nil {
		return 0, false
	}
	for _, child := range tree.Children {
		if w, ok := windowTitled(x, child, title); ok {
			return w, true
		}
	}
	name, err := xproto.GetProperty(x, false, parent, xproto.AtomWmName, xproto.GetPropertyTypeAny, 0, 64).Reply()
	return parent, err == nil && string(name.Value) == title
}

// drawn is how long a window that was covered takes to be drawn again.
const drawn = 250 * time.Millisecond

// raise brings a window before all others: what is covered has no picture.
func raise(x *xgb.Conn, window xproto.Window) {
	for {
		tree, err := xproto.QueryTree(x, window).Reply()
		if err != nil {
			return
		}
		if tree.Parent == tree.Root {
			break
		}
		window = tree.Parent
	}
	xproto.ConfigureWindow(x, window, xproto.ConfigWindowStackMode, []uint32{xproto.StackModeAbove})
	x.Sync()
	time.Sleep(drawn)
}

// pictureOf copies the window within the server first: it is drawn anew sixty times
// a second, and would otherwise change between two strips of one picture.
func pictureOf(x *xgb.Conn, window xproto.Window) (image.Image, error) {
	g, err := xproto.GetGeometry(x, xproto.Drawable(window)).Reply()
	if err != nil {
		return nil, err
	}
	still, err := copyOf(x, window, g)
	if err != nil {
		return nil, err
	}
	defer xproto.FreePixmap(x, still)
	img := image.NewRGBA(image.Rect(0, 0, int(g.Width), int(g.Height)))
	// In strips: one reply of a whole screen is more than some servers send.
	const strip = 128
	for y := 0; y < int(g.Height); y += strip {
		rows := min(strip, int(g.Height)-y)
		reply, err := xproto.GetImage(x, xproto.ImageFormatZPixmap, xproto.Drawable(still),
			0, int16(y), g.Width, uint16(rows), 0xFFFFFFFF).Reply()
		if err != nil {
			return nil, err
		}
		fromBGRX(img.Pix[y*img.Stride:], reply.Data)
	}
	return img, nil
}

// copyOf copies what a window shows, in one request.
func copyOf(x *xgb.Conn, window xproto.Window, g *xproto.GetGeometryReply) (xproto.Pixmap, error) {
	still, err := xproto.NewPixmapId(x)
	if err != nil {
		return 0, err
	}
	pen, err := xproto.NewGcontextId(x)
	if err != nil {
		return 0, err
	}
	if err := xproto.CreatePixmapChecked(x, g.Depth, still, xproto.Drawable(window), g.Width, g.Height).Check(); err != nil {
		return 0, err
	}
	if err := xproto.CreateGCChecked(x, pen, xproto.Drawable(window), 0, nil).Check(); err != nil {
		return still, err
	}
	defer xproto.FreeGC(x, pen)
	return still, xproto.CopyAreaChecked(x, xproto.Drawable(window), xproto.Drawable(still), pen, 0, 0, 0, 0, g.Width, g.Height).Check()
}

// fromBGRX turns the pixels of a 24-bit X display into opaque RGBA.
func fromBGRX(to, from []byte) {
	for i := 0; i+3 < len(from) && i+3 < len(to); i += 4 {
		to[i], to[i+1], to[i+2], to[i+3] = from[i+2], from[i+1], from[i], 0xFF
	}
}
