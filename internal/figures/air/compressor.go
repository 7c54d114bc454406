package air

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/figures/fluid"
	"trialfit/internal/quantity"
)

// PressureRatio is the pressure behind a compressor over that before it, from
// the boost at the manifold, what is lost on the way there, the pressure of the
// surrounding air and the restriction of the intake, all in one unit.
func PressureRatio(boost, lost, ambient, restriction float64) float64 {
	return (boost + lost + ambient) / (ambient - restriction)
}

var ratioSource = figures.Source{
	Title: "definition, with the standard atmosphere",
	URL:   "https://toolroost.com/turbo-pressure-ratio-calculator",
	Basis: "physics",
}

var pressureRatio = &figures.Figure{
	ID:      "air.pressure_ratio",
	Title:   "pressure ratio of the compressor",
	Symbol:  "π",
	Kind:    quantity.Ratio,
	Formula: "π = (boost + 101.325 kPa) / 101.325 kPa, at sea level, without restriction and losses",
	Inputs:  []figures.Input{in("pb", "charge_air.boost", figures.Rising, boostBounds)},
	Source:  ratioSource,
	Compute: func(a figures.Args) float64 { return PressureRatio(a.At("pb"), 0, fluid.Atmosphere, 0) },
}

// onSite are the inputs of the pressure ratio at the highest altitude.
func onSite() []figures.Input {
	return []figures.Input{
		in("pb", "charge_air.boost", figures.Rising, boostBounds),
		in("Δpc", "charge_air.cooler_drop", figures.Rising, lossBounds),
		in("Δpi", "intake.restriction", figures.Rising, restrictionBounds),
		in("H", "registration.altitude", figures.Rising, altitudeBounds),
	}
}

func ratioOnSite(a figures.Args) float64 {
	return PressureRatio(a.At("pb"), a.At("Δpc"), fluid.StandardPressure(a.At("H")), a.At("Δpi"))
}

const siteRatio = "π = (boost + pressure lost on the way + p) / (p − intake restriction), " +
	"p of the standard atmosphere at the highest altitude, boost as at sea level"

var pressureRatioSite = &figures.Figure{
	ID:      "air.pressure_ratio_site",
	Title:   "pressure ratio of the compressor at the highest altitude",
	Symbol:  "π",
	Kind:    quantity.Ratio,
	Formula: siteRatio,
	Inputs:  onSite(),
	Source: figures.Source{
		Title: "ratio of absolute pressures, the restriction of the intake taken off",
		URL:   "https://performancespecialties.wordpress.com/2011/08/10/turbocharger-math/",
		Basis: "handbook",
	},
	Compute: ratioOnSite,
}

// IsentropicRise is the rise in K of air of a temperature in K that is
// compressed by a ratio without loss.
func IsentropicRise(temperature, ratio float64) float64 {
	return temperature * (math.Pow(ratio, (fluid.AirExponent-1)/fluid.AirExponent) - 1)
}

// CompressorOut is the temperature in K behind a compressor, from that before
// it in K, its pressure ratio and its isentropic efficiency.
func CompressorOut(temperature, ratio, efficiency float64) float64 {
	return temperature + IsentropicRise(temperature, ratio)/efficiency
}

var isentropic = figures.Source{
	Title: "isentropic efficiency of a compressor, air with an exponent of 1.4",
	URL:   "https://cal26.calculator.city/?p=15656",
	Basis: "physics",
}

var compressorTemperature = &figures.Figure{
	ID:      "air.compressor_temperature",
	Title:   "charge behind the compressor, hottest day, highest altitude",
	Symbol:  "T2",
	Kind:    quantity.Temperature,
	Unit:    "°C",
	Formula: "T2 = Ta·(1 + (π^0.2857 − 1)/η), " + siteRatio,
	Inputs: append(onSite(),
		in("Ta", "registration.ambient", figures.Rising, airBounds),
		in("η", "charge_air.compressor_efficiency", figures.Falling, efficiencyBounds)),
	Source:  isentropic,
	Compute: func(a figures.Args) float64 { return CompressorOut(a.At("Ta"), ratioOnSite(a), a.At("η")) },
}

// CompressorEfficiency is the isentropic efficiency of a compressor, from the
// temperatures before and behind it in K and its pressure ratio.
func CompressorEfficiency(before, behind, ratio float64) float64 {
	return IsentropicRise(before, ratio) / (behind - before)
}

var compressorEfficiency = &figures.Figure{
	ID:      "air.compressor_efficiency",
	Title:   "efficiency of the compressor, as measured",
	Symbol:  "η",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "η = Ta·(π^0.2857 − 1)/(T2 − Ta), π = (boost + 101.325 kPa)/101.325 kPa; readings near sea level",
	Inputs: []figures.Input{
		in("pb", "charge_air.boost", figures.Rising, boostBounds),
		compressorOut(figures.Falling), ambient(figures.Rising),
	},
	Conditions: []figures.Condition{warmed},
	Source:     isentropic,
	Compute: func(a figures.Args) float64 {
		return CompressorEfficiency(a.At("Ta"), a.At("T2"), PressureRatio(a.At("pb"), 0, fluid.Atmosphere, 0))
	},
}
