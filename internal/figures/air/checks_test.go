package air_test

import (
	"math"
	"testing"

	"trialfit/internal/figures/air"
	"trialfit/internal/figures/figurestest"
	"trialfit/internal/figures/fluid"
)

const (
	celsius     = 273.15
	psi         = 6894.757 // Pa
	inch        = 0.0254
	cubicInch   = inch * inch * inch
	cfm         = 4.719474432e-4 // m³/s
	mph         = 0.44704
	pound       = 0.45359237
	hp          = 745.699872
	poundHp     = 608.2773878 / 3.6e9 // kg/J of lb/(hp·h)
	rpm         = 2 * math.Pi / 60
	inchMercury = 3386.389
	gramKWh     = 1 / 3.6e9 // kg/J
)

func fahrenheit(degrees float64) float64 { return (degrees + 459.67) / 1.8 }

// pipe is the speed in mph of so many cfm in a bore of so many inches.
func pipe(flow, bore float64) float64 { return fluid.PipeSpeed(flow*cfm, bore*inch) / mph }

// Nobody prints a worked example of the power correction of a diesel by ISO
// 1585, SAE J1349 or UN R85: pages, documentation and repositories were
// searched; the bounds of the engine factor are all that was found.
func TestChecks(t *testing.T) {
	const pipes = "https://www.automotiveforums.com/t497529-cfm_calucations.html"
	const turboMath = "https://performancespecialties.wordpress.com/2011/08/10/turbocharger-math/"
	const handbook = "https://digilib.universitaspertamina.ac.id/ebook/Mechanical%20Engineers'%20Handbook%20(Volume%204)/files/basic-html/page23.html"
	const r85 = "UN R85, annex 5, paragraph 5.4.2.2"
	figurestest.Run(t, []figurestest.Check{
		{
			Name: "pressure ratio, 18 psi at 14.70 psi", Got: air.PressureRatio(18, 0, 14.70, 0), Want: 2.224, Within: 0.0005,
			Kind: figurestest.Published, Source: "https://toolroost.com/turbo-pressure-ratio-calculator",
		},
		{
			Name: "pressure ratio, 10 psi at 14.7 psi, restriction 1 psi", Got: air.PressureRatio(10, 0, 14.7, 1), Want: 1.80, Within: 0.005,
			Kind: figurestest.Published, Source: turboMath,
		},
		{
			Name: "effectiveness, 120 to 60 °C in air of 30 °C", Got: air.CoolerEffectiveness(120, 60, 30), Want: 0.667, Within: 0.0005,
			Kind: figurestest.Published, Source: "https://carscounsel.com/?p=52960",
		},
		{
			Name: "effectiveness, 25 to 22 °C in air of 20 °C", Got: air.CoolerEffectiveness(25, 22, 20), Want: 0.60, Within: 1e-9,
			Kind: figurestest.Published, Source: "https://calculator.academy/intercooler-efficiency-calculator/",
		},
		{
			Name: "effectiveness, 120 to 45 °C in air of 20 °C", Got: air.CoolerEffectiveness(120, 45, 20), Want: 0.75, Within: 1e-9,
			Kind: figurestest.Published, Source: "https://www.geratools.com/intercooler-calculator",
		},
		{
			Name: "efficiency of a compressor, 1 to 4 bar, 25 to 200 °C", Got: air.CompressorEfficiency(25+celsius, 200+celsius, 4),
			Want: 0.83, Within: 0.005,
			Kind: figurestest.Published, Source: "https://www.physicsforums.com/threads/thermodynamics-vapour-power-plants.400588/",
		},
		{
			Name: "density of charge at 45 °C and 1.7 atm against air of 298 K",
			Got:  air.DensityRatio(1.7, 45+celsius, 1, 298), Want: 1.60, Within: 0.01,
			Kind: figurestest.Published, Source: "http://56.124.21.165/turbo-physics-grade-12-pdf",
		},
		{
			Name: "air of 122 in³ at 7200 rpm, 92 %, 41.1 psi absolute and 130 °F, lb/min",
			Got:  air.EngineFlow(122*cubicInch, 7200*rpm, 0.92, fluid.AirDensity(41.1*psi, fahrenheit(130))) * 60 / pound,
			Want: 44, Within: 0.1,
			Kind: figurestest.Published, Source: turboMath,
		},
		{
			Name: "air swallowed by 250 in³ at 6000 rpm, cfm", Got: air.Swallowed(250*cubicInch, 6000*rpm) / cfm, Want: 434, Within: 0.5,
			Kind: figurestest.Published, Source: "http://techlib.fordsix.com/fordsix-techlib/cfm-calculations-volumetric-efficiency/",
		},
		{
			Name: "air–fuel ratio of 44.0 lb/min for 400 hp at 0.55 lb/(hp·h)",
			Got:  air.FuelRatio(44*pound/60, air.FuelFlow(400*hp, 0.55*poundHp)), Want: 12, Within: 0.001,
			Kind: figurestest.Published, Source: turboMath,
		},
		{
			Name: "air–fuel ratio of 42.2 lb/min for 400 hp at 0.55 lb/(hp·h)",
			Got:  air.FuelRatio(42.2*pound/60, air.FuelFlow(400*hp, 0.55*poundHp)), Want: 11.5, Within: 0.02,
			Kind: figurestest.Published, Source: "https://calculatorlib.com/turbo-size-calculator",
		},
		{
			Name: "air–fuel ratio of 1380 lb/h for 200 hp at 0.5 lb/(hp·h)",
			Got:  air.FuelRatio(1380*pound/3600, air.FuelFlow(200*hp, 0.5*poundHp)), Want: 13.8, Within: 0.001,
			Kind: figurestest.Published, Source: "http://sdsefi.com/techform.htm",
		},
		{
			Name: "excess air where a diesel smokes, air–fuel ratio 16.7", Got: 16.7 / air.Stoichiometric, Want: 1.15, Within: 0.005,
			Kind: figurestest.Published, Source: "https://engine-build.com/calculators/diesel-smoke-lambda",
		},
		{
			Name: "300 cfm in 2 in, mph", Got: pipe(300, 2), Want: 156, Within: 0.5,
			Kind: figurestest.Published, Source: pipes,
		},
		{
			Name: "600 cfm in 2 1/4 in, mph", Got: pipe(600, 2.25), Want: 247, Within: 0.5,
			Kind: figurestest.Published, Source: pipes,
		},
		{
			Name: "800 cfm in 2 1/2 in, mph", Got: pipe(800, 2.5), Want: 266, Within: 1,
			Kind: figurestest.Published, Source: pipes,
		},
		{
			Name: "1000 cfm in 2 3/4 in, mph", Got: pipe(1000, 2.75), Want: 275, Within: 1,
			Kind: figurestest.Published, Source: pipes,
		},
		{
			Name: "0.258 m³/s in 76 mm, m/s", Got: fluid.PipeSpeed(0.258, 0.076), Want: 57.0, Within: 0.2,
			Kind: figurestest.Published, Source: "https://www.vrcf.fi/foorumi/index.php?topic=121900.msg1061539592",
		},
		{
			Name: "Mach number of 300 m/s at 300 K", Got: 300 / fluid.SoundSpeed(300), Want: 0.864, Within: 0.0005,
			Kind: figurestest.Published, Source: "https://admin.japansake.or.jp/tareasenos/14633314",
		},
		{
			Name: "speed of sound at 256 K, m/s", Got: fluid.SoundSpeed(256), Want: 320.72, Within: 0.05,
			Kind: figurestest.Published, Source: "https://qammunity.org/6420307",
		},
		{
			Name: "pressure at 2500 m, inHg", Got: fluid.StandardPressure(2500) / inchMercury, Want: 22.05, Within: 0.01,
			Kind: figurestest.Published, Source: "https://chemistrycalc.com/chemistry/boiling-point-altitude-calculator/",
		},
		{
			Name: "pressure at 3200 m, kPa", Got: fluid.StandardPressure(3200) / 1e3, Want: 68.344, Within: 0.001,
			Kind:   figurestest.Published,
			Source: "https://www.scribd.com/document/396488300/Atmospheric-Temperature-Pressure-and-Density-as-Function-of-the-Height-Above-Sea-Level",
		},
		{
			Name: "standard atmosphere at 1000 m, bar", Got: fluid.StandardPressure(1000) / 1e5, Want: 0.8988, Within: 0.0001,
			Kind: figurestest.Table, Source: handbook,
		},
		{
			Name: "standard atmosphere at 2000 m, kg/m³",
			Got:  fluid.AirDensity(fluid.StandardPressure(2000), fluid.StandardTemperature(2000)), Want: 1.0066, Within: 0.0002,
			Kind: figurestest.Table, Source: handbook,
		},
		{
			Name: "standard atmosphere at 5000 ft, psi", Got: fluid.StandardPressure(5000*12*inch) / psi, Want: 12.230, Within: 0.003,
			Kind: figurestest.Table, Source: "https://engineersedge.com/calculators/standard_atmospheric_data_15729.htm",
		},
		{
			Name: "engine factor at 40 mg", Got: air.DieselEngineFactor(40, true), Want: 0.3, Within: 1e-9,
			Kind: figurestest.Published, Source: r85,
		},
		{
			Name: "engine factor above 65 mg", Got: air.DieselEngineFactor(80, true), Want: 1.2, Within: 1e-9,
			Kind: figurestest.Published, Source: r85,
		},
		{
			Name: "fuel of a cycle, 14.0 kg/h in 2.8 L at 3800 rpm", Got: air.CycleFuel(14.0/3600, 2.8e-3, 3800*rpm), Want: 43.860, Within: 0.001,
			Kind: figurestest.Computed, Source: "the same formula in another program",
		},
		{
			Name: "correction of a natural diesel, 88.0 kPa and 308 K",
			Got:  math.Pow(air.DieselAirFactor(88e3, 308, false, false), air.DieselEngineFactor(43.860, false)), Want: 1.06379, Within: 1e-5,
			Kind: figurestest.Computed, Source: "the same formula in another program",
		},
		{
			Name: "correction of a turbocharged diesel, 84.0 kPa and 303 K",
			Got:  math.Pow(air.DieselAirFactor(84e3, 303, true, false), air.DieselEngineFactor(96/2.1, false)), Want: 1.07064, Within: 1e-5,
			Kind: figurestest.Computed, Source: "the same formula in another program",
		},
		{
			Name: "the same by UN R85",
			Got:  math.Pow(air.DieselAirFactor(84e3, 303, true, true), air.DieselEngineFactor(96/2.1, true)), Want: 1.07335, Within: 1e-5,
			Kind: figurestest.Computed, Source: "the same formula in another program",
		},
		{
			Name: "correction of a petrol engine, 100.0 kPa and 303 K", Got: air.SparkFactor(100e3, 303, true), Want: 0.99796, Within: 1e-5,
			Kind: figurestest.Computed, Source: "the same formula in another program",
		},
		{
			Name: "compressor, 298.15 K, ratio 2.4, 72 %", Got: air.CompressorOut(298.15, 2.4, 0.72), Want: 415.84, Within: 0.005,
			Kind: figurestest.Computed, Source: "the same formula in another program",
		},
	})
}
