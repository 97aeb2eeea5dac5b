package store

import (
	"context"
	"database/sql"
	"embed"
	"fmt"
	"io/fs"
	"path"
	"strconv"
	"strings"
)

// applicationID marks our files in the header that every SQLite file has
// (https://www.sqlite.org/fileformat.html, section 1.3): "WDLS" in ASCII.
const applicationID = 0x57444c53

//go:embed migrations/*.sql
var migrations embed.FS

// step brings a file from the version before it to its own.
type step struct {
	version int
	sql     string
}

// steps reads the migrations in order. A file's number is its version; they run
// forward only, from 1, without a gap.
func steps(from fs.FS) ([]step, error) {
	names, err := fs.Glob(from, "migrations/*.sql") // sorted
	if err != nil {
		return nil, err
	}
	var all []step
	for i, name := range names {
		number, _, _ := strings.Cut(path.Base(name), "_")
		version, err := strconv.Atoi(number)
		if err != nil || version != i+1 {
			return nil, fmt.Errorf("read migration %q: it is not number %d; number them without a gap", name, i+1)
		}
		text, err := fs.ReadFile(from, name)
		if err != nil {
			return nil, err
		}
		all = append(all, step{version, string(text)})
	}
	return all, nil
}

// migrate runs the steps over a version, each with its number in one transaction.
func migrate(ctx context.Context, db *sql.DB, all []step, version int) error {
	for _, s := range all[version:] {
		if err := s.run(ctx, db); err != nil {
			return fmt.Errorf("bring it to version %d: %w", s.version, err)
		}
	}
	return nil
}

func (s step) run(ctx context.Context, db *sql.DB) error {
	tx, err := db.BeginTx(ctx, nil)
	if err != nil {
		return err
	}
	defer func() { _ = tx.Rollback() }() // no effect after the commit
	numbers := fmt.Sprintf("PRAGMA application_id = %d; PRAGMA user_version = %d", applicationID, s.version)
	for _, query := range []string{s.sql, numbers} {
		if _, err := tx.ExecContext(ctx, query); err != nil {
			return err
		}
	}
	return tx.Commit()
}

// versionOf reads the two numbers of the header through SQLite, which knows what
// is still in the write-ahead log.
func versionOf(ctx context.Context, db *sql.DB) (application, version int, err error) {
	row := db.QueryRowContext(ctx, "SELECT application_id, user_version FROM pragma_application_id, pragma_user_version")
	err = row.Scan(&application, &version)
	return application, version, err
}
