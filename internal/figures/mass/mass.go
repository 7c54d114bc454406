// Package mass holds the figures of axle loads, their margins and shares, and
// what the tyres carry. Loads are masses in kg, as a weighbridge shows them.
//
// The vehicle stands level and still. Distances are positive behind the front
// axle centreline.
package mass

import (
	"trialfit/internal/figures"
)

// Figures returns every figure of the discipline.
func Figures() []*figures.Figure {
	return []*figures.Figure{
		axleLoadFront, axleLoadRear, total,
		axleLoadFrontLaden, axleLoadRearLaden, totalLaden,
		frontShare, frontShareLaden,
		cgBehindFrontAxle,
		marginFront, marginRear, marginGross,
		tyreCapacityFront, tyreCapacityRear,
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

// loadOf lists which of the leaves a figure of axle loads reads.
type loadOf struct {
	front, rear bool // corner weights of that axle
	positions   bool // where masses lie, and the wheelbase
	laden       bool // what is carried too
}

// inputs declares the leaves of a figure of axle loads.
func inputs(of loadOf, w way) []figures.Input {
	var list []figures.Input
	scalar := func(name, path string, d figures.Direction, valid figures.Bounds) {
		list = append(list, figures.Input{Name: name, Path: path, Direction: d, Valid: valid})
	}
	mass := func(name, path, position string, m, x figures.Direction, valid figures.Bounds) {
		scalar("m_"+name, path+".mass", m, valid)
		if of.positions {
			scalar("x_"+name, path+position, x, positionBounds)
		}
	}
	if of.front {
		scalar("FL", "baseline.corner_weights.front_left", w.front, cornerBounds)
		scalar("FR", "baseline.corner_weights.front_right", w.front, cornerBounds)
	}
	if of.rear {
		scalar("RL", "baseline.corner_weights.rear_left", w.rear, cornerBounds)
		scalar("RR", "baseline.corner_weights.rear_right", w.rear, cornerBounds)
	}
	if of.positions {
		scalar("L", "chassis.wheelbase", w.wheelbase, wheelbaseBounds)
	}
	mass("out", "outgoing_engine", ".cg.x", opposite(w.added), opposite(w.behind), engineBounds)
	mass("in", "engine", ".cg.x", w.added, w.behind, engineBounds)
	mass("added", "masses.added.*", ".x", w.added, w.behind, itemBounds)
	mass("removed", "masses.removed.*", ".x", opposite(w.added), opposite(w.behind), itemBounds)
	if of.laden {
		mass("carried", "masses.carried.*", ".x", w.added, w.behind, itemBounds)
	}
	return list
}

// Item is a mass in kg and its distance in m behind the front axle. What is
// taken off has a negative mass.
type Item struct{ Mass, X float64 }

// items returns what the swap, and with laden the load, adds to the vehicle.
func items(a figures.Args, laden bool) []Item {
	list := []Item{{-a.At("m_out"), a.At("x_out")}, {a.At("m_in"), a.At("x_in")}}
	column := func(name string, sign float64) {
		x := a.Column("x_" + name)
		for i, m := range a.Column("m_" + name) {
			list = append(list, Item{sign * m, x[i]})
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
