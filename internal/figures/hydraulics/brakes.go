package hydraulics

import (
	"trialfit/internal/figures"
	"trialfit/internal/figures/fluid"
	"trialfit/internal/quantity"
)

var (
	pistonBounds = figures.Bounds{Low: 0.01, High: 0.15}  // m
	pistonCounts = figures.Bounds{Low: 1, High: 40}       // in all
	pistonTravel = figures.Bounds{Low: 1e-5, High: 0.02}  // m
	strokeBounds = figures.Bounds{Low: 0.005, High: 0.08} // m
)

const cylinders = "hydraulics.brakes.cylinders.*."

var cylinderInputs = []figures.Input{
	{Name: "d", Path: cylinders + "bore", Direction: figures.Rising, Valid: pistonBounds, NonEmpty: true},
	{Name: "N", Path: cylinders + "count", Direction: figures.Rising, Valid: pistonCounts},
	{Name: "t", Path: cylinders + "travel", Direction: figures.Rising, Valid: pistonTravel},
}

const volumeFormula = "V = Σ N·π/4·d²·t over the wheel cylinders, N pistons, d bore, t travel of each"

var displacedFluid = figures.Source{
	Title: "the master cylinder displaces what all pistons take",
	URL:   "https://calcady.com/trade/automotive/brake-fluid-displacement-stroke",
	Basis: "physics",
}

// PistonVolume is the fluid in m³ that so many pistons of a bore in m take for a
// travel in m.
func PistonVolume(bore, count, travel float64) float64 { return count * fluid.PipeArea(bore) * travel }

var brakeVolume = &figures.Figure{
	ID:      "hydraulics.brake_volume",
	Title:   "fluid the wheel cylinders take in one stop",
	Symbol:  "V",
	Kind:    quantity.Volume,
	Unit:    "cm³",
	Formula: volumeFormula,
	Inputs:  cylinderInputs,
	Source:  displacedFluid,
	Compute: taken,
}

var brakeVolumeUse = &figures.Figure{
	ID:      "hydraulics.brake_volume_use",
	Title:   "fluid the wheel cylinders take against what the master displaces",
	Symbol:  "V/Vm",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "V/(π/4·dm²·s), dm master bore, s master stroke, " + volumeFormula,
	Inputs: append(cylinderInputs[:3:3],
		figures.Input{Name: "dm", Path: "hydraulics.brakes.master_bore", Direction: figures.Falling, Valid: boreBounds},
		figures.Input{Name: "s", Path: "hydraulics.brakes.master_stroke", Direction: figures.Falling, Valid: strokeBounds}),
	Source:  displacedFluid,
	Compute: func(a figures.Args) float64 { return taken(a) / PistonVolume(a.At("dm"), 1, a.At("s")) },
}

func taken(a figures.Args) float64 {
	counts, travels := a.Column("N"), a.Column("t")
	sum := 0.0
	for i, bore := range a.Column("d") {
		sum += PistonVolume(bore, counts[i], travels[i])
	}
	return sum
}
