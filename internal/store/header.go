package store

import (
	"bytes"
	"encoding/binary"
	"errors"
	"fmt"
	"io"
	"io/fs"
)

// The header of an SQLite file, as far as it is the same in every file of ours
// (https://www.sqlite.org/fileformat.html, section 1.3). SQLite itself reads a
// file with some of these changed; to call such a file whole would be wrong.
//
//	 0..15  "SQLite format 3" and a zero byte
//	16..17  page size: a power of two from 512 to 32768, or 1 for 65536
//	18, 19  write and read version: 1 for a rollback journal, 2 for a log
//	20      bytes reserved on a page: 0
//	21..23  payload fractions: 64, 32, 32
//	44..47  schema format: 4
//	52..55  largest root page of a self-vacuuming file: 0
//	56..59  text encoding: 1 for UTF-8
//	64..67  incremental vacuum: 0
//	72..91  reserved: 0
const magic = "SQLite format 3\x00"

const headerSize = 100

// checkHeader refuses what is no file of ours at a glance, and holds the file for
// its header otherwise. The application's number and the version are left to
// SQLite, since they may be in the log.
func checkHeader(verb, path string) (*held, error) {
	h, err := hold(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil, fmt.Errorf("%s %q: %w; make a new gym, or choose another file", verb, path, fs.ErrNotExist)
	case errors.Is(err, fs.ErrPermission):
		return nil, fmt.Errorf("%s %q: %w; allow reading it", verb, path, fs.ErrPermission)
	case err != nil:
		return nil, fault(verb, path, ErrForeign, err.Error())
	}
	if why, kind := h.fault(); kind != nil {
		return nil, errors.Join(fault(verb, path, kind, why), h.release())
	}
	return h, nil
}

// fault says what keeps the held file from being one of ours, and of which kind
// that is; nil for none.
func (h *held) fault() (why string, kind error) {
	header := make([]byte, headerSize)
	n, err := h.files[0].ReadAt(header, 0)
	header = header[:n]
	switch {
	case err != nil && !errors.Is(err, io.EOF):
		return err.Error(), ErrForeign
	case n == 0:
		return "it is empty", ErrForeign
	case !bytes.HasPrefix(header, []byte(magic)):
		return "it does not begin as one", ErrForeign
	}
	if why := headerFault(header); why != "" {
		return why, ErrDamaged
	}
	return "", nil
}

func headerFault(h []byte) string {
	if len(h) < headerSize {
		return "it ends within its header"
	}
	size := binary.BigEndian.Uint16(h[16:])
	switch {
	case size != 1 && (size < 512 || size&(size-1) != 0):
		return "its page size is impossible"
	case h[18] < 1 || h[18] > 2 || h[19] < 1 || h[19] > 2:
		return "its kind of journal is unknown"
	case !bytes.Equal(h[20:24], []byte{0, 64, 32, 32}):
		return "its page layout is unknown"
	case binary.BigEndian.Uint32(h[44:]) != 4 || binary.BigEndian.Uint32(h[56:]) != 1:
		return "its format or text encoding is unknown"
	case binary.BigEndian.Uint32(h[52:]) != 0 || binary.BigEndian.Uint32(h[64:]) != 0 || !allZero(h[72:92]):
		return "its header holds what no file of ours does"
	}
	return ""
}

func allZero(b []byte) bool {
	return len(bytes.Trim(b, "\x00")) == 0
}
