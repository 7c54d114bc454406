package torque_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"trialfit/internal/figures"
	"trialfit/internal/figures/figurestest"
	"trialfit/internal/figures/torque"
)

func TestRanges(t *testing.T) {
	for _, f := range torque.Figures() {
		t.Run(f.ID, func(t *testing.T) { figurestest.Sample(t, f, 300) })
	}
}

const rearShaft = "shafts.rear."

// truck has both axles driven and a manual gearbox.
func truck() figurestest.Fixed {
	return figurestest.Fixed{
		Lists: map[string][]string{"shafts": {"rear"}},
		Leaves: map[string]figures.Leaf{
			"engine.peak_torque":                 figurestest.Exact(290 * poundFeet),
			"engine.rating_method":               figurestest.Word("gross"),
			"engine.governed_speed":              figurestest.Exact(2800 * rpm),
			"engine.rated_power":                 figurestest.Exact(125 * hp),
			"outgoing_engine.rated_power":        figurestest.Exact(230 * hp),
			"outgoing_engine.peak_torque":        figurestest.Exact(320 * poundFeet),
			"transmission.type":                  figurestest.Word("manual"),
			"transmission.first":                 figurestest.Exact(5.61),
			"transmission.top":                   figurestest.Exact(0.73),
			"transmission.stall_ratio":           figurestest.None(),
			"transmission.input_torque_rating":   figurestest.Exact(330 * poundFeet),
			"transmission.input_speed_rating":    figurestest.Exact(4000 * rpm),
			"transmission.clutch.clamp_force":    figurestest.Exact(1800 * pound * gravity),
			"transmission.clutch.lining_outside": figurestest.Exact(12 * inch),
			"transmission.clutch.lining_inside":  figurestest.Exact(8 * inch),
			"transmission.clutch.discs":          figurestest.Exact(1),
			"transmission.clutch.friction":       figurestest.Exact(0.27),
			"transfer_case.high":                 figurestest.Exact(1),
			"transfer_case.low":                  figurestest.Exact(2.72),
			"transfer_case.input_torque_rating":  figurestest.Exact(1900 * poundFeet),
			"axles.front.ratio":                  figurestest.Exact(3.54),
			"axles.rear.ratio":                   figurestest.Exact(3.54),
			"axles.front.torque_rating":          figurestest.Exact(3200 * poundFeet),
			"axles.rear.torque_rating":           figurestest.Exact(4800 * poundFeet),
			"chassis.ratings.front_axle":         figurestest.Exact(2950 * pound),
			"chassis.ratings.rear_axle":          figurestest.Exact(3300 * pound),
			"chassis.ratings.gross":              figurestest.Exact(6000 * pound),
			"chassis.tyres.rear_diameter":        figurestest.Exact(31.625 * inch),
			rearShaft + "drives":                 figurestest.Word("rear-axle"),
			rearShaft + "joint_torque_rating":    figurestest.Exact(1100 * poundFeet),
			rearShaft + "tube_outside":           figurestest.Exact(3 * inch),
			rearShaft + "tube_wall":              figurestest.Exact(0.083 * inch),
		},
	}
}

// TestTruck holds every figure, as the engine evaluates it, to what Python makes
// of the same formulas: a regression.
func TestTruck(t *testing.T) {
	for id, want := range map[string]float64{
		"torque.gearbox_input_use":   0.834848485,
		"torque.gearbox_speed_use":   0.7,
		"torque.gearbox_output":      2095.49121,
		"torque.transfer_input_use":  0.81345,
		"torque.transfer_output":     5699.73609,
		"torque.axle_front_low":      20177.0658,
		"torque.axle_rear_low":       20177.0658,
		"torque.axle_front_slip":     3633.45902,
		"torque.axle_rear_slip":      4064.54737,
		"torque.axle_front_use":      0.837469325,
		"torque.axle_rear_use":       0.624553395,
		"torque.shaft_low":           4602.53689,
		"torque.shaft_slip":          1208.6076,
		"torque.shaft_use":           3.08605182,
		"torque.shaft_use_road":      0.810384748,
		"torque.tube_shear":          260170861,
		"torque.clutch_capacity":     549.106269,
		"torque.clutch_use":          0.680246914,
		"torque.tractive_effort_low": 39689.0461,
		"torque.pull_low":            1.48707542,
		"torque.gradeability_low":    0.66,
		"torque.tractive_effort_top": 1898.72363,
		"torque.pull_top":            0.0711416754,
		"torque.gradeability_top":    0.0562541515,
		"torque.power_per_mass":      34.2497251,
		"torque.power_ratio":         0.543478261,
		"torque.torque_ratio":        0.90625,
	} {
		assert.InEpsilon(t, want, value(t, id, truck()), 1e-6, id)
	}
}

