package look_test

import (
	"image/color"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/theme"
	"github.com/stretchr/testify/assert"

	"windlass/assets"
	"windlass/ui/look"
)

// Fyne's names of colours, all of version 2.7.
var names = []fyne.ThemeColorName{
	theme.ColorNameBackground, theme.ColorNameButton, theme.ColorNameDisabled, theme.ColorNameDisabledButton,
	theme.ColorNameError, theme.ColorNameFocus, theme.ColorNameForeground, theme.ColorNameForegroundOnError,
	theme.ColorNameForegroundOnPrimary, theme.ColorNameForegroundOnSuccess, theme.ColorNameForegroundOnWarning,
	theme.ColorNameHeaderBackground, theme.ColorNameHover, theme.ColorNameHyperlink, theme.ColorNameInputBackground,
	theme.ColorNameInputBorder, theme.ColorNameMenuBackground, theme.ColorNameOverlayBackground,
	theme.ColorNamePlaceHolder, theme.ColorNamePressed, theme.ColorNamePrimary, theme.ColorNameScrollBar,
	theme.ColorNameScrollBarBackground, theme.ColorNameSelection, theme.ColorNameSeparator, theme.ColorNameShadow,
	theme.ColorNameSuccess, theme.ColorNameWarning,
}

func TestVariantOfTheDesktopIsIgnored(t *testing.T) {
	th := look.New(look.Dark())
	for _, name := range names {
		assert.Equal(t, th.Color(name, theme.VariantDark), th.Color(name, theme.VariantLight), name)
	}
}

// No widget of Fyne's may bring a colour of its own onto the screen.
func TestEveryColourIsOurs(t *testing.T) {
	for which, p := range palettes() {
		ours := map[color.NRGBA]bool{}
		for _, c := range p {
			ours[color.NRGBA{R: c.R, G: c.G, B: c.B, A: 0xFF}] = true
		}
		for _, name := range names {
			c := color.NRGBAModel.Convert(look.New(p).Color(name, theme.VariantDark)).(color.NRGBA)
			if c.A == 0 {
				continue // drawn by kit instead
			}
			c.A = 0xFF
			assert.True(t, ours[c], "%s: %s is %v", which, name, c)
		}
	}
}

func TestColorFollowsTheRunningTheme(t *testing.T) {
	app := test.NewTempApp(t)
	assert.Equal(t, look.Dark()[look.Text], look.Color(look.Text), "another theme runs")
	app.Settings().SetTheme(look.New(look.Light()))
	assert.Equal(t, look.Light()[look.Text], look.Color(look.Text))
}

func TestFontsAreOurs(t *testing.T) {
	th := look.New(look.Light())
	assert.Equal(t, assets.Regular(), th.Font(fyne.TextStyle{}).Content())
	assert.Equal(t, assets.Bold(), th.Font(fyne.TextStyle{Bold: true}).Content())
	assert.Contains(t, assets.FontLicence(), "SIL OPEN FONT LICENSE Version 1.1")
}

// A clock and a column of loads must not jitter: all digits of both cuts have
// one width.
func TestDigitsHaveOneWidth(t *testing.T) {
	test.NewTempApp(t).Settings().SetTheme(look.New(look.Dark()))
	want := fyne.MeasureText("0", 100, fyne.TextStyle{}).Width
	for _, digit := range "0123456789" {
		for _, bold := range []bool{false, true} {
			got := fyne.MeasureText(string(digit), 100, fyne.TextStyle{Bold: bold}).Width
			assert.Equal(t, want, got, "%c, bold %v", digit, bold)
		}
	}
}

func TestSizesStandOnTheGrid(t *testing.T) {
	for _, gap := range []float32{
		look.Gap1, look.Gap2, look.Gap3, look.Gap4, look.Gap5, look.Gap6, look.ControlHeight, look.RowHeight,
	} {
		assert.Zero(t, int(gap)%4, "%v", gap)
	}
	assert.Equal(t, look.BodySize, look.New(look.Dark()).Size(theme.SizeNameText))
	// WCAG 2.2, 2.5.8: a target is at least 24 by 24.
	assert.GreaterOrEqual(t, look.RowHeight, float32(24))
	assert.GreaterOrEqual(t, look.ControlHeight, float32(24))
}
