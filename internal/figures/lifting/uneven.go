package lifting

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// UnevenLegTension is the pull in one of two sling legs, as a mass in kg, from
// the mass in kg that both carry, its own angle and that of the other leg from
// the horizontal in rad.
func UnevenLegTension(mass, own, other float64) float64 {
	return mass * math.Cos(other) / math.Sin(own+other)
}

// UnevenLegTensionByTape is the pull in one of two sling legs, as a mass in kg,
// from the mass in kg that both carry, the length of the leg, the distances of
// its own eye and of the other eye from the plumb line of the hook, and the
// height of the hook above both eyes, in one unit.
func UnevenLegTensionByTape(mass, length, own, other, height float64) float64 {
	return mass * other * length / (height * (own + other))
}

// EndLoad is what hangs on one end of a leveller or beam, in kg, from the mass
// in kg and the distances of that end and of the other from the plumb line of
// the hook, in one unit.
func EndLoad(mass, own, other float64) float64 { return mass * other / (own + other) }

var (
	byAngles = figures.Source{
		Title: "balance of the horizontal and vertical pulls of two cables, as worked by a teacher",
		URL:   "https://www.wyzant.com/resources/answers/810603/magnitude-of-tension-vectors",
		Basis: "physics",
	}
	byTape = figures.Source{
		Title: "rigging course, tension of unlike sling legs from lengths",
		URL:   "https://covamap.vmasc.org/?p=4551",
		Basis: "handbook",
	}
)

// Legs that lean: towards plumb one leg takes all, and the formula ends.
var (
	leaning      = figures.Bounds{Low: 5 * degree, High: 85 * degree} // rad
	eyeBounds    = figures.Bounds{Low: 0.01, High: 3}                 // m
	heightBounds = figures.Bounds{Low: 0.05, High: 5}                 // m
)

const unevenFormula = "T1 = (load + tackle)·cos θ2 / sin(θ1 + θ2), T2 = (load + tackle)·cos θ1 / sin(θ1 + θ2), angles from the horizontal"

func leaningLegs(first, second figures.Direction) []figures.Input {
	return append(hangs[:2:2],
		figures.Input{Name: "θ1", Path: lifts + ".*.first_angle", Direction: first, Valid: leaning},
		figures.Input{Name: "θ2", Path: lifts + ".*.second_angle", Direction: second, Valid: leaning},
	)
}

func firstByAngle(a figures.Args) float64 {
	return UnevenLegTension(onHook(a), a.At("θ1"), a.At("θ2"))
}

func secondByAngle(a figures.Args) float64 {
	return UnevenLegTension(onHook(a), a.At("θ2"), a.At("θ1"))
}

// leg declares the pull in one of two unlike legs.
func leg(id, title, symbol, formula string, inputs []figures.Input, source figures.Source, compute func(figures.Args) float64) *figures.Figure {
	return &figures.Figure{
		ID: id, Title: title, Symbol: symbol, Kind: quantity.Mass, Per: lifts,
		Formula: formula, Inputs: inputs, Source: source, Compute: compute,
	}
}

// worse declares the greater of two pulls against the tag of one leg.
func worse(id, title, formula string, inputs []figures.Input, source figures.Source, first, second func(figures.Args) float64) *figures.Figure {
	return &figures.Figure{
		ID: id, Title: title, Symbol: "T/WLL", Kind: quantity.Ratio, Unit: "%", Per: lifts,
		Formula: formula + "; the greater of both / working load limit of one leg",
		Inputs:  append(inputs, figures.Input{Name: "WLL", Path: lifts + ".*.leg_limit", Direction: figures.Falling, Valid: massBounds}),
		Source:  source,
		Compute: func(a figures.Args) float64 { return max(first(a), second(a)) / a.At("WLL") },
	}
}

var (
	firstLeg = leg("lifting.first_leg_tension", "pull in the first of two unlike legs, by angles", "T1",
		unevenFormula, leaningLegs(figures.Either, figures.Falling), byAngles, firstByAngle)
	secondLeg = leg("lifting.second_leg_tension", "pull in the second of two unlike legs, by angles", "T2",
		unevenFormula, leaningLegs(figures.Falling, figures.Either), byAngles, secondByAngle)
	unevenUse = worse("lifting.uneven_leg_use", "pull in the worse of two unlike legs against its tag, by angles",
		unevenFormula, leaningLegs(figures.Either, figures.Either), byAngles, firstByAngle, secondByAngle)
)

const tapeFormula = "T1 = (load + tackle)·b·√(a² + h²) / (h·(a + b)), T2 = (load + tackle)·a·√(b² + h²) / (h·(a + b)), " +
	"with a and b from the first and the second eye to the plumb line"

func eyes(first, second figures.Direction) []figures.Input {
	return []figures.Input{
		{Name: "a", Path: lifts + ".*.first_offset", Direction: first, Valid: eyeBounds},
		{Name: "b", Path: lifts + ".*.second_offset", Direction: second, Valid: eyeBounds},
	}
}

func taped(first, second figures.Direction) []figures.Input {
	return append(append(hangs[:2:2], eyes(first, second)...),
		figures.Input{Name: "h", Path: lifts + ".*.hook_above_eyes", Direction: figures.Falling, Valid: heightBounds})
}

func firstByTape(a figures.Args) float64 {
	return UnevenLegTensionByTape(onHook(a), math.Hypot(a.At("a"), a.At("h")), a.At("a"), a.At("b"), a.At("h"))
}

func secondByTape(a figures.Args) float64 {
	return UnevenLegTensionByTape(onHook(a), math.Hypot(a.At("b"), a.At("h")), a.At("b"), a.At("a"), a.At("h"))
}

var (
	firstLegByTape = leg("lifting.first_leg_by_tape", "pull in the first of two unlike legs, by tape", "T1",
		tapeFormula, taped(figures.Either, figures.Rising), byTape, firstByTape)
	secondLegByTape = leg("lifting.second_leg_by_tape", "pull in the second of two unlike legs, by tape", "T2",
		tapeFormula, taped(figures.Rising, figures.Either), byTape, secondByTape)
	unevenUseByTape = worse("lifting.uneven_leg_use_by_tape", "pull in the worse of two unlike legs against its tag, by tape",
		tapeFormula, taped(figures.Either, figures.Either), byTape, firstByTape, secondByTape)
)

var firstEnd = leg("lifting.first_end_load", "mass on the first end of the leveller", "R1",
	"R1 = load·b/(a + b), with a and b from the first and the second eye to the plumb line",
	append(eyes(figures.Falling, figures.Rising), hangs[0]),
	figures.Source{
		Title: "a sling maker on pick points at unlike distances",
		URL:   "https://www.certifiedslings.com/load-limits/center-of-gravity-and-sling-loading/",
		Basis: "handbook",
	},
	func(a figures.Args) float64 { return EndLoad(a.At("m"), a.At("a"), a.At("b")) })
