package air_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"trialfit/internal/figures"
	"trialfit/internal/figures/air"
	"trialfit/internal/figures/figurestest"
	"trialfit/internal/figures/fluid"
)

// One truck, every figure: what the declarations feed to the formulas.
func TestTruck(t *testing.T) {
	const (
		boost   = 20 * psi
		p3      = fluid.Atmosphere + boost
		swallow = 3.9e-3 * 2600.0 / 120
		hot     = 140 + celsius
		cold    = 50 + celsius
	)
	rated := 0.88 * swallow * fluid.AirDensity(p3, cold)
	inlet := rated / fluid.AirDensity(fluid.Atmosphere, 298.15)
	site := fluid.StandardPressure(2000)
	ratio := (boost + 6_000 + site) / (site - 4_000)
	pipeArea := fluid.PipeArea(2.37 * inch)
	torqueRatio := 0.88 * fluid.AirDensity(p3, cold) * 3.9e-3 / (4 * math.Pi) / (393 * 230 * gramKWh)
	qc := air.CycleFuel(93_000*230*gramKWh, 3.9e-3, 2600*rpm) / (p3 / fluid.Atmosphere)
	for id, want := range map[string]float64{
		"air.flow_rated":             rated,
		"air.flow_torque":            rated * 1600 / 2600,
		"air.cleaner_use":            inlet / (400 * cfm),
		"air.restriction_use":        4_000 / 6_200.0,
		"air.duct_speed":             inlet / fluid.PipeArea(3*inch),
		"air.duct_mach":              inlet / fluid.PipeArea(3*inch) / fluid.SoundSpeed(298.15),
		"air.charge_pipe_speed":      0.88 * swallow * hot / cold / pipeArea,
		"air.charge_pipe_mach":       0.88 * swallow * hot / cold / pipeArea / fluid.SoundSpeed(hot),
		"air.pressure_ratio":         p3 / fluid.Atmosphere,
		"air.pressure_ratio_site":    ratio,
		"air.compressor_temperature": air.CompressorOut(42+celsius, ratio, 0.72),
		"air.compressor_efficiency":  air.CompressorEfficiency(30+celsius, hot, p3/fluid.Atmosphere),
		"air.compressor_rise":        110,
		"air.charge_rise":            20,
		"air.cooler_effectiveness":   0.8181818,
		"air.density_ratio":          p3 / fluid.Atmosphere * (30 + celsius) / cold,
		"air.fuel_ratio_rated":       rated / (93_000 * 230 * gramKWh),
		"air.excess_rated":           rated / (93_000 * 230 * gramKWh) / 14.5,
		"air.fuel_ratio_torque":      torqueRatio,
		"air.excess_torque":          torqueRatio / 14.5,
		"air.site_pressure":          site,
		"air.site_density":           fluid.AirDensity(site, 42+celsius),
		"air.power_correction":       corrected(air.DieselAirFactor(97e3, 303.15, true, false), qc),
		"air.power_left":             1 / corrected(air.DieselAirFactor(site, 42+celsius, true, false), qc),
		"air.brake_pressure_use":     0.75,
		"air.back_pressure_use":      0.6666667,
	} {
		r := result(t, id, truck())
		require.True(t, r.Ok(), "%s: %+v", id, r)
		assert.InEpsilon(t, want, r.Low, 1e-6, id)
	}
	assert.Len(t, air.Figures(), 26)
}

// An engine without a compressor is computed at 25 °C, and has no figures of
// charge air.
func TestNaturalInduction(t *testing.T) {
	natural := truck()
	natural.Leaves["charge_air.boost"] = figurestest.None()
	natural.Leaves["charge_air.manifold_in"] = figurestest.None()
	natural.Leaves["engine.induction"] = figurestest.Word("natural")
	r := result(t, "air.flow_rated", natural)
	require.True(t, r.Ok())
	assert.InEpsilon(t, 0.88*3.9e-3*2600/120*fluid.AirDensity(fluid.Atmosphere, 298.15), r.Low, 1e-9)
	assert.Equal(t, []string{"charge_air.boost"}, result(t, "air.pressure_ratio", natural).None)
	assert.True(t, result(t, "air.power_left", natural).Ok())
}

// Each ignition has its own factor, an electric motor none.
func TestPowerLeftByFuel(t *testing.T) {
	petrol := truck()
	petrol.Leaves["engine.fuel"] = figurestest.Word("petrol")
	petrol.Leaves["intake.correction_standard"] = figurestest.Word("sae-j1349")
	assert.InEpsilon(t, 1/air.SparkFactor(fluid.StandardPressure(2000), 42+celsius, true), result(t, "air.power_left", petrol).Low, 1e-12)
	petrol.Leaves["engine.fuel"] = figurestest.Word("electric")
	assert.Equal(t, 1.0, result(t, "air.power_left", petrol).Low)
}

