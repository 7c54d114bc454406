package bell_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"trialfit/internal/figures"
	"trialfit/internal/figures/bell"
	"trialfit/internal/figures/figurestest"
)

const (
	mm   = 1e-3
	inch = 25.4 * mm
)

func TestRanges(t *testing.T) {
	for _, f := range bell.Figures() {
		t.Run(f.ID, func(t *testing.T) { figurestest.Sample(t, f, 300) })
	}
}

// swap is an engine on a half-inch adapter: a drawing invented for this test.
func swap() figurestest.Fixed {
	const (
		gearbox = "transmission.bell."
		starter = "transmission.starter."
		sump    = "bay.clearances.sump-axle."
	)
	values := figurestest.Fixed{
		Lists:  map[string][]string{"bay.clearances": {"sump-axle"}},
		Leaves: map[string]figures.Leaf{"bay.engine_roll": figurestest.Exact(0.03)},
	}
	for path, x := range map[string]float64{
		"engine.rear.flywheel_face": 22 * mm, "engine.rear.pilot_face": 5 * mm,
		"engine.rear.pilot_length": 16 * mm, "engine.rear.pilot_depth": 20 * mm,
		gearbox + "adapter": 12.7 * mm, gearbox + "flywheel_needed": 9 * mm, gearbox + "input_reach": 18 * mm,
		gearbox + "nose_length": 20 * mm, gearbox + "spline_start": 25 * mm, gearbox + "spline_end": 85 * mm,
		gearbox + "hub_offset": -4 * mm, gearbox + "hub_length": 24 * mm,
		gearbox + "bore.top": 0.011 * inch, gearbox + "bore.right": 0, gearbox + "bore.bottom": -0.011 * inch, gearbox + "bore.left": 0,
		gearbox + "face.top": 0, gearbox + "face.right": 0.003 * inch, gearbox + "face.bottom": -0.002 * inch, gearbox + "face.left": 0.003 * inch,
		gearbox + "bore_limit": 0.010 * inch, gearbox + "face_limit": 0.010 * inch, gearbox + "dowels": 0.014 * inch,
		starter + "ring_distance": 35 * mm, starter + "ring_width": 12 * mm, starter + "pinion_rest": 32 * mm, starter + "pinion_out": 44 * mm,
		starter + "ring_teeth": 133, starter + "pinion_teeth": 10, starter + "module": 2.54 * mm, starter + "centre_distance": 182.2 * mm,
		sump + "gap": 90 * mm, sump + "radius": 300 * mm, sump + "mount_travel": 10 * mm, sump + "travel": 50 * mm, sump + "needed": 12 * mm,
	} {
		values.Leaves[path] = figurestest.Exact(x)
	}
	return values
}

// TestSwap reads every figure off the drawing by hand.
func TestSwap(t *testing.T) {
	for id, want := range map[string]float64{
		"bell.stack_error":           0.3 * mm,
		"bell.pilot_engagement":      10.3 * mm,
		"bell.pilot_share":           10.3 / 16,
		"bell.pilot_clearance":       9.7 * mm,
		"bell.spline_engagement":     22.3 * mm, // hub 18 to 42, spline 19.7 to 79.7
		"bell.spline_share":          22.3 / 24,
		"bell.bore_runout":           0.022 * inch,
		"bell.bore_runout_use":       2.2,
		"bell.bore_offset":           0.011 * inch,
		"bell.bore_offset_left":      0.003 * inch,
		"bell.face_runout":           0.005 * inch,
		"bell.face_runout_use":       0.5,
		"bell.pinion_gap":            3 * mm,
		"bell.pinion_share":          0.75,
		"bell.pinion_root_clearance": 1.225 * mm,
		"bell.engine_movement":       19 * mm,
		"bell.clearance_left":        21 * mm,
		"bell.clearance_margin":      9 * mm,
	} {
		assert.InEpsilon(t, want, value(t, id, swap()), 1e-9, id)
	}
}

func TestNothingBetween(t *testing.T) {
	values := swap()
	values.Leaves["transmission.bell.adapter"] = figurestest.None()
	values.Leaves["transmission.bell.dowels"] = figurestest.None()
	assert.InEpsilon(t, 13*mm, value(t, "bell.stack_error", values), 1e-9)
	assert.InEpsilon(t, 0.011*inch, value(t, "bell.bore_offset_left", values), 1e-9)
	assert.InEpsilon(t, 16*mm, value(t, "bell.pilot_engagement", values), 1e-9, "no more than the bearing is long")
	for _, leaf := range []string{"radius", "travel"} {
		values.Leaves["bay.clearances.sump-axle."+leaf] = figurestest.None()
	}
	assert.InEpsilon(t, 80*mm, value(t, "bell.clearance_left", values), 1e-9)
}

// TestDowelsOffered: the smallest dowels that bring the bore within 0.005 in.
func TestDowelsOffered(t *testing.T) {
	values := swap()
	values.Leaves["transmission.bell.dowels"] = figurestest.None()
	path, size, ok := figures.Enough(evaluate(t, "bell.bore_offset_left", values), figures.AtMost, 0.005*inch, 0.005*inch, nil)
	require.True(t, ok)
	require.Equal(t, "transmission.bell.dowels", path)
	require.Equal(t, "0.007 in", size.Label)
}

// TestOutside: what a slip of the pen gives is out of bounds and no number.
func TestOutside(t *testing.T) {
	for path, id := range map[string]string{
		"engine.rear.flywheel_face":             "bell.stack_error",
		"transmission.bell.hub_length":          "bell.spline_share",
		"transmission.bell.bore.top":            "bell.bore_offset",
		"transmission.bell.bore_limit":          "bell.bore_runout_use",
		"transmission.starter.module":           "bell.pinion_root_clearance",
		"bay.clearances.sump-axle.gap":          "bell.clearance_left",
		"bay.clearances.sump-axle.mount_travel": "bell.engine_movement",
	} {
		for _, x := range []float64{-3, 1000} {
			values := swap()
			values.Leaves[path] = figurestest.Exact(x)
			require.NotEmpty(t, evaluate(t, id, values).Outside, "%s: %v", path, x)
		}
	}
	for path, id := range map[string]string{
		"transmission.bell.hub_length": "bell.spline_share",
		"engine.rear.pilot_length":     "bell.pilot_share",
		"transmission.bell.bore_limit": "bell.bore_runout_use",
	} {
		values := swap()
		values.Leaves[path] = figurestest.Exact(0)
		require.NotEmpty(t, evaluate(t, id, values).Outside, path)
	}
}

func evaluate(t *testing.T, id string, values figurestest.Fixed) figures.Result {
	t.Helper()
	return figurestest.Result(t, bell.Figures(), id, values)
}

func value(t *testing.T, id string, values figurestest.Fixed) float64 {
	t.Helper()
	return figurestest.Value(t, bell.Figures(), id, values)
}
