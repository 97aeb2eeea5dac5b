// Package arch holds the house to its plan: who may import whom, what the domain
// keeps its hands off, and one package comment each. It is all tests.
//
// A new package needs a line in the table of policy_test.go; the tests say so. The
// package promises nothing about names and lengths: the linter looks after those.
package arch
