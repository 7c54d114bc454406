package cooling

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// Expansion is how much coolant grows from 21 to 93 °C (70 to 200 °F), as a
// share, from its share of ethylene glycol by volume: fitted to densities by
// ASHRAE, right to 0.1 % of the volume.
func Expansion(glycol float64) float64 { return 0.036 + 0.015*glycol }

func capacity(d figures.Direction) figures.Input {
	return in("V", "cooling.capacity", d, volumeBounds)
}

func space(d figures.Direction) figures.Input {
	return in("Ve", "cooling.expansion_volume", d, spaceBounds)
}

func grown(a figures.Args) float64 { return a.At("V") * Expansion(a.At("g")) }

const expansionFormula = "ΔV = V·(3.6 % + 1.5 %·glycol share), from 21 to 93 °C"

var densities = figures.Source{
	Title: "density of ethylene glycol solutions, ASHRAE table printed by a pipe maker",
	URL:   "http://38.142.81.21:8001/manual/viega/24010-viega/install-instructions-english/page-113.html",
	Basis: "handbook",
}

var expansion = &figures.Figure{
	ID:      "cooling.expansion",
	Title:   "growth of the coolant from cold to hot",
	Symbol:  "ΔV",
	Kind:    quantity.Volume,
	Unit:    "L",
	Formula: expansionFormula,
	Inputs:  []figures.Input{capacity(figures.Rising), glycol(figures.Rising)},
	Source:  densities,
	Compute: grown,
}

var expansionUse = &figures.Figure{
	ID:      "cooling.expansion_use",
	Title:   "growth of the coolant against the space for it",
	Symbol:  "ΔV/Ve",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: expansionFormula + "; ΔV / expansion space",
	Inputs:  []figures.Input{capacity(figures.Rising), glycol(figures.Rising), space(figures.Falling)},
	Source:  densities,
	Compute: func(a figures.Args) float64 { return grown(a) / a.At("Ve") },
}

var expansionShare = &figures.Figure{
	ID:      "cooling.expansion_share",
	Title:   "expansion space against the whole system",
	Symbol:  "Ve/V",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "expansion space / coolant capacity",
	Inputs:  []figures.Input{space(figures.Rising), capacity(figures.Falling)},
	Source:  figures.Source{Title: "engine makers' installation guides, 6 % and more (from memory)", Basis: "memory"},
	Compute: func(a figures.Args) float64 { return a.At("Ve") / a.At("V") },
}
