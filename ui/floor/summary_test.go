package floor

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestTheSummaryCountsOneAsOne(t *testing.T) {
	assert.Equal(t, "1 result and 12 bouts", missingWords(1, 12))
	assert.Equal(t, "1 bout", missingWords(0, 1))
	assert.Empty(t, missingWords(0, 0), "nothing is left to ask about")
	assert.Equal(t, "No result yet for Bo Ito.\n1 bout of the conditioning is not logged.", openWords([]string{"Bo Ito"}, 1, true))
	assert.Equal(t, "Nothing: every result and every bout is entered.", openWords(nil, 0, false))
}
