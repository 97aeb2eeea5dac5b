package main

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
)

func TestPaceIsReadAsItIsWritten(t *testing.T) {
	p := pace{start: time.Unix(100, 5), real: time.Unix(7, 3), speed: 60}
	again, err := parsePace(p.String())
	assert.NoError(t, err)
	assert.Equal(t, p, again)
	for _, bad := range []string{"1", "1,2", "1,2,x", "1,2,0", "1,2,-3", "a,2,1"} {
		_, err := parsePace(bad)
		assert.Error(t, err, bad)
	}
}
