package fuel

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// Burn is the volume flow of fuel in m³/s that an engine burns, from its
// specific consumption in kg/J, its power in W and the density of the fuel in
// kg/m³.
func Burn(specific, power, density float64) float64 { return specific * power / density }

var consumed = figures.Source{
	Title: "definition of specific fuel consumption",
	URL:   "https://calculator7.snowdaycalculatornow.com/how-to-calculate-fuel-consumption-of-diesel-engine-per-hour/",
	Basis: "physics",
}

func density(d figures.Direction) figures.Input {
	return figures.Input{Name: "ρ", Path: "fuel.density", Direction: d, Valid: densityBounds}
}

// fullLoad is what the burn at rated power follows from.
func fullLoad(density figures.Input) []figures.Input {
	return []figures.Input{
		{Name: "b", Path: "fuel.consumption_full", Direction: figures.Rising, Valid: specificBounds},
		{Name: "P", Path: "engine.rated_power", Direction: figures.Rising, Valid: powerBounds},
		density,
	}
}

var cruise = []figures.Input{
	{Name: "b", Path: "fuel.consumption_cruise", Direction: figures.Rising, Valid: specificBounds},
	{Name: "P", Path: "fuel.cruise_power", Direction: figures.Rising, Valid: powerBounds},
	density(figures.Falling),
}

func burn(a figures.Args) float64 { return Burn(a.At("b"), a.At("P"), a.At("ρ")) }

var fullLoadBurn = &figures.Figure{
	ID:      "fuel.full_load_burn",
	Title:   "fuel burnt at full load",
	Symbol:  "Q",
	Kind:    quantity.VolumeFlow,
	Unit:    "L/h",
	Formula: "Q = b·P/ρ, b specific consumption at full load, P rated power, ρ density of the fuel",
	Inputs:  fullLoad(density(figures.Falling)),
	Source:  consumed,
	Compute: burn,
}

var cruiseBurn = &figures.Figure{
	ID:      "fuel.cruise_burn",
	Title:   "fuel burnt at cruise",
	Symbol:  "Q",
	Kind:    quantity.VolumeFlow,
	Unit:    "L/h",
	Formula: "Q = b·P/ρ, b specific consumption and P power at cruise, ρ density of the fuel",
	Inputs:  cruise,
	Source:  consumed,
	Compute: burn,
}

// PerDistance is the fuel for a distance in m³/m, from the flow in m³/s and the
// road speed in m/s.
func PerDistance(flow, speed float64) float64 { return flow / speed }

var cruiseConsumption = &figures.Figure{
	ID:      "fuel.cruise_consumption",
	Title:   "fuel for a distance at cruise",
	Symbol:  "q",
	Kind:    quantity.VolumePerDistance,
	Unit:    "L/100 km",
	Formula: "q = b·P/(ρ·v), b specific consumption and P power at cruise, v cruising speed, ρ density of the fuel",
	Inputs: append(cruise[:3:3],
		figures.Input{Name: "v", Path: "fuel.cruise_speed", Direction: figures.Falling, Valid: speedBounds}),
	Source:  consumed,
	Compute: func(a figures.Args) float64 { return PerDistance(burn(a), a.At("v")) },
}

// Range is the distance in m that a volume of fuel in m³ leads, from the fuel
// for a distance in m³/m.
func Range(volume, perDistance float64) float64 { return volume / perDistance }

var tankRange = &figures.Figure{
	ID:      "fuel.range",
	Title:   "range of the tank",
	Symbol:  "s",
	Kind:    quantity.Length,
	Unit:    "km",
	Formula: "s = V/q, V usable volume of the tank, q consumption on the road",
	Inputs: []figures.Input{
		{Name: "V", Path: "fuel.tank_capacity", Direction: figures.Rising, Valid: capacityBounds},
		{Name: "q", Path: "fuel.consumption", Direction: figures.Falling, Valid: consumptionBounds},
	},
	Source: figures.Source{
		Title: "definition of consumption by distance",
		URL:   "https://www.utilitysmarts.com/automobile/diesel/how-to-calculate-fuel-consumption-of-a-diesel-engine/",
		Basis: "physics",
	},
	Compute: func(a figures.Args) float64 { return Range(a.At("V"), a.At("q")) },
}
