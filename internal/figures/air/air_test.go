package air_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"trialfit/internal/figures"
	"trialfit/internal/figures/air"
	"trialfit/internal/figures/figurestest"
)

const (
	celsius = 273.15
	psi     = 6894.757 // Pa
)

// Worked example: 18 psi of boost at 14.70 psi make 2.224:
// https://toolroost.com/turbo-pressure-ratio-calculator.
func TestPressureRatioPublished(t *testing.T) {
	assert.InDelta(t, 2.224, air.PressureRatio(18, 14.70), 0.0005)
}

// Worked examples: from 120 to 60 °C in air of 30 °C is 66.7 %,
// https://carscounsel.com/?p=52960; from 25 to 22 °C in air of 20 °C is 60 %,
// https://calculator.academy/intercooler-efficiency-calculator/.
func TestCoolerEffectivenessPublished(t *testing.T) {
	assert.InDelta(t, 0.667, air.CoolerEffectiveness(120+celsius, 60+celsius, 30+celsius), 0.0005)
	assert.InDelta(t, 0.60, air.CoolerEffectiveness(25+celsius, 22+celsius, 20+celsius), 1e-9)
}

func TestAirRegression(t *testing.T) {
	for id, want := range map[string]float64{
		"air.pressure_ratio":       1 + 20*psi/101_325,
		"air.compressor_rise":      110,
		"air.charge_rise":          20,
		"air.cooler_effectiveness": 0.8181818,
		"air.brake_pressure_use":   0.75,
		"air.back_pressure_use":    0.6666667,
	} {
		r := result(t, id, truck())
		require.True(t, r.Ok(), "%s: %+v", id, r)
		assert.InEpsilon(t, want, r.Low, 1e-6, id)
	}
}

// A charge no warmer than the air around it has nothing to be cooled by.
func TestColdChargeHasNoEffectiveness(t *testing.T) {
	cold := truck()
	cold.Leaves["charge_air.compressor_out"] = figurestest.Exact(31 + celsius)
	assert.False(t, result(t, "air.cooler_effectiveness", cold).Ok())
}

func TestRanges(t *testing.T) {
	for _, f := range air.Figures() {
		t.Run(f.ID, func(t *testing.T) { figurestest.Sample(t, f, 300) })
	}
}

func truck() figurestest.Fixed {
	return figurestest.Fixed{Leaves: map[string]figures.Leaf{
		"charge_air.boost":             figurestest.Exact(20 * psi),
		"charge_air.compressor_out":    figurestest.Exact(140 + celsius),
		"charge_air.manifold_in":       figurestest.Exact(50 + celsius),
		"charge_air.ambient":           figurestest.Exact(30 + celsius),
		"exhaust.brake.pressure":       figurestest.Exact(45 * psi),
		"exhaust.brake.pressure_limit": figurestest.Exact(60 * psi),
		"exhaust.back_pressure":        figurestest.Exact(6_000),
		"exhaust.back_pressure_limit":  figurestest.Exact(9_000),
	}}
}

func result(t *testing.T, id string, values figurestest.Fixed) figures.Result {
	t.Helper()
	for _, f := range air.Figures() {
		if f.ID == id {
			results, _ := figures.Evaluate(f, values)
			require.Len(t, results, 1)
			return results[0]
		}
	}
	require.Fail(t, "no figure", id)
	return figures.Result{}
}
