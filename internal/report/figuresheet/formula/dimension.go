package formula

import (
	"maps"
	"math"
	"regexp"
	"strings"
)

// Consistent says whether a formula holds in any system of units, so that
// numbers may stand in it in those of the builder. One with a bare constant such
// as 9.81 holds in SI units only; what is per kelvin may be bare, as in tables. Inputs gives the SI unit of each input, unit
// that of the figure.
func (r *Reading) Consistent(inputs map[string]string, unit string) bool {
	factor, ok := size(unit)
	if !ok {
		return false
	}
	for _, s := range r.known {
		grown := maps.Clone(s.inputs)
		for name, si := range inputs {
			f, ok := size(si)
			if !ok {
				return false
			}
			grown[name] *= f
		}
		if !near(r.eval(scope{inputs: grown, grown: true}), s.value*factor) {
			return false
		}
	}
	return true
}

// sizes are the base units, and those made of them, in a system where each base
// unit is smaller by a factor of its own.
var sizes = func() map[string]float64 {
	const kg, m, s, a = 2, 3, 5, 7
	n := kg * m / float64(s*s)
	v := n * m / float64(s*a)
	return map[string]float64{
		"1": 1, "rad": 1, "kg": kg, "m": m, "s": s, "A": a, "K": 1,
		"Hz": 1.0 / s, "N": n, "J": n * m, "W": n * m / s, "Pa": n / (m * m), "V": v, "Ω": v / a, "C": a * s,
	}
}()

var powers = strings.NewReplacer("²", "^2", "³", "^3", "⁴", "^4")

// factor is one unit of a product, with what stands before it and its power.
var factor = regexp.MustCompile(`^(·|/|/\()?([A-Za-zΩ1]+)(?:\^(\d))?(\))?`)

// size is how many of the smaller units a unit written in SI symbols is, such as
// "J/(kg·K)"; ok is false where it is not made of the base units.
func size(unit string) (float64, bool) {
	total, below := 1.0, false
	for rest := powers.Replace(unit); rest != ""; {
		found := factor.FindStringSubmatch(rest)
		if found == nil {
			return 0, false
		}
		base, ok := sizes[found[2]]
		if !ok {
			return 0, false
		}
		power := 1.0
		if found[3] != "" {
			power = float64(found[3][0] - '0')
		}
		below = below || found[1] == "/("
		if below || found[1] == "/" {
			power = -power
		}
		if found[4] != "" {
			below = false
		}
		total *= math.Pow(base, power)
		rest = rest[len(found[0]):]
	}
	return total, unit != ""
}