func TestNoTransferCase(t *testing.T) {
	car := truck()
	with := value(t, "torque.shaft_low", car)
	for _, leaf := range []string{"transfer_case.low", "transfer_case.high"} {
		car.Leaves[leaf] = figurestest.None()
	}
	assert.InEpsilon(t, with/(2.72*0.95), value(t, "torque.shaft_low", car), 1e-9)
	assert.InEpsilon(t, value(t, "torque.gearbox_output", car)*3.54, value(t, "torque.axle_rear_low", car), 1e-9)
	assert.NotEmpty(t, evaluate(t, "torque.gradeability_low", car).None, "not all wheels are driven")
}

func TestUndrivenFrontAxle(t *testing.T) {
	car := truck()
	car.Leaves["axles.front.ratio"] = figurestest.None()
	rear := value(t, "torque.shaft_slip", car)
	car.Leaves[rearShaft+"drives"] = figurestest.Word("transfer-case")
	assert.InEpsilon(t, rear/(2.72*0.95), value(t, "torque.shaft_slip", car), 1e-9, "only the rear tyres hold")
	car.Leaves[rearShaft+"drives"] = figurestest.Word("front-axle")
	assert.Zero(t, value(t, "torque.shaft_slip", car))
	assert.InEpsilon(t, value(t, "torque.shaft_use", car), value(t, "torque.shaft_use_road", car), 1e-9, "no relief from tyres that do not drive")
}

func TestConverter(t *testing.T) {
	car := truck()
	manual := value(t, "torque.shaft_low", car)
	car.Leaves["transmission.type"] = figurestest.Word("automatic")
	car.Leaves["transmission.stall_ratio"] = figurestest.Exact(2)
	assert.InEpsilon(t, manual*2*0.80/0.85, value(t, "torque.shaft_low", car), 1e-9)
}

// TestOutside: what a slip of the pen gives is out of bounds and no number.
func TestOutside(t *testing.T) {
	for path, values := range map[string][]float64{
		"engine.peak_torque":          {0, -300, 1e6},
		"transmission.first":          {0, -4, 100},
		"transfer_case.low":           {-1, 100},
		"axles.rear.ratio":            {0, -4, 1000},
		"axles.rear.torque_rating":    {0, -1, 1e9},
		"chassis.tyres.rear_diameter": {0, -1, 100},
		"chassis.ratings.rear_axle":   {0, -1, 1e6},
	} {
		for _, x := range values {
			car := truck()
			car.Leaves[path] = figurestest.Exact(x)
			require.NotEmpty(t, evaluate(t, "torque.axle_rear_use", car).Outside, "%s: %v", path, x)
		}
	}
	car := truck()
	car.Leaves["transmission.clutch.clamp_force"] = figurestest.Exact(0)
	require.NotEmpty(t, evaluate(t, "torque.clutch_use", car).Outside)
	car = truck()
	car.Leaves["engine.peak_torque"] = figurestest.Exact(5000)
	car.Leaves["transmission.top"] = figurestest.Exact(5)
	require.NotEmpty(t, evaluate(t, "torque.gradeability_top", car).Outside, "a pull beyond the weight")
}

func evaluate(t *testing.T, id string, values figurestest.Fixed) figures.Result {
	t.Helper()
	return figurestest.Result(t, torque.Figures(), id, values)
}

func value(t *testing.T, id string, values figurestest.Fixed) float64 {
	t.Helper()
	return figurestest.Value(t, torque.Figures(), id, values)
}
