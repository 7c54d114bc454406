package electrical

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// celsius is 0 °C in K.
const celsius = 273.15

// column is that of carried for insulation rated for a temperature in K: the
// highest class that is not higher.
func column(insulation float64) int {
	i := 0
	for i+1 < len(insulationClasses) && insulation >= insulationClasses[i+1]+celsius-sameSize {
		i++
	}
	return i
}

// BundleFactor is the share of its current that each of some conductors in a
// bundle may carry, when they all carry current.
func BundleFactor(conductors float64) float64 {
	switch {
	case conductors < 3:
		return 1
	case conductors < 4:
		return 0.7
	case conductors < 7:
		return 0.6
	case conductors < 25:
		return 0.5
	}
	return 0.4
}

// DeratedAmpacity is the current in A that a copper conductor of a section in m²
// may carry with insulation rated for a temperature in K, between 60 and 200 °C,
// as one of so many conductors in a bundle. Below the table it is 0.
func DeratedAmpacity(area, insulation float64, engineBay bool, conductors float64) float64 {
	i, class := row(area), column(insulation)
	if i < 0 {
		return 0
	}
	current := carried[i].byClass[class] * BundleFactor(conductors)
	if engineBay {
		current *= inEngineBay[class]
	}
	return current
}

var deratedTable = figures.Source{
	Title: "33 CFR 183.425, Table 5, with its factors for engine spaces; those for bundles as its note 2 has them from 50 V upwards",
	URL:   "http://federal.elaws.us/cfr/title-33/section-183.425",
	Basis: "standard",
}

const deratedFormula = "current of the largest tabulated AWG size that is no larger than the conductor, by class of its insulation " +
	"× factor of the engine bay (0.58 at 60 °C to 1 at 200 °C) × factor of the bundle (3: 0.7, 4 to 6: 0.6, 7 to 24: 0.5, more: 0.4)"

var (
	insulationBounds = figures.Bounds{Low: 60 + celsius, High: 250 + celsius} // K
	bundleBounds     = figures.Bounds{Low: 1, High: 500}                      // conductors
)

func deratedInputs(area, insulation, bundle figures.Direction) []figures.Input {
	return with(ampacityInputs(area),
		figures.Input{Name: "Ti", Path: circuits + ".*.insulation", Direction: insulation, Valid: insulationBounds},
		figures.Input{Name: "N", Path: circuits + ".*.bundle", Direction: bundle, Valid: bundleBounds},
	)
}

var ampacityDerated = &figures.Figure{
	ID:      "electrical.ampacity_derated",
	Title:   "current a circuit's conductor may carry in its bundle, by its insulation",
	Symbol:  "Iz'",
	Kind:    quantity.Current,
	Per:     circuits,
	Formula: "Iz' = " + deratedFormula,
	Inputs:  deratedInputs(figures.Rising, figures.Rising, figures.Falling),
	Source:  deratedTable,
	Compute: derated,
}

var ampacityDeratedUse = &figures.Figure{
	ID:      "electrical.ampacity_derated_use",
	Title:   "fuse against what the conductor may carry in its bundle",
	Symbol:  "In/Iz'",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Per:     circuits,
	Formula: "rating of the fuse / Iz', Iz' = " + deratedFormula,
	Inputs:  with(deratedInputs(figures.Falling, figures.Falling, figures.Rising), fuse(nil)),
	Source:  deratedTable,
	Compute: func(a figures.Args) float64 { return a.At("In") / derated(a) },
}

func derated(a figures.Args) float64 {
	return DeratedAmpacity(a.At("A"), a.At("Ti"), inBay(a), a.At("N"))
}

// Air around conductors in K: outside the engine bay and inside, as in 33 CFR
// 183.425.
const (
	outsideAir   = 30 + celsius
	engineBayAir = 50 + celsius
)

// ConductorTemperature is that in K of a copper conductor of a section in m²
// that carries a current in A as one of so many conductors. Its rise above the
// air goes with the square of the current, and is known at the current that
// brings insulation rated for a temperature in K to its limit.
func ConductorTemperature(area, insulation float64, engineBay bool, conductors, current float64) float64 {
	class := insulationClasses[column(insulation)] + celsius
	rise := (class - outsideAir) * math.Pow(current/DeratedAmpacity(area, insulation, false, conductors), 2)
	if engineBay {
		return engineBayAir + rise
	}
	return outsideAir + rise
}

const temperatureFormula = "air (30 °C, in the engine bay 50 °C) + (class − 30 °C)·(I/Iz')², class of the insulation, " +
	"I steady current, Iz' current of the class in air of 30 °C in its bundle"

// The classes step by other shares than their currents, so insulation has no
// direction.
var temperatureInputs = with(deratedInputs(figures.Falling, figures.Either, figures.Rising), circuitCurrent(figures.Rising))

var conductorTemperature = &figures.Figure{
	ID:      "electrical.conductor_temperature",
	Title:   "temperature of a circuit's conductor",
	Symbol:  "Tc",
	Kind:    quantity.Temperature,
	Unit:    "°C",
	Per:     circuits,
	Formula: "Tc = " + temperatureFormula,
	Inputs:  temperatureInputs,
	Source:  figures.Source{Title: "heat from I²·R against the rise that 33 CFR 183.425 rates the conductor by", URL: deratedTable.URL, Basis: "physics"},
	Compute: hot,
}

var insulationMargin = &figures.Figure{
	ID:      "electrical.insulation_margin",
	Title:   "what the insulation bears above the temperature of the conductor",
	Symbol:  "Ti − Tc",
	Kind:    quantity.TemperatureDifference,
	Unit:    "K",
	Per:     circuits,
	Formula: "class printed on the insulation − Tc, Tc = " + temperatureFormula,
	Inputs: with(deratedInputs(figures.Rising, figures.Either, figures.Falling),
		circuitCurrent(figures.Falling)),
	Source:  conductorTemperature.Source,
	Compute: func(a figures.Args) float64 { return a.At("Ti") - hot(a) },
}

func hot(a figures.Args) float64 {
	return ConductorTemperature(a.At("A"), a.At("Ti"), inBay(a), a.At("N"), a.At("I"))
}
