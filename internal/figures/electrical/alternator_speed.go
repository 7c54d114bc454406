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

// driven is an engine speed and the two pulleys that pass it on.
func driven(speed string, valid figures.Bounds) []figures.Input {
	return []figures.Input{
		{Name: "n", Path: speed, Direction: figures.Rising, Valid: valid},
		{Name: "D", Path: "electrical.alternator.crank_pulley", Direction: figures.Rising, Valid: pulleyBounds},
		{Name: "d", Path: "electrical.alternator.pulley", Direction: figures.Falling, Valid: pulleyBounds},
	}
}

var (
	atIdle     = driven("engine.idle_speed", idleBounds)
	atGoverned = driven("engine.governed_speed", governedBounds)
)

var alternatorSpeedIdle = &figures.Figure{
	ID:      "electrical.alternator_speed_idle",
	Title:   "alternator speed at idle",
	Symbol:  "na",
	Kind:    quantity.RotationalSpeed,
	Formula: "na = idle speed × diameter of the crank pulley / diameter of the alternator pulley",
	Inputs:  atIdle,
	Source:  pulleyRatio,
	Compute: alternatorSpeed,
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
	Inputs: with(atIdle,
		figures.Input{Name: "nc", Path: "electrical.alternator.cut_in_speed", Direction: figures.Falling, Valid: cutInBounds}),
	Source:  pulleyRatio,
	Compute: func(a figures.Args) float64 { return CutInMargin(alternatorSpeed(a), a.At("nc")) },
}

func alternatorSpeed(a figures.Args) float64 {
	return AlternatorSpeed(a.At("n"), a.At("D"), a.At("d"))
}

var alternatorSpeedGoverned = &figures.Figure{
	ID:      "electrical.alternator_speed_governed",
	Title:   "alternator speed at governed engine speed",
	Symbol:  "na",
	Kind:    quantity.RotationalSpeed,
	Formula: "na = governed speed × diameter of the crank pulley / diameter of the alternator pulley",
	Inputs:  atGoverned,
	Source:  pulleyRatio,
	Compute: alternatorSpeed,
}

// SpeedUse is an alternator's speed against the highest it may turn, both in
// the same unit; 1 is all of it.
func SpeedUse(speed, limit float64) float64 { return speed / limit }

var alternatorSpeedUse = &figures.Figure{
	ID:      "electrical.alternator_speed_use",
	Title:   "alternator speed at governed engine speed against its limit",
	Symbol:  "na/na max",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "governed speed × diameter of the crank pulley / diameter of the alternator pulley / speed limit",
	Inputs: with(atGoverned,
		figures.Input{Name: "na max", Path: "electrical.alternator.speed_limit", Direction: figures.Falling, Valid: rotorBounds}),
	Source:  pulleyRatio,
	Compute: func(a figures.Args) float64 { return SpeedUse(alternatorSpeed(a), a.At("na max")) },
}
