package fasteners

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

const (
	// partial is the safety factor γM2 and γM3 of EN 1993-1-8.
	partial = 1.25
	// Slip is the friction of rolled or painted faces, class D of EN 1090-2
	// (from memory).
	Slip = 0.2
)

// ShearResistance is the force in N that one bolt bears across one plane
// through its thread, with the reserve of EN 1993-1-8; diameter and pitch are
// in m.
func ShearResistance(c Class, diameter, pitch float64) float64 {
	return c.Shear * c.Tensile * c.Thread.StressArea(diameter, pitch) / partial
}

// TensionResistance is the force in N that one bolt bears along its length,
// with the reserve of EN 1993-1-8; diameter and pitch are in m.
func TensionResistance(c Class, diameter, pitch float64) float64 {
	return 0.9 * c.Tensile * c.Thread.StressArea(diameter, pitch) / partial
}

// SlipResistance is the force in N that the friction of one face holds for each
// bolt, from its preload in N, the friction of the faces and a safety factor.
func SlipResistance(preload, friction, factor float64) float64 { return friction * preload / factor }

var structural = figures.Source{
	Title: "EN 1993-1-8 table 3.4, bolts in shear and tension with γM2 = 1.25; grades as the classes nearest to them",
	URL:   "https://steelcalculator.app/reference/eu-bolt-grade-selector/",
	Basis: "standard",
}

const (
	shearFormula = "Rv = αv·fu·A/1.25, with αv 0.6 for grade 5 and class 8.8, 0.5 for the others, " +
		"fu 74, 120 and 150 ksi for grades 2, 5 and 8, 800, 1000 and 1200 MPa for classes 8.8, 10.9 and 12.9; " + areaFormula
	tensionFormula = "Rt = 0.9·fu·A/1.25; " + areaFormula
)

// thread declares what a resistance reads; more of it moves the figure the way d.
func thread(d, less figures.Direction) []figures.Input {
	return []figures.Input{diameter(d), pitch(less), class}
}

func acrossOne(a figures.Args) float64 { return ShearResistance(classOf(a), a.At("d"), a.At("p")) }

func alongOne(a figures.Args) float64 { return TensionResistance(classOf(a), a.At("d"), a.At("p")) }

var shearResistance = &figures.Figure{
	ID:         "fasteners.shear_resistance",
	Title:      "what one bolt bears across, for each plane through its thread",
	Symbol:     "Rv",
	Kind:       quantity.Force,
	Unit:       "kN",
	Per:        bolts,
	Formula:    shearFormula,
	Inputs:     thread(figures.Rising, figures.Falling),
	Conditions: covered,
	Source:     structural,
	Compute:    acrossOne,
}

var tensionResistance = &figures.Figure{
	ID:         "fasteners.tension_resistance",
	Title:      "what one bolt bears along its length",
	Symbol:     "Rt",
	Kind:       quantity.Force,
	Unit:       "kN",
	Per:        bolts,
	Formula:    tensionFormula,
	Inputs:     thread(figures.Rising, figures.Falling),
	Conditions: covered,
	Source:     structural,
	Compute:    alongOne,
}

var (
	across = figures.Input{Name: "V", Path: bolts + ".*.shear", Direction: figures.Rising, Valid: forceBounds}
	along  = figures.Input{Name: "N", Path: bolts + ".*.pull", Direction: figures.Rising, Valid: forceBounds}
	planes = figures.Input{Name: "k", Path: bolts + ".*.planes", Direction: figures.Falling, Valid: planeBounds}
)

func shearPart(a figures.Args) float64 { return a.At("V") / (a.At("n") * a.At("k") * acrossOne(a)) }

func tensionPart(a figures.Args) float64 { return a.At("N") / (a.At("n") * alongOne(a)) }

func use(id, title, symbol, formula string, loads []figures.Input, compute func(figures.Args) float64) *figures.Figure {
	return &figures.Figure{
		ID:         id,
		Title:      title,
		Symbol:     symbol,
		Kind:       quantity.Ratio,
		Unit:       "%",
		Per:        bolts,
		Formula:    formula,
		Inputs:     append(append(loads, number(figures.Falling)), thread(figures.Falling, figures.Rising)...),
		Conditions: covered,
		Source:     structural,
		Compute:    compute,
	}
}

var (
	shearUse = use("fasteners.shear_use", "shear load against what the bolts bear", "V/Rv",
		"V/(n·k·Rv), n bolts through k planes; "+shearFormula, []figures.Input{across, planes}, shearPart)
	tensionUse = use("fasteners.tension_use", "pull against what the bolts bear", "N/Rt",
		"N/(n·Rt), n bolts; "+tensionFormula, []figures.Input{along}, tensionPart)
	togetherUse = use("fasteners.together_use", "shear and pull together against what the bolts bear", "V+N",
		"V/(n·k·Rv) + N/(1.4·n·Rt); "+shearFormula+"; Rt = 0.9·fu·A/1.25", []figures.Input{across, along, planes},
		func(a figures.Args) float64 { return shearPart(a) + tensionPart(a)/1.4 })
)

var slipUse = &figures.Figure{
	ID:      "fasteners.slip_use",
	Title:   "shear load against the friction that clamping gives",
	Symbol:  "V/Rs",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Per:     bolts,
	Formula: "V/(n·k·Rs), with Rs = 0.2·F/1.25 for rolled or painted faces; " + preloadFormula,
	Inputs:  append([]figures.Input{across, planes, number(figures.Falling)}, torqued(figures.Falling, figures.Rising)...),
	Source: figures.Source{
		Title: "EN 1993-1-8 clause 3.9 with the friction of class D faces, 0.2",
		URL:   "https://orangebook.arcelormittal.com/node/50",
		Basis: "standard",
	},
	Compute: func(a figures.Args) float64 {
		return a.At("V") / (a.At("n") * a.At("k") * SlipResistance(preloaded(a), Slip, partial))
	},
}

var openingUse = &figures.Figure{
	ID:      "fasteners.opening_use",
	Title:   "pull against the preload that keeps the joint shut",
	Symbol:  "N/F",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Per:     bolts,
	Formula: "N/(n·F); " + preloadFormula,
	Inputs:  append([]figures.Input{along, number(figures.Falling)}, torqued(figures.Falling, figures.Rising)...),
	Source:  shortForm,
	Compute: func(a figures.Args) float64 { return a.At("N") / (a.At("n") * preloaded(a)) },
}
