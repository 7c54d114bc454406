// Package lifting holds the figures of a lift: what hangs on the crane's hook,
// what each leg of the sling carries, how the load hangs and what it clears.
// Loads are masses in kg, as tags and plates show them.
//
// The load hangs still. What a start or a stop adds is a matter of the reserve
// that a rule asks for.
package lifting

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// Figures returns every figure of the discipline.
func Figures() []*figures.Figure {
	return []*figures.Figure{
		hookLoad, hookLoadOfParts, partsShare,
		craneUse, limitEstimate, limitEstimateUse, tippingUse,
		legTension, legUse,
		firstLeg, secondLeg, unevenUse, firstLegByTape, secondLegByTape, unevenUseByTape, firstEnd,
		tilt, levellerUse, clearance,
	}
}

const lifts = "lifting.lifts"

// MostLegsCounted is the number of sling legs that share a rigid load for
// certain: of four legs of slightly unlike length two carry it all (common
// practice).
const MostLegsCounted = 2

// Bounds of workshop lifts, and nothing that is only a slip of the unit.
var (
	massBounds   = figures.Bounds{Low: 1, High: 20_000}                           // kg
	tackleBounds = figures.Bounds{Low: 0, High: 1_000}                            // kg
	legBounds    = figures.Bounds{Low: 1, High: 8}                                // legs
	angleBounds  = figures.Bounds{Low: 5 * degree, High: (90 + upright) * degree} // rad
)

const (
	degree = math.Pi / 180
	// upright is how far past plumb a leg may seem to lean: the spread of an
	// angle given as 90°.
	upright = 15
)

var hangs = []figures.Input{
	{Name: "m", Path: lifts + ".*.load", Direction: figures.Rising, Valid: massBounds},
	{Name: "mt", Path: lifts + ".*.tackle", Direction: figures.Rising, Valid: tackleBounds},
}

var statics = figures.Source{
	Title: "statics of a load at rest",
	Basis: "physics",
}

// HookLoad is what hangs on the hook, in kg: the load and the tackle in kg.
func HookLoad(load, tackle float64) float64 { return load + tackle }

var hookLoad = &figures.Figure{
	ID:      "lifting.hook_load",
	Title:   "mass on the hook",
	Symbol:  "W",
	Kind:    quantity.Mass,
	Per:     lifts,
	Formula: "W = load + tackle",
	Inputs:  hangs,
	Source:  statics,
	Compute: onHook,
}

var craneUse = &figures.Figure{
	ID:      "lifting.crane_use",
	Title:   "mass on the hook against the crane's plate",
	Symbol:  "W/C",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Per:     lifts,
	Formula: "(load + tackle) / plate rating at the boom hole used",
	Inputs: append(hangs[:2:2],
		figures.Input{Name: "C", Path: lifts + ".*.crane_limit", Direction: figures.Falling, Valid: massBounds}),
	Source:  statics,
	Compute: func(a figures.Args) float64 { return onHook(a) / a.At("C") },
}

func onHook(a figures.Args) float64 { return HookLoad(a.At("m"), a.At("mt")) }
