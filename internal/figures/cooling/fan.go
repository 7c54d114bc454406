package cooling

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

func fanDiameter(d figures.Direction) figures.Input {
	return in("D", "cooling.fan_diameter", d, fanBounds)
}

// driven are the inputs of the speed of a fan on the crankshaft's belt.
func driven() []figures.Input {
	return []figures.Input{
		in("n", "engine.governed_speed", figures.Rising, speedBounds),
		in("i", "cooling.fan_ratio", figures.Rising, ratioBounds),
	}
}

func turns(a figures.Args) float64 { return a.At("n") * a.At("i") }

const fanFormula = "nf = governed speed × fan ratio, clutch locked"

var belt = figures.Source{Title: "a belt that does not slip", Basis: "physics"}

var fanSpeed = &figures.Figure{
	ID:      "cooling.fan_speed",
	Title:   "highest speed of the fan",
	Symbol:  "nf",
	Kind:    quantity.RotationalSpeed,
	Unit:    "rpm",
	Formula: fanFormula,
	Inputs:  driven(),
	Source:  belt,
	Compute: turns,
}

var fanSpeedUse = &figures.Figure{
	ID:      "cooling.fan_speed_use",
	Title:   "speed of the fan against its limit",
	Symbol:  "nf/nf max",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: fanFormula + "; nf / highest speed that the fan's maker allows",
	Inputs:  append(driven(), in("nf max", "cooling.fan_speed_limit", figures.Falling, speedBounds)),
	Source:  figures.Source{Title: "the fan's label or its maker's data sheet", Basis: "manufacturer"},
	Compute: func(a figures.Args) float64 { return turns(a) / a.At("nf max") },
}

// TipSpeed is the speed in m/s of the tips of a fan that turns at a speed in
// rad/s, from its diameter in m.
func TipSpeed(speed, diameter float64) float64 { return speed * diameter / 2 }

var fanTipSpeed = &figures.Figure{
	ID:      "cooling.fan_tip_speed",
	Title:   "speed of the fan's tips",
	Symbol:  "u",
	Kind:    quantity.Speed,
	Unit:    "m/s",
	Formula: fanFormula + "; u = π·D·nf",
	Inputs:  append(driven(), fanDiameter(figures.Rising)),
	Source: figures.Source{
		Title: "speed at the rim of a circle",
		URL:   "https://calculator.academy/fan-wind-speed-calculator/",
		Basis: "physics",
	},
	Compute: func(a figures.Args) float64 { return TipSpeed(turns(a), a.At("D")) },
}

// share is a distance against the diameter of the fan.
func share(id, title, symbol, path string) *figures.Figure {
	return &figures.Figure{
		ID:      "cooling." + id,
		Title:   title,
		Symbol:  symbol,
		Kind:    quantity.Ratio,
		Unit:    "%",
		Formula: "distance / diameter of the fan",
		Inputs:  []figures.Input{in("x", path, figures.Rising, gapBounds), fanDiameter(figures.Falling)},
		Source: figures.Source{
			Title: "a fan maker's clearances: 1 in before and behind the fan, 3/4 in at the tips where engine and shroud move apart",
			URL:   "https://www.americancooling.com/fan-selection-process/",
			Basis: "manufacturer",
		},
		Compute: func(a figures.Args) float64 { return a.At("x") / a.At("D") },
	}
}

var (
	fanToCore    = share("fan_to_core_share", "distance of the fan from the core, of its diameter", "x/D", "cooling.fan_to_core")
	tipClearance = share("tip_clearance_share", "distance of the tips from the shroud, of the diameter", "t/D", "cooling.tip_clearance")
)
