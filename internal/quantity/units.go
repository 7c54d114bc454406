package quantity

import (
	"math/big"
	"strings"
	"sync"
)

// unit is one way to write a kind: SI value = number*factor + offset.
type unit struct {
	symbol  string
	factor  *big.Rat
	offset  *big.Rat // nil but for temperatures
	aliases []string
}

// family is a kind with its SI symbol and its units, the most usual first.
type family struct {
	kind  Kind
	si    string
	units []unit
}

// u makes a unit; aliases are separated by commas. Spellings that differ only
// as fold evens out (· * - and space, ² ^2 and 2, Ω and ohm) need no alias.
func u(symbol string, factor any, aliases string) unit {
	var list []string
	if aliases != "" {
		list = strings.Split(aliases, ",")
	}
	return unit{symbol: symbol, factor: product(factor), aliases: list}
}

func shifted(symbol string, factor any, offset *big.Rat, aliases string) unit {
	t := u(symbol, factor, aliases)
	t.offset = offset
	return t
}

// families is built by table_*.go; the order is that of the Kind constants.
var families = append(append(mechanics(), fluids()...), electrics()...)

func familyOf(kind Kind) *family {
	for i := range families {
		if families[i].kind == kind {
			return &families[i]
		}
	}
	return nil
}

// spellings maps every kind's folded spellings to its units.
var spellings = sync.OnceValue(func() map[Kind]map[string]*unit {
	all := make(map[Kind]map[string]*unit, len(families))
	for i := range families {
		f := &families[i]
		index := make(map[string]*unit, 4*len(f.units))
		for j := range f.units {
			t := &f.units[j]
			index[fold(t.symbol)] = t
			for _, alias := range t.aliases {
				index[fold(alias)] = t
			}
		}
		all[f.kind] = index
	}
	return all
})

// find looks a spelling up among the units of one kind; nil if it has none.
func find(kind Kind, spelling string) *unit {
	return spellings()[kind][fold(spelling)]
}

// resolve is find for callers outside the parser: "" and the SI symbol stand
// for the SI unit of the kind.
func resolve(kind Kind, spelling string) *unit {
	f := familyOf(kind)
	if f == nil {
		return nil
	}
	if spelling != "" && spelling != f.si {
		return find(kind, spelling)
	}
	one := big.NewRat(1, 1)
	for i := range f.units {
		if f.units[i].offset == nil && f.units[i].factor.Cmp(one) == 0 && f.units[i].symbol != ":1" {
			return &f.units[i]
		}
	}
	return nil
}

var folder = strings.NewReplacer(
	"²", "2", "³", "3", "₂", "2", "⁻", "·", "¹", "1", "^", "",
	"*", "·", "⋅", "·", "•", "·", "∙", "·", "×", "·", "-", "·", " ", "·", "(", "·", ")", "",
	"Ω", "ohm", "\u2126", "ohm", "µ", "u", "\u03bc", "u", "º", "°",
	"″", `"`, "”", `"`, "′", "'", "’", "'",
)

// fold maps the ways of typing one unit symbol to one key.
func fold(s string) string {
	s = folder.Replace(s)
	for strings.Contains(s, "··") {
		s = strings.ReplaceAll(s, "··", "·")
	}
	return strings.ReplaceAll(strings.ReplaceAll(s, "·/", "/"), "/·", "/")
}

// toSI converts a number written in the unit.
func (t *unit) toSI(number *big.Rat) *big.Rat {
	si := new(big.Rat).Mul(number, t.factor)
	if t.offset != nil {
		si.Add(si, t.offset)
	}
	return si
}

// fromSI expresses an SI value in the unit.
func (t *unit) fromSI(si *big.Rat) *big.Rat {
	number := new(big.Rat).Set(si)
	if t.offset != nil {
		number.Sub(number, t.offset)
	}
	return number.Quo(number, t.factor)
}
