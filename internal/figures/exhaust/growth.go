package exhaust

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// Cold is the temperature in K that pipes grow from: 70 °F, as the tables do.
const Cold = 294.26

// Material is how a pipe grows with heat: First in 1/K and Second in 1/K², from
// Cold on.
type Material struct{ First, Second float64 }

// Materials of exhaust pipe. Steel and austenitic stainless steel are fitted to
// a table of pipe expansion, right to half a per cent up to 430 °C; ferritic
// stainless steel is 11 µm/(m·K) up to 100 °C and from memory above.
var (
	Steel      = Material{11.04e-6, 6.72e-9}
	Ferritic   = Material{10.85e-6, 2.5e-9}
	Austenitic = Material{16.60e-6, 3.65e-9}
)

// materials in the order of the numbers that the manifest's words stand for.
var (
	materials     = []Material{Steel, Ferritic, Austenitic}
	materialWords = map[string]float64{"steel": 0, "ferritic-stainless": 1, "austenitic-stainless": 2}
)

// Growth is how much a pipe of a length in m grows, in m, from Cold to a
// temperature in K.
func (m Material) Growth(length, temperature float64) float64 {
	rise := temperature - Cold
	return length * (m.First + m.Second*rise) * rise
}

// heated are the inputs of the growth of the whole run.
func heated() []figures.Input {
	length := in("L", segments+".*.length", figures.Rising, lengthBounds)
	length.NonEmpty = true
	return []figures.Input{
		length, temperature(),
		{Name: "material", Path: "exhaust.material", Choices: materialWords},
	}
}

func grown(a figures.Args) float64 {
	sum := 0.0
	for _, length := range a.Column("L") {
		sum += length
	}
	return materials[int(a.At("material"))].Growth(sum, a.At("T"))
}

const growthFormula = "ΔL = ΣL·(α + β·ΔT)·ΔT from 21 °C; steel α = 11.04e-6/K, β = 6.72e-9/K²; " +
	"ferritic stainless 10.85e-6, 2.5e-9; austenitic stainless 16.60e-6, 3.65e-9; the pipe as hot as the gas"

var expansionTable = figures.Source{
	Title: "pipe expansion by the power piping code, printed by a maker of expansion joints; ferritic steel from memory",
	URL:   "https://www.hyspan.com/thermal-expansion/",
	Basis: "handbook",
}

var growth = &figures.Figure{
	ID:      "exhaust.growth",
	Title:   "growth of the whole exhaust with heat",
	Symbol:  "ΔL",
	Kind:    quantity.Length,
	Unit:    "mm",
	Formula: growthFormula,
	Inputs:  heated(),
	Source:  expansionTable,
	Compute: grown,
}

var growthUse = &figures.Figure{
	ID:      "exhaust.growth_use",
	Title:   "growth of the whole exhaust against the flexible joint",
	Symbol:  "ΔL/s",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: growthFormula + "; ΔL / travel of the flexible joint; hangers that swing take a part",
	Inputs:  append(heated(), in("s", "exhaust.flexible_travel", figures.Falling, travelBounds)),
	Source:  expansionTable,
	Compute: func(a figures.Args) float64 { return grown(a) / a.At("s") },
}
