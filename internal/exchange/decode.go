package exchange

import (
	"bytes"
	"encoding/binary"
	"fmt"
	"strings"
	"unicode/utf16"
	"unicode/utf8"
)

const (
	utf8Mark    = "\xef\xbb\xbf"
	utf16Little = "\xff\xfe"
	utf16Big    = "\xfe\xff"
)

func hasUTF16Mark(content []byte) bool {
	return bytes.HasPrefix(content, []byte(utf16Little)) || bytes.HasPrefix(content, []byte(utf16Big))
}

// decode makes text of bytes: UTF-16 with its mark, else UTF-8 with or without
// one, else Windows-1252, which any bytes are. Lines end in "\n" after it.
func decode(name string, content []byte) (string, error) {
	var text string
	switch {
	case hasUTF16Mark(content):
		if len(content)%2 != 0 {
			return "", fmt.Errorf("read %q: %w: its UTF-16 text ends within a letter; save it again", name, ErrKind)
		}
		text = decodeUTF16(content)
	case utf8.Valid(content):
		text = string(bytes.TrimPrefix(content, []byte(utf8Mark)))
	default:
		text = decodeWindows1252(content)
	}
	if strings.ContainsRune(text, 0) {
		return "", fmt.Errorf("read %q: %w: it is not text; export the table as CSV or XLSX", name, ErrKind)
	}
	// A lone carriage return ended a line on old desktops.
	return strings.ReplaceAll(strings.ReplaceAll(text, "\r\n", "\n"), "\r", "\n"), nil
}

func decodeUTF16(content []byte) string {
	var order binary.ByteOrder = binary.LittleEndian
	if bytes.HasPrefix(content, []byte(utf16Big)) {
		order = binary.BigEndian
	}
	units := make([]uint16, 0, len(content)/2)
	for at := 2; at < len(content); at += 2 {
		units = append(units, order.Uint16(content[at:]))
	}
	return string(utf16.Decode(units))
}

// windows1252 is what the bytes 0x80 to 0x9F mean there; all others are those of
// Latin 1. The five unused ones stand for the control codes of the same number,
// as in the WHATWG Encoding Standard, index windows-1252.
var windows1252 = [32]rune{
	'€', 0x81, '‚', 'ƒ', '„', '…', '†', '‡', 'ˆ', '‰', 'Š', '‹', 'Œ', 0x8d, 'Ž', 0x8f,
	0x90, '‘', '’', '“', '”', '•', '–', '—', '˜', '™', 'š', '›', 'œ', 0x9d, 'ž', 'Ÿ',
}

func decodeWindows1252(content []byte) string {
	var b strings.Builder
	for _, c := range content {
		if c >= 0x80 && c < 0xa0 {
			b.WriteRune(windows1252[c-0x80])
		} else {
			b.WriteRune(rune(c))
		}
	}
	return b.String()
}
