package main

import (
	"context"
	"errors"
	"fmt"
	"slices"
	"time"

	"fyne.io/fyne/v2"

	"windlass/ui/wall"
)

// monitor is a screen that the machine drives.
type monitor struct {
	Name                string
	X, Y, Width, Height int
	Millimetres         int // of its height; 0 where it does not say
	Primary             bool
}

// holds reports whether a point lies on the monitor.
func (m monitor) holds(x, y int) bool {
	return x >= m.X && y >= m.Y && x < m.X+m.Width && y < m.Y+m.Height
}

// byHand is how a coach fills the wall where the program cannot.
const byHand = "Drag this window to the wall, click it and press F to fill the screen."

// errFixed is returned where a program cannot choose where its windows stand.
var errFixed = errors.New("this desktop lets nobody but you place a window")

// How the wall is placed: monitors are looked at every two seconds; a window
// needs a moment to arrive before it fills the screen, and its first frame after
// that may be cut (measured).
const (
	screensEvery = 2 * time.Second
	arriveAfter  = 250 * time.Millisecond
	redrawAfter  = 150 * time.Millisecond
)

// placing keeps the wall's window on its monitor. Its fields belong to Fyne's
// thread.
type placing struct {
	window fyne.Window
	view   *wall.View
	choice string // name of the monitor that the wall belongs on
	begun  bool   // the wall was on its monitor, or there was none
	away   bool   // the wall's monitor was unplugged while it was filled
	fills  bool   // it fills a screen, or is about to
	only   bool   // that is the only one
	notice string // for the coach, at the foot of the wall
}

func newPlacing(w fyne.Window, v *wall.View) *placing {
	return &placing{window: w, view: v, choice: recall(monitorKept)}
}

// full reports whether the wall fills a screen.
func (p *placing) full() bool { return p.window.FullScreen() }

// over reports whether the wall lies over the desk, on the only screen.
func (p *placing) over() bool { return p.fills && p.only }

// run fills the wall's own monitor, if there is one, and then minds that it is
// there.
func (p *placing) run(ctx context.Context) {
	for wait := arriveAfter; ; wait = screensEvery {
		select {
		case <-ctx.Done():
			return
		case <-time.After(wait):
		}
		found, err := monitors()
		fyne.Do(func() { p.mind(found, err) })
	}
}

// mind takes note of the monitors there are.
func (p *placing) mind(found []monitor, err error) {
	if err != nil {
		p.notice = byHand
		return
	}
	p.only = len(found) < 2
	own, ok := wallMonitor(found, p.choice)
	switch {
	case !p.begun && ok:
		p.fill(own)
	case p.full() && p.choice != "" && !named(found, p.choice):
		p.away = true
		p.leave()
		p.moveHome(found)
		p.notice = fmt.Sprintf("The screen %s is gone; the wall returns to it when it is back.", p.choice)
	case p.away && named(found, p.choice):
		p.away, p.notice = false, ""
		p.fill(own)
	}
	p.begun = true
}

// moveHome brings the wall's window to a monitor that is there, once it is a window
// again: what is left of its place may lie beside every screen.
func (p *placing) moveHome(found []monitor) {
	if len(found) == 0 {
		return
	}
	home := found[0]
	time.AfterFunc(arriveAfter, func() {
		fyne.Do(func() { _ = moveTo(p.window, home.X+40, home.Y+40) }) // the notice stands either way
	})
}

func named(found []monitor, name string) bool {
	return slices.ContainsFunc(found, func(m monitor) bool { return m.Name == name })
}

// wallMonitor is the monitor for the wall: the one chosen before, otherwise the
// first beside the primary one. A single monitor is the desk's.
func wallMonitor(found []monitor, choice string) (monitor, bool) {
	if len(found) < 2 {
		return monitor{}, false
	}
	for _, m := range found {
		if m.Name == choice {
			return m, true
		}
	}
	for _, m := range found {
		if !m.Primary {
			return m, true
		}
	}
	return found[1], true
}

// toggle fills the monitor that the window is on, or the wall's own, and leaves
// it again.
func (p *placing) toggle() {
	if p.full() {
		p.leave()
		return
	}
	found, err := monitors()
	at, ok := windowMonitor(p.window, found)
	p.only = len(found) < 2 // or none that can be told
	switch {
	case err == nil && ok && (!at.Primary || len(found) < 2):
		p.fill(at)
	case err == nil && len(found) > 1:
		own, _ := wallMonitor(found, p.choice)
		p.fill(own)
	default:
		p.notice, p.fills = "", true
		p.window.SetFullScreen(true)
	}
	if p.over() {
		p.explain()
	}
}

// A wall that fills the only screen lies over the desk: for the first seconds it
// says how to get back.
const (
	wayBack      = "F or Esc makes this a window again and shows the desk"
	wayBackStays = 10 * time.Second
)

func (p *placing) explain() {
	p.notice = wayBack
	time.AfterFunc(wayBackStays, func() { fyne.Do(p.explained) })
}

func (p *placing) explained() {
	if p.notice == wayBack {
		p.notice = ""
	}
}

// leave makes the wall a window again.
func (p *placing) leave() {
	p.explained()
	p.fills = false
	if p.full() {
		p.window.SetFullScreen(false)
	}
}

// fill moves the window to a monitor, waits until it has arrived and fills it.
func (p *placing) fill(m monitor) {
	p.choice, p.notice = m.Name, ""
	p.view.SetHeight(float64(m.Millimetres))
	if err := p.bring(m); err != nil {
		p.notice = byHand
		if !errors.Is(err, errFixed) {
			p.notice = fmt.Sprintf("The wall cannot be moved to %s (%v). %s", m.Name, err, p.notice)
		}
		return
	}
	p.fills = true
	if !p.only { // the only screen is nobody's choice: it is the desk's when there are two
		_ = keepHere(monitorKept, m.Name) // chosen anew next time, which needs no complaint
	}
	time.AfterFunc(arriveAfter, func() { fyne.Do(func() { p.window.SetFullScreen(true) }) })
	time.AfterFunc(arriveAfter+redrawAfter, func() { fyne.Do(p.window.Content().Refresh) })
}

// bring moves the window to a monitor. On its own it stays where the coach has put it:
// there it comes back to when it leaves the full screen.
func (p *placing) bring(m monitor) error {
	if at, ok := windowMonitor(p.window, []monitor{m}); ok && at == m {
		return nil
	}
	return moveTo(p.window, m.X+40, m.Y+40)
}
