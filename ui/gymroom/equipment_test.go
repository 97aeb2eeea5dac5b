package gymroom_test

import (
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/mass"
	"windlass/ui/uitest"
)

func TestEquipmentIsKeptAtOnce(t *testing.T) {
	h := open(t, "Bars and plates")
	picture(t, h, "equipment")
	uitest.See(t, h.On, "What can be loaded on the 20 kg bar", "From 20 kg to 1000 kg", "100 kg: ")

	h.Press(t, "P")
	h.Press(t, "Ctrl+N")
	uitest.See(t, h.On, "Plates: 2 kg")
	picture(t, h, "plates")
	uitest.Fill(t, h.On, "What is printed on it", "45 lb")
	uitest.Fill(t, h.On, "Pairs", "two")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "it is not a whole number", "Smallest step 0.18 kg")
	uitest.Fill(t, h.On, "Pairs", "2")
	uitest.Key(t, h.On, fyne.KeyReturn)
	stock := h.Desk().Book().Equipment.Stock.Plates
	assert.Equal(t, 45*mass.Pound, stock[1].Mass, "it stands between 25 kg and 20 kg, and the form followed it")
	assert.Equal(t, 2, stock[1].Pairs)
	h.Press(t, "P")
	uitest.Key(t, h.On, fyne.KeyDelete)
	assert.Len(t, h.Desk().Book().Equipment.Stock.Plates, len(stock)-1)

	h.Press(t, "B")
	uitest.Key(t, h.On, fyne.KeyHome, fyne.KeyDelete)
	assert.Contains(t, h.Said[len(h.Said)-1], "it stands at")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.Type(t, h.On, "Old ")
	uitest.Key(t, h.On, fyne.KeyReturn)
	assert.Contains(t, h.Desk().Book().Equipment.Bars[0].Name, "Old ")
	picture(t, h, "bars-renamed")
}

func TestStationsStandAtABarOfTheGym(t *testing.T) {
	h := open(t, "Bars and plates")
	h.Press(t, "T")
	h.Press(t, "Ctrl+N")
	picture(t, h, "stations")
	uitest.Fill(t, h.On, "Name", "Harbour wall")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "another has that name already")
	uitest.Fill(t, h.On, "Bar that stands there", "log")
	uitest.Key(t, h.On, fyne.KeyReturn)
	stations := h.Desk().Book().Equipment.Stations
	require.NotEmpty(t, stations)
	assert.Equal(t, "log", stations[len(stations)-1].Bar)
}

// The rule about small plates stands beside the stock, and is kept at once.
func TestSmallPlatesAreKeptForTopRungs(t *testing.T) {
	h := open(t, "Bars and plates")
	require.True(t, h.Desk().SmallPlates())
	h.Press(t, "P")
	before := h.Desk().Settings().SmallAll
	uitest.Tap(t, h.On, "Plates under 1 kg on top rungs only")
	assert.Equal(t, !before, h.Desk().Settings().SmallAll)
	assert.NotEmpty(t, h.Said)
	_, err := h.Desk().Undo()
	require.NoError(t, err)
	assert.Equal(t, before, h.Desk().Settings().SmallAll)
}
