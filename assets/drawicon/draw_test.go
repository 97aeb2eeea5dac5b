package main

import (
	"bytes"
	"image/png"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/assets"
)

// The committed icon is what this program draws, so neither can drift.
func TestIconIsWhatIsDrawn(t *testing.T) {
	committed, err := png.Decode(bytes.NewReader(assets.Icon()))
	require.NoError(t, err)
	drawn := draw(512)
	require.Equal(t, drawn.Bounds(), committed.Bounds())

	differ := 0
	for y := range 512 {
		for x := range 512 {
			if drawn.At(x, y) != committed.At(x, y) {
				differ++
			}
		}
	}
	assert.Zero(t, differ, "run go generate in assets/")
	assert.LessOrEqual(t, len(assets.Icon()), 30<<10, "bytes of the icon")
}

func TestCornersAreClear(t *testing.T) {
	_, _, _, alpha := draw(64).At(0, 0).RGBA()
	assert.Zero(t, alpha)
	_, _, _, alpha = draw(64).At(32, 32).RGBA()
	assert.EqualValues(t, 0xffff, alpha)
}
