package quantity

import (
	"strconv"
	"strings"
)

// slip is a spelling the trade uses loosely, and what the writer can have
// meant by it.
type slip struct {
	kind  Kind
	loose []string
	says  string // the fact; "" lets the unit's own kind be the fact
	meant []string
}

// slips lists spellings that are refused although everybody uses them: what
// they name depends on the country or on habit.
var slips = []slip{
	{Mass, []string{"ton", "tons"}, "does not say which ton", []string{"t", "short ton", "long ton"}},
	{Volume, []string{"gal", "gals", "gallon", "gallons"}, "does not say which gallon", []string{"US gal", "imp gal"}},
	{Volume, []string{"qt", "quart", "quarts"}, "does not say which quart", []string{"US qt", "imp qt"}},
	{Volume, []string{"pt", "pint", "pints"}, "does not say which pint", []string{"US pt", "imp pt"}},
	{Volume, []string{"fl oz", "floz"}, "does not say which fluid ounce", []string{"US fl oz", "imp fl oz"}},
	{VolumeFlow, []string{"gpm", "GPM", "gal/min"}, "does not say which gallon", []string{"US gpm", "imp gpm"}},
	{VolumeFlow, []string{"gph", "GPH", "gal/h", "gal/hr"}, "does not say which gallon", []string{"US gal/h", "imp gal/h"}},
	{Density, []string{"lb/gal"}, "does not say which gallon", []string{"lb/US gal"}},
	{SoundLevel, []string{"dB"}, "does not say which weighting", []string{"dB(A)"}},
	{Conductor, []string{"ga", "gauge", "B&S"}, "does not say which gauge", []string{"AWG", "SAE"}},
	{Mass, []string{"lbf"}, "", []string{"lb"}},
	{Mass, []string{"kgf", "kp"}, "", []string{"kg"}},
	{Volume, []string{"oz"}, "", []string{"US fl oz", "imp fl oz"}},
	{Force, []string{"lb", "lbs"}, "", []string{"lbf"}},
	{Force, []string{"kg"}, "", []string{"kgf"}},
	{Torque, []string{"lb/ft", "lbs/ft", "ft/lb", "lbf/ft"}, "", []string{"lbf·ft"}},
	{Torque, []string{"lb/in", "lbs/in", "in/lb", "lbf/in"}, "", []string{"lbf·in"}},
	{Torque, []string{"kg·m", "kgm", "m·kg", "kg/m"}, "", []string{"kgf·m"}},
	{Torque, []string{"N/m", "Nm/m"}, "", []string{"N·m"}},
	{Stiffness, []string{"lb/in", "lbs/in"}, "", []string{"lbf/in"}},
	{Stiffness, []string{"lb/ft", "lbs/ft"}, "", []string{"lbf/ft"}},
	{Stiffness, []string{"kg/mm"}, "", []string{"kgf/mm"}},
	{GaugePressure, []string{"kg/cm²", "at"}, "", []string{"kgf/cm²"}},
	{PressureDifference, []string{"kg/cm²", "at"}, "", []string{"kgf/cm²"}},
	{AbsolutePressure, []string{"kg/cm²", "at"}, "", []string{"kgf/cm² abs"}},
	{Charge, []string{"A"}, "", []string{"Ah"}},
	{SpecificConsumption, []string{"g/kW"}, "", []string{"g/kWh"}},
	{Temperature, []string{"°"}, "does not say which degree", []string{"°C", "°F"}},
	{TemperatureDifference, []string{"°"}, "does not say which degree", []string{"K", "°F"}},
}

func (s *slip) has(key string) bool {
	for _, loose := range s.loose {
		if fold(loose) == key {
			return true
		}
	}
	return false
}

