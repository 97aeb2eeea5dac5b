package store

import (
	"math/rand/v2"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
)

// Each bit of the header is turned over in turn, all 800, and a bit of each byte
// where time is short. Such a file may be called whole only if it is: it opens,
// and loads as what it was. The offsets are those of
// https://www.sqlite.org/fileformat.html, section 1.3.
func TestDamagedHeaderIsNeverCalledWhole(t *testing.T) {
	whole, want := savedBytes(t)
	called := map[bool]int{}
	path := filepath.Join(t.TempDir(), "gym.windlass")
	const bits = 8 * headerSize
	for i := 0; i < bits; i += sampled(9) {
		offset, bit := i/8, i%8
		damaged := append([]byte(nil), whole...)
		damaged[offset] ^= 1 << bit
		ok := verifyIsHonest(t, path, damaged, want)
		called[ok]++
		if vital(offset) {
			assert.False(t, ok, "byte %d, bit %d", offset, bit)
		}
	}
	assert.Positive(t, called[true], "the change counter, for one, binds nobody")
	assert.Greater(t, called[false], called[true])
	t.Logf("called whole: %d, called damaged: %d", called[true], called[false])
}

// sampled is 1 in a full run, and a step to a sample of the cases where time is
// short, as it is under the race detector, which these tests give nothing to do.
func sampled(step int) int {
	if testing.Short() {
		return step
	}
	return 1
}

// vital reports whether every bit of a header's byte says something that must
// hold in a file of ours.
func vital(offset int) bool {
	switch {
	case offset == 18 || offset == 19: // a change from log to journal harms nothing
		return false
	case offset < 24, 44 <= offset && offset < 48, 52 <= offset && offset < 92:
		return true
	}
	return false
}

// Damage anywhere: bytes overwritten, stretches zeroed, the end cut off.
func TestRandomDamageIsNeverCalledWhole(t *testing.T) {
	whole, _ := savedBytes(t)
	seed := uint64(20260309)
	random := rand.New(rand.NewPCG(seed, 1))
	path := filepath.Join(t.TempDir(), "gym.windlass")
	called := map[bool]int{}
	cases := 200 / sampled(5)
	for range cases {
		damaged := append([]byte(nil), whole...)
		at := random.IntN(len(damaged))
		switch random.IntN(3) {
		case 0:
			damaged[at] ^= byte(1 + random.IntN(255))
		case 1:
			clear(damaged[at:min(at+1+random.IntN(600), len(damaged))])
		default:
			damaged = damaged[:at]
		}
		called[verifyIsHonest(t, path, damaged, gym.Book{})]++
	}
	assert.Greater(t, called[false], cases*3/10, "seed %d", seed)
	t.Logf("called whole: %d, called damaged: %d", called[true], called[false])
}

// verifyIsHonest returns what Verify says of some bytes, and fails when it calls
// whole a file that does not open, does not load, or (where want is given) loads
// as something else.
func verifyIsHonest(t *testing.T, path string, bytes []byte, want gym.Book) bool {
	t.Helper()
	require.NoError(t, os.WriteFile(path, bytes, 0o600))
	s, err := Verify(t.Context(), path)
	require.Equal(t, s.OK, err == nil)
	if err != nil {
		return false
	}
	f, err := Open(t.Context(), path)
	require.NoError(t, err, "called whole and does not open")
	got, err := f.Load(t.Context())
	require.NoError(t, err, "called whole and does not load")
	if len(want.Athletes) > 0 {
		require.Equal(t, want, got)
	}
	require.NoError(t, f.Close())
	return true
}

func savedBytes(t *testing.T) ([]byte, gym.Book) {
	t.Helper()
	path := savedFile(t)
	bytes, err := os.ReadFile(path)
	require.NoError(t, err)
	return bytes, loadPath(t, path)
}

// A row that SQLite finds whole and no noun can hold makes a damaged file.
func TestUndecodableRowsAreDamage(t *testing.T) {
	for name, query := range map[string]string{
		"JSON of another kind":  `UPDATE cycles SET body = '["spring"]'`,
		"an instant that is no": `UPDATE moves SET made = 'last week'`,
		"a name of blanks":      `UPDATE athletes SET name = char(160)`, // no-break space
	} {
		t.Run(name, func(t *testing.T) {
			path := withSQL(t, query)
			_, err := Verify(t.Context(), path)
			require.ErrorIs(t, err, ErrDamaged)
			assert.ErrorContains(t, err, path)
		})
	}
}

func TestAFileWithoutItsGuardsIsDamaged(t *testing.T) {
	for _, query := range []string{"DROP TRIGGER results_kept", "DROP INDEX bouts_athlete", "DROP VIEW records"} {
		_, err := Verify(t.Context(), withSQL(t, query))
		assert.ErrorIs(t, err, ErrDamaged, query)
	}
}
