package electrical

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// insulationClasses are the temperatures in °C that insulation is rated for, the
// columns of carried.
var insulationClasses = []float64{60, 75, 80, 90, 105, 125, 200}

// inEngineBay is what is left in the engine bay, by class.
var inEngineBay = []float64{0.58, 0.75, 0.78, 0.82, 0.85, 0.89, 1}

// carried is the current in A that a single conductor may carry in air of 30 °C,
// by insulation class, and with insulation for 105 °C in the engine bay as the
// catalogue rounds it. Sizes that the tables leave out, such as 5 and 7 AWG,
// count as the next thinner one.
var carried = []struct {
	awg     string
	byClass [7]float64
	bay105  float64
}{
	{"18", [7]float64{10, 10, 15, 20, 20, 25, 25}, 17},
	{"16", [7]float64{15, 15, 20, 25, 25, 30, 35}, 21},
	{"14", [7]float64{20, 20, 25, 30, 35, 40, 45}, 30},
	{"12", [7]float64{25, 25, 35, 40, 45, 50, 55}, 38},
	{"10", [7]float64{40, 40, 50, 55, 60, 70, 70}, 51},
	{"8", [7]float64{55, 65, 70, 70, 80, 90, 100}, 68},
	{"6", [7]float64{80, 95, 100, 100, 120, 125, 135}, 102},
	{"4", [7]float64{105, 125, 130, 135, 160, 170, 180}, 136},
	{"3", [7]float64{120, 145, 150, 155, 180, 195, 210}, 153},
	{"2", [7]float64{140, 170, 175, 180, 210, 225, 240}, 178},
	{"1", [7]float64{165, 195, 210, 210, 245, 265, 280}, 208},
	{"1/0", [7]float64{195, 230, 245, 245, 285, 305, 325}, 242},
	{"2/0", [7]float64{225, 265, 285, 285, 330, 355, 370}, 280},
	{"3/0", [7]float64{260, 310, 330, 330, 385, 410, 430}, 327},
	{"4/0", [7]float64{300, 360, 385, 385, 445, 475, 510}, 378},
}

// class105 is the column of carried for 105 °C.
const class105 = 4

var ampacityTable = figures.Source{
	Title: "cable maker's catalogue, temperature rating of conductor insulation (105 °C), after 33 CFR 183.425",
	URL:   "http://www.delzer.com/powerproducts/ANC_CAT_003/70/",
	Basis: "manufacturer",
}

// sameSize is how near a section must come to count as a trade size.
const sameSize = 1e-6

// areas are the sections in m² of the rows of carried.
var areas = func() []float64 {
	var list []float64
	for _, row := range carried {
		list = append(list, areaOf(row.awg))
	}
	return list
}()

// ampacityBounds are the sections that the table covers, in m².
var ampacityBounds = figures.Bounds{Low: areas[0] * (1 - sameSize), High: areas[len(areas)-1] * (1 + sameSize)}

// row is that of the largest tabulated size that is not larger than a section
// in m², −1 below the table.
func row(area float64) int {
	i := -1
	for i+1 < len(areas) && area >= areas[i+1]*(1-sameSize) {
		i++
	}
	return i
}

// Ampacity is the current in A that a single copper conductor of a section in
// m², between 18 and 4/0 AWG, may carry with insulation for 105 °C: that of the
// largest tabulated size that is not larger. Conductors of an SAE or metric
// size thus count as the next thinner AWG when they hold less copper. Below
// the table it is 0. Bundled conductors carry less than this.
func Ampacity(area float64, engineBay bool) float64 {
	i := row(area)
	switch {
	case i < 0:
		return 0
	case engineBay:
		return carried[i].bay105
	}
	return carried[i].byClass[class105]
}

const ampacityFormula = "current of the largest tabulated AWG size that is no larger than the conductor, by place; 105 °C insulation, not bundled"

// place says whether a circuit runs through the engine bay.
var place = figures.Input{
	Name: "engine bay", Path: circuits + ".*.place", Choices: map[string]float64{"engine-bay": 1, "outside-engine-bay": 0},
}

func ampacityInputs(d figures.Direction) []figures.Input {
	return []figures.Input{
		{Name: "A", Path: circuits + ".*.conductor", Direction: d, Valid: ampacityBounds, Series: awgSizes},
		place,
	}
}

var ampacity = &figures.Figure{
	ID:      "electrical.ampacity",
	Title:   "current a circuit's conductor may carry",
	Symbol:  "Iz",
	Kind:    quantity.Current,
	Per:     circuits,
	Formula: "Iz = " + ampacityFormula,
	Inputs:  ampacityInputs(figures.Rising),
	Source:  ampacityTable,
	Compute: ampacityOf,
}

var ampacityUse = &figures.Figure{
	ID:      "electrical.ampacity_use",
	Title:   "fuse against what the conductor may carry",
	Symbol:  "In/Iz",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Per:     circuits,
	Formula: "rating of the fuse / Iz, Iz = " + ampacityFormula,
	Inputs:  with(ampacityInputs(figures.Falling), fuse(nil)),
	Source:  ampacityTable,
	Compute: func(a figures.Args) float64 { return a.At("In") / ampacityOf(a) },
}

func ampacityOf(a figures.Args) float64 { return Ampacity(a.At("A"), inBay(a)) }

func inBay(a figures.Args) bool { return a.At("engine bay") == 1 }
