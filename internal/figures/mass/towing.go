package mass

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

var (
	trailerBounds = figures.Bounds{Low: 1, High: 40_000} // kg
	tongueBounds  = figures.Bounds{Low: 0, High: 10_000} // kg
	hitchBounds   = figures.Bounds{Low: 0.5, High: 15}   // m
	towBounds     = figures.Bounds{Low: 1, High: 60_000} // kg, ratings for trailers
)

// towingManual is where the arithmetic of trailers comes from.
var towingManual = figures.Source{
	Title: "a maker's worked example of axle, gross and combination ratings with a trailer",
	URL:   "https://manualshive.com/en/manual/chevrolet/2008-express/2597075?page=238",
	Basis: "manufacturer",
}

// tongue declares what the trailer presses on the hitch, and where; it moves a
// figure as if it were one more mass that is carried.
func tongue(w way) []figures.Input {
	return []figures.Input{
		{Name: "T", Path: "masses.trailer.tongue", Direction: w.added, Valid: tongueBounds},
		{Name: "xh", Path: "masses.trailer.hitch", Direction: w.behind, Valid: hitchBounds},
	}
}

func towed(a figures.Args) []Item { return []Item{{a.At("T"), a.At("xh")}} }

func towingFront(a figures.Args) float64 {
	return AxleLoadFront(axleLoadFrontLaden.Compute(a), a.At("L"), towed(a))
}

func towingRear(a figures.Args) float64 {
	return AxleLoadRear(axleLoadRearLaden.Compute(a), a.At("L"), towed(a))
}

var (
	frontTowingInputs = join(inputs(loadOf{front: true, positions: true, laden: true}, frontWay), tongue(frontWay))
	rearTowingInputs  = join(inputs(loadOf{rear: true, positions: true, laden: true}, rearWay), tongue(rearWay))
)

var axleLoadFrontTowing = &figures.Figure{
	ID:      "mass.axle_load_front_towing",
	Title:   "front axle load, laden and towing",
	Symbol:  "F't",
	Kind:    quantity.Mass,
	Formula: "F't = F'l + T·(1 − xh/L), with " + axleLoadFrontLaden.Formula,
	Inputs:  frontTowingInputs,
	Source:  statics,
	Compute: towingFront,
}

var axleLoadRearTowing = &figures.Figure{
	ID:      "mass.axle_load_rear_towing",
	Title:   "rear axle load, laden and towing",
	Symbol:  "R't",
	Kind:    quantity.Mass,
	Formula: "R't = R'l + T·xh/L, with " + axleLoadRearLaden.Formula,
	Inputs:  rearTowingInputs,
	Source:  statics,
	Compute: towingRear,
}

// totalTowing is the mass that stands on the wheels of the towing vehicle.
var totalTowing = &figures.Figure{
	ID:      "mass.total_towing",
	Title:   "total mass, laden and with the tongue of the trailer",
	Symbol:  "W't",
	Kind:    quantity.Mass,
	Formula: "W't = W'l + T, with " + totalLaden.Formula,
	Inputs:  totalTowingInputs(totalWay),
	Source:  towingManual,
	Compute: func(a figures.Args) float64 { return totalLaden.Compute(a) + a.At("T") },
}

func totalTowingInputs(w way) []figures.Input {
	return join(inputs(loadOf{front: true, rear: true, laden: true}, w), tongue(w)[:1])
}

var frontShareTowing = &figures.Figure{
	ID:      "mass.front_share_towing",
	Title:   "share of the steered axle, laden and towing",
	Symbol:  "F't/W't",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "front axle load / (front + rear axle load), laden and towing",
	Inputs: join(inputs(loadOf{front: true, rear: true, positions: true, laden: true}, shareWay),
		tongue(shareWay)),
	Conditions: stands(totalTowing, axleLoadFrontTowing, axleLoadRearTowing),
	Source:     statics,
	Compute:    func(a figures.Args) float64 { return Share(towingFront(a), towingRear(a)) },
}

