// Package mass holds the figures of axle loads, their margins and shares, and
// what the tyres carry. Loads are masses in kg, as a weighbridge shows them.
//
// The vehicle stands level and still. Distances are positive behind the front
// axle centreline.
package mass

import (
	"slices"
	"strings"

	"trialfit/internal/figures"
)

// Figures returns every figure of the discipline.
func Figures() []*figures.Figure {
	return []*figures.Figure{
		axleLoadFrontBefore, axleLoadRearBefore,
		axleLoadFront, axleLoadRear, total,
		axleLoadFrontLaden, axleLoadRearLaden, totalLaden,
		frontShare, frontShareLaden,
		cgBehindFrontAxle, cgToTheRight, cgToTheRightLaden, cgToTheRightBefore,
		rightShareBefore, diagonalShareBefore,
		cgHeightBefore, cgHeight, cgHeightLaden,
		stabilityBefore, stability, stabilityLaden,
		marginFront, marginRear, marginGross,
		marginFrontUnladen, marginRearUnladen, marginGrossUnladen, payload,
		tyreCapacityFront, tyreCapacityRear, tyreUseFront, tyreUseRear,
		sinkFront, sinkRear, sinkFrontLaden, sinkRearLaden,
		rideHeightFront, rideHeightRear, bumpUseFront, bumpUseRear,
		axleLoadFrontTowing, axleLoadRearTowing, totalTowing, frontShareTowing,
		marginRearTowing, marginGrossTowing,
		combination, marginCombination, trailerLeft, trailerUse, tongueShare, tongueUse,
		engineChange,
	}
}

// Bounds of the trade: from a quad bike to a heavy truck, and nothing that is
// only a slip of the unit.
var (
	cornerBounds    = figures.Bounds{Low: 10, High: 10_000}  // kg on one wheel
	engineBounds    = figures.Bounds{Low: 10, High: 3_000}   // kg
	itemBounds      = figures.Bounds{Low: 0, High: 10_000}   // kg
	ratingBounds    = figures.Bounds{Low: 100, High: 40_000} // kg
	loadBounds      = figures.Bounds{Low: 0, High: 100_000}  // kg on an axle or in all
	positionBounds  = figures.Bounds{Low: -3, High: 15}      // m
	wheelbaseBounds = figures.Bounds{Low: 1, High: 10}       // m
	// totalBounds is a vehicle that stands on four wheels, in kg.
	totalBounds = figures.Bounds{Low: 4 * cornerBounds.Low, High: loadBounds.High}
)

// statics is where the moments come from.
var statics = figures.Source{
	Title: "statics: moments about the axles of a level vehicle at rest, from memory",
	Basis: "physics",
}

// way says how a figure moves with what it is made of. A mass can shift a load
// up or down, by where it lies: ahead of the front axle it lightens the rear.
// With the wheelbase held, the loads are sums over masses, and shares and
// centres of gravity are ratios of such sums to the total.
type way struct {
	front, rear figures.Direction // load on a wheel of that axle, as weighed
	added       figures.Direction // mass of what goes in; what comes out is opposite
	behind      figures.Direction // distance of what goes in behind the front axle
	wheelbase   figures.Direction
}

func opposite(d figures.Direction) figures.Direction {
	switch d {
	case figures.Rising:
		return figures.Falling
	case figures.Falling:
		return figures.Rising
	}
	return d
}

// reversed is the way of a figure that falls where one of the way w rises.
func (w way) reversed() way {
	return way{opposite(w.front), opposite(w.rear), opposite(w.added), opposite(w.behind), opposite(w.wheelbase)}
}

// loadOf lists which of the leaves a figure of axle loads reads.
type loadOf struct {
	front, rear bool // corner weights of that axle
	positions   bool // where masses lie, and the wheelbase
	laden       bool // what is carried too
}

// inputs declares the leaves of a figure of axle loads.
func inputs(of loadOf, w way) []figures.Input {
	var list []figures.Input
	if of.front {
		list = append(list, corners("front", w.front, w.front)...)
	}
	if of.rear {
		list = append(list, corners("rear", w.rear, w.rear)...)
	}
	axis := ""
	if of.positions {
		list = append(list, figures.Input{Name: "L", Path: "chassis.wheelbase", Direction: w.wheelbase, Valid: wheelbaseBounds})
		axis = "x"
	}
	return append(list, masses(axis, of.laden, w.added, w.behind)...)
}

// corners declares the weights on the left and the right wheel of an axle.
func corners(axle string, left, right figures.Direction) []figures.Input {
	letter := strings.ToUpper(axle[:1])
	return []figures.Input{
		{Name: letter + "L", Path: "baseline.corner_weights." + axle + "_left", Direction: left, Valid: cornerBounds},
		{Name: letter + "R", Path: "baseline.corner_weights." + axle + "_right", Direction: right, Valid: cornerBounds},
	}
}

// join puts groups of inputs in one new list.
func join(groups ...[]figures.Input) []figures.Input { return slices.Concat(groups...) }

// axes are the bounds of where a mass lies: behind the front axle, to the right
// of the centreline, above the ground.
var axes = map[string]figures.Bounds{
	"x": positionBounds,
	"y": {Low: -2, High: 2}, // m
	"z": {Low: 0, High: 5},  // m
}

// masses declares what the swap changes and, when laden, what is carried: each
// mass and, unless axis is "", where it lies on that axis. A mass that goes in
// moves the figure like m, its position like at; what comes out is opposite.
func masses(axis string, laden bool, m, at figures.Direction) []figures.Input {
	var list []figures.Input
	add := func(name, path, position string, m, at figures.Direction, valid figures.Bounds) {
		list = append(list, figures.Input{Name: "m_" + name, Path: path + ".mass", Direction: m, Valid: valid})
		if axis != "" {
			list = append(list, figures.Input{Name: axis + "_" + name, Path: path + position + axis, Direction: at, Valid: axes[axis]})
		}
	}
	add("out", "outgoing_engine", ".cg.", opposite(m), opposite(at), engineBounds)
	add("in", "engine", ".cg.", m, at, engineBounds)
	add("added", "masses.added.*", ".", m, at, itemBounds)
	add("removed", "masses.removed.*", ".", opposite(m), opposite(at), itemBounds)
	if laden {
		add("carried", "masses.carried.*", ".", m, at, itemBounds)
	}
	return list
}

// Item is a mass in kg and where it lies in m, such as its distance behind the
// front axle. What is taken off has a negative mass.
type Item struct{ Mass, X float64 }

// items returns what the swap, and with laden the load, adds to the vehicle,
// with its positions on an axis.
func items(a figures.Args, axis string, laden bool) []Item {
	list := []Item{{-a.At("m_out"), a.At(axis + "_out")}, {a.At("m_in"), a.At(axis + "_in")}}
	column := func(name string, sign float64) {
		at := a.Column(axis + "_" + name)
		for i, m := range a.Column("m_" + name) {
			list = append(list, Item{sign * m, at[i]})
		}
	}
	column("added", 1)
	column("removed", -1)
	if laden {
		column("carried", 1)
	}
	return list
}

func frontWeighed(a figures.Args) float64 { return a.At("FL") + a.At("FR") }

func rearWeighed(a figures.Args) float64 { return a.At("RL") + a.At("RR") }
