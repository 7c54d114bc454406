package electrical

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// AlternatorSpeed is the speed of an alternator at an engine speed, both in the
// same unit, by the pitch diameters of the two pulleys in m. Belt slip is left
// out.
func AlternatorSpeed(engine, crankPulley, pulley float64) float64 {
	return engine * crankPulley / pulley
}

var pulleyRatio = figures.Source{
	Title: "belt drive without slip: speeds are inverse to the pitch diameters",
	Basis: "physics",
}

var alternatorInputs = []figures.Input{
	{Name: "n", Path: "engine.idle_speed", Direction: figures.Rising, Valid: idleBounds},
	{Name: "D", Path: "electrical.alternator.crank_pulley", Direction: figures.Rising, Valid: pulleyBounds},
	{Name: "d", Path: "electrical.alternator.pulley", Direction: figures.Falling, Valid: pulleyBounds},
}

var alternatorSpeedIdle = &figures.Figure{
	ID:      "electrical.alternator_speed_idle",
	Title:   "alternator speed at idle",
	Symbol:  "na",
	Kind:    quantity.RotationalSpeed,
	Formula: "na = idle speed × diameter of the crank pulley / diameter of the alternator pulley",
	Inputs:  alternatorInputs,
	Source:  pulleyRatio,
	Compute: alternatorAtIdle,
}

// CutInMargin is an alternator's speed against that at which it begins to
// charge, both in the same unit; 1 is just enough.
func CutInMargin(speed, cutIn float64) float64 { return speed / cutIn }

var alternatorCutInMargin = &figures.Figure{
	ID:      "electrical.alternator_cut_in_margin",
	Title:   "alternator speed at idle against its cut-in speed",
	Symbol:  "na/nc",
	Kind:    quantity.Ratio,
	Formula: "idle speed × diameter of the crank pulley / diameter of the alternator pulley / cut-in speed",
	Inputs: with(alternatorInputs,
		figures.Input{Name: "nc", Path: "electrical.alternator.cut_in_speed", Direction: figures.Falling, Valid: cutInBounds}),
	Source:  pulleyRatio,
	Compute: func(a figures.Args) float64 { return CutInMargin(alternatorAtIdle(a), a.At("nc")) },
}

func alternatorAtIdle(a figures.Args) float64 {
	return AlternatorSpeed(a.At("n"), a.At("D"), a.At("d"))
}
