//go:build linux && cgo

package sound

import (
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The system's sound library with two devices that swallow everything: they are
// found and opened by name, played through, and the usual one stands in for one that
// is not there. What is heard nobody can tell here.
func TestSystemDevices(t *testing.T) {
	config, err := filepath.Abs("testdata/null.conf")
	require.NoError(t, err)
	t.Setenv("ALSA_CONFIG_PATH", config)
	names, err := Devices()
	if err != nil || !assert.ObjectsAreEqual([]string{"Null usual", "Hall amplifier"}, names) {
		t.Skipf("this system's sound does not go through ALSA: %q, %v", names, err)
	}
	for _, name := range append(names, "", "HALL AMPLIFIER") {
		out, err := Open(name)
		require.NoError(t, err, name)
		assert.NoError(t, out.Play(Samples(Tick)), name)
		out.Close()
	}
	e := New(Open, time.Now)
	defer e.Close()
	e.Choose("Side speaker")
	e.Test()
	assert.Contains(t, trouble(t, e), `"Side speaker" cannot be used`)
}
