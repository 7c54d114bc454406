package lifting_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"trialfit/internal/figures"
	"trialfit/internal/figures/figurestest"
	"trialfit/internal/figures/lifting"
)

// A rigid load rests on two legs, however many there are: common practice.
func TestMoreLegsDoNotHelp(t *testing.T) {
	two := lifting.LegTension(500, 2, 60*degree)
	assert.Equal(t, two, lifting.LegTension(500, 4, 60*degree))
	assert.InEpsilon(t, 2*two, lifting.LegTension(500, 1, 60*degree), 1e-12)
}

// A leg that may hang plumb pulls least there.
func TestUprightLeg(t *testing.T) {
	lift := engineLift()
	lift.Leaves["lifting.lifts.engine.leg_angle"] = figurestest.Between(85*degree, 95*degree)
	lift.Leaves["lifting.lifts.engine.legs"] = figurestest.Exact(2)
	r := result(t, "lifting.leg_tension", lift)
	assert.InEpsilon(t, 329, r.Low, 1e-6, "plumb lies inside the spread of an upright leg")
}

// The vertical pulls of two unlike legs carry what hangs on the hook, and both
// ways to measure them agree.
func TestUnlikeLegs(t *testing.T) {
	const a, b, h = 0.26, 0.39, 0.75
	first, second := math.Atan2(h, a), math.Atan2(h, b)
	lift := engineLift()
	for leaf, x := range map[string]float64{
		"first_angle": first, "second_angle": second, "first_offset": a, "second_offset": b, "hook_above_eyes": h,
	} {
		lift.Leaves["lifting.lifts.engine."+leaf] = figurestest.Exact(x)
	}
	at := func(id string) float64 { return value(t, id, lift) }
	assert.InDelta(t, 658, at("lifting.first_leg_tension")*math.Sin(first)+at("lifting.second_leg_tension")*math.Sin(second), 1e-9)
	assert.InDelta(t, at("lifting.first_leg_tension"), at("lifting.first_leg_by_tape"), 1e-9)
	assert.InDelta(t, at("lifting.second_leg_tension"), at("lifting.second_leg_by_tape"), 1e-9)
	assert.InDelta(t, at("lifting.first_leg_tension")/1000, at("lifting.uneven_leg_use"), 1e-9, "the nearer eye bears more")
	assert.InDelta(t, at("lifting.uneven_leg_use"), at("lifting.uneven_leg_use_by_tape"), 1e-9)
	assert.InDelta(t, 640*0.6, at("lifting.first_end_load"), 1e-9)
}

// The estimate never exceeds the plate it starts from.
func TestEstimateNoMoreThanThePlate(t *testing.T) {
	lift := engineLift()
	lift.Leaves["lifting.lifts.engine.near_limit"] = figurestest.Exact(1000)
	lift.Leaves["lifting.lifts.engine.near_reach"] = figurestest.Exact(1.1)
	lift.Leaves["lifting.lifts.engine.reach"] = figurestest.Exact(0.9)
	assert.Equal(t, 1000.0, value(t, "lifting.crane_limit_estimate", lift))
	assert.InDelta(t, 0.658, value(t, "lifting.crane_estimate_use", lift), 1e-9)
}

// A forgotten gearbox shows in the share of the parts.
func TestParts(t *testing.T) {
	lift := engineLift()
	lift.Lists["lifting.lifts.engine.parts"] = []string{"engine", "gearbox"}
	lift.Leaves["lifting.lifts.engine.parts.engine.mass"] = figurestest.Exact(545)
	lift.Leaves["lifting.lifts.engine.parts.gearbox.mass"] = figurestest.Exact(95)
	assert.InDelta(t, 658, value(t, "lifting.hook_load_of_parts", lift), 1e-9)
	assert.InDelta(t, 1, value(t, "lifting.parts_share", lift), 1e-12)
	lift.Lists["lifting.lifts.engine.parts"] = []string{"engine"}
	assert.InDelta(t, 545.0/640, value(t, "lifting.parts_share", lift), 1e-12)
	lift.Lists["lifting.lifts.engine.parts"] = nil
	assert.Equal(t, []string{"lifting.lifts.engine.parts"}, result(t, "lifting.parts_share", lift).None)
}

// A hook behind the crane's front wheels holds it down.
func TestTipping(t *testing.T) {
	lift := engineLift()
	lift.Leaves["lifting.lifts.engine.crane_mass"] = figurestest.Exact(95)
	lift.Leaves["lifting.lifts.engine.crane_arm"] = figurestest.Exact(0.85)
	lift.Leaves["lifting.lifts.engine.overhang"] = figurestest.Between(-0.1, 0.05)
	r := result(t, "lifting.tipping_use", lift)
	assert.InDelta(t, -0.1*658/(95*0.85), r.Low, 1e-9)
	assert.InDelta(t, 0.05*658/(95*0.85), r.High, 1e-9)
}

// Level is within the spread of a centre of gravity about the plumb line.
func TestTilt(t *testing.T) {
	lift := engineLift()
	lift.Leaves["lifting.lifts.engine.cg_offset"] = figurestest.Between(-0.02, 0.05)
	lift.Leaves["lifting.lifts.engine.hook_above_cg"] = figurestest.Between(0.6, 0.7)
	lift.Leaves["lifting.lifts.engine.leveller_travel"] = figurestest.Exact(0.15)
	r := result(t, "lifting.tilt", lift)
	assert.InDelta(t, -math.Atan(0.02/0.6), r.Low, 1e-9)
	assert.InDelta(t, math.Atan(0.05/0.6), r.High, 1e-9)
	r = result(t, "lifting.leveller_use", lift)
	assert.InDelta(t, 0, r.Low, 1e-9)
	assert.InDelta(t, 1.0/3, r.High, 1e-9)
}

func TestClearance(t *testing.T) {
	lift := engineLift()
	for leaf, x := range map[string]float64{"hook_height": 2.18, "tackle_height": 0.56, "load_depth": 0.66, "to_clear": 0.86} {
		lift.Leaves["lifting.lifts.engine."+leaf] = figurestest.Exact(x)
	}
	assert.InDelta(t, 0.10, value(t, "lifting.clearance", lift), 1e-9)
}

func TestRanges(t *testing.T) {
	for _, f := range lifting.Figures() {
		t.Run(f.ID, func(t *testing.T) {
			figurestest.Sample(t, f, 300)
			figurestest.Refuses(t, f)
		})
	}
}

func result(t *testing.T, id string, values figurestest.Fixed) figures.Result {
	t.Helper()
	return figurestest.Result(t, lifting.Figures(), id, values)
}

func value(t *testing.T, id string, values figurestest.Fixed) float64 {
	t.Helper()
	return figurestest.Value(t, lifting.Figures(), id, values)
}
