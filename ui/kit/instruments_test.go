package kit_test

import (
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"windlass/internal/mass"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

func TestStripMarksThePresentRung(t *testing.T) {
	uitest.App(t, look.Dark())
	s := kit.NewRungStrip()
	s.Set(climb())
	for _, c := range []struct {
		now  time.Duration
		want int
	}{
		{-1, -1},
		{0, 0},
		{59 * time.Second, 0},
		{time.Minute, 1}, // a rung begins with its first second
		{8 * time.Minute, 5},
		{20*time.Minute - time.Millisecond, 8},
		{20 * time.Minute, -1}, // and the climb is over with its last
	} {
		s.SetNow(c.now)
		assert.Equal(t, c.want, s.Present(), "at %v", c.now)
	}
}

// A rung is never named by its colour alone: at any width of a desk every one says
// its per cent, its reps and when it begins, whatever the lengths.
func TestStripSaysEveryRung(t *testing.T) {
	for _, width := range []float32{1400, 900, 570} {
		uitest.App(t, look.Dark())
		s := kit.NewRungStrip()
		s.Set(climb())
		w := uitest.OpenAs(t, look.Dark(), fyne.NewSize(width, 104), s)
		for _, r := range climb() {
			uitest.See(t, w, r.Percent, r.Reps)
		}
		uitest.See(t, w, "0′", "17′")
		for _, text := range drawn(s) {
			assert.GreaterOrEqual(t, text.TextSize, float32(11), "%q at %v", text.Text, width)
		}
	}
}

// However lengths and width lie, rungs stand in their order without a gap, and the
// bar never runs back.
func TestStripKeepsTheOrderOfTime(t *testing.T) {
	uitest.App(t, look.Dark())
	rapid.Check(t, func(r *rapid.T) {
		s, at := kit.NewRungStrip(), time.Duration(0)
		var rungs []kit.Rung
		for range rapid.IntRange(1, 14).Draw(r, "rungs") {
			until := at + time.Duration(rapid.IntRange(10, 400).Draw(r, "seconds"))*time.Second
			rungs = append(rungs, kit.Rung{Start: at, End: until, Percent: "50 %", Reps: "× 3"})
			at = until
		}
		got := -1
		s.OnChosen = func(i int) { got = i }
		s.Set(rungs)
		width := float32(rapid.IntRange(100, 1600).Draw(r, "width"))
		s.Resize(fyne.NewSize(width, 104))
		before := -1
		for x := float32(0.5); x < width-0.5; x += width / 200 {
			s.Tapped(&fyne.PointEvent{Position: fyne.NewPos(x, 20)})
			if got < before || got > before+1 {
				r.Fatalf("rung %d follows rung %d at %v of %v", got, before, x, width)
			}
			before = got
		}
		if got != len(rungs)-1 {
			r.Fatalf("the strip ends with rung %d of %d", got, len(rungs))
		}
	})
}

func TestStripTellsWhichRungIsTapped(t *testing.T) {
	uitest.App(t, look.Dark())
	got := -1
	s := kit.NewRungStrip()
	s.OnChosen = func(i int) { got = i }
	s.Set(climb())
	w := uitest.OpenAs(t, look.Dark(), fyne.NewSize(1000, 104), s)
	uitest.Tap(t, w, "95 %")
	assert.Equal(t, 6, got)
	uitest.Hover(t, w, "70 %")
	uitest.See(t, w, "4:00–6:00  70 % × 5, working")
}

func TestStripWithoutRungsIsQuiet(t *testing.T) {
	uitest.App(t, look.Dark())
	s := kit.NewRungStrip()
	w := uitest.OpenAs(t, look.Dark(), fyne.NewSize(400, 104), s)
	s.SetNow(time.Minute)
	uitest.TapAt(w, fyne.NewPos(100, 20))
	assert.Equal(t, -1, s.Present())
}

// The colours of discs in weightlifting: IWF Technical and Competition Rules and
// Regulations, 3.3.4. Other masses have none.
func TestSportColours(t *testing.T) {
	for _, c := range []struct {
		kg   float64
		same float64 // a disc that shares its colour
	}{{25, 2.5}, {20, 2}, {15, 1.5}, {10, 1}, {5, 0.5}} {
		heavy := kit.DiscOf(mass.Of(c.kg, mass.KG), mass.KG, true, true)
		light := kit.DiscOf(mass.Of(c.same, mass.KG), mass.KG, false, true)
		assert.Equal(t, heavy.Colour, light.Colour, "%v and %v kg", c.kg, c.same)
		assert.NotZero(t, heavy.Colour.A)
		assert.Greater(t, heavy.Diameter, light.Diameter, "the size must tell them apart")
		assert.NotEqual(t, heavy.Label, light.Label, "and so must the label")
	}
	assert.Zero(t, kit.DiscOf(45*mass.Pound, mass.LB, true, true).Colour.A)
	assert.Equal(t, "45", kit.DiscOf(45*mass.Pound, mass.LB, true, false).Label)
	assert.Zero(t, kit.DiscOf(25*mass.Kilogram, mass.KG, true, false).Colour.A, "neutral unless asked for")
}

// Heavier discs are never drawn smaller, full ones largest of all.
func TestDiscsAreDrawnToSize(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		a := mass.Mass(rapid.Int64Range(int64(mass.Gram), int64(50*mass.Kilogram)).Draw(r, "a"))
		b := mass.Mass(rapid.Int64Range(int64(a), int64(50*mass.Kilogram)).Draw(r, "b"))
		light, heavy := kit.DiscOf(a, mass.KG, false, false), kit.DiscOf(b, mass.KG, false, false)
		full := kit.DiscOf(a, mass.KG, true, false)
		if light.Diameter > heavy.Diameter || light.Width > heavy.Width {
			r.Fatalf("%v is drawn larger than %v", a, b)
		}
		if full.Diameter != 1 || heavy.Diameter >= 1 || light.Diameter <= 0 {
			r.Fatalf("diameters %v, %v, %v", light.Diameter, heavy.Diameter, full.Diameter)
		}
	})
}

