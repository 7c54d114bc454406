// Package air holds the figures of what goes into the engine under pressure and
// of what comes out against it.
package air

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// Figures returns every figure of the discipline.
func Figures() []*figures.Figure {
	return []*figures.Figure{
		pressureRatio,
		compressorRise, coolerEffectiveness, chargeRise,
		brakePressureUse, backPressureUse,
	}
}

// Atmosphere is the standard pressure of air at sea level in Pa.
const Atmosphere = 101_325

// Bounds of road engines, and nothing that is only a slip of the unit.
var (
	boostBounds = figures.Bounds{Low: 0, High: 800_000}       // Pa above the surrounding air
	hotBounds   = figures.Bounds{Low: 223.15, High: 623.15}   // K: −50 to 350 °C
	airBounds   = figures.Bounds{Low: 223.15, High: 333.15}   // K: −50 to 60 °C
	brakeBounds = figures.Bounds{Low: 1_000, High: 1_000_000} // Pa above the surrounding air
	backBounds  = figures.Bounds{Low: 10, High: 100_000}      // Pa
)

// PressureRatio is the pressure behind a compressor over that before it, from
// the boost and the pressure of the surrounding air, both in one unit. What the
// air cleaner takes is left out.
func PressureRatio(boost, ambient float64) float64 { return (boost + ambient) / ambient }

var pressureRatio = &figures.Figure{
	ID:      "air.pressure_ratio",
	Title:   "pressure ratio of the compressor",
	Symbol:  "π",
	Kind:    quantity.Ratio,
	Formula: "π = (boost + 101.325 kPa) / 101.325 kPa, at sea level, without the restriction of the intake",
	Inputs: []figures.Input{
		{Name: "p", Path: "charge_air.boost", Direction: figures.Rising, Valid: boostBounds},
	},
	Source: figures.Source{
		Title: "definition, with the standard atmosphere",
		URL:   "https://toolroost.com/turbo-pressure-ratio-calculator",
		Basis: "physics",
	},
	Compute: func(a figures.Args) float64 { return PressureRatio(a.At("p"), Atmosphere) },
}

// use is a pressure against the highest one that the engine's maker allows.
func use(id, title, at, limit string, valid figures.Bounds) *figures.Figure {
	return &figures.Figure{
		ID:      "air." + id,
		Title:   title,
		Symbol:  "p/p max",
		Kind:    quantity.Ratio,
		Unit:    "%",
		Formula: "pressure / highest pressure that the engine's maker allows",
		Inputs: []figures.Input{
			{Name: "p", Path: at, Direction: figures.Rising, Valid: valid},
			{Name: "p max", Path: limit, Direction: figures.Falling, Valid: valid},
		},
		Source:  figures.Source{Title: "the engine maker's data sheet", Basis: "manufacturer"},
		Compute: func(a figures.Args) float64 { return Use(a.At("p"), a.At("p max")) },
	}
}

// Use is a pressure against its limit, both in one unit; 1 is all of it.
func Use(pressure, limit float64) float64 { return pressure / limit }

var (
	brakePressureUse = use("brake_pressure_use", "exhaust brake pressure against its limit",
		"exhaust.brake.pressure", "exhaust.brake.pressure_limit", brakeBounds)
	backPressureUse = use("back_pressure_use", "exhaust back pressure against its limit",
		"exhaust.back_pressure", "exhaust.back_pressure_limit", backBounds)
)
