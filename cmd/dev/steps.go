package main

import (
	"context"
	"fmt"
	"io"
	"strings"
	"sync"
	"time"
)

// heartbeat is how often a step that has printed nothing says that it lives:
// often enough for a reader to wait, seldom enough for a log.
const heartbeat = 20 * time.Second

// A step is one part of a command. Its note is a few words on what it found.
type step struct {
	name string
	must bool // the later steps make no sense when this one fails
	do   func(ctx context.Context) (note string, err error)
}

// walk does the steps in order and tells of each. A failed step does not stop
// the later ones unless it must hold, so that one run reports every fault.
func walk(ctx context.Context, out *printer, list []step) error {
	begun := time.Now()
	var failed []string
	for i, s := range list {
		out.printf("[%d/%d] %s", i+1, len(list), s.name)
		if err := takeStep(ctx, out, s); err != nil {
			failed = append(failed, s.name)
			if s.must || ctx.Err() != nil {
				break
			}
		}
	}
	if ctx.Err() != nil {
		return fmt.Errorf("stopped after %s", short(time.Since(begun)))
	}
	if len(failed) > 0 {
		return fmt.Errorf("failed after %s: %s", short(time.Since(begun)), strings.Join(failed, "; "))
	}
	out.printf("done in %s", short(time.Since(begun)))
	return nil
}

func takeStep(ctx context.Context, out *printer, s step) error {
	begun := time.Now()
	stop := out.beat(heartbeat, begun)
	note, err := s.do(ctx)
	stop()
	switch {
	case err != nil:
		out.printf("      FAILED after %s: %v", short(time.Since(begun)), err)
	case note != "":
		out.printf("      ok, %s: %s", short(time.Since(begun)), note)
	default:
		out.printf("      ok, %s", short(time.Since(begun)))
	}
	return err
}

// short rounds a time to what a reader cares for.
func short(d time.Duration) string {
	if d < 10*time.Second {
		return d.Round(100 * time.Millisecond).String()
	}
	return d.Round(time.Second).String()
}

// A printer writes whole lines and remembers when it last did; it may be used
// from several goroutines.
type printer struct {
	mu   sync.Mutex
	out  io.Writer
	last time.Time
}

func (p *printer) printf(format string, args ...any) {
	p.mu.Lock()
	defer p.mu.Unlock()
	fmt.Fprintf(p.out, format+"\n", args...)
	p.last = time.Now()
}

// beat prints a line whenever nothing else was printed for a while, until the
// returned function is called.
func (p *printer) beat(every time.Duration, begun time.Time) (stop func()) {
	done := make(chan struct{})
	var ended sync.WaitGroup
	ended.Go(func() {
		tick := time.NewTicker(every / 4)
		defer tick.Stop()
		for {
			select {
			case <-done:
				return
			case now := <-tick.C:
				if p.quietFor(now) >= every {
					p.printf("      … %s so far", short(now.Sub(begun)))
				}
			}
		}
	})
	return func() { close(done); ended.Wait() }
}

func (p *printer) quietFor(now time.Time) time.Duration {
	p.mu.Lock()
	defer p.mu.Unlock()
	return now.Sub(p.last)
}
