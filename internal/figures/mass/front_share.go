package mass

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// Share is the part that one axle or some wheels carry, from the masses in kg
// on these and on the others.
func Share(these, others float64) float64 { return these / (these + others) }

// stands says that a vehicle presses on both of its axles. Without that a share
// means nothing, and with it the direction of the corner weights is certain.
func stands(total, front, rear *figures.Figure) []figures.Condition {
	return []figures.Condition{
		{Figure: total, Valid: totalBounds},
		{Figure: front, Valid: loadBounds},
		{Figure: rear, Valid: loadBounds},
	}
}

var shareWay = way{front: figures.Rising, rear: figures.Falling, added: figures.Ends, behind: figures.Falling, wheelbase: figures.Pivot}

var frontShare = &figures.Figure{
	ID:         "mass.front_share",
	Title:      "share of the front axle, unladen",
	Symbol:     "F'/W'",
	Kind:       quantity.Ratio,
	Unit:       "%",
	Formula:    "front axle load / (front + rear axle load), unladen",
	Inputs:     inputs(loadOf{front: true, rear: true, positions: true}, shareWay),
	Conditions: stands(total, axleLoadFront, axleLoadRear),
	Source:     statics,
	Compute:    share(false),
}

var frontShareLaden = &figures.Figure{
	ID:         "mass.front_share_laden",
	Title:      "share of the steered axle, laden",
	Symbol:     "F'l/W'l",
	Kind:       quantity.Ratio,
	Unit:       "%",
	Formula:    "front axle load / (front + rear axle load), laden",
	Inputs:     inputs(loadOf{front: true, rear: true, positions: true, laden: true}, shareWay),
	Conditions: stands(totalLaden, axleLoadFrontLaden, axleLoadRearLaden),
	Source:     statics,
	Compute:    share(true),
}

func share(laden bool) func(figures.Args) float64 {
	front, rear := frontLoad(laden), rearLoad(laden)
	return func(a figures.Args) float64 { return Share(front(a), rear(a)) }
}