var (
	marginRearTowing = marginOf("mass.margin_rear_towing", "margin of the rear axle rating, laden and towing",
		"chassis.ratings.rear_axle", axleLoadRearTowing, turned(rearTowingInputs))
	marginGrossTowing = marginOf("mass.margin_gross_towing", "margin of the gross mass rating, laden and towing",
		"chassis.ratings.gross", totalTowing, totalTowingInputs(totalWay.reversed()))
)

// Combination is the mass in kg of a vehicle and its trailer, both in kg. The
// tongue is part of the trailer.
func Combination(vehicle, trailer float64) float64 { return vehicle + trailer }

func combinationInputs(w way) []figures.Input {
	return append(inputs(loadOf{front: true, rear: true, laden: true}, w),
		figures.Input{Name: "mt", Path: "masses.trailer.mass", Direction: w.added, Valid: trailerBounds})
}

var combination = &figures.Figure{
	ID:      "mass.combination",
	Title:   "mass of vehicle and trailer",
	Symbol:  "C'",
	Kind:    quantity.Mass,
	Formula: "C' = W'l + trailer, with " + totalLaden.Formula,
	Inputs:  combinationInputs(totalWay),
	Source:  towingManual,
	Compute: func(a figures.Args) float64 { return Combination(totalLaden.Compute(a), a.At("mt")) },
}

var marginCombination = marginOf("mass.margin_combination", "margin of the gross combination rating",
	"chassis.ratings.combination", combination, combinationInputs(totalWay.reversed()))

// TrailerLeft is the heaviest trailer, in kg, that a combination rating leaves
// to a vehicle, both in kg; it is negative when the vehicle alone is too heavy.
func TrailerLeft(rating, vehicle float64) float64 { return rating - vehicle }

var trailerLeft = &figures.Figure{
	ID:      "mass.trailer_left",
	Title:   "heaviest trailer that the combination rating leaves",
	Symbol:  "mt,max",
	Kind:    quantity.Mass,
	Formula: "combination rating − W'l, with " + totalLaden.Formula,
	Inputs: append([]figures.Input{{Name: "rating", Path: "chassis.ratings.combination", Direction: figures.Rising, Valid: towBounds}},
		inputs(loadOf{front: true, rear: true, laden: true}, totalWay.reversed())...),
	Source:  towingManual,
	Compute: func(a figures.Args) float64 { return TrailerLeft(a.At("rating"), totalLaden.Compute(a)) },
}

// against declares a load by its rating.
func against(id, title, symbol, load, rating string, valid figures.Bounds) *figures.Figure {
	return &figures.Figure{
		ID:      id,
		Title:   title,
		Symbol:  symbol,
		Kind:    quantity.Ratio,
		Unit:    "%",
		Formula: "load / rating",
		Inputs: []figures.Input{
			{Name: "load", Path: load, Direction: figures.Rising, Valid: valid},
			{Name: "rating", Path: rating, Direction: figures.Falling, Valid: towBounds},
		},
		Source:  towingManual,
		Compute: func(a figures.Args) float64 { return a.At("load") / a.At("rating") },
	}
}

var (
	trailerUse = against("mass.trailer_use", "trailer against the maker's trailer rating", "mt/r",
		"masses.trailer.mass", "chassis.ratings.trailer", trailerBounds)
	tongueUse = against("mass.tongue_use", "tongue against the rating of the hitch", "T/r",
		"masses.trailer.tongue", "chassis.ratings.tongue", tongueBounds)
)

// TongueShare is the part of a trailer's mass that rests on the hitch, both in
// one unit.
func TongueShare(tongue, trailer float64) float64 { return tongue / trailer }

var tongueShare = &figures.Figure{
	ID:      "mass.tongue_share",
	Title:   "share of the trailer on the hitch",
	Symbol:  "T/mt",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "tongue / mass of the loaded trailer",
	Inputs: []figures.Input{
		{Name: "T", Path: "masses.trailer.tongue", Direction: figures.Rising, Valid: tongueBounds},
		{Name: "mt", Path: "masses.trailer.mass", Direction: figures.Falling, Valid: trailerBounds},
	},
	Source:  towingManual,
	Compute: func(a figures.Args) float64 { return TongueShare(a.At("T"), a.At("mt")) },
}
