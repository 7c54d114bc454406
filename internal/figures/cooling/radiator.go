package cooling

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// How the hottest day and the coolant's limit pull on a figure that grows with
// the difference between them (d), or falls with it.
func hottest(up, down figures.Direction) []figures.Input {
	return []figures.Input{
		in("Tc", "cooling.top_limit", up, coolantBounds),
		in("Ta", "registration.ambient", down, ambientBounds),
		in("ΔTp", "cooling.air_preheat", down, preheatBounds),
	}
}

// tested are capacity and inlet difference of the radiator as its maker gives them.
func tested(capacity, difference figures.Direction) []figures.Input {
	return []figures.Input{
		in("Q1", "cooling.radiator_capacity", capacity, heatBounds),
		in("ΔT1", "cooling.radiator_difference", difference, differenceBounds),
	}
}

// InletDifference is how much hotter coolant enters a radiator than air does,
// in K, from the temperature of the coolant, that of the surrounding air and
// how much warmer the air is at the core, all in K.
func InletDifference(coolant, ambient, preheat float64) float64 { return coolant - ambient - preheat }

func onHottestDay(a figures.Args) float64 {
	return InletDifference(a.At("Tc"), a.At("Ta"), a.At("ΔTp"))
}

// RadiatorCapacity is the heat in W that a radiator sheds at an inlet
// difference in K, from its capacity in W at another one; both flows unchanged.
func RadiatorCapacity(tested, testedAt, difference float64) float64 {
	return tested * difference / testedAt
}

func shed(a figures.Args) float64 {
	return RadiatorCapacity(a.At("Q1"), a.At("ΔT1"), onHottestDay(a))
}

const (
	hotDay      = "ΔT2 = highest coolant temperature − hottest day − preheated air"
	scaling     = "Q2 = Q1·ΔT2/ΔT1, " + hotDay + "; coolant and air flow as tested"
	leastBudget = 1 // K between coolant and air, below which nothing is shed
)

var proportional = figures.Source{
	Title: "heat in proportion to the inlet temperature difference at equal flows: cooler curves are drawn for one difference",
	URL:   "https://azmanual.top/manuals/574307/thermal-transfer-systems-oca-series.html?page=4",
	Basis: "manufacturer",
}

var difference = []figures.Condition{{Figure: inletDifference, Valid: figures.Bounds{Low: leastBudget, High: 200}}}

var inletDifference = &figures.Figure{
	ID:      "cooling.inlet_difference",
	Title:   "coolant above the radiator's air, hottest day",
	Symbol:  "ΔT2",
	Kind:    quantity.TemperatureDifference,
	Unit:    "K",
	Formula: hotDay,
	Inputs:  hottest(figures.Rising, figures.Falling),
	Source:  figures.Source{Title: "definition of the inlet temperature difference", Basis: "physics"},
	Compute: onHottestDay,
}

var radiatorCapacity = &figures.Figure{
	ID:         "cooling.radiator_capacity_hot",
	Title:      "heat the radiator sheds on the hottest day",
	Symbol:     "Q2",
	Kind:       quantity.Power,
	Unit:       "kW",
	Formula:    scaling,
	Inputs:     append(tested(figures.Rising, figures.Falling), hottest(figures.Rising, figures.Falling)...),
	Conditions: difference,
	Source:     proportional,
	Compute:    shed,
}

var radiatorUse = &figures.Figure{
	ID:      "cooling.radiator_use",
	Title:   "maker's heat against the radiator, hottest day",
	Symbol:  "Q/Q2",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: scaling + "; heat to the coolant by the data sheet / Q2",
	Inputs: append(append(tested(figures.Falling, figures.Rising), hottest(figures.Falling, figures.Rising)...),
		heat(figures.Rising)),
	Conditions: difference,
	Source:     proportional,
	Compute:    func(a figures.Args) float64 { return a.At("Q") / shed(a) },
}

var radiatorUseByShare = &figures.Figure{
	ID:      "cooling.radiator_use_by_share",
	Title:   "heat by rule of thumb against the radiator, hottest day",
	Symbol:  "Q/Q2",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: scaling + "; share × rated power / Q2",
	Inputs: append(append(tested(figures.Falling, figures.Rising), hottest(figures.Falling, figures.Rising)...),
		byShare(figures.Rising)...),
	Conditions: difference,
	Source:     proportional,
	Compute:    func(a figures.Args) float64 { return heatShared(a) / shed(a) },
}

var limitingAmbientByRadiator = &figures.Figure{
	ID:      "cooling.limiting_ambient_by_radiator",
	Title:   "hottest air the radiator can stand, by its capacity",
	Symbol:  "Ta max",
	Kind:    quantity.Temperature,
	Unit:    "°C",
	Formula: "Ta max = highest coolant temperature − preheated air − ΔT1·Q/Q1",
	Inputs: append(tested(figures.Rising, figures.Falling),
		in("Tc", "cooling.top_limit", figures.Rising, coolantBounds),
		in("ΔTp", "cooling.air_preheat", figures.Falling, preheatBounds),
		heat(figures.Falling)),
	Source: proportional,
	Compute: func(a figures.Args) float64 {
		return a.At("Tc") - a.At("ΔTp") - a.At("ΔT1")*a.At("Q")/a.At("Q1")
	},
}
