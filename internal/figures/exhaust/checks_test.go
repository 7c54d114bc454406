package exhaust_test

import (
	"math"
	"testing"

	"trialfit/internal/figures/exhaust"
	"trialfit/internal/figures/figurestest"
	"trialfit/internal/figures/fluid"
)

const (
	celsius = 273.15
	inch    = 0.0254
	foot    = 12 * inch
	cfm     = 4.719474432e-4 // m³/s
	water   = 249.0889       // Pa of an inch
	mercury = 3386.389       // Pa of an inch
)

func fahrenheit(degrees float64) float64 { return (degrees + 459.67) / 1.8 }

// constant is the friction factor that a maker's formula hides, which counts
// length·density·flow²/bore⁵ in SI units with a number.
func constant(number float64) float64 { return number * math.Pi * math.Pi / 8 }

// drop is what straight pipe takes of a flow in m³/s, with a friction factor.
func drop(friction, length, bore, density, flow float64) float64 {
	return fluid.PipeDrop(friction, length, bore, density, fluid.PipeSpeed(flow, bore))
}

// Makers' formulas carry one friction factor for every pipe, from 0.016 to
// 0.022; the figures take it from the flow, and the same examples come out
// between those formulas. For the loss of a step in the bore and the volume of
// exhaust gas formulas were found, but no number to hold against.
func TestChecks(t *testing.T) {
	const (
		maker      = "https://www.scribd.com/document/553835964/배압-계산-공식"
		generator  = "https://pdfcoffee.com/download/back-pressure-cal-pdf-free.html"
		calculator = "https://www.scribd.com/document/78601980/Back-Pressure-Calculator"
		joints     = "https://www.hyspan.com/thermal-expansion/"
		pipelines  = "https://www.appclonescript.com/how-expansion-bellows-manage-thermal-expansion-in-pipelines/"
	)
	figurestest.Run(t, []figurestest.Check{
		{
			Name: "12 m of 300 mm, 230 m³/min at 422 °C by Q²·3.6e6, kPa",
			// m³/min and mm make 3.6e6·60²·1e3/1e15 in SI units.
			Got:  drop(constant(3.6e6*3600*1e3/1e15), 12, 0.3, 0.506906475, 230.0/60) / 1e3,
			Want: 0.476717378, Within: 0.0005,
			Kind: figurestest.Published, Source: generator,
		},
		{
			Name: "12 m of 300 mm, 230 m³/min at 422 °C, kPa",
			Got:  exhaust.Stretch{Bore: 0.3, Length: 12}.Drop(230.0/60*exhaust.Density(422+celsius), 422+celsius) / 1e3,
			Want: 0.4767, Within: 0.03,
			Kind: figurestest.Published, Source: generator + ", whose friction factor is 0.016",
		},
		{
			Name: "density at 422 °C, kg/m³", Got: exhaust.Density(422 + celsius), Want: 0.506906, Within: 0.001,
			Kind: figurestest.Published, Source: generator,
		},
		{
			Name: "247.56 ft of 6 in, 1500 cfm at 70 °F, inH2O",
			Got:  exhaust.Stretch{Bore: 6 * inch, Length: 247.56 * foot}.Drop(1500*cfm*exhaust.Density(fahrenheit(70)), fahrenheit(70)) / water,
			Want: 29.73, Within: 1.5,
			Kind: figurestest.Published, Source: calculator + ", whose friction factor does not change",
		},
		{
			Name: "50 m of 14 in, 218 m³/min at 500 °C by 6.32, Pa",
			// 6.32/T stands for 6.32/352.9 of the density.
			Got:  drop(constant(6.32/(exhaust.Density(773)*773)), 50, 14*inch, exhaust.Density(773), 218.0/60),
			Want: 949, Within: 1,
			Kind: figurestest.Published, Source: maker,
		},
		{
			Name: "speed of 218 m³/min in 14 in, m/s", Got: fluid.PipeSpeed(218.0/60, 14*inch), Want: 36.58, Within: 0.02,
			Kind: figurestest.Published, Source: maker,
		},
		{
			Name: "a long elbow of 14 in as straight pipe, m", Got: exhaust.Bends["long-90"] * 14 * inch, Want: 7, Within: 0.12,
			Kind: figurestest.Published, Source: maker + ": elbow of 90°",
		},
		{
			Name: "an elbow of 45° of 10 in as straight pipe, m", Got: exhaust.Bends["elbow-45"] * 10 * inch, Want: 3.94, Within: 0.14,
			Kind: figurestest.Published, Source: maker,
		},
		{
			Name: "friction factor at Re 40 000, roughness 0.01", Got: fluid.Friction(40_000, 0.01), Want: 0.04, Within: 0.0006,
			Kind: figurestest.Published, Source: "http://engineersedge.com/fluid_flow/friction_loss.htm",
		},
		{
			Name: "speed of 1800 L/min in 15 cm, m/s", Got: fluid.PipeSpeed(0.03, 0.15), Want: 1.697, Within: 0.001,
			Kind: figurestest.Published, Source: "https://pkb.mypolycc.edu.my/ebook/FluidM/files/basic-html/page119.html",
		},
		{
			Name: "20 m of steel over 100 K, mm", Got: exhaust.Steel.Growth(20, exhaust.Cold+100) * 1e3, Want: 24, Within: 0.7,
			Kind: figurestest.Published, Source: pipelines,
		},
		{
			Name: "20 m of austenitic stainless steel over 100 K, mm", Got: exhaust.Austenitic.Growth(20, exhaust.Cold+100) * 1e3,
			Want: 33, Within: 1.1,
			Kind: figurestest.Published, Source: pipelines + ": 32 to 34",
		},
		{
			Name: "1 m of ferritic stainless steel over 79 K, mm", Got: exhaust.Ferritic.Growth(1, 100+celsius) * 1e3,
			Want: 11.0e-3 * (100 + celsius - exhaust.Cold), Within: 0.01,
			Kind: figurestest.Published, Source: "https://solitairesteelllp.com/409-stainless-steel: 11.0 µm/(m·K) from 0 to 100 °C",
		},
		{
			Name: "100 ft of steel at 600 °F, in", Got: exhaust.Steel.Growth(100, fahrenheit(600)) / 100 * 1200, Want: 4.60, Within: 0.02,
			Kind: figurestest.Table, Source: joints,
		},
		{
			Name: "100 ft of austenitic stainless steel at 700 °F, in", Got: exhaust.Austenitic.Growth(100, fahrenheit(700)) / 100 * 1200,
			Want: 7.50, Within: 0.03,
			Kind: figurestest.Table, Source: joints,
		},
		{
			Name: "a 4 in brake behind a 3 in pipe", Got: exhaust.AreaRatio(4, 3), Want: 16.0 / 9, Within: 1e-9,
			Kind: figurestest.Published, Source: "common practice: a tight 3 in downpipe steps up to 4 in at the exhaust brake",
		},
		{
			Name: "0.16607 kg/s at 480 °C, m³/s", Got: exhaust.Volume(0.16607, 480+celsius), Want: 0.35433, Within: 0.0002,
			Kind: figurestest.Computed, Source: "the same formula in another program, with 101.3 kPa",
		},
		{
			Name: "a step from 8 to 16 cm", Got: fluid.Widening(8, 16), Want: 9.0 / 16, Within: 1e-12,
			Kind: figurestest.Computed, Source: "by hand from (1 − A1/A2)²",
		},
	})
}
