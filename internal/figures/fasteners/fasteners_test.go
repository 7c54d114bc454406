package fasteners_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/figures"
	"trialfit/internal/figures/fasteners"
	"trialfit/internal/figures/figurestest"
)

func TestRanges(t *testing.T) {
	for _, f := range fasteners.Figures() {
		t.Run(f.ID, func(t *testing.T) {
			figurestest.Sample(t, f, 1000)
			figurestest.Refuses(t, f)
		})
	}
}

// bracket is a group of four M12 of class 8.8 in a nut.
func bracket() figurestest.Fixed {
	leaves := map[string]figures.Leaf{}
	for leaf, x := range map[string]float64{
		"diameter": 0.012, "pitch": 0.00175, "count": 4, "torque": 88, "nut_factor": 0.2,
		"engagement": 0.0108, "planes": 1, "shear": 9000, "pull": 4000,
	} {
		leaves["frame.bolts.left."+leaf] = figurestest.Exact(x)
	}
	leaves["frame.bolts.left.class"] = figurestest.Word("class-8.8")
	leaves["frame.bolts.left.into"] = figurestest.Word("nut")
	return figurestest.Fixed{Leaves: leaves, Lists: map[string][]string{"frame.bolts": {"left"}}}
}

// The torque of the chart gives three quarters of the proof load.
func TestPreload(t *testing.T) {
	require.InDelta(t, 0.75, value(t, "fasteners.preload_use", bracket()), 0.001)
	require.InDelta(t, 88, value(t, "fasteners.tightening_torque", bracket()), 0.1)
}

// Half the bolts bear twice the share, and shear and pull add up.
func TestUse(t *testing.T) {
	at := func(id string) float64 { return value(t, id, bracket()) }
	require.InDelta(t, at("fasteners.shear_use")+at("fasteners.tension_use")/1.4, at("fasteners.together_use"), 1e-12)
	require.InDelta(t, 9000/4/at("fasteners.shear_resistance"), at("fasteners.shear_use"), 1e-12)
	require.InDelta(t, 4000/4/at("fasteners.preload"), at("fasteners.opening_use"), 1e-12)
	require.InDelta(t, 9000*1.25/4/0.2/at("fasteners.preload"), at("fasteners.slip_use"), 1e-12)
	require.InDelta(t, 0.0108/(0.8*0.012), at("fasteners.engagement_share"), 1e-12)

	two := bracket()
	two.Leaves["frame.bolts.left.count"] = figurestest.Exact(2)
	require.InDelta(t, 2*at("fasteners.shear_use"), value(t, "fasteners.shear_use", two), 1e-12)
}

// The smallest number of bolts that holds by friction alone: one M12 clamped
// with 36.7 kN holds 5.9 kN, so 9 kN take two, and 25 kN five.
func TestBoltsEnough(t *testing.T) {
	v := bracket()
	for load, want := range map[float64]string{9_000: "2", 25_000: "5"} {
		v.Leaves["frame.bolts.left.shear"] = figurestest.Exact(load)
		path, size, ok := figures.Enough(result(t, "fasteners.slip_use", v), figures.AtMost, 1, 1, nil)
		require.True(t, ok)
		require.Equal(t, "frame.bolts.left.count", path)
		require.Equal(t, want, size.Label)
	}
}

// A size that a grade does not cover has no strength.
func TestSizeBeyondTheGrade(t *testing.T) {
	v := bracket()
	v.Leaves["frame.bolts.left.class"] = figurestest.Word("grade-2")
	v.Leaves["frame.bolts.left.diameter"] = figurestest.Exact(0.875 * inch)
	v.Leaves["frame.bolts.left.pitch"] = figurestest.Exact(inch / 9)
	r := result(t, "fasteners.proof_load", v)
	require.Len(t, r.Outside, 1)
	require.Equal(t, "fasteners.size_in_class", r.Outside[0].Path)
	v.Leaves["frame.bolts.left.diameter"] = figurestest.Exact(0.75 * inch)
	require.True(t, result(t, "fasteners.proof_load", v).Ok())
}

// Class 8.8 gains a little beyond M16, never loses.
func TestThickBolts(t *testing.T) {
	c := class("class-8.8")
	require.Less(t, fasteners.ProofLoad(c, 0.016, 0.002), fasteners.ProofLoad(c, 0.0161, 0.002))
	require.InDelta(t, 580e6, c.ProofStress(0.016), 1)
	require.InDelta(t, 600e6, c.ProofStress(0.018), 1)
}

// A hole with no other near has no distance to it.
func TestLoneHole(t *testing.T) {
	v := figurestest.Fixed{
		Leaves: map[string]figures.Leaf{
			"frame.holes.one.diameter": figurestest.Exact(0.0143),
			"frame.holes.one.edge":     figurestest.Exact(0.04),
			"frame.holes.one.gap":      figurestest.None(),
		},
		Lists: map[string][]string{"frame.holes": {"one"}},
	}
	require.InDelta(t, 0.04/0.0143+0.5, value(t, "fasteners.edge_distance", v), 1e-12)
	require.Equal(t, []string{"frame.holes.one.gap"}, result(t, "fasteners.hole_distance", v).None)
}

func result(t *testing.T, id string, values figurestest.Fixed) figures.Result {
	t.Helper()
	return figurestest.Result(t, fasteners.Figures(), id, values)
}

func value(t *testing.T, id string, values figurestest.Fixed) float64 {
	t.Helper()
	return figurestest.Value(t, fasteners.Figures(), id, values)
}
