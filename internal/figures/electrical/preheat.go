package electrical

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

var heaterPower = figures.Input{
	Name: "P", Path: "electrical.preheat.power", Direction: figures.Rising, Valid: heaterBounds,
}

var heaterTime = figures.Input{
	Name: "t", Path: "electrical.preheat.time", Direction: figures.Rising, Valid: heaterTimeBounds,
}

var power = figures.Source{
	Title: "power is voltage times current, energy is power times time",
	URL:   "https://ukmotorfactors.co.uk/tools/fuse-rating-calculator.html",
	Basis: "physics",
}

// HeaterCurrent is that in A of a heater of a power in W at a voltage in V.
func HeaterCurrent(power, voltage float64) float64 { return power / voltage }

var preheatCurrent = &figures.Figure{
	ID:      "electrical.preheat_current",
	Title:   "current of the preheating",
	Symbol:  "I",
	Kind:    quantity.Current,
	Formula: "I = P/U, P power of the heaters, U system voltage; cold glow plugs take two to three times as much for some seconds",
	Inputs:  []figures.Input{heaterPower, systemVoltage},
	Source:  power,
	Compute: func(a figures.Args) float64 { return HeaterCurrent(a.At("P"), a.At("U")) },
}

// PreheatCover is the current in A that a circuit is laid out for against that
// of a heater of a power in W at a voltage in V.
func PreheatCover(current, power, voltage float64) float64 {
	return current / HeaterCurrent(power, voltage)
}

var preheatCover = &figures.Figure{
	ID:      "electrical.preheat_cover",
	Title:   "current of the circuit against that of the preheating",
	Symbol:  "I·U/P",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Per:     circuits,
	Formula: "steady current of the circuit / (P/U), P power of the heaters, U system voltage; of the circuit that feeds the preheating",
	Inputs: []figures.Input{
		circuitCurrent(figures.Rising),
		{Name: "P", Path: "electrical.preheat.power", Direction: figures.Falling, Valid: heaterBounds},
		{Name: "U", Path: "electrical.system_voltage", Direction: figures.Rising, Valid: voltageBounds},
	},
	Source:  power,
	Compute: func(a figures.Args) float64 { return PreheatCover(a.At("I"), a.At("P"), a.At("U")) },
}

var preheatEnergy = &figures.Figure{
	ID:      "electrical.preheat_energy",
	Title:   "energy of the preheating in one cold start",
	Symbol:  "W",
	Kind:    quantity.Energy,
	Unit:    "Wh",
	Formula: "W = P·t, P power of the heaters, t time they are on",
	Inputs:  []figures.Input{heaterPower, heaterTime},
	Source:  power,
	Compute: func(a figures.Args) float64 { return a.At("P") * a.At("t") },
}

var preheatShare = &figures.Figure{
	ID:      "electrical.preheat_share",
	Title:   "charge of the preheating against what the batteries hold",
	Symbol:  "q",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "q = P·t/(U·Q), Q = 25 A·RC, P power of the heaters, t time they are on, U system voltage, RC reserve capacity",
	Inputs:  []figures.Input{heaterPower, heaterTime, systemVoltage, reserve(figures.Falling)},
	Source:  power,
	Compute: func(a figures.Args) float64 {
		return HeaterCurrent(a.At("P"), a.At("U")) * a.At("t") / ReserveCharge(a.At("RC"))
	},
}

// CoilCurrent is that in A of a coil of a resistance in Ω at a voltage in V.
func CoilCurrent(voltage, resistance float64) float64 { return voltage / resistance }

// coil is the current of one coil of the stop solenoid.
func coil(id, title, path string) *figures.Figure {
	return &figures.Figure{
		ID:      "electrical.stop_" + id + "_current",
		Title:   title,
		Symbol:  "I",
		Kind:    quantity.Current,
		Formula: "I = U/R, U system voltage, R resistance of the coil, cold",
		Inputs: []figures.Input{
			{Name: "U", Path: "electrical.system_voltage", Direction: figures.Rising, Valid: voltageBounds},
			{Name: "R", Path: path, Direction: figures.Falling, Valid: coilBounds},
		},
		Source:  figures.Source{Title: "Ohm's law", Basis: "physics"},
		Compute: func(a figures.Args) float64 { return CoilCurrent(a.At("U"), a.At("R")) },
	}
}

var (
	stopHoldCurrent = coil("hold", "current that holds the stop solenoid", "fuel.stop.hold_resistance")
	stopPullCurrent = coil("pull", "current that pulls the stop solenoid in", "fuel.stop.pull_resistance")
)
