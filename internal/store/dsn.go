package store

import (
	"database/sql"
	"net/url"
	"path/filepath"
	"strconv"
	"strings"
	"time"
)

// options are what a test sets otherwise than the program does.
type options struct {
	patience time.Duration // how long a connection waits for another program's lock
	steps    []step
}

func usual() (options, error) {
	all, err := steps(migrations)
	return options{patience: 5 * time.Second, steps: all}, err
}

// latest is the version of the file that the program writes.
func (o options) latest() int { return len(o.steps) }

// connect opens a pool. Every pragma stands in the name, so that every
// connection of the pool has it.
func connect(path string, size int, settings []string) (*sql.DB, error) {
	absolute, err := filepath.Abs(path)
	if err != nil {
		return nil, err
	}
	slashed := filepath.ToSlash(absolute)
	if !strings.HasPrefix(slashed, "/") {
		slashed = "/" + slashed // a drive letter of Windows
	}
	// The URL escapes "?", "#" and "%", which mean something in a URI.
	name := (&url.URL{Scheme: "file", Path: slashed}).String()
	db, err := sql.Open("sqlite", name+"?"+strings.Join(settings, "&"))
	if err != nil {
		return nil, err
	}
	db.SetMaxOpenConns(size)
	db.SetMaxIdleConns(size)
	return db, nil
}

// writing sets up the one connection that writes: a commit is on the disk when
// it returns, a reader never waits, and a writer takes its lock before it reads,
// so that two never wait for each other. Its cache holds the pages of a long list,
// which otherwise go to the disk and come back: a third of the list's time.
func (o options) writing() []string {
	return append(o.building(), pragma("journal_mode", "WAL"), pragma("cache_size", "-32768"))
}

// building is for a file that nobody else can see yet: with no log beside it, it
// can be renamed.
func (o options) building() []string {
	return append(o.always(), pragma("foreign_keys", "1"), pragma("synchronous", "FULL"), "_txlock=immediate")
}

func (o options) reading() []string {
	return append(o.always(), "mode=ro", pragma("query_only", "1"))
}

// always also asks that a misspelt column is an error and no text, and that the
// driver's errors speak of nothing but the fault.
func (o options) always() []string {
	wait := strconv.FormatInt(o.patience.Milliseconds(), 10)
	return []string{pragma("busy_timeout", wait), "_dqs=0", "_error_rc=1"}
}

func pragma(name, value string) string { return "_pragma=" + name + "(" + value + ")" }
