package electrical_test

import (
	"math"
	"testing"

	"trialfit/internal/figures/electrical"
	"trialfit/internal/figures/figurestest"
)

const (
	foot   = 0.3048
	inch   = 0.0254
	milli  = 1e-3
	square = 1e-6 // mm²
	rpm    = 2 * math.Pi / 60
	degree = math.Pi / 180
	minute = 60.0 // s
	hour   = 3600.0
	zero   = 273.15 // K
	at20   = 20 + zero
	at30   = 30 + zero
	at75   = 75 + zero
)

// solid is the resistance in mΩ of a length in m of copper of a section in m²
// at 20 °C.
func solid(area, length float64) float64 {
	return electrical.LoopResistance([]electrical.Cable{{Area: area, Length: length, Parallel: 1}}, 0, at20) / milli
}

// cmil is a section in m² in circular mils.
func cmil(area float64) float64 { return area / (math.Pi / 4 * 25.4e-6 * 25.4e-6) }

func TestChecks(t *testing.T) {
	lamp := circuit(area(t, "16 AWG"), 200*foot, 4, 24, at75)
	strand := 0.044 * inch
	figurestest.Run(t, []figurestest.Check{{
		Name: "4/0 AWG, Ω/km at 20 °C",
		Got:  electrical.Resistance(area(t, "4/0 AWG"), 1000, 1, at20), Want: 0.1608, Within: 1e-4,
		Kind: figurestest.Table, Source: "https://en.m.wikibooks.org/wiki/Engineering_Tables/American_Wire_Gauge",
	}, {
		Name: "10 AWG, Ω/km at 20 °C",
		Got:  electrical.Resistance(area(t, "10 AWG"), 1000, 1, at20), Want: 3.277, Within: 2e-3,
		Kind: figurestest.Table, Source: "https://en.m.wikibooks.org/wiki/Engineering_Tables/American_Wire_Gauge",
	}, {
		Name: "100 ft of two-wire 16 AWG, 4 A, V (the page's strands lie 2 % longer)",
		Got:  value(t, "electrical.voltage_drop", lamp), Want: 4.0, Within: 0.12,
		Kind: figurestest.Published, Source: "http://electrician2.com/weltrain05/lpage135.html",
	}, {
		Name: "the same, % of 24 V",
		Got:  value(t, "electrical.voltage_drop_share", lamp) * 100, Want: 16.7, Within: 0.5,
		Kind: figurestest.Published, Source: "http://electrician2.com/weltrain05/lpage135.html",
	}, {
		Name: "copper for 10 A over 21 ft at 3 % of 12 V, circular mils (the page's copper has about 29 °C)",
		Got:  cmil(electrical.ConductorNeed(10, 21*foot, 29+zero, 0.36)), Want: 6_271, Within: 30,
		Kind: figurestest.Published, Source: "https://sportsmensmarine.com/archives/1034",
	}, {
		Name: "copper for 10 A over 21 ft at 3 % of 32 V, circular mils (the page's copper has about 29 °C)",
		Got:  cmil(electrical.ConductorNeed(10, 21*foot, 29+zero, 0.96)), Want: 2_352, Within: 10,
		Kind: figurestest.Published, Source: "https://sportsmensmarine.com/archives/1034",
	}, {
		Name: "10 SAE, circular mils",
		Got:  cmil(value(t, "electrical.conductor_area", circuit(area(t, "10 SAE"), 1, 1, 12, at20))), Want: 9_343, Within: 0.5,
		Kind: figurestest.Table, Source: "http://www.delzer.com/powerproducts/ANC_CAT_003/70/",
	}, {
		Name: "12 SAE against 12 AWG, circular mils (the page rounds AWG to hundreds)",
		Got:  cmil(area(t, "12 SAE")) / cmil(area(t, "12 AWG")), Want: 5_833.0 / 6_500, Within: 5e-3,
		Kind: figurestest.Table, Source: "https://sportsmensmarine.com/archives/1034",
	}, {
		Name: "6 m of 61 strands of 0.044 in, mΩ",
		Got:  solid(61*math.Pi/4*strand*strand, 6), Want: 1.7, Within: 0.034,
		Kind: figurestest.Published, Source: "https://www.manualslib.com/manual/871581/Perkins-M65.html?page=35",
	}, {
		Name: "longest cranking loop of 35 mm², 4 m, mΩ (2 mΩ less contacts for every size of the page)",
		Got:  solid(35*square, 4), Want: 1.88, Within: 0.11,
		Kind: figurestest.Published, Source: "https://www.easymanua.ls/volvo-penta/tamd42/manual?p=85",
	}, {
		Name: "longest cranking loop of 50 mm², 5.5 m, mΩ",
		Got:  solid(50*square, 5.5), Want: 1.88, Within: 0.11,
		Kind: figurestest.Published, Source: "https://www.easymanua.ls/volvo-penta/tamd42/manual?p=85",
	}, {
		Name: "longest cranking loop of 70 mm², 7.5 m, mΩ",
		Got:  solid(70*square, 7.5), Want: 1.88, Within: 0.11,
		Kind: figurestest.Published, Source: "https://www.easymanua.ls/volvo-penta/tamd42/manual?p=85",
	}, {
		Name: "longest cranking loop of 95 mm², 10 m, mΩ",
		Got:  solid(95*square, 10), Want: 1.88, Within: 0.11,
		Kind: figurestest.Published, Source: "https://www.easymanua.ls/volvo-penta/tamd42/manual?p=85",
	}, {
		Name: "longest cranking loop of 120 mm², 12.5 m, mΩ",
		Got:  solid(120*square, 12.5), Want: 1.88, Within: 0.11,
		Kind: figurestest.Published, Source: "https://www.easymanua.ls/volvo-penta/tamd42/manual?p=85",
	}, {
		Name: "80 A over 4 m of 25 mm² at 15 °C, V (the maker takes 0.0175 Ω·mm²/m, 3.6 % above bare copper)",
		Got:  value(t, "electrical.voltage_drop", circuit(25*square, 4, 80, 24, 15+zero)), Want: 80 * 0.0175 * 4 / 25, Within: 0.009,
		Kind: figurestest.Published, Source: "https://www.easymanua.ls/scania/oc16/manual/1024877?p=11",
	}, {
		Name: "pulley ratio 2.1 at 870 rpm, rpm",
		Got:  electrical.AlternatorSpeed(870, 2.1, 1), Want: 1827, Within: 1e-9,
		Kind:   figurestest.Published,
		Source: "https://www.rodauthority.com/news/how-to-calculate-pulley-ratio-and-rotor-rpm-for-your-alternator/",
	}, {
		Name: "crank pulley of 10 in, alternator pulley of 2.5 in, turns of the rotor",
		Got:  electrical.AlternatorSpeed(1, 10*inch, 2.5*inch), Want: 4, Within: 1e-9,
		Kind: figurestest.Published, Source: "https://calculatorshub.net/mechanical-calculators/alternator-pulley-ratio-calculator/",
	}, {
		Name: "crank pulley of 6 in, alternator pulley of 2 in, turns of the rotor",
		Got:  electrical.AlternatorSpeed(1, 6*inch, 2*inch), Want: 3, Within: 1e-9,
		Kind: figurestest.Published, Source: "https://calculatorultra.com/en/tool/alternator-pulley-ratio-calculator.html",
	}, {
		Name: "52 A on an alternator of 80 A, %",
		Got:  electrical.ChargingUse(80, []float64{52}) * 100, Want: 65, Within: 0.5,
		Kind:   figurestest.Published,
		Source: "http://www.customclassictrucks.com/techarticles/1008cct_information_on_alternators/amp_load.html",
	}, {
		Name: "52 A on an alternator of 60 A, %",
		Got:  electrical.ChargingUse(60, []float64{52}) * 100, Want: 87, Within: 0.5,
		Kind:   figurestest.Published,
		Source: "http://www.customclassictrucks.com/techarticles/1008cct_information_on_alternators/amp_load.html",
	}, {
		Name: "four glow plugs of 8 A, A",
		Got:  electrical.ContinuousLoad([]float64{8, 8, 8, 8}), Want: 32, Within: 1e-9,
		Kind: figurestest.Published, Source: "https://s3.amazonaws.com/jeepwranglerjk2010/7c03900c.html",
	}, {
		Name: "reserve capacity of 120 min, Ah",
		Got:  electrical.ReserveCharge(120*minute) / hour, Want: 50, Within: 1e-9,
		Kind: figurestest.Published, Source: "https://calculator7.snowdaycalculatornow.com/calculate-amp-hours-from-reserve-capacity/",
	}, {
		Name: "reserve capacity of 45 min, Ah",
		Got:  electrical.ReserveCharge(45*minute) / hour, Want: 18.75, Within: 1e-9,
		Kind: figurestest.Published, Source: "https://calculator.academy/battery-reserve-capacity-to-amp-hours-calculator/",
	}, {
		Name: "reserve capacity of 100 min, Ah",
		Got:  electrical.ReserveCharge(100*minute) / hour, Want: 41.67, Within: 5e-3,
		Kind: figurestest.Published, Source: "https://sciencing.com/how-8681870-convert-reserve-capacity-amp-hours.html",
	}, {
		Name: "reserve capacity of 90 min, Ah",
		Got:  electrical.ReserveCharge(90*minute) / hour, Want: 37.5, Within: 1e-9,
		Kind: figurestest.Published, Source: "https://carscounsel.com/?p=49749",
	}, {
		Name: "reserve capacity of 130 min on 87 W through an inverter of 1/1.15 (the page's 4.348 = 12 V × 25 A / 60 / 1.15), h",
		Got:  electrical.StandbyTime(130*minute, 87*1.15/12) / hour, Want: 6.5, Within: 0.05,
		Kind: figurestest.Published, Source: "https://support.cobra.com/support/solutions/articles/47001184426-calculating-battery-life",
	}, {
		Name: "reserve capacity of 120 min on 300 W at 12 V, h",
		Got:  electrical.StandbyTime(120*minute, 300.0/12) / hour, Want: 2, Within: 1e-9,
		Kind: figurestest.Published, Source: "https://royscottmarine.com/Scott-Marine-Blog/2016/3/JUST-HOW-MUCH-TIME-DO-I-HAVE",
	}, {
		Name: "600 W at 12 V, A",
		Got:  electrical.HeaterCurrent(600, 12), Want: 50, Within: 1e-9,
		Kind: figurestest.Published, Source: "https://ukmotorfactors.co.uk/tools/fuse-rating-calculator.html",
	}, {
		Name: "62.5 A of fuse on 50 A",
		Got:  electrical.FuseFactor(62.5, 50), Want: 1.25, Within: 1e-9,
		Kind: figurestest.Published, Source: "https://ukmotorfactors.co.uk/tools/fuse-rating-calculator.html",
	}, {
		Name: "belt over sheaves of 21.1 and 12.4 in at 24 in, in",
		Got:  electrical.BeltLength(21.1, 12.4, 24), Want: 101.4, Within: 0.05,
		Kind:   figurestest.Published,
		Source: "Example 7-1, step 8, of https://fliphtml5.com/eraqv/nlwf/Machine_Elements_in_Mechanical_Design_%284th_Edition%29_%28_PDFDrive_%29/295",
	}, {
		Name: "wrap on the smaller of sheaves of 21.1 and 12.4 in at 23.30 in, °",
		Got:  electrical.Wrap(21.1, 12.4, 23.30) / degree, Want: 158, Within: 0.6,
		Kind:   figurestest.Published,
		Source: "Example 7-1, step 10, of https://fliphtml5.com/eraqv/nlwf/Machine_Elements_in_Mechanical_Design_%284th_Edition%29_%28_PDFDrive_%29/295",
	}, {
		Name: "belt over pulleys of 1600 and 500 mm at 12 m, m",
		Got:  electrical.BeltLength(1.6, 0.5, 12), Want: 27.32, Within: 5e-3,
		Kind: figurestest.Published, Source: "http://www.expertsmind.com/questions/find-length-of-belt-30119111.aspx",
	}, {
		Name: "belt over pulleys of 10 and 2 in at 24 in, in (the page takes 1.6 for π/2 and drops the last term)",
		Got:  electrical.BeltLength(10, 2, 24), Want: 67.2, Within: 0.4,
		Kind: figurestest.Published, Source: "http://www.frentzandsons.com/Hardware%20References/tofindthebeltlength.htm",
	}, {
		Name: "belt over pulleys of 393 and 105 mm at 697 mm, m",
		Got:  electrical.BeltLength(0.393, 0.105, 0.697), Want: 2.2, Within: 0.05,
		Kind: figurestest.Published, Source: "https://www.hackmath.net/en/math-problem/258",
	}, {
		Name: "10 AWG of 105 °C, three in a bundle in the engine bay, A",
		Got:  electrical.DeratedAmpacity(area(t, "10 AWG"), 105+zero, true, 3), Want: 35.7, Within: 0.05,
		Kind: figurestest.Table, Source: "https://cableyutai.com.tw/tech-02.htm",
	}, {
		Name: "4 AWG of 105 °C, four to six in a bundle, A",
		Got:  electrical.DeratedAmpacity(area(t, "4 AWG"), 105+zero, false, 5), Want: 96, Within: 1e-9,
		Kind: figurestest.Table, Source: "https://cableyutai.com.tw/tech-02.htm",
	}, {
		Name: "2/0 AWG of 105 °C, seven to 24 in a bundle in the engine bay, A",
		Got:  electrical.DeratedAmpacity(area(t, "2/0 AWG"), 105+zero, true, 24), Want: 140.3, Within: 0.06,
		Kind: figurestest.Table, Source: "https://cableyutai.com.tw/tech-02.htm",
	}, {
		Name: "12 AWG of 80 °C alone, A",
		Got:  electrical.DeratedAmpacity(area(t, "12 AWG"), 80+zero, false, 1), Want: 35, Within: 1e-9,
		Kind: figurestest.Table, Source: "http://federal.elaws.us/cfr/title-33/section-183.425",
	}, {
		Name: "10 AWG of 105 °C at the 51 A that the engine bay allows reaches its class, °C (the factor 0.85 is rounded)",
		Got:  electrical.ConductorTemperature(area(t, "10 AWG"), 105+zero, true, 1, 51) - zero, Want: 105, Within: 1,
		Kind: figurestest.Table, Source: "http://federal.elaws.us/cfr/title-33/section-183.425",
	}, {
		Name: "45 A over 7 m of 10 AWG at 60 °C, V",
		Got:  value(t, "electrical.voltage_drop", circuit(area(t, "10 AWG"), 7, 45, 13.5, 333.15)), Want: 1.1945, Within: 5e-5,
		Kind: figurestest.Computed, Source: "worked by another program",
	}, {
		Name: "the same, share of 13.5 V",
		Got:  value(t, "electrical.voltage_drop_share", circuit(area(t, "10 AWG"), 7, 45, 13.5, 333.15)), Want: 0.08848, Within: 5e-6,
		Kind: figurestest.Computed, Source: "worked by another program",
	}, {
		Name: "resistance of the same, mΩ",
		Got:  value(t, "electrical.circuit_resistance", circuit(area(t, "10 AWG"), 7, 45, 13.5, 333.15)) / milli, Want: 1194.5 / 45, Within: 2e-3,
		Kind: figurestest.Computed, Source: "worked by another program",
	}, {
		Name: "copper for 120 A over 5 m at 0.30 V and 20 °C, mm²",
		Got:  electrical.ConductorNeed(120, 5, at20, 0.30) / square, Want: 34.482, Within: 5e-4,
		Kind: figurestest.Computed, Source: "worked by another program",
	}, {
		Name: "rating for 71 A and 15 A of recharge, A",
		Got:  electrical.AlternatorNeed([]float64{14, 9, 20, 12, 16}, 15), Want: 110.26, Within: 5e-3,
		Kind: figurestest.Computed, Source: "worked by another program",
	}, {
		Name: "two grid heaters of 1 kW at 12 V, A",
		Got:  electrical.HeaterCurrent(2_000, 12), Want: 166.67, Within: 5e-3,
		Kind: figurestest.Computed, Source: "worked by another program",
	}, {
		Name: "wrap on the smaller of pulleys of 180 and 62 mm at 310 mm, °",
		Got:  electrical.Wrap(0.180, 0.062, 0.310) / degree, Want: 158.057, Within: 5e-4,
		Kind: figurestest.Computed, Source: "worked by another program",
	}, {
		Name: "belt over the same, mm",
		Got:  electrical.BeltLength(0.180, 0.062, 0.310) / milli, Want: 1011.36, Within: 5e-3,
		Kind: figurestest.Computed, Source: "worked by another program",
	}, {
		Name: "offset of 2.705 mm over 310 mm, °",
		Got:  electrical.Misalignment(2.705*milli, 0.310) / degree, Want: 0.5, Within: 1e-4,
		Kind: figurestest.Computed, Source: "worked by another program",
	}, {
		Name: "alternator at 3600 rpm by pulleys of 180 and 62 mm, rpm",
		Got:  electrical.AlternatorSpeed(3600, 0.180, 0.062), Want: 10_451.6, Within: 0.05,
		Kind: figurestest.Computed, Source: "worked by another program",
	}, {
		Name: "hold coil of 12.2 Ω at 12 V, A",
		Got:  electrical.CoilCurrent(12, 12.2), Want: 0.984, Within: 5e-4,
		Kind: figurestest.Computed, Source: "by hand",
	}})
}
