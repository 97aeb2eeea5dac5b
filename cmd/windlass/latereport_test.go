package main

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
)

// The percentile is the nearest rank above: of 1000 seconds the 999th is late by
// 999 ms at p99.9.
func TestPercentilesOfLateness(t *testing.T) {
	var all []time.Duration
	for i := 1000; i > 0; i-- {
		all = append(all, time.Duration(i)*time.Millisecond)
	}
	assert.Equal(t, []float64{500, 950, 990, 999, 1000}, percentiles(all))
	assert.Equal(t, []float64{7, 7, 7, 7, 7}, percentiles([]time.Duration{7 * time.Millisecond}))
	assert.Contains(t, tell("class alone", nil), "none")
	assert.Contains(t, tell("class alone", all), "n 1000  p50 500.00  p95 950.00  p99 990.00  p99.9 999.00  max 1000.00 ms")
}
