package electrical

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// carried is the current in A that a single conductor with insulation for
// 105 °C may carry: outside the engine bay (air at 30 °C) and inside (50 °C).
// Sizes that the page leaves out, such as 5 and 7 AWG, count as the next
// thinner one.
var carried = []struct {
	awg             string
	outside, inside float64
}{
	{"18", 20, 17}, {"16", 25, 21}, {"14", 35, 30}, {"12", 45, 38}, {"10", 60, 51},
	{"8", 80, 68}, {"6", 120, 102}, {"4", 160, 136}, {"3", 180, 153}, {"2", 210, 178},
	{"1", 245, 208}, {"1/0", 285, 242}, {"2/0", 330, 280}, {"3/0", 385, 327}, {"4/0", 445, 378},
}

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

// Ampacity is the current in A that a single copper conductor of a section in
// m², between 18 and 4/0 AWG, may carry with insulation for 105 °C: that of the
// largest tabulated size that is not larger. Conductors of an SAE or metric
// size thus count as the next thinner AWG when they hold less copper. Below
// the table it is 0. Bundled conductors carry less than this.
func Ampacity(area float64, engineBay bool) float64 {
	current := 0.0
	for i, row := range carried {
		if area < areas[i]*(1-sameSize) {
			break
		}
		if current = row.outside; engineBay {
			current = row.inside
		}
	}
	return current
}

const ampacityFormula = "current of the largest tabulated AWG size that is no larger than the conductor, by place; 105 °C insulation, not bundled"

func ampacityInputs(d figures.Direction) []figures.Input {
	return []figures.Input{
		{Name: "A", Path: circuits + ".*.conductor", Direction: d, Valid: ampacityBounds, Series: awgSizes},
		{Name: "engine bay", Path: circuits + ".*.place", Choices: map[string]float64{"engine-bay": 1, "outside-engine-bay": 0}},
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

func ampacityOf(a figures.Args) float64 { return Ampacity(a.At("A"), a.At("engine bay") == 1) }
