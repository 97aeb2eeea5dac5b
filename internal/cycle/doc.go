// Package cycle plans a block of weeks for a gym: the waves of rep counts, the
// days of every track, the rules they must keep, and the week of each athlete.
//
// Most callers need [Make], which builds a whole cycle from the built-in tracks,
// and [Check], which names every breach of a rule with its mend. [Arrange] finds
// an athlete's own week; [Calendar] says what happens on a date; the verbs of
// editing ([Put], [Move], [Shift] and their like) return a new cycle and leave
// the old one as it was, so that an undo is the old value.
//
// The package promises that a verb which returns an error has changed nothing,
// and that days with results are never altered. It reads no file and no clock,
// computes no loads, and judges no conditioning format: see packages climb and
// conditioning for those.
package cycle
