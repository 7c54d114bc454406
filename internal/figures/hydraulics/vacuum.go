package hydraulics

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// Atmosphere is the standard pressure of air at sea level in Pa. At 1500 m it
// is a sixth less, and so is the best vacuum to be had.
const Atmosphere = 101_325

// Bounds of brake vacuum, and nothing that is only a slip of the unit.
var (
	vacuumBounds = figures.Bounds{Low: 1_000, High: 100_000} // Pa below the surrounding air
	volumeBounds = figures.Bounds{Low: 0.1e-3, High: 0.2}    // m³
	pumpBounds   = figures.Bounds{Low: 0.01e-3, High: 0.1}   // m³/s
)

func level(d figures.Direction) figures.Input {
	return figures.Input{Name: "Δp", Path: "vacuum.level", Direction: d, Valid: vacuumBounds}
}

// VacuumMargin is a vacuum against the vacuum that a consumer needs, both in
// one unit; 1 is just enough.
func VacuumMargin(level, need float64) float64 { return level / need }

var vacuumMargin = &figures.Figure{
	ID:      "hydraulics.vacuum_margin",
	Title:   "vacuum against what the consumer needs",
	Symbol:  "Δp/Δpn",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Per:     "vacuum.consumers",
	Formula: "vacuum at idle / vacuum needed",
	Inputs: []figures.Input{
		level(figures.Rising),
		{Name: "Δpn", Path: "vacuum.consumers.*.need", Direction: figures.Falling, Valid: vacuumBounds},
	},
	Source:  figures.Source{Title: "the consumer's need by its maker", Basis: "manufacturer"},
	Compute: func(a figures.Args) float64 { return VacuumMargin(a.At("Δp"), a.At("Δpn")) },
}

// PumpDownTime is the time in s that a pump of constant speed in m³/s takes to
// bring a volume in m³ from one absolute pressure down to another, in one unit.
func PumpDownTime(volume, speed, from, to float64) float64 {
	return volume / speed * math.Log(from/to)
}

var pumpDownTime = &figures.Figure{
	ID:      "hydraulics.pump_down_time",
	Title:   "time to pump the brake vacuum down",
	Symbol:  "t",
	Kind:    quantity.Time,
	Unit:    "s",
	Formula: "t = (V/S)·ln(p1/p2), p1 = 101.325 kPa, p2 = p1 − vacuum at idle; tight lines, pump speed constant",
	Inputs: []figures.Input{
		{Name: "V", Path: "vacuum.volume", Direction: figures.Rising, Valid: volumeBounds},
		{Name: "S", Path: "vacuum.pump_speed", Direction: figures.Falling, Valid: pumpBounds},
		level(figures.Rising),
	},
	Source: figures.Source{
		Title: "evacuation of a tight vessel by a pump of constant speed",
		URL:   "https://www.vacuum-guide.com/english/vacuum_units/evacuation_time_vacuum_pump_sizing.htm",
		Basis: "physics",
	},
	Compute: func(a figures.Args) float64 {
		return PumpDownTime(a.At("V"), a.At("S"), Atmosphere, Atmosphere-a.At("Δp"))
	},
}
