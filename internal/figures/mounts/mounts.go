// Package mounts holds the figures of what carries an engine with its gearbox:
// what each mount bears at rest and under torque, and how well the set keeps
// the shaking of the engine from the frame.
//
// Two engine mounts stand side by side, the gearbox mount behind them. Loads
// are masses in kg, as the makers of mounts rate them.
package mounts

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// Figures returns every figure of the discipline.
func Figures() []*figures.Figure {
	return []*figures.Figure{
		span, engineMountLoad, gearboxMountLoad, gearboxMountUse,
		rollCouple, torqueLoad, pressed, pressedUse, lifted,
		bounce, bounceSettled, firing, idleRatio, idleRatioSettled, idleTransmission, idleTransmissionSettled,
	}
}

// gravity is the standard acceleration in m/s².
const gravity = 9.80665

// Bounds of road vehicles, and nothing that is only a slip of the unit.
var (
	massBounds    = figures.Bounds{Low: 20, High: 5_000}    // kg
	ratingBounds  = figures.Bounds{Low: 5, High: 5_000}     // kg
	forward       = figures.Bounds{Low: -2, High: 3}        // m
	behind        = figures.Bounds{Low: -1, High: 6}        // m
	spreadBounds  = figures.Bounds{Low: 0.1, High: 2}       // m
	torqueBounds  = figures.Bounds{Low: 20, High: 5_000}    // N·m
	stallBounds   = figures.Bounds{Low: 1, High: 5}         // of a torque converter
	ratioBounds   = figures.Bounds{Low: 0.2, High: 30}      // of one gearbox
	rateBounds    = figures.Bounds{Low: 10_000, High: 20e6} // N/m
	settledBounds = figures.Bounds{Low: 0.0001, High: 0.05} // m
	idleBounds    = figures.Bounds{Low: 30, High: 200}      // rad/s
	cylinders     = figures.Bounds{Low: 1, High: 16}
	// apart is a distance between front and rear mounts that carries, in m.
	apart = figures.Bounds{Low: 0.2, High: 6}
)

var statics = figures.Source{
	Title: "statics: moments about the mounts of a body at rest, from memory",
	Basis: "physics",
}

var between = []figures.Input{
	{Name: "xe", Path: "frame.mounts.engine_x", Direction: figures.Falling, Valid: forward},
	{Name: "xg", Path: "frame.mounts.gearbox_x", Direction: figures.Rising, Valid: behind},
}

var span = &figures.Figure{
	ID:      "mounts.span",
	Title:   "from the engine mounts to the gearbox mount",
	Symbol:  "l",
	Kind:    quantity.Length,
	Formula: "l = xg − xe",
	Inputs:  between,
	Source:  statics,
	Compute: func(a figures.Args) float64 { return a.At("xg") - a.At("xe") },
}

// carries says that the gearbox mount stands behind the engine mounts.
var carries = []figures.Condition{{Figure: span, Valid: apart}}

// EngineMountLoad is what each of two engine mounts at xe bears, in kg, of a
// mass in kg with its centre of gravity at x; the gearbox mount is at xg.
// Positions are in m. It is negative where the mount is lifted.
func EngineMountLoad(mass, x, xe, xg float64) float64 { return mass * (xg - x) / (xg - xe) / 2 }

// GearboxMountLoad is what the gearbox mount bears, in kg; see EngineMountLoad.
func GearboxMountLoad(mass, x, xe, xg float64) float64 { return mass * (x - xe) / (xg - xe) }

const (
	engineFormula  = "Fe = m·(xg − x) / (xg − xe) / 2"
	gearboxFormula = "Fg = m·(x − xe) / (xg − xe)"
)

// resting declares what a load at rest reads. It rises the way x when the mass
// lies further back; which way the rest moves it depends on where that is.
func resting(x figures.Direction) []figures.Input {
	return []figures.Input{
		{Name: "m", Path: "frame.mounts.unit_mass", Direction: figures.Ends, Valid: massBounds},
		{Name: "x", Path: "frame.mounts.unit_x", Direction: x, Valid: behind},
		{Name: "xe", Path: "frame.mounts.engine_x", Direction: figures.Pivot, Valid: forward},
		{Name: "xg", Path: "frame.mounts.gearbox_x", Direction: figures.Pivot, Valid: behind},
	}
}

func engineAtRest(a figures.Args) float64 {
	return EngineMountLoad(a.At("m"), a.At("x"), a.At("xe"), a.At("xg"))
}

func gearboxAtRest(a figures.Args) float64 {
	return GearboxMountLoad(a.At("m"), a.At("x"), a.At("xe"), a.At("xg"))
}

var engineMountLoad = &figures.Figure{
	ID:         "mounts.engine_mount_load",
	Title:      "load on one engine mount at rest",
	Symbol:     "Fe",
	Kind:       quantity.Mass,
	Formula:    engineFormula,
	Inputs:     resting(figures.Falling),
	Conditions: carries,
	Source:     statics,
	Compute:    engineAtRest,
}

var gearboxMountLoad = &figures.Figure{
	ID:         "mounts.gearbox_mount_load",
	Title:      "load on the gearbox mount at rest",
	Symbol:     "Fg",
	Kind:       quantity.Mass,
	Formula:    gearboxFormula,
	Inputs:     resting(figures.Rising),
	Conditions: carries,
	Source:     statics,
	Compute:    gearboxAtRest,
}

var gearboxMountUse = &figures.Figure{
	ID:      "mounts.gearbox_mount_use",
	Title:   "load on the gearbox mount against its rating",
	Symbol:  "Fg/r",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: gearboxFormula + "; Fg / rating",
	Inputs: append(resting(figures.Rising),
		figures.Input{Name: "r", Path: "frame.mounts.gearbox_rating", Direction: figures.Ends, Valid: ratingBounds}),
	Conditions: carries,
	Source:     statics,
	Compute:    func(a figures.Args) float64 { return gearboxAtRest(a) / a.At("r") },
}
