// Package exchange reads a coach's sheets and writes the gym's tables, as CSV
// (RFC 4180) and XLSX (ISO/IEC 29500).
//
// Most callers need [Open], then [Roster], [Results] or [Bouts], and [Tables] for
// the way out. A reading is a [Proposal]: what would be added, changed and
// refused, row by row, before anything is written. The package promises that a
// load keeps the unit and the digits that stand in the sheet, that a blank cell
// means unknown and never zero, that what can be read in two ways is refused,
// and that reading in what was written out changes nothing. It writes to no
// gym's file, and it gives away neither a coach's notes nor restrictions.
package exchange
