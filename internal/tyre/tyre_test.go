package tyre_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"trialfit/internal/tyre"
)

// Rows of https://garagecalc.co/tires/tire-size-comparison-chart (to 0.1 in),
// the worked examples of https://www.explorerforum.com/forums/threads/size-does-matter.125551
// (265/75R15) and https://tiresize.com/tire-size-meaning (305/70R17, 33X12.50R15),
// and 804 mm of https://tireblogger.com/265-75r16-in-inches/.
func TestDiameterPublished(t *testing.T) {
	for code, inches := range map[string]float64{
		"205/55R16": 24.9, "225/45R17": 25.0, "245/50R20": 29.6, "265/70R17": 31.6, "285/70R17": 32.7,
		"P265/75R15": 30.649, "305/70R17": 33.81, "33X12.50R15": 33, "265/75R16": 804 / 25.4,
	} {
		size, err := tyre.Parse(code)
		require.NoError(t, err, code)
		assert.InDelta(t, inches, size.Diameter/0.0254, 0.06, code)
	}
}

func TestWaysOfWriting(t *testing.T) {
	for _, code := range []string{"265/75R16", "LT265/75R16", "lt 265/75 r 16", "265/75R16 112Q", "LT265/75R16C 112/109Q", "265/75-16", "P265/75R16"} {
		size, err := tyre.Parse(code)
		require.NoError(t, err, code)
		assert.InEpsilon(t, 0.8039, size.Diameter, 1e-9, code)
		assert.InEpsilon(t, 0.4064, size.Rim, 1e-9, code)
	}
	for _, code := range []string{"33x12.50R15", "33 x 12.50 R15LT", "33×12.5-15", "33X12.50R15 108Q"} {
		size, err := tyre.Parse(code)
		require.NoError(t, err, code)
		assert.InEpsilon(t, 0.8382, size.Diameter, 1e-9, code)
	}
}

func TestFullProfileHasNoDiameter(t *testing.T) {
	for _, code := range []string{"7.50R16", "7.50-16", "205R16", "205R16C", "10.00R20"} {
		_, err := tyre.Parse(code)
		assert.ErrorIs(t, err, tyre.ErrNoDiameter, code)
	}
}

func TestRefused(t *testing.T) {
	for _, code := range []string{"", "large", "265", "265/75", "265/75/16", "R16", "12x33R15", "265/7516"} {
		_, err := tyre.Parse(code)
		require.Error(t, err, code)
		assert.NotErrorIs(t, err, tyre.ErrNoDiameter, code)
	}
}
