package air

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// Stoichiometric is the air in kg that burns one kg of diesel fuel.
const Stoichiometric = 14.5

// FuelFlow is the fuel in kg/s that an engine burns, from its power in W and its
// specific consumption in kg/J.
func FuelFlow(power, consumption float64) float64 { return power * consumption }

// FuelRatio is the air of an engine over its fuel, both in one unit of mass flow.
func FuelRatio(air, fuel float64) float64 { return air / fuel }

// FuelInputs are the inputs of the fuel burnt at rated power, and how they pull.
func FuelInputs(d figures.Direction) []figures.Input {
	return []figures.Input{consumption(d), in("P", "engine.rated_power", d, powerBounds)}
}

func consumption(d figures.Direction) figures.Input {
	return in("b", "fuel.consumption_full", d, fuelBounds)
}

func ratedRatio(a figures.Args) float64 {
	return FuelRatio(RatedFlow(a), FuelFlow(a.At("P"), a.At("b")))
}

const (
	ratedFormula  = "ma/mf, mf = specific consumption at full load × rated power, " + FlowFormula
	torqueFormula = "ma/mf, mf = specific consumption at full load × peak torque × its speed, which drops out; " +
		"ma/mf = ηv·ρ3·Vd/(4π·b·M), ρ3 = (101.325 kPa + boost)/(287.05 J/(kg·K)·T3); at the highest boost"
	excessFormula = "; λ = ma/mf / 14.5 for diesel fuel"
)

var mixture = figures.Source{
	Title: "air over fuel by mass; diesel fuel needs 14.5, smokes below λ of 1.15 to 1.3",
	URL:   "https://engine-build.com/calculators/diesel-smoke-lambda",
	Basis: "handbook",
}

func ratedMixture() []figures.Input { return append(RatedInputs(), FuelInputs(figures.Falling)...) }

func mixtureOf(id, title, symbol, unit, formula string, inputs []figures.Input, compute func(figures.Args) float64) *figures.Figure {
	return &figures.Figure{
		ID:      "air." + id,
		Title:   title,
		Symbol:  symbol,
		Kind:    quantity.Ratio,
		Unit:    unit,
		Formula: formula,
		Inputs:  inputs,
		Source:  mixture,
		Compute: compute,
	}
}

var (
	fuelRatioRated = mixtureOf("fuel_ratio_rated", "air–fuel ratio at rated power", "ma/mf", ":1",
		ratedFormula, ratedMixture(), ratedRatio)
	fuelRatioTorque = mixtureOf("fuel_ratio_torque", "air–fuel ratio at peak torque", "ma/mf", ":1",
		torqueFormula, torqueMixture(), torqueRatio)
	excessRated = mixtureOf("excess_rated", "air against what the fuel needs, at rated power", "λ", "1",
		ratedFormula+excessFormula, ratedMixture(),
		func(a figures.Args) float64 { return ratedRatio(a) / Stoichiometric })
	excessTorque = mixtureOf("excess_torque", "air against what the fuel needs, at peak torque", "λ", "1",
		torqueFormula+excessFormula, torqueMixture(),
		func(a figures.Args) float64 { return torqueRatio(a) / Stoichiometric })
)

func torqueMixture() []figures.Input {
	return append(charge(figures.Rising, figures.Falling),
		in("Vd", "engine.displacement", figures.Rising, displacement),
		in("ηv", "intake.volumetric_efficiency", figures.Rising, fillingBounds),
		in("M", "engine.peak_torque", figures.Falling, torqueBounds),
		consumption(figures.Falling))
}

// torqueRatio divides both flows by the speed in rad/s that they share.
func torqueRatio(a figures.Args) float64 {
	air := a.At("ηv") * chargeDensity(a) * a.At("Vd") / (4 * math.Pi)
	return FuelRatio(air, FuelFlow(a.At("M"), a.At("b")))
}
