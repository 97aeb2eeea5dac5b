// Package repmax goes from one rep max to another, and from a log of results to
// records and cards.
//
// Most callers need [Convert], which estimates one rep max from another on a
// published curve, and [NewCard], which fills in what an athlete has not tested.
// The package promises that a known number is never altered, that an estimate is
// marked as one and never promises more than the evidence, and that a rep count
// outside a curve's published range is an error and not a number. It does not
// follow strength over time and does not plan sets; see package climb.
package repmax
