package mass

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// gravity is the standard acceleration in m/s².
const gravity = 9.80665

// Sink is how far the body sinks over an axle, in m, when its load grows by a
// mass in kg; rate is that at one of its two wheels, in N/m. It is negative
// when the body rises.
func Sink(change, rate float64) float64 { return change * gravity / (2 * rate) }

var springSource = figures.Source{
	Title: "deflection of a linear spring, rate measured at the wheel",
	URL:   "https://www.therangerstation.com/how-to_pages/coil_spring_rate.shtml",
	Basis: "physics",
}

var (
	rateBounds   = figures.Bounds{Low: 1_000, High: 2_000_000} // N/m at one wheel
	travelBounds = figures.Bounds{Low: 0.005, High: 1}         // m
	heightBounds = figures.Bounds{Low: 0.05, High: 2}          // m
)

// axle is what sinking reads of one axle.
type axle struct {
	name   string
	letter string
	way    way
	change func(wheelbase float64, changes []Item) float64 // of its load
}

var (
	frontAxle = axle{"front", "F", frontWay, func(l float64, c []Item) float64 { return AxleLoadFront(0, l, c) }}
	rearAxle  = axle{"rear", "R", rearWay, func(l float64, c []Item) float64 { return AxleLoadRear(0, l, c) }}
)

func (x axle) sink(a figures.Args, laden bool) float64 {
	return Sink(x.change(a.At("L"), items(a, "x", laden)), a.At("k"))
}

// sinkInputs declares what sinking reads. A stiffer spring moves the body less,
// whichever way it goes.
func (x axle) sinkInputs(laden bool) []figures.Input {
	return append([]figures.Input{{Name: "k", Path: "chassis.springs." + x.name + "_rate", Direction: figures.Pivot, Valid: rateBounds}},
		inputs(loadOf{positions: true, laden: laden}, x.way)...)
}

func (x axle) sinkFormula(laden bool) string {
	if laden {
		return "s = Δ" + x.letter + "·g / (2·k), with Δ" + x.letter + " by what goes in, what is carried and what comes out"
	}
	return "s = Δ" + x.letter + "·g / (2·k), with Δ" + x.letter + " by what goes in and what comes out"
}

var (
	sinkFront      = sinking("mass.sink_front", "how far the front sinks by the swap", frontAxle, false)
	sinkRear       = sinking("mass.sink_rear", "how far the rear sinks by the swap", rearAxle, false)
	sinkFrontLaden = sinking("mass.sink_front_laden", "how far the front sinks by the swap and the load", frontAxle, true)
	sinkRearLaden  = sinking("mass.sink_rear_laden", "how far the rear sinks by the swap and the load", rearAxle, true)
)

func sinking(id, title string, x axle, laden bool) *figures.Figure {
	return &figures.Figure{
		ID:      id,
		Title:   title,
		Symbol:  "s",
		Kind:    quantity.Length,
		Formula: x.sinkFormula(laden),
		Inputs:  x.sinkInputs(laden),
		Source:  springSource,
		Compute: func(a figures.Args) float64 { return x.sink(a, laden) },
	}
}

var (
	rideHeightFront = rideHeight("mass.ride_height_front", frontAxle)
	rideHeightRear  = rideHeight("mass.ride_height_rear", rearAxle)
)

// rideHeight declares what is left of the mean ride height of an axle.
func rideHeight(id string, x axle) *figures.Figure {
	height := func(side string) figures.Input {
		return figures.Input{Name: "z" + side[:1], Path: "baseline.ride_heights." + x.name + "_" + side,
			Direction: figures.Rising, Valid: heightBounds}
	}
	return &figures.Figure{
		ID:      id,
		Title:   x.name + " ride height after the swap, mean of both sides",
		Symbol:  "z'",
		Kind:    quantity.Length,
		Formula: "z' = (zl + zr)/2 − s; " + x.sinkFormula(false),
		Inputs:  append([]figures.Input{height("left"), height("right")}, turned(x.sinkInputs(false))...),
		Source:  springSource,
		Compute: func(a figures.Args) float64 { return (a.At("zl")+a.At("zr"))/2 - x.sink(a, false) },
	}
}

// BumpUse is the part that sinking, in m, takes of the clearance to the bump
// stops, in m.
func BumpUse(sink, clearance float64) float64 { return sink / clearance }

var (
	bumpUseFront = bumpUse("mass.bump_use_front", frontAxle)
	bumpUseRear  = bumpUse("mass.bump_use_rear", rearAxle)
)

func bumpUse(id string, x axle) *figures.Figure {
	return &figures.Figure{
		ID:      id,
		Title:   "share of the " + x.name + " bump clearance that the swap and the load use up",
		Symbol:  "s/c",
		Kind:    quantity.Ratio,
		Unit:    "%",
		Formula: x.sinkFormula(true) + "; s / clearance to the bump stop as found",
		Inputs: append(x.sinkInputs(true), figures.Input{Name: "c", Path: "chassis.springs." + x.name + "_bump",
			Direction: figures.Pivot, Valid: travelBounds}),
		Source:  springSource,
		Compute: func(a figures.Args) float64 { return BumpUse(x.sink(a, true), a.At("c")) },
	}
}
