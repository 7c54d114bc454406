package quantity

import (
	"math/big"
	"regexp"
	"strconv"
	"strings"
)

// Value is a parsed quantity: a closed interval of SI values.
type Value struct {
	Kind Kind
	// Low and High are in the SI unit of the kind, SI(Kind); Low <= High.
	// They are exact but for the rounded factors the unit table names.
	Low, High *big.Rat
	// Unit is the canonical symbol of the first unit written: "lb", "AWG",
	// "" for a ratio without one.
	Unit string
	// Text is what was written, trimmed.
	Text string
	// Ranged tells that the writer gave a range or a tolerance.
	Ranged bool
}

// Parse reads a quantity of a kind. It takes decimals, fractions and mixed
// numbers ("3/8 in", "18 1/2 in", "1-3/8 in"), ranges ("300..330 kg",
// "12 in..400 mm") and tolerances ("312 kg ± 5", "312 kg +/- 2 %"). A
// tolerance in % is of the value; beside a value in % it is in points. Beside
// a temperature it is a difference. Exponents, decimal commas and grouped
// digits are refused with the spelling that would do. The error is an *Error.
func Parse(text string, kind Kind) (Value, error) {
	text = strings.TrimSpace(text)
	refuse := func(f *fault) (Value, error) {
		return Value{}, &Error{Text: shorten(text), Kind: kind, Found: f.found, Hint: f.hint, Accepted: Symbols(kind)}
	}
	if !Known(kind) {
		return refuse(&fault{"is due as " + strconv.Quote(string(kind)) + ", which is no kind of quantity", ""})
	}
	w, f := cut(text, kind)
	if f != nil {
		return refuse(f)
	}
	v := Value{Kind: kind, Text: text, Ranged: w.joint != joinNone}
	switch w.joint {
	case joinPlus:
		f = v.tolerance(w)
	default:
		f = v.ends(w)
	}
	if f == nil {
		f = v.physical()
	}
	if f != nil {
		return refuse(f)
	}
	return v, nil
}

// ends sets v from "a" or "a..b".
func (v *Value) ends(w written) *fault {
	first, second := w.first, w.second
	if w.joint == joinNone {
		second = first
	}
	if first.unit == "" {
		first.unit = second.unit
	} else if second.unit == "" {
		second.unit = first.unit
	}
	var f *fault
	if v.Low, v.Unit, f = evaluate(first, v.Kind, w); f != nil {
		return f
	}
	if v.High, _, f = evaluate(second, v.Kind, w); f != nil {
		return f
	}
	if v.Low.Cmp(v.High) > 0 {
		if v.Kind == Conductor {
			return &fault{"runs backwards", "write the thinner conductor first"}
		}
		return &fault{"runs backwards", "write the smaller value first"}
	}
	return nil
}

// tolerance sets v from "a ± b".
func (v *Value) tolerance(w written) *fault {
	center, spread := w.first, w.second
	if strings.HasPrefix(spread.number, "-") {
		return &fault{"has a negative tolerance", offer(w.first.number + " " + w.first.unit + " ± " + spread.number[1:])}
	}
	relative := isPercent(spread.unit) && !(v.Kind == Ratio && isPercent(center.unit))
	switch {
	case relative && (v.Kind == Temperature || v.Kind == SoundLevel):
		return &fault{"gives a percentage of a " + string(v.Kind), "write the tolerance in " + Symbols(v.Kind)[0]}
	case relative && v.Kind == Ratio && center.unit == "":
		return &fault{"does not say what the percentage is of", "write the range out, such as \"4.0..4.2\""}
	case center.unit == "" && !relative:
		center.unit = spread.unit
	}
	middle, symbol, f := evaluate(center, v.Kind, w)
	if f != nil {
		return f
	}
	if symbol == gaugeAWG || symbol == gaugeSAE {
		return &fault{"gives a tolerance to a trade size", `write the two sizes, such as "2..1/0 AWG"`}
	}
	var width *big.Rat
	if relative {
		if width, f = evaluateNumber(spread.number); f != nil {
			return f
		}
		width = product(width, "1/100", new(big.Rat).Abs(middle))
	} else {
		if spread.unit == "" || v.Kind == SoundLevel && spread.unit == "dB" {
			spread.unit = center.unit
		}
		kind := v.Kind
		if kind == Temperature {
			kind = TemperatureDifference
		}
		if find(v.Kind, spread.unit) == nil {
			kind = v.Kind // so that the message names what was due
		}
		if width, _, f = evaluate(spread, kind, w); f != nil {
			return f
		}
	}
	v.Low, v.High, v.Unit = middle, middle, symbol
	*v = v.spread(width, width)
	return nil
}

func isPercent(unit string) bool { return unit != "" && find(Ratio, unit) == find(Ratio, "%") }

var toothRatio = regexp.MustCompile(`^: ?(\d+(?:\.\d+)?)$`)

