package mass

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// Margin is what a rating in kg leaves above a load in kg, as a part of the
// rating; it is negative when the load is more.
func Margin(rating, load float64) float64 { return (rating - load) / rating }

var (
	marginFront = margin("mass.margin_front", "margin of the front axle rating, laden", "chassis.ratings.front_axle",
		axleLoadFrontLaden, loadOf{front: true, positions: true, laden: true}, frontWay)
	marginRear = margin("mass.margin_rear", "margin of the rear axle rating, laden", "chassis.ratings.rear_axle",
		axleLoadRearLaden, loadOf{rear: true, positions: true, laden: true}, rearWay)
	marginGross = margin("mass.margin_gross", "margin of the gross mass rating, laden", "chassis.ratings.gross",
		totalLaden, loadOf{front: true, rear: true, laden: true}, totalWay)
)

// margin declares what a rating leaves above a load that moves the way w.
func margin(id, title, rating string, load *figures.Figure, of loadOf, w way) *figures.Figure {
	less := way{opposite(w.front), opposite(w.rear), opposite(w.added), opposite(w.behind), opposite(w.wheelbase)}
	return &figures.Figure{
		ID:      id,
		Title:   title,
		Symbol:  "M",
		Kind:    quantity.Ratio,
		Unit:    "%",
		Formula: "(rating − " + load.Symbol + ") / rating, with " + load.Formula,
		// The rating helps as long as the load presses down.
		Inputs: append([]figures.Input{{Name: "rating", Path: rating, Direction: figures.Rising, Valid: ratingBounds}},
			inputs(of, less)...),
		Conditions: []figures.Condition{{Figure: load, Valid: loadBounds}},
		Source:     statics,
		Compute: func(a figures.Args) float64 {
			return Margin(a.At("rating"), load.Compute(a))
		},
	}
}
