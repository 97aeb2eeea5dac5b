package desk

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestShortNamesTellApart(t *testing.T) {
	assert.Equal(t,
		[]string{"Ada Lu.", "Ada Ly.", "Bo Q.", "Ólafur Þ.", "Prince", "Ana C.", "Kim Li", "Kim Li"},
		shortNames([]string{"Ada Lund", "Ada Lyle", "Bo Quist", "Ólafur Þórsson", "Prince", "Ana María de la Cruz", "Kim Li", "Kim Li"}))
	assert.Empty(t, shortNames(nil))
}
