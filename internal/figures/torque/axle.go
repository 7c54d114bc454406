package torque

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
	"trialfit/internal/tyre"
)

// Grip is the coefficient of friction between tyre and road that makers of
// shafts and axles reckon with; dry asphalt reaches 0.8 to 0.9.
const Grip = 0.71

// SlipTorque is the torque in N·m at both wheels of an axle at which its tyres
// slip, from the mass on it in kg and the rolling radius in m.
func SlipTorque(mass, radius float64) float64 { return Grip * mass * gravity * radius }

// axle is one axle of the vehicle by its manifest name.
type axle struct{ name, title string }

var front, rear = axle{"front", "front"}, axle{"rear", "rear"}

func (x axle) ratio(d figures.Direction) figures.Input {
	return figures.Input{Name: "ia", Path: "axles." + x.name + ".ratio", Direction: d, Valid: axleBounds}
}

func (x axle) rated() figures.Input {
	return figures.Input{Name: "W", Path: "chassis.ratings." + x.name + "_axle", Direction: figures.Rising, Valid: massBounds}
}

// diameter is that of the rear tyre: all four are alike where both axles drive.
func diameter(d figures.Direction) figures.Input {
	return figures.Input{Name: "D", Path: "chassis.tyres.rear_diameter", Direction: d, Valid: tyreBounds}
}

func axleLow(a figures.Args) float64 { return lowestOf(a) * a.At("il") * a.At("ia") }

func axleSlip(a figures.Args) float64 { return SlipTorque(a.At("W"), tyre.RollingRadius(a.At("D"))) }

const (
	axleLowFormula = "Ta = Tg·il·ia, il transfer case low, 1 where there is none, ia the axle ratio, all of it on one axle; " + lowestFormula
	slipFormula    = "Ts = 0.71·W·9.80665·r, W the axle's rating from the plate, 9.80665 m/s², r = 0.971·D/2"
)

var slipping = figures.Source{
	Title: "driveline installation manual, wheel slip torque, coefficient of friction 0.71",
	URL:   "http://www.manualsdir.com/manuals/258740/spicer-driveline-installation-service-manual.html?page=5",
	Basis: "manufacturer",
}

func (x axle) lowGear() *figures.Figure {
	return &figures.Figure{
		ID:      "torque.axle_" + x.name + "_low",
		Title:   "torque at the " + x.title + " axle's wheels in first low, if the tyres hold",
		Symbol:  "Ta",
		Kind:    quantity.Torque,
		Formula: axleLowFormula,
		Inputs:  append(lowestInputs(), low(&one), x.ratio(figures.Rising)),
		Source:  chain,
		Compute: axleLow,
	}
}

func (x axle) slip() *figures.Figure {
	return &figures.Figure{
		ID:      "torque.axle_" + x.name + "_slip",
		Title:   "torque at which the " + x.title + " tyres slip",
		Symbol:  "Ts",
		Kind:    quantity.Torque,
		Formula: slipFormula,
		Inputs:  []figures.Input{x.rated(), diameter(figures.Rising)},
		Source:  slipping,
		Compute: axleSlip,
	}
}

func (x axle) use() *figures.Figure {
	return &figures.Figure{
		ID:      "torque.axle_" + x.name + "_use",
		Title:   "torque on the " + x.title + " axle against its rating",
		Symbol:  "min(Ta, Ts)/Tr",
		Kind:    quantity.Ratio,
		Unit:    "%",
		Formula: "lesser of Ta and Ts, over the rating Tr; " + axleLowFormula + "; " + slipFormula,
		Inputs: append(lowestInputs(), low(&one), x.ratio(figures.Rising), x.rated(), diameter(figures.Rising),
			rating("axles."+x.name+".torque_rating")),
		Source:  slipping,
		Compute: func(a figures.Args) float64 { return min(axleLow(a), axleSlip(a)) / a.At("Tr") },
	}
}

var (
	axleFrontLow, axleRearLow   = front.lowGear(), rear.lowGear()
	axleFrontSlip, axleRearSlip = front.slip(), rear.slip()
	axleFrontUse, axleRearUse   = front.use(), rear.use()
)
