package pictures

import (
	"math"

	"trialfit/internal/quantity"
)

// scale maps SI values of a kind to places on an axis that is divided evenly in
// a unit.
type scale struct {
	kind quantity.Kind
	unit string
	// first and last are the ends of the axis in the unit, step what divides it.
	first, last, step float64
	from, to          float64 // places of the ends
}

// newScale covers all values with about as many steps as asked for.
func newScale(unit string, steps int, from, to float64, values ...value) scale {
	s := scale{kind: values[0].kind, unit: unit, from: from, to: to}
	low, high := math.Inf(1), math.Inf(-1)
	for _, v := range values {
		low, high = min(low, s.number(v.low)), max(high, s.number(v.high))
	}
	if low == high {
		room := max(math.Abs(low)/10, 1e-3)
		low, high = low-room, high+room
	}
	s.step = nice((high - low) / float64(steps))
	s.first = math.Floor(low/s.step+1e-9) * s.step
	s.last = math.Ceil(high/s.step-1e-9) * s.step
	return s
}

// nice is the next of 1, 2, 5, 10, … from x upwards.
func nice(x float64) float64 {
	power := math.Pow(10, math.Floor(math.Log10(x)))
	for _, m := range []float64{1, 2, 5, 10} {
		if m*power >= x*(1-1e-9) {
			return m * power
		}
	}
	return 10 * power
}

// number is an SI value in the unit of the axis.
func (s scale) number(si float64) float64 {
	x, err := quantity.In(si, s.kind, s.unit)
	if err != nil {
		return si
	}
	return x
}

// at is the place of an SI value.
func (s scale) at(si float64) float64 { return s.place(s.number(si)) }

// place is that of a number in the unit of the axis.
func (s scale) place(x float64) float64 {
	return s.from + (x-s.first)/(s.last-s.first)*(s.to-s.from)
}

// ticks lists the numbers at the steps of the axis and how they are written.
func (s scale) ticks() (numbers []float64, texts []string) {
	n := int(math.Round((s.last - s.first) / s.step))
	for i := range n + 1 {
		x := s.first + float64(i)*s.step
		x = math.Round(x/s.step) * s.step
		numbers = append(numbers, x)
		texts = append(texts, quantity.Print(x, x, quantity.Ratio, ""))
	}
	return numbers, texts
}

// name is the unit as it stands at the end of an axis.
func (s scale) name() string {
	if s.unit == "" {
		return quantity.SI(s.kind)
	}
	return s.unit
}
