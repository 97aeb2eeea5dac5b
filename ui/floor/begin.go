package floor

import (
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
)

// begin starts the climb's clock or goes on with it. While lifters have no station
// it asks before the first start.
func (f *Floor) begin() {
	without := desk.Stationless{}
	if f.class.Stage == gym.SetUp {
		without = f.desk().Stationless(f.class)
	}
	if len(without.Names) == 0 {
		f.host.Fail(f.desk().StartClock(f.id))
		return
	}
	kit.Ask(f.host.Window().Canvas(), f.stationless(without))
}

// stationless asks what to do about lifters without a station.
func (f *Floor) stationless(without desk.Stationless) kit.Question {
	q := kit.Question{Title: "Start while lifters have no station?", Text: without.Text(), Cancel: "Not yet"}
	if without.Mends() {
		q.Actions = append(q.Actions, kit.Action{Label: "Share anew", Do: func() bool { f.shareAnew(); return true }})
	}
	q.Actions = append(q.Actions, kit.Action{Label: "Start anyway", Do: func() bool {
		f.host.Fail(f.desk().StartClock(f.id))
		return true
	}})
	return q
}

func (f *Floor) shareAnew() {
	f.did(f.desk().ShareStations(f.id), "Stations shared anew, with the fewest plates moved.")
}
