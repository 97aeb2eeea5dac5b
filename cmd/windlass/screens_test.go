package main

import (
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

// The chosen screen is remembered on this machine, and a file that is none is no
// reason to complain.
func TestTheScreenIsRemembered(t *testing.T) {
	t.Setenv("XDG_CONFIG_HOME", t.TempDir())
	t.Setenv("AppData", t.TempDir())
	t.Setenv("HOME", t.TempDir())
	assert.Empty(t, rememberedMonitor())
	remember("HDMI-2")
	assert.Equal(t, "HDMI-2", rememberedMonitor())
	path, err := rememberedPath()
	require.NoError(t, err)
	require.FileExists(t, path)
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
