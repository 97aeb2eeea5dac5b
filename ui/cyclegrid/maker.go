package cyclegrid

import (
	"fyne.io/fyne/v2"

	"windlass/ui/kit"
	"windlass/ui/room"
)

type maker struct {
	open bool
	all  fyne.CanvasObject
}

func newMaker(*Cycle) *maker { return &maker{all: kit.NewCaption("")} }

func (m *maker) keys() []room.Key { return nil }

func (r *Cycle) make() {}
func (r *Cycle) next() {}
func (r *Cycle) wave() {}
