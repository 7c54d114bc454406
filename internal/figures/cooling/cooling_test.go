package cooling_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"trialfit/internal/figures"
	"trialfit/internal/figures/cooling"
	"trialfit/internal/figures/figurestest"
	"trialfit/internal/figures/fluid"
)

// One truck, every figure: what the declarations feed to the formulas.
func TestTruck(t *testing.T) {
	for id, want := range map[string]float64{
		"cooling.heat_by_share":                50_000,
		"cooling.heat_ratio":                   0.55,
		"cooling.temperature_rise":             55_000 / (140 * litre / 60 * 3.72e6),
		"cooling.flow_needed":                  55_000 / (8 * 3.72e6),
		"cooling.upper_hose_speed":             1.5036383,
		"cooling.lower_hose_speed":             1.1512231,
		"cooling.heater_hose_stretch":          1,
		"cooling.inlet_difference":             50,
		"cooling.radiator_capacity_hot":        60_000 * 50 / 55.0,
		"cooling.radiator_use":                 55.0 / (60 * 50 / 55.0),
		"cooling.radiator_use_by_share":        50.0 / (60 * 50 / 55.0),
		"cooling.limiting_ambient_by_radiator": 41.5833333 + celsius,
		"cooling.top_tank_rise":                57,
		"cooling.limiting_ambient":             43 + celsius,
		"cooling.boiling_point":                cooling.CoolantBoils(fluid.StandardPressure(2000)+15*psi, 0.5),
		"cooling.boil_margin":                  cooling.CoolantBoils(fluid.StandardPressure(2000)+15*psi, 0.5) - 100 - celsius,
		"cooling.air_to_boil":                  cooling.CoolantBoils(fluid.StandardPressure(2000)+15*psi, 0.5) - 57*1.274605,
		"cooling.air_flow_needed":              1.7758207,
		"cooling.face_speed":                   1.7758207 / (0.45 * 0.65),
		"cooling.fan_flow_use":                 1.7758207 / 2.2,
		"cooling.fan_speed":                    2800 * rpm * 1.1,
		"cooling.fan_tip_speed":                2800 * rpm * 1.1 * 0.225,
		"cooling.fan_speed_use":                2800 * 1.1 / 4500,
		"cooling.fan_to_core_share":            0.025 / 0.45,
		"cooling.tip_clearance_share":          0.012 / 0.45,
		"cooling.fan_coverage":                 0.5437372,
		"cooling.shroud_coverage":              0.60 / 0.65,
		"cooling.expansion":                    14 * litre * 0.0435,
		"cooling.expansion_use":                14 * 0.0435 / 1.2,
		"cooling.expansion_share":              1.2 / 14,
	} {
		r := result(t, id, truck())
		require.True(t, r.Ok(), "%s: %+v", id, r)
		assert.InEpsilon(t, want, r.Low, 2e-6, id)
	}
	assert.Len(t, cooling.Figures(), 30)
}

// An electric fan does not follow the crankshaft.
func TestElectricFanHasNoDrivenSpeed(t *testing.T) {
	electric := truck()
	electric.Leaves["cooling.fan_ratio"] = figurestest.None()
	assert.Equal(t, []string{"cooling.fan_ratio"}, result(t, "cooling.fan_speed", electric).None)
}

// A day hotter than the coolant may be leaves the radiator nothing to shed.
func TestNoDifferenceNoCapacity(t *testing.T) {
	hot := truck()
	hot.Leaves["cooling.top_limit"] = figurestest.Exact(45 + celsius)
	r := result(t, "cooling.radiator_use", hot)
	require.Len(t, r.Outside, 1)
	assert.Equal(t, "cooling.inlet_difference", r.Outside[0].Path)
}

