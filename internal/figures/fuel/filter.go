package fuel

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

const micron = 1e-6 // m

// coarsest is the coarsest rating in m of the last filter that an injection
// lives with.
var coarsest = map[string]float64{
	"mechanical-inline": 10 * micron,
	"mechanical-rotary": 10 * micron,
	"unit-injector":     5 * micron,
	"common-rail":       4 * micron,
	"port":              20 * micron,
	"carburettor":       80 * micron,
}

// FilterUse is the rating of a filter against the coarsest that the injection
// lives with, both in one unit; above 1 it is too coarse.
func FilterUse(rating, coarsest float64) float64 { return rating / coarsest }

var filterUse = &figures.Figure{
	ID:     "fuel.filter_use",
	Title:  "rating of the last filter against what the injection needs",
	Symbol: "x/x max",
	Kind:   quantity.Ratio,
	Unit:   "%",
	Formula: "rating of the last filter / coarsest rating for the injection: 10 µm for a mechanical pump, 5 µm for unit injectors, " +
		"4 µm for common rail, 20 µm for port injection, 80 µm for a carburettor",
	Inputs: []figures.Input{
		{Name: "x", Path: "fuel.filter_rating", Direction: figures.Rising, Valid: ratingBounds},
		{Name: "x max", Path: "engine.injection", Choices: coarsest},
	},
	Source: figures.Source{
		Title: "usual ratings of the last filter by kind of injection, from memory; the maker's own rating counts",
		Basis: "memory",
	},
	Compute: func(a figures.Args) float64 { return FilterUse(a.At("x"), a.At("x max")) },
}
