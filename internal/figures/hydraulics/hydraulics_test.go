package hydraulics_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"trialfit/internal/figures"
	"trialfit/internal/figures/figurestest"
	"trialfit/internal/figures/hydraulics"
)

// Every figure for the truck, worked by another program from the same formulas.
func TestHydraulicsRegression(t *testing.T) {
	for id, want := range map[string]float64{
		"hydraulics.slave_travel":             0.01748830,
		"hydraulics.release_margin":           1.165887,
		"hydraulics.pedal_force":              105.9897,
		"hydraulics.line_pressure":            2.231182e6,
		"hydraulics.line_pressure_use":        0.3187404,
		"hydraulics.vacuum_margin":            1.250463,
		"hydraulics.vacuum_margin_altitude":   1.043515,
		"hydraulics.pump_down_time":           6.175532,
		"hydraulics.reserve_stops":            1.439822,
		"hydraulics.booster_assist":           3148.894,
		"hydraulics.brake_volume":             8.829892e-6,
		"hydraulics.brake_volume_use":         0.4573757,
		"hydraulics.pump_flow_idle":           1.272857e-4,
		"hydraulics.steering_flow_margin":     1.120844,
		"hydraulics.booster_flow_margin":      1.008760,
		"hydraulics.steering_pressure_margin": 1.125,
		"hydraulics.booster_pressure_margin":  1.08,
		"hydraulics.pump_speed_use":           0.6527473,
		"hydraulics.parking_force":            5750.494,
		"hydraulics.parking_torque":           546.9983,
		"hydraulics.parking_use":              0.7814261,
	} {
		assert.InEpsilon(t, want, value(t, id, truck()), 1e-5, id)
	}
	assert.Len(t, hydraulics.Figures(), 21, "a figure more needs its line here")
}

// A brake in the wheels has no axle between itself and the road.
func TestParkingBrakeInTheWheels(t *testing.T) {
	wheels := truck()
	wheels.Leaves["hydraulics.parking_brake.place"] = figurestest.Word("wheels")
	assert.InEpsilon(t, 4.1*546.9983, value(t, "hydraulics.parking_torque", wheels), 1e-6)
}

// With less vacuum than the booster needs there are fewer than no stops: the
// number says so and is not held at zero.
func TestNoReserve(t *testing.T) {
	weak := truck()
	weak.Leaves["vacuum.level"] = figurestest.Exact(20_000)
	assert.Less(t, value(t, "hydraulics.reserve_stops", weak), 0.0)
}

// A larger master is offered where the slave moves too little.
func TestMasterEnough(t *testing.T) {
	r := result(t, "hydraulics.release_margin", truck())
	path, size, ok := figures.Enough(r, figures.AtLeast, 1.3, 1.3, nil)
	require.True(t, ok)
	assert.Equal(t, "hydraulics.clutch.master_bore", path)
	assert.Equal(t, "13/16 in", size.Label)
}

// Brakes without a wheel cylinder listed have no volume.
func TestNoCylinders(t *testing.T) {
	bare := truck()
	bare.Lists["hydraulics.brakes.cylinders"] = nil
	assert.Equal(t, []string{"hydraulics.brakes.cylinders"}, result(t, "hydraulics.brake_volume", bare).None)
}

func TestBadInput(t *testing.T) {
	for _, f := range hydraulics.Figures() {
		figurestest.Refuses(t, f)
	}
}

func TestRanges(t *testing.T) {
	for _, f := range hydraulics.Figures() {
		t.Run(f.ID, func(t *testing.T) { figurestest.Sample(t, f, 300) })
	}
}

// truck is an invented diesel conversion.
func truck() figurestest.Fixed {
	return figurestest.Fixed{
		Leaves: map[string]figures.Leaf{
			"engine.idle_speed":                        figurestest.Exact(750 * rpm),
			"engine.governed_speed":                    figurestest.Exact(3600 * rpm),
			"chassis.ratings.gross":                    figurestest.Exact(2990),
			"chassis.tyres.rear_diameter":              figurestest.Exact(0.78),
			"registration.altitude":                    figurestest.Exact(1500),
			"axles.rear.ratio":                         figurestest.Exact(4.1),
			"hydraulics.clutch.pedal_travel":           figurestest.Exact(0.150),
			"hydraulics.clutch.pedal_ratio":            figurestest.Exact(6),
			"hydraulics.clutch.master_bore":            figurestest.Exact(0.01905),
			"hydraulics.clutch.slave_bore":             figurestest.Exact(0.0222),
			"hydraulics.clutch.slave_need":             figurestest.Exact(0.015),
			"hydraulics.clutch.release_load":           figurestest.Exact(1900),
			"hydraulics.clutch.fork_ratio":             figurestest.Exact(2.2),
			"hydraulics.clutch.pressure_limit":         figurestest.Exact(7e6),
			"hydraulics.brakes.booster_diameter":       figurestest.Exact(0.250),
			"hydraulics.brakes.booster_flow":           figurestest.Exact(2 * usgal / minute),
			"hydraulics.brakes.booster_pressure":       figurestest.Exact(1250 * psi),
			"hydraulics.brakes.master_bore":            figurestest.Exact(0.0254),
			"hydraulics.brakes.master_stroke":          figurestest.Exact(0.0381),
			"hydraulics.brakes.cylinders.front.bore":   figurestest.Exact(0.0746),
			"hydraulics.brakes.cylinders.front.count":  figurestest.Exact(2),
			"hydraulics.brakes.cylinders.front.travel": figurestest.Exact(0.0005),
			"hydraulics.brakes.cylinders.rear.bore":    figurestest.Exact(0.0254),
			"hydraulics.brakes.cylinders.rear.count":   figurestest.Exact(4),
			"hydraulics.brakes.cylinders.rear.travel":  figurestest.Exact(0.0022),
			"hydraulics.parking_brake.grade":           figurestest.Exact(0.20),
			"hydraulics.parking_brake.torque":          figurestest.Exact(700),
			"hydraulics.parking_brake.place":           figurestest.Word("shaft"),
			"hydraulics.steering.displacement":         figurestest.Exact(9.6 * cc),
			"hydraulics.steering.crank_pulley":         figurestest.Exact(0.165),
			"hydraulics.steering.pulley":               figurestest.Exact(0.140),
			"hydraulics.steering.flow_need":            figurestest.Exact(1.8 * usgal / minute),
			"hydraulics.steering.pressure_need":        figurestest.Exact(1200 * psi),
			"hydraulics.steering.relief_pressure":      figurestest.Exact(1350 * psi),
			"hydraulics.steering.speed_limit":          figurestest.Exact(6500 * rpm),
			"vacuum.level":                             figurestest.Exact(67_525),
			"vacuum.reserve_level":                     figurestest.Exact(27_000),
			"vacuum.volume":                            figurestest.Exact(9 * litre),
			"vacuum.stop_volume":                       figurestest.Exact(2.5 * litre),
			"vacuum.pump_speed":                        figurestest.Exact(1.6 * litre),
			"vacuum.consumers.booster.need":            figurestest.Exact(54_000),
		},
		Lists: map[string][]string{
			"vacuum.consumers":            {"booster"},
			"hydraulics.brakes.cylinders": {"front", "rear"},
		},
	}
}

func result(t *testing.T, id string, values figurestest.Fixed) figures.Result {
	t.Helper()
	return figurestest.Result(t, hydraulics.Figures(), id, values)
}

func value(t *testing.T, id string, values figurestest.Fixed) float64 {
	t.Helper()
	return figurestest.Value(t, hydraulics.Figures(), id, values)
}
