package desk_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"windlass/internal/desk"
)

func TestCount(t *testing.T) {
	for want, got := range map[string]string{
		"0 athletes": desk.Count(0, "athlete"),
		"1 class":    desk.Count(1, "class"),
		"2 classes":  desk.Count(2, "class"),
		"3 boxes":    desk.Count(3, "box"),
	} {
		assert.Equal(t, want, got)
	}
}
