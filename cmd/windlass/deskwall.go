package main

import "fyne.io/fyne/v2"

// nextWall opens, fills or closes the wall. One that opens is said: on the only screen
// its window may lie behind the desk's.
func (c *console) nextWall() {
	if opened, err := c.wall.next(); c.main.Fail(err) && opened {
		c.main.Say("The wall opens. Ctrl+W fills its screen, or closes a wall that fills it.", false)
	}
}

// heedWall takes the keyboard back when the wall's window was given it. Without a way
// to be asked the coach has to click the desk, and is told once.
func (c *console) heedWall() (letGo func()) {
	mail, err := listenForWall(c.options.db)
	if err != nil {
		fyne.Do(func() { c.main.Fail(err) })
		return func() {}
	}
	go serve(mail, map[string]func() string{
		askFront: func() string { fyne.Do(c.window.RequestFocus); return "" },
	})
	return func() { _ = mail.Close() } // only who asks would miss it
}
