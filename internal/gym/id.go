package gym

import (
	"encoding/binary"
	"encoding/hex"
	"time"
)

// ID names one row of the file. It is a UUID of version 7 (RFC 9562, section
// 5.7), so rows made on two machines never meet and sort by when they were made.
type ID string

// NewID builds an ID from an instant and ten random bytes, both handed in so
// that a seeded generator makes the same gym twice.
func NewID(at time.Time, random [10]byte) ID {
	var b [16]byte
	binary.BigEndian.PutUint64(b[:8], uint64(at.UnixMilli())<<16)
	copy(b[6:], random[:])
	b[6] = b[6]&0x0f | 0x70
	b[8] = b[8]&0x3f | 0x80
	var text [36]byte
	hex.Encode(text[0:8], b[0:4])
	hex.Encode(text[9:13], b[4:6])
	hex.Encode(text[14:18], b[6:8])
	hex.Encode(text[19:23], b[8:10])
	hex.Encode(text[24:36], b[10:16])
	text[8], text[13], text[18], text[23] = '-', '-', '-', '-'
	return ID(text[:])
}
