package air

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

func compressorOut(d figures.Direction) figures.Input {
	return figures.Input{Name: "T2", Path: "charge_air.compressor_out", Direction: d, Valid: hotBounds}
}

func manifoldIn(d figures.Direction) figures.Input {
	return figures.Input{Name: "T3", Path: "charge_air.manifold_in", Direction: d, Valid: hotBounds}
}

func ambient(d figures.Direction) figures.Input {
	return figures.Input{Name: "Ta", Path: "charge_air.ambient", Direction: d, Valid: airBounds}
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
	Conditions: []figures.Condition{{Figure: compressorRise, Valid: figures.Bounds{Low: 5, High: 400}}},
	Source: figures.Source{
		Title: "definition of the effectiveness of a heat exchanger whose cold side is the surrounding air",
		URL:   "https://carscounsel.com/?p=52960",
		Basis: "physics",
	},
	Compute: func(a figures.Args) float64 {
		return CoolerEffectiveness(a.At("T2"), a.At("T3"), a.At("Ta"))
	},
}
