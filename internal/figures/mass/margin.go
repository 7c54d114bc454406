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

	marginFrontUnladen = margin("mass.margin_front_unladen", "margin of the front axle rating, unladen", "chassis.ratings.front_axle",
		axleLoadFront, loadOf{front: true, positions: true}, frontWay)
	marginRearUnladen = margin("mass.margin_rear_unladen", "margin of the rear axle rating, unladen", "chassis.ratings.rear_axle",
		axleLoadRear, loadOf{rear: true, positions: true}, rearWay)
	marginGrossUnladen = margin("mass.margin_gross_unladen", "margin of the gross mass rating, unladen", "chassis.ratings.gross",
		total, loadOf{front: true, rear: true}, totalWay)
)

// margin declares what a rating leaves above a load that moves the way w.
func margin(id, title, rating string, load *figures.Figure, of loadOf, w way) *figures.Figure {
	return marginOf(id, title, rating, load, inputs(of, w.reversed()))
}

// marginOf declares what a rating leaves above a load; less are the inputs of
// the load, each moving the margin.
func marginOf(id, title, rating string, load *figures.Figure, less []figures.Input) *figures.Figure {
	return &figures.Figure{
		ID:      id,
		Title:   title,
		Symbol:  "M",
		Kind:    quantity.Ratio,
		Unit:    "%",
		Formula: "(rating − " + load.Symbol + ") / rating, with " + load.Formula,
		// The rating helps as long as the load presses down.
		Inputs: append([]figures.Input{{Name: "rating", Path: rating, Direction: figures.Rising, Valid: ratingBounds}},
			less...),
		Conditions: []figures.Condition{{Figure: load, Valid: loadBounds}},
		Source:     statics,
		Compute: func(a figures.Args) float64 {
			return Margin(a.At("rating"), load.Compute(a))
		},
	}
}

// Payload is what may still be loaded, in kg, from the gross rating and the
// mass of the vehicle before, in kg; it is negative when that is too much
// already.
func Payload(rating, mass float64) float64 { return rating - mass }

var payload = &figures.Figure{
	ID:      "mass.payload",
	Title:   "mass that may still be loaded",
	Symbol:  "P",
	Kind:    quantity.Mass,
	Formula: "P = gross rating − " + total.Symbol + ", with " + total.Formula,
	Inputs: append([]figures.Input{{Name: "rating", Path: "chassis.ratings.gross", Direction: figures.Rising, Valid: ratingBounds}},
		inputs(loadOf{front: true, rear: true}, totalWay.reversed())...),
	Source:  statics,
	Compute: func(a figures.Args) float64 { return Payload(a.At("rating"), total.Compute(a)) },
}
