package lifting

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// LimitByMoment is the most in kg that a boom could carry at a reach, by the
// moment about its pivot, from its plate rating in kg at a nearer reach; reaches
// in one unit. It is an upper bound: what the plate says for the hole governs,
// and beyond the last marked hole nothing is lifted.
func LimitByMoment(limit, near, reach float64) float64 { return limit * near / reach }

var momentRating = figures.Source{
	Title: "a crane maker on moment ratings: load times reach",
	URL:   "http://www.liftmoore.com/faq-whichcrane.htm",
	Basis: "manufacturer",
}

var reachBounds = figures.Bounds{Low: 0.2, High: 5} // m

var limitInputs = []figures.Input{
	{Name: "C1", Path: lifts + ".*.near_limit", Direction: figures.Rising, Valid: massBounds},
	{Name: "L1", Path: lifts + ".*.near_reach", Direction: figures.Rising, Valid: reachBounds},
	{Name: "L2", Path: lifts + ".*.reach", Direction: figures.Falling, Valid: reachBounds},
}

const limitFormula = "C2 = C1·L1/L2, no more than C1; an upper bound by the moment about the boom pivot: the plate at the hole used governs"

func limit(a figures.Args) float64 {
	return min(a.At("C1"), LimitByMoment(a.At("C1"), a.At("L1"), a.At("L2")))
}

var limitEstimate = &figures.Figure{
	ID:      "lifting.crane_limit_estimate",
	Title:   "upper bound of the crane's limit at the reach used, by a nearer hole; the plate governs",
	Symbol:  "C2",
	Kind:    quantity.Mass,
	Per:     lifts,
	Formula: limitFormula,
	Inputs:  limitInputs,
	Source:  momentRating,
	Compute: limit,
}

var limitEstimateUse = &figures.Figure{
	ID:      "lifting.crane_estimate_use",
	Title:   "mass on the hook against that upper bound; the plate governs",
	Symbol:  "W/C2",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Per:     lifts,
	Formula: "(load + tackle)/C2; " + limitFormula,
	Inputs: append(hangs[:2:2],
		figures.Input{Name: "C1", Path: limitInputs[0].Path, Direction: figures.Falling, Valid: massBounds},
		figures.Input{Name: "L1", Path: limitInputs[1].Path, Direction: figures.Falling, Valid: reachBounds},
		figures.Input{Name: "L2", Path: limitInputs[2].Path, Direction: figures.Rising, Valid: reachBounds}),
	Source:  momentRating,
	Compute: func(a figures.Args) float64 { return onHook(a) / limit(a) },
}

// TippingUse is the moment in which a load in kg that hangs overhang ahead of a
// crane's front wheels tips it, against that of the crane in kg whose own
// centre of gravity lies arm behind them; both in one unit. 1 tips.
func TippingUse(load, overhang, crane, arm float64) float64 { return load * overhang / (crane * arm) }

var tippingUse = &figures.Figure{
	ID:      "lifting.tipping_use",
	Title:   "tipping moment against what holds the crane down",
	Symbol:  "Mt/Mc",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Per:     lifts,
	Formula: "(load + tackle)·overhang / (mass of the crane·arm), about the front wheels of the crane at rest",
	// Behind the front wheels the load helps: its sign turns what the others do.
	Inputs: []figures.Input{
		{Name: "m", Path: hangs[0].Path, Direction: figures.Ends, Valid: massBounds},
		{Name: "mt", Path: hangs[1].Path, Direction: figures.Ends, Valid: tackleBounds},
		{Name: "o", Path: lifts + ".*.overhang", Direction: figures.Rising, Valid: figures.Bounds{Low: -3, High: 3}},
		{Name: "mc", Path: lifts + ".*.crane_mass", Direction: figures.Ends, Valid: figures.Bounds{Low: 20, High: 5000}},
		{Name: "lc", Path: lifts + ".*.crane_arm", Direction: figures.Ends, Valid: figures.Bounds{Low: 0.05, High: 3}},
	},
	Source: statics,
	Compute: func(a figures.Args) float64 {
		return TippingUse(onHook(a), a.At("o"), a.At("mc"), a.At("lc"))
	},
}
