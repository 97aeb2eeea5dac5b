package exchange

import (
	"bytes"
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
)

const manyRows = 100_000

// manyResults is a log of a hundred thousand rows about three hundred athletes.
func manyResults(tb testing.TB) (*gym.Book, string) {
	tb.Helper()
	book := smallGym()
	for i := range 300 {
		book.Athletes = append(book.Athletes, athlete(gym.ID(fmt.Sprint("x", i)), fmt.Sprint("Athlete number ", i)))
	}
	var b strings.Builder
	b.WriteString("Date;Athlete;Lift;Reps;Load (lb);Source\n")
	for i := range manyRows {
		fmt.Fprintf(&b, "%s;Athlete number %d;Back squat;%d;%d,5;tested\n", today.Add(-i/300), i%300, 1+i%5, 100+i%200)
	}
	return book, b.String()
}

func BenchmarkImport100000Results(b *testing.B) {
	book, sheet := manyResults(b)
	b.ReportAllocs()
	for b.Loop() {
		p, err := Results(b.Context(), open(b, sheet), book, options())
		require.NoError(b, err)
		require.Equal(b, manyRows, p.Added)
	}
}

func BenchmarkImport100000ResultsXLSX(b *testing.B) {
	book, sheet := manyResults(b)
	p, err := Results(b.Context(), open(b, sheet), book, options())
	require.NoError(b, err)
	next := *book
	next.Apply(p.Changes...)
	var content bytes.Buffer
	require.NoError(b, WriteXLSX(b.Context(), &content, Tables(&next, today)))
	for b.Loop() {
		f, err := Open(b.Context(), "sheet.xlsx", bytes.NewReader(content.Bytes()))
		require.NoError(b, err)
		p, err := Results(b.Context(), f, &next, options())
		require.NoError(b, err)
		require.Equal(b, manyRows+1, p.Same)
	}
}

// The worst sheet for finding near names: every row has another wrong one.
func BenchmarkImport100000UnknownNames(b *testing.B) {
	book, _ := manyResults(b)
	var sheet strings.Builder
	sheet.WriteString("Date;Athlete;Lift;Reps;Load\n")
	for i := range manyRows {
		fmt.Fprintf(&sheet, "2026-03-01;Athlet numbr %dx;Back squat;1;100\n", i)
	}
	for b.Loop() {
		p, err := Results(b.Context(), open(b, sheet.String()), book, options())
		require.NoError(b, err)
		require.Len(b, p.Rejected, manyRows)
	}
}
