package hydraulics

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// gravity is standard gravity in m/s².
const gravity = 9.80665

var (
	massBounds  = figures.Bounds{Low: 100, High: 40_000} // kg
	gradeBounds = figures.Bounds{Low: 0.01, High: 1}     // rise over run
	tyreBounds  = figures.Bounds{Low: 0.3, High: 2}      // m
	axleBounds  = figures.Bounds{Low: 1, High: 20}       // of an axle
	holdBounds  = figures.Bounds{Low: 10, High: 200_000} // N·m
)

// SlopeForce is the force in N along a slope on a mass in kg, from its grade as
// rise over run.
func SlopeForce(mass, grade float64) float64 { return mass * gravity * math.Sin(math.Atan(grade)) }

var slopeInputs = []figures.Input{
	{Name: "m", Path: "chassis.ratings.gross", Direction: figures.Rising, Valid: massBounds},
	{Name: "G", Path: "hydraulics.parking_brake.grade", Direction: figures.Rising, Valid: gradeBounds},
}

const slopeFormula = "F = m·g·sin(arctan(G)), m gross rating, G grade, g = 9.80665 m/s²"

var slope = figures.Source{
	Title: "weight along a slope",
	URL:   "https://de.webtec.com/education/grade-resistance/",
	Basis: "physics",
}

var parkingForce = &figures.Figure{
	ID:      "hydraulics.parking_force",
	Title:   "force that holds the laden vehicle on the grade",
	Symbol:  "F",
	Kind:    quantity.Force,
	Unit:    "N",
	Formula: slopeFormula,
	Inputs:  slopeInputs,
	Source:  slope,
	Compute: func(a figures.Args) float64 { return SlopeForce(a.At("m"), a.At("G")) },
}

// HoldTorque is the torque in N·m that a force in N at the road asks of a brake,
// from the overall diameter of the tyre in m and the ratio between brake and
// wheel, 1 for a brake in the wheels. A loaded tyre asks for some 3 % less.
func HoldTorque(force, diameter, ratio float64) float64 { return force * diameter / 2 / ratio }

// onShaft is 1 for a brake on the shaft.
var onShaft = map[string]float64{"wheels": 0, "shaft": 1}

var holdInputs = append(slopeInputs[:2:2],
	figures.Input{Name: "D", Path: "chassis.tyres.rear_diameter", Direction: figures.Rising, Valid: tyreBounds},
	figures.Input{Name: "ia", Path: "axles.rear.ratio", Direction: figures.Falling, Valid: axleBounds},
	figures.Input{Name: "place", Path: "hydraulics.parking_brake.place", Choices: onShaft})

const holdFormula = "T = F·D/2, on the shaft divided by ia, D tyre diameter, ia rear axle ratio, " + slopeFormula

var parkingTorque = &figures.Figure{
	ID:      "hydraulics.parking_torque",
	Title:   "torque the parking brake has to hold",
	Symbol:  "T",
	Kind:    quantity.Torque,
	Unit:    "N·m",
	Formula: holdFormula,
	Inputs:  holdInputs,
	Source:  slope,
	Compute: hold,
}

var parkingUse = &figures.Figure{
	ID:      "hydraulics.parking_use",
	Title:   "torque the parking brake has to hold against what it holds",
	Symbol:  "T/Th",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "T/Th, Th torque the parking brake holds, " + holdFormula,
	Inputs: append(holdInputs[:5:5],
		figures.Input{Name: "Th", Path: "hydraulics.parking_brake.torque", Direction: figures.Falling, Valid: holdBounds}),
	Source:  slope,
	Compute: func(a figures.Args) float64 { return hold(a) / a.At("Th") },
}

func hold(a figures.Args) float64 {
	ratio := 1.0
	if a.At("place") == 1 {
		ratio = a.At("ia")
	}
	return HoldTorque(SlopeForce(a.At("m"), a.At("G")), a.At("D"), ratio)
}
