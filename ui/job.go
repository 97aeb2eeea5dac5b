package ui

import (
	"context"

	"fyne.io/fyne/v2"

	"windlass/ui/kit"
	"windlass/ui/room"
)

// Long implements room.Host: the work runs on a goroutine of its own behind a
// question that shows how far it is and can end it.
func (w *Window) Long(title string, work func(*room.Job) error, done func(error)) {
	ctx, cancel := context.WithCancel(context.Background())
	bar := kit.NewProgress()
	sheet := kit.Ask(w.window.Canvas(), kit.Question{Title: title, Body: bar, OnCancel: cancel})
	progress := func(finished, of int) { fyne.Do(func() { bar.Set(finished, of) }) }
	go func() {
		err := work(room.NewJob(ctx, progress))
		fyne.Do(func() {
			cancelled := ctx.Err() != nil
			cancel()
			if !cancelled {
				sheet.Close()
			}
			done(err)
		})
	}()
}
