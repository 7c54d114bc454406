package quantity

import (
	"fmt"
	"math"
	"math/big"
	"strconv"
	"strings"
)

// In expresses an SI value of a kind in a unit given by symbol or alias; ""
// is the SI unit. The error says that the kind has no such unit; AWG and SAE
// are sizes rather than units and have no multiples either.
func In(si float64, kind Kind, unit string) (float64, error) {
	t := resolve(kind, unit)
	if t == nil {
		return 0, fmt.Errorf("%q is not a unit of %s: %s", unit, kind, accepted(kind, Symbols(kind)))
	}
	exact := new(big.Rat).SetFloat64(si)
	if exact == nil {
		return 0, fmt.Errorf("%v is not a finite %s", si, kind)
	}
	number, _ := t.fromSI(exact).Float64()
	return number, nil
}

// Print writes a closed interval of SI values in a unit: "312 kg",
// "300..330 kg", "62 %", "2/0 AWG". The unit "" is the SI unit, and so is one
// the kind does not have; conductors that are no trade size print in mm².
// A number, or the larger end of a range, carries four significant digits, all
// its integer digits, and as many more as it takes to tell low from high. Values closer than one part in 10⁹
// print as one. What is not finite prints as "undefined".
func Print(low, high float64, kind Kind, unit string) string {
	if kind == Conductor && (unit == gaugeAWG || unit == gaugeSAE) {
		a, b := sizeOf(low, unit), sizeOf(high, unit)
		switch {
		case a != "" && a == b:
			return a + " " + unit
		case a != "" && b != "":
			return a + ".." + b + " " + unit
		}
		unit = "mm²"
	}
	t := resolve(kind, unit)
	if t == nil {
		t = resolve(kind, "")
	}
	a, b := new(big.Rat).SetFloat64(low), new(big.Rat).SetFloat64(high)
	if a == nil || b == nil || t == nil {
		return "undefined"
	}
	same := math.Abs(high-low) <= 1e-9*math.Max(math.Abs(low), math.Abs(high))
	number := figures(t.fromSI(a), t.fromSI(b), same)
	switch t.symbol {
	case "", ":1", "°":
		return number + t.symbol
	}
	return number + " " + t.symbol
}

const (
	significant = 4  // digits a number carries
	mostPlaces  = 40 // decimals beyond which nothing is printed
)

// figures writes the number, or the range, without its unit.
func figures(a, b *big.Rat, same bool) string {
	places := placesFor(larger(a, b), significant)
	if same {
		return decimal(a, places, 0)
	}
	// Two digits of the width, so that a narrow range is seen to be one.
	width := new(big.Rat).Sub(b, a)
	places = max(places, placesFor(width, 2))
	shared := places
	for shared > 0 && strings.HasSuffix(a.FloatString(shared), "0") && strings.HasSuffix(b.FloatString(shared), "0") {
		shared--
	}
	return end(a, b, shared) + ".." + end(b, a, shared)
}

// end writes one end of a range. An end much smaller than the other still
// shows two digits of its own, unless it is so small that it is a zero with
// rounding errors.
func end(r, other *big.Rat, shared int) string {
	places := shared
	if larger(product(r, "1000000"), other) != other {
		places = max(places, placesFor(r, 2))
	}
	return decimal(r, places, shared)
}

// placesFor is the number of decimals that shows so many significant digits.
func placesFor(r *big.Rat, digits int) int {
	f, _ := r.Float64()
	if f == 0 {
		return 0
	}
	return min(max(digits-1-int(math.Floor(math.Log10(math.Abs(f)))), 0), mostPlaces)
}

// decimal rounds r to places decimals and drops zeros beyond keep.
func decimal(r *big.Rat, places, keep int) string {
	s := r.FloatString(places)
	for ; places > keep && s[len(s)-1] == '0'; places-- {
		s = s[:len(s)-1]
	}
	s = strings.TrimSuffix(s, ".")
	if strings.Trim(s, "-0.") == "" {
		s = strings.TrimPrefix(s, "-")
	}
	return s
}

func larger(a, b *big.Rat) *big.Rat {
	if new(big.Rat).Abs(a).Cmp(new(big.Rat).Abs(b)) < 0 {
		return b
	}
	return a
}

// Canonical is the decimal that machine output carries: 12 significant digits
// with no zeros behind, no exponent, and "0" for either zero. It panics on NaN
// and infinities, which are never results.
func Canonical(x float64) string {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		panic("quantity: canonical form of " + strconv.FormatFloat(x, 'g', -1, 64))
	}
	if x == 0 {
		return "0"
	}
	rounded, err := strconv.ParseFloat(strconv.FormatFloat(x, 'e', 11, 64), 64)
	if err != nil {
		rounded = x // within a digit of the largest float64, rounding overflows
	}
	return strconv.FormatFloat(rounded, 'f', -1, 64)
}
