package cooling

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/figures/fluid"
	"trialfit/internal/quantity"
)

// WaterBoils is the temperature in K at which water boils at an absolute
// pressure in Pa, from 611 Pa to 22 MPa: IAPWS-IF97, region 4.
func WaterBoils(pressure float64) float64 {
	b := math.Pow(pressure/1e6, 0.25)
	e := b*b - 0.17073846940092e2*b + 0.14915108613530e2
	f := 0.11670521452767e4*b*b + 0.12020824702470e5*b - 0.48232657361591e4
	g := -0.72421316703206e6*b*b - 0.32325550322333e7*b + 0.40511340542057e6
	d := 2 * g / (-f - math.Sqrt(f*f-4*e*g))
	s := 0.65017534844798e3 + d
	return (s - math.Sqrt(s*s-4*(-0.23855557567849+0.65017534844798e3*d))) / 2
}

// CoolantBoils is the temperature in K at which water and ethylene glycol boil
// at an absolute pressure in Pa, from the share of glycol by volume: each boils
// as if it bore its share of the molecules only (Raoult), and glycol gives 3 %
// of the vapour of water. Right to a kelvin up to a half mixture, 2 K high at 60 %.
func CoolantBoils(pressure, glycol float64) float64 {
	w := WaterShare(glycol)
	return WaterBoils(pressure / (w + 0.03*(1-w)))
}

// WaterShare is the share of water among the molecules of a mixture with
// ethylene glycol, from the share of glycol by volume at 20 °C.
func WaterShare(glycol float64) float64 {
	const water, ethyleneGlycol = 998.2 / 18.015, 1113.0 / 62.07 // kmol/m³
	w := (1 - glycol) * water
	return w / (w + glycol*ethyleneGlycol)
}

// boils are the inputs of the boiling point and how they pull on what grows with it.
func boils(up, down figures.Direction) []figures.Input {
	return []figures.Input{
		in("pc", "cooling.cap_pressure", up, capBounds),
		in("H", "registration.altitude", down, altitudeBounds),
		glycol(up),
	}
}

func boiling(a figures.Args) float64 {
	return CoolantBoils(fluid.StandardPressure(a.At("H"))+a.At("pc"), a.At("g"))
}

const boilFormula = "Tb = boiling point of water at (p + cap pressure)/(xw + 0.03·(1 − xw)), " +
	"p of the standard atmosphere at the highest altitude, xw the share of water among the molecules"

var boilSource = figures.Source{
	Title: "boiling water by IAPWS-IF97, glycol by Raoult's law, air by the US Standard Atmosphere 1976",
	URL:   "http://www.iapws.org/relguide/IF97-Rev.html",
	Basis: "standard",
}

var boilingPoint = &figures.Figure{
	ID:      "cooling.boiling_point",
	Title:   "boiling point of the coolant at the highest altitude",
	Symbol:  "Tb",
	Kind:    quantity.Temperature,
	Unit:    "°C",
	Formula: boilFormula,
	Inputs:  boils(figures.Rising, figures.Falling),
	Source:  boilSource,
	Compute: boiling,
}

var boilMargin = &figures.Figure{
	ID:      "cooling.boil_margin",
	Title:   "boiling point above the highest coolant temperature",
	Symbol:  "Tb − Tc",
	Kind:    quantity.TemperatureDifference,
	Unit:    "K",
	Formula: boilFormula + "; Tb − highest coolant temperature that the engine's maker allows",
	Inputs: append(boils(figures.Rising, figures.Falling),
		in("Tc", "cooling.top_limit", figures.Falling, coolantBounds)),
	Source:  boilSource,
	Compute: func(a figures.Args) float64 { return boiling(a) - a.At("Tc") },
}

// measured are the two readings of a test under full load, and how they pull on
// what grows with the first.
func measured(tank, air figures.Direction) []figures.Input {
	return []figures.Input{
		in("Tt", "cooling.top_tank", tank, coolantBounds),
		in("T0", "cooling.test_ambient", air, ambientBounds),
	}
}

var topTankRise = &figures.Figure{
	ID:      "cooling.top_tank_rise",
	Title:   "top tank above the surrounding air, as measured",
	Symbol:  "Tt − T0",
	Kind:    quantity.TemperatureDifference,
	Unit:    "K",
	Formula: "top tank temperature − air temperature of the test, both at full load, thermostat open",
	Inputs:  measured(figures.Rising, figures.Falling),
	Source:  coolingTest,
	Compute: func(a figures.Args) float64 { return a.At("Tt") - a.At("T0") },
}

var coolingTest = figures.Source{
	Title: "limiting ambient temperature and air-to-boil, as SAE J1393 defines them",
	URL:   "https://tnlab.org/en/mastering-heavy-duty-vehicle-cooling-test-procedures-an-engineers-guide-to-sae-j1393-2023/",
	Basis: "standard",
}

// LimitingAmbient is the temperature in K of the surrounding air at which
// coolant reaches a limit in K, from the coolant and the air of a test in K.
func LimitingAmbient(limit, coolant, ambient float64) float64 { return limit - coolant + ambient }

var limitingAmbient = &figures.Figure{
	ID:      "cooling.limiting_ambient",
	Title:   "hottest air the cooling can stand, as tested",
	Symbol:  "Ta max",
	Kind:    quantity.Temperature,
	Unit:    "°C",
	Formula: "Ta max = highest coolant temperature − (top tank temperature − air temperature of the test)",
	Inputs: append(measured(figures.Falling, figures.Rising),
		in("Tc", "cooling.top_limit", figures.Rising, coolantBounds)),
	Source:  coolingTest,
	Compute: func(a figures.Args) float64 { return LimitingAmbient(a.At("Tc"), a.At("Tt"), a.At("T0")) },
}

// AirToBoil is the temperature in K of the surrounding air at which coolant
// boils, from its boiling point in K and the coolant and the air of a test at
// sea level in K. Thinner air carries less: the rise grows as the air thins, by
// thinning, the density at sea level over that here.
func AirToBoil(boils, coolant, ambient, thinning float64) float64 {
	return boils - (coolant-ambient)*thinning
}

var airToBoil = &figures.Figure{
	ID:     "cooling.air_to_boil",
	Title:  "hottest air before the coolant boils, at the highest altitude",
	Symbol: "Ta boil",
	Kind:   quantity.Temperature,
	Unit:   "°C",
	Formula: boilFormula + "; Ta boil = Tb − (top tank temperature − air temperature of the test)·101.325 kPa/p; " +
		"the test near sea level, the engine at full power up there",
	Inputs:     append(boils(figures.Rising, figures.Falling), measured(figures.Falling, figures.Rising)...),
	Conditions: []figures.Condition{{Figure: topTankRise, Valid: figures.Bounds{Low: 0, High: 200}}},
	Source: figures.Source{
		Title: "analysis of the effect of altitude on air temperature to boil, 1936: the rise grows as the air thins; air-to-boil by SAE J1393",
		URL:   "https://archive.rollsroyces.org/record?archive=experimental&id=397A53DD70B41643",
		Basis: "handbook",
	},
	Compute: func(a figures.Args) float64 {
		thinning := fluid.Atmosphere / fluid.StandardPressure(a.At("H"))
		return AirToBoil(boiling(a), a.At("Tt"), a.At("T0"), thinning)
	},
}
