package electrical_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"trialfit/internal/figures"
	"trialfit/internal/figures/electrical"
	"trialfit/internal/figures/figurestest"
	"trialfit/internal/quantity"
)

// NEC chapter 9 table 8, Ω/kft of stranded copper at 75 °C, as printed at
// https://voltdropcalc.com/nec-chapter-9-table-8/. Strands lie 2 % longer than
// the cable, which the figure leaves out.
func TestStrandedPublished(t *testing.T) {
	for size, ohms := range map[string]float64{
		"14 AWG": 3.07, "12 AWG": 1.93, "10 AWG": 1.21, "8 AWG": 0.764, "6 AWG": 0.491, "4 AWG": 0.308, "2 AWG": 0.194,
		"1 AWG": 0.154, "1/0 AWG": 0.122, "2/0 AWG": 0.0967, "3/0 AWG": 0.0766, "4/0 AWG": 0.0608,
	} {
		solid := electrical.Resistance(area(t, size), 1000*foot, 1, at75)
		assert.InDelta(t, 1.015, ohms/solid, 0.02, size)
	}
}

// Worked examples of a chandler: a bilge pump of 10 A, 21 ft out and back, 12 V,
// takes 16 AWG at 10 % and 10 AWG at 3 %:
// http://hollandmarine.com/hmp-flipbook-2021/flipbook/inc/html/53.html and /52.html.
// The 3 % answer follows for cable of SAE sections; 12 AWG proper just does.
func TestCircuitSizePublished(t *testing.T) {
	pump := circuit(area(t, "20 AWG"), 21*foot, 10, 12, at30)
	_, size, ok := figures.Enough(result(t, "electrical.voltage_drop_share", pump), figures.AtMost, 0.10, 0.10, nil)
	require.True(t, ok)
	assert.Equal(t, "16 AWG", size.Label)

	assert.Greater(t, value(t, "electrical.voltage_drop_share", circuit(area(t, "12 SAE"), 21*foot, 10, 12, at30)), 0.03)
	assert.Less(t, value(t, "electrical.voltage_drop_share", circuit(area(t, "10 SAE"), 21*foot, 10, 12, at30)), 0.03)
}

// Rows of http://www.delzer.com/powerproducts/ANC_CAT_003/70/; all but 3 AWG and
// 3/0 are also on http://www.genuinedealz.com/voltage-drop-calculator.
func TestAmpacityPublished(t *testing.T) {
	for size, want := range map[string][2]float64{
		"18 AWG": {20, 17}, "16 AWG": {25, 21}, "14 AWG": {35, 30}, "12 AWG": {45, 38}, "10 AWG": {60, 51},
		"8 AWG": {80, 68}, "6 AWG": {120, 102}, "4 AWG": {160, 136}, "3 AWG": {180, 153}, "2 AWG": {210, 178},
		"1 AWG": {245, 208}, "1/0 AWG": {285, 242}, "2/0 AWG": {330, 280}, "3/0 AWG": {385, 327}, "4/0 AWG": {445, 378},
	} {
		for i, place := range []string{"outside-engine-bay", "engine-bay"} {
			wire := circuit(area(t, size), 1, 1, 12, at20)
			wire.Leaves["electrical.circuits.pump.place"] = figurestest.Word(place)
			assert.Equal(t, want[i], value(t, "electrical.ampacity", wire), "%s %s", size, place)
		}
	}
}

// What the table does not print counts as the next thinner row.
func TestAmpacityBetweenRows(t *testing.T) {
	for size, want := range map[string]float64{
		"5 AWG": 120, "7 AWG": 80, "16 SAE": 20, "10 SAE": 45, "1 mm²": 20, "2.5 mm²": 35, "6 mm²": 60, "16 mm²": 120, "95 mm²": 385,
	} {
		assert.Equal(t, want, electrical.Ampacity(area(t, size), false), size)
	}
	for _, size := range []string{"20 AWG", "18 SAE", "120 mm²"} {
		r := result(t, "electrical.ampacity", circuit(area(t, size), 1, 1, 12, at20))
		require.Len(t, r.Outside, 1, size)
		assert.Equal(t, "electrical.circuits.pump.conductor", r.Outside[0].Path)
	}
}

