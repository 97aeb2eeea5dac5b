package uitest

import (
	"image"
	"image/color"
	"testing"

	"github.com/stretchr/testify/assert"
)

// The tolerance: a channel may be off by 8, and one pixel in a thousand by more.
func TestCompareToleratesRoundingOnly(t *testing.T) {
	plain := func(c uint8) *image.NRGBA {
		img := image.NewNRGBA(image.Rect(0, 0, 100, 100))
		for i := range img.Pix {
			img.Pix[i] = c
			if i%4 == 3 {
				img.Pix[i] = 255
			}
		}
		return img
	}
	spotted := func(n int) *image.NRGBA {
		img := plain(100)
		for i := range n {
			img.SetNRGBA(i, 0, color.NRGBA{A: 255})
		}
		return img
	}
	assert.NoError(t, compare(plain(100), plain(100)))
	assert.NoError(t, compare(plain(100), plain(108)), "a channel within 8")
	assert.Error(t, compare(plain(100), plain(109)), "a channel off by 9")
	assert.NoError(t, compare(plain(100), spotted(10)), "0.1 % of pixels")
	assert.Error(t, compare(plain(100), spotted(11)), "more than 0.1 %")
	assert.Error(t, compare(plain(100), image.NewNRGBA(image.Rect(0, 0, 99, 100))), "another size")
}
