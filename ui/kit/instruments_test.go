package kit_test

import (
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

// A rung is never named by its colour alone, at any width.
func TestStripSaysEveryRung(t *testing.T) {
	for _, width := range []float32{1400, 900, 600} {
		uitest.App(t, look.Dark())
		s := kit.NewRungStrip()
		s.Set(climb())
		w := uitest.OpenAs(t, look.Dark(), fyne.NewSize(width, 104), s)
		uitest.See(t, w, "30", "60", "90", "102", "× 1", "17′")
	}
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

// Every label of a plausible load stands on its disc in a row of a station.
func TestPlateLabelsFitAStationRow(t *testing.T) {
	uitest.App(t, look.Dark())
	p := kit.NewPlatePicture(240, 44)
	load := []float64{25, 25, 25, 20, 5, 2.5, 1.25}
	p.Set("20 kg", discs(false, load...))
	p.Resize(fyne.NewSize(240, 44))
	var labels []string
	for _, text := range drawn(p) {
		labels = append(labels, text.Text)
	}
	assert.Subset(t, labels, []string{"25", "20", "5", "2.5", "1.25"})
}
