package air

import (
	"trialfit/internal/figures"
	"trialfit/internal/figures/fluid"
	"trialfit/internal/quantity"
)

// Tubes are the bores of tube sold by its outside diameter, wall 0.065 in.
var Tubes = &figures.Series{Title: "tube by outside diameter, wall 0.065 in", Sizes: []figures.Size{
	tube("1 1/2 in", 1.5), tube("1 3/4 in", 1.75), tube("2 in", 2), tube("2 1/4 in", 2.25), tube("2 1/2 in", 2.5),
	tube("2 3/4 in", 2.75), tube("3 in", 3), tube("3 1/2 in", 3.5), tube("4 in", 4), tube("5 in", 5), tube("6 in", 6),
}}

func tube(label string, inches float64) figures.Size {
	return figures.Size{Label: label + " tube", SI: (inches - 2*0.065) * 0.0254}
}

// through adds the bore that a flow goes through.
func through(path string, inputs []figures.Input) []figures.Input {
	bore := in("d", path, figures.Falling, boreBounds)
	bore.Series = Tubes
	return append(inputs, bore)
}

var continuity = figures.Source{
	Title: "mean speed in a round pipe",
	URL:   "https://www.automotiveforums.com/t497529-cfm_calucations.html",
	Basis: "physics",
}

var sound = figures.Source{
	Title: "Mach number: speed over the speed of sound √(1.4·287.05·T)",
	Basis: "physics",
}

func inDuct(a figures.Args) float64 { return fluid.PipeSpeed(inlet(a), a.At("d")) }

var ductSpeed = &figures.Figure{
	ID:      "air.duct_speed",
	Title:   "speed of the air in the clean-air pipe",
	Symbol:  "v",
	Kind:    quantity.Speed,
	Unit:    "m/s",
	Formula: inletFormula + "; v = V/(π·d²/4)",
	Inputs:  through("intake.duct_bore", RatedInputs()),
	Source:  continuity,
	Compute: inDuct,
}

var ductMach = &figures.Figure{
	ID:      "air.duct_mach",
	Title:   "Mach number in the clean-air pipe",
	Symbol:  "M",
	Kind:    quantity.Ratio,
	Unit:    "1",
	Formula: inletFormula + "; M = V/(π·d²/4) / 346.1 m/s",
	Inputs:  through("intake.duct_bore", RatedInputs()),
	Source:  sound,
	Compute: func(a figures.Args) float64 { return inDuct(a) / fluid.SoundSpeed(reference) },
}

// hotSide are the inputs of the speed behind the compressor. Its pressure is
// taken for that of the manifold, so that boost drops out.
func hotSide() []figures.Input {
	return through("charge_air.pipe_bore", append(swept(figures.Rising, "engine.rated_speed"),
		manifoldIn(figures.Falling), compressorOut(figures.Rising)))
}

func inChargePipe(a figures.Args) float64 {
	volume := a.At("ηv") * Swallowed(a.At("Vd"), a.At("n")) * a.At("T2") / a.At("T3")
	return fluid.PipeSpeed(volume, a.At("d"))
}

const hotFormula = "v = ηv·Vd·n/2 · T2/T3 / (π·d²/4), the hot side, at the pressure of the manifold"

var chargePipeSpeed = &figures.Figure{
	ID:      "air.charge_pipe_speed",
	Title:   "speed of the air in the hot charge pipe",
	Symbol:  "v",
	Kind:    quantity.Speed,
	Unit:    "m/s",
	Formula: hotFormula,
	Inputs:  hotSide(),
	Source:  continuity,
	Compute: inChargePipe,
}

var chargePipeMach = &figures.Figure{
	ID:      "air.charge_pipe_mach",
	Title:   "Mach number in the hot charge pipe",
	Symbol:  "M",
	Kind:    quantity.Ratio,
	Unit:    "1",
	Formula: hotFormula + "; M = v/√(1.4·287.05 J/(kg·K)·T2)",
	Inputs:  hotSide(),
	Source:  sound,
	Compute: func(a figures.Args) float64 { return inChargePipe(a) / fluid.SoundSpeed(a.At("T2")) },
}
