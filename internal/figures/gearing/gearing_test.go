package gearing_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"trialfit/internal/figures"
	"trialfit/internal/figures/figurestest"
	"trialfit/internal/figures/gearing"
)

const (
	inch = 0.0254
	mph  = 0.44704          // m/s
	kmh  = 1 / 3.6          // m/s
	rpm  = 2 * math.Pi / 60 // rad/s
)

// TestGearingRegression holds every figure, as the engine evaluates it, to what
// Python makes of the same formulas.
func TestGearingRegression(t *testing.T) {
	truck := figurestest.Fixed{Leaves: map[string]figures.Leaf{
		"transmission.first":               figurestest.Exact(4.02),
		"transmission.top":                 figurestest.Exact(0.75),
		"transfer_case.high":               figurestest.Exact(1),
		"transfer_case.low":                figurestest.Exact(2.72),
		"axles.front.ratio":                figurestest.Exact(4.09),
		"axles.rear.ratio":                 figurestest.Exact(4.10),
		"chassis.tyres.rear_diameter":      figurestest.Exact(33 * inch),
		"chassis.tyres.diameter_before":    figurestest.Exact(31.65 * inch),
		"chassis.tyres.rear_size.diameter": figurestest.Exact(33 * inch),
		"engine.governed_speed":            figurestest.Exact(3200 * rpm),
		"engine.rated_speed":               figurestest.Exact(3000 * rpm),
		"engine.idle_speed":                figurestest.Exact(800 * rpm),
	}}
	for id, want := range map[string]float64{
		"gearing.crawl_ratio":       44.83104,
		"gearing.top_speed":         164.41962 * kmh,
		"gearing.cruise_speed":      1946.23976 * rpm,
		"gearing.speedometer_error": 33/31.65 - 1,
		"gearing.tyre_agreement":    1,
		"gearing.cruise_share":      1946.23976 / 3200,
		"gearing.rated_speed_ratio": 3000.0 / 3200,
		"gearing.crawl_speed":       2.81942115 * kmh,
		"gearing.rolling_radius":    0.4069461,
		"gearing.tyre_turns":        629.407808 / 1609.344,
		"gearing.axle_mismatch":     0.0024390244,
	} {
		assert.InEpsilon(t, want, value(t, id, truck), 1e-6, id)
	}
	truck.Leaves["transfer_case.low"] = figurestest.None()
	assert.InEpsilon(t, 4.02*4.10, value(t, "gearing.crawl_ratio", truck), 1e-12, "no transfer case")
}

// TestGears looks at the list of gears: each has its speed, and the largest step
// does not depend on their order.
func TestGears(t *testing.T) {
	truck := figurestest.Fixed{
		Lists: map[string][]string{"transmission.gears": {"first", "second", "third"}},
		Leaves: map[string]figures.Leaf{
			"transmission.gears.first.ratio":  figurestest.Exact(4),
			"transmission.gears.second.ratio": figurestest.Exact(1),
			"transmission.gears.third.ratio":  figurestest.Exact(2.5),
			"transfer_case.high":              figurestest.None(),
			"axles.rear.ratio":                figurestest.Exact(4),
			"chassis.tyres.rear_diameter":     figurestest.Exact(0.8),
			"engine.governed_speed":           figurestest.Exact(300),
		},
	}
	assert.InEpsilon(t, 2.5, value(t, "gearing.largest_step", truck), 1e-12)
	results, _ := figures.Evaluate(find(t, "gearing.gear_speed"), truck)
	require.Len(t, results, 3)
	for i, ratio := range []float64{4, 1, 2.5} {
		assert.InEpsilon(t, 300/(4*ratio)*0.4, results[i].Low, 1e-12)
	}
	truck.Lists["transmission.gears"] = []string{"second"}
	assert.InEpsilon(t, 1, value(t, "gearing.largest_step", truck), 1e-12)
}

// TestOutside: what a slip of the pen gives is out of bounds and no number.
func TestOutside(t *testing.T) {
	for _, x := range []float64{0, -1, 1e6} {
		truck := figurestest.Fixed{Leaves: map[string]figures.Leaf{
			"engine.idle_speed":           figurestest.Exact(x),
			"transmission.first":          figurestest.Exact(4),
			"transfer_case.low":           figurestest.None(),
			"axles.rear.ratio":            figurestest.Exact(4),
			"chassis.tyres.rear_diameter": figurestest.Exact(0.8),
		}}
		results, _ := figures.Evaluate(find(t, "gearing.crawl_speed"), truck)
		require.NotEmpty(t, results[0].Outside, "%v", x)
		truck.Leaves["chassis.tyres.rear_diameter"] = figurestest.Exact(x)
		results, _ = figures.Evaluate(find(t, "gearing.tyre_turns"), truck)
		require.NotEmpty(t, results[0].Outside, "%v", x)
	}
}

func TestRanges(t *testing.T) {
	for _, f := range gearing.Figures() {
		t.Run(f.ID, func(t *testing.T) { figurestest.Sample(t, f, 300) })
	}
}

func value(t *testing.T, id string, values figurestest.Fixed) float64 {
	t.Helper()
	return figurestest.Value(t, gearing.Figures(), id, values)
}

func find(t *testing.T, id string) *figures.Figure {
	t.Helper()
	for _, f := range gearing.Figures() {
		if f.ID == id {
			return f
		}
	}
	require.Fail(t, "no figure", id)
	return nil
}
