// Package look is the program's appearance: colours by meaning, sizes on a
// four-unit grid and the typeface, as one Fyne theme in a dark and a light cut.
//
// Most callers need [New], to set the theme, and [Color], to ask the running
// theme for a meaning. The variant is ours to choose: the theme ignores what the
// desktop asks for. Every pair of text and ground that widgets may use meets
// WCAG 2.2 level AA in both cuts, which the tests prove. The package draws
// nothing; widgets are in package kit.
package look

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"

	"windlass/assets"
)

// Theme is the program's Fyne theme. Two themes with the same palette look the
// same everywhere.
type Theme struct {
	palette       Palette
	regular, bold fyne.Resource
}

var _ fyne.Theme = (*Theme)(nil)

// New returns the theme with the given palette, usually [Dark] or [Light].
func New(p Palette) *Theme {
	return &Theme{
		palette: p,
		regular: fyne.NewStaticResource("B612-Regular.otf", assets.Regular()),
		bold:    fyne.NewStaticResource("B612-Bold.otf", assets.Bold()),
	}
}

// Current returns the palette of the running application, and [Dark] when
// another theme or no application runs.
func Current() Palette {
	if app := fyne.CurrentApp(); app != nil {
		if t, ok := app.Settings().Theme().(*Theme); ok {
			return t.palette
		}
	}
	return Dark()
}

// Color returns the shade that the running application has for a meaning.
func Color(m Meaning) color.NRGBA { return Current()[m] }

// Color implements fyne.Theme. The variant is ignored, so that a desktop's own
// switch of dark and light cannot mix two palettes.
func (t *Theme) Color(name fyne.ThemeColorName, variant fyne.ThemeVariant) color.Color {
	if m, ok := stock[name]; ok {
		return t.palette[m]
	}
	switch name {
	case theme.ColorNameInputBackground, theme.ColorNameInputBorder:
		return color.Transparent // kit draws the box around an entry
	case theme.ColorNameShadow, theme.ColorNameScrollBarBackground:
		return color.Transparent // depth is shown by grounds and hairlines alone
	case theme.ColorNamePressed:
		return t.thin(Text, 0x28)
	case theme.ColorNameScrollBar:
		return t.thin(Edge, 0xB0)
	}
	return theme.DefaultTheme().Color(name, variant)
}

func (t *Theme) thin(m Meaning, alpha uint8) color.NRGBA {
	c := t.palette[m]
	c.A = alpha
	return c
}

// stock gives the rest of Fyne our meanings, should one of its widgets be shown.
var stock = map[fyne.ThemeColorName]Meaning{
	theme.ColorNameBackground:          Ground,
	theme.ColorNameButton:              Raised,
	theme.ColorNameDisabled:            Muted,
	theme.ColorNameDisabledButton:      Surface,
	theme.ColorNameError:               Bad,
	theme.ColorNameFocus:               Selection,
	theme.ColorNameForeground:          Text,
	theme.ColorNameForegroundOnError:   OnBad,
	theme.ColorNameForegroundOnPrimary: OnAccent,
	theme.ColorNameForegroundOnSuccess: Ground,
	theme.ColorNameForegroundOnWarning: Ground,
	theme.ColorNameHeaderBackground:    Raised,
	theme.ColorNameHover:               Hover,
	theme.ColorNameHyperlink:           Accent,
	theme.ColorNameMenuBackground:      Raised,
	theme.ColorNameOverlayBackground:   Surface,
	theme.ColorNamePlaceHolder:         Muted,
	theme.ColorNamePrimary:             Focus,
	theme.ColorNameSelection:           Selection,
	theme.ColorNameSeparator:           Line,
	theme.ColorNameSuccess:             Good,
	theme.ColorNameWarning:             Warn,
}

// Font implements fyne.Theme. Italics are set upright: the family's italic is
// not embedded, and a borrowed one would not match.
func (t *Theme) Font(style fyne.TextStyle) fyne.Resource {
	switch {
	case style.Symbol:
		return theme.DefaultTheme().Font(style)
	case style.Bold:
		return t.bold
	}
	return t.regular
}

// Icon implements fyne.Theme with Fyne's own icons; kit draws shapes instead.
func (t *Theme) Icon(name fyne.ThemeIconName) fyne.Resource {
	return theme.DefaultTheme().Icon(name)
}

// Size implements fyne.Theme.
func (t *Theme) Size(name fyne.ThemeSizeName) float32 {
	switch name {
	case theme.SizeNameText:
		return BodySize
	case theme.SizeNameCaptionText:
		return CaptionSize
	case theme.SizeNameSubHeadingText:
		return LeadSize
	case theme.SizeNameHeadingText:
		return TitleSize
	case theme.SizeNameInputBorder:
		return RingWidth
	case theme.SizeNameInputRadius, theme.SizeNameSelectionRadius:
		return Radius
	case theme.SizeNameScrollBar:
		return Gap2
	case theme.SizeNameScrollBarSmall, theme.SizeNameScrollBarRadius:
		return Gap1
	case theme.SizeNamePadding, theme.SizeNameLineSpacing:
		return Gap1
	case theme.SizeNameInnerPadding:
		return Gap2
	case theme.SizeNameSeparatorThickness:
		return Hairline
	}
	return theme.DefaultTheme().Size(name)
}
