package exchange

import (
	"bytes"
	"context"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"github.com/xuri/excelize/v2"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// workbook builds one as a coach's spreadsheet would.
func coachWorkbook(t *testing.T, fill func(*excelize.File)) *File {
	t.Helper()
	book := excelize.NewFile()
	defer book.Close()
	fill(book)
	var b bytes.Buffer
	require.NoError(t, book.Write(&b))
	f, err := Open(t.Context(), "roster.xlsx", &b)
	require.NoError(t, err)
	return f
}

func put(t *testing.T, book *excelize.File, cell string, value any) {
	t.Helper()
	require.NoError(t, book.SetCellValue("Sheet1", cell, value))
}

func TestRosterFromAWorkbook(t *testing.T) {
	f := coachWorkbook(t, func(book *excelize.File) {
		for cell, value := range map[string]any{
			"A1": "Harbour Gym", "A3": "Name", "B3": "Squat 1RM", "C3": "Bench 5RM", "D3": "Joined",
			"A4": "Cleo Cedar", "B4": 102.5, "C4": "185 lb", "D4": time.Date(2025, 11, 3, 0, 0, 0, 0, time.UTC),
			"A5": "Dora Dale", "B5": 0.1 + 0.2, "D5": "3 Nov 2025",
		} {
			put(t, book, cell, value)
		}
	})
	p, err := Roster(t.Context(), f, smallGym(), options())
	require.NoError(t, err)
	require.Empty(t, p.Rejected)
	got := after(smallGym(), p)
	cleo, dora := find(t, got, "Cleo Cedar"), find(t, got, "Dora Dale")
	load, unit := best(got, cleo.ID, "back-squat", 1)
	assert.Equal(t, "102.5 kg", load.In(unit))
	load, unit = best(got, cleo.ID, "bench-press", 5)
	assert.Equal(t, lb(185), load)
	assert.Equal(t, "185 lb", load.In(unit))
	assert.Equal(t, day.Of(2025, 11, 3), cleo.Joined)
	assert.Equal(t, day.Of(2025, 11, 3), dora.Joined)
	load, _ = best(got, dora.ID, "back-squat", 1)
	assert.Equal(t, kg(0.3), load, "a sum of binary floats has decimal digits")
}

// A number that is shown with a unit has it, though it is stored without.
func TestUnitsInFormats(t *testing.T) {
	f := coachWorkbook(t, func(book *excelize.File) {
		pounds := `0" lb"`
		style, err := book.NewStyle(&excelize.Style{CustomNumFmt: &pounds})
		require.NoError(t, err)
		for cell, value := range map[string]any{"A1": "Name", "B1": "Squat 1RM", "A2": "Cleo Cedar", "B2": 185, "A3": "Dora Dale", "B3": 100} {
			put(t, book, cell, value)
		}
		require.NoError(t, book.SetCellStyle("Sheet1", "B2", "B2", style))
	})
	p, err := Roster(t.Context(), f, smallGym(), options())
	require.NoError(t, err)
	require.Empty(t, p.Rejected)
	got := after(smallGym(), p)
	load, unit := best(got, find(t, got, "Cleo Cedar").ID, "back-squat", 1)
	assert.Equal(t, "185 lb", load.In(unit))
	load, unit = best(got, find(t, got, "Dora Dale").ID, "back-squat", 1)
	assert.Equal(t, "100 kg", load.In(unit))
}

func TestTheSheetThatHasTheColumns(t *testing.T) {
	f := coachWorkbook(t, func(book *excelize.File) {
		put(t, book, "A1", "Read me")
		_, err := book.NewSheet("Roster")
		require.NoError(t, err)
		require.NoError(t, book.SetCellValue("Roster", "A1", "Name"))
		require.NoError(t, book.SetCellValue("Roster", "A2", "Cleo Cedar"))
	})
	p, err := Roster(t.Context(), f, smallGym(), options())
	require.NoError(t, err)
	assert.Equal(t, 1, p.Added)
}

func TestDatesFrom1904(t *testing.T) {
	f := coachWorkbook(t, func(book *excelize.File) {
		yes := true
		require.NoError(t, book.SetWorkbookProps(&excelize.WorkbookPropsOptions{Date1904: &yes}))
		for cell, value := range map[string]any{"A1": "Name", "B1": "Joined", "A2": "Cleo Cedar", "B2": 44_506} {
			put(t, book, cell, value)
		}
	})
	p, err := Roster(t.Context(), f, smallGym(), options())
	require.NoError(t, err)
	want, err := excelize.ExcelDateToTime(44_506, true)
	require.NoError(t, err)
	assert.Equal(t, day.From(want), p.Changes[0].(gym.PutAthlete).Athlete.Joined)
}

func TestAWorkbookIsCancelled(t *testing.T) {
	var b bytes.Buffer
	require.NoError(t, WriteXLSX(t.Context(), &b, Tables(smallGym(), today)))
	ctx, cancel := context.WithCancel(t.Context())
	cancel()
	_, err := parseXLSX(ctx, "x", b.Bytes())
	require.ErrorIs(t, err, context.Canceled)
	assert.ErrorIs(t, WriteXLSX(ctx, &b, Tables(smallGym(), today)), context.Canceled)
}
