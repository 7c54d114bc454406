package mass

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// EngineChange is what the vehicle gains by the engine alone, in kg; negative
// when the one that goes in is lighter.
func EngineChange(in, out float64) float64 { return in - out }

var engineChange = &figures.Figure{
	ID:      "mass.engine_change",
	Title:   "change of mass by the engine",
	Symbol:  "Δm",
	Kind:    quantity.Mass,
	Formula: "Δm = mass of the engine − mass of the outgoing engine",
	Inputs: []figures.Input{
		{Name: "in", Path: "engine.mass", Direction: figures.Rising, Valid: engineBounds},
		{Name: "out", Path: "outgoing_engine.mass", Direction: figures.Falling, Valid: engineBounds},
	},
	Source: statics,
	Compute: func(a figures.Args) float64 {
		return EngineChange(a.At("in"), a.At("out"))
	},
}
