package electrical_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"trialfit/internal/figures"
	"trialfit/internal/figures/electrical"
	"trialfit/internal/figures/figurestest"
	"trialfit/internal/quantity"
)

const (
	foot   = 0.3048
	at20   = 293.15 // K
	at75   = 348.15
	milli  = 1e-3
	square = 1e-6 // mm²
	rpm    = 2 * math.Pi / 60
)

// Rows in Ω/km at 20 °C of the table at
// https://en.m.wikibooks.org/wiki/Engineering_Tables/American_Wire_Gauge.
func TestResistancePublished(t *testing.T) {
	for size, ohms := range map[string]float64{"4/0 AWG": 0.1608, "10 AWG": 3.277} {
		assert.InDelta(t, ohms*milli, electrical.Resistance(area(t, size), 1, 1, at20), 0.00005*milli+0.0005*milli*ohms, size)
	}
}

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

// Worked example: 100 ft of two-wire 16 AWG, 4 A, 24 V: 4.0 V or 16.7 %, from
// 4.99 Ω/kft stranded at 75 °C: http://electrician2.com/weltrain05/lpage135.html.
func TestVoltageDropPublished(t *testing.T) {
	lamp := circuit(area(t, "16 AWG"), 200*foot, 4, 24, at75)
	assert.InEpsilon(t, 4.0, value(t, "electrical.voltage_drop", lamp), 0.03)
	assert.InEpsilon(t, 0.167, value(t, "electrical.voltage_drop_share", lamp), 0.03)
}

// Worked examples of a chandler: a bilge pump of 10 A, 21 ft out and back, 12 V,
// takes 16 AWG at 10 % and 10 AWG at 3 %:
// http://hollandmarine.com/hmp-flipbook-2021/flipbook/inc/html/53.html and /52.html.
// The 3 % answer follows for cable of SAE sections; 12 AWG proper just does.
func TestCircuitSizePublished(t *testing.T) {
	const at30 = 303.15
	pump := circuit(area(t, "20 AWG"), 21*foot, 10, 12, at30)
	_, size, ok := figures.Enough(result(t, "electrical.voltage_drop_share", pump), figures.AtMost, 0.10, 0.10)
	require.True(t, ok)
	assert.Equal(t, "16 AWG", size.Label)

	assert.Greater(t, value(t, "electrical.voltage_drop_share", circuit(area(t, "12 SAE"), 21*foot, 10, 12, at30)), 0.03)
	assert.Less(t, value(t, "electrical.voltage_drop_share", circuit(area(t, "10 SAE"), 21*foot, 10, 12, at30)), 0.03)
}

// Installation manual of a small marine diesel: 6 m of 61/.044 cable (61 strands
// of 0.044 in) have 0.0017 Ω:
// https://www.manualslib.com/manual/871581/Perkins-M65.html?page=35.
func TestCrankingPublished(t *testing.T) {
	strand := 0.044 * 0.0254
	section := 61 * math.Pi / 4 * strand * strand
	loop := electrical.LoopResistance([]electrical.Cable{{Area: section, Length: 6, Parallel: 1}}, 0, at20)
	assert.InEpsilon(t, 0.0017, loop, 0.02)
}

// Another maker's longest loops at 12 V,
// https://www.easymanua.ls/volvo-penta/tamd42/manual?p=85, come to one
// resistance, 2 mΩ less contacts.
func TestCrankingTablePublished(t *testing.T) {
	for mm2, metres := range map[float64]float64{35: 4, 50: 5.5, 70: 7.5, 95: 10, 120: 12.5} {
		loop := electrical.LoopResistance([]electrical.Cable{{Area: mm2 * square, Length: metres, Parallel: 1}}, 0, at20)
		assert.InEpsilon(t, 1.88*milli, loop, 0.06, "%v mm²", mm2)
	}
}

