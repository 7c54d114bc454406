package electrical_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"trialfit/internal/figures"
	"trialfit/internal/figures/electrical"
	"trialfit/internal/figures/figurestest"
)

// TestCrankingPartsMakeTheLoop: what the cables and the contacts lose is what
// the loop loses.
func TestCrankingPartsMakeTheLoop(t *testing.T) {
	exact := figurestest.Exact
	loop := figurestest.Fixed{
		Leaves: map[string]figures.Leaf{
			"electrical.cranking.cables.feed.conductor":   exact(67e-6),
			"electrical.cranking.cables.feed.length":      exact(1.5),
			"electrical.cranking.cables.feed.parallel":    exact(1),
			"electrical.cranking.cables.return.conductor": exact(35e-6),
			"electrical.cranking.cables.return.length":    exact(1.2),
			"electrical.cranking.cables.return.parallel":  exact(2),
			"electrical.cranking.contacts":                exact(0.4e-3),
			"electrical.cranking.temperature":             exact(40 + zero),
			"electrical.cranking.current":                 exact(480),
		},
		Lists: map[string][]string{"electrical.cranking.cables": {"feed", "return"}},
	}
	sum := map[string]float64{}
	for _, f := range electrical.Figures() {
		switch f.ID {
		case "electrical.cranking_drop", "electrical.cranking_cable_drop", "electrical.cranking_contact_drop":
			results, _ := figures.Evaluate(f, loop)
			for _, r := range results {
				assert.True(t, r.Ok(), "%+v", r)
				sum[f.ID] += r.Low
			}
		}
	}
	assert.InEpsilon(t, sum["electrical.cranking_drop"], sum["electrical.cranking_cable_drop"]+sum["electrical.cranking_contact_drop"], 1e-12)
}
