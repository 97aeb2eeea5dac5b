package main

import (
	"errors"
	"fmt"
	"io"
	"log"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver"
	"github.com/jezek/xgb"
	"github.com/jezek/xgb/randr"
	"github.com/jezek/xgb/xproto"
)

// The X library writes to the terminal what it returns as errors, too.
func init() { xgb.Logger = log.New(io.Discard, "", 0) }

// monitors asks the X server which screens it drives. On a Wayland desktop it is
// the one that carries X programs.
func monitors() ([]monitor, error) {
	x, err := xgb.NewConn()
	if err != nil {
		return nil, fmt.Errorf("look for screens: %w", err)
	}
	defer x.Close()
	if err := randr.Init(x); err != nil {
		return nil, fmt.Errorf("look for screens: %w", err)
	}
	root := xproto.Setup(x).DefaultScreen(x).Root
	all, err := randr.GetScreenResourcesCurrent(x, root).Reply()
	if err != nil {
		return nil, fmt.Errorf("look for screens: %w", err)
	}
	primary, err := randr.GetOutputPrimary(x, root).Reply()
	if err != nil {
		return nil, fmt.Errorf("look for screens: %w", err)
	}
	var found []monitor
	for _, output := range all.Outputs {
		if m, ok := monitorOf(x, output, all.ConfigTimestamp); ok {
			m.Primary = output == primary.Output
			found = append(found, m)
		}
	}
	return withPrimary(found), nil
}

// monitorOf describes an output that shows something.
func monitorOf(x *xgb.Conn, output randr.Output, at xproto.Timestamp) (monitor, bool) {
	info, err := randr.GetOutputInfo(x, output, at).Reply()
	if err != nil || info.Connection != randr.ConnectionConnected || info.Crtc == 0 {
		return monitor{}, false
	}
	crtc, err := randr.GetCrtcInfo(x, info.Crtc, at).Reply()
	if err != nil || crtc.Width == 0 {
		return monitor{}, false
	}
	m := monitor{
		Name: string(info.Name), X: int(crtc.X), Y: int(crtc.Y), Width: int(crtc.Width), Height: int(crtc.Height),
		Millimetres: int(info.MmHeight),
	}
	if crtc.Rotation&(randr.RotationRotate90|randr.RotationRotate270) != 0 {
		m.Millimetres = int(info.MmWidth)
	}
	return m, true
}

// withPrimary makes the first screen the primary one where none is.
func withPrimary(found []monitor) []monitor {
	for _, m := range found {
		if m.Primary {
			return found
		}
	}
	if len(found) > 0 {
		found[0].Primary = true
	}
	return found
}

// moveTo puts a window's corner at a place of the desktop.
func moveTo(w fyne.Window, x, y int) error {
	return onX(w, func(c *xgb.Conn, id xproto.Window) error {
		return xproto.ConfigureWindowChecked(c, id, xproto.ConfigWindowX|xproto.ConfigWindowY,
			[]uint32{uint32(int32(x)), uint32(int32(y))}).Check()
	})
}

// windowMonitor is the monitor that holds the middle of a window.
func windowMonitor(w fyne.Window, found []monitor) (monitor, bool) {
	var at monitor
	err := onX(w, func(c *xgb.Conn, id xproto.Window) error {
		size, err := xproto.GetGeometry(c, xproto.Drawable(id)).Reply()
		if err != nil {
			return err
		}
		middle, err := xproto.TranslateCoordinates(c, id, size.Root, int16(size.Width/2), int16(size.Height/2)).Reply()
		if err != nil {
			return err
		}
		for _, m := range found {
			if m.holds(int(middle.DstX), int(middle.DstY)) {
				at = m
			}
		}
		return nil
	})
	return at, err == nil && at.Name != ""
}

// onX does something with a window by its X handle.
func onX(w fyne.Window, do func(*xgb.Conn, xproto.Window) error) error {
	native, ok := w.(driver.NativeWindow)
	if !ok {
		return errFixed
	}
	err := errors.New("the window is not open")
	native.RunNative(func(context any) {
		handle, ok := context.(driver.X11WindowContext)
		if !ok {
			err = errFixed // a Wayland surface
			return
		}
		c, dialled := xgb.NewConn()
		if dialled != nil {
			err = fmt.Errorf("reach the X server: %w", dialled)
			return
		}
		defer c.Close()
		err = do(c, xproto.Window(handle.WindowHandle))
	})
	return err
}
