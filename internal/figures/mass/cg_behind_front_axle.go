package mass

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// CGBehindFrontAxle is the distance in m of the centre of gravity behind the
// front axle, from the axle loads in kg and the wheelbase in m.
func CGBehindFrontAxle(front, rear, wheelbase float64) float64 {
	return rear * wheelbase / (front + rear)
}

var cgBehindFrontAxle = &figures.Figure{
	ID:      "mass.cg_behind_front_axle",
	Title:   "centre of gravity behind the front axle, unladen",
	Symbol:  "a",
	Kind:    quantity.Length,
	Formula: "a = R'·L / (F' + R')",
	Inputs: inputs(loadOf{front: true, rear: true, positions: true},
		// R'·L is the moment (RL + RR)·L + Σ m·x, which grows with L.
		way{front: figures.Falling, rear: figures.Rising, added: figures.Ends, behind: figures.Rising, wheelbase: figures.Rising}),
	Conditions: stands(total, axleLoadFront, axleLoadRear),
	Source:     statics,
	Compute: func(a figures.Args) float64 {
		return CGBehindFrontAxle(frontLoad(false)(a), rearLoad(false)(a), a.At("L"))
	},
}