func TestBadValuesAreOutside(t *testing.T) {
	for path, id := range map[string]string{
		"cooling.coolant_flow":      "cooling.temperature_rise",
		"cooling.upper_hose":        "cooling.upper_hose_speed",
		"cooling.radiator_capacity": "cooling.radiator_use",
		"cooling.core_height":       "cooling.face_speed",
		"cooling.fan_diameter":      "cooling.tip_clearance_share",
		"cooling.expansion_volume":  "cooling.expansion_use",
		"cooling.cap_pressure":      "cooling.boiling_point",
		"registration.ambient":      "cooling.air_flow_needed",
	} {
		for _, bad := range []float64{-1, 1e9} {
			broken := truck()
			broken.Leaves[path] = figurestest.Exact(bad)
			r := result(t, id, broken)
			require.NotEmpty(t, r.Outside, "%s of %v", path, bad)
			assert.Equal(t, path, r.Outside[0].Path)
		}
	}
}

func TestEnoughHose(t *testing.T) {
	path, size, ok := figures.Enough(result(t, "cooling.lower_hose_speed", truck()), figures.AtMost, 1.2, 1.2, nil)
	require.True(t, ok)
	assert.Equal(t, "cooling.lower_hose", path)
	assert.Equal(t, "2 in", size.Label)
}

func TestRanges(t *testing.T) {
	for _, f := range cooling.Figures() {
		t.Run(f.ID, func(t *testing.T) { figurestest.Sample(t, f, 300) })
	}
}

func truck() figurestest.Fixed {
	return figurestest.Fixed{Leaves: map[string]figures.Leaf{
		"engine.rated_power":          figurestest.Exact(100_000),
		"engine.governed_speed":       figurestest.Exact(2800 * rpm),
		"registration.altitude":       figurestest.Exact(2000),
		"registration.ambient":        figurestest.Exact(42 + celsius),
		"cooling.heat_rejection":      figurestest.Exact(55_000),
		"cooling.heat_share":          figurestest.Exact(0.5),
		"cooling.coolant_flow":        figurestest.Exact(140 * litre / 60),
		"cooling.glycol":              figurestest.Exact(0.5),
		"cooling.upper_hose":          figurestest.Exact(1.75 * inch),
		"cooling.lower_hose":          figurestest.Exact(2 * inch),
		"cooling.heater_hose":         figurestest.Exact(5.0 / 8 * inch),
		"cooling.heater_port":         figurestest.Exact(5.0 / 8 * inch),
		"cooling.top_limit":           figurestest.Exact(100 + celsius),
		"cooling.air_preheat":         figurestest.Exact(8),
		"cooling.radiator_capacity":   figurestest.Exact(60_000),
		"cooling.radiator_difference": figurestest.Exact(55),
		"cooling.top_tank":            figurestest.Exact(88 + celsius),
		"cooling.test_ambient":        figurestest.Exact(31 + celsius),
		"cooling.cap_pressure":        figurestest.Exact(15 * psi),
		"cooling.air_rise":            figurestest.Exact(35),
		"cooling.core_height":         figurestest.Exact(0.45),
		"cooling.core_width":          figurestest.Exact(0.65),
		"cooling.shroud_height":       figurestest.Exact(0.45),
		"cooling.shroud_width":        figurestest.Exact(0.60),
		"cooling.fan_diameter":        figurestest.Exact(0.45),
		"cooling.fan_ratio":           figurestest.Exact(1.1),
		"cooling.fan_speed_limit":     figurestest.Exact(4500 * rpm),
		"cooling.fan_flow":            figurestest.Exact(2.2),
		"cooling.fan_to_core":         figurestest.Exact(0.025),
		"cooling.tip_clearance":       figurestest.Exact(0.012),
		"cooling.capacity":            figurestest.Exact(14 * litre),
		"cooling.expansion_volume":    figurestest.Exact(1.2 * litre),
	}}
}

func result(t *testing.T, id string, values figurestest.Fixed) figures.Result {
	t.Helper()
	return figurestest.Result(t, cooling.Figures(), id, values)
}