// A steady load of 28 A asks for a fuse of 1.25 × 28 = 35 A, and in the engine
// bay 10 AWG (51 A) carries it.
// Common practice; by hand.
func TestFuseEnough(t *testing.T) {
	heater := circuit(area(t, "14 AWG"), 3, 28, 12, at20)
	heater.Leaves["electrical.circuits.pump.fuse"] = figurestest.Exact(20)
	r := result(t, "electrical.fuse_factor", heater)
	assert.InDelta(t, 20.0/28, r.Low, 1e-12)
	path, size, ok := figures.Enough(r, figures.AtLeast, 1.25, 1.25, nil)
	require.True(t, ok)
	assert.Equal(t, "electrical.circuits.pump.fuse", path)
	assert.Equal(t, "35 A", size.Label)

	heater.Leaves["electrical.circuits.pump.fuse"] = figurestest.Exact(40)
	r = result(t, "electrical.ampacity_use", heater)
	assert.InDelta(t, 40.0/30, r.Low, 1e-12)
	_, size, ok = figures.Enough(r, figures.AtMost, 1, 1, nil)
	require.True(t, ok)
	assert.Equal(t, "10 AWG", size.Label, "20 AWG is outside the table and must not be offered")
}

// A circuit without a fuse has no fuse factor, and a circuit nobody spoke of is
// not a circuit that passes.
// 500 W at 12 V are 41.7 A.
func TestPreheatCover(t *testing.T) {
	plugs := circuit(area(t, "8 AWG"), 2.2, 41.7, 12, at20)
	plugs.Leaves["electrical.preheat.power"] = figurestest.Exact(500)
	assert.InDelta(t, 1.0008, value(t, "electrical.preheat_cover", plugs), 1e-9)
}

func TestNoFuse(t *testing.T) {
	bare := circuit(area(t, "14 AWG"), 3, 28, 12, at20)
	bare.Leaves["electrical.circuits.pump.fuse"] = figurestest.None()
	assert.Equal(t, []string{"electrical.circuits.pump.fuse"}, result(t, "electrical.fuse_factor", bare).None)

	_, state := figures.Evaluate(find(t, "electrical.fuse_factor"), figurestest.Fixed{})
	assert.Equal(t, figures.Missing, state)
}

func TestCrankingRegression(t *testing.T) {
	for _, c := range []struct {
		size                                string
		length, contacts, temperature, amps float64
		resistance, drop                    float64
	}{
		{"2/0 AWG", 4.2, 0.4 * milli, at20, 450, 1.4739 * milli, 0.6632},
		{"4/0 AWG", 5.0, 0.5 * milli, 313.15, 600, 1.3672 * milli, 0.8203},
	} {
		starter := figurestest.Fixed{
			Leaves: map[string]figures.Leaf{
				"electrical.system_voltage":                 figurestest.Exact(12),
				"electrical.cranking.current":               figurestest.Exact(c.amps),
				"electrical.cranking.contacts":              figurestest.Exact(c.contacts),
				"electrical.cranking.temperature":           figurestest.Exact(c.temperature),
				"electrical.cranking.cables.plus.conductor": figurestest.Exact(area(t, c.size)),
				"electrical.cranking.cables.plus.length":    figurestest.Exact(c.length / 2),
				"electrical.cranking.cables.plus.parallel":  figurestest.Exact(1),
				// Twice the length in two cables side by side is the same.
				"electrical.cranking.cables.minus.conductor": figurestest.Exact(area(t, c.size)),
				"electrical.cranking.cables.minus.length":    figurestest.Exact(c.length),
				"electrical.cranking.cables.minus.parallel":  figurestest.Exact(2),
			},
			Lists: map[string][]string{"electrical.cranking.cables": {"plus", "minus"}},
		}
		assert.InDelta(t, c.resistance, value(t, "electrical.cranking_loop_resistance", starter), 5e-8)
		assert.InDelta(t, c.drop, value(t, "electrical.cranking_drop", starter), 5e-5)
		assert.InDelta(t, c.drop/12, value(t, "electrical.cranking_drop_share", starter), 5e-6)

		starter.Lists["electrical.cranking.cables"] = nil
		assert.False(t, result(t, "electrical.cranking_drop", starter).Ok(), "a loop without cables has no drop")
	}
}

