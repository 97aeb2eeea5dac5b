package kit

import (
	"math"
	"strconv"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"windlass/ui/look"
)

// TrendPoint is one place of a line with the band around it.
type TrendPoint struct{ X, Y, Low, High float64 }

// PlotPoint is one thing that happened, drawn as a shape.
type PlotPoint struct {
	X, Y  float64
	Shape Shape
	Mark  look.Meaning // the colour of the shape; the zero value is look.Text
	Label string       // what it says to a pointer: "5 × 142.5 kg, 3 March"
}

// PlotTick is a named place along the X axis.
type PlotTick struct {
	X     float64
	Label string
}

// Plot is what a [Chart] shows. X is any number, often a day; Y is the measure.
type Plot struct {
	Trend  []TrendPoint // a line and its band, in the order of X
	From   float64      // where the trend becomes a forecast and is dashed; 0 is never
	Points []PlotPoint
	Ticks  []PlotTick // along X; none are drawn where there are none
	Marks  []PlotTick // upright lines with a name, such as test day
	Unit   string     // of Y, over the axis
	// FormatX says what an X is, for a pointer; nil is a plain number.
	FormatX func(float64) string
	// FormatY says what a Y is, for the axis and a pointer; nil is a plain number.
	FormatY func(float64) string
	// Empty is said while there is nothing to show.
	Empty string
}

// Chart draws a trend with its band and single points over time, and tells the
// values under the pointer.
type Chart struct {
	widget.BaseWidget
	plot  Plot
	least fyne.Size
	hand  float32 // where the pointer is, or −1
	face  *chartFace
}

// NewChart returns an empty chart of at least a size, in units.
func NewChart(width, height float32) *Chart {
	c := &Chart{least: fyne.NewSize(width, height), hand: -1}
	c.ExtendBaseWidget(c)
	return c
}

// Set shows a plot.
func (c *Chart) Set(p Plot) {
	c.plot = p
	c.hand = -1
	c.Refresh()
}

// MouseIn implements desktop.Hoverable.
func (c *Chart) MouseIn(e *desktop.MouseEvent) { c.MouseMoved(e) }

// MouseMoved implements desktop.Hoverable.
func (c *Chart) MouseMoved(e *desktop.MouseEvent) { c.point(e.Position.X) }

// MouseOut implements desktop.Hoverable.
func (c *Chart) MouseOut() { c.point(-1) }

func (c *Chart) point(x float32) {
	if x == c.hand {
		return
	}
	c.hand = x
	c.Refresh()
}

// bounds are the least and the largest X and Y of everything drawn, NaN where
// there is nothing.
func (p Plot) bounds() (left, right, low, high float64) {
	left, right, low, high = math.Inf(1), math.Inf(-1), math.Inf(1), math.Inf(-1)
	hold := func(x, y float64) {
		left, right = math.Min(left, x), math.Max(right, x)
		low, high = math.Min(low, y), math.Max(high, y)
	}
	for _, t := range p.Trend {
		hold(t.X, math.Min(t.Y, t.Low))
		hold(t.X, math.Max(t.Y, t.High))
	}
	for _, pt := range p.Points {
		hold(pt.X, pt.Y)
	}
	for _, m := range p.Marks {
		left, right = math.Min(left, m.X), math.Max(right, m.X)
	}
	if low > high {
		return math.NaN(), math.NaN(), math.NaN(), math.NaN()
	}
	return left, right, low, high
}

func (p Plot) empty() bool { return len(p.Trend) == 0 && len(p.Points) == 0 }

func (p Plot) x(v float64) string { return format(p.FormatX, v) }
func (p Plot) y(v float64) string { return format(p.FormatY, v) }

func format(f func(float64) string, v float64) string {
	if f != nil {
		return f(v)
	}
	return strconv.FormatFloat(math.Round(v*100)/100, 'f', -1, 64)
}

// trendAt is the trend at an X, between its points; ok is false outside them.
func (p Plot) trendAt(x float64) (t TrendPoint, ok bool) {
	for i := 1; i < len(p.Trend); i++ {
		a, b := p.Trend[i-1], p.Trend[i]
		if x < a.X || x > b.X || a.X == b.X {
			continue
		}
		s := (x - a.X) / (b.X - a.X)
		between := func(u, v float64) float64 { return u + (v-u)*s }
		return TrendPoint{x, between(a.Y, b.Y), between(a.Low, b.Low), between(a.High, b.High)}, true
	}
	return TrendPoint{}, false
}

// near is the point closest to an X, if it is within a distance.
func (p Plot) near(x, within float64) (best PlotPoint, ok bool) {
	for _, pt := range p.Points {
		if d := math.Abs(pt.X - x); d <= within {
			best, within, ok = pt, d, true
		}
	}
	return best, ok
}

// tells is what the chart says about an X.
func (p Plot) tells(x, within float64) string {
	if pt, ok := p.near(x, within); ok && pt.Label != "" {
		return pt.Label
	}
	t, ok := p.trendAt(x)
	if !ok {
		return ""
	}
	text := p.x(x) + ": " + p.y(t.Y)
	if t.High > t.Low {
		text += " (" + p.y(t.Low) + " – " + p.y(t.High) + ")"
	}
	return text
}
