package electrical

import (
	"strconv"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// fuseRatings are the ratings in A that blade, bolt-down and strip fuses are
// sold in: common practice, from memory.
var fuseRatings = func() *figures.Series {
	s := &figures.Series{Title: "vehicle fuse"}
	for _, rating := range []float64{5, 7.5, 10, 15, 20, 25, 30, 35, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200, 250, 300} {
		s.Sizes = append(s.Sizes, figures.Size{Label: strconv.FormatFloat(rating, 'f', -1, 64) + " A", SI: rating})
	}
	return s
}()

// fuse is the rating of a circuit's fuse. Its sizes are offered only where a
// larger one helps.
func fuse(sizes *figures.Series) figures.Input {
	return figures.Input{Name: "In", Path: circuits + ".*.fuse", Direction: figures.Rising, Valid: fuseBounds, Series: sizes}
}

// FuseFactor is the rating of a fuse in A against the steady current in A.
func FuseFactor(rating, current float64) float64 { return rating / current }

var fuseFactor = &figures.Figure{
	ID:      "electrical.fuse_factor",
	Title:   "fuse against the steady current",
	Symbol:  "In/I",
	Kind:    quantity.Ratio,
	Per:     circuits,
	Formula: "rating of the fuse / steady current of the circuit",
	Inputs:  []figures.Input{fuse(fuseRatings), circuitCurrent(figures.Falling)},
	Source: figures.Source{
		Title: "fuse at 1.25 to 1.35 times the continuous load, in standard ratings, from memory",
		Basis: "common-practice",
	},
	Compute: func(a figures.Args) float64 { return FuseFactor(a.At("In"), a.At("I")) },
}