func TestChargingRegression(t *testing.T) {
	van := figurestest.Fixed{
		Leaves: map[string]figures.Leaf{
			"electrical.alternator.idle_output":        figurestest.Exact(60),
			"electrical.alternator.rated_output":       figurestest.Exact(120),
			"electrical.alternator.crank_pulley":       figurestest.Exact(0.170),
			"electrical.alternator.pulley":             figurestest.Exact(0.058),
			"electrical.alternator.cut_in_speed":       figurestest.Exact(1800 * rpm),
			"electrical.alternator.speed_limit":        figurestest.Exact(15000 * rpm),
			"electrical.alternator.recharge_current":   figurestest.Exact(15),
			"electrical.alternator.centres":            figurestest.Exact(0.310),
			"electrical.alternator.belt_length":        figurestest.Exact(1.010),
			"electrical.alternator.offset":             figurestest.Exact(1e-3),
			"electrical.system_voltage":                figurestest.Exact(12),
			"electrical.standby_current":               figurestest.Exact(8),
			"electrical.battery.reserve_capacity":      figurestest.Exact(160 * minute),
			"electrical.preheat.power":                 figurestest.Exact(2000),
			"electrical.preheat.time":                  figurestest.Exact(30),
			"fuel.stop.hold_resistance":                figurestest.Exact(12),
			"fuel.stop.pull_resistance":                figurestest.Exact(0.4),
			"engine.governed_speed":                    figurestest.Exact(3600 * rpm),
			"engine.idle_speed":                        figurestest.Exact(750 * rpm),
			"engine.displacement":                      figurestest.Exact(2.8e-3),
			"engine.cranking_need":                     figurestest.Exact(700),
			"electrical.battery.cold_cranking_current": figurestest.Exact(756),
		},
		Lists: map[string][]string{"electrical.loads": {"a", "b", "c", "d", "e"}},
	}
	for i, amps := range []float64{14, 9, 20, 12, 16} {
		van.Leaves["electrical.loads."+string(rune('a'+i))+".current"] = figurestest.Exact(amps)
	}
	for id, want := range map[string]float64{
		"electrical.continuous_load":           71,
		"electrical.charging_reserve_idle":     -11,
		"electrical.charging_use":              71.0 / 120,
		"electrical.alternator_speed_idle":     2198.276 * rpm,
		"electrical.alternator_cut_in_margin":  2198.276 / 1800,
		"electrical.alternator_need":           86 / 0.78,
		"electrical.alternator_use":            86 / 0.78 / 120,
		"electrical.alternator_speed_governed": 3600 * 170.0 / 58 * rpm,
		"electrical.alternator_speed_use":      3600 * 170.0 / 58 / 15000,
		"electrical.reserve_charge":            25 * 160 * minute,
		"electrical.standby_time":              500 * minute,
		"electrical.preheat_current":           2000.0 / 12,
		"electrical.preheat_energy":            60_000,
		"electrical.preheat_share":             5_000 / (25 * 160 * minute),
		"electrical.stop_hold_current":         1,
		"electrical.stop_pull_current":         30,
		"electrical.belt_gap":                  0.196,
		"electrical.belt_length":               0.9882577,
		"electrical.belt_length_error":         1.010/0.9882577 - 1,
		"electrical.belt_wrap":                 2.778308,
		"electrical.belt_misalignment":         0.00322579526,
		"electrical.cca_per_displacement":      270e3,
		"electrical.cca_margin":                1.08,
	} {
		assert.InEpsilon(t, want, value(t, id, van), 1e-6, id)
	}
}

// A boat's wiring: 45 A over 40 ft out and back at 10 % of 12 V takes 8 AWG:
// http://www.zrd.com/faq/esdfaqwiresize.html.
func TestDropUseEnough(t *testing.T) {
	long := circuit(area(t, "14 AWG"), 40*foot, 45, 12, at20)
	r := result(t, "electrical.voltage_drop_use", long)
	_, size, ok := figures.Enough(r, figures.AtMost, 1, 1, nil)
	require.True(t, ok)
	assert.Equal(t, "8 AWG", size.Label)

	_, size, ok = figures.Enough(r, figures.AtMost, 1, 1, func(string) bool { return true })
	require.True(t, ok)
	assert.Equal(t, "10 mm²", size.Label, "the next section above 8.37 mm²")
}

