package approval_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/figures"
	"trialfit/internal/figures/approval"
	"trialfit/internal/figures/figurestest"
)

const litre = 1e-3 // m³

func TestChecks(t *testing.T) {
	figurestest.Run(t, []figurestest.Check{
		{Name: "65 % opacity is 2.45 1/m", Got: approval.SmokeCoefficient(0.65, approval.PathLength), Want: 2.45, Within: 0.01,
			Kind: figurestest.Published, Source: "Central Motor Vehicles Rules of India, rule 115(2)(ii): 65 Hartridge units beside 2.45 1/m (from memory; 65 units on http://goatransport.gov.in/pollution_standards.php)"},
		{Name: "50 % opacity is 1.62 1/m", Got: approval.SmokeCoefficient(0.50, approval.PathLength), Want: 1.62, Within: 0.01,
			Kind: figurestest.Published, Source: "Central Motor Vehicles Rules of India, rule 115(2)(ii): 50 Hartridge units beside 1.62 1/m (from memory)"},
		{Name: "3.0 1/m is 72.5 %", Got: approval.Opacity(3.0, approval.PathLength), Want: 0.725, Within: 0.0005,
			Kind: figurestest.Computed, Source: "GNU units: 1 - exp(-3.0*0.43)"},
		{Name: "0.7 1/m is 26.0 %", Got: approval.Opacity(0.7, approval.PathLength), Want: 0.260, Within: 0.0005,
			Kind: figurestest.Computed, Source: "GNU units: 1 - exp(-0.7*0.43)"},
		{Name: "1.5 1/m is 47.5 %", Got: approval.Opacity(1.5, approval.PathLength), Want: 0.475, Within: 0.0005,
			Kind: figurestest.Computed, Source: "GNU units: 1 - exp(-1.5*0.43)"},
		{Name: "40 % opacity is 1.19 1/m", Got: approval.SmokeCoefficient(0.40, approval.PathLength), Want: 1.19, Within: 0.005,
			Kind: figurestest.Computed, Source: "GNU units: -ln(1-0.40)/0.43"},
		{Name: "another engine alone leaves 13 of 14 points", Got: approval.IdentityPoints(5, 2, 2, 2, 2), Want: 13, Within: 0,
			Kind: figurestest.Published, Source: "points of the British registration office, archived page of the Northern Irish one (nidirect.gov.uk): 5 + 4 times 2 + 1 for the engine"},
		{Name: "1093 kg at a factor of 4 is about 4.3 L", Got: approval.DisplacementPerMass(4.3*litre, 1093), Want: 4, Within: 0.07,
			Kind: figurestest.Published, Source: "https://mx5.net.au/viewtopic.php?p=913695 (an owner's worked example, in round litres)"},
		{Name: "1100 kg at a factor of 5 is 5.5 L", Got: approval.DisplacementPerMass(5.5*litre, 1100), Want: 5, Within: 1e-9,
			Kind: figurestest.Published, Source: "https://mx5.net.au/viewtopic.php?p=913695 (an owner's worked example)"},
		{Name: "96 kW after 80 kW is a fifth more", Got: approval.Change(96, 80), Want: 0.20, Within: 1e-12,
			Kind: figurestest.Computed, Source: "by hand"},
	})
}

// A birthday ends a year; the day before does not, nor does 28 February for
// somebody born on the 29th.
func TestYears(t *testing.T) {
	for _, c := range []struct{ from, to, want float64 }{
		{19991125, 20261124, 26},
		{19991125, 20261125, 27},
		{19991125, 20261126, 27},
		{20000229, 20250228, 24},
		{20000229, 20250301, 25},
		{20261125, 20261125, 0},
	} {
		require.Equal(t, c.want, approval.Years(c.from, c.to), c)
	}
	require.Equal(t, 27.0, approval.ModelYears(1999, 20260101))
	require.Equal(t, 27.0, approval.ModelYears(1999, 20261231))
}

func TestOverOption(t *testing.T) {
	require.Equal(t, 2.0, approval.OverOption(6, []float64{1, 3, 2}))
	options := figurestest.Fixed{
		Leaves: map[string]figures.Leaf{"engine.displacement": figurestest.Exact(3.9 * litre)},
		Lists:  map[string][]string{"chassis.engine_options": nil},
	}
	for _, f := range approval.Figures() {
		if f.ID == "approval.displacement_over_option" {
			results, _ := figures.Evaluate(f, options)
			require.Equal(t, []string{"chassis.engine_options"}, results[0].None, "nothing was offered: no share of it")
		}
	}
}

func TestRanges(t *testing.T) {
	for _, f := range approval.Figures() {
		t.Run(f.ID, func(t *testing.T) {
			figurestest.Sample(t, f, 300)
			figurestest.Refuses(t, f)
		})
	}
}
