package desk

import (
	"encoding/binary"
	"fmt"

	"windlass/internal/climb"
	"windlass/internal/gym"
)

// plateMemory is what was last said about the plates of a class. Most calls change
// no load, and then the way out that was found, the dearest thing on the floor,
// still holds.
type plateMemory struct {
	of    string
	notes []SharingNote
}

// shortOnce is [Desk.short], worked out anew when what it follows from has changed.
func (d *Desk) shortOnce(c gym.Class, from int) []SharingNote {
	bs := d.Boards()
	board := bs.Board(c)
	_, clashes := bs.clashes(board, from)
	if len(clashes) == 0 {
		return nil
	}
	if of := d.plateKey(board, clashes, from); bs.said.of != of {
		bs.said = plateMemory{of: of, notes: d.short(c, from)}
	}
	return bs.said.notes
}

// plateKey spells all that the notes about plates follow from, beside the
// equipment: who lifts what where, in which turn, and which of it may still be
// changed in the rungs that are short.
func (d *Desk) plateKey(b Board, clashes []clash, from int) string {
	short := make([]bool, len(b.Class.Climb.Rungs))
	for _, x := range clashes {
		short[x.rung] = true
	}
	key := fmt.Append(nil, from, d.book.Settings, len(clashes))
	for _, l := range b.Lifters() {
		key = l.appendKey(key, short)
	}
	return string(key)
}

func (l *BoardLifter) appendKey(key []byte, short []bool) []byte {
	for _, word := range []string{string(l.Athlete), l.Name, l.Bar, l.Lift} {
		key = append(append(key, word...), 0)
	}
	lines := l.Path.Lines
	for _, n := range []int64{int64(l.Station), int64(l.Place), int64(lines.Heavy), int64(lines.Record), int64(lines.Ceiling)} {
		key = binary.AppendVarint(key, n)
	}
	for i, s := range l.Sets {
		key = binary.AppendVarint(key, int64(s.Likely()))
		key = binary.AppendVarint(key, int64(l.Exception(i).Load))
		key = append(key, flag(s.Last), flag(short[i] && (s.State == climb.Planned || s.State == climb.Open)))
	}
	return key
}

func flag(yes bool) byte {
	if yes {
		return 1
	}
	return 0
}