// A charge no warmer than the air around it has nothing to be cooled by.
func TestColdChargeHasNoEffectiveness(t *testing.T) {
	cold := truck()
	cold.Leaves["charge_air.compressor_out"] = figurestest.Exact(31 + celsius)
	assert.False(t, result(t, "air.cooler_effectiveness", cold).Ok())
	assert.False(t, result(t, "air.compressor_efficiency", cold).Ok())
}

func TestBadValuesAreOutside(t *testing.T) {
	for path, id := range map[string]string{
		"engine.displacement":          "air.flow_rated",
		"engine.rated_speed":           "air.fuel_ratio_rated",
		"intake.volumetric_efficiency": "air.flow_torque",
		"intake.duct_bore":             "air.duct_speed",
		"charge_air.pipe_bore":         "air.charge_pipe_mach",
		"intake.restriction":           "air.pressure_ratio_site",
		"intake.cleaner_flow":          "air.cleaner_use",
		"fuel.consumption_full":        "air.excess_torque",
		"intake.test_pressure":         "air.power_correction",
	} {
		for _, bad := range []float64{0, -1, 1e9} {
			broken := truck()
			broken.Leaves[path] = figurestest.Exact(bad)
			r := result(t, id, broken)
			require.NotEmpty(t, r.Outside, "%s of %v", path, bad)
			assert.Equal(t, path, r.Outside[0].Path)
		}
	}
}

func TestEnoughTube(t *testing.T) {
	path, size, ok := figures.Enough(result(t, "air.duct_speed", truck()), figures.AtMost, 35, 35, nil)
	require.True(t, ok)
	assert.Equal(t, "intake.duct_bore", path)
	assert.Equal(t, "3 1/2 in tube", size.Label)
}

// corrected is the factor of a diesel by ISO 1585.
func corrected(airFactor, cycleFuel float64) float64 {
	return math.Pow(airFactor, air.DieselEngineFactor(cycleFuel, false))
}

func TestRanges(t *testing.T) {
	for _, f := range air.Figures() {
		t.Run(f.ID, func(t *testing.T) { figurestest.Sample(t, f, 300) })
	}
}

func truck() figurestest.Fixed {
	return figurestest.Fixed{Leaves: map[string]figures.Leaf{
		"engine.displacement":              figurestest.Exact(3.9e-3),
		"engine.rated_speed":               figurestest.Exact(2600 * rpm),
		"engine.torque_speed":              figurestest.Exact(1600 * rpm),
		"engine.rated_power":               figurestest.Exact(93_000),
		"engine.peak_torque":               figurestest.Exact(393),
		"engine.fuel":                      figurestest.Word("diesel"),
		"engine.induction":                 figurestest.Word("turbocharged-intercooled"),
		"fuel.consumption_full":            figurestest.Exact(230 * gramKWh),
		"registration.altitude":            figurestest.Exact(2000),
		"registration.ambient":             figurestest.Exact(42 + celsius),
		"intake.volumetric_efficiency":     figurestest.Exact(0.88),
		"intake.cleaner_flow":              figurestest.Exact(400 * cfm),
		"intake.duct_bore":                 figurestest.Exact(3 * inch),
		"intake.restriction":               figurestest.Exact(4_000),
		"intake.restriction_limit":         figurestest.Exact(6_200),
		"intake.correction_standard":       figurestest.Word("iso-1585"),
		"intake.test_pressure":             figurestest.Exact(97_000),
		"intake.test_temperature":          figurestest.Exact(30 + celsius),
		"charge_air.boost":                 figurestest.Exact(20 * psi),
		"charge_air.compressor_out":        figurestest.Exact(140 + celsius),
		"charge_air.manifold_in":           figurestest.Exact(50 + celsius),
		"charge_air.ambient":               figurestest.Exact(30 + celsius),
		"charge_air.pipe_bore":             figurestest.Exact(2.37 * inch),
		"charge_air.cooler_drop":           figurestest.Exact(6_000),
		"charge_air.compressor_efficiency": figurestest.Exact(0.72),
		"exhaust.brake.pressure":           figurestest.Exact(45 * psi),
		"exhaust.brake.pressure_limit":     figurestest.Exact(60 * psi),
		"exhaust.back_pressure":            figurestest.Exact(6_000),
		"exhaust.back_pressure_limit":      figurestest.Exact(9_000),
	}}
}

func result(t *testing.T, id string, values figurestest.Fixed) figures.Result {
	t.Helper()
	return figurestest.Result(t, air.Figures(), id, values)
}
