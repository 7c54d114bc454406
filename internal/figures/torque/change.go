package torque

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// PowerPerMass is a power in W over a mass in kg.
func PowerPerMass(power, mass float64) float64 { return power / mass }

func power(name, path string, d figures.Direction) figures.Input {
	return figures.Input{Name: name, Path: path, Direction: d, Valid: powerBounds}
}

var powerPerMass = &figures.Figure{
	ID:      "torque.power_per_mass",
	Title:   "rated power for the gross mass",
	Symbol:  "P/m",
	Kind:    quantity.PowerPerMass,
	Unit:    "kW/t",
	Formula: "P/m, the rated power over the gross rating",
	Inputs:  []figures.Input{power("P", "engine.rated_power", figures.Rising), gross},
	Source:  figures.Source{Title: "definition", URL: "http://image.absoluteastronomy.com/topics/Power-to-weight_ratio", Basis: "physics"},
	Compute: func(a figures.Args) float64 { return PowerPerMass(a.At("P"), a.At("m")) },
}

var change = figures.Source{
	Title: "the new engine against the outgoing one; 120 % brings a brake review in modification codes (from memory)",
	Basis: "memory",
}

var powerRatio = &figures.Figure{
	ID:      "torque.power_ratio",
	Title:   "rated power against that of the outgoing engine",
	Symbol:  "P/P0",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "P/P0, the rated power over that of the outgoing engine",
	Inputs: []figures.Input{
		power("P", "engine.rated_power", figures.Rising),
		power("P0", "outgoing_engine.rated_power", figures.Falling),
	},
	Source:  change,
	Compute: func(a figures.Args) float64 { return a.At("P") / a.At("P0") },
}

var torqueRatio = &figures.Figure{
	ID:      "torque.torque_ratio",
	Title:   "peak torque against that of the outgoing engine",
	Symbol:  "T/T0",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "T/T0, the peak torque over that of the outgoing engine, both by one method",
	Inputs: []figures.Input{
		{Name: "T", Path: "engine.peak_torque", Direction: figures.Rising, Valid: torqueBounds},
		{Name: "T0", Path: "outgoing_engine.peak_torque", Direction: figures.Falling, Valid: torqueBounds},
	},
	Source:  change,
	Compute: func(a figures.Args) float64 { return a.At("T") / a.At("T0") },
}
