package hydraulics

import (
	"trialfit/internal/figures"
	"trialfit/internal/figures/fluid"
	"trialfit/internal/quantity"
)

// Bounds of clutch actuation, and nothing that is only a slip of the unit.
var (
	pedalBounds = figures.Bounds{Low: 0.02, High: 0.4}  // m
	pedalRatios = figures.Bounds{Low: 1, High: 20}      // pad over stroke
	loadBounds  = figures.Bounds{Low: 50, High: 20_000} // N
	forkRatios  = figures.Bounds{Low: 0.5, High: 10}    // slave over bearing
)

// VolumetricEfficiency is what reaches the slave cylinder of the fluid that the
// master displaces: hoses swell and seals give (common practice).
const VolumetricEfficiency = 0.95

// SlaveTravel is the travel in m of a slave cylinder, from the stroke of the
// master cylinder in m and both bores in one unit, without loss.
func SlaveTravel(stroke, master, slave float64) float64 {
	return stroke * master * master / (slave * slave)
}

const travelFormula = "s = 0.95·(pedal travel / pedal ratio)·(master bore / slave bore)²"

// masters are the bores that clutch master cylinders are sold in: common
// practice, from memory.
var masters = &figures.Series{Title: "clutch master cylinder, bore", Sizes: []figures.Size{
	{Label: "5/8 in", SI: 0.625 * inch}, {Label: "0.70 in", SI: 0.7 * inch}, {Label: "3/4 in", SI: 0.75 * inch},
	{Label: "13/16 in", SI: 0.8125 * inch}, {Label: "7/8 in", SI: 0.875 * inch}, {Label: "15/16 in", SI: 0.9375 * inch},
	{Label: "1 in", SI: inch},
}}

const inch = 0.0254 // m

func pedalRatio() figures.Input {
	return figures.Input{Name: "ip", Path: "hydraulics.clutch.pedal_ratio", Direction: figures.Falling, Valid: pedalRatios}
}

func slaveBore() figures.Input {
	return figures.Input{Name: "ds", Path: "hydraulics.clutch.slave_bore", Direction: figures.Falling, Valid: boreBounds}
}

var travelInputs = []figures.Input{
	{Name: "sp", Path: "hydraulics.clutch.pedal_travel", Direction: figures.Rising, Valid: pedalBounds},
	pedalRatio(),
	{Name: "dm", Path: "hydraulics.clutch.master_bore", Direction: figures.Rising, Valid: boreBounds, Series: masters},
	slaveBore(),
}

var displaced = figures.Source{
	Title: "equal volumes in master and slave cylinder; 0.95 for swelling hoses by common practice",
	URL:   "http://ftp.team.net/mharc/archives/html/spridgets/2010-01/msg00051.html",
	Basis: "physics",
}

var slaveTravel = &figures.Figure{
	ID:      "hydraulics.slave_travel",
	Title:   "travel of the clutch slave cylinder",
	Symbol:  "s",
	Kind:    quantity.Length,
	Formula: travelFormula,
	Inputs:  travelInputs,
	Source:  displaced,
	Compute: travel,
}

// ReleaseMargin is the travel of a slave cylinder against the travel that
// releases the clutch, both in one unit; 1 is just enough.
func ReleaseMargin(travel, need float64) float64 { return travel / need }

var releaseMargin = &figures.Figure{
	ID:      "hydraulics.release_margin",
	Title:   "slave travel against what releases the clutch",
	Symbol:  "s/sn",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: travelFormula + "; s / travel needed",
	Inputs: append(travelInputs[:4:4],
		figures.Input{Name: "sn", Path: "hydraulics.clutch.slave_need", Direction: figures.Falling, Valid: travelBounds}),
	Source:  displaced,
	Compute: func(a figures.Args) float64 { return ReleaseMargin(travel(a), a.At("sn")) },
}

func travel(a figures.Args) float64 {
	return VolumetricEfficiency * SlaveTravel(a.At("sp")/a.At("ip"), a.At("dm"), a.At("ds"))
}

// PedalForce is the force in N on a pedal that opens a clutch, from the load on
// its release bearing in N, both bores in one unit, and the ratios of fork and
// pedal. Friction, some 10 %, comes on top of it.
func PedalForce(load, master, slave, fork, pedal float64) float64 {
	return load / fork * master * master / (slave * slave) / pedal
}

// releaseLoad is what the slave works against.
var releaseLoad = []figures.Input{
	{Name: "F", Path: "hydraulics.clutch.release_load", Direction: figures.Rising, Valid: loadBounds},
	{Name: "if", Path: "hydraulics.clutch.fork_ratio", Direction: figures.Falling, Valid: forkRatios},
	slaveBore(),
}

var levers = figures.Source{
	Title: "levers and one pressure in master and slave cylinder, without friction",
	URL:   "http://www.cordonline.net/michigan/b/b_21.htm",
	Basis: "physics",
}

var pedalForce = &figures.Figure{
	ID:      "hydraulics.pedal_force",
	Title:   "force on the clutch pedal",
	Symbol:  "Fp",
	Kind:    quantity.Force,
	Unit:    "N",
	Formula: "Fp = F/if·(dm/ds)²/ip, F release load, if fork ratio, dm master bore, ds slave bore, ip pedal ratio; friction not included",
	Inputs: append(releaseLoad[:3:3],
		figures.Input{Name: "dm", Path: "hydraulics.clutch.master_bore", Direction: figures.Rising, Valid: boreBounds},
		pedalRatio()),
	Source: levers,
	Compute: func(a figures.Args) float64 {
		return PedalForce(a.At("F"), a.At("dm"), a.At("ds"), a.At("if"), a.At("ip"))
	},
}

// LinePressure is the pressure in Pa that a force in N raises on a piston of a
// bore in m.
func LinePressure(force, bore float64) float64 { return force / fluid.PipeArea(bore) }

const pressureFormula = "p = F/if/(π/4·ds²), F release load, if fork ratio, ds slave bore"

var linePressure = &figures.Figure{
	ID:      "hydraulics.line_pressure",
	Title:   "pressure in the clutch line with the clutch open",
	Symbol:  "p",
	Kind:    quantity.GaugePressure,
	Unit:    "bar",
	Formula: pressureFormula,
	Inputs:  releaseLoad,
	Source:  levers,
	Compute: pressure,
}

var linePressureUse = &figures.Figure{
	ID:      "hydraulics.line_pressure_use",
	Title:   "pressure in the clutch line against what hose and slave bear",
	Symbol:  "p/p max",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "p/pressure allowed, " + pressureFormula,
	Inputs: append(releaseLoad[:3:3],
		figures.Input{Name: "p max", Path: "hydraulics.clutch.pressure_limit", Direction: figures.Falling, Valid: pressureBounds}),
	Source:  levers,
	Compute: func(a figures.Args) float64 { return pressure(a) / a.At("p max") },
}

func pressure(a figures.Args) float64 { return LinePressure(a.At("F")/a.At("if"), a.At("ds")) }
