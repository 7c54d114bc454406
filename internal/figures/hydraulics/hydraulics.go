// Package hydraulics holds the figures of a clutch worked by fluid and of the
// vacuum that assists brakes.
package hydraulics

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// Figures returns every figure of the discipline.
func Figures() []*figures.Figure {
	return []*figures.Figure{slaveTravel, releaseMargin, vacuumMargin, pumpDownTime}
}

// Bounds of clutch actuation, and nothing that is only a slip of the unit.
var (
	pedalBounds  = figures.Bounds{Low: 0.02, High: 0.4}  // m
	pedalRatios  = figures.Bounds{Low: 1, High: 20}      // pad over stroke
	boreBounds   = figures.Bounds{Low: 0.005, High: 0.1} // m
	travelBounds = figures.Bounds{Low: 0.001, High: 0.2} // m
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

var travelInputs = []figures.Input{
	{Name: "sp", Path: "hydraulics.clutch.pedal_travel", Direction: figures.Rising, Valid: pedalBounds},
	{Name: "ip", Path: "hydraulics.clutch.pedal_ratio", Direction: figures.Falling, Valid: pedalRatios},
	{Name: "dm", Path: "hydraulics.clutch.master_bore", Direction: figures.Rising, Valid: boreBounds},
	{Name: "ds", Path: "hydraulics.clutch.slave_bore", Direction: figures.Falling, Valid: boreBounds},
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
