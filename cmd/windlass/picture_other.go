//go:build !linux

package main

import (
	"errors"
	"image"
)

// takePicture needs an X display.
func takePicture(string) (image.Image, error) {
	return nil, errors.New("take a picture: only an X display can be photographed; run the tour on Linux")
}

// windowShown is never asked where no picture can be taken.
func windowShown(string) bool { return false }
