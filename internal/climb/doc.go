// Package climb plans the timed way up to the day's rep max.
//
// Most callers need [Build], which gives a lifter a load for every rung of a
// plan and for every call made so far, and [Judge], which says what the day's
// result means. [Check] says what is wrong with a climb that a coach typed, and
// [ReadCSV] and [WriteCSV] exchange climbs. The package promises that loads never
// fall on the way up, that an attempt at a record is over the record and within
// the ceiling wherever the gym can load that, and that it says so where it
// cannot. It keeps no clock (package clock) and shares no bars (package
// station).
package climb
