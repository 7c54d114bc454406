package air

import (
	"trialfit/internal/figures"
	"trialfit/internal/figures/fluid"
	"trialfit/internal/quantity"
)

func altitude(d figures.Direction) figures.Input {
	return in("H", "registration.altitude", d, altitudeBounds)
}

func hottestDay(d figures.Direction) figures.Input {
	return in("T", "registration.ambient", d, airBounds)
}

var standardAtmosphere = figures.Source{
	Title: "US Standard Atmosphere 1976, geopotential altitude",
	URL:   "http://scipp.ucsc.edu/outreach/balloon/atmos/1976%20Standard%20Atmosphere.htm",
	Basis: "standard",
}

const siteFormula = "p = 101.325 kPa·(1 − 0.0065 K/m · H/288.15 K)^5.25588"

var sitePressure = &figures.Figure{
	ID:      "air.site_pressure",
	Title:   "pressure of the air at the highest altitude",
	Symbol:  "p",
	Kind:    quantity.AbsolutePressure,
	Unit:    "kPa abs",
	Formula: siteFormula,
	Inputs:  []figures.Input{altitude(figures.Falling)},
	Source:  standardAtmosphere,
	Compute: func(a figures.Args) float64 { return fluid.StandardPressure(a.At("H")) },
}

var siteDensity = &figures.Figure{
	ID:      "air.site_density",
	Title:   "density of the air at the highest altitude on the hottest day",
	Symbol:  "ρ",
	Kind:    quantity.Density,
	Unit:    "kg/m³",
	Formula: siteFormula + "; ρ = p/(287.05 J/(kg·K)·T)",
	Inputs:  []figures.Input{altitude(figures.Falling), hottestDay(figures.Falling)},
	Source:  standardAtmosphere,
	Compute: func(a figures.Args) float64 {
		return fluid.AirDensity(fluid.StandardPressure(a.At("H")), a.At("T"))
	},
}
