// Package cooling holds the figures of the coolant circuit.
package cooling

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// Figures returns every figure of the discipline.
func Figures() []*figures.Figure {
	return []*figures.Figure{heaterHoseStretch}
}

// hoseBounds are those of heater hose in m, from a bleed line to a lorry's.
var hoseBounds = figures.Bounds{Low: 0.004, High: 0.06}

// HoseStretch is the outside diameter of a spigot over the inside diameter of
// the hose on it, in one unit; below 1 the hose is loose.
func HoseStretch(spigot, hose float64) float64 { return spigot / hose }

var heaterHoseStretch = &figures.Figure{
	ID:      "cooling.heater_hose_stretch",
	Title:   "spigot of the heater against its hose",
	Symbol:  "D/d",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "outside diameter of the spigot / inside diameter of the hose",
	Inputs: []figures.Input{
		{Name: "D", Path: "cooling.heater_port", Direction: figures.Rising, Valid: hoseBounds},
		{Name: "d", Path: "cooling.heater_hose", Direction: figures.Falling, Valid: hoseBounds},
	},
	Source:  figures.Source{Title: "hose and spigot of one size, heater hose 5/8 in", Basis: "common-practice"},
	Compute: func(a figures.Args) float64 { return HoseStretch(a.At("D"), a.At("d")) },
}
