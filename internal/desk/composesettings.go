package desk

import (
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"

	"windlass/internal/gym"
)

// changeComposing keeps what the composer goes by as change leaves it.
func (d *Desk) changeComposing(change func(*gym.Composing) error) error {
	return d.ChangeSettings(func(s *gym.Settings) error {
		by := s.ComposeBy()
		if by.Formats = maps.Clone(by.Formats); by.Formats == nil {
			by.Formats = map[int][]gym.Format{} // a file may say anything
		}
		if err := change(&by); err != nil {
			return err
		}
		s.Composing = by
		return nil
	})
}

// KeepWindow keeps how long conditioning is to take a usual athlete, in minutes as
// a coach writes them.
func (d *Desk) KeepWindow(shortest, longest string) error {
	return d.changeComposing(func(c *gym.Composing) (err error) {
		c.Shortest, c.Longest, err = ReadWindow(shortest, longest)
		return err
	})
}

// KeepApart keeps after how many days a movement may come again.
func (d *Desk) KeepApart(text string) error {
	return d.changeComposing(func(c *gym.Composing) (err error) {
		c.Apart, err = ReadCount(text)
		return err
	})
}

// KeepFormats keeps the formats of conditioning for the days of a rep count.
func (d *Desk) KeepFormats(reps int, formats []gym.Format) error {
	return d.changeComposing(func(c *gym.Composing) error {
		c.Formats[reps] = slices.Clone(formats)
		return nil
	})
}

// KeepUsualComposing goes back to what is usual, as if nobody had chosen.
func (d *Desk) KeepUsualComposing() error {
	return d.ChangeSettings(func(s *gym.Settings) error {
		s.Composing = gym.Composing{}
		return nil
	})
}

// FormatsOf are the formats for the days of a rep count; Any is that the coach's
// table lacks it, so that every format of the table will do.
type FormatsOf struct {
	Reps    int
	Formats []gym.Format
	Any     bool
}

// FormatTable returns the coach's table from the rep counts of main days to the
// formats of conditioning, in the order of the rep counts.
func (d *Desk) FormatTable() []FormatsOf {
	by := d.book.Settings.ComposeBy()
	var rows []FormatsOf
	for _, reps := range d.book.Settings.DayReps {
		formats, ok := by.Formats[reps]
		rows = append(rows, FormatsOf{reps, formats, !ok})
	}
	return rows
}

// WindowText writes a window as a coach reads it, each end in minutes: "8", "15".
func WindowText(seconds int) string {
	if seconds%60 != 0 {
		return clockText(seconds)
	}
	return strconv.Itoa(seconds / 60)
}

// ReadWindow reads the two ends of a window, in minutes or as 7:30.
func ReadWindow(shortest, longest string) (from, to int, err error) {
	if from, err = readEnd(shortest); err != nil {
		return 0, 0, err
	}
	if to, err = readEnd(longest); err != nil {
		return 0, 0, err
	}
	if to < from {
		return 0, 0, fmt.Errorf("keep minutes: the most, %s, is under the least, %s; turn them round", WindowText(to), WindowText(from))
	}
	return from, to, nil
}

func readEnd(text string) (int, error) {
	n, err := ParseMinutes(strings.TrimSpace(text))
	if err != nil || n < 60 || n > 60*60 {
		return 0, fmt.Errorf("read minutes %q: conditioning takes 1 to 60 minutes; write one like 8 or 7:30", text)
	}
	return n, nil
}
