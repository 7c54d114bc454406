package figures

import (
	"fmt"
	"math"
	"slices"
)

// box is the set of input values over which one result ranges.
type box struct {
	figure     *Figure
	dims       []dim
	slots      []slot
	columns    []column
	conditions []condition
	// broken means that no replaced leaf can give the figure a value: a list
	// it needs is missing or empty.
	broken bool
}

// dim is one leaf held as a number.
type dim struct {
	Range
	path      string
	known     bool
	direction Direction
}

// slot is one place in Args.
type slot struct {
	input *Input
	index int // in a column, or scalar
	dim   int // -1 for a word
	// fixed stands in while the dimension has no value.
	fixed    float64
	hasFixed bool
}

// scalar is the index of a slot outside columns.
const scalar = -1

// column is the name and length of a column in Args.
type column struct {
	name   string
	length int
}

// gaps returns the paths that have no value, in the order of declaration.
func (b *box) gaps(dims []dim) []string {
	var paths []string
	for _, s := range b.slots {
		if s.dim >= 0 && !dims[s.dim].known && !s.hasFixed {
			paths = append(paths, dims[s.dim].path)
		}
	}
	return paths
}

// excesses returns the inputs beyond their bounds, in the order of declaration.
func (b *box) excesses(dims []dim) []Excess {
	var all []Excess
	for _, s := range b.slots {
		valid := s.input.Valid
		if s.dim < 0 || !dims[s.dim].known || valid == (Bounds{}) {
			continue
		}
		d := dims[s.dim]
		excess := Excess{d.path, d.Low, d.High, valid}
		if within := d.Low >= valid.Low && d.High <= valid.High; !within && !slices.Contains(all, excess) {
			all = append(all, excess)
		}
	}
	return all
}

// extremes returns the lowest and the highest value over dims.
func (b *box) extremes(dims []dim) (low, high float64) {
	low, high = b.minimum(dims, 1), -b.minimum(dims, -1)
	// The two searches are separate: rounding must not turn them round.
	return min(low, high), max(low, high)
}

// probe evaluates sign × Compute at points of a box. It is made afresh for
// each search, so that results can be used side by side.
type probe struct {
	box   *box
	sign  float64
	args  Args
	point []float64  // a value per dimension
	known []bool     // per dimension
	cells []*float64 // per slot its place in args
	free  []axis     // what the search may move
	ends  []axis     // what stands at one of its ends
	pivot []axis     // what is held at each end in turn
}

// axis is one dimension that a search moves.
type axis struct {
	Range
	dim int
}

// probe puts the dimensions with a direction at the end where sign × Compute
// is lowest and leaves the others to a search.
func (b *box) probe(dims []dim, sign float64) *probe {
	p := &probe{
		box:   b,
		sign:  sign,
		point: make([]float64, len(dims)),
		known: make([]bool, len(dims)),
	}
	p.args, p.cells = b.args()
	for i, d := range dims {
		p.known[i] = d.known
		p.point[i] = d.Low
		switch {
		case !d.known || d.Low == d.High:
		case d.direction == Either:
			p.free = append(p.free, axis{d.Range, i})
		case d.direction == Ends:
			p.ends = append(p.ends, axis{d.Range, i})
		case d.direction == Pivot:
			p.pivot = append(p.pivot, axis{d.Range, i})
		case (d.direction == Rising) != (sign > 0):
			p.point[i] = d.High
		}
	}
	if len(p.pivot) > mostPivots {
		panic(fmt.Sprintf("figures: %s: %d inputs of direction Pivot", b.figure.ID, len(p.pivot)))
	}
	if len(p.free) > 0 {
		// What is promised of the ends holds with the others standing still.
		p.free, p.ends, p.pivot = slices.Concat(p.free, p.ends, p.pivot), nil, nil
	}
	return p
}

// args returns empty Args for the box and where each slot has its place in them.
func (b *box) args() (Args, []*float64) {
	var a Args
	for _, c := range b.columns {
		a.columns = append(a.columns, named[[]float64]{c.name, make([]float64, c.length)})
	}
	a.scalars = make([]named[float64], 0, len(b.slots)) // places must not move
	cells := make([]*float64, len(b.slots))
	for i, s := range b.slots {
		if s.index != scalar {
			cells[i] = &a.Column(s.input.Name)[s.index]
			continue
		}
		a.scalars = append(a.scalars, named[float64]{name: s.input.Name})
		cells[i] = &a.scalars[len(a.scalars)-1].value
	}
	return a, cells
}

// value returns sign × Compute at the present point. Every place in Args is
// written each time, so that a formula may sort its columns.
func (p *probe) value() float64 {
	for i := range p.box.slots {
		s := &p.box.slots[i]
		if s.dim >= 0 && p.known[s.dim] {
			*p.cells[i] = p.point[s.dim]
		} else {
			*p.cells[i] = s.fixed
		}
	}
	y := p.box.figure.Compute(p.args)
	if math.IsNaN(y) || math.IsInf(y, 0) {
		panic(fmt.Sprintf("figures: %s: value %v within the declared bounds, at %v", p.box.figure.ID, y, p.args))
	}
	return p.sign * y
}
