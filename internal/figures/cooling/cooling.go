// Package cooling holds the figures of the coolant circuit: the heat the engine
// gives to it, what the radiator sheds on the hottest day, when the coolant
// boils, and the air, fan and hoses that belong to it.
package cooling

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// Figures returns every figure of the discipline.
func Figures() []*figures.Figure {
	return []*figures.Figure{
		heatByShare, heatRatio,
		temperatureRise, flowNeeded, upperHoseSpeed, lowerHoseSpeed, heaterHoseStretch,
		inletDifference, radiatorCapacity, radiatorUse, radiatorUseByShare, limitingAmbientByRadiator,
		topTankRise, limitingAmbient, boilingPoint, boilMargin, airToBoil,
		airFlowNeeded, faceSpeed, fanFlowUse,
		fanSpeed, fanTipSpeed, fanSpeedUse, fanToCore, tipClearance, fanCoverage, shroudCoverage,
		expansion, expansionUse, expansionShare,
	}
}

// Bounds of road vehicles, and nothing that is only a slip of the unit.
var (
	hoseBounds       = figures.Bounds{Low: 0.004, High: 0.06}      // m, from a bleed line to a lorry's heater
	pipeBounds       = figures.Bounds{Low: 0.015, High: 0.15}      // m
	heatBounds       = figures.Bounds{Low: 1_000, High: 1_000_000} // W
	shareBounds      = figures.Bounds{Low: 0.1, High: 2}           // of rated power
	flowBounds       = figures.Bounds{Low: 0.05e-3, High: 30e-3}   // m³/s of coolant
	glycolBounds     = figures.Bounds{Low: 0, High: 0.6}           // engine makers allow no more
	differenceBounds = figures.Bounds{Low: 1, High: 150}           // K
	preheatBounds    = figures.Bounds{Low: 0, High: 60}            // K
	coolantBounds    = figures.Bounds{Low: 313.15, High: 423.15}   // K: 40 to 150 °C
	ambientBounds    = figures.Bounds{Low: 233.15, High: 333.15}   // K: −40 to 60 °C
	capBounds        = figures.Bounds{Low: 0, High: 250_000}       // Pa above the surrounding air
	altitudeBounds   = figures.Bounds{Low: -450, High: 6_000}      // m, from the lowest road to the highest
	coreBounds       = figures.Bounds{Low: 0.1, High: 2.5}         // m
	fanBounds        = figures.Bounds{Low: 0.1, High: 1.5}         // m
	gapBounds        = figures.Bounds{Low: 0, High: 0.5}           // m
	ratioBounds      = figures.Bounds{Low: 0.2, High: 4}           // turns for one
	speedBounds      = figures.Bounds{Low: 20, High: 1_000}        // rad/s: 190 to 9500 rpm
	airFlowBounds    = figures.Bounds{Low: 0.01, High: 50}         // m³/s
	volumeBounds     = figures.Bounds{Low: 0.5e-3, High: 0.2}      // m³
	spaceBounds      = figures.Bounds{Low: 0.01e-3, High: 0.05}    // m³
)

// Inputs that several figures share.

func in(name, path string, d figures.Direction, valid figures.Bounds) figures.Input {
	return figures.Input{Name: name, Path: path, Direction: d, Valid: valid}
}

func heat(d figures.Direction) figures.Input { return in("Q", "cooling.heat_rejection", d, heatBounds) }

// byShare are the two inputs of the heat by rule.
func byShare(d figures.Direction) []figures.Input {
	return []figures.Input{
		in("s", "cooling.heat_share", d, shareBounds), in("P", "engine.rated_power", d, heatBounds),
	}
}

func heatShared(a figures.Args) float64 { return HeatByShare(a.At("P"), a.At("s")) }

// HeatByShare is the heat in W that an engine gives to its coolant, from its
// rated power in W and the share that its type gives.
func HeatByShare(power, share float64) float64 { return share * power }

var heatByShare = &figures.Figure{
	ID:      "cooling.heat_by_share",
	Title:   "heat to the coolant by rule of thumb",
	Symbol:  "Q",
	Kind:    quantity.Power,
	Unit:    "kW",
	Formula: "Q = share × rated power; the share by the engine's type, where the maker prints no heat",
	Inputs:  byShare(figures.Rising),
	Source: figures.Source{
		Title: "shares of rated power by type of engine, from memory; the maker's data sheet comes first",
		Basis: "memory",
	},
	Compute: heatShared,
}

var heatRatio = &figures.Figure{
	ID:      "cooling.heat_ratio",
	Title:   "maker's heat to the coolant against rated power",
	Symbol:  "Q/P",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "heat to the coolant by the data sheet / rated power; most engines lie between 45 and 110 %",
	Inputs:  []figures.Input{heat(figures.Rising), in("P", "engine.rated_power", figures.Falling, heatBounds)},
	Source:  figures.Source{Title: "the engine maker's data sheet", Basis: "manufacturer"},
	Compute: func(a figures.Args) float64 { return a.At("Q") / a.At("P") },
}

// HoseStretch is the outside diameter of a spigot over the inside diameter of
// the hose on it, in one unit; below 1 the hose is loose.
func HoseStretch(spigot, hose float64) float64 { return spigot / hose }

var heaterHoseStretch = &figures.Figure{
	ID:      "cooling.heater_hose_stretch",
	Title:   "spigot of the heater against its hose",
	Symbol:  "D/d",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "outside diameter of the spigot / inside diameter of the hose",
	Inputs: []figures.Input{
		in("D", "cooling.heater_port", figures.Rising, hoseBounds),
		in("d", "cooling.heater_hose", figures.Falling, hoseBounds),
	},
	Source:  figures.Source{Title: "hose and spigot of one size, heater hose 5/8 in", Basis: "common-practice"},
	Compute: func(a figures.Args) float64 { return HoseStretch(a.At("D"), a.At("d")) },
}
