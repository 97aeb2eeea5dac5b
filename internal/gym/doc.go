// Package gym holds the nouns of the house: athletes, lifts and movements,
// results and bouts, tracks and cycles, classes, and what the gym owns.
//
// A [Book] is everything one file knows; a [Change] is one thing that the book
// is to say from now on. Most callers need [Book.Apply] and the Valid methods.
// The package promises that a value which passed its Valid method can be stored
// and shown. It computes no loads, plans or advice: those live in the packages
// named for them. It has no clock and no randomness of its own.
package gym
