//go:build !cgo

package sound

import "errors"

var errSilent = errors.New("this program was built without sound")

// Open says that there is no sound in a program built without cgo.
func Open(string) (Output, error) { return nil, errSilent }

// Devices says that there is no sound in a program built without cgo.
func Devices() ([]string, error) { return nil, errSilent }
