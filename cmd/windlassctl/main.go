// Command windlassctl does without a window what a coach or a script wants done
// without one. Text is for people; -json prints one document with names that do
// not change.
//
// Its commands stand in one table, see [commands]; each group of them has a file.
// It shares every computation with the window and decides nothing itself.
package main

import (
	"context"
	"crypto/rand"
	"os"
	"os/signal"
	"time"

	"windlass/internal/store"
)

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	app := App{
		In: os.Stdin, Out: os.Stdout, Err: os.Stderr,
		Now: time.Now, Random: rand.Reader, DefaultDB: store.DefaultPath,
	}
	status := app.Run(ctx, os.Args[1:])
	stop()
	os.Exit(status)
}
