package gym_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/gym"
)

// RFC 9562, appendix A.6: unix_ts_ms 017F22E279B0, rand_a CC3, rand_b
// 18C4DC0C0C07398F (from memory; several independent test suites print the same).
func TestIDOfTheStandard(t *testing.T) {
	at := time.Date(2022, time.February, 22, 14, 22, 22, 0, time.FixedZone("", -5*3600))
	require.Equal(t, int64(0x017F22E279B0), at.UnixMilli())
	random := [10]byte{0x0C, 0xC3, 0x18, 0xC4, 0xDC, 0x0C, 0x0C, 0x07, 0x39, 0x8F}
	assert.Equal(t, gym.ID("017f22e2-79b0-7cc3-98c4-dc0c0c07398f"), gym.NewID(at, random))
}

func TestIDsSortByTimeAndKeepVersionAndVariant(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var random [10]byte
		for i := range random {
			random[i] = rapid.Byte().Draw(t, "byte")
		}
		first := time.UnixMilli(rapid.Int64Range(0, 1<<47).Draw(t, "ms"))
		id := gym.NewID(first, random)
		later := gym.NewID(first.Add(time.Millisecond), [10]byte{})
		if len(id) != 36 || id[14] != '7' || (id[19] != '8' && id[19] != '9' && id[19] != 'a' && id[19] != 'b') {
			t.Fatalf("%s is no UUID of version 7", id)
		}
		if id >= later {
			t.Fatalf("%s does not sort before %s", id, later)
		}
		if id != gym.NewID(first, random) {
			t.Fatal("the same instant and bytes make another ID")
		}
	})
}
