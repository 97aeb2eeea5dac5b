package main

import (
	"errors"
	"fmt"
	"syscall"
	"unsafe"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver"
)

var (
	user32              = syscall.NewLazyDLL("user32.dll")
	gdi32               = syscall.NewLazyDLL("gdi32.dll")
	enumDisplayMonitors = user32.NewProc("EnumDisplayMonitors")
	getMonitorInfo      = user32.NewProc("GetMonitorInfoW")
	setWindowPos        = user32.NewProc("SetWindowPos")
	getWindowRect       = user32.NewProc("GetWindowRect")
	createDC            = gdi32.NewProc("CreateDCW")
	deleteDC            = gdi32.NewProc("DeleteDC")
	getDeviceCaps       = gdi32.NewProc("GetDeviceCaps")
)

// rect and monitorInfo are RECT and MONITORINFOEXW of the Windows SDK.
type rect struct{ Left, Top, Right, Bottom int32 }

type monitorInfo struct {
	Size          uint32
	Monitor, Work rect
	Flags         uint32
	Device        [32]uint16
}

// Values of the Windows SDK's winuser.h and wingdi.h.
const (
	monitorIsPrimary = 1
	verticalSize     = 6 // VERTSIZE, millimetres
	keepSize         = 0x0001
	keepOrder        = 0x0004
	keepFocus        = 0x0010
)

// monitors asks Windows which screens it drives.
func monitors() ([]monitor, error) {
	var handles []uintptr
	each := syscall.NewCallback(func(handle, _, _, _ uintptr) uintptr {
		handles = append(handles, handle)
		return 1
	})
	if ok, _, err := enumDisplayMonitors.Call(0, 0, each, 0); ok == 0 {
		return nil, fmt.Errorf("look for screens: %w", err)
	}
	var found []monitor
	for _, handle := range handles {
		info := monitorInfo{Size: uint32(unsafe.Sizeof(monitorInfo{}))}
		if ok, _, _ := getMonitorInfo.Call(handle, uintptr(unsafe.Pointer(&info))); ok != 0 {
			found = append(found, monitorOf(info))
		}
	}
	return found, nil
}

func monitorOf(info monitorInfo) monitor {
	m := monitor{
		Name: syscall.UTF16ToString(info.Device[:]), X: int(info.Monitor.Left), Y: int(info.Monitor.Top),
		Width: int(info.Monitor.Right - info.Monitor.Left), Height: int(info.Monitor.Bottom - info.Monitor.Top),
		Primary: info.Flags&monitorIsPrimary != 0,
	}
	device := uintptr(unsafe.Pointer(&info.Device[0]))
	if dc, _, _ := createDC.Call(device, device, 0, 0); dc != 0 {
		high, _, _ := getDeviceCaps.Call(dc, verticalSize)
		m.Millimetres = int(high)
		_, _, _ = deleteDC.Call(dc)
	}
	return m
}

// moveTo puts a window's corner at a place of the desktop.
func moveTo(w fyne.Window, x, y int) error {
	return onWindows(w, func(handle uintptr) error {
		ok, _, err := setWindowPos.Call(handle, 0, uintptr(x), uintptr(y), 0, 0, keepSize|keepOrder|keepFocus)
		if ok == 0 {
			return err
		}
		return nil
	})
}

// windowMonitor is the monitor that holds the middle of a window.
func windowMonitor(w fyne.Window, found []monitor) (monitor, bool) {
	var r rect
	err := onWindows(w, func(handle uintptr) error {
		if ok, _, err := getWindowRect.Call(handle, uintptr(unsafe.Pointer(&r))); ok == 0 {
			return err
		}
		return nil
	})
	for _, m := range found {
		if err == nil && m.holds(int(r.Left+r.Right)/2, int(r.Top+r.Bottom)/2) {
			return m, true
		}
	}
	return monitor{}, false
}

// onWindows does something with a window by its handle.
func onWindows(w fyne.Window, do func(handle uintptr) error) error {
	native, ok := w.(driver.NativeWindow)
	if !ok {
		return errFixed
	}
	err := errors.New("the window is not open")
	native.RunNative(func(context any) {
		if handle, ok := context.(driver.WindowsWindowContext); ok {
			err = do(handle.HWND)
		}
	})
	return err
}
