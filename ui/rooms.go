package ui

import (
	"strconv"

	"windlass/ui/cyclegrid"
	"windlass/ui/floor"
	"windlass/ui/gymroom"
	"windlass/ui/handouts"
	"windlass/ui/room"
	"windlass/ui/roster"
	"windlass/ui/today"
)

// maker is one room: its name on the rail and what makes it.
type maker struct {
	name string
	make func(room.Host) room.Room
}

// makers are the rooms in the order in which a coach walks them. To take a room
// out of the program, delete its line and its folder.
var makers = []maker{
	{room.Today, today.New},
	{room.Roster, roster.New},
	{room.Cycle, cyclegrid.New},
	{room.Floor, floor.New},
	{room.Handouts, handouts.New},
	{room.Gym, gymroom.New},
}

// roomKey is the key that leads to the room at a place of the rail.
func roomKey(i int) string { return "Ctrl+" + strconv.Itoa(i+1) }

// keys are those that work in every room.
func (w *Window) keys() []room.Key {
	keys := []room.Key{
		{Press: "F1", Does: "Show this sheet of keys", Do: w.showKeys},
		{Press: "Ctrl+K", Does: "Find an athlete, a day or an action", Do: w.find},
		{Press: "Ctrl+Z", Does: "Take the last change back", Do: w.undo},
		{Press: "Ctrl+Y", Does: "Make it again", Do: w.redo},
		{Press: "Ctrl+W", Does: "Open, fill or close the wall", Do: w.Wall},
		{Press: "F12", Does: "Switch the sound of the clock off or on", Do: w.mute},
	}
	for i, m := range makers {
		keys = append(keys, room.Key{Press: roomKey(i), Does: "Go to " + m.name, Do: func() { w.show(i, "") }})
	}
	return keys
}
