package quantity

import (
	"math"
	"testing"
)

// TestWorkedConversions are regressions: the results were computed from the
// NIST SP 811 factors by another program and rounded to the digits shown.
func TestWorkedConversions(t *testing.T) {
	for _, c := range []struct {
		text string
		kind Kind
		unit string
		want float64
		half float64 // half of the last digit shown
	}{
		{"20 psi", GaugePressure, "kPa", 137.8951, 5e-5},
		{"20 psi", GaugePressure, "inHg", 40.7204, 5e-5},
		{"25 inH2O", PressureDifference, "kPa", 6.22722, 5e-6},
		{"130 PS", Power, "kW", 95.6148, 5e-5},
		{"130 PS", Power, "hp", 128.2216, 5e-5},
		{"195 °F", Temperature, "°C", 90.5556, 5e-5},
		{"20 °F", TemperatureDifference, "K", 11.1111, 5e-5},
		{"1 lb/hp·h", SpecificConsumption, "g/kWh", 608.2773878, 5e-8},
		{"4 cSt", KinematicViscosity, "mm²/s", 4, 5e-15},
		{"5 US gal/100 mi", VolumePerDistance, "L/100 km", 11.76073, 5e-6},
		{"1 cfm", VolumeFlow, "m³/s", 4.719474432e-4, 5e-14},
		{"1 US gpm", VolumeFlow, "m³/s", 6.30901964e-5, 5e-14},
		{"1 psi", GaugePressure, "Pa", 6894.757293168361, 5e-12},
		{"1 hp", Power, "W", 745.6998715822702, 5e-13},
		{"1 Btu/min", Power, "W", 17.5842642, 5e-8},
		{"1 Btu/h", Power, "W", 0.2930710702, 5e-11},
		{"1 long ton", Mass, "kg", 1016.0469088, 5e-8},
		{"1 short ton", Mass, "kg", 907.18474, 5e-6},
	} {
		v := mustParse(t, c.text, c.kind)
		low, _ := v.Floats()
		got, err := In(low, c.kind, c.unit)
		if err != nil {
			t.Error(err)
		} else if math.Abs(got-c.want) > c.half*1.01 {
			t.Errorf("%s = %.12g %s, want %.12g", c.text, got, c.unit, c.want)
		}
	}
}

// TestWireTable holds AWG sizes to the tabulated sections of ASTM B258 (from
// memory), and two of them to the resistances of the table at
// https://en.m.wikibooks.org/wiki/Engineering_Tables/American_Wire_Gauge
// (Ω/km at 20 °C, copper of 17.241 nΩ·m).
func TestWireTable(t *testing.T) {
	for _, row := range []struct {
		text       string
		mm2, kcmil float64
	}{
		{"4/0 AWG", 107.219, 211.60}, {"3/0 AWG", 85.029, 167.81}, {"2/0 AWG", 67.431, 133.08},
		{"1/0 AWG", 53.475, 105.53}, {"1 AWG", 42.408, 83.69}, {"2 AWG", 33.631, 66.37},
		{"4 AWG", 21.151, 41.74}, {"6 AWG", 13.302, 26.25}, {"8 AWG", 8.366, 16.51},
		{"10 AWG", 5.261, 10.38}, {"12 AWG", 3.309, 6.53}, {"14 AWG", 2.081, 4.11},
		{"16 AWG", 1.309, 2.58}, {"18 AWG", 0.823, 1.62}, {"20 AWG", 0.518, 1.02}, {"22 AWG", 0.326, 0.64},
	} {
		area, _ := mustParse(t, row.text, Conductor).Floats()
		mm2, _ := In(area, Conductor, "mm²")
		kcmil, _ := In(area, Conductor, "kcmil")
		if math.Abs(mm2-row.mm2) > 5.1e-4 || math.Abs(kcmil-row.kcmil) > 5.1e-3 {
			t.Errorf("%s: %.4f mm², %.3f kcmil, want %.3f, %.2f", row.text, mm2, kcmil, row.mm2, row.kcmil)
		}
	}
	for text, want := range map[string]float64{"4/0 AWG": 0.1608, "10 AWG": 3.277} {
		area, _ := mustParse(t, text, Conductor).Floats()
		if got := 17.241e-9 / area * 1000; math.Abs(got-want) > 5e-4*want {
			t.Errorf("%s: %.4f Ω/km, want %.4f", text, got, want)
		}
	}
}

// TestSAECable: SAE cable has less copper than AWG cable of the same size. The
// areas of sizes 10 and 1/0 are those of a cable maker's table at
// http://www.delzer.com/powerproducts/ANC_CAT_003/70/.
func TestSAECable(t *testing.T) {
	for text, want := range map[string]float64{"10 SAE": 9.343, "1/0 SAE": 98.98, "0 SAE": 98.98, "SAE 10": 9.343} {
		area, _ := mustParse(t, text, Conductor).Floats()
		if got, _ := In(area, Conductor, "kcmil"); math.Abs(got-want) > 1e-9 {
			t.Errorf("%s: %v kcmil, want %v", text, got, want)
		}
	}
	for _, row := range saeCircularMils {
		sae := sizeArea(row.size, gaugeSAE)
		ratio, _ := quotient(sizeArea(row.size, gaugeAWG), sae).Float64()
		if ratio < 1.02 || ratio > 1.15 {
			t.Errorf("size %s: AWG has %.3f times the copper of SAE", row.size, ratio)
		}
	}
}

func TestConductorSpellings(t *testing.T) {
	for _, group := range [][]string{
		{"2/0 AWG", "2/0AWG", "00 AWG", "AWG 2/0", "AWG 00"},
		{"1/0 AWG", "0 AWG", "AWG 0"},
		{"10 AWG", "AWG 10", "AWG10", "10 AWG..10 AWG"},
		{"10..8 AWG", "AWG 10..AWG 8", "10 AWG..8", "AWG 10..8"},
	} {
		want := mustParse(t, group[0], Conductor)
		for _, text := range group[1:] {
			v := mustParse(t, text, Conductor)
			if v.Low.Cmp(want.Low) != 0 || v.High.Cmp(want.High) != 0 || v.Unit != gaugeAWG {
				t.Errorf("%q is not %q", text, group[0])
			}
		}
	}
}
