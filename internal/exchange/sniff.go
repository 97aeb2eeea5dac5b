package exchange

import (
	"archive/zip"
	"bytes"
	"errors"
	"fmt"
	"strings"
)

// ErrKind marks a file that is no table: a picture, a letter, an old spreadsheet.
var ErrKind = errors.New("the file is not a CSV or XLSX table")

// kind is what a file is, by its first bytes and not by its name.
type kind int

const (
	textFile kind = iota
	workbook
)

// beginnings are those of kinds that a coach may choose by mistake.
var beginnings = []struct{ bytes, what string }{
	{"%PDF", "it is a PDF; export the table as CSV or XLSX"},
	{"\x89PNG", "it is a PNG picture; export the table as CSV or XLSX"},
	{"\xff\xd8\xff", "it is a JPEG picture; export the table as CSV or XLSX"},
	{"GIF8", "it is a GIF picture; export the table as CSV or XLSX"},
	{"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1", "it is an old XLS workbook or one with a password; save it as XLSX without a password"},
	{"SQLite format 3\x00", "it is a database; choose a table, or restore it as a backup"},
	{"{\\rtf", "it is an RTF letter; save the table as CSV or XLSX"},
	{"BEGIN:V", "it is a calendar or a card; export a table as CSV or XLSX"},
	{"\x1f\x8b", "it is compressed; unpack it first"},
}

// sniff names the kind of a file, or says with ErrKind what it is instead.
func sniff(name string, content []byte) (kind, error) {
	refuse := func(why string) (kind, error) { return 0, fmt.Errorf("read %q: %w: %s", name, ErrKind, why) }
	if len(bytes.TrimSpace(bytes.TrimPrefix(content, []byte(utf8Mark)))) == 0 {
		return refuse("it is empty")
	}
	for _, b := range beginnings {
		if bytes.HasPrefix(content, []byte(b.bytes)) {
			return refuse(b.what)
		}
	}
	if bytes.HasPrefix(content, []byte("PK")) {
		if why := zipFault(content); why != "" {
			return refuse(why)
		}
		return workbook, nil
	}
	if isMarkup(content) {
		return refuse("it is a web page or XML; save it as CSV or XLSX")
	}
	if !hasUTF16Mark(content) && bytes.IndexByte(content, 0) >= 0 {
		return refuse("it is not text; export the table as CSV or XLSX")
	}
	return textFile, nil
}

func isMarkup(content []byte) bool {
	start := bytes.TrimSpace(bytes.TrimPrefix(content, []byte(utf8Mark)))
	start = bytes.ToLower(start[:min(len(start), 64)])
	for _, tag := range []string{"<!doctype", "<html", "<table", "<?xml", "<head", "<body"} {
		if bytes.HasPrefix(start, []byte(tag)) {
			return true
		}
	}
	return false
}

// zipFault says why a zip file is no XLSX workbook.
func zipFault(content []byte) string {
	files, err := zip.NewReader(bytes.NewReader(content), int64(len(content)))
	if err != nil {
		return "it is a damaged XLSX or zip file; save it again"
	}
	for _, f := range files.File {
		switch {
		case strings.EqualFold(f.Name, "xl/workbook.xml"):
			return ""
		case f.Name == "content.xml":
			return "it is an OpenDocument file; save it as XLSX or CSV"
		case strings.HasPrefix(f.Name, "word/"):
			return "it is a DOCX letter; save the table as CSV or XLSX"
		case f.Name == "xl/workbook.bin":
			return "it is a binary workbook; save it as XLSX"
		}
	}
	return "it is a zip file without a workbook; unpack it first"
}
