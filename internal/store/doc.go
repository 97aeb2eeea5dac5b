// Package store keeps a gym in one SQLite file.
//
// Most callers need [Open] and then [File.Load] and [File.Write]. The package
// promises that a list of changes is written whole or not at all, that a file
// loads as exactly the book those changes make in memory, that results, bouts
// and overrides are never edited or deleted, and that nothing in use can be
// deleted; the file itself refuses all that, whatever program writes to it. It
// computes nothing, and it does not decide who may write: two desks on one file
// are the caller's to prevent.
package store
