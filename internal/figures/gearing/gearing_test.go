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

// Worked examples: a truck at 50 mph with 6.66 gears and 37.5 in tyres turns
// 2983 rpm, http://sagebrushstudebaker.com/fixlst20.html; 70 mph, axle 3.42, top
// gear 0.70 and 28 in tyres make 2011 rpm,
// https://axletally-v2.pages.dev/gear-ratio-calculator/.
func TestEngineSpeedPublished(t *testing.T) {
	truck := gearing.EngineSpeed(50*mph, gearing.OverallRatio(1, 1, 6.66), 37.5*inch)
	assert.InDelta(t, 2983, truck/rpm, 2, "the trade rounds 336.14 to 336")
	car := gearing.EngineSpeed(70*mph, gearing.OverallRatio(0.70, 1, 3.42), 28*inch)
	assert.InDelta(t, 2011, car/rpm, 1)
}

// Worked example: 1750 rpm, 29 in tyres and a ratio of 2.72 make 55.51 mph:
// https://wagoneers.com/tech/gears.html.
func TestRoadSpeedPublished(t *testing.T) {
	assert.InDelta(t, 55.51, gearing.RoadSpeed(1750*rpm, 2.72, 29*inch)/mph, 0.005)
}

// Worked example: 6.32 × 2.72 × 4.56 = 78.39:
// http://www.high-impact.net/transmission_and_gear/definitions_page.htm.
func TestCrawlRatioPublished(t *testing.T) {
	assert.InDelta(t, 78.39, gearing.OverallRatio(6.32, 2.72, 4.56), 0.005)
}

// Published comparison: with 36.03 in tyres before and 34.6 in tyres now, 60 mph
// shown are 57.62 mph true: https://tacomaworld.com/tirecalc?tires=36-12.5r16.5-315-75r16.
func TestSpeedometerPublished(t *testing.T) {
	assert.InDelta(t, 57.62, 60*(1+gearing.SpeedometerError(34.6*inch, 36.03*inch)), 0.005)
}

func TestGearingRegression(t *testing.T) {
	truck := figurestest.Fixed{Leaves: map[string]figures.Leaf{
		"transmission.first":               figurestest.Exact(4.02),
		"transmission.top":                 figurestest.Exact(0.75),
		"transfer_case.high":               figurestest.Exact(1),
		"transfer_case.low":                figurestest.Exact(2.72),
		"axles.rear.ratio":                 figurestest.Exact(4.10),
		"chassis.tyres.rear_diameter":      figurestest.Exact(33 * inch),
		"chassis.tyres.diameter_before":    figurestest.Exact(31.65 * inch),
		"chassis.tyres.rear_size.diameter": figurestest.Exact(33 * inch),
		"engine.governed_speed":            figurestest.Exact(3200 * rpm),
	}}
	for id, want := range map[string]float64{
		"gearing.crawl_ratio":       44.83104,
		"gearing.top_speed":         164.41962 * kmh,
		"gearing.cruise_speed":      1946.23976 * rpm,
		"gearing.speedometer_error": 33/31.65 - 1,
		"gearing.tyre_agreement":    1,
	} {
		assert.InEpsilon(t, want, value(t, id, truck), 1e-6, id)
	}
	truck.Leaves["transfer_case.low"] = figurestest.None()
	assert.InEpsilon(t, 4.02*4.10, value(t, "gearing.crawl_ratio", truck), 1e-12, "no transfer case")
}

func TestRanges(t *testing.T) {
	for _, f := range gearing.Figures() {
		t.Run(f.ID, func(t *testing.T) { figurestest.Sample(t, f, 300) })
	}
}

func value(t *testing.T, id string, values figurestest.Fixed) float64 {
	t.Helper()
	for _, f := range gearing.Figures() {
		if f.ID == id {
			results, _ := figures.Evaluate(f, values)
			require.Len(t, results, 1)
			require.True(t, results[0].Ok(), "%s: %+v", id, results[0])
			return results[0].Low
		}
	}
	require.Fail(t, "no figure", id)
	return 0
}
