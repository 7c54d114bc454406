package lifting

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// LegTension is the pull in one leg of a symmetric sling, as a mass in kg, from
// the mass in kg that the legs carry, their number and their angle from the
// horizontal in rad. No more than MostLegsCounted legs count.
func LegTension(mass, legs, angle float64) float64 {
	return mass / (min(legs, MostLegsCounted) * math.Sin(angle))
}

var slingTable = figures.Source{
	Title: "sling load angle factors, 1/sin of the angle from the horizontal",
	URL:   "https://ashleysling.com/calculating-sling-angles/",
	Basis: "handbook",
}

const legFormula = "T = (load + tackle) / (n·sin θ), θ from the horizontal, n the number of legs but no more than 2"

var legInputs = append(hangs[:2:2],
	figures.Input{Name: "n", Path: lifts + ".*.legs", Direction: figures.Falling, Valid: legBounds},
	figures.Input{Name: "θ", Path: lifts + ".*.leg_angle", Valid: angleBounds},
)

var legTension = &figures.Figure{
	ID:      "lifting.leg_tension",
	Title:   "pull in one sling leg, as a mass",
	Symbol:  "T",
	Kind:    quantity.Mass,
	Per:     lifts,
	Formula: legFormula,
	Inputs:  legInputs,
	Source:  slingTable,
	Compute: inLeg,
}

var legUse = &figures.Figure{
	ID:      "lifting.leg_use",
	Title:   "pull in one sling leg against its tag",
	Symbol:  "T/WLL",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Per:     lifts,
	Formula: legFormula + "; T / working load limit of one leg",
	Inputs: append(legInputs[:4:4],
		figures.Input{Name: "WLL", Path: lifts + ".*.leg_limit", Direction: figures.Falling, Valid: massBounds}),
	Source:  slingTable,
	Compute: func(a figures.Args) float64 { return inLeg(a) / a.At("WLL") },
}

func inLeg(a figures.Args) float64 { return LegTension(onHook(a), a.At("n"), a.At("θ")) }
