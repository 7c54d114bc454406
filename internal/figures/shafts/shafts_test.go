package shafts_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"trialfit/internal/figures"
	"trialfit/internal/figures/figurestest"
	"trialfit/internal/figures/shafts"
)

func TestRanges(t *testing.T) {
	for _, f := range shafts.Figures() {
		t.Run(f.ID, func(t *testing.T) { figurestest.Sample(t, f, 300) })
	}
}

// truck is a rear shaft of 52 in behind a transfer case, in one plane.
func truck() figurestest.Fixed {
	const s = "shafts.rear."
	return figurestest.Fixed{
		Lists: map[string][]string{"shafts": {"rear"}},
		Leaves: map[string]figures.Leaf{
			"engine.governed_speed":       figurestest.Exact(2800 * rpm),
			"transmission.top":            figurestest.Exact(0.73),
			"transfer_case.high":          figurestest.Exact(1),
			"axles.rear.ratio":            figurestest.Exact(3.54),
			"chassis.tyres.rear_diameter": figurestest.Exact(31.625 * inch),
			s + "drives":                  figurestest.Word("rear-axle"),
			s + "length":                  figurestest.Exact(52 * inch),
			s + "tube_outside":            figurestest.Exact(3 * inch),
			s + "tube_wall":               figurestest.Exact(0.083 * inch),
			s + "side.driving":            figurestest.Exact(4 * degree),
			s + "side.shaft":              figurestest.Exact(9.5 * degree),
			s + "side.driven":             figurestest.Exact(4.5 * degree),
			s + "plan.driving":            figurestest.Exact(0),
			s + "plan.shaft":              figurestest.Exact(0),
			s + "plan.driven":             figurestest.Exact(0),
			s + "joint_driving":           figurestest.Word("cardan"),
			s + "joint_driven":            figurestest.Word("cardan"),
			s + "phasing":                 figurestest.Exact(0),
			s + "joint_angle_limit":       figurestest.Exact(30 * degree),
			s + "slip.shortest":           figurestest.Exact(50 * inch),
			s + "slip.longest":            figurestest.Exact(54 * inch),
			s + "slip.at_bump":            figurestest.Exact(51.25 * inch),
			s + "slip.at_droop":           figurestest.Exact(52.75 * inch),
			s + "travel.bump":             figurestest.Exact(4 * inch),
			s + "travel.droop":            figurestest.Exact(5 * inch),
		},
	}
}

// TestTruck holds every figure, as the engine evaluates it, to what Python makes
// of the same formulas: a regression.
func TestTruck(t *testing.T) {
	for id, want := range map[string]float64{
		"shafts.speed":                  2800 / 0.73 * rpm,
		"shafts.angle_driving_end":      5.5 * degree,
		"shafts.angle_driven_end":       5 * degree,
		"shafts.angle_difference":       0.5 * degree,
		"shafts.angle_driving_end_use":  5.5 / 4.44,
		"shafts.angle_driven_end_use":   5 / 4.44,
		"shafts.angle_droop":            10.833312 * degree,
		"shafts.angle_droop_use":        10.833312 / 30,
		"shafts.torsional_acceleration": 258.0130,
		"shafts.inertia_drive":          1486.6464,
		"shafts.inertia_coast":          1228.6334,
		"shafts.critical_speed":         7180.92026 * rpm,
		"shafts.critical_speed_use":     2800 / 0.73 / 7180.92026,
		"shafts.half_critical":          2 * 2337.96437 / 7180.92026,
		"shafts.slip_left_bump":         1.25 * inch,
		"shafts.slip_left_droop":        1.25 * inch,
		"shafts.length_change_bump":     -0.50883381 * inch,
		"shafts.length_change_droop":    1.05492206 * inch,
	} {
		assert.InEpsilon(t, want, value(t, id, truck()), 1e-6, id)
	}
}

func TestConstantVelocityJoint(t *testing.T) {
	shaft := truck()
	shaft.Leaves["shafts.rear.joint_driving"] = figurestest.Word("constant-velocity")
	assert.InEpsilon(t, 5*degree, value(t, "shafts.angle_difference", shaft), 1e-9, "the cardan joint is left alone")
	assert.InEpsilon(t, value(t, "shafts.inertia_coast", shaft), value(t, "shafts.torsional_acceleration", shaft), 1e-9)
	assert.Zero(t, value(t, "shafts.inertia_drive", shaft))
}

func TestShaftAheadOfTransferCase(t *testing.T) {
	shaft := truck()
	shaft.Leaves["transfer_case.high"] = figurestest.Exact(1.2)
	assert.InEpsilon(t, 2800/0.73/1.2*rpm, value(t, "shafts.speed", shaft), 1e-9)
	behind := value(t, "shafts.half_critical", shaft)
	shaft.Leaves["shafts.rear.drives"] = figurestest.Word("transfer-case")
	assert.InEpsilon(t, 2800/0.73*rpm, value(t, "shafts.speed", shaft), 1e-9)
	assert.InEpsilon(t, 1.2*behind, value(t, "shafts.half_critical", shaft), 1e-9)
}

func TestJointAngleTable(t *testing.T) {
	assert.InDelta(t, 11.5, shafts.AngleLimit(0)/degree, 1e-9)
	assert.InDelta(t, 11.5, shafts.AngleLimit(800*rpm)/degree, 1e-9)
	assert.InDelta(t, 5.469, shafts.AngleLimit(3200*rpm)/degree, 1e-3, "between 5.41 of the law and 5.50 of a straight line")
	assert.InDelta(t, 2.667, shafts.AngleLimit(6000*rpm)/degree, 1e-3, "3.2° at 5000 rpm, kept as an acceleration")
	last := shafts.AngleLimit(0)
	for n := 100.0; n <= 6000; n += 100 {
		limit := shafts.AngleLimit(n * rpm)
		require.LessOrEqual(t, limit, last, "%v rpm", n)
		last = limit
	}
}

// TestOutside: what a slip of the pen gives is out of bounds and no number.
func TestOutside(t *testing.T) {
	for path, values := range map[string][]float64{
		"shafts.rear.length":       {0, -1, 1000},
		"shafts.rear.tube_outside": {0, -0.1, 3},
		"shafts.rear.tube_wall":    {0, -0.001, 1},
		"engine.governed_speed":    {0, -100, 1e6},
		"transmission.top":         {0, -1, 100},
	} {
		for _, x := range values {
			shaft := truck()
			shaft.Leaves[path] = figurestest.Exact(x)
			result := evaluate(t, "shafts.critical_speed_use", shaft)
			require.False(t, result.Ok(), "%s: %v", path, x)
			require.NotEmpty(t, result.Outside, "%s: %v", path, x)
		}
	}
	shaft := truck()
	shaft.Leaves["shafts.rear.side.shaft"] = figurestest.Exact(80 * degree)
	require.NotEmpty(t, evaluate(t, "shafts.angle_driving_end", shaft).Outside)
	shaft = truck()
	shaft.Leaves["engine.governed_speed"] = figurestest.Exact(9000 * rpm)
	require.NotEmpty(t, evaluate(t, "shafts.angle_driving_end_use", shaft).Outside, "beyond the table")
}

func evaluate(t *testing.T, id string, values figurestest.Fixed) figures.Result {
	t.Helper()
	return figurestest.Result(t, shafts.Figures(), id, values)
}

func value(t *testing.T, id string, values figurestest.Fixed) float64 {
	t.Helper()
	return figurestest.Value(t, shafts.Figures(), id, values)
}
