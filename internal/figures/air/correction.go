package air

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/figures/fluid"
	"trialfit/internal/quantity"
)

// The words of the manifest as numbers that formulas switch on.
const (
	iso1585 = iota
	saeJ1349
	unR85
)

const (
	natural = iota
	turbocharged
	turbochargedCooled
)

const (
	diesel = iota
	spark
	electric
)

var (
	standards = map[string]float64{"iso-1585": iso1585, "sae-j1349": saeJ1349, "un-r85": unR85}
	// A mechanical supercharger counts as natural in all three standards.
	inductions = map[string]float64{
		"natural": natural, "supercharged": natural,
		"turbocharged": turbocharged, "turbocharged-intercooled": turbochargedCooled,
	}
	ignitions = map[string]float64{"diesel": diesel, "petrol": spark, "lpg": spark, "cng": spark, "electric": electric}
)

// The air that all three standards refer to: dry, at 25 °C.
const (
	referencePressure    = 99_000 // Pa
	referenceTemperature = 298    // K
)

// DieselAirFactor is the atmospheric factor fa of a diesel, from the dry pressure
// in Pa and the temperature in K of the air it takes in. ISO 1585 and SAE J1349
// count a turbocharged engine's temperature with the power 1.2, UN R85 with 1.5
// (exponents from memory); the cooler is taken for air-to-air.
func DieselAirFactor(pressure, temperature float64, turbo, r85 bool) float64 {
	p, t := referencePressure/pressure, temperature/referenceTemperature
	switch {
	case !turbo:
		return p * math.Pow(t, 0.7)
	case r85:
		return math.Pow(p, 0.7) * math.Pow(t, 1.5)
	default:
		return math.Pow(p, 0.7) * math.Pow(t, 1.2)
	}
}

// DieselEngineFactor is the engine factor fm of a diesel, from its fuel in mg for
// each litre of displacement and cycle, over the ratio of boost to air pressure.
// Below the least fuel of the standard, and above 65, it stands still.
func DieselEngineFactor(fuel float64, r85 bool) float64 {
	least := 37.2
	if r85 {
		least = 40
	}
	return 0.036*max(least, min(65, fuel)) - 1.14
}

// SparkFactor is the factor for an engine with spark ignition, from the dry
// pressure in Pa and the temperature in K of the air: by SAE J1349, or by ISO
// 1585 and UN R85 (exponents of these from memory).
func SparkFactor(pressure, temperature float64, j1349 bool) float64 {
	p, t := referencePressure/pressure, temperature/referenceTemperature
	if j1349 {
		return 1.18*p*math.Sqrt(t) - 0.18
	}
	return math.Pow(p, 1.2) * math.Pow(t, 0.6)
}

// CycleFuel is the fuel in mg for each litre of displacement and cycle of a
// four-stroke engine, from its fuel in kg/s, its displacement in m³ and its
// speed in rad/s.
func CycleFuel(fuel, displacement, speed float64) float64 {
	return fuel / Swallowed(displacement, speed) * 1e6 / 1e3
}

// factor is what power measured in air of a dry pressure in Pa and a temperature
// in K is multiplied by.
func factor(a figures.Args, pressure, temperature float64) float64 {
	standard, ignition := a.At("standard"), a.At("fuel")
	switch ignition {
	case electric:
		return 1
	case spark:
		return SparkFactor(pressure, temperature, standard == saeJ1349)
	}
	fuel := CycleFuel(FuelFlow(a.At("P"), a.At("b")), a.At("Vd"), a.At("n"))
	perBoost := fuel / PressureRatio(a.At("pb"), 0, fluid.Atmosphere, 0)
	return math.Pow(
		DieselAirFactor(pressure, temperature, a.At("induction") != natural, standard == unR85),
		DieselEngineFactor(perBoost, standard == unR85))
}

// corrected adds what the factor needs beside the air. The fuel of a cycle
// pulls one way or the other, as the air is thinner or denser than that of the
// standard, and not at all beyond its bounds.
func corrected(inputs ...figures.Input) []figures.Input {
	boost := in("pb", "charge_air.boost", figures.Pivot, boostBounds)
	boost.WhenNone = &none
	return append(inputs,
		figures.Input{Name: "standard", Path: "intake.correction_standard", Choices: standards},
		figures.Input{Name: "induction", Path: "engine.induction", Choices: inductions},
		figures.Input{Name: "fuel", Path: "engine.fuel", Choices: ignitions},
		in("P", "engine.rated_power", figures.Pivot, powerBounds),
		consumption(figures.Pivot),
		in("Vd", "engine.displacement", figures.Pivot, displacement),
		in("n", "engine.rated_speed", figures.Pivot, speedBounds),
		boost)
}

const correction = "diesel α = fa^fm, fa = 99 kPa/p·(T/298 K)^0.7 natural, (99 kPa/p)^0.7·(T/298 K)^1.2 turbocharged (UN R85: 1.5), " +
	"fm = 0.036·qc − 1.14, qc = mg of fuel per litre and cycle over the boost ratio, from 37.2 (UN R85: 40) to 65; " +
	"spark ignition α = (99 kPa/p)^1.2·(T/298 K)^0.6, by SAE J1349 1.18·99 kPa/p·√(T/298 K) − 0.18"

var powerStandards = figures.Source{
	Title: "ISO 1585, SAE J1349 and UN R85, as an engine maker's manual prints the method; exponents from memory",
	URL:   "https://easymanua.ls/mitsubishi/s3q2-t/manual?p=161",
	Basis: "memory",
}

var powerCorrection = &figures.Figure{
	ID:      "air.power_correction",
	Title:   "factor that corrects measured power to standard air",
	Symbol:  "α",
	Kind:    quantity.Ratio,
	Unit:    "1",
	Formula: correction + "; p dry and T of the power test; the standards accept 0.9 to 1.1 for a diesel",
	Inputs: corrected(
		in("p", "intake.test_pressure", figures.Falling, testBounds),
		in("T", "intake.test_temperature", figures.Rising, airBounds)),
	Source:  powerStandards,
	Compute: func(a figures.Args) float64 { return factor(a, a.At("p"), a.At("T")) },
}

var powerLeft = &figures.Figure{
	ID:     "air.power_left",
	Title:  "power left at the highest altitude on the hottest day",
	Symbol: "1/α",
	Kind:   quantity.Ratio,
	Unit:   "%",
	Formula: correction + "; 1/α with p of the standard atmosphere at the highest altitude and T of the hottest day; " +
		"an estimate beyond what the standards accept, the injection unchanged",
	Inputs: corrected(altitude(figures.Falling), hottestDay(figures.Falling)),
	Source: powerStandards,
	Compute: func(a figures.Args) float64 {
		return 1 / factor(a, fluid.StandardPressure(a.At("H")), a.At("T"))
	},
}
