package mass

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// AxleLoadFront is the load in kg on the front axle after changes to a vehicle
// that weighed front kg there; its wheelbase is in m.
func AxleLoadFront(front, wheelbase float64, changes []Item) float64 {
	for _, c := range changes {
		front += c.Mass * (1 - c.X/wheelbase)
	}
	return front
}

// AxleLoadRear is the load in kg on the rear axle after changes to a vehicle
// that weighed rear kg there; its wheelbase is in m.
func AxleLoadRear(rear, wheelbase float64, changes []Item) float64 {
	for _, c := range changes {
		rear += c.Mass * c.X / wheelbase
	}
	return rear
}

var (
	frontWay = way{front: figures.Rising, added: figures.Ends, behind: figures.Falling, wheelbase: figures.Pivot}
	rearWay  = way{rear: figures.Rising, added: figures.Ends, behind: figures.Rising, wheelbase: figures.Pivot}
)

var axleLoadFront = &figures.Figure{
	ID:      "mass.axle_load_front",
	Title:   "front axle load, unladen",
	Symbol:  "F'",
	Kind:    quantity.Mass,
	Formula: "F' = FL + FR + Σ m·(1 − x/L) over what goes in, less what comes out",
	Inputs:  inputs(loadOf{front: true, positions: true}, frontWay),
	Source:  statics,
	Compute: frontLoad(false),
}

var axleLoadFrontLaden = &figures.Figure{
	ID:      "mass.axle_load_front_laden",
	Title:   "front axle load, laden",
	Symbol:  "F'l",
	Kind:    quantity.Mass,
	Formula: "F'l = FL + FR + Σ m·(1 − x/L) over what goes in and what is carried, less what comes out",
	Inputs:  inputs(loadOf{front: true, positions: true, laden: true}, frontWay),
	Source:  statics,
	Compute: frontLoad(true),
}

var axleLoadRear = &figures.Figure{
	ID:      "mass.axle_load_rear",
	Title:   "rear axle load, unladen",
	Symbol:  "R'",
	Kind:    quantity.Mass,
	Formula: "R' = RL + RR + Σ m·x/L over what goes in, less what comes out",
	Inputs:  inputs(loadOf{rear: true, positions: true}, rearWay),
	Source:  statics,
	Compute: rearLoad(false),
}

var axleLoadRearLaden = &figures.Figure{
	ID:      "mass.axle_load_rear_laden",
	Title:   "rear axle load, laden",
	Symbol:  "R'l",
	Kind:    quantity.Mass,
	Formula: "R'l = RL + RR + Σ m·x/L over what goes in and what is carried, less what comes out",
	Inputs:  inputs(loadOf{rear: true, positions: true, laden: true}, rearWay),
	Source:  statics,
	Compute: rearLoad(true),
}

func frontLoad(laden bool) func(figures.Args) float64 {
	return func(a figures.Args) float64 {
		return AxleLoadFront(frontWeighed(a), a.At("L"), items(a, "x", laden))
	}
}

func rearLoad(laden bool) func(figures.Args) float64 {
	return func(a figures.Args) float64 {
		return AxleLoadRear(rearWeighed(a), a.At("L"), items(a, "x", laden))
	}
}
