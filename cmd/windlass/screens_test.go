package main

import (
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestWallMonitor(t *testing.T) {
	desk := monitor{Name: "eDP-1", Width: 1920, Height: 1080, Primary: true}
	side := monitor{Name: "HDMI-1", X: 1920, Width: 1920, Height: 1080}
	hall := monitor{Name: "HDMI-2", X: 3840, Width: 3840, Height: 2160}
	for _, row := range []struct {
		why    string
		found  []monitor
		choice string
		want   string
	}{
		{"one screen is the desk's", []monitor{desk}, "", ""},
		{"even one that was chosen elsewhere", []monitor{desk}, "HDMI-2", ""},
		{"the other one", []monitor{side, desk}, "", "HDMI-1"},
		{"the one chosen before", []monitor{desk, side, hall}, "HDMI-2", "HDMI-2"},
		{"also the primary one", []monitor{desk, side}, "eDP-1", "eDP-1"},
		{"the one chosen before is gone", []monitor{desk, side}, "HDMI-2", "HDMI-1"},
		{"no primary one", []monitor{side, hall}, "", "HDMI-1"},
	} {
		m, ok := wallMonitor(row.found, row.choice)
		assert.Equal(t, row.want != "", ok, row.why)
		assert.Equal(t, row.want, m.Name, row.why)
	}
}

func TestMonitorHolds(t *testing.T) {
	m := monitor{X: 1920, Y: 100, Width: 1280, Height: 720}
	assert.True(t, m.holds(1920, 100))
	assert.True(t, m.holds(3199, 819))
	assert.False(t, m.holds(1919, 100))
	assert.False(t, m.holds(3200, 100))
}

// A machine keeps its screen and its speaker apart, and one that keeps nothing is no
// reason to complain.
func TestAMachineRemembers(t *testing.T) {
	t.Setenv("XDG_CONFIG_HOME", t.TempDir())
	t.Setenv("AppData", t.TempDir())
	t.Setenv("HOME", t.TempDir())
	assert.Empty(t, recall(monitorKept))
	require.NoError(t, keepHere(monitorKept, "HDMI-2"))
	require.NoError(t, keepHere(speakerKept, "Hall amplifier, \"left\""))
	assert.Equal(t, "HDMI-2", recall(monitorKept))
	assert.Equal(t, "Hall amplifier, \"left\"", recall(speakerKept))
	require.NoError(t, keepHere(speakerKept, ""))
	assert.Empty(t, recall(speakerKept), "the usual one")
	path, err := keptPath(speakerKept)
	require.NoError(t, err)
	require.NoError(t, os.Remove(path))
	require.NoError(t, os.Mkdir(path, 0o700))
	require.ErrorContains(t, keepHere(speakerKept, "Hall"), "keep the speaker of this machine")
}

// The only screen has the desk under the wall: how to get back stands there first,
// in place of nothing that matters more.
func TestAWallOverTheDeskSaysHowToLeave(t *testing.T) {
	p := &placing{notice: "The screen HDMI-2 is gone"}
	p.explained()
	assert.Equal(t, "The screen HDMI-2 is gone", p.notice)
	p.notice = wayBack
	assert.Contains(t, p.notice, "Esc")
	p.explained()
	assert.Empty(t, p.notice)
}