// explain says why spelling is no unit of kind. rewrite gives the text with
// another unit in its place.
func explain(kind Kind, spelling string, rewrite func(unit string) string) fault {
	key := fold(spelling)
	home, elsewhere := kindOf(spelling)
	found := "has an unknown unit " + strconv.Quote(spelling)
	if elsewhere {
		found = "is " + article(home) + ", not " + article(string(kind))
	}
	for i := range slips {
		s := &slips[i]
		if !s.has(key) {
			continue
		}
		if s.kind == kind {
			texts := make([]string, len(s.meant))
			for j, unit := range s.meant {
				texts[j] = rewrite(unit)
			}
			if s.says != "" {
				found = s.says
			}
			return fault{found, offer(texts...)}
		}
		if s.says != "" && !elsewhere {
			found, elsewhere = "is "+article(string(s.kind))+", not "+article(string(kind)), true
		}
	}
	if f, ok := explainPressure(kind, spelling, rewrite); ok {
		return f
	}
	if near := nearest(kind, spelling, elsewhere); near != "" {
		return fault{found, "did you mean " + strconv.Quote(near) + "?"}
	}
	return fault{found, ""}
}

// explainPressure tells the three kinds of pressure apart.
func explainPressure(kind Kind, spelling string, rewrite func(string) string) (fault, bool) {
	bare := find(PressureDifference, spelling)
	switch kind {
	case AbsolutePressure:
		if bare != nil {
			return fault{"does not say whether it is gauge or absolute", offer(rewrite(absoluteSymbol(bare.symbol)))}, true
		}
	case GaugePressure:
		if find(AbsolutePressure, spelling) != nil {
			return fault{"is an absolute pressure, not a gauge pressure",
				"take off the pressure of the air, about 101 kPa at sea level"}, true
		}
	case PressureDifference:
		if t := find(GaugePressure, spelling); t != nil {
			return fault{"is a gauge pressure, not a pressure difference", offer(rewrite(t.symbol))}, true
		}
	}
	return fault{}, false
}

// kindOf names the kind a spelling belongs to.
func kindOf(spelling string) (name string, ok bool) {
	if spelling == gaugeAWG || spelling == gaugeSAE {
		return string(Conductor), true
	}
	if find(PressureDifference, spelling) != nil {
		return "pressure", true
	}
	for _, f := range families {
		if find(f.kind, spelling) != nil {
			return string(f.kind), true
		}
	}
	return "", false
}

// nearest is the symbol of the unit of kind whose spelling is the same but for
// case, or else, unless caseOnly, within an edit distance of 2 (1 for up to
// three letters); "" if none is.
func nearest(kind Kind, spelling string, caseOnly bool) string {
	type name struct{ spelling, symbol string }
	var names []name
	for _, t := range familyOf(kind).units {
		names = append(names, name{fold(t.symbol), t.symbol})
		for _, alias := range t.aliases {
			names = append(names, name{fold(alias), t.symbol})
		}
	}
	if kind == Conductor {
		names = append(names, name{gaugeAWG, gaugeAWG}, name{gaugeSAE, gaugeSAE})
	}
	key := fold(spelling)
	for _, n := range names {
		if strings.EqualFold(n.spelling, key) {
			return n.symbol
		}
	}
	if caseOnly {
		return ""
	}
	letters := []rune(key)
	most := 2
	if len(letters) <= 3 {
		most = 1
	}
	best, symbol := most+1, ""
	for _, n := range names {
		other := []rune(n.spelling)
		// A unit of which every letter changed is another unit.
		if d := distance(letters, other); d < best && d < min(len(letters), len(other)) {
			best, symbol = d, n.symbol
		}
	}
	return symbol
}

// distance is the Levenshtein distance.
func distance(a, b []rune) int {
	row := make([]int, len(b)+1)
	for j := range row {
		row[j] = j
	}
	for i, x := range a {
		diagonal := row[0]
		row[0] = i + 1
		for j, y := range b {
			cost := diagonal
			if x != y {
				cost++
			}
			diagonal = row[j+1]
			row[j+1] = min(cost, row[j+1]+1, row[j]+1)
		}
	}
	return row[len(b)]
}
