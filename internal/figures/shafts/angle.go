package shafts

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// Line is the direction of a shaft by its slopes in rad: what a protractor
// shows of it from the side, and its run to the right seen from above.
type Line struct{ Side, Plan float64 }

// vector returns the direction as lengths ahead, to the right and down, for
// one length ahead.
func (l Line) vector() (ahead, right, down float64) { return 1, math.Tan(l.Plan), math.Tan(l.Side) }

// Angle is the angle in rad between two lines: the working angle of the joint
// that connects them.
func Angle(a, b Line) float64 {
	ax, ay, az := a.vector()
	bx, by, bz := b.vector()
	across := math.Hypot(math.Hypot(ay*bz-az*by, az*bx-ax*bz), ax*by-ay*bx)
	return math.Atan2(across, ax*bx+ay*by+az*bz)
}

func line(a figures.Args, name string) Line { return Line{a.At("β" + name), a.At("γ" + name)} }

// lineInputs are the slopes of a flange or of the tube.
func lineInputs(name, leaf string) []figures.Input {
	return []figures.Input{
		{Name: "β" + name, Path: "shafts.*.side." + leaf, Valid: slopeBounds},
		{Name: "γ" + name, Path: "shafts.*.plan." + leaf, Valid: slopeBounds},
	}
}

// drivingInputs and drivenInputs are the lines at the joints of the two ends.
func drivingInputs() []figures.Input {
	return append(lineInputs("1", "driving"), lineInputs("s", "shaft")...)
}

func drivenInputs() []figures.Input {
	return append(lineInputs("s", "shaft"), lineInputs("2", "driven")...)
}

func bothEnds() []figures.Input { return append(drivingInputs(), lineInputs("2", "driven")...) }

func drivingAngle(a figures.Args) float64 { return Angle(line(a, "1"), line(a, "s")) }

func drivenAngle(a figures.Args) float64 { return Angle(line(a, "s"), line(a, "2")) }

// The formulas of the two angles, from the tangents of the slopes.
const (
	drivingFormula = "θ1 = arccos((1 + x1·xs + y1·ys)/√((1 + x1² + y1²)·(1 + xs² + ys²)))"
	drivenFormula  = "θ2 = arccos((1 + x2·xs + y2·ys)/√((1 + x2² + y2²)·(1 + xs² + ys²)))"
	shaftTangents  = "xs = tan βs; ys = tan γs"
	flange1        = "x1 = tan β1; y1 = tan γ1"
	flange2        = "x2 = tan β2; y2 = tan γ2"
	seen           = "β slopes in side view, γ in plan, 1 and 2 of the driving and the driven flange, s of the shaft"
	bothFormula    = drivingFormula + "; " + drivenFormula + "; " + flange1 + "; " + flange2 + "; " + shaftTangents + "; " + seen
)

var compound = figures.Source{
	Title: "driveline installation manual, true joint operating angle",
	URL:   "https://www.manualsdir.com/manuals/258740/spicer-driveline-installation-service-manual.html?page=13",
	Basis: "manufacturer",
}

var angleDriving = &figures.Figure{
	ID:      "shafts.angle_driving_end",
	Title:   "working angle of the joint at the gearbox or transfer case",
	Symbol:  "θ1",
	Kind:    quantity.Angle,
	Unit:    "°",
	Per:     perShaft,
	Formula: drivingFormula + "; " + flange1 + "; " + shaftTangents + "; " + seen,
	Inputs:  drivingInputs(),
	Source:  compound,
	Compute: drivingAngle,
}

var angleDriven = &figures.Figure{
	ID:      "shafts.angle_driven_end",
	Title:   "working angle of the joint at the axle",
	Symbol:  "θ2",
	Kind:    quantity.Angle,
	Unit:    "°",
	Per:     perShaft,
	Formula: drivenFormula + "; " + flange2 + "; " + shaftTangents + "; " + seen,
	Inputs:  drivenInputs(),
	Source:  compound,
	Compute: drivenAngle,
}

// unsteady says which joints let the speed behind them swing. A rigid end has none.
var unsteady = map[string]float64{"cardan": 1, "constant-velocity": 0, "rigid": 0}

func jointInputs() []figures.Input {
	return []figures.Input{
		{Name: "k1", Path: "shafts.*.joint_driving", Choices: unsteady},
		{Name: "k2", Path: "shafts.*.joint_driven", Choices: unsteady},
	}
}

var angleDifference = &figures.Figure{
	ID:     "shafts.angle_difference",
	Title:  "difference of the working angles at the two ends",
	Symbol: "Δθ",
	Kind:   quantity.Angle,
	Unit:   "°",
	Per:    perShaft,
	Formula: "Δθ = |k1·θ1 − k2·θ2|, k 1 for a cardan joint and 0 for one of constant velocity, so that the cardan joint at the other end must run straight; " +
		bothFormula,
	Inputs: append(bothEnds(), jointInputs()...),
	Source: figures.Source{
		Title: "driveline installation manual: equal angles at both ends cancel",
		URL:   "https://www.manualsdir.com/manuals/258740/spicer-driveline-installation-service-manual.html?page=13",
		Basis: "manufacturer",
	},
	Compute: func(a figures.Args) float64 {
		return math.Abs(a.At("k1")*drivingAngle(a) - a.At("k2")*drivenAngle(a))
	},
}
