package store

import (
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestNothingIsHeldOfAFileThatIsClosed(t *testing.T) {
	f := newFile(t)
	info, err := os.Stat(f.Path())
	require.NoError(t, err)
	second, err := OpenReadOnly(t.Context(), f.Path())
	require.NoError(t, err)
	held := func() *held {
		holding.Lock()
		defer holding.Unlock()
		return heldAs(info)
	}
	require.NotNil(t, held())
	assert.Len(t, held().files, 1, "one descriptor serves both")
	require.NoError(t, f.Close())
	assert.NotNil(t, held(), "the second still has it open")
	require.NoError(t, second.Close())
	require.NoError(t, second.Close(), "closing twice does no harm")
	assert.Nil(t, held())
}
