package gearing

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// TyreAgreement is the diameter of a tyre as measured over the one that its size
// code names, in one unit.
func TyreAgreement(measured, named float64) float64 { return measured / named }

var tyreAgreement = &figures.Figure{
	ID:      "gearing.tyre_agreement",
	Title:   "tyre's diameter against its size code",
	Symbol:  "D/Dc",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "D / Dc, Dc = rim + 2 × width × ratio of height to width, or the first number of an inch size",
	Inputs: []figures.Input{
		tyre(figures.Rising),
		{Name: "Dc", Path: "chassis.tyres.rear_size.diameter", Direction: figures.Falling, Valid: tyreBounds},
	},
	Source: figures.Source{
		Title: "what the numbers of a size code stand for",
		URL:   "https://tiresize.com/tire-size-meaning",
		Basis: "handbook",
	},
	Compute: func(a figures.Args) float64 { return TyreAgreement(a.At("D"), a.At("Dc")) },
}
