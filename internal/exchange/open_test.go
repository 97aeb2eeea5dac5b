package exchange

import (
	"archive/zip"
	"bytes"
	"encoding/binary"
	"strings"
	"testing"
	"unicode/utf16"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"golang.org/x/text/encoding/charmap"
	"pgregory.net/rapid"
)

func TestKindsAreToldByContent(t *testing.T) {
	for _, c := range []struct{ name, content, want string }{
		{"empty", "", "it is empty"},
		{"blank", " \r\n\t\n", "it is empty"},
		{"a mark alone", utf8Mark, "it is empty"},
		{"a PDF", "%PDF-1.7\n%âãÏÓ", "it is a PDF"},
		{"a PNG", "\x89PNG\r\n\x1a\n\x00\x00\x00\rIHDR", "it is a PNG picture"},
		{"a JPEG", "\xff\xd8\xff\xe0\x00\x10JFIF", "it is a JPEG picture"},
		{"an old workbook", "\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1\x00\x00", "it is an old XLS workbook or one with a password"},
		{"a database", "SQLite format 3\x00\x10\x00", "it is a database"},
		{"a web page", "\n<!DOCTYPE html><table><tr><td>Name", "it is a web page or XML"},
		{"XML", "<?xml version=\"1.0\"?><rows/>", "it is a web page or XML"},
		{"a letter", "{\\rtf1\\ansi Name}", "it is an RTF letter"},
		{"a program", "\x7fELF\x02\x01\x01\x00\x00", "it is not text"},
		{"a torn zip", "PK\x03\x04\x14\x00", "it is a damaged XLSX or zip file"},
		{"an OpenDocument file", zipWith(t, "mimetype", "content.xml"), "it is an OpenDocument file"},
		{"a DOCX", zipWith(t, "[Content_Types].xml", "word/document.xml"), "it is a DOCX letter"},
		{"a binary workbook", zipWith(t, "xl/workbook.bin"), "it is a binary workbook"},
		{"any zip", zipWith(t, "photos/1.jpg"), "it is a zip file without a workbook"},
		{"a workbook of nothing", zipWith(t, "xl/workbook.xml"), "its workbook is damaged"},
		{"half a letter of UTF-16", utf16Little + "N\x00a", "ends within a letter"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := Open(t.Context(), "roster.csv", strings.NewReader(c.content))
			require.ErrorIs(t, err, ErrKind)
			assert.ErrorContains(t, err, `read "roster.csv"`)
			assert.ErrorContains(t, err, c.want)
		})
	}
}

func zipWith(t *testing.T, names ...string) string {
	t.Helper()
	var b bytes.Buffer
	w := zip.NewWriter(&b)
	for _, name := range names {
		_, err := w.Create(name)
		require.NoError(t, err)
	}
	require.NoError(t, w.Close())
	return b.String()
}

const accents = "Name;Größe\nÉmilie;½\n"

func TestEncodings(t *testing.T) {
	windows, err := charmap.Windows1252.NewEncoder().String(accents)
	require.NoError(t, err)
	for name, content := range map[string]string{
		"UTF-8":                accents,
		"UTF-8 with a mark":    utf8Mark + accents,
		"UTF-16 little-endian": encodeUTF16(binary.LittleEndian, "\ufeff"+accents),
		"UTF-16 big-endian":    encodeUTF16(binary.BigEndian, "\ufeff"+accents),
		"Windows-1252":         windows,
		"old line ends":        strings.ReplaceAll(accents, "\n", "\r"),
		"line ends of Windows": strings.ReplaceAll(accents, "\n", "\r\n"),
	} {
		got, err := decode("x", []byte(content))
		require.NoError(t, err, name)
		assert.Equal(t, accents, got, name)
	}
}

func encodeUTF16(order binary.AppendByteOrder, text string) string {
	var b []byte
	for _, u := range utf16.Encode([]rune(text)) {
		b = order.AppendUint16(b, u)
	}
	return string(b)
}

// Against the independent table of golang.org/x/text, which has the replacement
// character for the five bytes that the WHATWG standard reads as control codes.
func TestWindows1252AgainstAnotherTable(t *testing.T) {
	for b := range 256 {
		got, size := utf8.DecodeRuneInString(decodeWindows1252([]byte{byte(b)}))
		require.Positive(t, size)
		want := charmap.Windows1252.DecodeByte(byte(b))
		if want == utf8.RuneError {
			want = rune(b)
		}
		assert.Equal(t, want, got, "byte %#x", b)
	}
}

func TestMarksBetweenCells(t *testing.T) {
	for _, c := range []struct {
		text string
		want [][]string
	}{
		{"a,b\n1,2\n", [][]string{{"a", "b"}, {"1", "2"}}},
		{"a;b\n1,5;2,5\n", [][]string{{"a", "b"}, {"1,5", "2,5"}}},
		{"a\tb\n1,5\t2;5\n", [][]string{{"a", "b"}, {"1,5", "2;5"}}},
		{"a (x, y);b;c\n1;2;3\n", [][]string{{"a (x, y)", "b", "c"}, {"1", "2", "3"}}},
		{"\"a,b,c\";d\n1;2\n", [][]string{{"a,b,c", "d"}, {"1", "2"}}}, // inside quotes they do not count
		{"sep=;\na,b;c\n", [][]string{{"a,b", "c"}}},
		{"SEP=,\na;b,c\n", [][]string{{"a;b", "c"}}},
		{"Roster\n\na;b\n", [][]string{{"Roster"}, {"a", "b"}}},
		{"a\n1\n", [][]string{{"a"}, {"1"}}},
		{"a,b\n\"line 1\nline 2\",\"say \"\"no\"\"\"\n", [][]string{{"a", "b"}, {"line 1\nline 2", `say "no"`}}}, // RFC 4180
		{"a,b\n1\n1,2,3\n", [][]string{{"a", "b"}, {"1"}, {"1", "2", "3"}}},                                      // short and long rows
	} {
		rows, err := parseCSV("x", c.text)
		require.NoError(t, err, c.text)
		var got [][]string
		for _, r := range rows {
			got = append(got, r.cells)
		}
		assert.Equal(t, c.want, got, c.text)
	}
}

func TestRowsKnowTheirLine(t *testing.T) {
	rows, err := parseCSV("x", "sep=,\na,b\n\n\"1\n2\",x\ny,z\n")
	require.NoError(t, err)
	var lines []int
	for _, r := range rows {
		lines = append(lines, r.line)
	}
	assert.Equal(t, []int{2, 4, 6}, lines)
	_, err = parseCSV("x", "sep=,\na,b\n1,\"2\n")
	assert.ErrorContains(t, err, `read "x", line 3`)
}

// What a spreadsheet would run is made text, and any text comes back as it was.
func TestGuard(t *testing.T) {
	for text, want := range map[string]string{
		"=1+2": "'=1+2", "+49": "'+49", "-5": "'-5", "@a": "'@a", "\tx": "'\tx",
		"'=1": "''=1", "Ann": "Ann", "'Tis": "'Tis", "": "", "5-3": "5-3", "'": "'",
	} {
		assert.Equal(t, want, guard(text), text)
	}
	rapid.Check(t, func(rt *rapid.T) {
		text := rapid.StringOfN(rapid.RuneFrom([]rune("'=+-@\t\ra")), 0, 6, -1).Draw(rt, "text")
		require.Equal(rt, []string{text}, unguard([]string{guard(text)}))
		if g := guard(text); g != "" {
			require.NotContains(rt, formulaSigns, g[:1])
		}
	})
}
