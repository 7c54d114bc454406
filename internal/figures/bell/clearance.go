package bell

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

const perClearance = "bay.clearances"

// Movement is how far a point of the engine comes nearer to something, from the
// roll in rad about the engine's axis, the point's distance from that axis and
// what the mounts give otherwise, in one unit: the arc, never less than the chord.
func Movement(roll, radius, mounts float64) float64 { return roll*radius + mounts }

func movementInputs(d figures.Direction) []figures.Input {
	radius := input("r", "bay.clearances.*.radius", d, figures.Bounds{Low: 0, High: 2}) // m
	radius.WhenNone = &straight
	return []figures.Input{
		input("φ", "bay.engine_roll", d, figures.Bounds{Low: 0, High: 20 * math.Pi / 180}),
		radius,
		input("u", "bay.clearances.*.mount_travel", d, figures.Bounds{Low: 0, High: 0.1}), // m
	}
}

func movementOf(a figures.Args) float64 { return Movement(a.At("φ"), a.At("r"), a.At("u")) }

const movementFormula = "s = φ·r + u, φ the engine's roll in rad, r the radius, u the mount travel"

var moving = figures.Source{
	Title: "geometry of an engine that rolls on its mounts; how much to leave is common practice",
	URL:   "http://hotrodphotos.co.uk/Clearances.htm",
	Basis: "physics",
}

var engineMovement = &figures.Figure{
	ID:      "bell.engine_movement",
	Title:   "how far the engine comes nearer",
	Symbol:  "s",
	Kind:    quantity.Length,
	Per:     perClearance,
	Formula: movementFormula,
	Inputs:  movementInputs(figures.Rising),
	Source:  moving,
	Compute: movementOf,
}

// ClearanceLeft is what is left of a gap when engine and neighbour move towards
// each other, in one unit. Negative where they touch.
func ClearanceLeft(gap, movement, travel float64) float64 { return gap - movement - travel }

func leftInputs() []figures.Input {
	travel := input("v", "bay.clearances.*.travel", figures.Falling, figures.Bounds{Low: 0, High: 0.6}) // m
	travel.WhenNone = &straight
	return append(movementInputs(figures.Falling),
		input("g", "bay.clearances.*.gap", figures.Rising, figures.Bounds{Low: 0, High: 2}), travel) // m
}

func leftOf(a figures.Args) float64 { return ClearanceLeft(a.At("g"), movementOf(a), a.At("v")) }

const leftFormula = "g' = g − s − v, g the gap, v the travel of the other part; " + movementFormula

var clearanceLeft = &figures.Figure{
	ID:      "bell.clearance_left",
	Title:   "clearance left with engine and neighbour moved together",
	Symbol:  "g'",
	Kind:    quantity.Length,
	Per:     perClearance,
	Formula: leftFormula,
	Inputs:  leftInputs(),
	Source:  moving,
	Compute: leftOf,
}

var clearanceMargin = &figures.Figure{
	ID:      "bell.clearance_margin",
	Title:   "clearance left above what is needed",
	Symbol:  "g' − gn",
	Kind:    quantity.Length,
	Per:     perClearance,
	Formula: "g' − gn, gn what is needed; " + leftFormula,
	Inputs: append(leftInputs(),
		input("gn", "bay.clearances.*.needed", figures.Falling, figures.Bounds{Low: 0, High: 0.3})), // m
	Source:  moving,
	Compute: func(a figures.Args) float64 { return leftOf(a) - a.At("gn") },
}