// evaluate gives the SI value of a part and the symbol of its unit. w is the
// whole text, to suggest a better one.
func evaluate(p part, kind Kind, w written) (*big.Rat, string, *fault) {
	if kind == Conductor && (p.unit == gaugeAWG || p.unit == gaugeSAE) {
		if area := sizeArea(p.number, p.unit); area != nil {
			return area, p.unit, nil
		}
		sizes := tradeSizes()[p.unit]
		return nil, "", &fault{"is not among the " + p.unit + " sizes",
			"they run from " + sizes[0].size + " to " + sizes[len(sizes)-1].size}
	}
	if p.unit == "" && kind != Ratio {
		return nil, "", &fault{"has no unit", ""}
	}
	number, f := evaluateNumber(p.number)
	if f != nil {
		return nil, "", f
	}
	if kind == Ratio {
		if m := toothRatio.FindStringSubmatch(p.unit); m != nil {
			by := rat(m[1])
			if by.Sign() == 0 {
				return nil, "", &fault{"divides by zero", ""}
			}
			return number.Quo(number, by), ":1", nil
		}
	}
	if t := find(kind, p.unit); t != nil {
		return t.toSI(number), t.symbol, nil
	}
	why := explain(kind, p.unit, func(unit string) string { return w.with(p.unit, unit) })
	return nil, "", &why
}

var mixed = regexp.MustCompile(`^(\d+)[ -](\d+/\d+)$`)

// evaluateNumber reads what numeral matched.
func evaluateNumber(text string) (*big.Rat, *fault) {
	magnitude := strings.TrimLeft(text, "+- ")
	whole := new(big.Rat)
	if m := mixed.FindStringSubmatch(magnitude); m != nil {
		whole.SetString(decimalDigits(m[1]))
		magnitude = m[2]
	}
	above, below, _ := strings.Cut(magnitude, "/")
	number, ok := new(big.Rat).SetString(decimalDigits(above))
	if by, valid := new(big.Rat).SetString(decimalDigits(below)); ok && below != "" {
		if ok = valid && by.Sign() != 0; ok {
			number.Quo(number, by)
		}
	}
	switch {
	case !ok && strings.Contains(magnitude, "/"):
		return nil, &fault{"divides by zero", `write the fraction out, such as "3/8"`}
	case !ok:
		return nil, &fault{"does not read as one number", ""}
	case whole.Sign() != 0 && number.Cmp(big.NewRat(1, 1)) >= 0:
		return nil, &fault{"adds a fraction of one or more to a whole number", `write "1 3/8" for one and three eighths`}
	}
	number.Add(number, whole)
	if strings.HasPrefix(text, "-") {
		number.Neg(number)
	}
	return number, nil
}

// decimalDigits drops the leading zeros that math/big takes for octal.
func decimalDigits(s string) string {
	if t := strings.TrimLeft(s, "0"); t != "" && t[0] != '.' {
		return t
	} else if s != "" {
		return "0" + t
	}
	return ""
}

// physical refuses what cannot be.
func (v *Value) physical() *fault {
	if v.Low.Sign() >= 0 {
		return nil
	}
	switch v.Kind {
	case Temperature:
		return &fault{"is below absolute zero", "nothing is colder than -273.15 °C"}
	case AbsolutePressure:
		return &fault{"is below a perfect vacuum", "a pressure less than that of the air is a negative gauge pressure"}
	}
	return nil
}

func shorten(text string) string {
	if r := []rune(text); len(r) > mostCharacters {
		return string(r[:40]) + "…"
	}
	return text
}

// Floats gives Low and High as the nearest float64, in the SI unit of the kind.
func (v Value) Floats() (low, high float64) {
	low, _ = v.Low.Float64()
	high, _ = v.High.Float64()
	return low, high
}

// Widen moves each end outward by the larger of relative times its magnitude
// and floor, which is in the SI unit of the kind; nil is zero. For a
// Temperature, whose zero is arbitrary, only floor counts. Small lengths are
// read off finer tools: there the floor is at most a quarter of the length, but
// never less than a quarter of itself; zero is a position, and keeps it whole.
// Kind, Unit, Text and Ranged stay.
func (v Value) Widen(relative, floor *big.Rat) Value {
	by := func(end *big.Rat) *big.Rat {
		d := new(big.Rat)
		if relative != nil && v.Kind != Temperature {
			d.Mul(relative, new(big.Rat).Abs(end))
		}
		if floor == nil {
			return d
		}
		least := floor
		if v.Kind == Length && end.Sign() != 0 {
			quarter := big.NewRat(1, 4)
			share := new(big.Rat).Mul(quarter, new(big.Rat).Abs(end))
			if low := new(big.Rat).Mul(quarter, floor); share.Cmp(low) < 0 {
				share = low
			}
			if share.Cmp(floor) < 0 {
				least = share
			}
		}
		if d.Cmp(least) < 0 {
			d.Set(least)
		}
		return d
	}
	return v.spread(by(v.Low), by(v.High))
}

// spread moves the ends outward.
func (v Value) spread(below, above *big.Rat) Value {
	v.Low = new(big.Rat).Sub(v.Low, below)
	v.High = new(big.Rat).Add(v.High, above)
	return v
}
