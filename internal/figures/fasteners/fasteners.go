// Package fasteners holds the figures of bolted joints in frame and mounts: the
// preload that a torque gives, what the bolts and their threads bear, and the
// metal around their holes.
package fasteners

import (
	"trialfit/internal/figures"
)

// Figures returns every figure of the discipline.
func Figures() []*figures.Figure {
	return []*figures.Figure{
		sizeInClass, stressArea, proofLoad,
		preload, preloadUse, tighteningTorque,
		engagement, engagementUse,
		shearResistance, shearUse, tensionResistance, tensionUse, togetherUse, slipUse, openingUse,
		edgeDistance, holeDistance,
	}
}

const (
	bolts = "frame.bolts"
	holes = "frame.holes"
)

// Bounds from M5 to M39, and nothing that is only a slip of the unit.
var (
	diameterBounds = figures.Bounds{Low: 0.005, High: 0.039}   // m
	pitchBounds    = figures.Bounds{Low: 0.0005, High: 0.0045} // m
	torqueBounds   = figures.Bounds{Low: 1, High: 5_000}       // N·m
	factorBounds   = figures.Bounds{Low: 0.05, High: 0.5}
	lengthBounds   = figures.Bounds{Low: 0.001, High: 0.2} // m
	countBounds    = figures.Bounds{Low: 1, High: 24}
	planeBounds    = figures.Bounds{Low: 1, High: 2}
	forceBounds    = figures.Bounds{Low: 0, High: 1e6}      // N
	holeBounds     = figures.Bounds{Low: 0.002, High: 0.15} // m
	metalBounds    = figures.Bounds{Low: 0, High: 1}        // m
)

// Counts are the numbers of bolts that brackets are drilled for.
var counts = func() *figures.Series {
	s := &figures.Series{Title: "bolts in the joint"}
	for _, n := range []struct {
		label string
		n     float64
	}{{"1", 1}, {"2", 2}, {"3", 3}, {"4", 4}, {"5", 5}, {"6", 6}, {"8", 8}, {"10", 10}, {"12", 12}} {
		s.Sizes = append(s.Sizes, figures.Size{Label: n.label, SI: n.n})
	}
	return s
}()

func diameter(d figures.Direction) figures.Input {
	return figures.Input{Name: "d", Path: bolts + ".*.diameter", Direction: d, Valid: diameterBounds}
}

func pitch(d figures.Direction) figures.Input {
	return figures.Input{Name: "p", Path: bolts + ".*.pitch", Direction: d, Valid: pitchBounds}
}

var class = figures.Input{Name: "class", Path: bolts + ".*.class", Choices: numbers}

func number(d figures.Direction) figures.Input {
	return figures.Input{Name: "n", Path: bolts + ".*.count", Direction: d, Valid: countBounds, Series: counts}
}
