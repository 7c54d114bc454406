// Package torque holds the figures of what the engine's torque becomes on its
// way to the road, and of what each part on that way may take.
//
// What gearbox, transfer case and axles must take is reckoned without losses:
// that is the safe side for teeth. Shafts follow the formulas that makers of
// joints size them by, pull and gradient have losses in them.
package torque

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// Figures returns every figure of the discipline.
func Figures() []*figures.Figure {
	return []*figures.Figure{
		gearboxInputUse, gearboxSpeedUse, gearboxOutput, transferInputUse, transferOutput,
		axleFrontLow, axleRearLow, axleFrontSlip, axleRearSlip, axleFrontUse, axleRearUse,
		shaftLow, shaftSlip, shaftUse, shaftUseRoad, tubeShear,
		clutchCapacity, clutchUse,
		tractiveLow, tractiveTop, pullLow, pullTop, gradeabilityLow, gradeabilityTop,
		powerPerMass, powerRatio, torqueRatio,
	}
}

const (
	gravity = 9.80665 // m/s²
	// NetOfGross is what an engine gives as installed of what it gives bare, by
	// the makers of shafts.
	NetOfGross = 0.95
)

// Bounds of road vehicles, and nothing that is only a slip of the unit.
var (
	torqueBounds = figures.Bounds{Low: 20, High: 5000}    // N·m, of an engine
	ratingBounds = figures.Bounds{Low: 20, High: 200_000} // N·m
	gearBounds   = figures.Bounds{Low: 0.3, High: 20}     // of a gearbox or transfer case
	axleBounds   = figures.Bounds{Low: 1, High: 20}       // of an axle
	stallBounds  = figures.Bounds{Low: 1, High: 5}        // of a torque converter
	massBounds   = figures.Bounds{Low: 100, High: 50_000} // kg
	tyreBounds   = figures.Bounds{Low: 0.3, High: 2}      // m
	powerBounds  = figures.Bounds{Low: 1_000, High: 2e6}  // W
	absent, one  = 0.0, 1.0                               // stand in for what is none
	methods      = map[string]float64{"net": 1, "gross": NetOfGross}
)

// engineInputs give the net torque of the engine.
func engineInputs() []figures.Input {
	return []figures.Input{
		{Name: "Te", Path: "engine.peak_torque", Direction: figures.Rising, Valid: torqueBounds},
		{Name: "kn", Path: "engine.rating_method", Choices: methods},
	}
}

func engineOf(a figures.Args) float64 { return a.At("Te") * a.At("kn") }

const engineFormula = "T = kn·Te, kn 1 where the peak torque Te is net and 0.95 where it is gross"

// lowestInputs give the most torque that leaves the gearbox.
func lowestInputs() []figures.Input {
	return append(engineInputs(),
		figures.Input{Name: "SR", Path: "transmission.stall_ratio", Direction: figures.Rising, Valid: stallBounds, WhenNone: &one},
		figures.Input{Name: "i1", Path: "transmission.first", Direction: figures.Rising, Valid: gearBounds},
	)
}

func lowestOf(a figures.Args) float64 { return engineOf(a) * a.At("SR") * a.At("i1") }

const lowestFormula = "Tg = T·SR·i1, SR the stall ratio of the converter, 1 behind a clutch, i1 first gear; " + engineFormula

// low is the transfer case in low range; absent where there is none.
func low(none *float64) figures.Input {
	return figures.Input{Name: "il", Path: "transfer_case.low", Direction: figures.Rising, Valid: gearBounds, WhenNone: none}
}

func rating(path string) figures.Input {
	return figures.Input{Name: "Tr", Path: path, Direction: figures.Falling, Valid: ratingBounds}
}

var chain = figures.Source{
	Title: "torque through gears in series, without losses",
	URL:   "https://en.webtec.com/education/axel-torque/",
	Basis: "physics",
}

var plate = figures.Source{Title: "the rating of the part's maker; gears in series without losses", Basis: "manufacturer"}

var gearboxInputUse = &figures.Figure{
	ID:      "torque.gearbox_input_use",
	Title:   "engine torque against what the gearbox takes",
	Symbol:  "T/Tr",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "T/Tr, Tr the input torque rating of the gearbox; " + engineFormula,
	Inputs:  append(engineInputs(), rating("transmission.input_torque_rating")),
	Source:  plate,
	Compute: func(a figures.Args) float64 { return engineOf(a) / a.At("Tr") },
}

var gearboxSpeedUse = &figures.Figure{
	ID:      "torque.gearbox_speed_use",
	Title:   "governed speed against what the gearbox takes",
	Symbol:  "n/nr",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "n/nr, the governed speed over the input speed rating of the gearbox",
	Inputs: []figures.Input{
		{Name: "n", Path: "engine.governed_speed", Direction: figures.Rising, Valid: figures.Bounds{Low: 20, High: 1050}},             // rad/s
		{Name: "nr", Path: "transmission.input_speed_rating", Direction: figures.Falling, Valid: figures.Bounds{Low: 20, High: 1050}}, // rad/s
	},
	Source:  plate,
	Compute: func(a figures.Args) float64 { return a.At("n") / a.At("nr") },
}

var gearboxOutput = &figures.Figure{
	ID:      "torque.gearbox_output",
	Title:   "torque at the gearbox output in first gear",
	Symbol:  "Tg",
	Kind:    quantity.Torque,
	Formula: lowestFormula,
	Inputs:  lowestInputs(),
	Source:  chain,
	Compute: lowestOf,
}

var transferInputUse = &figures.Figure{
	ID:      "torque.transfer_input_use",
	Title:   "torque into the transfer case against what it takes",
	Symbol:  "Tg/Tr",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "Tg/Tr, Tr the input torque rating of the transfer case; " + lowestFormula,
	Inputs:  append(lowestInputs(), rating("transfer_case.input_torque_rating")),
	Source:  plate,
	Compute: func(a figures.Args) float64 { return lowestOf(a) / a.At("Tr") },
}

var transferOutput = &figures.Figure{
	ID:      "torque.transfer_output",
	Title:   "torque at the transfer case outputs together, in first low",
	Symbol:  "Tt",
	Kind:    quantity.Torque,
	Formula: "Tt = Tg·il, il transfer case low; " + lowestFormula,
	Inputs:  append(lowestInputs(), low(nil)),
	Source:  chain,
	Compute: func(a figures.Args) float64 { return lowestOf(a) * a.At("il") },
}
