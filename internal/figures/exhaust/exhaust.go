// Package exhaust holds the figures of the pipe behind the turbine or the
// manifold: what flows through it, what pressure it takes on the way, how much
// it grows, and where the exhaust brake sits in it. What the engine's maker
// limits is held against readings in package air.
package exhaust

import (
	"trialfit/internal/figures"
	"trialfit/internal/figures/air"
	"trialfit/internal/figures/fluid"
	"trialfit/internal/quantity"
)

// Figures returns every figure of the discipline.
func Figures() []*figures.Figure {
	return []*figures.Figure{
		massFlow, volumeFlow, segmentSpeed, segmentDrop, pipeDrop, pipeDropUse,
		growth, growthUse, brakeDistance, brakeArea,
	}
}

// Bounds of road vehicles, and nothing that is only a slip of the unit.
var (
	gasBounds    = figures.Bounds{Low: 323.15, High: 1273.15} // K: 50 to 1000 °C
	boreBounds   = figures.Bounds{Low: 0.02, High: 0.3}       // m
	lengthBounds = figures.Bounds{Low: 0.01, High: 20}        // m
	bendBounds   = figures.Bounds{Low: 0, High: 30}           // of them
	dropBounds   = figures.Bounds{Low: 0, High: 100_000}      // Pa
	limitBounds  = figures.Bounds{Low: 10, High: 100_000}     // Pa
	travelBounds = figures.Bounds{Low: 0.5e-3, High: 0.3}     // m
)

func in(name, path string, d figures.Direction, valid figures.Bounds) figures.Input {
	return figures.Input{Name: name, Path: path, Direction: d, Valid: valid}
}

func temperature() figures.Input {
	return in("T", "exhaust.temperature", figures.Rising, gasBounds)
}

// gas are the inputs of the mass of exhaust gas.
func gas() []figures.Input { return append(air.RatedInputs(), air.FuelInputs(figures.Rising)...) }

// hotGas are the inputs of its volume.
func hotGas() []figures.Input { return append(gas(), temperature()) }

func mass(a figures.Args) float64 { return air.RatedFlow(a) + air.FuelFlow(a.At("P"), a.At("b")) }

// Volume is the flow in m³/s of exhaust gas at the pressure of the sea level,
// from its mass flow in kg/s and its temperature in K; it is taken for air.
func Volume(mass, temperature float64) float64 { return mass / Density(temperature) }

// Density is that of exhaust gas in kg/m³ at sea level and a temperature in K.
func Density(temperature float64) float64 { return fluid.AirDensity(fluid.Atmosphere, temperature) }

func volume(a figures.Args) float64 { return Volume(mass(a), a.At("T")) }

const (
	massFormula   = "m = ma + specific consumption at full load × rated power, " + air.FlowFormula
	volumeFormula = massFormula + "; V = m·287.05 J/(kg·K)·T/101.325 kPa"
)

var conservation = figures.Source{
	Title: "air and fuel in are gas out; the gas taken for air",
	URL:   "https://utilitiesbunker.com/tools/exhaust-flow-rate",
	Basis: "physics",
}

var massFlow = &figures.Figure{
	ID:      "exhaust.mass_flow",
	Title:   "exhaust gas at rated power, by mass",
	Symbol:  "m",
	Kind:    quantity.MassFlow,
	Unit:    "kg/h",
	Formula: massFormula,
	Inputs:  gas(),
	Source:  conservation,
	Compute: mass,
}

var volumeFlow = &figures.Figure{
	ID:      "exhaust.volume_flow",
	Title:   "exhaust gas at rated power, hot, by volume",
	Symbol:  "V",
	Kind:    quantity.VolumeFlow,
	Unit:    "m³/min",
	Formula: volumeFormula,
	Inputs:  hotGas(),
	Source:  conservation,
	Compute: volume,
}

var brakeDistance = &figures.Figure{
	ID:      "exhaust.brake_distance_bores",
	Title:   "exhaust brake behind the turbine, in bores of the downpipe",
	Symbol:  "L/D",
	Kind:    quantity.Ratio,
	Formula: "pipe length from turbine outlet to brake / bore of the downpipe",
	Inputs: []figures.Input{
		in("L", "exhaust.brake.distance", figures.Rising, lengthBounds),
		in("D", "exhaust.downpipe_bore", figures.Falling, boreBounds),
	},
	Source:  figures.Source{Title: "the brake sits as near the turbine as it can, so that heat keeps it clean", Basis: "common-practice"},
	Compute: func(a figures.Args) float64 { return a.At("L") / a.At("D") },
}

// AreaRatio is the area of a bore over that of another, both in one unit.
func AreaRatio(bore, other float64) float64 { return bore * bore / (other * other) }

var brakeArea = &figures.Figure{
	ID:      "exhaust.brake_area_ratio",
	Title:   "opening of the exhaust brake against the downpipe",
	Symbol:  "Ab/A",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "(bore of the brake / bore of the downpipe)²",
	Inputs: []figures.Input{
		in("Db", "exhaust.brake.bore", figures.Rising, boreBounds),
		in("D", "exhaust.downpipe_bore", figures.Falling, boreBounds),
	},
	Source:  figures.Source{Title: "a tight 3 in downpipe steps up to 4 in at the exhaust brake", Basis: "common-practice"},
	Compute: func(a figures.Args) float64 { return AreaRatio(a.At("Db"), a.At("D")) },
}
