package lifting_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"trialfit/internal/figures"
	"trialfit/internal/figures/figurestest"
	"trialfit/internal/figures/lifting"
)

const (
	degree = math.Pi / 180
	pound  = 0.45359237 // kg
)

// Worked example of a sling maker: 10 000 lb on two legs at 45° pull 7070 lb in
// each: https://www.sharrowlifting.com/wp-content/themes/sharrowliftingproducts/assets/flipbook/files/simple/99.html.
func TestLegTensionPublished(t *testing.T) {
	assert.InEpsilon(t, 7070*pound, lifting.LegTension(10_000*pound, 2, 45*degree), 0.0005)
}

// Worked example: a leg 120 in long and 96 in high that would carry 1200 lb
// upright carries 1500 lb: https://ashleysling.com/calculating-sling-angles/.
func TestLegFactorPublished(t *testing.T) {
	angle := math.Asin(96.0 / 120)
	assert.InEpsilon(t, 1500*pound, lifting.LegTension(2*1200*pound, 2, angle), 1e-9)
}

// Load angle factors of the same two pages.
func TestLoadAngleFactorsPublished(t *testing.T) {
	for angle, factor := range map[float64]float64{
		90: 1.000, 85: 1.004, 80: 1.015, 75: 1.035, 70: 1.064, 65: 1.104, 60: 1.155,
		55: 1.221, 50: 1.305, 45: 1.414, 40: 1.555, 35: 1.742, 30: 2.000,
	} {
		assert.InDelta(t, factor, lifting.LegTension(1, 1, angle*degree), 0.0016, "%v°", angle)
	}
}

// A rigid load rests on two legs, however many there are: common practice.
func TestMoreLegsDoNotHelp(t *testing.T) {
	two := lifting.LegTension(500, 2, 60*degree)
	assert.Equal(t, two, lifting.LegTension(500, 4, 60*degree))
	assert.InEpsilon(t, 2*two, lifting.LegTension(500, 1, 60*degree), 1e-12)
}

func TestLiftRegression(t *testing.T) {
	lift := figurestest.Fixed{
		Leaves: map[string]figures.Leaf{
			"lifting.lifts.engine.load":        figurestest.Exact(640),
			"lifting.lifts.engine.tackle":      figurestest.Exact(18),
			"lifting.lifts.engine.legs":        figurestest.Exact(4),
			"lifting.lifts.engine.leg_angle":   figurestest.Exact(60 * degree),
			"lifting.lifts.engine.leg_limit":   figurestest.Exact(1000),
			"lifting.lifts.engine.crane_limit": figurestest.Exact(500),
		},
		Lists: map[string][]string{"lifting.lifts": {"engine"}},
	}
	for id, want := range map[string]float64{
		"lifting.hook_load":   658,
		"lifting.crane_use":   1.316,
		"lifting.leg_tension": 379.8965,
		"lifting.leg_use":     0.3798965,
	} {
		assert.InEpsilon(t, want, value(t, id, lift), 1e-6, id)
	}
	lift.Leaves["lifting.lifts.engine.leg_angle"] = figurestest.Between(85*degree, 95*degree)
	lift.Leaves["lifting.lifts.engine.legs"] = figurestest.Exact(2)
	r := result(t, "lifting.leg_tension", lift)
	assert.InEpsilon(t, 329, r.Low, 1e-6, "plumb lies inside the spread of an upright leg")
}

func TestRanges(t *testing.T) {
	for _, f := range lifting.Figures() {
		t.Run(f.ID, func(t *testing.T) { figurestest.Sample(t, f, 300) })
	}
}

func result(t *testing.T, id string, values figurestest.Fixed) figures.Result {
	t.Helper()
	for _, f := range lifting.Figures() {
		if f.ID == id {
			results, _ := figures.Evaluate(f, values)
			require.Len(t, results, 1)
			return results[0]
		}
	}
	require.Fail(t, "no figure", id)
	return figures.Result{}
}

func value(t *testing.T, id string, values figurestest.Fixed) float64 {
	t.Helper()
	r := result(t, id, values)
	require.True(t, r.Ok(), "%s: %+v", id, r)
	return r.Low
}
