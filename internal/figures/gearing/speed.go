package gearing

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// RoadSpeed is the road speed in m/s at an engine speed in rad/s, from the
// overall ratio and the tyre's diameter in m.
func RoadSpeed(engine, ratio, diameter float64) float64 { return engine / ratio * diameter / 2 }

// EngineSpeed is the engine speed in rad/s at a road speed in m/s, from the
// overall ratio and the tyre's diameter in m.
func EngineSpeed(road, ratio, diameter float64) float64 { return road / (diameter / 2) * ratio }

const topRatio = "i = top gear × transfer case high × rear axle ratio"

var topSpeed = &figures.Figure{
	ID:      "gearing.top_speed",
	Title:   "road speed at governed speed in top gear",
	Symbol:  "v",
	Kind:    quantity.Speed,
	Unit:    "km/h",
	Formula: "v = governed speed × D / (2·i), " + topRatio + ", D the tyre's diameter",
	Inputs: append(topGear(figures.Falling, figures.Rising),
		figures.Input{Name: "n", Path: "engine.governed_speed", Direction: figures.Rising, Valid: speedBounds}),
	Source: rolling,
	Compute: func(a figures.Args) float64 {
		return RoadSpeed(a.At("n"), overall(a), a.At("D"))
	},
}

var cruiseSpeed = &figures.Figure{
	ID:      "gearing.cruise_speed",
	Title:   "engine speed at 100 km/h in top gear",
	Symbol:  "n100",
	Kind:    quantity.RotationalSpeed,
	Unit:    "rpm",
	Formula: "n = 2·v·i/D, v = 100 km/h, " + topRatio + ", D the tyre's diameter",
	Inputs:  topGear(figures.Rising, figures.Falling),
	Source:  rolling,
	Compute: func(a figures.Args) float64 { return EngineSpeed(Cruise, overall(a), a.At("D")) },
}

// SpeedometerError is how much faster the vehicle goes than its speedometer
// says, as a share, from the diameters of the tyres now and of those it was
// made for, in the same unit. Negative where it goes slower.
func SpeedometerError(diameter, before float64) float64 { return diameter/before - 1 }

var speedometerError = &figures.Figure{
	ID:      "gearing.speedometer_error",
	Title:   "true speed above the speed shown",
	Symbol:  "Δv/v",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "D / D before − 1; holds while the axle ratio and the speedometer's gear are those it was made for",
	Inputs: []figures.Input{
		tyre(figures.Rising),
		{Name: "D before", Path: "chassis.tyres.diameter_before", Direction: figures.Falling, Valid: tyreBounds},
	},
	Source:  figures.Source{Title: "geometry: a larger tyre rolls further in one turn", Basis: "physics"},
	Compute: func(a figures.Args) float64 { return SpeedometerError(a.At("D"), a.At("D before")) },
}
