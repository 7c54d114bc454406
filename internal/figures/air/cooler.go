package air

import (
	"trialfit/internal/figures"
	"trialfit/internal/figures/fluid"
	"trialfit/internal/quantity"
)

func compressorOut(d figures.Direction) figures.Input {
	return in("T2", "charge_air.compressor_out", d, hotBounds)
}

func manifoldIn(d figures.Direction) figures.Input {
	return in("T3", "charge_air.manifold_in", d, hotBounds)
}

func ambient(d figures.Direction) figures.Input {
	return in("Ta", "charge_air.ambient", d, airBounds)
}

var definition = figures.Source{Title: "definition, from readings of one full-load run", Basis: "physics"}

// Rise is how far a temperature lies above that of the surrounding air, both
// and the result in K.
func Rise(temperature, ambient float64) float64 { return temperature - ambient }

var compressorRise = &figures.Figure{
	ID:      "air.compressor_rise",
	Title:   "charge above the surrounding air, before its cooler",
	Symbol:  "T2 − Ta",
	Kind:    quantity.TemperatureDifference,
	Formula: "temperature behind the compressor − temperature of the surrounding air",
	Inputs:  []figures.Input{compressorOut(figures.Rising), ambient(figures.Falling)},
	Source:  definition,
	Compute: func(a figures.Args) float64 { return Rise(a.At("T2"), a.At("Ta")) },
}

// warmed bounds what efficiencies divide by: below, the readings tell nothing.
var warmed = figures.Condition{Figure: compressorRise, Valid: figures.Bounds{Low: 5, High: 400}}

var chargeRise = &figures.Figure{
	ID:      "air.charge_rise",
	Title:   "charge above the surrounding air, at the manifold",
	Symbol:  "T3 − Ta",
	Kind:    quantity.TemperatureDifference,
	Formula: "temperature at the manifold − temperature of the surrounding air",
	Inputs:  []figures.Input{manifoldIn(figures.Rising), ambient(figures.Falling)},
	Source:  definition,
	Compute: func(a figures.Args) float64 { return Rise(a.At("T3"), a.At("Ta")) },
}

// CoolerEffectiveness is the share of the heat that a charge-air cooler could
// take out and does, from the temperatures before it, behind it and around it
// in K.
func CoolerEffectiveness(before, behind, ambient float64) float64 {
	return (before - behind) / (before - ambient)
}

var coolerEffectiveness = &figures.Figure{
	ID:      "air.cooler_effectiveness",
	Title:   "effectiveness of the charge-air cooler",
	Symbol:  "ε",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "ε = (T2 − T3) / (T2 − Ta), T2 behind the compressor, T3 at the manifold, Ta of the surrounding air",
	Inputs: []figures.Input{
		// Which way T2 and Ta pull depends on whether T3 lies between them.
		compressorOut(figures.Either), manifoldIn(figures.Falling), ambient(figures.Either),
	},
	Conditions: []figures.Condition{warmed},
	Source: figures.Source{
		Title: "definition of the effectiveness of a heat exchanger whose cold side is the surrounding air",
		URL:   "https://carscounsel.com/?p=52960",
		Basis: "physics",
	},
	Compute: func(a figures.Args) float64 {
		return CoolerEffectiveness(a.At("T2"), a.At("T3"), a.At("Ta"))
	},
}

// DensityRatio is how much denser charge air is than the surrounding air, from
// both absolute pressures in one unit and both temperatures in K.
func DensityRatio(pressure, temperature, ambientPressure, ambientTemperature float64) float64 {
	return pressure / ambientPressure * ambientTemperature / temperature
}

var densityRatio = &figures.Figure{
	ID:      "air.density_ratio",
	Title:   "charge in the manifold against the surrounding air, by density",
	Symbol:  "ρ3/ρa",
	Kind:    quantity.Ratio,
	Formula: "ρ3/ρa = (boost + 101.325 kPa)/101.325 kPa · Ta/T3; readings near sea level",
	Inputs: []figures.Input{
		in("pb", "charge_air.boost", figures.Rising, boostBounds),
		manifoldIn(figures.Falling), ambient(figures.Rising),
	},
	Source: figures.Source{
		Title: "ideal gas law",
		URL:   "http://cdn.exploroz.com/Vehicle/Technical/Intercoolers.aspx",
		Basis: "physics",
	},
	Compute: func(a figures.Args) float64 {
		return DensityRatio(fluid.Atmosphere+a.At("pb"), a.At("T3"), fluid.Atmosphere, a.At("Ta"))
	},
}
