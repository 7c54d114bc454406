package mass

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// CGToTheRight is the distance in m of the centre of gravity to the right of
// the centreline, from the masses in kg under the left and the right wheels of
// an axle and its track in m, axle by axle.
func CGToTheRight(axles ...Axle) float64 {
	moment, sum := 0.0, 0.0
	for _, x := range axles {
		moment += (x.Right - x.Left) * x.Track / 2
		sum += x.Right + x.Left
	}
	return moment / sum
}

// Axle is the masses in kg under its two wheels and its track in m.
type Axle struct{ Left, Right, Track float64 }

const lateralFormula = "y = ((FR − FL)·tf/2 + (RR − RL)·tr/2) / W"

func weighedSideways(a figures.Args) float64 {
	return CGToTheRight(Axle{a.At("FL"), a.At("FR"), a.At("tf")}, Axle{a.At("RL"), a.At("RR"), a.At("tr")})
}

// A mass on a wheel moves the centre of gravity towards that wheel.
var towardsWheels = join(
	corners("front", figures.Ends, figures.Ends),
	corners("rear", figures.Ends, figures.Ends),
	tracks(figures.Pivot),
)

var cgToTheRightBefore = &figures.Figure{
	ID:      "mass.cg_to_the_right_before",
	Title:   "centre of gravity to the right of the centreline as found",
	Symbol:  "y",
	Kind:    quantity.Length,
	Formula: lateralFormula,
	Inputs:  towardsWheels,
	Source:  statics,
	Compute: weighedSideways,
}

var (
	cgToTheRight      = sideways("mass.cg_to_the_right", "centre of gravity to the right of the centreline, unladen", false)
	cgToTheRightLaden = sideways("mass.cg_to_the_right_laden", "centre of gravity to the right of the centreline, laden", true)
)

func sideways(id, title string, laden bool) *figures.Figure {
	weighs, onIt := total, "goes in, less what comes out"
	if laden {
		weighs, onIt = totalLaden, "goes in and what is carried, less what comes out"
	}
	return &figures.Figure{
		ID:         id,
		Title:      title,
		Symbol:     "y'",
		Kind:       quantity.Length,
		Formula:    "y' = (W·y + Σ m·y) / (W + Σ m) over what " + onIt + "; " + lateralFormula,
		Inputs:     join(towardsWheels, masses("y", laden, figures.Ends, figures.Rising)),
		Conditions: []figures.Condition{{Figure: weighs, Valid: totalBounds}},
		Source:     statics,
		Compute: func(a figures.Args) float64 {
			return CGAmong(frontWeighed(a)+rearWeighed(a), weighedSideways(a), items(a, "y", laden))
		},
	}
}

var rightShareBefore = &figures.Figure{
	ID:      "mass.right_share_before",
	Title:   "share of the right wheels as found",
	Symbol:  "R/W",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "(FR + RR) / (FL + FR + RL + RR)",
	Inputs:  join(corners("front", figures.Falling, figures.Rising), corners("rear", figures.Falling, figures.Rising)),
	Source:  statics,
	Compute: func(a figures.Args) float64 { return Share(a.At("FR")+a.At("RR"), a.At("FL")+a.At("RL")) },
}

var diagonalShareBefore = &figures.Figure{
	ID:      "mass.diagonal_share_before",
	Title:   "share of the front right and rear left wheels as found",
	Symbol:  "X/W",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "(FR + RL) / (FL + FR + RL + RR); half on a frame that is not twisted",
	Inputs:  join(corners("front", figures.Falling, figures.Rising), corners("rear", figures.Rising, figures.Falling)),
	Source:  statics,
	Compute: func(a figures.Args) float64 { return Share(a.At("FR")+a.At("RL"), a.At("FL")+a.At("RR")) },
}
