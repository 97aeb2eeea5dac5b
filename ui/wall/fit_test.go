package wall

import (
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/ui/look"
)

// anyRow draws the room that a row may need: names of a letter up to the longest,
// loads of a figure up to both numbers with halves, no disc up to a dozen.
func anyRow(t *rapid.T) rowSize {
	part := func(name string, least, most float32) float32 { return rapid.Float32Range(least, most).Draw(t, name) }
	large := part("discs", 0.4, 11)
	return rowSize{
		name: part("name", 0.5, longestName), now: part("now", 0.8, 8), next: part("next", 0, 5),
		discs: [2]float32{labelShare * large, large},
	}
}

func anyMeasured(t *rapid.T) measured {
	m := measured{badge: rapid.Float32Range(0.5, 3).Draw(t, "badge"), words: 6}
	for range rapid.IntRange(0, 12).Draw(t, "stations") {
		m.stations = append(m.stations, rapid.SliceOfN(rapid.Custom(anyRow), 1, 12).Draw(t, "rows"))
	}
	return m
}

var anyScreen = rapid.Custom(func(t *rapid.T) Screen {
	return Screen{Height: rapid.Float64Range(300, 1300).Draw(t, "height"), Viewer: rapid.Float64Range(2, 12).Draw(t, "viewer")}
})

var anySize = rapid.SampledFrom([]fyne.Size{{Width: 1920, Height: 1080}, {Width: 3840, Height: 2160}, {Width: 1280, Height: 1024}, {Width: 1080, Height: 1920}})

// Whatever is to be shown: everybody is on exactly one page, in their order;
// nothing is higher or wider than its place; letters keep to the rule unless no
// letters of it have room for the longest row; every page can be read.
func TestEverybodyHasOnePlace(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m, s, size := anyMeasured(t), anyScreen.Draw(t, "screen"), anySize.Draw(t, "size")
		wait := time.Duration(rapid.IntRange(5, 60).Draw(t, "wait")) * time.Second
		f := fitClimb(m, s, size, wait)
		if f.pages == nil {
			assert.Empty(t, m.at(s, size, smallestArc, wait), "something is shown where anything has room")
			return
		}
		f.holdsAll(t)
		f.staysInside(t)
		if f.arc < LeastArc {
			for arc := LeastArc; arc <= MostArc; arc++ {
				assert.Empty(t, m.at(s, size, arc, wait), "no letters under the rule where %g have room", arc)
			}
		}
		assert.GreaterOrEqual(t, float64(f.band.clock), 1.9*float64(f.text)-1e-3)
		require.Len(t, f.stands, len(f.pages))
		for i, n := range lengths(f.pages) {
			assert.GreaterOrEqual(t, f.stands[i], settle+time.Duration(n)*perName-time.Millisecond)
		}
	})
}

// holdsAll looks for every row, once, in order.
func (f fit) holdsAll(t *rapid.T) {
	var at []part
	for _, p := range f.pages {
		for _, c := range p {
			at = append(at, c...)
		}
	}
	station, row := 0, 0
	for _, p := range at {
		require.Equal(t, part{station, row, p.to}, p)
		require.Greater(t, p.to, p.from)
		if row = p.to; row == len(f.rows[station]) {
			station, row = station+1, 0
		}
	}
	assert.Equal(t, len(f.rows), station)
	assert.Zero(t, row)
}

// staysInside measures what is drawn: columns beside each other, rows under each
// other, and in them what they say.
func (f fit) staysInside(t *rapid.T) {
	all := float32(f.perPage)*f.wide() + float32(f.perPage-1)*columnsGap*f.text + 2*f.margin
	assert.InDelta(t, f.size.Width, all, 1)
	for _, p := range f.pages {
		require.LessOrEqual(t, len(p), f.perPage)
		loose := f.loose(p)
		assert.GreaterOrEqual(t, loose, float32(1))
		for _, c := range p {
			high := float32(len(c)-1) * groupGap
			for _, part := range c {
				high += loose * f.high(part)
				f.rowsStayInside(t, part, f.aligned(c, part))
			}
			assert.LessOrEqual(t, high*f.text, f.height()+1)
		}
	}
}

func (f fit) rowsStayInside(t *rapid.T, p part, w rowSize) {
	for n := p.from; n < p.to; n++ {
		r := f.rows[p.station][n]
		if f.two[p.station][n] {
			assert.LessOrEqual(t, r.twoLines(f.label), f.room())
			continue
		}
		assert.LessOrEqual(t, w.oneLine(f.label), f.room())
		assert.Equal(t, w, w.wider(r), "the columns hold the row")
	}
}

// The arrangement is the best there is: brute force tries every way to cut few rows
// into columns.
func TestPackIsTheBest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var stations [][]float32
		for range rapid.IntRange(1, 4).Draw(t, "stations") {
			stations = append(stations, rapid.SliceOfN(rapid.SampledFrom([]float32{rowShare, twoShare}), 1, 3).Draw(t, "rows"))
		}
		heads := rapid.SliceOfN(rapid.SampledFrom([]float32{0, 1}), len(stations), len(stations)).Draw(t, "heads")
		s := newStack(stations, heads, groupGap)
		height, perPage := rapid.Float32Range(2, 12).Draw(t, "height"), rapid.IntRange(1, 3).Draw(t, "columns")
		whole := rapid.Bool().Draw(t, "whole")
		columns := s.fill(height, perPage, whole)
		least, torn := s.byForce(height, perPage, whole)
		if least == 0 {
			assert.Nil(t, columns)
			return
		}
		require.NotNil(t, columns)
		assert.Equal(t, least, (len(columns)+perPage-1)/perPage, "pages")
		broken := 0
		for _, c := range columns {
			if c[0].from > 0 {
				broken++
			}
		}
		assert.Equal(t, torn, broken, "columns that begin within a station")
	})
}

// byForce returns the fewest pages, and with these the fewest columns that begin
// within a station; 0 where there is no way.
func (s stack) byForce(height float32, perPage int, whole bool) (pages, torn int) {
	n := len(s.rows)
	for cuts := range 1 << (n - 1) {
		from, columns, broken, ok := 0, 0, 0, true
		for to := 1; to <= n && ok; to++ {
			if to < n && cuts>>(to-1)&1 == 0 {
				continue
			}
			ok = s.high(from, to) <= height
			if s.rows[from].row > 0 {
				broken++
				ok = ok && !(whole && s.fits(s.rows[from].station, height))
			}
			columns, from = columns+1, to
		}
		if p := (columns + perPage - 1) / perPage; ok && (pages == 0 || p < pages || p == pages && broken < torn) {
			pages, torn = p, broken
		}
	}
	return pages, torn
}

// The task of the wall: a full class on a usual television does not wait.
func TestAFullClassIsRoundInHalfAMinute(t *testing.T) {
	h := newHall(t, 36)
	for _, at := range []time.Duration{90 * time.Second, 7 * time.Minute, 13 * time.Minute, 15 * time.Minute, 18 * time.Minute} {
		h.until(at)
		v, _ := h.show(look.Dark(), full, inch65)
		assert.LessOrEqual(t, len(v.fit.pages), 8, "at %s", at)
		assert.GreaterOrEqual(t, v.fit.arc, LeastArc, "at %s", at)
		lasts := v.drawn.scene.Climb.Lasts
		assert.LessOrEqual(t, v.fit.round(), waitIn(lasts)+time.Second, "at %s, in a rung of %s", at, lasts)
	}
}