func TestPlatePictureReadsAsWords(t *testing.T) {
	uitest.App(t, look.Dark())
	p := kit.NewPlatePicture(200, 44)
	p.Set("20 kg", discs(false, 25, 10, 2.5))
	w := uitest.Open(t, kit.Row(8, p))
	uitest.See(t, w, "20 kg: 25 + 10 + 2.5 a side")
	p.Set("20 kg", nil)
	assert.Equal(t, "20 kg", p.Label())
}

// Every label of a plausible load stands on its disc in a row of a station, and can
// be read.
func TestPlateLabelsFitAStationRow(t *testing.T) {
	uitest.App(t, look.Dark())
	for _, c := range []struct {
		width float32
		discs []float64
		want  []string
	}{
		{240, []float64{25, 25, 25, 20, 5, 2.5, 1.25}, []string{"25", "25", "25", "20", "5", "2.5", "1.25"}},
		{170, []float64{25, 25, 25, 20, 5, 2.5, 1.25}, []string{"", "", "3×25", "20", "5", "2.5", "1.25"}},
		{150, []float64{20, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5}, []string{"20", "", "", "", "6×0.5"}},
	} {
		p := kit.NewPlatePicture(60, 18)
		p.Set("", discs(false, c.discs...))
		p.Resize(fyne.NewSize(c.width, 18))
		assert.LessOrEqual(t, p.Needs(18), c.width)
		var labels []string
		for _, text := range drawn(p)[1:] { // the first is the bar's
			labels = append(labels, text.Text)
			assert.GreaterOrEqual(t, text.TextSize, float32(11))
		}
		assert.Equal(t, c.want, labels)
	}
}

// Where the labels need more than there is, the picture says so beforehand.
func TestPlatePictureSaysWhatItNeeds(t *testing.T) {
	uitest.App(t, look.Dark())
	rapid.Check(t, func(r *rapid.T) {
		p := kit.NewPlatePicture(60, 18)
		some := rapid.SliceOfN(rapid.SampledFrom([]float64{25, 20, 15, 10, 5, 2.5, 1.25, 0.5}), 1, 9).Draw(r, "discs")
		p.Set("", discs(false, some...))
		p.Resize(fyne.NewSize(p.Needs(18), 18))
		said := ""
		for _, text := range drawn(p)[1:] {
			said += text.Text + " "
		}
		for _, kg := range some {
			if label := kit.DiscOf(mass.Of(kg, mass.KG), mass.KG, false, false).Label; !strings.Contains(said, label) {
				r.Fatalf("%v of %v is missing in %q", kg, some, said)
			}
		}
	})
}
