package gearing

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// AxleMismatch is how far the ratios of two driven axles part, as a share of
// that of the rear one.
func AxleMismatch(front, rear float64) float64 { return math.Abs(front/rear - 1) }

var axleMismatch = &figures.Figure{
	ID:      "gearing.axle_mismatch",
	Title:   "difference between the ratios of the front and the rear axle",
	Symbol:  "Δi",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "|if/ia − 1|, if the front and ia the rear axle ratio; all four tyres alike",
	Inputs: []figures.Input{
		{Name: "if", Path: "axles.front.ratio", Valid: axleBounds},
		axleRatio(figures.Either),
	},
	Source:  figures.Source{Title: "gears in series: shafts locked together want one ratio", Basis: "physics"},
	Compute: func(a figures.Args) float64 { return AxleMismatch(a.At("if"), a.At("ia")) },
}