// What is derated for 105 °C and alone is what the catalogue prints, and a hot
// conductor leaves its insulation a margin.
func TestDeratedAgreesWithCatalogue(t *testing.T) {
	for _, size := range []string{"18 AWG", "10 AWG", "2/0 AWG"} {
		for _, bay := range []bool{false, true} {
			assert.InDelta(t, electrical.Ampacity(area(t, size), bay), electrical.DeratedAmpacity(area(t, size), 105+zero, bay, 1), 0.6, size)
		}
	}
	wire := circuit(area(t, "10 AWG"), 3, 28, 12, at20)
	wire.Leaves["electrical.circuits.pump.fuse"] = figurestest.Exact(35)
	assert.InDelta(t, 60*0.85*0.6, value(t, "electrical.ampacity_derated", wire), 1e-9)
	assert.InDelta(t, 35/(60*0.85*0.6), value(t, "electrical.ampacity_derated_use", wire), 1e-9)
	hot := 50 + 75*(28.0/36)*(28.0/36)
	assert.InDelta(t, hot+zero, value(t, "electrical.conductor_temperature", wire), 1e-9)
	assert.InDelta(t, 105-hot, value(t, "electrical.insulation_margin", wire), 1e-9)
}

// Insulation below the lowest class of the table has no figure.
func TestInsulationOutside(t *testing.T) {
	wire := circuit(area(t, "10 AWG"), 3, 28, 12, at20)
	wire.Leaves["electrical.circuits.pump.insulation"] = figurestest.Exact(50 + zero)
	r := result(t, "electrical.ampacity_derated", wire)
	require.Len(t, r.Outside, 1)
	assert.Equal(t, "electrical.circuits.pump.insulation", r.Outside[0].Path)
}

// Pulleys that would run into one another have no belt.
func TestBeltNeedsRoom(t *testing.T) {
	tight := figurestest.Fixed{Leaves: map[string]figures.Leaf{
		"electrical.alternator.crank_pulley": figurestest.Exact(0.180),
		"electrical.alternator.pulley":       figurestest.Exact(0.062),
		"electrical.alternator.centres":      figurestest.Exact(0.120),
	}}
	r := result(t, "electrical.belt_wrap", tight)
	require.Len(t, r.Outside, 1)
	assert.Equal(t, "electrical.belt_gap", r.Outside[0].Path)
}

func TestBadInput(t *testing.T) {
	for _, f := range electrical.Figures() {
		figurestest.Refuses(t, f)
	}
}

func TestRanges(t *testing.T) {
	for _, f := range electrical.Figures() {
		t.Run(f.ID, func(t *testing.T) { figurestest.Sample(t, f, 300) })
	}
}

// area is the section in m² of a conductor as a manifest gives it.
func area(t *testing.T, size string) float64 {
	t.Helper()
	v, err := quantity.Parse(size, quantity.Conductor)
	require.NoError(t, err)
	low, _ := v.Floats()
	return low
}

// circuit is one circuit in the engine bay: section in m², loop in m, A, V, K.
func circuit(area, length, current, voltage, temperature float64) figurestest.Fixed {
	return figurestest.Fixed{
		Leaves: map[string]figures.Leaf{
			"electrical.system_voltage":            figurestest.Exact(voltage),
			"electrical.circuits.pump.conductor":   figurestest.Exact(area),
			"electrical.circuits.pump.length":      figurestest.Exact(length),
			"electrical.circuits.pump.current":     figurestest.Exact(current),
			"electrical.circuits.pump.temperature": figurestest.Exact(temperature),
			"electrical.circuits.pump.place":       figurestest.Word("engine-bay"),
			"electrical.circuits.pump.drop":        figurestest.Word("ordinary"),
			"electrical.circuits.pump.insulation":  figurestest.Exact(105 + zero),
			"electrical.circuits.pump.bundle":      figurestest.Exact(4),
		},
		Lists: map[string][]string{"electrical.circuits": {"pump"}},
	}
}

func find(t *testing.T, id string) *figures.Figure {
	t.Helper()
	for _, f := range electrical.Figures() {
		if f.ID == id {
			return f
		}
	}
	require.Fail(t, "no figure", id)
	return nil
}

// result evaluates a figure with one subject.
func result(t *testing.T, id string, values figurestest.Fixed) figures.Result {
	t.Helper()
	return figurestest.Result(t, electrical.Figures(), id, values)
}

// value is the number of a figure of exact inputs.
func value(t *testing.T, id string, values figurestest.Fixed) float64 {
	t.Helper()
	r := result(t, id, values)
	require.True(t, r.Ok(), "%s: %+v", id, r)
	require.Equal(t, r.Low, r.High)
	return r.Low
}
