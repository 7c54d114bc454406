package torque

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
	"trialfit/internal/tyre"
)

// Rolling resistance as a share of the weight: asphalt, and ground off the road
// (common practice).
const (
	RollingRoad   = 0.015
	RollingGround = 0.05
)

// TractiveEffort is the pull in N at the tyres, from the engine's torque in N·m,
// the overall ratio, the efficiency on the way and the rolling radius in m.
func TractiveEffort(engine, ratio, efficiency, radius float64) float64 {
	return engine * ratio * efficiency / radius
}

// Gradeability is the gradient, rise over run, that a pull holds, from the pull
// over the weight and the rolling resistance as a share of the weight. The pull
// is below the weight.
func Gradeability(pull, rolling float64) float64 {
	return math.Tan(math.Asin(pull/math.Hypot(1, rolling)) - math.Atan(rolling))
}

// pullInputs are those of the tractive effort in a gear.
func pullInputs(gear, transfer figures.Input) []figures.Input {
	return append(engineInputs(), gear, transfer,
		figures.Input{Name: "TE", Path: "transmission.type", Choices: gearboxEfficiency},
		rear.ratio(figures.Rising), diameter(figures.Falling))
}

func lowInputs(none *float64) []figures.Input {
	return append(pullInputs(lowestInputs()[3], low(none)), lowestInputs()[2])
}

func topInputs() []figures.Input {
	return pullInputs(
		figures.Input{Name: "it", Path: "transmission.top", Direction: figures.Rising, Valid: gearBounds},
		figures.Input{Name: "ih", Path: "transfer_case.high", Direction: figures.Rising, Valid: gearBounds, WhenNone: &absent})
}

func effort(a figures.Args, torque, transfer float64) float64 {
	return TractiveEffort(torque, Transfer(transfer)*a.At("ia"), a.At("TE")*AxleEfficiency, tyre.RollingRadius(a.At("D")))
}

func lowEffort(a figures.Args) float64 { return effort(a, lowestOf(a), a.At("il")) }

func topEffort(a figures.Args) float64 { return effort(a, engineOf(a)*a.At("it"), a.At("ih")) }

const (
	losses           = ", TE 0.85 of a manual gearbox and 0.80 of an automatic, 0.95 each for transfer case and axle, no transfer case counting 1, r = 0.971·D/2"
	lowEffortFormula = "F = T·SR·i1·il·ia·TE·0.95·0.95/r, SR the stall ratio of the converter, 1 behind a clutch, i1 first gear, il transfer case low, ia the axle ratio" + losses + "; " + engineFormula
	topEffortFormula = "F = T·it·ih·ia·TE·0.95·0.95/r, it top gear, ih transfer case high, ia the axle ratio" + losses + "; " + engineFormula
)

var pulling = figures.Source{
	Title: "tractive effort of construction equipment, torque × ratio × efficiency / rolling radius",
	URL:   "https://www.scribd.com/document/432584157/Cacl-Traction",
	Basis: "handbook",
}

var tractiveLow = &figures.Figure{
	ID:      "torque.tractive_effort_low",
	Title:   "pull at the tyres in first low, if they hold",
	Symbol:  "F",
	Kind:    quantity.Force,
	Formula: lowEffortFormula,
	Inputs:  lowInputs(&absent),
	Source:  pulling,
	Compute: lowEffort,
}

var tractiveTop = &figures.Figure{
	ID:      "torque.tractive_effort_top",
	Title:   "pull at the tyres in top gear",
	Symbol:  "F",
	Kind:    quantity.Force,
	Formula: topEffortFormula,
	Inputs:  topInputs(),
	Source:  pulling,
	Compute: topEffort,
}

// gross is the vehicle at its rated mass.
var gross = figures.Input{Name: "m", Path: "chassis.ratings.gross", Direction: figures.Falling, Valid: massBounds}

func weight(a figures.Args) float64 { return a.At("m") * gravity }

var pullLow = &figures.Figure{
	ID:      "torque.pull_low",
	Title:   "pull in first low against the gross weight",
	Symbol:  "F/W",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "F/(m·9.80665), m the gross rating, 9.80665 m/s²; " + lowEffortFormula,
	Inputs:  append(lowInputs(&absent), gross),
	Source:  pulling,
	Compute: func(a figures.Args) float64 { return lowEffort(a) / weight(a) },
}

var pullTop = &figures.Figure{
	ID:      "torque.pull_top",
	Title:   "pull in top gear against the gross weight",
	Symbol:  "F/W",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "F/(m·9.80665), m the gross rating, 9.80665 m/s²; " + topEffortFormula,
	Inputs:  append(topInputs(), gross),
	Source:  pulling,
	Compute: func(a figures.Args) float64 { return topEffort(a) / weight(a) },
}

var climbing = figures.Source{
	Title: "gradient held by a pull: percentage of the weight less the rolling resistance",
	URL:   "http://www.webtec.co.uk/techinfo/equation/eqnfr/eqn04.htm",
	Basis: "physics",
}

var gradeabilityTop = &figures.Figure{
	ID:         "torque.gradeability_top",
	Title:      "gradient held in top gear at gross weight, at the speed of peak torque",
	Symbol:     "G",
	Kind:       quantity.Ratio,
	Unit:       "%",
	Formula:    "G = tan(arcsin(F/(m·9.80665·√(1 + f²))) − arctan f), f = 0.015, m the gross rating, 9.80665 m/s², without the drag of the air; " + topEffortFormula,
	Inputs:     append(topInputs(), gross),
	Conditions: []figures.Condition{{Figure: pullTop, Valid: figures.Bounds{Low: 0, High: 0.95}}},
	Source:     climbing,
	Compute:    func(a figures.Args) float64 { return Gradeability(topEffort(a)/weight(a), RollingRoad) },
}

// GradeabilityOnGrip is Gradeability with all wheels driven, where the tyres let
// go at a pull of Grip times their load: no more than Grip less the rolling
// resistance.
func GradeabilityOnGrip(pull, rolling float64) float64 {
	slips := Grip / math.Hypot(1, Grip-rolling)
	return Gradeability(min(pull, slips), rolling)
}

var gradeabilityLow = &figures.Figure{
	ID:     "torque.gradeability_low",
	Title:  "gradient held in first low at gross weight, all wheels driven",
	Symbol: "G",
	Kind:   quantity.Ratio,
	Unit:   "%",
	Formula: "lesser of tan(arcsin(F/(m·9.80665·√(1 + f²))) − arctan f) and 0.71 − f, where the tyres slip; f = 0.05 off the road, m the gross rating; " +
		lowEffortFormula,
	Inputs:  append(lowInputs(nil), gross),
	Source:  climbing,
	Compute: func(a figures.Args) float64 { return GradeabilityOnGrip(lowEffort(a)/weight(a), RollingGround) },
}
