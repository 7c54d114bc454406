// Package approval holds the figures that authorities decide by: the age of the
// vehicle, how far the engine departs from what the maker offered, smoke in
// either measure.
package approval

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// Figures returns every figure of the discipline.
func Figures() []*figures.Figure {
	return []*figures.Figure{
		ageByModelYear, ageSinceBuilt, ageSinceRegistered, engineYearLead, emissionStageLead,
		displacementChange, powerChange, torqueChange,
		displacementOverOption, powerOverOption, torqueOverOption,
		displacementPerMass,
		opacity, smokeCoefficient, smokePlateUse, noiseOverReference,
		identityPoints,
	}
}

// Bounds of road vehicles, and nothing that is only a slip of the unit.
var (
	displacementBounds = figures.Bounds{Low: 0.1e-3, High: 30e-3} // m³
	powerBounds        = figures.Bounds{Low: 1_000, High: 2e6}    // W
	torqueBounds       = figures.Bounds{Low: 10, High: 10_000}    // N·m
	massBounds         = figures.Bounds{Low: 200, High: 40_000}   // kg
)

var definition = figures.Source{Title: "definition", Basis: "physics"}

// Change is how far a value departs from an earlier one, as a share of it:
// 0.2 for a fifth more.
func Change(now, before float64) float64 { return now/before - 1 }

// change compares the engine that goes in with the one that comes out.
func change(id, title, now, before string, valid figures.Bounds) *figures.Figure {
	return &figures.Figure{
		ID:      "approval." + id,
		Title:   title,
		Symbol:  "Δ",
		Kind:    quantity.Ratio,
		Unit:    "%",
		Formula: "Δ = new / old − 1",
		Inputs: []figures.Input{
			{Name: "new", Path: now, Direction: figures.Rising, Valid: valid},
			{Name: "old", Path: before, Direction: figures.Falling, Valid: valid},
		},
		Source:  definition,
		Compute: func(a figures.Args) float64 { return Change(a.At("new"), a.At("old")) },
	}
}

var (
	displacementChange = change("displacement_change", "displacement against that of the engine that comes out",
		"engine.displacement", "outgoing_engine.displacement", displacementBounds)
	powerChange = change("power_change", "rated power against that of the engine that comes out",
		"engine.rated_power", "outgoing_engine.rated_power", powerBounds)
	torqueChange = change("torque_change", "peak torque against that of the engine that comes out",
		"engine.peak_torque", "outgoing_engine.peak_torque", torqueBounds)
)

// OverOption is a value against the highest that the maker offered, as a share
// of it: 1 is just as much. It panics without an offer.
func OverOption(now float64, offered []float64) float64 {
	most := offered[0]
	for _, o := range offered[1:] {
		most = max(most, o)
	}
	return now / most
}

// overOption compares the engine that goes in with the largest of the chassis line.
func overOption(id, title, now, field string, valid figures.Bounds) *figures.Figure {
	return &figures.Figure{
		ID:      "approval." + id,
		Title:   title,
		Symbol:  "x",
		Kind:    quantity.Ratio,
		Unit:    "%",
		Formula: "x = new / highest among the engines offered in this chassis line",
		Inputs: []figures.Input{
			{Name: "new", Path: now, Direction: figures.Rising, Valid: valid},
			{Name: "offered", Path: "chassis.engine_options.*." + field, Direction: figures.Falling, Valid: valid, NonEmpty: true},
		},
		Source:  definition,
		Compute: func(a figures.Args) float64 { return OverOption(a.At("new"), a.Column("offered")) },
	}
}

var (
	displacementOverOption = overOption("displacement_over_option", "displacement against the largest engine offered",
		"engine.displacement", "displacement", displacementBounds)
	powerOverOption = overOption("power_over_option", "rated power against the strongest engine offered",
		"engine.rated_power", "rated_power", powerBounds)
	torqueOverOption = overOption("torque_over_option", "peak torque against the strongest engine offered",
		"engine.peak_torque", "peak_torque", torqueBounds)
)

const cubicCentimetre = 1e-6 // m³

// DisplacementPerMass is the swept volume in cm³ for each kg of the model's
// original mass, from m³ and kg.
func DisplacementPerMass(displacement, mass float64) float64 {
	return displacement / cubicCentimetre / mass
}

var displacementPerMass = &figures.Figure{
	ID:      "approval.displacement_per_mass",
	Title:   "displacement in cm³ for each kg of the model's original mass",
	Symbol:  "f",
	Kind:    quantity.Ratio,
	Formula: "f = displacement in cm³ / original mass in kg",
	Inputs: []figures.Input{
		{Name: "V", Path: "engine.displacement", Direction: figures.Rising, Valid: displacementBounds},
		{Name: "m", Path: "chassis.original_mass", Direction: figures.Falling, Valid: massBounds},
	},
	Source: figures.Source{
		Title: "form of table LA1 of the Australian code of practice for light vehicle modifications (VSB 14), as two owners' forums report it",
		URL:   "https://mx5.net.au/viewtopic.php?p=913695",
		Basis: "memory",
	},
	Compute: func(a figures.Args) float64 { return DisplacementPerMass(a.At("V"), a.At("m")) },
}
