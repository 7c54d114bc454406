package cooling_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"trialfit/internal/figures/cooling"
	"trialfit/internal/figures/figurestest"
)

// Common practice: heater hose of 5/8 in goes on spigots of 5/8 in and 16 mm,
// not on one of 3/4 in.
func TestHoseStretch(t *testing.T) {
	const hose = 5.0 / 8 * 25.4
	assert.InDelta(t, 1, cooling.HoseStretch(hose, hose), 1e-12)
	assert.InDelta(t, 1, cooling.HoseStretch(16, hose), 0.02)
	assert.InEpsilon(t, 1.2, cooling.HoseStretch(3.0/4*25.4, hose), 1e-9)
}

func TestRanges(t *testing.T) {
	for _, f := range cooling.Figures() {
		t.Run(f.ID, func(t *testing.T) { figurestest.Sample(t, f, 300) })
	}
}
