package shafts

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// whirl is the makers' constant for steel tubes, 4.705 million rpm·in, here in
// rad·m/s. A plain beam of 207 GPa and 7830 kg/m³ has 1.3 % more.
const whirl = 4.705e6 * 0.0254 * rpm

// CriticalSpeed is the speed in rad/s at which a steel tube whirls, from its
// outside and inside diameter and the length between joint centres in m. Real
// shafts with their yokes and slip whirl a little sooner.
func CriticalSpeed(outside, inside, length float64) float64 {
	return whirl * math.Hypot(outside, inside) / (length * length)
}

// tubeSizes are the outside diameters that shaft tube is sold in (common practice).
var tubeSizes = &figures.Series{Title: "shaft tube, outside diameter", Sizes: []figures.Size{
	{Label: "2 in", SI: 0.0508}, {Label: "2 1/2 in", SI: 0.0635}, {Label: "3 in", SI: 0.0762},
	{Label: "3 1/2 in", SI: 0.0889}, {Label: "4 in", SI: 0.1016}, {Label: "5 in", SI: 0.127},
}}

func tubeInputs(d figures.Direction, wall, length figures.Direction) []figures.Input {
	return []figures.Input{
		{
			Name: "D", Path: "shafts.*.tube_outside", Direction: d,
			Valid: figures.Bounds{Low: 0.025, High: 0.25}, Series: tubeSizes, // m
		},
		{Name: "t", Path: "shafts.*.tube_wall", Direction: wall, Valid: figures.Bounds{Low: 0.0005, High: 0.0125}}, // m
		{Name: "L", Path: "shafts.*.length", Direction: length, Valid: lengthBounds},
	}
}

func critical(a figures.Args) float64 {
	return CriticalSpeed(a.At("D"), a.At("D")-2*a.At("t"), a.At("L"))
}

const criticalFormula = "nc = 119507 rpm·1 m·√(D² + (D − 2·t)²)/L², L between joint centres, steel"

var whirling = figures.Source{
	Title: "first bending mode of a uniform tube on two supports; constant 4.705·10⁶ rpm·in of the makers (from memory)",
	URL:   "http://cardanindia.com/speedlimit.html",
	Basis: "physics",
}

var criticalSpeed = &figures.Figure{
	ID:      "shafts.critical_speed",
	Title:   "critical (whirling) speed of the tube",
	Symbol:  "nc",
	Kind:    quantity.RotationalSpeed,
	Unit:    "rpm",
	Per:     perShaft,
	Formula: criticalFormula,
	Inputs:  tubeInputs(figures.Rising, figures.Falling, figures.Falling),
	Source:  whirling,
	Compute: critical,
}

var criticalUse = &figures.Figure{
	ID:      "shafts.critical_speed_use",
	Title:   "shaft speed against its critical speed",
	Symbol:  "n/nc",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Per:     perShaft,
	Formula: "n / nc; " + speedFormula + "; " + criticalFormula,
	Inputs:  append(tubeInputs(figures.Falling, figures.Rising, figures.Rising), speedInputs()...),
	Source:  whirling,
	Compute: func(a figures.Args) float64 { return speedOf(a) / critical(a) },
}

// Cruise is the road speed in m/s at which the half critical speed is looked at.
const Cruise = 100 / 3.6

// cruising is the speed in rad/s of a shaft at a road speed in m/s, from the
// axle's ratio and the tyre's diameter in m, in one unit with the gearing figures.
func cruising(road, axle, diameter float64) float64 { return road / (diameter / 2) * axle }

var criticalHalf = &figures.Figure{
	ID:     "shafts.half_critical",
	Title:  "shaft speed at 100 km/h against half its critical speed",
	Symbol: "2·n100/nc",
	Kind:   quantity.Ratio,
	Unit:   "%",
	Per:    perShaft,
	Formula: "2·n100/nc, n100 = 100 km/h·2/Dt·ia·(it − kt·(it − 1)), Dt the rear tyre's diameter, ia the axle ratio, it transfer case high, kt 1 behind it; " +
		"two pushes a turn from the joints meet the first bending mode at 100 %; " + criticalFormula,
	Inputs: append(tubeInputs(figures.Falling, figures.Rising, figures.Rising),
		figures.Input{Name: "ia", Path: "axles.rear.ratio", Direction: figures.Rising, Valid: figures.Bounds{Low: 1, High: 20}},
		figures.Input{Name: "Dt", Path: "chassis.tyres.rear_diameter", Direction: figures.Falling, Valid: figures.Bounds{Low: 0.3, High: 2}}, // m
		figures.Input{Name: "it", Path: "transfer_case.high", Direction: figures.Rising, Valid: gearBounds, WhenNone: speedInputs()[2].WhenNone},
		speedInputs()[3]),
	Source: figures.Source{
		Title: "cardan shaft maker's guide: keep 8 % off half the critical speed",
		URL:   "http://cardanindia.com/speedlimit.html",
		Basis: "manufacturer",
	},
	Compute: func(a figures.Args) float64 {
		n := cruising(Cruise, a.At("ia"), a.At("Dt"))
		if a.At("kt") == 0 {
			n *= a.At("it")
		}
		return 2 * n / critical(a)
	},
}
