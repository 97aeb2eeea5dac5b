package main

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"go/format"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
)

// checkFormat is `gofmt -l` without the need for gofmt to be on PATH.
func (s *shop) checkFormat(context.Context) (note string, err error) {
	files, err := goFiles(s.root)
	if err != nil {
		return "", fmt.Errorf("look for Go files: %w", err)
	}
	bad := 0
	for _, file := range files {
		if err := formatFault(file); err != nil {
			bad++
			name, _ := filepath.Rel(s.root, file)
			s.out.printf("      | %s: %v", name, err)
		}
	}
	if bad > 0 {
		return "", fmt.Errorf("%d of %d files are not formatted; to mend it, run gofmt -w on them", bad, len(files))
	}
	return fmt.Sprintf("%d files", len(files)), nil
}

// goFiles leaves out dot folders, which are not part of the module.
func goFiles(root string) (files []string, err error) {
	err = filepath.WalkDir(root, func(path string, entry fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return err
		case entry.IsDir() && path != root && strings.HasPrefix(entry.Name(), "."):
			return filepath.SkipDir
		case !entry.IsDir() && strings.HasSuffix(path, ".go"):
			files = append(files, path)
		}
		return nil
	})
	return files, err
}

func formatFault(file string) error {
	source, err := os.ReadFile(file)
	if err != nil {
		return err
	}
	formatted, err := format.Source(source)
	if err == nil && !bytes.Equal(source, formatted) {
		err = errors.New("not formatted")
	}
	return err
}
