// Package bell holds the figures of what is bolted up between engine and
// gearbox, and of the room that the engine needs to move in.
//
// Everything lies on one axis, positive to the rear, from the machined rear face
// of the block. An adapter of thickness t puts the bell's front face at t, and
// the tip of the input shaft at t − reach.
package bell

import "trialfit/internal/figures"

// Figures returns every figure of the discipline.
func Figures() []*figures.Figure {
	return []*figures.Figure{
		stackError, pilotEngagement, pilotShare, pilotClearance, splineEngagement, splineShare,
		boreRunout, boreRunoutUse, boreOffset, boreOffsetLeft, faceRunout, faceRunoutUse,
		pinionGap, pinionShare, pinionRoot,
		engineMovement, clearanceLeft, clearanceMargin,
	}
}

// Bounds of what is bolted between engine and gearbox, and nothing that is only
// a slip of the unit, in m.
var (
	placeBounds  = figures.Bounds{Low: -0.3, High: 0.5}
	partBounds   = figures.Bounds{Low: 0.001, High: 0.5}
	plateBounds  = figures.Bounds{Low: 0, High: 0.2}
	dialBounds   = figures.Bounds{Low: -0.01, High: 0.01}
	runoutBounds = figures.Bounds{Low: 0.000_01, High: 0.01}
	straight     = 0.0 // dowels without offset, no adapter, no movement
)

func input(name, path string, d figures.Direction, valid figures.Bounds) figures.Input {
	return figures.Input{Name: name, Path: path, Direction: d, Valid: valid}
}