// A third maker takes ΔU = I·0.0175·L/A at 15 °C, A in mm², which is 3.6 % above
// bare copper: https://www.easymanua.ls/scania/oc16/manual/1024877?p=11.
func TestVoltageDropFormulaPublished(t *testing.T) {
	const at15 = 288.15
	theirs := 80 * 0.0175 * 4 / 25
	ours := value(t, "electrical.voltage_drop", circuit(25*square, 4, 80, 24, at15))
	assert.InEpsilon(t, theirs, ours, 0.04)
	assert.Less(t, ours, theirs)
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

// Worked example: a pulley ratio of 2.1 at 870 rpm turns the rotor at 1827 rpm:
// https://www.rodauthority.com/news/how-to-calculate-pulley-ratio-and-rotor-rpm-for-your-alternator/.
func TestAlternatorPublished(t *testing.T) {
	assert.InDelta(t, 1827, electrical.AlternatorSpeed(870, 2.1, 1), 1e-9)
}

// A steady load of 28 A asks for a fuse of 1.25 × 28 = 35 A, and in the engine
// bay 10 AWG (51 A) carries it.
// Common practice; by hand.
func TestFuseEnough(t *testing.T) {
	heater := circuit(area(t, "14 AWG"), 3, 28, 12, at20)
	heater.Leaves["electrical.circuits.pump.fuse"] = figurestest.Exact(20)
	r := result(t, "electrical.fuse_factor", heater)
	assert.InDelta(t, 20.0/28, r.Low, 1e-12)
	path, size, ok := figures.Enough(r, figures.AtLeast, 1.25, 1.25)
	require.True(t, ok)
	assert.Equal(t, "electrical.circuits.pump.fuse", path)
	assert.Equal(t, "35 A", size.Label)

	heater.Leaves["electrical.circuits.pump.fuse"] = figurestest.Exact(40)
	r = result(t, "electrical.ampacity_use", heater)
	assert.InDelta(t, 40.0/30, r.Low, 1e-12)
	_, size, ok = figures.Enough(r, figures.AtMost, 1, 1)
	require.True(t, ok)
	assert.Equal(t, "10 AWG", size.Label, "20 AWG is outside the table and must not be offered")
}

// A circuit without a fuse has no fuse factor, and a circuit nobody spoke of is
// not a circuit that passes.
func TestNoFuse(t *testing.T) {
	bare := circuit(area(t, "14 AWG"), 3, 28, 12, at20)
	bare.Leaves["electrical.circuits.pump.fuse"] = figurestest.None()
	assert.Equal(t, []string{"electrical.circuits.pump.fuse"}, result(t, "electrical.fuse_factor", bare).None)

	_, state := figures.Evaluate(find(t, "electrical.fuse_factor"), figurestest.Fixed{})
	assert.Equal(t, figures.Missing, state)
}

// Worked by another program from the same formulas.
func TestCircuitsRegression(t *testing.T) {
	feed := circuit(area(t, "10 AWG"), 7, 45, 13.5, 333.15)
	assert.InDelta(t, 1.1945, value(t, "electrical.voltage_drop", feed), 5e-5)
	assert.InDelta(t, 0.08848, value(t, "electrical.voltage_drop_share", feed), 5e-6)
	assert.InDelta(t, 1.1945/45, value(t, "electrical.circuit_resistance", feed), 5e-6)
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
		"electrical.continuous_load":          71,
		"electrical.charging_reserve_idle":    -11,
		"electrical.charging_use":             71.0 / 120,
		"electrical.alternator_speed_idle":    2198.276 * rpm,
		"electrical.alternator_cut_in_margin": 2198.276 / 1800,
		"electrical.cca_per_displacement":     270e3,
		"electrical.cca_margin":               1.08,
	} {
		assert.InEpsilon(t, want, value(t, id, van), 1e-6, id)
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
	results, _ := figures.Evaluate(find(t, id), values)
	require.Len(t, results, 1)
	return results[0]
}

// value is the number of a figure of exact inputs.
func value(t *testing.T, id string, values figurestest.Fixed) float64 {
	t.Helper()
	r := result(t, id, values)
	require.True(t, r.Ok(), "%s: %+v", id, r)
	require.Equal(t, r.Low, r.High)
	return r.Low
}
