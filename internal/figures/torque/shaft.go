package torque

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
	"trialfit/internal/tyre"
)

// Efficiencies that makers of shafts reckon with.
const (
	TransferEfficiency = 0.95
	AxleEfficiency     = 0.95
)

// gearboxEfficiency is that of the gearbox by its type.
var gearboxEfficiency = map[string]float64{"manual": 0.85, "automatic": 0.80}

// drives numbers what a shaft leads to. Both pieces of a divided shaft carry the
// torque of the rear axle.
var drives = map[string]float64{"transfer-case": 0, "front-axle": 1, "rear-axle": 2, "centre-bearing": 2}

const perShaft = "shafts"

// shaftInputs are those of the low gear torque of a shaft.
func shaftInputs() []figures.Input {
	return append(lowestInputs(), low(&absent),
		figures.Input{Name: "TE", Path: "transmission.type", Choices: gearboxEfficiency},
		figures.Input{Name: "drives", Path: "shafts.*.drives", Choices: drives})
}

// Transfer is what low range makes of the torque at a shaft behind the transfer
// case, from its ratio, 0 where there is none.
func Transfer(ratio float64) float64 {
	if ratio == 0 {
		return 1
	}
	return ratio * TransferEfficiency
}

func shaftLowOf(a figures.Args) float64 {
	t := lowestOf(a) * a.At("TE")
	if a.At("drives") != drives["transfer-case"] {
		t *= Transfer(a.At("il"))
	}
	return t
}

const shaftLowFormula = "LGT = T·SR·i1·TE, behind a transfer case × il·0.95, SR the stall ratio of the converter, 1 behind a clutch, i1 first gear, il transfer case low, TE 0.85 of a manual gearbox and 0.80 of an automatic; " + engineFormula

var sizing = figures.Source{
	Title: "driveline installation manual, low gear torque and wheel slip torque",
	URL:   "http://www.manualsdir.com/manuals/258740/spicer-driveline-installation-service-manual.html?page=5",
	Basis: "manufacturer",
}

var shaftLow = &figures.Figure{
	ID:      "torque.shaft_low",
	Title:   "low gear torque of the shaft",
	Symbol:  "LGT",
	Kind:    quantity.Torque,
	Per:     perShaft,
	Formula: shaftLowFormula,
	Inputs:  shaftInputs(),
	Source:  sizing,
	Compute: shaftLowOf,
}

// ShaftSlip is the torque in N·m at a shaft that makes the tyres of its axle
// slip, from the mass on the axle in kg, the rolling radius in m and the axle's
// ratio; 0 for an axle without a ratio, which is not driven.
func ShaftSlip(mass, radius, ratio float64) float64 {
	if ratio == 0 {
		return 0
	}
	return SlipTorque(mass, radius) / (AxleEfficiency * ratio)
}

// slipInputs are those of the wheel slip torque at any shaft.
func slipInputs() []figures.Input {
	return []figures.Input{
		{Name: "Wf", Path: "chassis.ratings.front_axle", Direction: figures.Rising, Valid: massBounds},
		{Name: "Wr", Path: "chassis.ratings.rear_axle", Direction: figures.Rising, Valid: massBounds},
		{Name: "if", Path: "axles.front.ratio", Direction: figures.Falling, Valid: axleBounds, WhenNone: &absent},
		{Name: "ir", Path: "axles.rear.ratio", Direction: figures.Falling, Valid: axleBounds},
		diameter(figures.Rising),
	}
}

func shaftSlipOf(a figures.Args) float64 {
	r := tyre.RollingRadius(a.At("D"))
	front, rear := ShaftSlip(a.At("Wf"), r, a.At("if")), ShaftSlip(a.At("Wr"), r, a.At("ir"))
	switch a.At("drives") {
	case drives["front-axle"]:
		return front
	case drives["rear-axle"]:
		return rear
	default:
		return (front + rear) / Transfer(a.At("il"))
	}
}

