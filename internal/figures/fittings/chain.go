package fittings

import (
	"slices"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

const chains = "fittings"

var (
	boreBounds  = figures.Bounds{Low: 0.0005, High: 0.2} // m
	stackBounds = figures.Bounds{Low: 0, High: 0.3}      // m
	probeBounds = figures.Bounds{Low: 0.001, High: 0.5}  // m
)

func bores(d figures.Direction) []figures.Input {
	return []figures.Input{
		{Name: "port bore", Path: chains + ".*.port_bore", Direction: d, Valid: boreBounds},
		{Name: "bores", Path: chains + ".*.adapters.*.bore", Direction: d, Valid: boreBounds},
	}
}

var narrowest = figures.Source{Title: "a chain is as wide as its narrowest part", Basis: "physics"}

// ThroughBore is the smallest bore in m of a chain, from those of the port and of
// the adapters.
func ThroughBore(port float64, adapters []float64) float64 {
	return slices.Min(append([]float64{port}, adapters...))
}

func through(a figures.Args) float64 { return ThroughBore(a.At("port bore"), a.Column("bores")) }

var throughBore = &figures.Figure{
	ID:      "fittings.through_bore",
	Title:   "bore left through port and adapters",
	Symbol:  "d",
	Kind:    quantity.Length,
	Per:     chains,
	Formula: "d = least of the port bore and the bores of the adapters",
	Inputs:  bores(figures.Rising),
	Source:  narrowest,
	Compute: through,
}

var boreUse = &figures.Figure{
	ID:      "fittings.bore_use",
	Title:   "bore needed against the bore left",
	Symbol:  "dn/d",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Per:     chains,
	Formula: "bore needed / least of the port bore and the bores of the adapters",
	Inputs: append(bores(figures.Falling),
		figures.Input{Name: "dn", Path: chains + ".*.bore_need", Direction: figures.Rising, Valid: boreBounds}),
	Source:  narrowest,
	Compute: func(a figures.Args) float64 { return a.At("dn") / through(a) },
}

var probeInputs = []figures.Input{
	{Name: "probe length", Path: chains + ".*.probe_length", Direction: figures.Rising, Valid: probeBounds},
	{Name: "boss depth", Path: chains + ".*.boss_depth", Direction: figures.Falling, Valid: stackBounds},
	{Name: "stack", Path: chains + ".*.adapters.*.length", Direction: figures.Falling, Valid: stackBounds},
}

const wettedFormula = "probe length − lengths of the adapters − boss depth"

var stacked = figures.Source{
	Title: "lengths along the chain; what a probe needs by its maker, else from 4 diameters on",
	URL:   "https://instrumentationforum.com/t/how-far-a-thermocouple-be-immersed-in-the-measuring-medium/5790",
	Basis: "physics",
}

// WettedDepth is how far in m a probe of a length in m reaches into the liquid
// through a boss of a depth and adapters of lengths in m. It is negative where
// the tip does not reach the liquid.
func WettedDepth(probe, boss float64, adapters []float64) float64 {
	depth := probe - boss
	for _, length := range adapters {
		depth -= length
	}
	return depth
}

func wetted(a figures.Args) float64 {
	return WettedDepth(a.At("probe length"), a.At("boss depth"), a.Column("stack"))
}

var wettedDepth = &figures.Figure{
	ID:      "fittings.wetted_depth",
	Title:   "how far the probe stands in the liquid",
	Symbol:  "h",
	Kind:    quantity.Length,
	Unit:    "mm",
	Per:     chains,
	Formula: "h = " + wettedFormula,
	Inputs:  probeInputs,
	Source:  stacked,
	Compute: wetted,
}

var wettedMargin = &figures.Figure{
	ID:      "fittings.wetted_margin",
	Title:   "depth of the probe beyond what it needs",
	Symbol:  "h − hn",
	Kind:    quantity.Length,
	Unit:    "mm",
	Per:     chains,
	Formula: wettedFormula + " − depth needed",
	Inputs: append(probeInputs[:3:3],
		figures.Input{Name: "depth needed", Path: chains + ".*.wetted_need", Direction: figures.Falling, Valid: probeBounds}),
	Source:  stacked,
	Compute: func(a figures.Args) float64 { return wetted(a) - a.At("depth needed") },
}