const shaftSlipFormula = "WST = 0.71·W·9.80665·r/(0.95·i), W the rating and i the ratio of the axle it drives, 9.80665 m/s², r = 0.971·D/2; ahead of the transfer case that of both axles over (il·0.95)"

// lowFalling is the transfer case where a higher ratio leaves less ahead of it.
func lowFalling() figures.Input {
	in := low(&absent)
	in.Direction = figures.Falling
	return in
}

var shaftSlip = &figures.Figure{
	ID:      "torque.shaft_slip",
	Title:   "torque at the shaft when the tyres slip",
	Symbol:  "WST",
	Kind:    quantity.Torque,
	Per:     perShaft,
	Formula: shaftSlipFormula,
	Inputs: append(slipInputs(), lowFalling(),
		figures.Input{Name: "drives", Path: "shafts.*.drives", Choices: drives}),
	Source:  sizing,
	Compute: shaftSlipOf,
}

func joint() figures.Input { return rating("shafts.*.joint_torque_rating") }

var shaftUse = &figures.Figure{
	ID:      "torque.shaft_use",
	Title:   "low gear torque against what the shaft's joints take (off the road)",
	Symbol:  "LGT/Tr",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Per:     perShaft,
	Formula: "LGT/Tr, Tr the joint torque rating; " + shaftLowFormula,
	Inputs:  append(shaftInputs(), joint()),
	Source:  sizing,
	Compute: func(a figures.Args) float64 { return shaftLowOf(a) / a.At("Tr") },
}

var shaftUseRoad = &figures.Figure{
	ID:     "torque.shaft_use_road",
	Title:  "torque against what the shaft's joints take on the road, where the tyres slip first",
	Symbol: "min(LGT, WST)/Tr",
	Kind:   quantity.Ratio,
	Unit:   "%",
	Per:    perShaft,
	Formula: "lesser of LGT and WST, over the joint torque rating Tr, LGT alone for a shaft to an axle that is not driven; " +
		shaftLowFormula + "; " + shaftSlipFormula,
	Inputs: append(append(either(shaftInputs(), "il"), slipInputs()...), joint()),
	Source: sizing,
	Compute: func(a figures.Args) float64 {
		t := shaftLowOf(a)
		if slip := shaftSlipOf(a); slip > 0 {
			t = min(t, slip)
		}
		return t / a.At("Tr")
	},
}

// either takes the direction from one input.
func either(inputs []figures.Input, name string) []figures.Input {
	for i := range inputs {
		if inputs[i].Name == name {
			inputs[i].Direction = figures.Either
		}
	}
	return inputs
}

// TubeShear is the shear stress in Pa at the outside of a tube under a torque in
// N·m, from its outside and inside diameter in m.
func TubeShear(torque, outside, inside float64) float64 {
	return 16 * torque * outside / (math.Pi * (math.Pow(outside, 4) - math.Pow(inside, 4)))
}

var tubeShear = &figures.Figure{
	ID:      "torque.tube_shear",
	Title:   "shear stress in the shaft's tube at low gear torque",
	Symbol:  "τ",
	Kind:    quantity.Stress,
	Unit:    "MPa",
	Per:     perShaft,
	Formula: "τ = 16·LGT·D/(π·(D⁴ − d⁴)), d = D − 2·t; " + shaftLowFormula,
	Inputs: append(shaftInputs(),
		figures.Input{Name: "D", Path: "shafts.*.tube_outside", Direction: figures.Falling, Valid: figures.Bounds{Low: 0.026, High: 0.25}},  // m
		figures.Input{Name: "t", Path: "shafts.*.tube_wall", Direction: figures.Falling, Valid: figures.Bounds{Low: 0.0005, High: 0.0125}}), // m
	Source: figures.Source{Title: "torsion of a tube", URL: "https://amesweb.info/Torsion/torsional-stress-formula.aspx", Basis: "physics"},
	Compute: func(a figures.Args) float64 {
		return TubeShear(shaftLowOf(a), a.At("D"), a.At("D")-2*a.At("t"))
	},
}
